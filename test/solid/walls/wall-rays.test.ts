import { describe, expect, it } from 'vitest';
import type { Ray } from '../../../src/solid/ray-caster.js';
import { inwards, inwardsBetween, inwardsLevel, isBetween, straightTo } from '../../../src/solid/walls/wall-rays.js';
import { lookingAlong } from '../../support/hand-mesh.js';

const PLACE = [1, 2, 3] as const;
/** Facets that look along +X, along +Y, along −X, and up and along +X by 3:4. */
const MESH = lookingAlong([1, 0, 0], [0, 1, 0], [-1, 0, 0], [0.6, 0, 0.8]);

describe('a ray', () => {
  it('inwards goes against the normal, level without what of it goes up', () => {
    expect(inwards(MESH, PLACE, 3)).toEqual([1, 2, 3, -0.6, 0, -0.8]);
    expect(inwardsLevel(MESH, PLACE, 3)).toEqual([1, 2, 3, -1, 0, 0]);
  });

  it('straight to a face goes along its normal', () => {
    expect(straightTo(MESH, PLACE, 3)).toEqual([1, 2, 3, 0.6, 0, 0.8]);
  });

  it('between two normals halves the angle, and has no way between opposite ones', () => {
    const [x, y, z, u, v, w] = inwardsBetween(MESH, PLACE, [0, 1]);
    expect([x, y, z, w]).toEqual([1, 2, 3, 0]);
    for (const one of [u, v]) expect(one).toBeCloseTo(-Math.SQRT1_2, 12);
    expect(inwardsBetween(MESH, PLACE, [0, 2])).toEqual([1, 2, 3, 0, 0, 0]);
  });

  // the edge of faces along +X and +Y runs along Z; what comes to it comes from the quarter between −X and −Y
  it.each([
    [45, 0, true],
    [5, 0, true],
    [85, 0, true],
    [-5, 0, false],
    [95, 0, false],
    [225, 0, false],
    [45, 0.09, true],
    [45, -0.09, true],
    [45, 0.11, false],
    [45, -0.11, false],
  ])('leaves an edge at %d° and %f upwards: %s', (degrees, up, expected) => {
    const level = Math.sqrt(1 - up * up);
    const angle = (degrees * Math.PI) / 180;
    const ray: Ray = [...PLACE, -level * Math.cos(angle), -level * Math.sin(angle), up];
    expect(isBetween(ray, MESH, [0, 1])).toBe(expected);
    expect(isBetween(ray, MESH, [1, 0])).toBe(expected);
  });
});
