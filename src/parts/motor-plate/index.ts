import { GOES_ON, HOLDS, PRINTS } from '../common/questions.js';
import type { PartKind } from '../part-kind.js';
import { MOTOR_PLATE_CHECKS } from './checks/index.js';
import { designMotorPlate, type MotorPlateDesign } from './dimensions.js';
import { mateMotorPlate } from './mate.js';
import { motorPlateParticulars } from './particulars.js';
import { type MotorPlateSheet, motorPlateSchema } from './sheet.js';
import { sizeField } from './size-fields.js';
import { motorPlateBodies } from './solid.js';
import { MOTOR_PLATE_TUNABLES } from './tunables.js';
import { motorPlateViews } from './views.js';

/** What a motor is bolted to: onto a pattern of the machine, or from one frame to another. */
export const motorPlateKind: PartKind<MotorPlateSheet, MotorPlateDesign> = {
  kind: 'motor-plate',
  schema: motorPlateSchema,
  design: designMotorPlate,
  checks: MOTOR_PLATE_CHECKS,
  questions: [
    GOES_ON,
    { id: 'bolts-on', title: 'Bolts on?' },
    HOLDS,
    { id: 'in-line', title: 'Stays in line?' },
    PRINTS,
  ],
  particulars: motorPlateParticulars,
  bodies: motorPlateBodies,
  mate: mateMotorPlate,
  views: motorPlateViews,
  sizeField,
  tunables: MOTOR_PLATE_TUNABLES,
};
