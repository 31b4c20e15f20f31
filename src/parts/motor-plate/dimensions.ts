import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { Assumptions } from '../../sheet/assumptions.js';
import { resolveScrew, type Screw } from '../../sheet/resolve-screw.js';
import type { DutySheet } from '../../sheet/sections/duty.js';
import type { ThrustBearing } from '../../standards/bearings/thrust-bearing.js';
import { plain } from '../../units/format.js';
import { onceFor } from '../../units/once.js';
import type { AxialPath } from '../common/axial-path.js';
import { crestShaft } from '../common/crest-shaft.js';
import { defined } from '../common/defined.js';
import { type HolePattern, measuredPattern } from '../common/hole-pattern.js';
import { type JointHole, washerRadius } from '../common/joints.js';
import type { JointKind } from '../common/locating.js';
import { COUPLING_ANGLE } from '../common/motor-figures.js';
import { besideMotor } from '../common/motor-heat.js';
import { printSizes } from '../common/print-sizes.js';
import { thrustSizes } from '../common/thrust-section.js';
import { workshopOf } from '../common/workshop.js';
import type { DesignBase } from '../part-kind.js';
import { layOut, motorJoint } from './layout.js';
import { type Motor, resolveMotor } from './motor.js';
import { type MotorPlatePlan, printedPlate } from './plan.js';
import type { MotorPlateSheet } from './sheet.js';
import { namedSizes } from './size-names.js';

/** A motor plate, worked out. */
export interface MotorPlateDesign extends DesignBase {
  readonly part: 'motor-plate';
  readonly finished: MotorPlatePlan;
  readonly printed: MotorPlatePlan;
  readonly motor: Motor;
  readonly pattern: HolePattern;
  /** holes for the motor's screws and to the machine, as bolting sees them */
  readonly joints: { readonly motor: JointHole; readonly machine: JointHole };
  readonly machine: Pick<MotorPlateSheet['machine'], 'face' | 'thickness' | 'opening'> & { readonly tapped: boolean };
  readonly drive: 'coupling' | 'belt';
  readonly beltPull?: number;
  /** how the shaft is joined to the screw; undefined where nobody tells of it */
  readonly joint?: JointKind;
  /** degrees that the coupling takes, and why; undefined where nobody tells of it */
  readonly angle?: number;
  readonly hubDepth?: number;
  readonly axial: AxialPath;
  /** what the thrust bearing stands in; undefined without one, or where nobody tells */
  readonly bearingOn?: 'plate' | 'machine';
  /** the thrust bearing, where its sizes are told */
  readonly bearing?: ThrustBearing;
  readonly screw?: Screw;
  readonly duty: DutySheet;
  /** of the plate on the coolest motor that is usual, where nobody tells how warm its own gets */
  readonly coolest?: number;
  readonly material: Material;
  readonly printer: Printer;
}

/**
 * Works a motor plate out from its sheet.
 * @throws InputError values that contradict each other or cannot be a plate
 */
export function designMotorPlate(sheet: MotorPlateSheet, presets: PresetTexts): MotorPlateDesign {
  const assumptions = new Assumptions();
  const { calipers, material, printer } = workshopOf(sheet, presets, assumptions);
  const motor = resolveMotor(sheet, calipers, assumptions);
  const pattern = measuredPattern(sheet.machine.holes, 'machine.holes', assumptions, calipers);
  const screw = sheet.screw && resolveScrew(sheet.screw, calipers, assumptions);
  const machineJoint: JointHole = {
    joint: assumptions.or(sheet.machine.joint, 'machine.joint', 'through', 'bolts through the plate'),
    ...(pattern.screw ? { screw: pattern.screw } : {}),
    diameter: pattern.diameter.likely,
  };
  const sunk = sunkHeads(sheet, motor, assumptions);
  const finished = layOut(sheet, { motor, sunk, pattern, joint: machineJoint }, assumptions);
  const printed = printedPlate(finished, printSizes(material, printer));
  const drive = assumptions.or(sheet.drive, 'drive', 'coupling', 'the shaft drives a screw through a coupling');
  const duty = dutyOf(sheet, motor, assumptions);
  return {
    part: 'motor-plate',
    name: sheet.name,
    finished,
    printed,
    motor,
    pattern,
    joints: { motor: motorJoint(motor, sunk), machine: machineJoint },
    machine: {
      face: sheet.machine.face,
      ...defined({ thickness: sheet.machine.thickness, opening: sheet.machine.opening }),
      tapped: sheet.machine.bare === 'tapped',
    },
    drive,
    ...defined({ beltPull: sheet.belt_pull, angle: angleOf(sheet, assumptions), hubDepth: sheet.hub_depth, screw }),
    ...defined({ joint: sheet.coupling }),
    ...defined({ bearingOn: sheet.bearing_on, bearing: sheet.bearing && thrustSizes(sheet.bearing) }),
    axial: {
      thrustBearing: sheet.thrust_bearing === 'yes',
      locatingHolder: sheet.locating_holder === 'yes',
      ...defined({
        mounting: sheet.mounting,
        screw: screw && crestShaft(screw, sheet.screw?.major !== undefined),
        load: sheet.duty?.load,
        span: sheet.duty?.span,
      }),
    },
    duty,
    ...(motor.coolest === undefined ? {} : { coolest: besideMotor(motor.coolest, sheet.duty?.temperature) }),
    material,
    printer,
    dimensions: { finished: namedSizes(finished), printed: namedSizes(printed) },
    assumptions: assumptions.list,
    limits: sheet.limits ?? {},
    densities: { [material.name]: material.density },
  };
}

