import type { ToothForm } from '../../mechanics/thread/nut-thread.js';
import type { Shape } from '../../solid/recipe.js';
import { threadVolume } from '../../solid/volume.js';
import { type Cut, OVERSHOOT } from './cut.js';
import { nutCutter, type ThreadRun } from './thread-shape.js';

/** A cone starts so far inside the thread's minor radius, mm. */
const INSIDE = 0.2;
/** Two threads reach into each other so far, mm. */
const OVERLAP = 0.2;

/** A threaded bore as it stands in the file. */
export interface ThreadBore extends Omit<ThreadRun, 'from' | 'to'> {
  readonly thread: ToothForm;
  /** ends of the body, mm */
  readonly bottom: number;
  readonly top: number;
  /** depth of the chamfers past the thread, mm */
  readonly leadIn: number;
  /** how far its cutters stand out over the top, where something narrower than them goes on there, mm */
  readonly over?: number;
  readonly recess?: Recess;
}

/** A stretch of a threaded bore that is wider than the thread, with a cone of 45° at either end. */
export interface Recess {
  /** from the bottom of the body, cones included, mm */
  readonly from: number;
  readonly to: number;
  readonly radius: number;
  /** by which the thread above it is set off upwards, mm */
  readonly shift: number;
}

/** Height of the cones at the ends of a recess. */
export function recessCone({ radius }: Pick<Recess, 'radius'>, thread: Pick<ToothForm, 'minor'>): number {
  return radius - thread.minor / 2 + INSIDE;
}

/** A thread on the axis with its two lead-in chamfers as one opening, and a recess that parts it in two. */
export function threadBore(bore: ThreadBore): Cut {
  const { thread, bottom, top, leadIn, over = OVERSHOOT, recess, ...run } = bore;
  const cone = thread.major / 2 + leadIn;
  const inner = thread.minor / 2 - INSIDE;
  const lower: Contour = [
    [cone + OVERSHOOT, bottom - OVERSHOOT],
    [inner, bottom + cone - inner],
  ];
  const upper: Contour = [
    [inner, top - cone + inner],
    [cone + over, top + over],
  ];
  const wide = recess ? recessContour(recess, { thread, bottom }) : undefined;
  const openings = wide ? [lower, wide, upper] : [lower, upper];
  const cones = openings.map(
    (contour): Shape => ({
      kind: 'lathe',
      sides: run.columns,
      circumscribed: true,
      contour,
      broken: contour === wide ? [0, 2] : [0],
    }),
  );
  const pieces = piecesOf(bore, over);
  return {
    shape: {
      kind: 'union',
      of: [
        ...pieces.map(({ from, to, shift }): Shape => {
          const thread: Shape = {
            kind: 'thread',
            thread: nutCutter(bore.thread, { ...run, from: from - shift, to: to - shift }),
          };
          return shift === 0 ? thread : { kind: 'moved', shape: thread, by: [0, 0, shift] };
        }),
        ...cones,
      ],
    },
    get volume() {
      return pieces.reduce((sum, { from, to, shift, counted: [low, high] }) => {
        const cutter = nutCutter(thread, { ...run, from: from - shift, to: to - shift });
        const moved = openings.map((contour) => contour.map(([r, z]): [number, number] => [r, z - shift]));
        return sum + threadVolume(cutter, { from: low - shift, to: high - shift, openings: moved });
      }, 0);
    },
  };
}

type Contour = [number, number][];

function recessContour(recess: Recess, { thread, bottom }: Pick<ThreadBore, 'thread' | 'bottom'>): Contour {
  const cone = recessCone(recess, thread);
  const inner = thread.minor / 2 - INSIDE;
  return [
    [inner, bottom + recess.from],
    [recess.radius, bottom + recess.from + cone],
    [recess.radius, bottom + recess.to - cone],
    [inner, bottom + recess.to],
  ];
}

/** A piece of thread: ends of its cutter, the stretch it is counted for, and how far it is set off. */
interface Piece {
  readonly from: number;
  readonly to: number;
  readonly counted: readonly [number, number];
  readonly shift: number;
}

/** One thread, or two that overlap within the recess, where neither cuts anything. */
function piecesOf({ bottom, top, recess }: ThreadBore, over: number): Piece[] {
  const [from, to] = [bottom - OVERSHOOT, top + over];
  if (!recess || recess.shift === 0) return [{ from, to, counted: [bottom, top], shift: 0 }];
  const middle = bottom + (recess.from + recess.to) / 2;
  return [
    { from, to: middle + OVERLAP, counted: [bottom, middle], shift: 0 },
    { from: middle - OVERLAP, to, counted: [middle, top], shift: recess.shift },
  ];
}
