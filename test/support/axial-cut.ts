import { STLLoader } from 'three/addons/loaders/STLLoader.js';

/** A piece of the cut of a mesh with the half-plane at an angle about the axis: [radius, z] of both ends. */
export type CutPiece = readonly [readonly [number, number], readonly [number, number]];

/** Corner coordinates of an STL file, nine numbers a facet, as an independent reader gives them. */
export function facetsOf(bytes: Uint8Array): Float32Array {
  const copy = new Uint8Array(bytes);
  const geometry = new STLLoader().parse(copy.buffer);
  return geometry.getAttribute('position').array as Float32Array;
}

/** Cuts a mesh with the half-plane at `angle` degrees from +X. */
export function axialCut(facets: Float32Array, angle: number): CutPiece[] {
  const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  const pieces: CutPiece[] = [];
  for (let i = 0; i < facets.length; i += 9) {
    const corners = [0, 3, 6].map((k) => {
      const [x, y, z] = [facets[i + k]!, facets[i + k + 1]!, facets[i + k + 2]!];
      return { along: c * x + s * y, off: c * y - s * x, z };
    });
    const ends: [number, number][] = [];
    for (const [a, b] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ] as const) {
      const [p, q] = [corners[a]!, corners[b]!];
      if (p.off < 0 === q.off < 0) continue;
      const share = p.off / (p.off - q.off);
      ends.push([p.along + share * (q.along - p.along), p.z + share * (q.z - p.z)]);
    }
    if (ends.length === 2 && ends[0]![0] > 0 && ends[1]![0] > 0) pieces.push([ends[0]!, ends[1]!]);
  }
  return pieces;
}

/** What can be read off an internal thread's cut between two heights. */
export interface ReadThread {
  readonly minor: number;
  readonly major: number;
  /** mean angle of the flanks to the plane across the axis, degrees */
  readonly flankAngle: number;
  /** heights at which the cut crosses the pitch line upwards into a tooth, rising */
  readonly crossings: readonly number[];
  /** axial width of the groove at the given diameter */
  readonly grooveWidth: number;
}

/** Reads an internal thread off its cut: only what lies inside `within` and between the heights. */
export function readThread(
  pieces: readonly CutPiece[],
  at: { within: number; from: number; to: number; pitchDiameter: number },
): ReadThread {
  const inner = pieces.filter(
    ([[r1, z1], [r2, z2]]) => Math.max(r1, r2) < at.within && Math.min(z1, z2) > at.from && Math.max(z1, z2) < at.to,
  );
  const radii = inner.flatMap(([[r1], [r2]]) => [r1, r2]);
  const half = at.pitchDiameter / 2;
  const flanks = inner.filter(([[r1, z1], [r2, z2]]) => Math.abs(r1 - r2) > 0.2 && Math.abs(z1 - z2) > 1e-6);
  const angles = flanks.map(([[r1, z1], [r2, z2]]) => (Math.atan(Math.abs((z2 - z1) / (r2 - r1))) * 180) / Math.PI);
  const crossed = inner
    .filter(([[r1], [r2]]) => r1 < half !== r2 < half)
    .map(([[r1, z1], [r2, z2]]) => ({
      z: z1 + ((half - r1) / (r2 - r1)) * (z2 - z1),
      rises: (z2 - z1) * (r2 - r1) < 0,
    }))
    .sort((a, b) => a.z - b.z);
  const widths = crossed.flatMap(({ z, rises }, i) => (!rises && crossed[i + 1]?.rises ? [crossed[i + 1]!.z - z] : []));
  return {
    minor: 2 * Math.min(...radii),
    major: 2 * Math.max(...radii),
    flankAngle: mean(angles),
    crossings: crossed.filter(({ rises }) => rises).map(({ z }) => z),
    grooveWidth: mean(widths),
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
