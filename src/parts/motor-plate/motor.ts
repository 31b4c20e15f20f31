import type { Assumptions } from '../../sheet/assumptions.js';
import { measured } from '../../sheet/measured-field.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import type { Measured } from '../../units/measured.js';
import { defined } from '../common/defined.js';
import { type MotorHeat, motorHeat } from '../common/motor-heat.js';
import type { MotorPlateSheet } from './sheet.js';

/** The face that a motor is mounted by, and what the motor does. */
export interface Motor extends MotorHeat {
  /** side of the square of its holes */
  readonly square: Measured;
  /** over its round */
  readonly pilot: Measured;
  readonly pilotHeight: number;
  readonly screw: FastenerSize;
  /** nominal, of that screw */
  readonly screwDiameter: number;
  /** of its threads; undefined where bolts go through its face */
  readonly threadDepth?: number;
  /** thickness of a face that bolts go through */
  readonly flange?: number;
  readonly body?: number;
  readonly length?: number;
  /** N */
  readonly weight?: number;
  /** from its face */
  readonly shaftLength?: number;
  readonly shaftDiameter?: Measured;
  /** N·mm */
  readonly torque?: number;
  /** N */
  readonly axialLimit?: number;
}

/** Height of a pilot that nobody measured, mm. @source nema-ics-16 */
const PILOT_HEIGHT = 2;

/** A motor by its readings. */
export function resolveMotor(
  { motor }: Pick<MotorPlateSheet, 'motor'>,
  calipers: number,
  assumptions: Assumptions,
): Motor {
  requirePilot(motor);
  return {
    square: measured(motor.square, calipers),
    pilot: measured(motor.pilot, calipers),
    pilotHeight: assumptions.or<number>(motor.pilot_height, 'motor.pilot_height', PILOT_HEIGHT, 'usual for its frame'),
    screw: motor.screw,
    screwDiameter: fastenerThread(motor.screw).diameter,
    ...defined({
      threadDepth: motor.thread_depth,
      flange: motor.thread_depth === undefined ? motor.flange : undefined,
      body: motor.body,
      length: motor.length,
      weight: motor.weight,
      shaftLength: motor.shaft?.length,
      shaftDiameter: motor.shaft?.diameter && measured(motor.shaft.diameter, calipers),
      torque: motor.torque,
      axialLimit: motor.axial_limit,
    }),
    ...motorHeat(motor.temperature, assumptions),
  };
}

/** The shaft comes out through the pilot. */
function requirePilot({ pilot, shaft }: MotorPlateSheet['motor']): void {
  const inner = shaft?.diameter?.value;
  if (inner !== undefined && inner >= pilot.value)
    throw fault('motor.pilot', `${plain(pilot.value, 2)} mm`, `must be above the ${plain(inner, 2)} mm of its shaft`);
}
