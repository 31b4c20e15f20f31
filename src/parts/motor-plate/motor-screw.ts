import { socketCapScrew } from '../../standards/fasteners/cap-screw.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { washer } from '../../standards/fasteners/washer.js';
import { screwLengthWithin } from '../common/screw-length.js';

/** A screw's tip keeps so far off the ground of its hole, mm. @source common-practice */
const TIP = 0.5;
/** Thread in the motor that is wanted, and that holds at all, in screw diameters. @source common-practice */
const WANTED = 1;
const HOLDS = 0.6;

/** A threaded hole in the motor, and what lies between its face and the head. */
export interface MotorThread {
  readonly screw: FastenerSize;
  /** of the thread, mm */
  readonly depth: number;
  /** plastic under the head, mm */
  readonly grip: number;
  /** a sunk head stands on the plastic, without a washer */
  readonly sunk: boolean;
}

/** Thread that a screw is to have in its hole: wanted, the least that holds, and the most before it stands on the ground [mm]. */
export function engagementBounds({ screw, depth }: Pick<MotorThread, 'screw' | 'depth'>) {
  const { diameter } = fastenerThread(screw);
  return { wanted: WANTED * diameter, holds: HOLDS * diameter, most: depth - TIP, ground: depth };
}

/** Between head and motor [mm]. */
export function underHead({ screw, grip, sunk }: Omit<MotorThread, 'depth'>): number {
  return grip + (sunk ? 0 : washer(screw).thickness);
}

/** The longest usual screw that keeps off the ground of its hole; undefined where the shortest is too long [mm]. */
export function motorScrewLength(thread: MotorThread): number | undefined {
  return screwLengthWithin(thread.screw, 0, underHead(thread) + engagementBounds(thread).most);
}

/** Whether a usual screw has the thread that is wanted, or all that so shallow a hole gives. */
export function hasUsualScrew(thread: MotorThread): boolean {
  const { wanted, most } = engagementBounds(thread);
  const base = underHead(thread);
  return screwLengthWithin(thread.screw, base + Math.min(wanted, most), base + most) !== undefined;
}

/** Height of a pocket for the head alone. */
export function headHeight(screw: FastenerSize): number {
  return socketCapScrew(screw).headHeight;
}
