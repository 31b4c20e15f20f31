/** Three corners of a facet, counter-clockwise. */
export type Facet = [number, number, number];

/**
 * A closed mesh whose facets can be changed one by one. The facets around a corner are listed only once somebody asks
 * for them, so that a few repairs in a large mesh stay cheap.
 */
export class FacetNet {
  private readonly corners: Int32Array;
  private readonly starts: Uint32Array;
  private readonly listed: Uint32Array;
  private readonly touched = new Map<number, Set<number>>();

  /** @param corners  three a facet  @param count  number of corners */
  constructor(corners: ArrayLike<number>, count: number) {
    this.corners = new Int32Array(corners);
    this.starts = new Uint32Array(count + 1);
    this.listed = new Uint32Array(corners.length);
    for (const corner of this.corners) this.starts[corner + 1]!++;
    for (let i = 0; i < count; i++) this.starts[i + 1]! += this.starts[i]!;
    const next = this.starts.slice();
    for (let i = 0; i < corners.length; i++) this.listed[next[this.corners[i]!]!++] = Math.trunc(i / 3);
  }

  /** Number of facets, dropped ones included. */
  get length(): number {
    return this.corners.length / 3;
  }

  alive(facet: number): boolean {
    return this.corners[3 * facet]! >= 0;
  }

  of(facet: number): Facet {
    return [this.corners[3 * facet]!, this.corners[3 * facet + 1]!, this.corners[3 * facet + 2]!];
  }

  /** The facets that name a corner. */
  around(corner: number): Set<number> {
    const known = this.touched.get(corner);
    if (known !== undefined) return known;
    const set = new Set(this.listed.subarray(this.starts[corner]!, this.starts[corner + 1]!));
    this.touched.set(corner, set);
    return set;
  }

  /** The corners joined to a corner by an edge. */
  neighbours(corner: number): Set<number> {
    const found = new Set<number>();
    for (const facet of this.around(corner)) for (const other of this.of(facet)) found.add(other);
    found.delete(corner);
    return found;
  }

  drop(facet: number): void {
    for (const corner of this.of(facet)) this.around(corner).delete(facet);
    this.corners.fill(-1, 3 * facet, 3 * facet + 3);
  }

  /** Gives a facet other corners. */
  put(facet: number, of: Facet): void {
    for (const corner of this.of(facet)) this.around(corner).delete(facet);
    for (const corner of of) this.around(corner).add(facet);
    this.corners.set(of, 3 * facet);
  }

  /** The corners of the facets that are left, three a facet. */
  facets(): Uint32Array {
    const left = new Uint32Array(this.corners.length);
    let count = 0;
    for (let i = 0; i < left.length; i++) if (this.corners[i]! >= 0) left[count++] = this.corners[i]!;
    return left.slice(0, count);
  }
}
