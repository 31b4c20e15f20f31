import type { Mouth } from './bore-surface.js';
import { turnsLeft } from './convex.js';
import { flatEnd } from './flat-end.js';
import { flatRing } from './flat-ring.js';
import type { Mesh } from './mesh.js';
import type { Outline } from './outline.js';
import type { Triangulate } from './prism-mesh.js';
import type { StandingBore, Wall } from './stitch-bore.js';
import type { RimCorners } from './straight-rim.js';
import type { OpenBore, Rim } from './upright-bores.js';
import type { Span, UprightPlan } from './upright-plan.js';

/** A loop at a level, counter-clockwise. */
interface Ring {
  readonly points: Outline;
  readonly corners: readonly number[];
}

function backwards({ points, corners }: Ring): Ring {
  return { points: [...points].reverse(), corners: [...corners].reverse() };
}

/** A face without holes, if it is convex. */
function flatConvex({ points }: Ring): [number, number, number][] | undefined {
  return turnsLeft(points) ? flatEnd(points.map((_, i) => i)) : undefined;
}

/** Walls and faces of an upright body as they are added; loops and heights that meet share their corners. */
export class UprightMesh {
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

  /** What looks up or down at a level, face by face. */
  private addFace(level: number, up: 1 | -1, triangulate: Triangulate): void {
    const rest: Ring[] = [];
    for (const [outer, ...holes] of this.facesAt(level, up)) {
      const facets =
        holes.length === 0
          ? flatConvex(outer!)
          : holes.length === 1
            ? flatRing(outer!.points, holes[0]!.points)
            : undefined;
      if (facets) this.addFlat(facets, [outer!, ...holes], up);
      else rest.push(outer!, ...holes.map(backwards));
    }
    if (rest.length > 0) this.addFlat(triangulate(rest.map(({ points }) => points.map(([x, y]) => [x, y]))), rest, up);
  }

  private addFlat(facets: Iterable<readonly [number, number, number]>, rings: readonly Ring[], up: 1 | -1): void {
    const named = rings.flatMap(({ corners }) => corners);
    for (const [a, b, c] of facets) {
      if (up > 0) this.triangles.push(named[a]!, named[b]!, named[c]!);
      else this.triangles.push(named[a]!, named[c]!, named[b]!);
    }
  }

  /** Flat faces at a level: of each the loop around it, then those of its holes. */
  private facesAt(level: number, up: 1 | -1): Iterable<readonly Ring[]> {
    const { loops, cells } = this.plan;
    const looks = (cell: number) => cells[cell]![level]! - cells[cell]![level + 1]! === up;
    const isRim = (loop: number) => looks(loop) !== looks(loops[loop]!.around);
    const faces = new Map<number, Ring[]>();
    for (const loop of loops.keys())
      if (looks(loop) && isRim(loop)) faces.set(loop, [this.counterClockwise(loop, level)]);
    for (const loop of loops.keys()) {
      if (looks(loop) || !isRim(loop)) continue;
      let outer = loops[loop]!.around;
      while (!isRim(outer)) outer = loops[outer]!.around;
      faces.get(outer)!.push(this.counterClockwise(loop, level));
    }
    return faces.values();
  }

  /** Rings of left-handed bores run as their columns do. */
  private counterClockwise(loop: number, level: number): Ring {
    const first = this.ringAt(loop, level);
    const points = this.pointsAt(loop, level);
    const corners = points.map((_, i) => first + i);
    const isLeft = this.bores.get(loop)?.standing.bore.thread.hand === 'left';
    return isLeft ? backwards({ points, corners }) : { points, corners };
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
