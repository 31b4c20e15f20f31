import { hexNut } from '../../standards/fasteners/nuts.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { washer } from '../../standards/fasteners/washer.js';
import { appliedWords } from '../common/applied.js';
import { crackCautions, DRIVE_CAUTIONS, LOCK_BY_NUTS } from '../common/cautions.js';
import { capScrews, WASHER } from '../common/hardware-names.js';
import { threadReach } from '../common/joints.js';
import { meltIn, putIn, SEAT, withoutInserts } from '../common/mounting.js';
import { nextCapScrewLength, screwLengthWithin } from '../common/screw-length.js';
import type { HardwareRow, Mounting, Particulars } from '../part-kind.js';
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
    mounting: mountingOf(design),
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
  const untold = behind === undefined ? ['machine.thickness'] : [];
  if (joints.machine.joint === 'insert') {
    const base = (behind ?? 0) + ring;
    const length =
      behind === undefined ? undefined : screwLengthWithin(screw, base + diameter, base + threadReach(screw));
    return [
      capScrews(screw, length, count, ...untold),
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
    capScrews(screw, length, count, ...untold),
    { item: WASHER, size: screw, count: 2 * count },
    { item: 'hexagon nut ISO 4032', size: screw, count },
  ];
}

/** A washer, the nut, and a pitch and a half that stands out, mm. */
function nutEnd(screw: FastenerSize): number {
  return washer(screw).thickness + hexNut(screw).height + 1.5 * fastenerThread(screw).pitch;
}

/** In the order of work: the motor goes onto its plate, the plate to the machine, and is set by the axis. */
function mountingOf(design: MotorPlateDesign): Mounting {
  const { material, joints } = design;
  const machine = machineHardware(design);
  return {
    put: [
      ...crackCautions(material, LOCK_BY_NUTS),
      ...meltIn(machine),
      FIRST,
      ...putIn(motorHardware(design), 'For the motor'),
      ...(joints.motor.joint === 'counterbore' ? [SUNK] : []),
      SEAT,
      ...putIn(withoutInserts(machine), 'To the machine, finger tight'),
    ],
    settle: [settingWords(design), heatWords(design)],
  };
}

const FIRST = 'Screw the motor to its plate first, pilot in its hole, and by hand: its face is soft metal.';
const SUNK = 'Sunk heads stand on the plastic: no power driver, and tighten again the next day.';

function settingWords({ drive }: MotorPlateDesign): string {
  return drive === 'belt'
    ? 'Set the belt with the motor cold, tighten the plate, and look at it again after a day.'
    : 'Set it with the screws to the machine loose and the nut driven to the motor: turn by hand, let the plate find its place, tighten crosswise, and drive to the other end and back by hand.';
}

function heatWords({ motor }: MotorPlateDesign): string {
  return `Measure the motor's face after an hour of work: the plate is judged at ${motor.temperature} °C.`;
}

/** How it is set, and what the motor may not do to it. */
function plateCautions(design: MotorPlateDesign): string[] {
  const sunk = design.joints.motor.joint === 'counterbore';
  return [FIRST, settingWords(design), heatWords(design), ...(sunk ? [SUNK] : [])];
}
