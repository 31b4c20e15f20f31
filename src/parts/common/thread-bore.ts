import type { ThreadProfile } from '../../mechanics/thread/nut-thread.js';
import type { Shape } from '../../solid/recipe.js';
import { threadVolume } from '../../solid/volume.js';
import { type Cut, OVERSHOOT } from './cut.js';
import { nutCutter, type ThreadRun } from './thread-shape.js';

/** A cone starts so far inside the thread's minor radius, mm. */
const INSIDE = 0.2;

/** A threaded bore as it stands in the file. */
export interface ThreadBore extends Omit<ThreadRun, 'from' | 'to'> {
  readonly thread: ThreadProfile;
  /** ends of the body, mm */
  readonly bottom: number;
  readonly top: number;
  /** depth of the chamfers past the thread, mm */
  readonly leadIn: number;
  /** how far its cutters stand out over the top, where something narrower than them goes on there, mm */
  readonly over?: number;
}

/** A thread on the axis with its two lead-in chamfers as one opening. */
export function threadBore({ thread, bottom, top, leadIn, over = OVERSHOOT, ...run }: ThreadBore): Cut {
  const cutter = nutCutter(thread, { ...run, from: bottom - OVERSHOOT, to: top + over });
  const cone = thread.major / 2 + leadIn;
  const inner = thread.minor / 2 - INSIDE;
  const lower: [number, number][] = [
    [cone + OVERSHOOT, bottom - OVERSHOOT],
    [inner, bottom + cone - inner],
  ];
  const upper: [number, number][] = [
    [inner, top - cone + inner],
    [cone + over, top + over],
  ];
  const openings = [lower, upper];
  const cones = openings.map(
    (profile): Shape => ({ kind: 'lathe', sides: run.columns, circumscribed: true, profile, broken: [0] }),
  );
  return {
    shape: { kind: 'union', of: [{ kind: 'thread', thread: cutter }, ...cones] },
    get volume() {
      return threadVolume(cutter, { from: bottom, to: top, openings });
    },
  };
}
