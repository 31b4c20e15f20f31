import type { SeenFacets } from './seen-facets.js';

/** A stretch of an edge, by shares of its length. */
export type Span = readonly [from: number, to: number];

/** How far inside a facet's outline, and how far behind it, something must lie to be hidden by it, mm. */
const INSIDE = 2e-5;
const BEHIND = 5e-5;
/** What rounding does to a steep facet's depth, mm for each unit of its slope. */
const ROUNDING = 4e-6;
const CELLS = 64;

/** Front facets sorted into a grid on the paper, ready to be asked what they hide. */
export class Occluders {
  private readonly facets: Facet[] = [];
  private readonly cells = new Map<number, number[]>();
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

  private add({ mesh: { triangles }, points, facing }: SeenFacets, solid: number): void {
    const open = openSides(triangles, facing);
    for (let facet = 0; facet < facing.length; facet++) {
      if (facing[facet]! <= 0) continue;
      const made = facetOf(points, triangles, facet, { solid, open });
      if (!made) continue;
      const number = this.facets.push(made) - 1;
      this.each(made.min, made.max, (cell) => {
        const known = this.cells.get(cell);
        if (known) known.push(number);
        else this.cells.set(cell, [number]);
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
      for (const number of this.cells.get(cell) ?? []) {
        if (this.lastAsked[number] === this.asked) continue;
        this.lastAsked[number] = this.asked;
        const facet = this.facets[number]!;
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

/** A front facet: three sides a·x + b·y ≥ c on the paper, and its depth there. */
interface Facet {
  readonly solid: number;
  readonly facet: number;
  readonly min: readonly [number, number];
  readonly max: readonly [number, number];
  readonly sides: readonly (readonly [number, number, number])[];
  /** nearness = k + m·x + n·y */
  readonly depth: readonly [k: number, m: number, n: number];
  readonly behind: number;
}

function facetOf(
  points: Float64Array,
  triangles: Uint32Array,
  facet: number,
  { solid, open }: { readonly solid: number; readonly open: Uint8Array },
): Facet | undefined {
  const corner = [0, 1, 2].map((k) => {
    const at = 3 * triangles[3 * facet + k]!;
    return [points[at]!, points[at + 1]!, points[at + 2]!] as const;
  }) as [readonly [number, number, number], readonly [number, number, number], readonly [number, number, number]];
  const [a, b, c] = corner;
  const twice = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  if (twice < 1e-9) return undefined;
  const m = ((b[2] - a[2]) * (c[1] - a[1]) - (c[2] - a[2]) * (b[1] - a[1])) / twice;
  const n = ((c[2] - a[2]) * (b[0] - a[0]) - (b[2] - a[2]) * (c[0] - a[0])) / twice;
  const sides = corner.map(([x, y], k) => {
    const [u, v] = corner[(k + 1) % 3]!;
    const length = Math.hypot(u - x, v - y);
    const [sx, sy] = [(y - v) / length, (u - x) / length];
    return [sx, sy, sx * x + sy * y + (open[3 * facet + k] ? INSIDE : -1e-9)] as const;
  });
  return {
    solid,
    facet,
    min: [Math.min(a[0], b[0], c[0]), Math.min(a[1], b[1], c[1])],
    max: [Math.max(a[0], b[0], c[0]), Math.max(a[1], b[1], c[1])],
    sides,
    depth: [a[2] - m * a[0] - n * a[1], m, n],
    behind: BEHIND + ROUNDING * Math.hypot(m, n),
  };
}

/** Sides of facets over which the next facet does not face the viewer: there light passes beside the solid. */
function openSides(triangles: Uint32Array, facing: Int8Array): Uint8Array {
  const open = new Uint8Array(triangles.length);
  const sideOf = new Map<number, number>();
  for (let i = 0; i < triangles.length; i++) {
    const [a, b] = [triangles[i]!, triangles[i % 3 === 2 ? i - 2 : i + 1]!];
    const key = Math.min(a, b) * 2 ** 26 + Math.max(a, b);
    const other = sideOf.get(key);
    if (other === undefined) {
      sideOf.set(key, i);
      continue;
    }
    if (facing[Math.trunc(i / 3)]! <= 0) open[other] = 1;
    if (facing[Math.trunc(other / 3)]! <= 0) open[i] = 1;
  }
  return open;
}

function hiddenBy({ sides, depth, behind }: Facet, from: readonly number[], to: readonly number[]): Span | undefined {
  let start = 0;
  let end = 1;
  const keep = (low: number, high: number): boolean => {
    // the share of the edge where a value that runs from `low` to `high` is above 0
    if (low <= 0 && high <= 0) return false;
    if (low < 0) start = Math.max(start, low / (low - high));
    else if (high < 0) end = Math.min(end, low / (low - high));
    return start < end;
  };
  for (const [x, y, c] of sides) {
    if (!keep(x * from[0]! + y * from[1]! - c, x * to[0]! + y * to[1]! - c)) return undefined;
  }
  const [k, m, n] = depth;
  const over = (point: readonly number[]) => k + m * point[0]! + n * point[1]! - point[2]! - behind;
  return keep(over(from), over(to)) ? [start, end] : undefined;
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
