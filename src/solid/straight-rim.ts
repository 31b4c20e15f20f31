import type { Mouth } from './bore-surface.js';

/** Twice the area that is left of a facet at least, mm². */
const LEAST = 1e-6;

/** Corners of a rim by their numbers: for each sector from its column on. */
export type RimCorners = readonly (readonly number[])[];

/**
 * Takes corners that stand between two columns out of a rim, where the flat face around it allows: each is drawn onto
 * one of its columns, if no facet turns over.
 *
 * @param positions  of the body                                     [mm]
 * @param triangles  of the body without the bore's wall; changed in place, facets that fold up name a corner twice
 * @param rim        corners of the rim
 * @returns what is left of the rim
 */
export function straightRim(positions: ArrayLike<number>, triangles: Uint32Array, rim: RimCorners): RimCorners {
  const between = new Set(rim.flatMap((sector) => sector.slice(1)));
  if (between.size === 0) return rim;
  const around = facetsAround(triangles, between);
  return rim.map((sector, i) => {
    const next = rim[(i + 1) % rim.length]![0]!;
    const kept = sector.slice(1).filter((corner) => {
      const facets = around.get(corner) ?? [];
      const onto = [sector[0]!, next].find((column) => allows(positions, triangles, facets, corner, column));
      if (onto === undefined) return true;
      for (const at of facets) for (let k = at; k < at + 3; k++) if (triangles[k] === corner) triangles[k] = onto;
      return false;
    });
    return [sector[0]!, ...kept];
  });
}

/** The points of a rim that has become shorter. */
export function shorterMouth(mouth: Mouth, rim: RimCorners, left: RimCorners): Mouth {
  const sectors = mouth.sectors.map((points, i) => points.filter((_, k) => left[i]!.includes(rim[i]![k]!)));
  return { ...mouth, sectors };
}

/** Where the facets around corners begin. */
function facetsAround(triangles: Uint32Array, corners: ReadonlySet<number>): Map<number, number[]> {
  const around = new Map<number, number[]>([...corners].map((corner) => [corner, []]));
  for (let i = 0; i < triangles.length; i++) around.get(triangles[i]!)?.push(i - (i % 3));
  return around;
}

function allows(
  p: ArrayLike<number>,
  triangles: Uint32Array,
  facets: readonly number[],
  from: number,
  onto: number,
): boolean {
  return facets.every((at) => {
    const before = [triangles[at]!, triangles[at + 1]!, triangles[at + 2]!];
    if (before.includes(onto)) return true;
    const after = before.map((corner) => (corner === from ? onto : corner));
    const [m, n] = [areaVector(p, before), areaVector(p, after)];
    return m[0] * n[0] + m[1] * n[1] + m[2] * n[2] > LEAST ** 2;
  });
}

function areaVector(p: ArrayLike<number>, facet: readonly number[]): [number, number, number] {
  const [a, b, c] = facet.map((corner) => 3 * corner) as [number, number, number];
  const u = [0, 1, 2].map((axis) => p[b + axis]! - p[a + axis]!) as [number, number, number];
  const v = [0, 1, 2].map((axis) => p[c + axis]! - p[a + axis]!) as [number, number, number];
  return [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
}
