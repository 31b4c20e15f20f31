import { describe, expect, it } from 'vitest';
import { ROLE } from '../../../src/solid/facet-roles.js';
import { endsOf, placesOn, startsAtEnds, startsInMiddle, startsLevel } from '../../../src/solid/walls/ray-starts.js';
import { handBlock, handMesh, leaning, lookingAlong } from '../../support/hand-mesh.js';

const BLOCK = handBlock(10, 6, 4);
const all = (role: number) => new Uint8Array(12).fill(role);
const facets = [...Array(12).keys()];

describe('rays start in the middle', () => {
  it('of one half of each face of a block', () => {
    expect(facets.filter((facet) => startsInMiddle(facet, BLOCK, all(ROLE.plain)))).toEqual([0, 2, 4, 6, 8, 10]);
  });

  it('of the other half where the first bounds no wall', () => {
    const roles = all(ROLE.plain);
    roles[0] = ROLE.mark;
    expect(facets.filter((facet) => startsInMiddle(facet, BLOCK, roles))).toEqual([1, 2, 4, 6, 8, 10]);
  });

  it('of each sixth facet of a thread that stands', () => {
    // 0 is the bottom, 6 a half of the right side
    expect(facets.filter((facet) => startsInMiddle(facet, BLOCK, all(ROLE.thread)))).toEqual([6]);
  });

  it('of no broken edge', () => {
    expect(facets.some((facet) => startsInMiddle(facet, BLOCK, all(ROLE.bevel)))).toBe(false);
  });
});

describe('rays start at the ends', () => {
  it('of standing faces that run 3 mm or more across the axis', () => {
    const ends = (x: number, y: number) =>
      facets.filter((facet) => startsAtEnds(facet, handBlock(x, y, 20), all(ROLE.plain)));
    expect(ends(10, 6)).toEqual([4, 5, 6, 7, 8, 9, 10, 11]);
    // front and back are x wide, left and right y
    expect(ends(3, 2.9)).toEqual([4, 5, 8, 9]);
    expect(ends(2.9, 2.9)).toEqual([]);
  });

  it('of plain ones alone', () => {
    expect(facets.some((facet) => startsAtEnds(facet, BLOCK, all(ROLE.thread)))).toBe(false);
  });

  it('which are a twentieth of the way in from its corners', () => {
    const pyramid = handMesh(
      [
        [0, 0, 0],
        [3, 0, 0],
        [0, 3, 0],
        [0, 0, -3],
      ],
      [
        [0, 1, 2],
        [0, 3, 1],
        [0, 2, 3],
        [1, 3, 2],
      ],
    );
    // the middle is (1, 1, 0): 0.05 + 0.95·3 = 2.9
    const expected = [
      [0.05, 0.05, 0],
      [2.9, 0.05, 0],
      [0.05, 2.9, 0],
    ];
    for (const [i, end] of endsOf(pyramid, 0).entries())
      for (const axis of [0, 1, 2] as const) expect(end[axis]).toBeCloseTo(expected[i]![axis]!, 12);

    // twelve rows of places, 12·13/2, all within; their mean is the middle
    const places = placesOn(pyramid, 0);
    expect(places.length).toBe(78);
    expect(places.every(([x, y, z]) => x > 0 && y > 0 && x + y < 3 && z === 0)).toBe(true);
    for (const axis of [0, 1] as const)
      expect(places.reduce((sum, place) => sum + place[axis], 0) / 78).toBeCloseTo(1, 12);
  });
});

describe('rays start level', () => {
  // a face that leans from the axis by an angle has a normal that is that angle from level
  it.each([
    [3, false],
    [5, true],
    [39, true],
    [41, false],
  ])('from a face that leans by %d°: %s', (degrees, expected) => {
    const [x, , z] = leaning(90 - degrees);
    const mesh = lookingAlong([x, 0, z], [x, 0, -z]);
    const starts = (facet: number, role: number) => startsLevel(facet, mesh, Uint8Array.of(role, role));
    expect([starts(0, ROLE.plain), starts(1, ROLE.plain)]).toEqual([expected, expected]);
    expect(starts(0, ROLE.bevel)).toBe(false);
  });
});
