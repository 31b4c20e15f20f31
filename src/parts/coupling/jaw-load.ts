import { carryingJaws } from '../../mechanics/coupling/hard-insert.js';
import { lobeStress } from '../../mechanics/coupling/insert-stress.js';
import { type JawStresses, jawArm, jawRadius, jawStresses } from '../../mechanics/coupling/jaw-strength.js';
import { allowableStress } from '../../mechanics/strength/allowable.js';
import { rootNotch } from '../../mechanics/strength/notch.js';
import type { Plastic } from '../../mechanics/strength/plastic.js';
import type { InsertPlan } from './insert.js';
import { type JawPlan, jawWidth } from './jaws.js';

/** Jaws and lobes between two floors, finished sizes. */
export interface JawPlace {
  readonly jaws: JawPlan;
  readonly insert: InsertPlan;
  readonly gap: number;
}

/** Where jaws and lobes touch. */
export function contactIn({ jaws, insert, gap }: JawPlace) {
  const from = Math.sqrt(Math.max(0, jaws.inner ** 2 - jaws.halfSlot ** 2));
  const bottom = Math.max(jaws.fillet, (gap - insert.height) / 2);
  const top = Math.min(jaws.height - jaws.bevel, (gap + insert.height) / 2);
  return {
    jaws: jaws.count,
    meanRadius: (from + insert.reach) / 2,
    length: insert.reach - from,
    height: top - bottom,
    bottom,
    top,
  };
}

/** What jaws go through. */
export interface JawWork extends JawPlace {
  /** of the insert [MPa] */
  readonly modulus: number;
  readonly flankClearance: number;
  /** between the shafts, degrees */
  readonly angle: number;
  /** greatest torque in work, which reverses, and that of start, stall and shock [N·mm] */
  readonly working: number;
  readonly peak: number;
  readonly material: Plastic;
  /** of the hub [°C] */
  readonly temperature: number;
}

/**
 * Stresses at the foot of a jaw, one torque, with what the plastic bears so [MPa]. Bending counts the corner between flank
 * and floor: it is the notch times what the section bears.
 */
export interface JawLoad extends JawStresses {
  /** of the fillet at the foot of a jaw as wide as where it is pushed */
  readonly notch: number;
  readonly when: string;
  readonly bendingBorne: number;
  readonly shearBorne: number;
}

/** How much more a jaw or a lobe carries than its part where a hard insert leaves some without: jaws over those that carry. */
export function crowdedBy(jaws: number, modulus: number): number {
  return jaws / carryingJaws({ jaws, modulus });
}

/** The jaw that carries most: in work, where the torque reverses all its life, and for a moment. */
export function jawLoads(work: JawWork): JawLoad[] {
  return [
    loadOf(work, { torque: work.working, duration: 'repeated', when: 'in work, reversing' }),
    loadOf(work, { torque: work.peak, duration: 'moment', when: 'at start, stall or shock' }),
  ];
}

interface Moment {
  readonly torque: number;
  readonly duration: 'repeated' | 'moment';
  readonly when: string;
}

function loadOf(work: JawWork, { torque, duration, when }: Moment): JawLoad {
  return { ...notched(evenedBySoft(work, torque), work.jaws), ...borne(work, duration), when };
}

function borne({ material, temperature }: JawWork, duration: Moment['duration']) {
  return {
    bendingBorne: allowableStress(material, { kind: 'tension', direction: 'across', duration, temperature }),
    shearBorne: allowableStress(material, { kind: 'shear', duration, temperature }),
  };
}

function evenedBySoft(work: JawWork, torque: number): JawStresses {
  const { jaws, insert, modulus, flankClearance, angle } = work;
  const { top, bottom, ...contact } = contactIn(work);
  const crowded = torque * crowdedBy(jaws.count, modulus);
  const byLoad = (lobeStress({ torque: crowded, ...contact }) * 2 * insert.halfWidth) / modulus;
  const arm = jawArm({
    tip: top,
    middle: (top + bottom) / 2,
    angle,
    height: jaws.height,
    squeeze: Math.max(0, -flankClearance) + byLoad,
  });
  return jawStresses({ torque: crowded, jaws: jaws.count, arm, ...footOf(jaws) });
}

/** The corner at the foot is pulled whichever way the jaw is pushed; shear sees nothing of it. */
function notched(stresses: JawStresses, jaws: JawPlan) {
  const notch = rootNotch({ fillet: jaws.fillet, thickness: footOf(jaws).width });
  return { ...stresses, bending: notch * stresses.bending, notch };
}

function footOf(jaws: JawPlan) {
  const radius = jawRadius(jaws);
  return { radius, length: jaws.outer - jaws.inner, width: jawWidth(jaws, radius) };
}

/** One jaw against one jaw at their tips, the insert gone, for a moment. */
export function bareJaw(work: JawWork, torque: number): JawLoad {
  const { jaws } = work;
  const stresses = jawStresses({ torque, jaws: 1, uneven: 1, arm: jaws.height, ...footOf(jaws) });
  return { ...notched(stresses, jaws), ...borne(work, 'moment'), when: 'without the insert' };
}
