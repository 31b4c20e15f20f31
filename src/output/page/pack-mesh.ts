import type { Mesh } from '../../solid/mesh.js';
import { ABSENT, Front, type Packing, STEPS, zigzag } from './packing.js';

/**
 * A mesh as bytes that deflate well. Facets are told in a walk from edge to edge: each by its third corner alone, mostly one
 * that is new; a new corner by how far it is off the parallelogram over the edge, 16 bits a coordinate. Each byte of a
 * number stands in a row of its own.
 *
 * @param mesh facets that share corners [mm]
 */
export function packMesh(mesh: Mesh): { readonly packing: Packing; readonly bytes: Uint8Array } {
  const { order, codes, guesses } = walk(mesh);
  const corners = order.length;
  const bytes = new Uint8Array(6 * corners + 3 * codes.length);
  const [low, step] = [[0, 0, 0] as [number, number, number], [1, 1, 1] as [number, number, number]];
  for (const axis of [0, 1, 2] as const) {
    const along = order.map((corner) => mesh.positions[3 * corner + axis]!);
    const { least, most } = rangeOf(along);
    low[axis] = least;
    step[axis] = (most - least) / STEPS || 1;
    const places = along.map((at) => Math.round((at - least) / step[axis]));
    places.forEach((place, i) => {
      const [a, b, c] = guesses[i]!;
      const guess = a < 0 ? (places[i - 1] ?? 0) : places[a]! + places[b]! - places[c]!;
      const off = zigzag(place - guess);
      bytes[2 * axis * corners + i] = off & 255;
      bytes[(2 * axis + 1) * corners + i] = (off >> 8) & 255;
    });
  }
  codes.forEach((code, i) => {
    for (let plane = 0; plane < 3; plane++) bytes[6 * corners + plane * codes.length + i] = (code >> (8 * plane)) & 255;
  });
  return { packing: { corners, codes: codes.length, facets: mesh.triangles.length / 3, low, step }, bytes };
}

type Guess = readonly [number, number, number];
const NONE: Guess = [-1, -1, -1];

/** Corners in the order in which the walk meets them, what it tells of each facet, and what each place is guessed from. */
function walk({ triangles, positions }: Mesh) {
  const across = new HalfEdges(triangles, positions.length / 3);
  const places = new Int32Array(positions.length / 3).fill(-1);
  const order: number[] = [];
  const codes: number[] = [];
  const guesses: Guess[] = [];
  const tell = (corner: number, guess: Guess): number => {
    const known = places[corner]!;
    codes.push(known < 0 ? 0 : order.length - known + 1);
    if (known >= 0) return known;
    places[corner] = order.length;
    guesses.push(guess);
    return order.push(corner) - 1;
  };
  const front = new Front(triangles.length);
  for (let facet = across.take(0); facet >= 0; facet = across.take(facet)) {
    front.begin([0, 1, 2].map((k) => tell(triangles[3 * facet + k]!, NONE)));
    for (let edge = front.next(); edge; edge = front.next()) {
      const [from, to, opposite] = edge;
      const third = across.beyond(order[from]!, order[to]!);
      if (third < 0) codes.push(ABSENT);
      else front.add(edge, tell(third, [from, to, opposite]));
    }
  }
  return { order, codes, guesses };
}

/** Facets by their directed edges, each given out once. */
class HalfEdges {
  readonly #triangles: Uint32Array;
  readonly #taken: Uint8Array;
  /** of each corner, the first place in `triangles` that names it; of each place, the next one that names the same corner */
  readonly #first: Int32Array;
  readonly #next: Int32Array;

  constructor(triangles: Uint32Array, corners: number) {
    this.#triangles = triangles;
    this.#taken = new Uint8Array(triangles.length / 3);
    this.#first = new Int32Array(corners).fill(-1);
    this.#next = new Int32Array(triangles.length);
    for (let i = triangles.length - 1; i >= 0; i--) {
      this.#next[i] = this.#first[triangles[i]!]!;
      this.#first[triangles[i]!] = i;
    }
  }

  /** The first facet from a place on that was not given out; −1 when all were. */
  take(from: number): number {
    const facet = this.#taken.indexOf(0, from);
    if (facet >= 0) this.#taken[facet] = 1;
    return facet;
  }

  /** The third corner of the facet on the other side of an edge; −1 where there is none left. */
  beyond(from: number, to: number): number {
    for (let i = this.#first[to]!; i >= 0; i = this.#next[i]!) {
      const k = i % 3;
      if (this.#triangles[k === 2 ? i - 2 : i + 1] !== from || this.#taken[(i - k) / 3] === 1) continue;
      this.#taken[(i - k) / 3] = 1;
      return this.#triangles[k === 0 ? i + 2 : i - 1]!;
    }
    return -1;
  }
}

function rangeOf(values: readonly number[]) {
  let [least, most] = [Infinity, -Infinity];
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return { least, most };
}
