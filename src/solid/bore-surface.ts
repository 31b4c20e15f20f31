import { unitAt } from './angles.js';
import type { Mesh } from './mesh.js';
import { between, type CutPolygon, polygonCutter } from './polygon-cutter.js';
import type { Triangulate } from './prism-mesh.js';
import { type ThreadSurface, threadSurface } from './thread-sweep.js';
import { type Cone, coneAt, type ThreadedBore, threadRadius } from './threaded-bore.js';

/** Corners of a thread that are closer to a lead-in than this are put onto it, mm. */
const ON_CONE = 1e-5;

type End = 0 | 1;
type Point = readonly [x: number, y: number, z: number];

/** Where a lead-in leaves the body. */
export interface Mouth {
  /** its plane [mm] */
  readonly height: number;
  /** for each sector the corners from its first column on, before the next one's [mm] */
  readonly sectors: readonly (readonly Point[])[];
}

/**
 * The surface of a threaded bore as a right-handed one: the thread where it is wider than the lead-ins, these where
 * it is not. Both are straight along every column, and a lead-in is flat between two columns, so each facet of the
 * thread is cut by one plane at most, and what is left of the lead-in between two columns is a flat polygon.
 *
 * @param bore         thread and lead-ins              [mm]
 * @param mouths       the lower and the upper one      [mm]
 * @param triangulate  cuts polygons into triangles
 * @returns facets that face away from the axis; the first corners are those of the lower mouth, sector by sector, then
 *   those of the upper one; open at both  [mm]. Undefined where the polygons do not close
 */
export function boreSurface(
  bore: ThreadedBore,
  mouths: readonly [Mouth, Mouth],
  triangulate: Triangulate,
): Mesh | undefined {
  const surface = new BoreSurface(bore, mouths);
  surface.cutThread();
  for (const end of [0, 1] as const) if (!surface.fillCone(end, triangulate)) return undefined;
  return { positions: new Float64Array(surface.positions), triangles: new Uint32Array(surface.triangles) };
}

class BoreSurface {
  readonly positions: number[] = [];
  readonly triangles: number[] = [];
  private readonly cones: readonly [Cone, Cone];
  private readonly columns: number;
  private readonly widest: number;
  private readonly source: ThreadSurface;
  private readonly rings: readonly [readonly number[][], readonly number[][]];
  /** number of the thread's first corner */
  private readonly first: number;
  /** column that a corner stands on, -1 between two */
  private readonly columnOf: number[] = [];
  /** how much wider than each lead-in a corner stands, 0 on it */
  private readonly above: readonly [number[], number[]] = [[], []];
  /** sides of the thread's facets that lie on a lead-in, each by its corners, with the sector it is in */
  private readonly rims: readonly [Map<number, number>, Map<number, number>] = [new Map(), new Map()];

  constructor(
    private readonly bore: ThreadedBore,
    mouths: readonly [Mouth, Mouth],
  ) {
    const { thread, low, high } = bore;
    this.cones = [low, high];
    this.columns = thread.columns;
    this.widest = Math.max(coneAt(low, mouths[0].height), coneAt(high, mouths[1].height));
    this.source = threadSurface({ ...thread, from: mouths[0].height, to: mouths[1].height });
    this.rings = [this.addMouth(mouths[0]), this.addMouth(mouths[1])];
    this.first = this.columnOf.length;
    this.addThread();
  }

  /** Its corners by their numbers, each on a column or, with -1, between two. */
  private addMouth({ sectors }: Mouth): readonly number[][] {
    return sectors.map((points, sector) =>
      points.map((point, i) => this.add(point, i === 0 ? sector : -1, [Number.NaN, Number.NaN])),
    );
  }

  private add(point: Point, column: number, above: readonly [number, number]): number {
    this.positions.push(point[0], point[1], point[2]);
    this.columnOf.push(column);
    this.above[0].push(above[0]);
    this.above[1].push(above[1]);
    return this.columnOf.length - 1;
  }

