import { creasedNormals } from '../../src/output/mesh/creased-normals.js';
import type { PageData } from '../../src/output/page/page-data.js';
import { packedLength, unpackMesh } from '../../src/output/page/unpack-mesh.js';
import type { Mesh } from '../../src/solid/mesh.js';
import { outermost } from './outermost.js';

/** Facets that meet at a larger angle have an edge drawn between them. */
const EDGE_DEGREES = 32;

/** A body as it is drawn: three corners and normals of its own for each facet, sharp edges as pairs of ends. */
export interface Drawn {
  readonly corners: Float32Array<ArrayBuffer>;
  readonly normals: Float32Array<ArrayBuffer>;
  readonly edges: Float32Array<ArrayBuffer>;
  /** the corners that reach furthest */
  readonly points: Float32Array<ArrayBuffer>;
}

/** What the page asks to be prepared, and what the answer is: bodies first, then companions. */
export type Asked = Pick<PageData, 'packed'> & { readonly packings: readonly PageData['bodies'][number]['packing'][] };

/** Unpacks every body of a page and works out what is drawn of it. */
export async function prepare({ packed, packings }: Asked): Promise<Drawn[]> {
  const bytes = new Uint8Array(await inflated(packed));
  let from = 0;
  return packings.map((packing) => {
    const mesh = unpackMesh(packing, bytes, from);
    from += packedLength(packing);
    return {
      corners: cornersOf(mesh),
      normals: Float32Array.from(creasedNormals(mesh)),
      edges: edgesOf(mesh),
      points: outermost(mesh.positions),
    };
  });
}

/** What was deflated and written as base64. */
export function inflated(base64: string): Promise<ArrayBuffer> {
  const text = atob(base64);
  const bytes = Uint8Array.from(text, (character) => character.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'))).arrayBuffer();
}

function cornersOf({ positions, triangles }: Mesh): Drawn['corners'] {
  const corners = new Float32Array(3 * triangles.length);
  for (let i = 0; i < triangles.length; i++) {
    for (let axis = 0; axis < 3; axis++) corners[3 * i + axis] = positions[3 * triangles[i]! + axis]!;
  }
  return corners;
}

/** Ends of the edges at which two facets meet sharply. */
function edgesOf({ positions, triangles }: Mesh): Drawn['edges'] {
  const least = Math.cos((EDGE_DEGREES * Math.PI) / 180);
  const count = positions.length / 3;
  const waiting = new Map<number, readonly number[]>();
  const ends: number[] = [];
  for (let i = 0; i < triangles.length; i += 3) {
    const normal = normalOf(positions, triangles, i);
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangles[i + k]!, triangles[i + ((k + 1) % 3)]!];
      const other = waiting.get(b * count + a);
      if (!other) waiting.set(a * count + b, normal);
      else if (normal[0]! * other[0]! + normal[1]! * other[1]! + normal[2]! * other[2]! < least)
        for (const end of [a, b]) ends.push(positions[3 * end]!, positions[3 * end + 1]!, positions[3 * end + 2]!);
    }
  }
  return Float32Array.from(ends);
}

function normalOf(p: Float64Array, triangles: Uint32Array, i: number): readonly [number, number, number] {
  const [a, b, c] = [3 * triangles[i]!, 3 * triangles[i + 1]!, 3 * triangles[i + 2]!];
  const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
  const [vx, vy, vz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!];
  const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const length = Math.hypot(x, y, z) || 1;
  return [x / length, y / length, z / length];
}
