import type { TurnTerm } from './turn-terms.js';

/** What the turn is chosen by. */
export interface ClockingTask {
  /** walls in the plate; the least of them is to be as large as can be */
  readonly walls: readonly TurnTerm[];
  /** room for heads and tools, each less what it needs: at a good turn none is negative */
  readonly room: readonly TurnTerm[];
  /** the moving pattern comes back to itself after so many degrees; default 360 */
  readonly period?: number;
}

/** A turn, and what it leaves. */
export interface Clocking {
  /** degrees, counter-clockwise */
  readonly turn: number;
  /** least wall that depends on the turn, mm; unlimited where none does */
  readonly wall: number;
  /** least room above what is needed, mm */
  readonly room: number;
}

/** The search stops when no turn can be better by more than this, mm. */
const TOLERANCE = 0.001;
/** A rounder turn is preferred if it costs no more, mm. */
const ROUNDING_COST = 0.002;
const LEAST_WIDTH = 1e-7;
const FIRST_SPLIT = 24;
/** Reached only where a wall hardly changes over many turns; then the best turn found is as good as any. */
const MOST_INTERVALS = 4000;
/** A turn without room loses to any with room. */
const WITHOUT_ROOM = 1000;

interface Interval {
  readonly from: number;
  readonly to: number;
  /** no turn inside is worth more */
  readonly bound: number;
}

/**
 * The turn between two patterns that leaves the largest least wall, of all turns that leave room for heads and tools;
 * where none does, the turn that lacks least.
 *
 * Branch and bound: for each interval of turns the least of the terms' bounds is a bound on every turn inside, so an
 * interval that cannot beat the best turn found is dropped, and what is left is halved. The answer is proved to within
 * 0.003 mm of the best one, rounding of the turn included.
 *
 * @param task  walls, room and period  [mm, degrees]
 * @returns the turn within half a period of 0, and what it leaves  [degrees, mm]
 * @source derived: branch and bound on the distances themselves
 */
export function solveClocking(task: ClockingTask): Clocking {
  const { period = 360 } = task;
  if (task.walls.length + task.room.length === 0) return { turn: 0, wall: Infinity, room: Infinity };
  let best = { turn: 0, worth: worthAt(task, 0) };
  const consider = (turn: number) => {
    const worth = worthAt(task, turn);
    if (worth > best.worth) best = { turn, worth };
  };
  const open: Interval[] = [];
  const add = (from: number, to: number) => {
    consider((from + to) / 2);
    const bound = boundOf(task, from, to);
    if (bound > best.worth + TOLERANCE) push(open, { from, to, bound });
  };
  for (let i = 0; i < FIRST_SPLIT; i++) add((period * i) / FIRST_SPLIT, (period * (i + 1)) / FIRST_SPLIT);
  for (let count = 0; open.length > 0 && count < MOST_INTERVALS; count++) {
    const { from, to, bound } = pop(open);
    if (bound <= best.worth + TOLERANCE) break;
    if (to - from < LEAST_WIDTH) continue;
    const middle = (from + to) / 2;
    add(from, middle);
    add(middle, to);
  }
  return clockingAt(task, rounder(task, best, period));
}

/** What a given turn leaves. */
export function clockingAt(task: ClockingTask, turn: number): Clocking {
  return { turn, wall: least(task.walls, turn), room: least(task.room, turn) };
}

function worthAt(task: ClockingTask, turn: number): number {
  return worth(least(task.walls, turn), least(task.room, turn));
}

function boundOf(task: ClockingTask, from: number, to: number): number {
  return worth(mostOf(task.walls, from, to), mostOf(task.room, from, to));
}

function worth(wall: number, room: number): number {
  return room >= -1e-9 ? wall : Math.min(wall, room) - WITHOUT_ROOM;
}

function least(terms: readonly TurnTerm[], turn: number): number {
  let gap = Infinity;
  for (const term of terms) gap = Math.min(gap, term.gap(turn));
  return gap;
}

function mostOf(terms: readonly TurnTerm[], from: number, to: number): number {
  let bound = Infinity;
  for (const term of terms) bound = Math.min(bound, term.most(from, to));
  return bound;
}

/** The roundest turn that is hardly worse, near 0. */
function rounder(task: ClockingTask, best: { turn: number; worth: number }, period: number): number {
  const near = best.turn > period / 2 ? best.turn - period : best.turn;
  for (const places of [0, 1, 2, 3]) {
    const turn = Number(near.toFixed(places)) + 0;
    if (worthAt(task, turn) >= best.worth - ROUNDING_COST) return turn;
  }
  return near;
}

/** A heap by bound, the largest on top. */
function push(heap: Interval[], interval: Interval): void {
  heap.push(interval);
  for (let i = heap.length - 1; i > 0; ) {
    const parent = (i - 1) >> 1;
    if (heap[parent]!.bound >= heap[i]!.bound) break;
    [heap[parent], heap[i]] = [heap[i]!, heap[parent]!];
    i = parent;
  }
}

function pop(heap: Interval[]): Interval {
  const top = heap[0]!;
  const last = heap.pop()!;
  if (heap.length === 0) return top;
  heap[0] = last;
  for (let i = 0; ; ) {
    const [left, right] = [2 * i + 1, 2 * i + 2];
    let largest = i;
    if (left < heap.length && heap[left]!.bound > heap[largest]!.bound) largest = left;
    if (right < heap.length && heap[right]!.bound > heap[largest]!.bound) largest = right;
    if (largest === i) return top;
    [heap[i], heap[largest]] = [heap[largest]!, heap[i]!];
    i = largest;
  }
}
