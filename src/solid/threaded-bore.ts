import type { Lathe, Shape } from './recipe.js';
import type { ThreadSweep } from './thread-sweep.js';

/** A lead-in: its radius falls or rises along a straight line. */
export interface Cone {
  /** radius at z = 0 [mm] */
  readonly radius: number;
  /** mm of radius a mm of height: below 0 at the lower end of a bore, above 0 at its upper one */
  readonly slope: number;
  /** where it stands out of the body [mm] */
  readonly outside: number;
  /** where it ends within the thread [mm] */
  readonly inside: number;
  /** it counts as a broken edge */
  readonly isBroken: boolean;
}

/** What is cut for a thread with a lead-in at either end. */
export interface ThreadedBore {
  readonly thread: ThreadSweep;
  readonly low: Cone;
  readonly high: Cone;
}

/** A plug is so much wider than the thread, so that it cuts the lead-ins above it, mm. */
const WIDER = 1e-3;

/**
 * Reads a threaded bore from a recipe.
 * @returns undefined where a shape is anything else, or its lead-ins meet one another
 */
export function threadedBore(shape: Shape): ThreadedBore | undefined {
  if (shape.kind === 'feature') return threadedBore(shape.shape);
  if (shape.kind !== 'union' || shape.of.length !== 3) return undefined;
  const [first, ...ends] = shape.of;
  if (first?.kind !== 'thread' || first.thread.airSide !== 'inside') return undefined;
  const { thread } = first;
  const cones = ends.map((end) => coneOf(end, thread)).sort((a, b) => (a?.slope ?? 0) - (b?.slope ?? 0));
  const [low, high] = cones;
  if (!low || !high || low.slope >= 0 || high.slope <= 0 || low.inside > high.inside) return undefined;
  return { thread, low, high };
}

function coneOf(shape: Shape, { columns, circumscribed }: ThreadSweep): Cone | undefined {
  if (shape.kind !== 'lathe' || shape.sides !== columns || shape.circumscribed !== circumscribed) return undefined;
  const [first, last, ...more] = shape.contour;
  if (shape.turn || !first || !last || more.length > 0) return undefined;
  const slope = (last[0] - first[0]) / (last[1] - first[1]);
  const [outside, inside] = slope < 0 ? [first[1], last[1]] : [last[1], first[1]];
  return { radius: first[0] - slope * first[1], slope, outside, inside, isBroken: shape.broken?.includes(0) === true };
}

/** Radius of a lead-in at a height [mm]. */
export function coneAt({ radius, slope }: Cone, z: number): number {
  return radius + slope * z;
}

/**
 * What is bored in place of a thread: both lead-ins down to the thread's widest, and a cylinder between them.
 * @returns undefined where that leaves no cylinder
 */
export function plugOf(bore: ThreadedBore): Lathe | undefined {
  return boredAs(bore, Math.max(...bore.thread.ridge.map(([, radius]) => radius)) + WIDER);
}

/**
 * What a drawing shows of a threaded bore: both lead-ins, and the cylinder at the thread's least radius between them. (As one
 * turned body it costs the kernel half of what three of them do that lie in each other's columns.)
 * @returns undefined where a shape is anything else, or its thread goes on beyond a lead-in
 */
export function drawnBore(shape: Shape): Lathe | undefined {
  const bore = threadedBore(shape);
  if (!bore) return undefined;
  const { thread, low, high } = bore;
  if (thread.from < low.outside || thread.to > high.outside) return undefined;
  const lathe = boredAs(bore, Math.min(...thread.ridge.map(([, radius]) => radius)));
  return lathe && { ...lathe, broken: [low, high].flatMap(({ isBroken }, end) => (isBroken ? [2 * end] : [])) };
}

function boredAs({ thread, low, high }: ThreadedBore, radius: number): Lathe | undefined {
  const [from, to] = [low, high].map((cone) => (radius - cone.radius) / cone.slope);
  const within = from! > low.outside && from! < low.inside && to! < high.outside && to! > high.inside;
  if (!within || !(from! < to!)) return undefined;
  return {
    kind: 'lathe',
    sides: thread.columns,
    circumscribed: thread.circumscribed,
    contour: [
      [coneAt(low, low.outside), low.outside],
      [radius, from!],
      [radius, to!],
      [coneAt(high, high.outside), high.outside],
    ],
  };
}

/** Radius of a thread over +X turned to a column, at a height [mm]. */
export function threadRadius({ ridge, pitch, starts, columns }: ThreadSweep, column: number, z: number): number {
  const lift = (pitch * starts * column) / columns;
  const turns = (z - lift) / pitch;
  const at = (turns - Math.floor(turns)) * pitch;
  const next = ridge.findIndex(([height]) => height > at);
  const [before, after] = neighbours(ridge, next, pitch);
  const share = (at - before[0]) / (after[0] - before[0]);
  return before[1] + share * (after[1] - before[1]);
}

type Corner = readonly [z: number, radius: number];

function neighbours(ridge: readonly Corner[], next: number, pitch: number): [Corner, Corner] {
  const [first, last] = [ridge[0]!, ridge.at(-1)!];
  if (next < 0) return [last, [first[0] + pitch, first[1]]];
  if (next === 0) return [[last[0] - pitch, last[1]], first];
  return [ridge[next - 1]!, ridge[next]!];
}
