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
export function untoldLoads({ axial, duty, motor, drive, beltPull }: MotorPlateDesign): string[] {
  const lies = axial.mounting === 'horizontal';
  return [
    ...(axial.mounting === undefined ? ['mounting'] : []),
    ...(drive === 'coupling' && carriedWords(axial) === undefined && duty.load === undefined ? ['duty.load'] : []),
    ...(motor.weight === undefined ? ['motor.weight'] : []),
    ...(lies && motor.weight !== undefined && motor.length === undefined ? ['motor.length'] : []),
    ...(drive === 'belt' && beltPull === undefined ? ['belt_pull'] : []),
    ...(drive === 'belt' && motor.shaftLength === undefined ? ['motor.shaft.length'] : []),
  ];
}

/** Whether what pulls and pushes along the screw goes into the motor, and so into its plate. */
export function goesIntoMotor({ drive, axial }: Pick<MotorPlateDesign, 'drive' | 'axial'>): boolean {
  return drive === 'coupling' && carriedWords(axial) === undefined;
}

/** The load along the shaft, the motor's weight, and the pull of a belt, as far as they are told. */
export function thrustOf(design: MotorPlateDesign): Thrust {
  const { axial, duty, motor, beltPull = 0 } = design;
  const { weight = 0, length = 0, shaftLength = 0 } = motor;
  const lies = axial.mounting === 'horizontal';
  const goesIn = goesIntoMotor(design);
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
    words: goesIn ? 'the load goes into the motor' : 'the motor hangs on the plate',
  };
}

/** The plate as what stands on it loads it, both ways; a stalled motor pushes where its load goes in. */
export function loaded(design: MotorPlateDesign): Loaded {
  const { duty, screw } = design;
  const { load: _, ...rest } = duty;
  const told = untoldLoads(design).length === 0;
  return {
    duty: told ? { ...rest, load: thrustOf(design).together } : rest,
    screw: goesIntoMotor(design) ? screw : undefined,
    pulls: PULLS,
  };
}
