import type { Check } from '../../../judge/check.js';
import { UNTOLD_SPAN } from '../../common/axial-path.js';
import { askedWhereItHangs } from '../../common/untold.js';
import { type MotorPlateDesign, onCoolest, onMachine } from '../dimensions.js';
import { BOLT_CHECKS } from './bolts.js';
import { HOLD_CHECKS } from './hold.js';
import { MOTOR_CHECKS } from './motor.js';

/** What is asked of a motor plate. */
export const MOTOR_PLATE_CHECKS: readonly Check<MotorPlateDesign>[] = askedWhereItHangs(
  [...MOTOR_CHECKS, ...HOLD_CHECKS, ...BOLT_CHECKS],
  [{ field: 'motor.temperature', milder: onCoolest }, { field: 'bearing_on', milder: onMachine }, UNTOLD_SPAN],
);
