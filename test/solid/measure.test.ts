import { describe, expect, it } from 'vitest';
import { latheMesh } from '../../src/solid/lathe-mesh.js';
import { measureMesh } from '../../src/solid/measure.js';
import { type Mesh, mirrored, place } from '../../src/solid/mesh.js';
import { weld } from '../../src/solid/weld.js';

/** A box from 0 to [x, y, z]: 8 corners, 12 facets. */
function box(x: number, y: number, z: number): Mesh {
  const positions = [0, 1, 2, 3, 4, 5, 6, 7].flatMap((i) => [i & 1 ? x : 0, i & 2 ? y : 0, i & 4 ? z : 0]);
  const quads = [
    [0, 2, 3, 1],
    [4, 5, 7, 6],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 4, 6, 2],
    [1, 3, 7, 5],
  ] as const;
  const triangles = quads.flatMap(([a, b, c, d]) => [a, b, c, a, c, d]);
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

function together(...meshes: Mesh[]): Mesh {
  const positions = meshes.flatMap((mesh) => [...mesh.positions]);
  let first = 0;
  const triangles = meshes.flatMap((mesh) => {
    const named = [...mesh.triangles].map((corner) => corner + first);
    first += mesh.positions.length / 3;
    return named;
  });
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

describe('measureMesh', () => {
  it('measures a box', () => {
    expect(measureMesh(box(2, 3, 4))).toEqual({
      facets: 12,
      openEdges: 0,
      repeatedVertexFacets: 0,
      leastFacetArea: 3,
      // a right triangle of 2 and 3 over its hypotenuse
      leastFacetHeight: expect.closeTo(6 / Math.sqrt(13), 9),
      shells: 1,
      volume: 24,
      area: 52,
      bounds: [
        [0, 0, 0],
        [2, 3, 4],
      ],
    });
  });

  it('joins corners that are equal as float32, whatever their index', () => {
    const solid = box(2, 3, 4);
    const loose = {
      positions: Float64Array.from(
        [...solid.triangles].flatMap((corner) => [...solid.positions.subarray(3 * corner, 3 * corner + 3)]),
      ),
      triangles: Uint32Array.from(solid.triangles.keys()),
    };
    loose.positions[loose.positions.indexOf(3)]! += 1e-12;
    expect(measureMesh(loose)).toMatchObject({ openEdges: 0, shells: 1, volume: 24 });
  });

  it('counts the edges of a missing facet, of a turned one, and of a doubled one', () => {
    const solid = box(1, 1, 1);
    expect(measureMesh({ ...solid, triangles: solid.triangles.slice(3) }).openEdges).toBe(3);
    const turned = solid.triangles.slice();
    [turned[0], turned[1]] = [turned[1]!, turned[0]!];
    expect(measureMesh({ ...solid, triangles: turned }).openEdges).toBe(3);
    expect(measureMesh({ ...solid, triangles: Uint32Array.from([...solid.triangles, 0, 2, 3]) }).openEdges).toBe(3);
  });

  it('tells inside out by a negative volume, and a mirror image by a positive one', () => {
    const solid = box(1, 2, 3);
    expect(measureMesh({ ...solid, triangles: solid.triangles.toReversed() }).volume).toBe(-6);
    expect(measureMesh(mirrored(solid))).toMatchObject({
      volume: 6,
      bounds: [
        [0, -2, 0],
        [1, 0, 3],
      ],
    });
  });

  it('counts shells, and a joint along one edge as open', () => {
    expect(measureMesh(together(box(1, 1, 1), place(box(1, 1, 1), { by: [5, 0, 0] })))).toMatchObject({
      shells: 2,
      openEdges: 0,
    });
    expect(measureMesh(together(box(1, 1, 1), place(box(1, 1, 1), { by: [1, 1, 0] })))).toMatchObject({ openEdges: 1 });
  });

  it('keeps every measure under moves by quarter turns and tilts', () => {
    for (const turn of [0, 90, 180, 270]) {
      for (const tilt of [0, 90, 180]) {
        const moved = place(box(2, 3, 4), { turn, tilt, by: [7, -1, 2] });
        const { volume, area, openEdges } = measureMesh(moved);
        expect(volume).toBeCloseTo(24, 12);
        expect([area, openEdges]).toEqual([52, 0]);
      }
    }
    expect(measureMesh(place(box(1, 1, 9), { tilt: 90 })).bounds).toEqual([
      [0, 0, -1],
      [9, 1, 0],
    ]);
  });

  it('answers for an empty mesh', () => {
    const empty = measureMesh({ positions: new Float64Array(), triangles: new Uint32Array() });
    expect(empty).toMatchObject({ facets: 0, shells: 0, volume: 0, leastFacetArea: 0 });
  });
});

describe('weld', () => {
  const barrel = latheMesh({
    kind: 'lathe',
    sides: 12,
    circumscribed: false,
    contour: [
      [5, 0],
      [5, 1],
      [5, 1 + 1e-9],
      [5, 3],
    ],
  });

  it('takes out facets that rounding folds up, and stays closed', () => {
    expect(measureMesh(barrel).repeatedVertexFacets).toBe(24);
    expect(measureMesh(weld(barrel))).toMatchObject({ repeatedVertexFacets: 0, openEdges: 0, shells: 1, facets: 68 });
  });

  it('flips a cap without opening the mesh or changing its size', () => {
    // a T-joint on the middle of an edge, closed by a flat facet
    const solid = box(1, 1, 1);
    const split = {
      positions: Float64Array.from([...solid.positions, 0.5, 0, 0]),
      triangles: Uint32Array.from([...solid.triangles]),
    };
    const facets: number[] = [];
    for (let i = 0; i < split.triangles.length; i += 3)
      facets.push(...splitEdge(split.triangles.slice(i, i + 3), 0, 1, 8));
    const capped = { positions: split.positions, triangles: Uint32Array.from([...facets, 0, 1, 8]) };
    expect(measureMesh(capped)).toMatchObject({ openEdges: 0, leastFacetArea: 0 });
    const clean = measureMesh(weld(capped));
    expect(clean).toMatchObject({ openEdges: 0, area: 6, shells: 1, repeatedVertexFacets: 0 });
    expect(clean.volume).toBeCloseTo(1, 12);
    expect(clean.leastFacetArea).toBeGreaterThan(1e-9);
  });

  it('flips caps whose neighbours lie in the same line', () => {
    // a column over five corners, three of them in a line that the first all but lies on: its top is cut in the worst way
    const floor = [
      [-11.25, 5e-4],
      [0, 0],
      [0.1, 0],
      [0.6, 0],
      [-5, 8],
    ] as const;
    const positions = [0, 1].flatMap((z) => floor.flatMap(([x, y]) => [x, y, z]));
    const top = [5, 6, 7, 5, 7, 8, 5, 8, 9];
    const bottom = [4, 1, 0, 4, 2, 1, 4, 3, 2];
    const sides = [0, 1, 2, 3, 4].flatMap((i) => {
      const next = (i + 1) % 5;
      return [i, next, next + 5, i, next + 5, i + 5];
    });
    const column = {
      positions: Float64Array.from(positions),
      triangles: Uint32Array.from([...top, ...bottom, ...sides]),
    };
    // twice the area over the longest side: 0.1 · 5e-4 / 11.35
    expect(measureMesh(column).leastFacetHeight).toBeCloseTo(4.4e-6, 7);
    const clean = measureMesh(weld(column));
    expect(clean).toMatchObject({ openEdges: 0, shells: 1, repeatedVertexFacets: 0, facets: 16 });
    expect(clean.leastFacetHeight).toBeGreaterThan(1e-5);
    // shoelace over the five corners: ½·(0.6·8 + (−5)·0.0005 + 11.25·8)
    expect(clean.volume).toBeCloseTo(47.39875, 4);
  });

  it('collapses needles: a cone whose tip is a ring of 0.00001 mm', () => {
    for (const sides of [4, 12, 48]) {
      const cone = latheMesh({
        kind: 'lathe',
        sides,
        circumscribed: false,
        contour: [
          [1, 0],
          [1e-5, 1],
        ],
      });
      expect(measureMesh(cone).leastFacetArea).toBeLessThan(1e-9);
      const clean = measureMesh(weld(cone));
      expect(clean).toMatchObject({ openEdges: 0, shells: 1, repeatedVertexFacets: 0 });
      expect(clean.leastFacetArea).toBeGreaterThanOrEqual(1e-9);
      // pyramid: n/2·sin(360°/n)/3
      expect(clean.volume).toBeCloseTo((sides / 6) * Math.sin((2 * Math.PI) / sides), 3);
    }
  });

  it('gives float32 values only, without negative zeros', () => {
    const welded = weld(place(barrel, { turn: 33.3, by: [0.1, -0.2, 0.3] }));
    expect(welded.positions.every((value) => Math.fround(value) === value && !Object.is(value, -0))).toBe(true);
  });
});

/** A facet with edge a–b (either way) divided at m, on the side that runs from a to b only. */
function splitEdge(facet: Uint32Array, a: number, b: number, m: number): number[] {
  const at = [0, 1, 2].find((i) => facet[i] === a && facet[(i + 1) % 3] === b);
  if (at === undefined) return [...facet];
  const c = facet[(at + 2) % 3]!;
  return [a, m, c, m, b, c];
}
