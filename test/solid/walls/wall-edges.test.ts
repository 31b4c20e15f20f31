import { describe, expect, it } from 'vitest';
import { ROLE } from '../../../src/solid/facet-roles.js';
import { wallEdges } from '../../../src/solid/walls/wall-edges.js';
import { handBlock, handMesh } from '../../support/hand-mesh.js';

const plain = new Uint8Array(24);

/** An L of 10 × 6 mm, 2 mm thick below and 4 mm beside, 8 mm deep; 20 facets. */
const ANGLE = (() => {
  const profile = [
    [0, 0],
    [10, 0],
    [10, 2],
    [4, 2],
    [4, 6],
    [0, 6],
  ] as const;
  const at = (y: number) => profile.map(([x, z]) => [x, y, z] as const);
  const sides = profile.map((_, i) => [i, i + 6, ((i + 1) % 6) + 6, (i + 1) % 6]);
  const ends = [
    [0, 1, 2, 3],
    [0, 3, 4, 5],
    [9, 8, 7, 6],
    [11, 10, 9, 6],
  ];
  return handMesh([...at(0), ...at(8)], [...ends, ...sides]);
})();

describe('edges of a body', () => {
  it('a block of 10 × 6 × 4 stands out at its twelve, and the diagonals of its faces are none', () => {
    const { sharp, hollow } = wallEdges(handBlock(10, 6, 4), plain);
    expect(hollow).toEqual([]);
    expect(sharp.map(({ reach }) => reach).sort()).toEqual([2, 2, 2, 2, 3, 3, 3, 3, 5, 5, 5, 5]);
    const along = sharp.filter(({ reach }) => reach === 5).map(({ at }) => at);
    expect(new Set(along.map(String))).toEqual(new Set(['5,0,0', '5,6,0', '5,0,4', '5,6,4']));
  });

  it('an L stands in at one of its 18', () => {
    const { sharp, hollow } = wallEdges(ANGLE, plain);
    expect([sharp.length, hollow.map(({ at, reach }) => [at, reach])]).toEqual([17, [[[4, 4, 2], 4]]]);
  });

  it('an opening whose wall belongs to a mark or to a thread is none', () => {
    const { hollow } = wallEdges(ANGLE, plain);
    for (const role of [ROLE.mark, ROLE.thread]) {
      for (const facet of hollow[0]!.facets) {
        const roles = plain.slice();
        roles[facet] = role;
        expect(wallEdges(ANGLE, roles).hollow).toEqual([]);
      }
    }
  });

  it('a thread has none of its own', () => {
    expect(wallEdges(handBlock(10, 6, 4), new Uint8Array(12).fill(ROLE.thread))).toEqual({ sharp: [], hollow: [] });
  });
});