  private addThread(): void {
    const { source, cones } = this;
    const [low, high] = cones;
    for (let i = 0; 3 * i < source.positions.length; i++) {
      const radius = this.radiusOf(i);
      const z = source.positions[3 * i + 2]!;
      const overLow = radius - coneAt(low, z);
      const overHigh = radius - coneAt(high, z);
      const isOnLow = Math.abs(overLow) < ON_CONE;
      const isOnHigh = !isOnLow && Math.abs(overHigh) < ON_CONE;
      const scale = isOnLow || isOnHigh ? coneAt(isOnLow ? low : high, z) / radius : 1;
      this.positions.push(scale * source.positions[3 * i]!, scale * source.positions[3 * i + 1]!, z);
      this.columnOf.push(Math.floor(i / source.stride));
      this.above[0].push(isOnLow ? 0 : overLow);
      this.above[1].push(isOnHigh ? 0 : overHigh);
    }
  }

  /** Takes the thread's facets where they are wider than both lead-ins. */
  cutThread(): void {
    const { first } = this;
    const cutters = ([0, 1] as const).map((end) =>
      polygonCutter(
        (corner) => this.above[end][corner]!,
        (a, b, share) => this.addBetween(a, b, share, end),
      ),
    );
    const { triangles } = this.source;
    for (let i = 0; i < triangles.length; i += 6) {
      const a = first + triangles[i]!;
      const b = first + triangles[i + 1]!;
      const c = first + triangles[i + 2]!;
      const d = first + triangles[i + 3]!;
      const e = first + triangles[i + 4]!;
      const f = first + triangles[i + 5]!;
      // on a crest or a root both facets of a quad lie in one plane
      if (this.radiusOf(a - first) === this.radiusOf(f - first)) this.cutFacet([a, b, e, f], cutters);
      else {
        this.cutFacet([a, b, c], cutters);
        this.cutFacet([d, e, f], cutters);
      }
    }
  }

  /** Radius of the thread at a corner of its own surface. */
  private radiusOf(corner: number): number {
    const { ridge } = this.bore.thread;
    return ridge[(corner % this.source.stride) % ridge.length]![1];
  }

  private cutFacet(facet: readonly number[], cutters: readonly CutPolygon[]): void {
    const isClear = facet.every((corner) => this.above[0][corner]! > 0 && this.above[1][corner]! > 0);
    const polygon = isClear
      ? facet
      : cutters.reduce<readonly number[]>((rest, cut) => (rest.length === 0 ? rest : cut(rest)), facet);
    for (let k = 2; k < polygon.length; k++) this.triangles.push(polygon[0]!, polygon[k - 1]!, polygon[k]!);
    if (!isClear) this.noteRim(polygon, this.sectorOf(facet));
  }

  private addBetween(a: number, b: number, share: number, end: End): number {
    const at = (axis: number) => between(this.positions, axis, a, b, share);
    const other = this.above[1 - end]!;
    const rest = other[a]! + share * (other[b]! - other[a]!);
    const column = this.columnOf[a] === this.columnOf[b] ? this.columnOf[a]! : -1;
    return this.add([at(0), at(1), at(2)], column, end === 0 ? [0, rest] : [rest, 0]);
  }

  /** A sector is counted by the column that it begins at. */
  private sectorOf(facet: readonly number[]): number {
    const columns = facet.map((corner) => this.columnOf[corner]!);
    const [least, most] = [Math.min(...columns), Math.max(...columns)];
    return most - least > 1 ? most : least;
  }

  private noteRim(polygon: readonly number[], sector: number): void {
    for (const end of [0, 1] as const) {
      const above = this.above[end];
      for (const [i, a] of polygon.entries()) {
        const b = polygon[(i + 1) % polygon.length]!;
        if (above[a] !== 0 || above[b] !== 0) continue;
        // a side that a neighbour runs the other way is no rim
        if (!this.rims[end].delete(sideKey(b, a))) this.rims[end].set(sideKey(a, b), sector);
      }
    }
  }

