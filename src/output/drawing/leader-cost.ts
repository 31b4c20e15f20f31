import type { Point } from '../../parts/part-views.js';
import type { Ink, Pen } from './ink.js';
import { type Circle, PITCH, shelfBox, type Way } from './leader-ways.js';
import type { PlacedView } from './placed-view.js';
import { type Side, sideDistance, sidesCross, sidesOf } from './sides.js';
import { type Box, overlaps, shareInside, textBox } from './text-box.js';

/** What a leader must not do costs more than anything that it had better not. */
export const FORBIDDEN = 1000;
/** A line that is crossed, by its pen, and one under the text. */
const CROSSED: Readonly<Record<Pen, number>> = { wide: 3, hidden: 3, narrow: 4, centre: 1, hatch: 0 };
const UNDER_TEXT = 8;
/** A line alongside: how far off, its length, and how much its direction differs at most [mm of paper, degrees]. */
const ALONGSIDE = { cost: 12, off: 2.5, length: 4, turn: 9 };
/** Lines as steep as hatching look like it, level and upright ones like edges [degrees]. */
const AS_HATCHING = { cost: 6, turn: 8 };
const AS_EDGE = { cost: 6, turn: 12 };
/** A line that passes a round feature at less than this [mm of paper]. */
const NEAR = { cost: 10, off: 1.5 };
export const KNEE = 15;
const [LEFT, PER_MM] = [4, 0.25];
/** Chords in which arcs are crossed [degrees]. */
const CHORD = 15;
/** Off circles, and off the tip, where lines are not counted [mm of paper]. */
const TOUCH = 0.2;

/** What stands in a view besides its leaders. */
export interface Obstacles {
  readonly texts: readonly Box[];
  readonly lines: readonly { readonly side: Side; readonly cost: number; readonly isLong: boolean }[];
  /** round features */
  readonly discs: readonly Circle[];
  readonly isHatched: boolean;
}

/** @param ink all that is drawn of the view without its leaders */
export function inTheWay({ view, at, scale }: PlacedView, ink: readonly Ink[]): Obstacles {
  const lines = ink.flatMap((one) => {
    if (one.kind === 'text' || one.kind === 'group') return [];
    const cost = CROSSED[one.kind === 'fill' ? 'narrow' : one.pen];
    return sidesOf(one, CHORD).map((side) => ({
      side,
      cost,
      isLong: one.kind === 'line' && lengthOf(side) >= ALONGSIDE.length,
    }));
  });
  const discs = view.strokes.flatMap((stroke) => {
    if (stroke.kind === 'path' || stroke.line === 'centre') return [];
    const isRound = stroke.kind === 'circle' || stroke.to - stroke.from > 180;
    return isRound ? [{ center: at(stroke.center), radius: scale * stroke.radius }] : [];
  });
  const isHatched = view.hatched.length > 0;
  return { texts: ink.flatMap((one) => (one.kind === 'text' ? [textBox(one)] : [])), lines, discs, isHatched };
}

/** What a shelf costs wherever its line comes from. */
export function shelfCost(box: Box, { texts, lines }: Obstacles): number {
  const covered = texts.filter((text) => overlaps(text, box)).length;
  const under = lines.filter(({ side }) => shareInside(side[0], side[1], box)).length;
  return FORBIDDEN * covered + UNDER_TEXT * under;
}

/** What the line of a way costs. */
export function lineCost(way: Way, { texts, lines, discs, isHatched }: Obstacles): number {
  const sides = sidesFrom(way);
  const forbidden =
    texts.filter((text) => sides.some((side) => shareInside(side[0], side[1], text))).length +
    discs.filter((disc) => isThrough(disc, way, sides)).length;
  let crossed = 0;
  for (const { side, cost } of lines) {
    // hatching is most of the lines, and may be crossed
    if (cost > 0) for (const own of sides) if (sidesCross(own, side)) crossed += cost;
  }
  const alongside = lines.some(({ side, isLong }) => isLong && sides.some((own) => runsAlong(own, side)));
  const runs = (directions: readonly number[], most: number) =>
    sides.some((side) => directions.some((direction) => turnOf(side, direction) < most));
  return (
    FORBIDDEN * forbidden +
    crossed +
    (alongside ? ALONGSIDE.cost : 0) +
    (isHatched && runs([45, -45], AS_HATCHING.turn) ? AS_HATCHING.cost : 0) +
    (runs([0, 90], AS_EDGE.turn) ? AS_EDGE.cost : 0) +
    NEAR.cost * discs.filter((disc) => isNear(disc, way, sides)).length +
    KNEE * (sides.length - 1) +
    (way.runs === -1 ? LEFT : 0) +
    PER_MM * sum(sides.map(lengthOf))
  );
}

/** What two ways cost together, besides what each does. */
export function costTogether(one: Way, other: Way): number {
  const [sides, others] = [sidesFrom(one, 0), sidesFrom(other, 0)];
  const [box, otherBox] = [shelfBox(one), shelfBox(other)];
  const cross = sides.some((side) => others.some((against) => sidesCross(side, against)));
  const under = (lines: readonly Side[], text: Box) => lines.some(([from, to]) => shareInside(from, to, text));
  const [a, b] = [one.points.at(-1)!, other.points.at(-1)!];
  const isClose = one.runs === other.runs && Math.abs(a[1] - b[1]) < PITCH - 0.01;
  return cross || isClose || overlaps(box, otherBox) || under(sides, otherBox) || under(others, box) ? FORBIDDEN : 0;
}

/** The straight pieces of a way, clear of what its tip touches. */
function sidesFrom({ points }: Way, touch = TOUCH): Side[] {
  const [tip, next] = [points[0]!, points[1]!];
  const off = touch / lengthOf([tip, next]);
  const start: Point = [tip[0] + off * (next[0] - tip[0]), tip[1] + off * (next[1] - tip[1])];
  return [start, ...points.slice(1, -1)].map((from, i) => [from, points[i + 1]!] as const);
}

/** Whether a way leads through a round feature that its circle does not lie in, or into one. */
function isThrough(disc: Circle, { points, circle }: Way, sides: readonly Side[]): boolean {
  const { center, radius } = disc;
  if (lengthOf([points[0]!, center]) > radius - TOUCH)
    return sides.some((side) => sideDistance(side, center) < radius - TOUCH);
  return circle !== undefined && lengthOf([circle.center, center]) + circle.radius > radius + TOUCH;
}

/** Whether a way passes a round feature closely that its tip is not on. */
function isNear({ center, radius }: Circle, { points }: Way, sides: readonly Side[]): boolean {
  const reach = radius + NEAR.off;
  return lengthOf([points[0]!, center]) > reach && sides.some((side) => sideDistance(side, center) < reach);
}

function runsAlong(own: Side, side: Side): boolean {
  if (turnOf(own, angleOf(side)) > ALONGSIDE.turn) return false;
  const off = [...own.map((end) => sideDistance(side, end)), ...side.map((end) => sideDistance(own, end))];
  return Math.min(...off) < ALONGSIDE.off;
}

/** How much a line is turned against a direction, whichever way it runs [degrees, 0 to 90]. */
function turnOf(side: Side, direction: number): number {
  const turn = angleOf(side) - direction;
  return Math.abs(turn - 180 * Math.round(turn / 180));
}

function angleOf([from, to]: Side): number {
  return (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
}

function lengthOf([from, to]: Side): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
