import { describe, expect, it } from 'vitest';
import { reachesAt, upTo } from '../../../../src/solid/exact/lines/contour.js';
import type { ContourPiece } from '../../../../src/solid/exact/meant-shape.js';

/** A cone from 5 to 3, 4 mm high, and a rod of 3 up to 6. */
const STEP: readonly ContourPiece[] = [
  { from: [5, 0], to: [3, 4] },
  { from: [3, 4], to: [3, 6] },
];
/** A fillet of 5 between a plate and an upright wall of 10. */
const FILLET: readonly ContourPiece[] = [{ from: [15, 0], to: [10, 5], center: [15, 5] }];
/** A bead of 5 about a rod of 10: out, and in again. */
const BEAD: readonly ContourPiece[] = [
  { from: [10, 0], to: [15, 5], center: [10, 5] },
  { from: [15, 5], to: [10, 10], center: [10, 5] },
];

describe('a contour that rises along the outside', () => {
  it('reaches past a radius between two heights', () => {
    expect(upTo(STEP, 2)).toEqual([0, 6]);
    expect(upTo(STEP, 4)).toEqual([0, 2]);
    expect(upTo(STEP, 5)).toEqual([]);
  });

  it('follows its fillets, by 3, 4 and 5', () => {
    expect(upTo(FILLET, 11)).toEqual([0, 2]);
    expect(upTo(FILLET, 12)).toEqual([0, 1]);
    expect(upTo(BEAD, 13)).toEqual([1, 9]);
  });

  it('has a radius at each height, and its corners', () => {
    expect(reachesAt(STEP, [2, 5, 9])).toEqual([5, 3, 4]);
    expect(reachesAt(FILLET, [1, 2])).toEqual([15, 10, 12, 11]);
    expect(reachesAt(BEAD, [1, 9])).toEqual([10, 15, 13]);
  });
});
