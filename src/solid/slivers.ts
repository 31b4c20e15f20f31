import { type Facet, FacetNet } from './facet-net.js';

/** What a facet must have at least. */
export interface LeastFacet {
  /** mm² */
  readonly area: number;
  /** over its longest side, mm */
  readonly height: number;
}

/** Edges shorter than this may be collapsed, mm. */
const SHORT = 1e-3;
const PASSES = 20;

/**
 * Takes facets below an area or a height out of a closed mesh without opening it: needles by collapsing their short
 * edge, caps (three corners in a line) by flipping their long edge.
 *
 * @param positions  [x0,y0,z0, …]  [mm]; never changed
 * @param corners    three a facet, closed; facets do not name a corner twice
 * @param least      facets below are removed  [mm², mm]
 * @returns three corners a facet; facets that could not be removed safely stay
 */
export function removeSlivers(positions: Float64Array, corners: Uint32Array, least: LeastFacet): Uint32Array {
  let slivers: number[] = [];
  for (let i = 0; i < corners.length; i += 3) {
    if (goodness(positions, corners[i]!, corners[i + 1]!, corners[i + 2]!, least) < 1) slivers.push(i / 3);
  }
  if (slivers.length === 0) return corners;
  const net = new FacetNet(corners, positions.length / 3);
  const mender = new SliverMender(net, positions, least);
  for (let pass = 0; pass < PASSES && slivers.length > 0; pass++) {
    const mended = slivers.filter((facet) => mender.isSliver(facet) && mender.mend(facet));
    if (mended.length === 0) break;
    slivers = mender.slivers();
  }
  return net.facets();
}

class SliverMender {
  constructor(
    private readonly net: FacetNet,
    private readonly positions: Float64Array,
    private readonly least: LeastFacet,
  ) {}

  isSliver(facet: number): boolean {
    return this.net.alive(facet) && this.goodness(this.net.of(facet)) < 1;
  }

  /** All that are left. */
  slivers(): number[] {
    const found: number[] = [];
    for (let facet = 0; facet < this.net.length; facet++) if (this.isSliver(facet)) found.push(facet);
    return found;
  }

  /** Takes one facet out; false where no safe way is found. */
  mend(facet: number): boolean {
    const [a, b, c] = this.net.of(facet);
    const edges = [[a, b, c] as const, [b, c, a] as const, [c, a, b] as const].map((edge) => ({
      edge,
      length: distance(this.positions, edge[0], edge[1]),
    }));
    edges.sort((x, y) => x.length - y.length);
    // a cap is flipped before anything is moved; a needle has a side too short for that
    if (edges[0]!.length > this.least.height && this.flip(facet, edges[2]!.edge)) return true;
    for (const { edge, length } of edges) {
      if (length < SHORT && (this.collapse(edge[0], edge[1]) || this.collapse(edge[1], edge[0]))) return true;
    }
    return this.flip(facet, edges[2]!.edge) || this.flipAfterNext(facet, edges[2]!.edge);
  }

  /**
   * Where the facet beyond a long edge is almost as low, as in a fan that runs along a hole's rim: that one first swaps an
   * edge with the next beyond it, if it lies in the next one's plane.
   */
  private flipAfterNext(facet: number, edge: readonly [number, number, number]): boolean {
    const [a, b] = edge;
    const next = this.beyond(facet, a, b);
    if (next === undefined) return false;
    const d = this.net.of(next).find((corner) => corner !== a && corner !== b)!;
    for (const [from, to, apex] of [[a, d, b] as const, [d, b, a] as const]) {
      const third = this.beyond(next, from, to);
      if (third === undefined || this.offPlane(apex, this.net.of(third)) > this.least.height) continue;
      if (this.flip(next, [from, to, apex])) return this.flip(facet, edge);
    }
    return false;
  }

  /** The other facet at an edge. */
  private beyond(facet: number, a: number, b: number): number | undefined {
    const across = [...this.net.around(a)].filter((other) => other !== facet && this.net.of(other).includes(b));
    return across.length === 1 ? across[0] : undefined;
  }

  private offPlane(corner: number, [a, b, c]: Facet): number {
    const normal = normalOf(this.positions, a, b, c);
    const [p, o] = [3 * corner, 3 * a];
    const to = [0, 1, 2].map((axis) => this.positions[p + axis]! - this.positions[o + axis]!);
    return Math.abs(dot(normal, to)) / Math.sqrt(dot(normal, normal));
  }

