import { driveNumbers } from '../../drive/drive-numbers.js';
import type { DriveNumbers } from '../../drive/numbers.js';
import { PLASTIC_NUT_SPEED } from '../../mechanics/sliding.js';
import type { Material } from '../../presets/material.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import type { DutySheet } from '../../sheet/sections/duty.js';
import { driveDuty, driveView } from '../common/drive-view.js';
import type { FitClass } from '../common/fit-classes.js';

/** The drive numbers of a nut's screw at the sheet's duty. */
export function nutDrive({
  screw,
  fit,
  duty,
  material,
}: {
  readonly screw: Screw;
  readonly fit: FitClass;
  readonly duty: DutySheet;
  readonly material: Material;
}): DriveNumbers {
  return driveNumbers(driveView(screw), {
    ...driveDuty(duty),
    slidingSpeed: Math.min(material.speedLimit, PLASTIC_NUT_SPEED),
    diametralClearance: Math.max(0, fit.diametral),
    axialClearance: Math.max(0, fit.axial),
  });
}
