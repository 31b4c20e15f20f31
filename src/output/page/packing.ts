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
  readonly #crossed = new Set<number>();

  /** A first facet, or one of another shell. */
  begin([a, b, c]: readonly number[]): void {
    this.#pass(a!, b!, c!);
    this.#pass(b!, c!, a!);
    this.#pass(c!, a!, b!);
  }

  /** The facet beyond an edge, by its third corner. */
  add([from, to]: FrontEdge, third: number): void {
    this.#crossed.add(keyOf(to, from));
    this.#pass(from, third, to);
    this.#pass(third, to, from);
  }

  /** The next edge that no facet was told beyond; undefined when all are done. */
  next(): FrontEdge | undefined {
    for (let edge = this.#waiting.pop(); edge; edge = this.#waiting.pop()) {
      if (!this.#crossed.has(keyOf(edge[1], edge[0]))) return edge;
    }
    return undefined;
  }

  #pass(from: number, to: number, opposite: number): void {
    this.#crossed.add(keyOf(from, to));
    this.#waiting.push([from, to, opposite]);
  }
}

/** One number for a directed edge between corners below 2^26. */
function keyOf(from: number, to: number): number {
  return from * 0x400_0000 + to;
}
