import { grooveWidthAt, type ToothForm } from '../../mechanics/thread/nut-thread.js';
import { sidesFor } from '../../solid/outline.js';
import { ridgeCorners } from '../../solid/thread-ridge.js';
import type { ThreadSweep } from '../../solid/thread-sweep.js';

/** Fewer columns than this look coarse, whatever the chord error allows. */
const LEAST_COLUMNS = 96;

/** How a thread runs. */
export interface ThreadRun {
  readonly starts: number;
  readonly hand: 'right' | 'left';
  readonly columns: number;
  readonly from: number;
  readonly to: number;
}

/**
 * Columns around a thread, so that neither its arcs nor the twist of its flanks are off by more than the chord error.
 * Midway between two columns a flank stands off the helicoid by lead·tan(180°/n)·Δr / (4π·r) along the axis.
 */
export function threadColumns(thread: Pick<ToothForm, 'major' | 'minor'>, lead: number, chordError: number): number {
  const { major, minor } = thread;
  const twist = (4 * Math.PI * chordError * ((major + minor) / 4)) / (lead * ((major - minor) / 2));
  const forTwist = 4 * Math.ceil(Math.PI / Math.atan(twist) / 4);
  return Math.max(LEAST_COLUMNS, sidesFor(major / 2, chordError), forTwist);
}

/** What a nut's thread cuts away. */
export function nutCutter(thread: ToothForm, run: ThreadRun): ThreadSweep {
  return { ...sweep(thread, run), airSide: 'inside' };
}

/** A screw's metal, drawn so that its facets never lie inside its true surface. */
export function screwBody(thread: ToothForm, run: ThreadRun): ThreadSweep {
  return { ...sweep(thread, run), airSide: 'outside' };
}

/**
 * A nut's groove is widest at its minor diameter, and so is a screw's ridge at its foot, so one form serves both:
 * for a screw `grooveWidth` is the width of its tooth.
 */
function sweep(thread: ToothForm, { starts, hand, columns, from, to }: ThreadRun): Omit<ThreadSweep, 'airSide'> {
  const ridge = ridgeCorners({
    pitch: thread.pitch,
    flankAngle: (Math.atan(thread.flankSlope) * 180) / Math.PI,
    pitchDiameter: thread.pitchDiameter,
    widthAtPitchDiameter: grooveWidthAt(thread, thread.pitchDiameter),
    major: thread.major,
    minor: thread.minor,
  });
  return { ridge, pitch: thread.pitch, starts, hand, columns, from, to, circumscribed: true };
}
