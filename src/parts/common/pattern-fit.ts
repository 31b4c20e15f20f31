import { enclosingCircle } from './enclosing-circle.js';

type Point = readonly [number, number];

/** How two patterns lie on each other when both are moved as a whole. */
export interface PatternFit {
  /** distance by which the worst hole still misses, mm */
  readonly miss: number;
  /** how far the first pattern was shifted, mm */
  readonly shift: number;
}

/** A pattern is turned by at most so much from where its first hole meets another, degrees. */
const MOST_TURN = 5;
const STEPS = 60;

/**
 * Lays one pattern on another as a whole: the turn and the shift that make the worst miss least. For a turn, the best
 * shift is the centre of the smallest circle around all misses; the miss is its radius. Holes are paired by nearness.
 *
 * @param own     places of the holes [mm]
 * @param theirs  places of what they go on, at least as many [mm]
 * @returns worst miss and shift [mm]
 * @example fitPatterns([[10, 0], [-10, 0]], [[10.5, 0], [-9.5, 0]]) // { miss: 0, shift: 0.5 }
 */
export function fitPatterns(own: readonly Point[], theirs: readonly Point[]): PatternFit {
  const zero = Math.atan2(own[0]![1], own[0]![0]);
  const fits = theirs.map(([x, y]) => fitNear(own, theirs, Math.atan2(y, x) - zero));
  return fits.reduce((best, fit) => (fit.miss < best.miss - 1e-9 ? fit : best));
}

function fitNear(own: readonly Point[], theirs: readonly Point[], turn: number): PatternFit {
  const partners = own.map((point) => nearest(turned(point, turn), theirs));
  const at = (angle: number) => enclosingCircle(own.map((point, i) => minus(partners[i]!, turned(point, angle))));
  let [low, high] = [turn - (MOST_TURN * Math.PI) / 180, turn + (MOST_TURN * Math.PI) / 180];
  for (let i = 0; i < STEPS; i++) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (at(a).radius < at(b).radius) high = b;
    else low = a;
  }
  const bySearch = at((low + high) / 2);
  const straight = at(turn);
  const { center, radius } = straight.radius <= bySearch.radius + 1e-6 ? straight : bySearch;
  return { miss: radius < 1e-7 ? 0 : radius, shift: Math.hypot(...center) };
}

function nearest([x, y]: Point, theirs: readonly Point[]): Point {
  return theirs.reduce((best, point) =>
    Math.hypot(point[0] - x, point[1] - y) < Math.hypot(best[0] - x, best[1] - y) ? point : best,
  );
}

function turned([x, y]: Point, angle: number): Point {
  return [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
}

function minus(a: Point, b: Point): Point {
  return [a[0] - b[0], a[1] - b[1]];
}
