import { describe, expect, it } from 'vitest';
import {
  alongCrossings,
  cornersLeft,
  crossings,
  cutoutsApart,
  leavesWhole,
} from '../../../src/parts/adapter/cutouts.js';
import { rectangleOutline } from '../../../src/solid/outline.js';

type Point = readonly [number, number];
const box = (x: readonly [number, number], y: readonly [number, number]): Point[] => [
  [x[0], y[0]],
  [x[1], y[0]],
  [x[1], y[1]],
  [x[0], y[1]],
];
const sorted = (numbers: readonly number[]) => [...numbers].sort((a, b) => a - b).map((one) => Number(one.toFixed(4)));

describe('where sides cross', () => {
  it('as shares of a stretch: a box from 2 to 4 on the way from 0 to 10', () => {
    expect(
      sorted(
        alongCrossings(
          [
            [0, 0],
            [10, 0],
          ],
          box([2, 4], [-1, 1]),
        ),
      ),
    ).toEqual([0.2, 0.4]);
  });

  it('of a slanted one with a triangle: x = 4, and y = x/2 on 4 + 5·t, 8·t at t = 4/11', () => {
    const triangle: Point[] = [
      [4, 0],
      [4, 8],
      [9, 8],
    ];
    expect(
      sorted(
        alongCrossings(
          [
            [0, 0],
            [8, 4],
          ],
          triangle,
        ),
      ),
    ).toEqual([0.5, 0.7273]);
    // the same 3 and 7 mm aside
    const aside = triangle.map(([x, y]): Point => [x + 3, y + 7]);
    expect(
      sorted(
        alongCrossings(
          [
            [3, 7],
            [11, 11],
          ],
          aside,
        ),
      ),
    ).toEqual([0.5, 0.7273]);
  });

  it('counts a beginning on a side and no end on one, and each corner once', () => {
    const square = box([2, 4], [-1, 1]);
    const from = (x: number, to: number) =>
      sorted(
        alongCrossings(
          [
            [x, 0],
            [to, 0],
          ],
          square,
        ),
      );
    expect(from(2, 10)).toEqual([0, 0.25]);
    expect(from(0, 2)).toEqual([]);
    const diamond: Point[] = [
      [2, 0],
      [3, 1],
      [4, 0],
      [3, -1],
    ];
    expect(
      sorted(
        alongCrossings(
          [
            [0, 0],
            [10, 0],
          ],
          diamond,
        ),
      ),
    ).toEqual([0.2, 0.4]);
  });

  it('is none along a side that lies on it: the box stands on the stretch, its side at 4 begins there', () => {
    expect(
      alongCrossings(
        [
          [0, 0],
          [10, 0],
        ],
        box([2, 4], [0, 2]),
      ),
    ).toEqual([0.4]);
  });

  it('are points on both', () => {
    const points = crossings(box([0, 10], [0, 10]), box([8, 12], [4, 6]));
    expect(points).toHaveLength(2);
    expect(sorted(points.map(([, y]) => y))).toEqual([4, 6]);
    expect(points.every(([x]) => x === 10)).toBe(true);
  });
});

describe('what cut-outs leave', () => {
  const corners = (cutout: Point[]) =>
    cornersLeft(box([0, 10], [0, 10]), [cutout])
      .map(([x, y]) => `${x} ${y}`)
      .sort();

  it('are the corners of the plate and those of a bite in its side, or in its corner', () => {
    expect(corners(box([8, 12], [4, 6]))).toEqual(['0 0', '0 10', '10 0', '10 10', '10 4', '10 6']);
    expect(corners(box([8, 12], [8, 12]))).toEqual(['0 0', '0 10', '10 0', '10 8', '8 10']);
  });

  it('are outside of all of them: one bite in a corner, one in the side across', () => {
    const two = [box([8, 12], [8, 12]), box([-2, 2], [4, 6])];
    const left = cornersLeft(box([0, 10], [0, 10]), two).map(([x, y]) => `${x} ${y}`);
    expect(left.sort()).toEqual(['0 0', '0 10', '0 4', '0 6', '10 0', '10 8', '8 10']);
  });

  const plate = (...cutouts: { at: Point; size: Point }[]) => ({
    outline: { shape: 'rectangular', size: [40, 20], corner: 0, center: [0, 0] } as const,
    flats: [],
    cutouts: cutouts.map((one) => ({ ...one, turn: 0 })),
  });

  it('is one piece, unless a cut-out goes across', () => {
    expect(leavesWhole(plate({ at: [0, 0], size: [4, 30] }))).toBe(false);
    expect(leavesWhole(plate({ at: [18, 0], size: [10, 4] }, { at: [0, 0], size: [4, 4] }))).toBe(true);
    expect(leavesWhole(plate({ at: [18, 0], size: [10, 4] }, { at: [0, 0], size: [4, 30] }))).toBe(false);
    expect(leavesWhole(plate())).toBe(true);
  });

  it('keeps them apart: two of 4 mm whose middles are 10 mm apart leave 6', () => {
    const apart = (...cutouts: { at: Point; size: Point }[]) => cutoutsApart(plate(...cutouts));
    expect(apart({ at: [-5, 0], size: [4, 4] }, { at: [5, 0], size: [4, 4] })).toBeCloseTo(6, 6);
    expect(
      apart({ at: [-5, 0], size: [4, 4] }, { at: [5, 0], size: [4, 4] }, { at: [5, 7], size: [4, 4] }),
    ).toBeCloseTo(3, 6);
    expect(apart({ at: [0, 0], size: [4, 4] })).toBe(Infinity);
    // a cross has no corner in the other, but a middle
    expect(apart({ at: [0, 0], size: [20, 2] }, { at: [0, 0], size: [2, 20] })).toBeCloseTo(-1, 6);
    expect(apart({ at: [0, 0], size: [12, 12] }, { at: [3, 0], size: [4, 4] })).toBeLessThan(0);
  });

  it('takes an outline as it stands', () => {
    expect(crossings(rectangleOutline({ size: [40, 20] }), box([-2, 2], [-15, 15]))).toHaveLength(4);
  });
});
