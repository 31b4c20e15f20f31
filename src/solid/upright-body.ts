import type { Mouth } from './bore-surface.js';
import type { Mesh } from './mesh.js';
import { nestedLoops } from './nested-loops.js';
import type { Outline } from './outline.js';
import type { PlaneWork, Triangulate } from './prism-mesh.js';
import type { Shape } from './recipe.js';
import { type StandingBore, stitched, type Wall } from './stitch-bore.js';
import type { RimCorners } from './straight-rim.js';
import { coneAt } from './threaded-bore.js';
import { type Loop, liftOf, ringAtHome, ringInBody, type UprightPlan, uprightPlan } from './upright-plan.js';

/** A lead-in is met this far from its ends, mm. */
const WITHIN = 1e-4;

/**
 * A body of upright prisms and threaded bores whose outlines, seen from above, neither cross nor touch: a plate with
 * what stands on it and is bored through. Outlines part the plane into cells, each with its own heights of solid; walls
 * stand on an outline where its two sides differ, and flat faces lie where a cell begins or ends. So nothing is to be
 * cut, and the kernel is not asked for a boolean.
 *
 * @param shape  a recipe
 * @param plane  what works in the plane
 * @returns a closed mesh; undefined where the recipe holds anything else, or outlines meet
 */
export function uprightBody(shape: Shape, { join, triangulate }: PlaneWork): Mesh | undefined {
  const plan = uprightPlan(shape, join);
  if (!plan) return undefined;
  const walls = plan.loops.map((_, loop) => wallsOn(loop, plan));
  const bores = boresOf(plan, walls);
  if (!bores) return undefined;
  const body = new UprightMesh(plan, bores);
  for (const [loop, spans] of walls.entries()) if (!plan.loops[loop]!.bore) body.addWalls(loop, spans);
  body.addFaces(triangulate);
  const mesh = body.mesh();
  if (mesh.triangles.length === 0) return undefined;
  return bores.size === 0 ? mesh : stitched(mesh, body.boreWalls(), triangulate);
}

/** A wall on a loop, from one level to another: 1 where the solid is within, −1 where it is around. */
interface Span {
  readonly low: number;
  readonly high: number;
  readonly side: number;
}

/** The walls on a loop. All of one loop are on one side: a leaf either adds wherever it counts, or takes away. */
function wallsOn(loop: number, { loops, cells, levels }: UprightPlan): Span[] {
  const { around } = loops[loop]!;
  const sideAt = (i: number) => cells[loop]![i]! - cells[around]![i]!;
  const spans: Span[] = [];
  for (let i = 1, low = 0; i <= levels.length; i++) {
    const side = sideAt(i - 1);
    if (side === sideAt(i)) continue;
    if (side !== 0) spans.push({ low, high: i - 1, side });
    low = i - 1;
  }
  return spans;
}

/** A bore where it meets both faces of the body [mm]. */
interface OpenBore {
  readonly standing: StandingBore;
  readonly low: Rim;
  readonly high: Rim;
}

interface Rim {
  readonly level: number;
  /** over where the bore is drawn */
  readonly height: number;
  /** where the bore is drawn, and in the body */
  readonly home: Outline;
  readonly ring: Outline;
}

/**
 * The bores by their loops, each right through what it is in; undefined where a lead-in does not end on a face, or
 * comes near to another outline.
 */
function boresOf(plan: UprightPlan, walls: readonly (readonly Span[])[]): ReadonlyMap<number, OpenBore> | undefined {
  const bores = new Map<number, OpenBore>();
  const { loops, levels } = plan;
  for (const [i, { bore: standing }] of loops.entries()) {
    if (!standing) continue;
    const [span, ...more] = walls[i]!;
    if (!span || more.length > 0 || span.side > 0) return undefined;
    const { bore, plug } = standing;
    const rim = (level: number, cone: typeof bore.low): Rim => {
      const height = levels[level]! - liftOf(standing);
      const home = ringAtHome(standing, coneAt(cone, height));
      return { level, height, home, ring: ringInBody(standing, home) };
    };
    const [low, high] = [rim(span.low, bore.low), rim(span.high, bore.high)];
    const [first, inner, outer, last] = plug.contour.map(([, z]) => z) as [number, number, number, number];
    const isLed =
      low.height > first + WITHIN &&
      low.height < inner - WITHIN &&
      high.height > outer + WITHIN &&
      high.height < last - WITHIN;
    if (!isLed) return undefined;
    bores.set(i, { standing, low, high });
  }
  const areClear = (['low', 'high'] as const).every((end) => staysNested(loops, (i) => bores.get(i)?.[end].ring));
  return bores.size === 0 || areClear ? bores : undefined;
}

