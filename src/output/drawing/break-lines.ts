import type { Point } from '../../parts/part-views.js';
import type { Ink } from './ink.js';
import { type Box, shareInside, textBox } from './text-box.js';

/** A piece of a line shorter than this is left out, mm. */
const SCRAP = 0.15;
/** An arc is looked at in steps of this length, mm. */
const STEP = 0.1;

/** Lines broken where a text stands, so that none runs through it. */
export function breakLines(ink: readonly Ink[]): Ink[] {
  const boxes = ink.flatMap(boxesOf);
  return ink.flatMap((one) => {
    if (one.kind === 'line') return brokenLine(one, boxes);
    return one.kind === 'arc' ? brokenArc(one, boxes) : [one];
  });
}

function boxesOf(ink: Ink): Box[] {
  if (ink.kind === 'group') return ink.of.flatMap(boxesOf);
  return ink.kind !== 'text' || ink.text === '' ? [] : [textBox(ink)];
}

function brokenLine(line: Extract<Ink, { kind: 'line' }>, boxes: readonly Box[]): Ink[] {
  const near = boxes.filter((box) => isNear(box, line.points));
  if (near.length === 0) return [line];
  const { points, closed = false } = line;
  const sides = points.slice(1).map((to, i) => [points[i]!, to] as const);
  if (closed) sides.push([points.at(-1)!, points[0]!]);
  const made: Point[][] = [];
  let wasBroken = false;
  for (const [from, to] of sides) {
    const spans = outside(from, to, near);
    for (const [a, b] of spans) {
      const [start, end] = [between(from, to, a), between(from, to, b)];
      const last = made.at(-1);
      if (a === 0 && last && same(last.at(-1)!, start)) last.push(end);
      else made.push([start, end]);
    }
    wasBroken ||= spans.length !== 1 || spans[0]![0] > 0 || spans[0]![1] < 1;
  }
  if (!wasBroken) return [line];
  const { closed: _, ...open } = line;
  return made.filter((path) => lengthOf(path) > SCRAP).map((path) => ({ ...open, points: path }));
}

function brokenArc(arc: Extract<Ink, { kind: 'arc' }>, boxes: readonly Box[]): Ink[] {
  const { center, radius, from, to } = arc;
  const reach: readonly Point[] = [
    [center[0] - radius, center[1] - radius],
    [center[0] + radius, center[1] + radius],
  ];
  const near = boxes.filter((box) => isNear(box, reach));
  if (near.length === 0) return [arc];
  const steps = Math.max(8, Math.ceil(((to - from) * Math.PI * radius) / 180 / STEP));
  const at = (step: number) => from + ((to - from) * step) / steps;
  const isFree = (step: number) => {
    const angle = (at(step + 0.5) * Math.PI) / 180;
    const [x, y] = [center[0] + radius * Math.cos(angle), center[1] - radius * Math.sin(angle)];
    return !near.some(({ min, max }) => x > min[0] && x < max[0] && y > min[1] && y < max[1]);
  };
  const spans: [number, number][] = [];
  for (let step = 0; step < steps; step++) {
    if (!isFree(step)) continue;
    const last = spans.at(-1);
    if (last && last[1] === step) last[1] = step + 1;
    else spans.push([step, step + 1]);
  }
  if (spans.length === 1 && spans[0]![1] - spans[0]![0] === steps) return [arc];
  const [first, last] = [spans[0], spans.at(-1)];
  if (to - from === 360 && first && last && first !== last && first[0] === 0 && last[1] === steps) {
    // a circle runs on past where it is counted from
    spans.pop();
    spans[0] = [last[0] - steps, first[1]];
  }
  return spans.map(([a, b]) => ({ ...arc, from: at(a), to: at(b) }));
}

/** Shares of a straight line outside all boxes. */
function outside(from: Point, to: Point, boxes: readonly Box[]): (readonly [number, number])[] {
  let left: (readonly [number, number])[] = [[0, 1]];
  for (const box of boxes) {
    const taken = shareInside(from, to, box);
    if (!taken) continue;
    left = left.flatMap(([a, b]) =>
      (
        [
          [a, Math.min(b, taken[0])],
          [Math.max(a, taken[1]), b],
        ] as const
      ).filter(([low, high]) => high > low),
    );
  }
  return left;
}

function isNear({ min, max }: Box, points: readonly Point[]): boolean {
  const over = (axis: 0 | 1) =>
    points.some((point) => point[axis] < max[axis]) && points.some((point) => point[axis] > min[axis]);
  return over(0) && over(1);
}

function between(from: Point, to: Point, share: number): Point {
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}

function same(a: Point, b: Point): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

function lengthOf(points: readonly Point[]): number {
  return points.slice(1).reduce((sum, to, i) => sum + Math.hypot(to[0] - points[i]![0], to[1] - points[i]![1]), 0);
}
