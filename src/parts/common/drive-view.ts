import type { Duty } from '../../drive/duty.js';
import type { DriveScrew } from '../../drive/screw.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import type { DutySheet } from '../../sheet/sections/duty.js';

/** A sheet's screw as its drive sees it, at its likely sizes. */
export function driveView(screw: Screw): DriveScrew {
  return {
    designation: screw.designation,
    form: screw.form,
    flankAngle: screw.flankAngle,
    major: screw.major.likely,
    pitch: screw.pitch.likely,
    lead: screw.lead,
    starts: screw.starts,
    hand: screw.hand,
    pitchDiameter: screw.pitchDiameter.likely,
    minor: screw.leastRoot.cut,
    rolledMinor: screw.leastRoot.rolled,
  };
}

/** A sheet's duty as the drive takes it. */
export function driveDuty({ motor = {}, ...duty }: DutySheet): Duty {
  return {
    steps: motor.steps,
    microsteps: motor.microsteps,
    gear: motor.gear,
    motorTorque: motor.torque,
    motorSpeed: motor.speed,
    motorCurrent: motor.current,
    motorInductance: motor.inductance,
    supplyVoltage: motor.voltage,
    load: duty.load,
    axis: duty.axis,
    span: duty.span,
    ends: duty.ends,
    feed: duty.feed,
    moving: duty.moving ?? shareOf(duty),
    layerHeights: duty.layer_heights,
  };
}

/** Share of the time in motion, where on-time and cycle tell it. */
function shareOf({ on_time: onTime, cycle }: Pick<DutySheet, 'on_time' | 'cycle'>): number | undefined {
  return onTime === undefined || cycle === undefined ? undefined : onTime / cycle;
}
