import { PULLS } from '../../sheet/sections/duty.js';
import { plain } from '../../units/format.js';
import { carriedWords, ownWeight } from '../common/axial-path.js';
import type { Loaded } from '../common/load-cases.js';
import { bendPlate } from './bending.js';
import type { MotorPlateDesign } from './dimensions.js';

/** What stands on a plate, put together as one thrust. */
export interface Thrust {
  /** N along the shaft */
  readonly along: number;
  /** N across it, in the plane of the plate, whichever way, and what pulls so, in words */
  readonly across: number;
  readonly pulls: readonly string[];
  /** N·mm across it */
  readonly moment: number;
  /** N that bends the plate as much as both together */
  readonly together: number;
  readonly words: string;
}

/** What the sheet does not say of the loads of its plate, as fields. */
export function untoldLoads(design: MotorPlateDesign): string[] {
  const { axial, duty, motor, drive, beltPull } = design;
  const lies = axial.mounting === 'horizontal';
  return [
    ...(axial.mounting === undefined ? ['mounting'] : []),
    ...(goesIntoPlate(design) && duty.load === undefined ? [...untoldSeat(design), 'duty.load'] : []),
    ...(motor.weight === undefined ? ['motor.weight'] : []),
    ...(lies && motor.weight !== undefined && motor.length === undefined ? ['motor.length'] : []),
    ...(drive === 'belt' && beltPull === undefined ? ['belt_pull'] : []),
    ...(drive === 'belt' && motor.shaftLength === undefined ? ['motor.shaft.length'] : []),
  ];
}

/** The field that says where a thrust bearing stands, where the sheet does not. */
export function untoldSeat({ axial, bearingOn }: Pick<MotorPlateDesign, 'axial' | 'bearingOn'>): string[] {
  return axial.thrustBearing && bearingOn === undefined ? ['bearing_on'] : [];
}

/** Whether what pulls and pushes along the screw goes into the motor, and so into its plate. */
export function goesIntoMotor({ drive, axial }: Pick<MotorPlateDesign, 'drive' | 'axial'>): boolean {
  return drive === 'coupling' && carriedWords(axial) === undefined;
}

/** Whether it goes into the plate: through the motor, or by a thrust bearing that stands in the plate, or may stand there. */
export function goesIntoPlate(design: Pick<MotorPlateDesign, 'drive' | 'axial' | 'bearingOn'>): boolean {
  const { drive, axial, bearingOn } = design;
  return goesIntoMotor(design) || (drive === 'coupling' && axial.thrustBearing && bearingOn !== 'machine');
}

/**
 * The load along the shaft, the motor's weight, and the pull of a belt, as far as they are told.
 * @param goesIn whether what acts along the screw counts: on the plate, or on the motor's screws alone
 */
export function thrustOf(design: MotorPlateDesign, goesIn = goesIntoPlate(design)): Thrust {
  const { axial, duty, motor, beltPull = 0 } = design;
  const { weight = 0, length = 0, shaftLength = 0 } = motor;
  const lies = axial.mounting === 'horizontal';
  const screw = goesIn && !lies ? ownWeight(axial).force : 0;
  const along = (goesIn ? (duty.load ?? 0) + screw : 0) + (lies ? 0 : weight);
  const moment = (lies ? (weight * length) / 2 : 0) + beltPull * shaftLength;
  return {
    along,
    across: beltPull + (lies ? weight : 0),
    pulls: [
      ...(beltPull > 0 ? [`a belt of ${plain(beltPull, 0)} N`] : []),
      ...(lies && weight > 0 ? [`a motor of ${plain(weight, 1)} N`] : []),
    ],
    moment,
    together: along + moment * bendPlate(design).perMoment,
    words: wordsOf(design, goesIn),
  };
}

function wordsOf(design: MotorPlateDesign, goesIn: boolean): string {
  if (!goesIn) return 'the motor hangs on the plate';
  return goesIntoMotor(design) ? 'the load goes into the motor' : 'the load stands on a thrust bearing in the plate';
}

/** The plate as what stands on it loads it, both ways; a stalled motor pushes where its load goes in. */
export function loaded(design: MotorPlateDesign, goesIn = goesIntoPlate(design)): Loaded {
  const { duty, screw } = design;
  const { load: _, ...rest } = duty;
  const told = untoldLoads(design).length === 0;
  return {
    duty: told ? { ...rest, load: thrustOf(design, goesIn).together } : rest,
    screw: goesIn ? screw : undefined,
    pulls: PULLS,
  };
}