  /** Moves corner `gone` onto `kept`, if the mesh stays a surface and no sound facet turns over or becomes a sliver. */
  private collapse(gone: number, kept: number): boolean {
    const others = this.net.neighbours(kept);
    const shared = [...this.net.neighbours(gone)].filter((corner) => others.has(corner));
    const facets = [...this.net.around(gone)];
    const folded = facets.filter((facet) => this.net.of(facet).includes(kept));
    if (folded.length !== 2 || shared.length !== 2) return false;
    const moved = facets
      .filter((facet) => !folded.includes(facet))
      .map((facet) => {
        const before = this.net.of(facet);
        return { facet, before, after: before.map((corner) => (corner === gone ? kept : corner)) as Facet };
      });
    if (!moved.every(({ before, after }) => this.goodness(before) < 1 || this.agrees(before, after))) return false;
    for (const facet of folded) this.net.drop(facet);
    for (const { facet, after } of moved) this.net.put(facet, after);
    return true;
  }

  private agrees(before: Facet, after: Facet): boolean {
    const facing = dot(normalOf(this.positions, ...before), normalOf(this.positions, ...after));
    return facing > 0 && this.goodness(after) >= 1;
  }

  /** Swaps an edge for the other diagonal of its two facets, if that makes the poorer of the two better. */
  private flip(facet: number, [a, b, c]: readonly [number, number, number]): boolean {
    const across = this.beyond(facet, a, b);
    if (across === undefined) return false;
    const other = this.net.of(across);
    const d = other.find((corner) => corner !== a && corner !== b)!;
    if (d === c || this.net.neighbours(c).has(d)) return false;
    const made: [Facet, Facet] = [
      [c, a, d],
      [d, b, c],
    ];
    const facing = normalOf(this.positions, ...other);
    const before = Math.min(this.goodness(this.net.of(facet)), this.goodness(other));
    const sound = (of: Facet) => this.goodness(of) > before && dot(normalOf(this.positions, ...of), facing) >= 0;
    if (!made.every(sound)) return false;
    this.net.put(facet, made[0]);
    this.net.put(across, made[1]);
    return true;
  }

  private goodness([a, b, c]: Facet): number {
    return goodness(this.positions, a, b, c, this.least);
  }
}

/** How many times over a facet has what it must have; a sliver below 1. */
function goodness(p: Float64Array, a: number, b: number, c: number, { area, height }: LeastFacet): number {
  const ax = p[3 * a]!;
  const ay = p[3 * a + 1]!;
  const az = p[3 * a + 2]!;
  const ux = p[3 * b]! - ax;
  const uy = p[3 * b + 1]! - ay;
  const uz = p[3 * b + 2]! - az;
  const vx = p[3 * c]! - ax;
  const vy = p[3 * c + 1]! - ay;
  const vz = p[3 * c + 2]! - az;
  const nx = uy * vz - uz * vy;
  const ny = uz * vx - ux * vz;
  const nz = ux * vy - uy * vx;
  const twice = Math.sqrt(nx * nx + ny * ny + nz * nz);
  const longest = Math.max(length(ux, uy, uz), length(vx, vy, vz), length(vx - ux, vy - uy, vz - uz));
  return longest === 0 ? 0 : Math.min(twice / 2 / area, twice / longest / height);
}

/** Without `Math.hypot`, which makes garbage. */
function length(x: number, y: number, z: number): number {
  return Math.sqrt(x * x + y * y + z * z);
}

function distance(p: Float64Array, a: number, b: number): number {
  return length(p[3 * a]! - p[3 * b]!, p[3 * a + 1]! - p[3 * b + 1]!, p[3 * a + 2]! - p[3 * b + 2]!);
}

function normalOf(p: Float64Array, a: number, b: number, c: number): [number, number, number] {
  const ax = p[3 * a]!;
  const ay = p[3 * a + 1]!;
  const az = p[3 * a + 2]!;
  const ux = p[3 * b]! - ax;
  const uy = p[3 * b + 1]! - ay;
  const uz = p[3 * b + 2]! - az;
  const vx = p[3 * c]! - ax;
  const vy = p[3 * c + 1]! - ay;
  const vz = p[3 * c + 2]! - az;
  return [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!;
}
