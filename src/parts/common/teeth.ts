import { type AskedStress, allowableStress } from '../../mechanics/strength/allowable.js';
import { toothArm } from '../../mechanics/thread/bending.js';
import { grooveWidthAt, type ToothForm } from '../../mechanics/thread/nut-thread.js';
import type { Material } from '../../presets/material.js';
import type { Screw } from '../../sheet/resolve-screw.js';

/** Ridges of a printed flank carry the load: half of what a smooth one bears. @source common-practice */
export const PRINTED_SURFACE = 0.5;

/** A thread's teeth and the flank that they share with the screw, finished sizes. */
export interface Teeth {
  readonly pitchDiameter: number;
  readonly flankDepth: number;
  readonly engagedLength: number;
  readonly pitch: number;
  readonly rootDiameter: number;
  readonly rootWidth: number;
  readonly arm: number;
}

/** A stretch of thread as it is cut. */
export interface ThreadStretch {
  readonly length: number;
  /** depth of the chamfers past the thread, 45° */
  readonly leadIn: number;
  /** ends that have such a chamfer; left out, both */
  readonly chamfered?: 1 | 2;
}

/** Nothing is divided by less, mm. */
const LEAST = 0.01;

/**
 * The flanks meet from nut minor to screw major; the tooth is rooted at the nut's major. A chamfer takes the teeth away until
 * it has come in to the middle of the contact: its depth past the thread, and from there as far as that lies inside the nut's major.
 */
export function teethOf(
  { thread, screw }: { readonly thread: ToothForm; readonly screw: Screw },
  { length, leadIn, chamfered = 2 }: ThreadStretch,
  screwMajor: number,
): Teeth {
  const overlap = Math.min(screwMajor, thread.major) - Math.max(screw.minor.likely, thread.minor);
  const arm = toothArm({ rootDiameter: thread.major, nutMinor: thread.minor, screwMajor });
  return {
    pitchDiameter: screw.pitchDiameter.likely,
    flankDepth: Math.max(LEAST, overlap / 2),
    engagedLength: Math.max(LEAST, length - chamfered * (leadIn + arm)),
    pitch: thread.pitch,
    rootDiameter: thread.major,
    rootWidth: thread.pitch - grooveWidthAt(thread, thread.major),
    arm,
  };
}

/** What a printed flank or tooth bears [MPa]. */
export function toothBears(material: Material, asked: AskedStress): number {
  return (asked.kind === 'pressure' ? PRINTED_SURFACE : 1) * allowableStress(material, asked);
}
