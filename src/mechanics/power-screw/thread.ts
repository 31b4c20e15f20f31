import { fault } from '../../units/faults.js';
import { requireNotNegative, requirePositive, requireRange } from '../../units/require.js';
import { radians } from '../angle.js';

/** The thread of a power screw as its mechanics sees it. */
export interface ScrewThread {
  /** dm, diameter at which the flanks carry: the pitch diameter [mm], > 0 */
  readonly meanDiameter: number;
  /** l, travel a turn = pitch × starts [mm], > 0 */
  readonly lead: number;
  /** α, one flank against the plane across the axis [degrees], 0 to 60; trapezoidal 15, Acme 14.5, metric V 30 */
  readonly flankAngle: number;
}

/** A thread with its friction, and the thrust collar's where it has a plain one. */
export interface RubbingThread extends ScrewThread {
  /** f, sliding friction of the thread [-], 0 to 2 */
  readonly friction: number;
  /** fc, sliding friction of the thrust collar [-], 0 to 2; 0 unless given, as with a ball bearing */
  readonly collarFriction?: number | undefined;
  /** dc, mean diameter of the thrust collar [mm], > 0; needed with `collarFriction` */
  readonly collarDiameter?: number | undefined;
}

/** A rubbing thread under an axial force. */
export interface LoadedThread extends RubbingThread {
  /** F, force along the axis [N], 0 or above */
  readonly axialForce: number;
}

/** Throws an InputError for a value outside the ranges of `ScrewThread`. @internal */
export function requireThread(thread: ScrewThread): void {
  requirePositive('meanDiameter', thread.meanDiameter);
  requirePositive('lead', thread.lead);
  requireRange('flankAngle', thread.flankAngle, 0, 60);
}

/** Throws an InputError for a value outside the ranges of `RubbingThread`. @internal */
export function requireRubbingThread(thread: RubbingThread): void {
  requireThread(thread);
  requireRange('friction', thread.friction, 0, 2);
  const { collarFriction = 0, collarDiameter } = thread;
  requireRange('collarFriction', collarFriction, 0, 2);
  if (collarDiameter !== undefined) requireNotNegative('collarDiameter', collarDiameter);
  else if (collarFriction > 0) throw fault('collarDiameter', '', 'must be given with collarFriction');
}

/** f·sec(α): thread friction as the slanted flank multiplies it [-]. @internal */
export function flankFriction(thread: RubbingThread): number {
  return thread.friction / Math.cos(radians(thread.flankAngle));
}

/** Torque of the thrust collar, F·fc·dc/2 [N·mm]; 0 without one. @internal */
export function collarTorque(thread: LoadedThread): number {
  return (thread.axialForce * (thread.collarFriction ?? 0) * (thread.collarDiameter ?? 0)) / 2;
}

/** True where some torque raises the load at all: π·dm > f·l·sec(α). @internal */
export function canBeRaised(thread: RubbingThread): boolean {
  return Math.PI * thread.meanDiameter > flankFriction(thread) * thread.lead;
}
