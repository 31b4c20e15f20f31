import { hexNut } from '../../standards/fasteners/nuts.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { washer } from '../../standards/fasteners/washer.js';
import { appliedWords } from '../common/applied.js';
import { crackCautions, DRIVE_CAUTIONS, LOCK_BY_NUTS } from '../common/cautions.js';
import { WASHER } from '../common/hardware-names.js';
import { threadReach } from '../common/joints.js';
import { nextCapScrewLength, screwLengthWithin } from '../common/screw-length.js';
import type { HardwareRow, Particulars } from '../part-kind.js';
import type { MotorPlateDesign } from './dimensions.js';
import { motorScrewLength, underHead } from './motor-screw.js';
import { motorGrip } from './plan.js';

/** Thread that a screw wants in metal, in its diameters. @source common-practice */
const ENGAGED = 1.5;

/** What to buy, how to print, and what to beware of. */
export function motorPlateParticulars(design: MotorPlateDesign): Particulars {
  const { material, printer } = design;
  return {
    hardware: [...motorHardware(design), ...machineHardware(design)],
    cautions: [...plateCautions(design), ...crackCautions(material, LOCK_BY_NUTS), ...DRIVE_CAUTIONS],
    applied: appliedWords(material, printer),
    print: {
      face_up: "outer face up, the motor's face on the bed",
      why: "the motor's face comes out flat, pockets for heads open upwards, and all holes come out round",
      support: 'none',
    },
  };
}

function motorHardware({ motor, joints, finished }: MotorPlateDesign): HardwareRow[] {
  const { screw, threadDepth, flange } = motor;
  const count = finished.motor.centres.length;
  const sunk = joints.motor.joint === 'counterbore';
  const base = { screw, grip: motorGrip(finished), sunk };
  const length =
    threadDepth === undefined
      ? nextCapScrewLength(screw, underHead(base) + (flange ?? 0) + nutEnd(screw))
      : motorScrewLength({ ...base, depth: threadDepth });
  const washers = (sunk ? 0 : count) + (threadDepth === undefined ? count : 0);
  return [
    capScrews(screw, length, count),
    ...(washers > 0 ? [{ item: WASHER, size: screw, count: washers }] : []),
    ...(threadDepth === undefined ? [{ item: 'hexagon nut ISO 4032', size: screw, count }] : []),
  ];
}

function machineHardware({ pattern, joints, finished, machine }: MotorPlateDesign): HardwareRow[] {
  const { screw } = pattern;
  if (screw === undefined) return [];
  const count = finished.machine.centres.length;
  const { thickness: behind } = machine;
  const ring = washer(screw).thickness;
  const { diameter } = fastenerThread(screw);
  if (joints.machine.joint === 'insert') {
    const base = (behind ?? 0) + ring;
    const length =
      behind === undefined ? undefined : screwLengthWithin(screw, base + diameter, base + threadReach(screw));
    return [
      capScrews(screw, length, count),
      { item: WASHER, size: screw, count },
      { item: 'heat-set insert', size: screw, count },
    ];
  }
  const above = finished.thickness + ring;
  if (machine.tapped)
    return [
      capScrews(screw, nextCapScrewLength(screw, above + ENGAGED * diameter), count),
      { item: WASHER, size: screw, count },
    ];
  const length = behind === undefined ? undefined : nextCapScrewLength(screw, above + behind + nutEnd(screw));
  return [
    capScrews(screw, length, count),
    { item: WASHER, size: screw, count: 2 * count },
    { item: 'hexagon nut ISO 4032', size: screw, count },
  ];
}

function capScrews(screw: FastenerSize, length: number | undefined, count: number): HardwareRow {
  return { item: 'socket cap screw ISO 4762', size: length === undefined ? screw : `${screw}x${length}`, count };
}

/** A washer, the nut, and a pitch and a half that stands out, mm. */
function nutEnd(screw: FastenerSize): number {
  return washer(screw).thickness + hexNut(screw).height + 1.5 * fastenerThread(screw).pitch;
}

/** How it is set, and what the motor may not do to it. */
function plateCautions({ drive, motor, joints }: MotorPlateDesign): string[] {
  const set =
    drive === 'belt'
      ? 'Set the belt with the motor cold, tighten the plate, and look at it again after a day.'
      : 'Set it with the screws to the machine loose and the nut driven to the motor: turn by hand, let the plate find its place, tighten crosswise, and drive to the other end and back by hand.';
  return [
    'Screw the motor to its plate first, pilot in its hole, and by hand: its face is soft metal.',
    set,
    `Measure the motor's face after an hour of work: the plate is judged at ${motor.temperature} °C.`,
    ...(joints.motor.joint === 'counterbore'
      ? ['Sunk heads stand on the plastic: no power driver, and tighten again the next day.']
      : []),
  ];
}
