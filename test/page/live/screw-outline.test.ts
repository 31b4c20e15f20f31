import { expect, it } from 'vitest';
import { DRAWN, screwOutline } from '../../../page/live/state/screw-outline.js';

it('draws a usual screw where nothing was read, and says so', () => {
  const screw = screwOutline({});
  expect(screw).toMatchObject({ major: 8, pitch: 2, minor: 6, isRead: { major: false, pitch: false } });
  expect(screw.upper[0]![0]).toBe(0);
  expect(screw.upper.at(-1)![0]).toBe(DRAWN * 2);
});

it('takes the readings: the mean of the majors, the pitch over ten, the root', () => {
  const screw = screwOutline({ major: '9.9 10.1', crests: '30', minor: '6,5' });
  expect(screw).toMatchObject({ major: 10, pitch: 3, minor: 6.5, isRead: { major: true, pitch: true } });
  // crests at the major diameter, roots at the minor one, above and mirrored below
  expect(Math.max(...screw.upper.map(([, y]) => y))).toBe(5);
  expect(Math.min(...screw.upper.map(([, y]) => y))).toBe(3.25);
  expect(Math.min(...screw.lower.map(([, y]) => y))).toBe(-5);
  // crest of 0.366 P (ISO 2901)
  const [left, right] = screw.upper.filter(([x, y]) => y === 5 && Math.abs(x - 3) < 1).map(([x]) => x);
  expect(right! - left!).toBeCloseTo(0.366 * 3, 6);
});

it('half a pitch lies between a crest above and one below: a thread climbs as it turns', () => {
  const { upper, lower, pitch } = screwOutline({});
  const crest = (points: typeof upper, at: number) =>
    points.filter(([x, y]) => Math.abs(y) === 4 && x > 3.25 * pitch).map(([x]) => x)[at]!;
  expect(crest(upper, 0) - crest(lower, 0)).toBeCloseTo(pitch / 2, 6);
});

it('stays a screw under odd readings', () => {
  const screw = screwOutline({ major: '5', crests: '900', minor: '9' });
  expect(screw.pitch).toBeLessThanOrEqual(5);
  expect(screw.minor).toBeLessThan(5);
});
