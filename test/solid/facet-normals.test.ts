import { describe, expect, it } from 'vitest';
import { facetNormals } from '../../src/solid/facet-normals.js';

describe('facetNormals', () => {
  it('points out of facets by their right-hand rule, with the area doubled', () => {
    // a right triangle of legs 3 and 4 in the plane, area 6; the same seen from behind; one in a plane at 45°
    const positions = new Float64Array([0, 0, 0, 3, 0, 0, 0, 4, 0, 0, 4, 4]);
    const triangles = new Uint32Array([0, 1, 2, 0, 2, 1, 0, 1, 3]);
    const { normals, twice } = facetNormals({ positions, triangles });
    const wanted = [0, 0, 1, 0, 0, -1, 0, -Math.SQRT1_2, Math.SQRT1_2];
    for (const [i, value] of wanted.entries()) expect(normals[i]).toBeCloseTo(value, 12);
    // 3 × 4, and 3 × 4√2
    expect([...twice].map((value) => Number(value.toFixed(9)))).toEqual([12, 12, 16.970562748]);
  });

  it('gives no direction to a facet without area', () => {
    const positions = new Float64Array([0, 0, 0, 1, 1, 1, 2, 2, 2]);
    const { normals, twice } = facetNormals({ positions, triangles: new Uint32Array([0, 1, 2]) });
    expect([...normals, ...twice].every((value) => Math.abs(value) === 0)).toBe(true);
  });
});
