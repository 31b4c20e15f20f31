import { type FacetGraph, facetGraph } from '../../src/solid/facet-graph.js';

type Point = readonly [number, number, number];

/** A closed body from its corners and its faces, each convex and counter-clockwise seen from outside; facets in that order. */
export function handMesh(points: readonly Point[], faces: readonly (readonly number[])[]): FacetGraph {
  const triangles = faces.flatMap(([first, ...rest]) => rest.slice(1).flatMap((to, i) => [first!, rest[i]!, to]));
  return facetGraph({ positions: Float64Array.from(points.flat()), triangles: Uint32Array.from(triangles) });
}

/** A block from the origin on. Facets: 0 and 1 bottom, 2 and 3 top, then front, right, back and left, two each. */
export function handBlock(x: number, y: number, z: number): FacetGraph {
  const ring = (height: number): Point[] => [
    [0, 0, height],
    [x, 0, height],
    [x, y, height],
    [0, y, height],
  ];
  const sides = [0, 1, 2, 3].map((i) => [i, (i + 1) % 4, ((i + 1) % 4) + 4, i + 4]);
  return handMesh([...ring(0), ...ring(z)], [[0, 3, 2, 1], [4, 5, 6, 7], ...sides]);
}

/** Facets of which only the normals matter. */
export function lookingAlong(...normals: readonly Point[]): FacetGraph {
  const none = { positions: new Float64Array(), triangles: new Uint32Array(), across: new Int32Array() };
  return { ...none, normals: Float64Array.from(normals.flat()) };
}

/** A unit vector so many degrees from +Z towards +X. */
export function leaning(degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return [Math.sin(angle), 0, Math.cos(angle)];
}