/** Heads between plate and machine are sunk where nothing is known to leave them room. */
function sunkHeads({ motor_heads, machine }: MotorPlateSheet, motor: Motor, assumptions: Assumptions): boolean {
  const reach = Math.SQRT1_2 * motor.square.most + washerRadius({ joint: 'through', screw: motor.screw, diameter: 0 });
  const covered = machine.face === 'outer' && !(machine.opening !== undefined && machine.opening / 2 > reach);
  const why = covered ? 'the machine lies on the face where the heads are' : 'nothing lies on the face where they are';
  return assumptions.or(motor_heads, 'motor_heads', covered ? 'sunk' : 'proud', why) === 'sunk';
}

/** What the coupling takes: as told, or usual for its kind. */
function angleOf({ coupling, coupling_angle, drive }: MotorPlateSheet, assumptions: Assumptions): number | undefined {
  if (drive === 'belt' || (coupling === undefined && coupling_angle === undefined)) return undefined;
  if (coupling_angle !== undefined) return coupling_angle;
  const angle = COUPLING_ANGLE[coupling!];
  assumptions.note('coupling_angle', angle, `degrees that a ${coupling} coupling usually takes, ${plain(angle)}`);
  return angle;
}

/** The plate is as warm as the face of its motor; where the motor is says how the axis runs. */
function dutyOf({ duty = {}, mounting }: MotorPlateSheet, motor: Motor, assumptions: Assumptions): DutySheet {
  const axis =
    duty.axis ?? (mounting === undefined ? undefined : mounting === 'horizontal' ? 'horizontal' : 'vertical');
  return {
    ...duty,
    ...(axis === undefined ? {} : { axis }),
    ...(motor.torque === undefined
      ? {}
      : { motor: { ...duty.motor, torque: strongerTorque(motor.torque, duty, assumptions) } }),
    temperature: besideMotor(motor.temperature, duty.temperature),
  };
}

/** Where motor and duty tell the torque of the motor apart, the stronger is judged. */
function strongerTorque(torque: number, { motor: told }: DutySheet, assumptions: Assumptions): number {
  const other = told?.torque ?? torque;
  const stronger = Math.max(torque, other);
  if (torque !== other)
    assumptions.note(
      'motor.torque',
      stronger,
      `motor.torque and duty.motor.torque differ: the stronger, ${plain(stronger)} N·mm`,
    );
  return stronger;
}

/** The same plate on the coolest motor that is usual; undefined where its temperature is told. */
export const onCoolest = onceFor(({ coolest, ...design }: MotorPlateDesign): MotorPlateDesign | undefined =>
  coolest === undefined ? undefined : { ...design, duty: { ...design.duty, temperature: coolest } },
);

/** The same plate with its thrust bearing in the machine; undefined where the sheet tells, or has none. */
export const onMachine = onceFor((design: MotorPlateDesign): MotorPlateDesign | undefined =>
  design.axial.thrustBearing && design.bearingOn === undefined ? { ...design, bearingOn: 'machine' } : undefined,
);
