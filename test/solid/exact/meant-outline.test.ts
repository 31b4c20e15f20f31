import { describe, expect, it } from 'vitest';
import { clipped } from '../../../src/solid/convex.js';
import { meantOutline } from '../../../src/solid/exact/meant-outline.js';
import { hullOutline } from '../../../src/solid/hull-outline.js';
import { circleOutline, type Outline, rectangleOutline } from '../../../src/solid/outline.js';

const pieces = (outline: Outline, offset = 0) => {
  const loop = meantOutline(outline, offset);
  if (loop.kind === 'circle') throw new Error('a circle');
  return loop.pieces;
};

describe('the meant outline', () => {
  it('takes sides of one arc for a circle, and moves them with their offset', () => {
    expect(meantOutline(circleOutline({ radius: 5, sides: 48, center: [1, 2] }))).toEqual({
      kind: 'circle',
      center: [1, 2],
      radius: 5,
    });
    expect(meantOutline(circleOutline({ radius: 5, sides: 48, circumscribed: true }), -0.5)).toMatchObject({
      radius: 4.5,
    });
  });

  it('rounds a rectangle by quarter circles that touch its sides', () => {
    const found = pieces(rectangleOutline({ size: [20, 12], radius: 3, sides: 40 }));
    expect(found.map(({ kind }) => kind).sort()).toEqual(['arc', 'arc', 'arc', 'arc', 'line', 'line', 'line', 'line']);
    for (const { kind, from, to } of found) {
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      // a quarter of radius 3 has a chord of 3·√2; the straight sides keep 20 − 6 and 12 − 6
      if (kind === 'arc') expect(length).toBeCloseTo(3 * Math.SQRT2, 12);
      else expect([14, 6].some((side) => Math.abs(side - length) < 1e-12)).toBe(true);
    }
  });

  it('ends a flat where its line cuts the circle, not where it cuts the chord', () => {
    // a line 3 from the middle of a circle of radius 5 cuts a chord of 8; moved in by 1, of 2·√(4² − 2²)
    const round = clipped(circleOutline({ radius: 5, sides: 44 }), [1, 0, 3]);
    const flat = (offset: number) => {
      const { from, to } = pieces(round, offset).find(({ kind }) => kind === 'line')!;
      return Math.abs(to[1] - from[1]);
    };
    expect(flat(0)).toBeCloseTo(8, 12);
    expect(flat(-1)).toBeCloseTo(2 * Math.sqrt(12), 12);
  });

  it('joins two circles of a hull by their common tangents', () => {
    // tangent of two circles at a distance d: √(d² − (R − r)²)
    const hull = hullOutline([
      circleOutline({ radius: 6, sides: 44 }),
      circleOutline({ radius: 2, sides: 28, center: [15, 1] }),
    ]);
    const lengths = pieces(hull).flatMap(({ kind, from, to }) =>
      kind === 'line' ? [Math.hypot(to[0] - from[0], to[1] - from[1])] : [],
    );
    expect(lengths).toHaveLength(2);
    for (const length of lengths) expect(length).toBeCloseTo(Math.sqrt(15 ** 2 + 1 - 4 ** 2), 10);
  });

  it('keeps corners of plain polygons', () => {
    const found = pieces([
      [0, 0],
      [4, 0],
      [4, 3],
    ]);
    expect(found.map(({ from }) => from)).toEqual([
      [0, 0],
      [4, 0],
      [4, 3],
    ]);
  });
});
