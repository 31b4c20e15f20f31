/** Whole numbers that a coordinate is told by, from its least to its most. */
export const STEPS = 65_535;

/** What stands for a facet that is not there, beyond an open edge. */
export const ABSENT = 1;

/** What a mesh is unpacked by, besides its bytes. */
export interface Packing {
  readonly corners: number;
  /** numbers of the walk over the facets */
  readonly codes: number;
  readonly facets: number;
  /** least coordinate on each axis [mm] */
  readonly low: readonly [number, number, number];
  /** what one whole number is on each axis [mm] */
  readonly step: readonly [number, number, number];
}

/** A difference of 16 bits that wraps, small ones of either sign as small whole numbers. */
export function zigzag(change: number): number {
  const wrapped = (change << 16) >> 16;
  return ((wrapped << 1) ^ (wrapped >> 15)) & 0xffff;
}

/** From and to, as the facet at hand goes, and its third corner. */
export type FrontEdge = readonly [from: number, to: number, opposite: number];

/** The edges that a walk over facets has still to cross; packing and unpacking go the same way. */
export class Front {
  readonly #waiting: FrontEdge[] = [];
  readonly #crossed: EdgeSet;

  /** @param edges how many directed edges all facets have */
  constructor(edges: number) {
    this.#crossed = new EdgeSet(edges);
  }

  /** A first facet, or one of another shell. */
  begin([a, b, c]: readonly number[]): void {
    this.#pass(a!, b!, c!);
    this.#pass(b!, c!, a!);
    this.#pass(c!, a!, b!);
  }

  /** The facet beyond an edge, by its third corner. */
  add([from, to]: FrontEdge, third: number): void {
    this.#crossed.add(to, from);
    this.#pass(from, third, to);
    this.#pass(third, to, from);
  }

  /** The next edge that no facet was told beyond; undefined when all are done. */
  next(): FrontEdge | undefined {
    for (let edge = this.#waiting.pop(); edge; edge = this.#waiting.pop()) {
      if (!this.#crossed.has(edge[1], edge[0])) return edge;
    }
    return undefined;
  }

  #pass(from: number, to: number, opposite: number): void {
    this.#crossed.add(from, to);
    this.#waiting.push([from, to, opposite]);
  }
}

/** Directed edges between corners, in a table of open addresses that is at most half full. */
class EdgeSet {
  readonly #from: Int32Array;
  readonly #to: Int32Array;
  readonly #mask: number;

  constructor(most: number) {
    const size = 2 ** Math.ceil(Math.log2(2 * most + 2));
    this.#from = new Int32Array(size).fill(-1);
    this.#to = new Int32Array(size);
    this.#mask = size - 1;
  }

  add(from: number, to: number): void {
    const at = this.#find(from, to);
    this.#from[at] = from;
    this.#to[at] = to;
  }

  has(from: number, to: number): boolean {
    return this.#from[this.#find(from, to)] === from;
  }

  /** Where an edge stands, or would. */
  #find(from: number, to: number): number {
    let at = (Math.imul(from, 0x9e3779b1) ^ Math.imul(to, 0x85ebca6b)) & this.#mask;
    while (this.#from[at]! >= 0 && (this.#from[at] !== from || this.#to[at] !== to)) at = (at + 1) & this.#mask;
    return at;
  }
}
