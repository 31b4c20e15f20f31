import { radians } from '../../mechanics/angle.js';
import { closingForce, closingStrain } from '../../mechanics/shaft/ring-closing.js';
import { allowableStress } from '../../mechanics/strength/allowable.js';
import { ROOM } from '../../mechanics/strength/plastic.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { difference, halfWidth, type Measured, shifted, sum } from '../../units/measured.js';
import { placeOf } from '../common/held.js';
import { axialResidual, holeResidual } from '../common/residual.js';
import type { CollarDesign } from './dimensions.js';
import { heldIn } from './held-in.js';
import { boreEnd, type CollarThread } from './plan.js';

/** A collar that has the thread of its screw. */
export interface ThreadedCollar extends CollarDesign {
  readonly screw: Screw;
  readonly thread: CollarThread;
}

/** Force of a blade that is turned in the slit by hand [N]. @source common-practice */
const BLADE = 200;

/** The collar with its thread; undefined of a plain one. */
export function threadedCollar(design: CollarDesign): ThreadedCollar | undefined {
  const { screw, finished } = design;
  return screw && finished.thread ? { ...design, screw, thread: finished.thread } : undefined;
}

/** Part of the thread's depth that a spread slit may take out of reach, on either side. @source common-practice */
const DEPTH_SHARE = 0.2;

/**
 * By how much the slit can be spread on the diameter while the collar is turned on: until its back is strained as far as its
 * plastic bears for a moment, a blade by hand forces it, or a fifth of the thread's depth is out of reach; of two halves the last alone.
 *
 *     ΔD = min(σ/(E·ε₁), F/F₁, 0.2·(d − D1))        σ = stress borne for a moment, ε₁ and F₁ = strain at the back and force for 1 mm
 */
export function spreads(design: ThreadedCollar): number {
  const view = heldIn(design);
  const { ring } = placeOf(view.held[0]!, view);
  const depth = DEPTH_SHARE * Math.max(0, design.screw.major.likely - design.thread.tooth.minor);
  if (!ring || ring.halves) return depth;
  const { material } = design;
  const perMm = { ...ring, play: 1, modulus: material.modulus };
  const bears = allowableStress(material, { kind: 'tension', duration: 'moment', temperature: ROOM });
  return Math.min(depth, bears / material.modulus / closingStrain(perMm), BLADE / closingForce(perMm));
}

/**
 * Clearance between flanks on the diameter: likely as it is cut and printed for a screw of basic size; at its bounds for the screw
 * in hand too.
 */
export function flankClearance(design: ThreadedCollar): Measured {
  const { screw, thread } = design;
  const { pitchDiameter, crest } = screw.inHand;
  const { pitchDiameter: cut } = thread.tooth;
  const bore = shifted(holeResidual(design, cut), cut);
  const { least, most } = difference(bore, sum(pitchDiameter, crest));
  const likely = bore.likely - screw.pitchDiameter.likely;
  return { least: Math.min(least, likely), likely, most };
}

/**
 * Play along the axis at its least, the slit spread as far as it goes, and what the drift of the pitch takes of it over the
 * length of the thread.
 *
 *     p = (c + ΔD)·tan(β) + a        drift = (ε_z + δ_P/P)·L
 *
 * @returns both [mm]
 */
export function spreadPlay(design: ThreadedCollar): { readonly play: number; readonly drift: number } {
  const { screw, thread, fit } = design;
  const length = boreEnd(design.finished);
  const open = flankClearance(design).least + spreads(design);
  const printed = axialResidual(design, length);
  const ofPitch = (halfWidth(screw.inHand.pitch) / thread.tooth.pitch) * length;
  return {
    play: open * Math.tan(radians(screw.flankAngle)) + fit!.axial,
    drift: Math.max(-printed.least, printed.most) + ofPitch,
  };
}
