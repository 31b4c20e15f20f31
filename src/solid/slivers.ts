/** Edges shorter than this are collapsed, mm; longer ones are flipped. */
const SHORT = 1e-3;
const PASSES = 20;

/**
 * Takes facets below an area out of a closed mesh without opening it: needles by collapsing their short edge, caps
 * (three corners in a line) by flipping their long edge.
 *
 * @param positions  [x0,y0,z0, …]  [mm]; never changed
 * @param corners    three a facet, closed; facets do not name a corner twice
 * @param leastArea  facets below are removed  [mm²]
 * @returns three corners a facet; facets that could not be removed safely stay
 */
export function removeSlivers(
  positions: Float64Array,
  corners: readonly number[],
  leastArea: number,
): readonly number[] {
  if (!hasSliver(positions, corners, leastArea) && !hasRepeatedEdge(corners, positions.length / 3)) return corners;
  const net = new FacetNet(positions, corners);
  for (let pass = 0; pass < PASSES; pass++) {
    let changed = net.dropBackToBack();
    for (let facet = 0; facet < corners.length / 3; facet++) {
      if (net.alive(facet) && net.area(facet) < leastArea) changed = net.mend(facet, leastArea) || changed;
    }
    if (!changed) break;
  }
  return net.facets();
}

function hasSliver(p: Float64Array, corners: readonly number[], leastArea: number): boolean {
  for (let i = 0; i < corners.length; i += 3) {
    if (areaOf(p, corners[i]!, corners[i + 1]!, corners[i + 2]!) < leastArea) return true;
  }
  return false;
}

function hasRepeatedEdge(corners: readonly number[], count: number): boolean {
  const seen = new Set<number>();
  for (let i = 0; i < corners.length; i++) {
    const key = corners[i]! * count + corners[i % 3 === 2 ? i - 2 : i + 1]!;
    if (seen.has(key)) return true;
    seen.add(key);
  }
  return false;
}

/** A mesh that knows the facets around each corner. */
class FacetNet {
  private readonly corners: Int32Array;
  private readonly around = new Map<number, Set<number>>();

  constructor(
    private readonly positions: Float64Array,
    corners: readonly number[],
  ) {
    this.corners = Int32Array.from(corners);
    for (let facet = 0; facet < corners.length / 3; facet++) this.link(facet);
  }

  alive(facet: number): boolean {
    return this.corners[3 * facet]! >= 0;
  }

  area(facet: number): number {
    const [a, b, c] = this.of(facet);
    return areaOf(this.positions, a, b, c);
  }

  facets(): number[] {
    return Array.from(this.corners).filter((corner) => corner >= 0);
  }

  /** Removes pairs of facets with the same corners in opposite order. */
  dropBackToBack(): boolean {
    const seen = new Map<string, number[]>();
    let changed = false;
    for (let facet = 0; facet < this.corners.length / 3; facet++) {
      if (!this.alive(facet)) continue;
      const key = this.of(facet)
        .sort((x, y) => x - y)
        .join();
      const others = seen.get(key) ?? [];
      const back = others.findIndex((other) => this.parity(other) !== this.parity(facet));
      if (back >= 0) {
        this.drop(facet);
        this.drop(others[back]!);
        others.splice(back, 1);
        changed = true;
      } else seen.set(key, [...others, facet]);
    }
    return changed;
  }

  /** Takes one facet out; false where no safe way is found. */
  mend(facet: number, leastArea: number): boolean {
    const sides = [0, 1, 2].map((side) => ({ side, length: this.length(facet, side) }));
    sides.sort((x, y) => x.length - y.length);
    for (const { side, length } of sides) {
      const [a, b] = this.edge(facet, side);
      if (length < SHORT && (this.collapse(a, b, leastArea) || this.collapse(b, a, leastArea))) return true;
    }
    return this.flip(facet, sides[2]!.side);
  }

  private of(facet: number): [number, number, number] {
    return [this.corners[3 * facet]!, this.corners[3 * facet + 1]!, this.corners[3 * facet + 2]!];
  }

  private edge(facet: number, side: number): [number, number, number] {
    const of = this.of(facet);
    return [of[side]!, of[(side + 1) % 3]!, of[(side + 2) % 3]!];
  }

