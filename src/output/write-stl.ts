import { serializeBinary } from '@jscad/stl-serializer/CSGToStlb.js';
import { facetNormals } from '../solid/facet-normals.js';
import type { Mesh } from '../solid/mesh.js';

type Point = [number, number, number];

const IDENTITY = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];

const HEADER = 80;
const PROGRAM = 'leadwright';

/**
 * Writes a mesh as binary STL: the same facets in the same order, float32, and the same bytes each time. The header says
 * what wrote it and what is in it, in ASCII padded with spaces; a reader takes one that begins with `solid` for text.
 *
 * The serializer's own entry point first snaps vertices to a grid, which opens thin facets; so its binary writer is
 * called directly.
 *
 * @param body  facets, counter-clockwise seen from outside  [mm]
 * @param about what the file holds, for its header; cut off after 80 characters
 * @returns the file's bytes: 84 and 50 a facet
 * @example writeStl(cube).length // 684
 */
export function writeStl(body: Mesh, about = ''): Uint8Array {
  const parts = serializeBinary([{ polygons: polygonsOf(body), transforms: IDENTITY }], {});
  const bytes = new Uint8Array(parts.reduce((length, part) => length + part.byteLength, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(new Uint8Array(part), at);
    at += part.byteLength;
  }
  bytes.set(headerOf(about));
  return bytes;
}

function headerOf(about: string): Uint8Array {
  const plain = `${PROGRAM} ${about}`.replace(/[^\x20-\x7e]/g, '?');
  return new TextEncoder().encode(plain.slice(0, HEADER).padEnd(HEADER));
}

/** What all facets of a mesh hand out, filled anew for each: the serializer reads it and keeps nothing. */
interface Hand {
  readonly mesh: Mesh;
  readonly normals: Float64Array;
  readonly vertices: readonly [Point, Point, Point];
  readonly plane: [number, number, number, number];
}

/** A facet of a mesh as the serializer reads it. Its plane is known, so that none is worked out from the corners. */
class Polygon {
  constructor(
    private readonly hand: Hand,
    private readonly first: number,
  ) {}

  get vertices(): readonly [Point, Point, Point] {
    const { mesh, vertices } = this.hand;
    for (let nth = 0; nth < 3; nth++) {
      const at = 3 * mesh.triangles[this.first + nth]!;
      // adding 0 turns −0 into 0, so that equal corners have equal bits
      for (let axis = 0; axis < 3; axis++) vertices[nth]![axis] = mesh.positions[at + axis]! + 0;
    }
    return vertices;
  }

  /** its unit normal; the distance of the plane, which comes after it, is not written */
  get plane(): Hand['plane'] {
    const { normals, plane } = this.hand;
    for (let axis = 0; axis < 3; axis++) plane[axis] = normals[this.first + axis]! + 0;
    return plane;
  }
}

function polygonsOf(mesh: Mesh): Polygon[] {
  const { normals } = facetNormals(mesh);
  const hand: Hand = {
    mesh,
    normals,
    vertices: [
      [0, 0, 0],
      [0, 0, 0],
      [0, 0, 0],
    ],
    plane: [0, 0, 0, 0],
  };
  const polygons: Polygon[] = [];
  for (let first = 0; first < mesh.triangles.length; first += 3) polygons.push(new Polygon(hand, first));
  return polygons;
}
