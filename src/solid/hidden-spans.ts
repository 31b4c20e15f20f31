import type { SeenFacets } from './seen-facets.js';

/** A stretch of an edge, by shares of its length. */
export type Span = readonly [from: number, to: number];

/** How far inside a facet's outline, and how far behind it, something must lie to be hidden by it, mm. */
const INSIDE = 2e-5;
const BEHIND = 5e-5;
/** What rounding does to a steep facet's depth, mm for each unit of its slope. */
const ROUNDING = 4e-6;
const CELLS = 20;

/** Front facets sorted into a grid on the paper, ready to be asked what they hide. */
export class Occluders {
  private readonly facets: Facet[] = [];
  private readonly cells: (number[] | undefined)[] = new Array((CELLS + 2) ** 2);
  private readonly low: readonly [number, number];
  private readonly size: number;
  private asked = 0;
  private readonly lastAsked: number[] = [];

  constructor(solids: readonly SeenFacets[]) {
    const [min, max] = [
      [Infinity, Infinity],
      [-Infinity, -Infinity],
    ] as const;
    const [least, most] = [[...min], [...max]];
    for (const { points } of solids)
      for (let i = 0; i < points.length; i += 3)
        for (const axis of [0, 1] as const) {
          least[axis] = Math.min(least[axis]!, points[i + axis]!);
          most[axis] = Math.max(most[axis]!, points[i + axis]!);
        }
    this.low = [least[0]!, least[1]!];
    this.size = Math.max(most[0]! - least[0]!, most[1]! - least[1]!, 1e-6) / CELLS;
    for (const [solid, seen] of solids.entries()) this.add(seen, solid);
  }

  private add(seen: SeenFacets, solid: number): void {
    const { facing } = seen;
    for (let facet = 0; facet < facing.length; facet++) {
      if (facing[facet]! <= 0) continue;
      const made = facetOf(seen, facet, solid);
      if (!made) continue;
      const number = this.facets.push(made) - 1;
      this.each(made.min, made.max, (cell) => {
        const known = this.cells[cell];
        if (known) known.push(number);
        else this.cells[cell] = [number];
      });
    }
  }

  /**
   * Stretches of an edge that some facet hides, joined and in order.
   *
   * @param from    x, y and nearness of its start           [mm]
   * @param to      of its end                               [mm]
   * @param own     the solid it belongs to, and its facets
   */
  hides(
    from: readonly number[],
    to: readonly number[],
    own: { readonly solid: number; readonly facets: readonly [number, number] },
  ): Span[] {
    const spans: Span[] = [];
    this.asked++;
    const min = [Math.min(from[0]!, to[0]!), Math.min(from[1]!, to[1]!)] as const;
    const max = [Math.max(from[0]!, to[0]!), Math.max(from[1]!, to[1]!)] as const;
    this.each(min, max, (cell) => {
      for (const number of this.cells[cell] ?? []) {
        if (this.lastAsked[number] === this.asked) continue;
        this.lastAsked[number] = this.asked;
        const facet = this.facets[number]!;
        if (isApart(facet, min, max)) continue;
        if (facet.solid === own.solid && own.facets.includes(facet.facet)) continue;
        const span = hiddenBy(facet, from, to);
        if (span) spans.push(span);
      }
    });
    return joined(spans);
  }

  private each(min: readonly [number, number], max: readonly [number, number], visit: (cell: number) => void): void {
    const [x0, y0] = this.cellOf(min);
    const [x1, y1] = this.cellOf(max);
    for (let x = x0; x <= x1; x++) for (let y = y0; y <= y1; y++) visit(x * (CELLS + 2) + y);
  }

  private cellOf([x, y]: readonly [number, number]): readonly [number, number] {
    return [Math.floor((x - this.low[0]) / this.size), Math.floor((y - this.low[1]) / this.size)];
  }
}

/** What lies on one side of a plane: a·x + b·y + c·z > d, x and y on the paper, z the nearness. */
type Half = readonly [a: number, b: number, c: number, d: number];

/** A front facet, and what it hides: within its three sides, and behind it. */
interface Facet {
  readonly solid: number;
  readonly facet: number;
  readonly min: readonly [number, number];
  readonly max: readonly [number, number];
  readonly hidden: readonly Half[];
}

