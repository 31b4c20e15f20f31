import type { Point } from '../../parts/part-views.js';
import type { Ink } from './ink.js';
import { textWidth } from './text-width.js';

/** Free room around a text, and how far below its foot letters reach, as a share of their height [mm]. */
const ROOM = 0.3;
const DESCENT = 0.1;

/** A rectangle on the paper. */
export interface Box {
  readonly min: Point;
  readonly max: Point;
}

/** Paper that a text takes, with a little room around it. Texts stand upright or a quarter turned. */
export function textBox({ text, at, height, anchor = 'start', turn = 0 }: Extract<Ink, { kind: 'text' }>): Box {
  const width = textWidth(text, height);
  const start = { start: 0, middle: -width / 2, end: -width }[anchor];
  const [low, high] = [start - ROOM, start + width + ROOM];
  const [foot, head] = [DESCENT * height + ROOM, -height - ROOM];
  return turn === 0
    ? { min: [at[0] + low, at[1] + head], max: [at[0] + high, at[1] + foot] }
    : { min: [at[0] + head, at[1] - high], max: [at[0] + foot, at[1] - low] };
}

/** The share of a straight line that lies in a box, from and to; undefined where it passes by. */
export function shareInside(from: Point, to: Point, { min, max }: Box): readonly [number, number] | undefined {
  let start = 0;
  let end = 1;
  for (let axis = 0; axis < 2; axis++) {
    const at = from[axis]!;
    const run = to[axis]! - at;
    const low = min[axis]! - at;
    const high = max[axis]! - at;
    // most lines pass by most texts
    if (Math.max(0, run) <= low || Math.min(0, run) >= high) return undefined;
    if (run === 0) continue;
    start = Math.max(start, Math.min(low / run, high / run));
    end = Math.min(end, Math.max(low / run, high / run));
  }
  return start < end ? [start, end] : undefined;
}

/** Whether two boxes share paper. */
export function overlaps(a: Box, b: Box): boolean {
  return ([0, 1] as const).every((axis) => a.min[axis] < b.max[axis] && b.min[axis] < a.max[axis]);
}
