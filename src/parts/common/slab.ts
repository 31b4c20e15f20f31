import type { SectionPiece } from '../../mechanics/flange/section.js';
import type { Outline } from '../../solid/outline.js';

type Point = readonly [number, number];
type Span = readonly [from: number, to: number];

/** Something cut out of a slab between two heights. */
export interface Opening {
  readonly shape: { readonly at: Point; readonly radius: number } | { readonly outline: Outline };
  readonly from: number;
  readonly to: number;
}

/** A plate or a flange as it bends: its outline from z = 0 to its thickness, and all that is cut out of it, finished sizes. */
export interface Slab {
  readonly outline: Outline;
  readonly thickness: number;
  readonly openings: readonly Opening[];
}

/** A straight cut: all points whose distance from the axis along a unit vector is this. */
export interface CutLine {
  readonly along: Point;
  readonly distance: number;
}

/** The side that a cut is measured along: a quarter turn from its direction. */
export function sideOf([x, y]: Point): Point {
  return [-y, x];
}

export function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1];
}

/** Farthest reach of an outline along a unit vector. */
export function reachAlong(outline: Outline, along: Point): number {
  return Math.max(...outline.map((point) => dot(point, along)));
}

/** The material that a cut meets within some spans of it, as pieces between heights. */
export function materialAt(slab: Slab, line: CutLine, within: readonly Span[]): SectionPiece[] {
  const solid = spansOfOutline(slab.outline, line);
  const openings = slab.openings.flatMap(({ shape, from, to }) => {
    const spans = 'outline' in shape ? spansOfOutline(shape.outline, line) : spansOfRound(shape, line);
    return spans.length === 0 ? [] : [{ spans, from, to }];
  });
  const ends = [solid, within, ...openings.map(({ spans }) => spans)].flat(2).sort((a, b) => a - b);
  return ends.slice(1).flatMap((to, i) => {
    const from = ends[i]!;
    const middle = (from + to) / 2;
    if (to - from < 1e-9 || !covers(solid, middle) || !covers(within, middle)) return [];
    const gone = openings.filter(({ spans }) => covers(spans, middle));
    return heightsLeft(slab.thickness, gone).map(([low, high]) => ({ width: to - from, from: low, to: high }));
  });
}

function covers(spans: readonly Span[], at: number): boolean {
  return spans.some(([from, to]) => at > from && at < to);
}

function heightsLeft(thickness: number, gone: readonly { readonly from: number; readonly to: number }[]): Span[] {
  let left: Span[] = [[0, thickness]];
  for (const { from, to } of gone) {
    left = left.flatMap(([low, high]): Span[] => [
      ...(from > low ? [[low, Math.min(from, high)] as const] : []),
      ...(to < high ? [[Math.max(to, low), high] as const] : []),
    ]);
  }
  return left.filter(([low, high]) => high - low > 1e-9);
}

function spansOfOutline(outline: Outline, { along, distance }: CutLine): Span[] {
  const [ux, uy] = along;
  const crossings: number[] = [];
  let [px, py] = outline.at(-1)!;
  let before = px * ux + py * uy - distance;
  for (const point of outline) {
    const x = point[0];
    const y = point[1];
    const here = x * ux + y * uy - distance;
    if (before < 0 !== here < 0) {
      const share = before / (before - here);
      crossings.push((py + share * (y - py)) * ux - (px + share * (x - px)) * uy);
    }
    px = x;
    py = y;
    before = here;
  }
  crossings.sort((a, b) => a - b);
  return crossings.flatMap((from, i) => (i % 2 === 0 && i + 1 < crossings.length ? [[from, crossings[i + 1]!]] : []));
}

function spansOfRound({ at, radius }: { at: Point; radius: number }, { along, distance }: CutLine): Span[] {
  const off = dot(at, along) - distance;
  if (Math.abs(off) >= radius) return [];
  const half = Math.sqrt(radius * radius - off * off);
  const middle = dot(at, sideOf(along));
  return [[middle - half, middle + half]];
}