/** Whether a facet and an edge lie apart on the paper, by their boxes. */
function isApart(facet: Facet, min: readonly [number, number], max: readonly [number, number]): boolean {
  return (
    facet.max[0] + INSIDE < min[0] ||
    facet.max[1] + INSIDE < min[1] ||
    max[0] + INSIDE < facet.min[0] ||
    max[1] + INSIDE < facet.min[1]
  );
}

function facetOf(
  { mesh: { triangles }, points: p, facing, sides: next }: SeenFacets,
  facet: number,
  solid: number,
): Facet | undefined {
  const a = 3 * triangles[3 * facet]!;
  const b = 3 * triangles[3 * facet + 1]!;
  const c = 3 * triangles[3 * facet + 2]!;
  const ux = p[b]! - p[a]!;
  const uy = p[b + 1]! - p[a + 1]!;
  const uz = p[b + 2]! - p[a + 2]!;
  const vx = p[c]! - p[a]!;
  const vy = p[c + 1]! - p[a + 1]!;
  const vz = p[c + 2]! - p[a + 2]!;
  const twice = ux * vy - uy * vx;
  if (twice < 1e-9) return undefined;
  const m = (uz * vy - vz * uy) / twice;
  const n = (vz * ux - uz * vx) / twice;
  const side = (from: number, to: number, k: number): Half => {
    const dx = p[to]! - p[from]!;
    const dy = p[to + 1]! - p[from + 1]!;
    const length = Math.sqrt(dx * dx + dy * dy);
    // where the next facet does not face the viewer, light passes beside this one; elsewhere it must not leak
    const isOpen = facing[Math.trunc(next[3 * facet + k]! / 3)]! <= 0;
    const x = -dy / length;
    const y = dx / length;
    return [x, y, 0, x * p[from]! + y * p[from + 1]! + (isOpen ? INSIDE : -1e-9)];
  };
  const leeway = BEHIND + ROUNDING * Math.sqrt(m * m + n * n);
  const behind: Half = [m, n, -1, leeway - (p[a + 2]! - m * p[a]! - n * p[a + 1]!)];
  return {
    solid,
    facet,
    min: [Math.min(p[a]!, p[b]!, p[c]!), Math.min(p[a + 1]!, p[b + 1]!, p[c + 1]!)],
    max: [Math.max(p[a]!, p[b]!, p[c]!), Math.max(p[a + 1]!, p[b + 1]!, p[c + 1]!)],
    hidden: [side(a, b, 0), side(b, c, 1), side(c, a, 2), behind],
  };
}

/** The share of an edge that lies in all that a facet hides. */
function hiddenBy({ hidden }: Facet, from: readonly number[], to: readonly number[]): Span | undefined {
  let start = 0;
  let end = 1;
  for (let i = 0; i < hidden.length; i++) {
    const half = hidden[i]!;
    const first = half[0] * from[0]! + half[1] * from[1]! + half[2] * from[2]! - half[3];
    const last = half[0] * to[0]! + half[1] * to[1]! + half[2] * to[2]! - half[3];
    if (first <= 0 && last <= 0) return undefined;
    if (first < 0) start = Math.max(start, first / (first - last));
    else if (last < 0) end = Math.min(end, first / (first - last));
    if (start >= end) return undefined;
  }
  return [start, end];
}

/** Spans in order, those that meet as one. */
export function joined(spans: readonly Span[], gap = 1e-6): Span[] {
  const made: [number, number][] = [];
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    const last = made.at(-1);
    if (last && from <= last[1] + gap) last[1] = Math.max(last[1], to);
    else made.push([from, to]);
  }
  return made;
}

/** What is left of spans where others are taken away. */
export function without(spans: readonly Span[], taken: readonly Span[]): Span[] {
  return taken.reduce<Span[]>(
    (left, [low, high]) =>
      left.flatMap(([from, to]): Span[] =>
        (
          [
            [from, Math.min(to, low)],
            [Math.max(from, high), to],
          ] as const
        ).filter(([a, b]) => b > a),
      ),
    [...spans],
  );
}