  /** Fills what the thread leaves of a lead-in; false where it does not close. */
  fillCone(end: End, triangulate: Triangulate): boolean {
    const sectors = this.sidesOf(end);
    const loops: number[][] = [];
    const polygons: [number, number][][] = [];
    for (const [sector, sides] of sectors.entries()) {
      const closed = closedLoops(sides);
      if (!closed) return false;
      for (const loop of closed) {
        loops.push(loop);
        polygons.push(loop.map((corner) => this.unrolled(corner, sector)));
      }
    }
    const corners = loops.flat();
    for (const [a, b, c] of triangulate(polygons)) this.triangles.push(corners[a]!, corners[b]!, corners[c]!);
    return true;
  }

  /** For each sector the sides of what is left of the lead-in, seen from outside with it on the left. */
  private sidesOf(end: End): [number, number][][] {
    const sectors = Array.from({ length: this.columns }, (): [number, number][] => []);
    const onColumn = Array.from({ length: this.columns }, () => new Set<number>());
    for (const [key, sector] of this.rims[end]) {
      const side = sideOf(key);
      sectors[sector]!.push([side[1], side[0]]);
      for (const corner of side) if (this.columnOf[corner]! >= 0) onColumn[this.columnOf[corner]!]!.add(corner);
    }
    for (let column = 0; column < this.columns; column++) {
      const rim = [...this.rings[end][column]!, this.mouthCorner(end, (column + 1) % this.columns)];
      for (const [i, left] of rim.slice(0, -1).entries())
        sectors[column]!.push(end === 0 ? [left, rim[i + 1]!] : [rim[i + 1]!, left]);
      const before = (column + this.columns - 1) % this.columns;
      for (const [low, high] of this.openSpans(end, column, onColumn[column]!)) {
        sectors[before]!.push([low, high]);
        sectors[column]!.push([high, low]);
      }
    }
    return sectors;
  }

  private mouthCorner(end: End, column: number): number {
    return this.rings[end][column]![0]!;
  }

  /** Spans of a column in which the lead-in is wider than the thread, each from its lower to its upper corner. */
  private openSpans(end: End, column: number, rim: ReadonlySet<number>): [number, number][] {
    const z = (corner: number) => this.positions[3 * corner + 2]!;
    const corners = [...rim, this.mouthCorner(end, column)].sort((a, b) => z(a) - z(b));
    const spans = corners.slice(1).map((corner, i): [number, number] => [corners[i]!, corner]);
    return spans.filter(([low, high]) => {
      const middle = (z(low) + z(high)) / 2;
      return threadRadius(this.bore.thread, column, middle) < coneAt(this.cones[end]!, middle);
    });
  }

  /** A corner in the plane of its sector, the sectors beside one another so that they are cut in one go. */
  private unrolled(corner: number, sector: number): [number, number] {
    const [from, to] = [unitAt(sector, this.columns), unitAt(sector + 1, this.columns)];
    const chord = 2 * Math.sin(Math.PI / this.columns);
    const [x, y, z] = [0, 1, 2].map((axis) => this.positions[3 * corner + axis]!) as [number, number, number];
    const along = (x * (to[0] - from[0]) + y * (to[1] - from[1])) / chord;
    return [along + 2 * chord * this.widest * sector, z];
  }
}

function sideKey(a: number, b: number): number {
  return a * 2 ** 26 + b;
}

function sideOf(key: number): [number, number] {
  return [Math.floor(key / 2 ** 26), key % 2 ** 26];
}

/** Sides put in order, end to end; undefined where one leads nowhere. */
function closedLoops(sides: readonly (readonly [number, number])[]): number[][] | undefined {
  const onwards = new Map<number, number[]>();
  for (const [from, to] of sides) onwards.set(from, [...(onwards.get(from) ?? []), to]);
  const loops: number[][] = [];
  for (const start of onwards.keys()) {
    while (onwards.get(start)!.length > 0) {
      const loop: number[] = [];
      let corner = start;
      do {
        loop.push(corner);
        const next = onwards.get(corner)?.pop();
        if (next === undefined) return undefined;
        corner = next;
      } while (corner !== start);
      if (loop.length > 2) loops.push(loop);
    }
  }
  return loops;
}
