import { driveNumbers } from '../../drive/drive-numbers.js';
import type { DriveNumbers } from '../../drive/numbers.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import type { DutySheet } from '../../sheet/sections/duty.js';

/** The drive numbers of a nut's screw at the sheet's duty. */
export function nutDrive({
  screw,
  fit,
  duty,
}: {
  screw: Screw;
  fit: { diametral: number; axial: number };
  duty: DutySheet;
}): DriveNumbers {
  const { motor = {} } = duty;
  return driveNumbers(
    {
      designation: screw.designation,
      form: screw.form,
      flankAngle: screw.flankAngle,
      major: screw.major.likely,
      pitch: screw.pitch.likely,
      lead: screw.lead,
      starts: screw.starts,
      hand: screw.hand,
      pitchDiameter: screw.pitchDiameter.likely,
      minor: screw.minor.likely,
    },
    {
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
      moving: duty.moving,
      layerHeights: duty.layer_heights,
      diametralClearance: Math.max(0, fit.diametral),
      axialClearance: Math.max(0, fit.axial),
    },
  );
}
