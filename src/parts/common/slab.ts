import type { SectionPiece } from '../../mechanics/flange/section.js';
import type { Outline } from '../../solid/outline.js';

type Point = readonly [number, number];
export type Span = readonly [from: number, to: number];

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
  /** sharp corners in plan that stand into it */
  readonly corners?: readonly Point[];
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
  let reach = Number.NEGATIVE_INFINITY;
  for (const point of outline) reach = Math.max(reach, point[0] * along[0] + point[1] * along[1]);
  return reach;
}

/** Ends of a slab on a cut that runs through it; undefined where it does not. */
export function endsOn({ outline }: Pick<Slab, 'outline'>, line: CutLine): Span | undefined {
  const spans = spansOfOutline(outline, line);
  const [first, last] = [spans[0], spans.at(-1)];
  return first && last && [first[0], last[1]];
}

/** What a cut meets of an opening. */
interface Gone {
  readonly spans: readonly Span[];
  readonly from: number;
  readonly to: number;
}

/** The material that a cut meets within some spans of it, as pieces between heights. */
export function materialAt(slab: Slab, line: CutLine, within: readonly Span[]): SectionPiece[] {
  const solid = spansOfOutline(slab.outline, line);
  if (solid.length === 0 || within.length === 0) return [];
  const openings: Gone[] = [];
  for (const { shape, from, to } of slab.openings) {
    const spans = 'outline' in shape ? spansOfOutline(shape.outline, line) : spansOfRound(shape, line);
    if (spans.length > 0) openings.push({ spans, from, to });
  }
  const ends: number[] = [];
  for (const spans of [solid, within, ...openings.map((opening) => opening.spans)])
    for (const span of spans) ends.push(span[0], span[1]);
  ends.sort((a, b) => a - b);
  const pieces: SectionPiece[] = [];
  for (let i = 1; i < ends.length; i++) {
    const from = ends[i - 1]!;
    const to = ends[i]!;
    const middle = (from + to) / 2;
    if (to - from < 1e-9 || !covers(solid, middle) || !covers(within, middle)) continue;
    const gone = openings.filter(({ spans }) => covers(spans, middle));
    for (const [low, high] of heightsLeft(slab.thickness, gone)) pieces.push({ width: to - from, from: low, to: high });
  }
  return pieces;
}

function covers(spans: readonly Span[], at: number): boolean {
  for (const span of spans) if (at > span[0] && at < span[1]) return true;
  return false;
}

function heightsLeft(thickness: number, gone: readonly Gone[]): Span[] {
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
