import { describe, expect, it } from 'vitest';
import { roundEdge } from '../../../src/parts/common/held-slab.js';
import { materialAt, type Opening, reachAlong, sideOf } from '../../../src/parts/common/slab.js';
import { rectangleOutline } from '../../../src/solid/outline.js';

const EVERYWHERE = [[-100, 100]] as const;
const outline = rectangleOutline({ size: [20, 10] });
const at = (
  distance: number,
  openings: readonly Opening[] = [],
  within: readonly (readonly [number, number])[] = EVERYWHERE,
) => materialAt({ outline, thickness: 6, openings }, { along: [1, 0], distance }, within);
const round = (x: number, y: number, radius: number, from: number, to: number): Opening => ({
  shape: { at: [x, y], radius },
  from,
  to,
});

describe('what a cut meets of 20 × 10 × 6 mm', () => {
  it('is its width, within what is asked, and nothing beside it', () => {
    expect(at(0)).toEqual([{ width: 10, from: 0, to: 6 }]);
    expect(at(9)).toEqual([{ width: 10, from: 0, to: 6 }]);
    expect(at(11)).toEqual([]);
    expect(at(-11)).toEqual([]);
    expect(at(0, [], [[-2, 3]]).reduce((sum, { width }) => sum + width, 0)).toBeCloseTo(5, 9);
    expect(
      at(
        0,
        [],
        [
          [-50, -3],
          [4, 50],
        ],
      ).map(({ width }) => width),
    ).toEqual([2, 1]);
    expect(at(0, [], [[6, 8]])).toEqual([]);
  });

  it('lacks the chord of a hole, in its heights', () => {
    // 1.2 mm beside the middle of a hole of radius 2: half a chord of 1.6
    const through = at(1.2, [round(0, 1, 2, 0, 6)]);
    expect(through.map(({ width }) => width)).toEqual([expect.closeTo(4.4, 9), expect.closeTo(2.4, 9)]);
    expect(at(1.2, [round(0, 1, 2, 0, 2)])[1]).toEqual({ width: expect.closeTo(3.2, 9), from: 2, to: 6 });
    expect(at(1.2, [round(0, 1, 2, 4, 6)])[1]).toEqual({ width: expect.closeTo(3.2, 9), from: 0, to: 4 });
    // a slit within the thickness leaves both sides of it
    expect(at(1.2, [round(0, 1, 2, 2, 3)]).map(({ from, to }) => [from, to])).toEqual([
      [0, 6],
      [0, 2],
      [3, 6],
      [0, 6],
    ]);
    expect(at(2, [round(0, 1, 2, 0, 6)])).toHaveLength(1);
    expect(at(-3, [round(0, 1, 2, 0, 6)])).toHaveLength(1);
  });

  it('lacks all that openings above each other take', () => {
    // a head's counterbore of 2 mm over a hole all through, on one middle
    const counterbored = at(0, [round(0, 0, 1, 0, 6), round(0, 0, 3, 4, 6)]);
    expect(counterbored.map(({ width, from, to }) => [width, from, to])).toEqual([
      [2, 0, 6],
      [2, 0, 4],
      [2, 0, 4],
      [2, 0, 6],
    ]);
    const above = at(0, [round(0, 0, 3, 0, 2), round(0, 0, 3, 3, 6)]);
    expect(above[1]).toEqual({ width: 6, from: 2, to: 3 });
  });

  it('lacks what a window of straight edges takes', () => {
    const window = { shape: { outline: rectangleOutline({ size: [4, 6] }) }, from: 0, to: 6 };
    expect(at(0, [window]).map(({ width }) => width)).toEqual([2, 2]);
    expect(at(3, [window]).map(({ width }) => width)).toEqual([10]);
  });
});

describe('what a cut meets of other outlines', () => {
  const through = (
    corners: readonly (readonly [number, number])[],
    along: readonly [number, number],
    distance: number,
    within: readonly (readonly [number, number])[] = EVERYWHERE,
  ) =>
    materialAt({ outline: corners, thickness: 6, openings: [] }, { along, distance }, within).reduce(
      (sum, { width }) => sum + width,
      0,
    );

  it('a triangle: at x = 7 from 1.4 on one edge to 5 on the other', () => {
    const triangle = [
      [0, 0],
      [10, 2],
      [4, 8],
    ] as const;
    expect(through(triangle, [1, 0], 7)).toBeCloseTo(3.6, 9);
    expect(through(triangle, [1, 0], 7, [[0, 2]])).toBeCloseTo(0.6, 9);
    expect(through(triangle, [1, 0], 7, [[4, 9]])).toBeCloseTo(1, 9);
    // at y = 5 from x = 2.5 to 7
    expect(through(triangle, [0, 1], 5)).toBeCloseTo(4.5, 9);
    expect(through(triangle, [0, 1], 5, [[-3, 0]])).toBeCloseTo(0.5, 9);
  });

  it('a slanted cut of 20 × 10: (3 − 0.8·s, 4 + 0.6·s) from s = −8.75 to 1.667', () => {
    expect(through(outline, [0.6, 0.8], 5)).toBeCloseTo(8.75 + 5 / 3, 9);
    expect(through(outline, [0.6, 0.8], 5, [[0, 9]])).toBeCloseTo(5 / 3, 9);
    expect(through(outline, [0.6, 0.8], 0)).toBeCloseTo(2 * (5 / 0.6), 9);
  });

  it('two legs of a fork, and not the gap between them', () => {
    const fork = [
      [0, 0],
      [10, 0],
      [10, 10],
      [7, 10],
      [7, 3],
      [2, 3],
      [2, 10],
      [0, 10],
    ] as const;
    expect(through(fork, [0, 1], 5)).toBeCloseTo(5, 9);
    expect(through(fork, [0, 1], 2)).toBeCloseTo(10, 9);
  });
});

describe('sides and edges', () => {
  it('reach as far as their farthest corner', () => {
    expect(reachAlong(outline, [1, 0])).toBe(10);
    expect(reachAlong(outline, [0, -1])).toBe(5);
    // 10·0.6 + 5·0.8
    expect(reachAlong(outline, [0.6, 0.8])).toBeCloseTo(10, 9);
    expect(sideOf([0.6, 0.8])).toEqual([-0.8, 0.6]);
  });

  it('hold all round at four quarters, the first towards a point', () => {
    const { places, length } = roundEdge(10, [0, 3]);
    // π·10/4
    expect(length).toBeCloseTo(7.854, 3);
    const wanted = [
      [0, 5],
      [-5, 0],
      [0, -5],
      [5, 0],
    ];
    places.forEach(([x, y], i) => {
      expect(x).toBeCloseTo(wanted[i]![0]!, 9);
      expect(y).toBeCloseTo(wanted[i]![1]!, 9);
    });
  });
});
