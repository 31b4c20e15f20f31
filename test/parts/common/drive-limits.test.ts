import { describe, expect, it } from 'vitest';
import {
  BELOW_BUCKLING,
  BELOW_WHIRL,
  judgeColumn,
  judgeSag,
  judgeWhirl,
  SAG,
} from '../../../src/parts/common/drive-limits.js';

const ROOT = { cut: 6, rolled: 5 };
const DUTY = { span: 600, feed: 100, load: 100, ends: 'supported' } as const;
type Driven = Parameters<typeof judgeWhirl>[0];
const driven = (duty: object, leastRoot: object = ROOT) =>
  ({ duty, screw: { lead: 4, leastRoot, major: { least: 7.5, likely: 8, most: 8 } } }) as unknown as Driven;
const without = (key: keyof typeof DUTY) => ({ ...DUTY, [key]: undefined });

describe('a screw that whirls', () => {
  // 60 · 100/4 = 1500 rpm; n = 1.209e8 · 6/600² = 2015 rpm, 5/6 of that with the rolled root
  it('turns at a share of its whirling speed, at its thinnest cut and rolled', () => {
    const found = judgeWhirl(driven(DUTY), BELOW_WHIRL)!;
    const cut = 1500 / 2015;
    expect(found).toMatchObject({
      kind: 'value',
      value: { least: cut, likely: cut, most: expect.closeTo(1.2 * cut, 9) },
    });
    expect(message(found)).toMatch(/^1500 rpm of 2015 rpm .* 6 mm, 5 mm if it is rolled; hold its ends better/);
  });

  it('needs no cure where it keeps the limit rolled too', () => {
    expect(message(judgeWhirl(driven({ ...DUTY, feed: 80 }), BELOW_WHIRL))).toMatch(/rolled$/);
    expect(message(judgeWhirl(driven({ ...DUTY, feed: 80 }, { cut: 6, rolled: 6 }), BELOW_WHIRL))).toMatch(/6 mm$/);
  });

  it('asks for what is missing, and says nothing of a screw of which neither span nor feed is told', () => {
    expect(judgeWhirl(driven(without('span')), BELOW_WHIRL)).toMatchObject({ missing: ['duty.span'] });
    expect(judgeWhirl(driven(without('feed')), BELOW_WHIRL)).toMatchObject({ missing: ['duty.feed'] });
    expect(judgeWhirl(driven(without('ends')), BELOW_WHIRL)).toMatchObject({ missing: ['duty.ends'] });
    expect(judgeWhirl(driven({ ...without('span'), feed: undefined }), BELOW_WHIRL)).toBeUndefined();
  });
});

describe('a level screw', () => {
  const level = (duty: object) => judgeSag(driven(duty), SAG.limits);

  it('sags from 40 diameters on with a free end: 320 mm of 8 mm', () => {
    expect(level({ span: 320, ends: 'fixed-free' })).toMatchObject({ value: { least: 1, likely: 1, most: 8 / 7.5 } });
    expect(level({ span: 300, ends: 'fixed-free' })).toMatchObject({
      message: '300 mm stand free, of 320 mm from which a level screw sags',
    });
    expect(level({ span: 400, ends: 'fixed-free' })).toMatchObject({
      value: { likely: 1.25 },
      message: expect.stringMatching(/sags; hold its far end \(part: end-holder\), or take a thicker screw$/),
    });
  });

  // by as much of its length: k·L³ with k = 1/8 free; 5/384, 1/185 and 1/384 held
  it.each([
    ['supported', 40 * Math.cbrt(384 / 5 / 8)],
    ['fixed-supported', 40 * Math.cbrt(185 / 8)],
    ['fixed-fixed', 40 * Math.cbrt(384 / 8)],
  ])('%s, from %d diameters on', (ends, diameters) => {
    const held = level({ span: 1600, ends })!;
    expect((held as { value: { likely: number } }).value.likely / (1600 / 8 / diameters)).toBeCloseTo(1, 2);
    expect(message(held)).toMatch(
      /^1600 mm between its ends, of .* sags; hold its ends better, or take a thicker screw$/,
    );
  });

  it('is asked how long it is, and how its ends are held where a free one sags', () => {
    expect(level({ ends: 'fixed-free' })).toMatchObject({ missing: ['duty.span'] });
    expect(level({ span: 400 })).toMatchObject({ missing: ['duty.ends'] });
    expect(level({ span: 300 })).toMatchObject({ value: { likely: 300 / 320 } });
  });
});

describe('a screw that buckles', () => {
  // L/k = 600/(6/4) = 400: Euler, π/4 · 6² · π² · 207000/400² = 361.0 N; with the rolled root (5/6)⁴ of it
  const force = (9 * Math.PI ** 3 * 207000) / 160000;

  it('bears a share of the force that buckles it, at its thinnest cut and rolled', () => {
    const found = judgeColumn(driven({ ...DUTY, load: force / 2 }), BELOW_BUCKLING);
    expect(found).toMatchObject({
      kind: 'value',
      value: { least: expect.closeTo(0.5, 9), likely: expect.closeTo(0.5, 9), most: expect.closeTo(0.5 * 1.2 ** 4, 9) },
    });
    expect(message(found)).toMatch(/ of 361 N that buckle it .* rolled; hold its ends better/);
  });

  it('needs no cure where it keeps the limit rolled too', () => {
    expect(message(judgeColumn(driven({ ...DUTY, load: 0.24 * force }), BELOW_BUCKLING))).toMatch(/rolled$/);
  });

  it('asks for what is missing', () => {
    expect(judgeColumn(driven(without('load')), BELOW_BUCKLING)).toMatchObject({ missing: ['duty.load'] });
    expect(judgeColumn(driven(without('ends')), BELOW_BUCKLING)).toMatchObject({ missing: ['duty.ends'] });
  });

  // 125 diameters of 8 mm are 1 m: Euler 129.97 N, (5/6)⁴ of it with the rolled root, half of that 31.34 N; with a free end a quarter, 7.83 N
  it.each([
    [without('span'), 31.3, undefined],
    [without('span'), 31.4, ['duty.span']],
    [{ ...without('span'), ends: undefined }, 7.8, undefined],
    [{ ...without('span'), ends: undefined }, 7.9, ['duty.span', 'duty.ends']],
    [without('span'), undefined, ['duty.load']],
  ])('asks for a span that nobody tells where a metre would not bear the load: %#', (duty, load, missing) => {
    const found = judgeColumn(driven({ ...duty, load }), BELOW_BUCKLING);
    expect(found?.kind === 'not-judged' ? found.missing : found).toEqual(missing);
  });
});

function message(outcome: ReturnType<typeof judgeWhirl>): string {
  return outcome?.kind === 'value' ? outcome.message : '';
}