function staysNested(loops: readonly Loop[], ringOf: (loop: number) => Outline | undefined): boolean {
  const around = nestedLoops(loops.map(({ points }, i) => ringOf(i) ?? points));
  return around?.every((cell, i) => (cell < 0 ? loops.length : cell) === loops[i]!.around) === true;
}

class UprightMesh {
  private readonly positions: number[] = [];
  private readonly triangles: number[] = [];
  /** the first corner of each ring, by loop and level */
  private readonly rings = new Map<number, number>();

  constructor(
    private readonly plan: UprightPlan,
    private readonly bores: ReadonlyMap<number, OpenBore>,
  ) {}

  mesh(): Mesh {
    return { positions: new Float64Array(this.positions), triangles: new Uint32Array(this.triangles) };
  }

  addWalls(loop: number, spans: readonly Span[]): void {
    const count = this.plan.loops[loop]!.points.length;
    for (const { low, high, side } of spans) {
      const [below, above] = [this.ringAt(loop, low), this.ringAt(loop, high)];
      for (let i = 0; i < count; i++) {
        const j = i + 1 === count ? 0 : i + 1;
        const [from, to] = side > 0 ? [i, j] : [j, i];
        this.triangles.push(below + from, below + to, above + to, below + from, above + to, above + from);
      }
    }
  }

  addFaces(triangulate: Triangulate): void {
    for (let level = 0; level < this.plan.levels.length; level++) {
      this.addFace(level, 1, triangulate);
      this.addFace(level, -1, triangulate);
    }
  }

  /** What looks up or down at a level: the loops that part it from what does not. */
  private addFace(level: number, up: 1 | -1, triangulate: Triangulate): void {
    const { loops, cells } = this.plan;
    const looks = (cell: number) => cells[cell]![level]! - cells[cell]![level + 1]! === up;
    const corners: number[] = [];
    const polygons: [number, number][][] = [];
    for (const [loop, { around }] of loops.entries()) {
      const isOuter = looks(loop);
      if (isOuter === looks(around)) continue;
      const first = this.ringAt(loop, level);
      const ring = this.pointsAt(loop, level).map(([x, y], i): [number, number, number] => [x, y, first + i]);
      // a hole in what looks this way runs the other way round
      if (isOuter !== this.isCounterClockwise(loop)) ring.reverse();
      for (const [, , corner] of ring) corners.push(corner);
      polygons.push(ring.map(([x, y]) => [x, y]));
    }
    if (polygons.length === 0) return;
    for (const [a, b, c] of triangulate(polygons)) {
      if (up > 0) this.triangles.push(corners[a]!, corners[b]!, corners[c]!);
      else this.triangles.push(corners[a]!, corners[c]!, corners[b]!);
    }
  }

  /** Rings of left-handed bores run as their columns do. */
  private isCounterClockwise(loop: number): boolean {
    return this.bores.get(loop)?.standing.bore.thread.hand !== 'left';
  }

  private pointsAt(loop: number, level: number): Outline {
    const bore = this.bores.get(loop);
    if (!bore) return this.plan.loops[loop]!.points;
    return level === bore.low.level ? bore.low.ring : bore.high.ring;
  }

  private ringAt(loop: number, level: number): number {
    const key = loop * this.plan.levels.length + level;
    const known = this.rings.get(key);
    if (known !== undefined) return known;
    const first = this.positions.length / 3;
    const z = this.plan.levels[level]!;
    for (const [x, y] of this.pointsAt(loop, level)) this.positions.push(x, y, z);
    this.rings.set(key, first);
    return first;
  }

  /** Where bores are to be put in: their mouths are open. */
  boreWalls(): [StandingBore, Wall][] {
    return [...this.bores].map(([loop, { standing, low, high }]) => {
      const mouthOf = ({ height, home }: Rim): Mouth => ({ height, sectors: home.map(([x, y]) => [[x, y, height]]) });
      const cornersOf = ({ level, home }: Rim): RimCorners => {
        const first = this.ringAt(loop, level);
        return home.map((_, i) => [first + i]);
      };
      return [
        standing,
        { facets: new Set(), mouths: [mouthOf(low), mouthOf(high)], rims: [cornersOf(low), cornersOf(high)] },
      ];
    });
  }
}
