import { describe, expect, it } from 'vitest';
import { type Mesh, matrixWithin, place, placementMatrix } from '../../src/solid/mesh.js';

const POINT = { positions: Float64Array.of(1, 2, 3), triangles: new Uint32Array() } satisfies Mesh;

describe('placements', () => {
  it('lean +Z onto +X, then turn, then shift, exactly at 90°', () => {
    expect([...place(POINT, { tilt: 90 }).positions]).toEqual([3, 2, -1]);
    expect([...place(POINT, { turn: 90 }).positions]).toEqual([-2, 1, 3]);
    expect([...place(POINT, { tilt: 90, turn: 90, by: [10, 20, 30] }).positions]).toEqual([8, 23, 29]);
  });

  it('one inside another is the inner one, then the outer', () => {
    const [outer, inner] = [
      { turn: 30, tilt: -50, by: [4, 5, 6] as const },
      { tilt: 70, turn: 200, by: [1, -2, 3] as const },
    ];
    const m = matrixWithin(placementMatrix(outer), inner);
    const wanted = place(place(POINT, inner), outer).positions;
    for (const row of [0, 1, 2]) {
      const at = 4 * row;
      expect(m[at]! + 2 * m[at + 1]! + 3 * m[at + 2]! + m[at + 3]!).toBeCloseTo(wanted[row]!, 12);
    }
  });
});
