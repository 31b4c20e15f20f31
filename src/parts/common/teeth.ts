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

/** The flanks meet from nut minor to screw major; the tooth is rooted at the nut's major. */
export function teethOf(
  { thread, screw }: { readonly thread: ToothForm; readonly screw: Screw },
  engagedLength: number,
  screwMajor: number,
): Teeth {
  const overlap = Math.min(screwMajor, thread.major) - Math.max(screw.minor.likely, thread.minor);
  return {
    pitchDiameter: screw.pitchDiameter.likely,
    flankDepth: Math.max(0.01, overlap / 2),
    engagedLength,
    pitch: thread.pitch,
    rootDiameter: thread.major,
    rootWidth: thread.pitch - grooveWidthAt(thread, thread.major),
    arm: toothArm({ rootDiameter: thread.major, nutMinor: thread.minor, screwMajor }),
  };
}

/** What a printed flank or tooth bears [MPa]. */
export function toothBears(material: Material, asked: AskedStress): number {
  return (asked.kind === 'pressure' ? PRINTED_SURFACE : 1) * allowableStress(material, asked);
}
