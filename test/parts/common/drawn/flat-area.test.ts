import { describe, expect, it } from 'vitest';
import { flatArea, type Loop } from '../../../../src/parts/common/drawn/flat-area.js';
import { circleOutline, polygonArea } from '../../../../src/solid/outline.js';

const box = (x0: number, y0: number, x1: number, y1: number): Loop => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];
/** Holes turn clockwise, so their areas count below 0. */
const total = (loops: readonly Loop[]) => loops.reduce((sum, loop) => sum + polygonArea(loop), 0);

describe('flatArea', () => {
  it('takes a corner off, and keeps straight sides whole', () => {
    expect(flatArea([box(0, 0, 4, 4)], [box(2, 2, 5, 5)])).toEqual([
      [
        [0, 0],
        [4, 0],
        [4, 2],
        [2, 2],
        [2, 4],
        [0, 4],
      ],
    ]);
  });

  it('leaves a hole as a loop of its own that turns the other way', () => {
    const loops = flatArea([box(0, 0, 4, 4)], [box(1, 1, 2, 3)]);
    // 4 × 4 − 1 × 2
    expect(loops).toHaveLength(2);
    expect(total(loops)).toBeCloseTo(14, 9);
  });

  it('parts an area in two', () => {
    const loops = flatArea([box(0, 0, 10, 2)], [box(4, -1, 5, 3)]);
    expect(loops.map((loop) => polygonArea(loop)).sort((a, b) => a - b)).toEqual([8, 10]);
  });

  it('joins areas that share a side or lie over one another', () => {
    expect(flatArea([box(0, 0, 2, 2), box(2, 0, 4, 2)])).toEqual([box(0, 0, 4, 2)]);
    expect(total(flatArea([box(0, 0, 3, 3), box(1, 1, 5, 2)]))).toBeCloseTo(9 + 2, 9);
  });

  it('cuts along a side that is shared, from either side', () => {
    expect(flatArea([box(0, 0, 4, 2)], [box(0, 2, 4, 5)])).toEqual([box(0, 0, 4, 2)]);
    expect(flatArea([box(0, 0, 4, 2)], [box(0, 0, 4, 1)])).toEqual([box(0, 1, 4, 2)]);
    expect(flatArea([box(0, 0, 4, 2)], [box(-1, -1, 5, 3)])).toEqual([]);
  });

  it('finds crossings of slanting sides', () => {
    // two triangles over a base of 4, high 2: tips at x 0 and 4, each under the other's slope up to x = 2, y = 1
    const left: Loop = [
      [0, 0],
      [4, 0],
      [0, 2],
    ];
    const right: Loop = [
      [0, 0],
      [4, 0],
      [4, 2],
    ];
    expect(total(flatArea([left, right]))).toBeCloseTo(4 + 4 - 2, 9);
    expect(total(flatArea([left], [right]))).toBeCloseTo(2, 9);
  });

  it('cuts lenses and rings of many corners', () => {
    const disc = (x: number, radius: number) => circleOutline({ radius, sides: 96, center: [x, 0] });
    const [a, b] = [polygonArea(disc(0, 5)), polygonArea(disc(0, 3))];
    expect(total(flatArea([disc(0, 5)], [disc(0, 3)]))).toBeCloseTo(a - b, 6);
    const apart = total(flatArea([disc(0, 5)], [disc(4, 3)])) + total(flatArea([disc(4, 3)], [disc(0, 5)]));
    expect(total(flatArea([disc(0, 5), disc(4, 3)])) * 2 - apart).toBeCloseTo(a + b, 5);
  });
});