  private parity(facet: number): boolean {
    const [a, b, c] = this.of(facet);
    return (a < b && b < c) || (b < c && c < a) || (c < a && a < b);
  }

  private length(facet: number, side: number): number {
    const [a, b] = this.edge(facet, side);
    const p = this.positions;
    return Math.hypot(p[3 * a]! - p[3 * b]!, p[3 * a + 1]! - p[3 * b + 1]!, p[3 * a + 2]! - p[3 * b + 2]!);
  }

  private link(facet: number): void {
    for (const corner of this.of(facet)) {
      const known = this.around.get(corner);
      if (known === undefined) this.around.set(corner, new Set([facet]));
      else known.add(facet);
    }
  }

  private drop(facet: number): void {
    for (const corner of this.of(facet)) this.around.get(corner)!.delete(facet);
    this.corners.fill(-1, 3 * facet, 3 * facet + 3);
  }

  private put(facet: number, of: readonly [number, number, number]): void {
    this.drop(facet);
    this.corners.set(of, 3 * facet);
    this.link(facet);
  }

  private neighbours(corner: number): Set<number> {
    const found = new Set<number>();
    for (const facet of this.around.get(corner)!) for (const other of this.of(facet)) found.add(other);
    found.delete(corner);
    return found;
  }

  /** Moves corner `gone` onto `kept`, if the mesh stays a surface and no sound facet turns over or becomes a sliver. */
  private collapse(gone: number, kept: number, leastArea: number): boolean {
    const others = this.neighbours(kept);
    const shared = [...this.neighbours(gone)].filter((corner) => others.has(corner));
    const facets = [...this.around.get(gone)!];
    const folded = facets.filter((facet) => this.of(facet).includes(kept));
    if (folded.length !== 2 || shared.length !== 2) return false;
    const moved = facets.filter((facet) => !folded.includes(facet));
    const renamed = moved.map(
      (facet) => this.of(facet).map((c) => (c === gone ? kept : c)) as [number, number, number],
    );
    for (const [i, facet] of moved.entries()) {
      if (this.area(facet) < leastArea) continue;
      const after = normalOf(this.positions, ...renamed[i]!);
      if (dot(normalOf(this.positions, ...this.of(facet)), after) <= 0) return false;
      if (areaOf(this.positions, ...renamed[i]!) < leastArea) return false;
    }
    for (const facet of folded) this.drop(facet);
    for (const [i, facet] of moved.entries()) this.put(facet, renamed[i]!);
    return true;
  }

  /** Swaps an edge for the other diagonal of its two facets, if that makes the smaller of the two larger. */
  private flip(facet: number, side: number): boolean {
    const [a, b, c] = this.edge(facet, side);
    const across = [...this.around.get(a)!].filter((other) => other !== facet && this.of(other).includes(b));
    if (across.length !== 1) return false;
    const other = across[0]!;
    const d = this.of(other).find((corner) => corner !== a && corner !== b)!;
    if (d === c || this.neighbours(c).has(d)) return false;
    const made = [[c, a, d] as const, [d, b, c] as const];
    const facing = normalOf(this.positions, ...this.of(other));
    const before = Math.min(this.area(facet), this.area(other));
    if (
      made.some((of) => areaOf(this.positions, ...of) <= before || dot(normalOf(this.positions, ...of), facing) < 0)
    ) {
      return false;
    }
    this.put(facet, made[0]!);
    this.put(other, made[1]!);
    return true;
  }
}

function normalOf(p: Float64Array, a: number, b: number, c: number): [number, number, number] {
  const [ax, ay, az] = [p[3 * a]!, p[3 * a + 1]!, p[3 * a + 2]!];
  const [ux, uy, uz] = [p[3 * b]! - ax, p[3 * b + 1]! - ay, p[3 * b + 2]! - az];
  const [vx, vy, vz] = [p[3 * c]! - ax, p[3 * c + 1]! - ay, p[3 * c + 2]! - az];
  return [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
}

function areaOf(p: Float64Array, a: number, b: number, c: number): number {
  const [x, y, z] = normalOf(p, a, b, c);
  return Math.sqrt(x * x + y * y + z * z) / 2;
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!;
}
