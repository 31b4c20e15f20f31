import type { Check } from '../../../judge/check.js';
import type { EndHolderDesign } from '../dimensions.js';
import { BOLT_CHECKS } from './bolts.js';
import { FIT_CHECKS } from './fit.js';
import { HOLD_CHECKS } from './hold.js';
import { LIP_CHECKS } from './lip.js';
import { TURN_CHECKS } from './turn.js';

/** Every check of an end holder, in the order of the report. */
export const END_HOLDER_CHECKS: readonly Check<EndHolderDesign>[] = [
  ...FIT_CHECKS,
  ...LIP_CHECKS,
  ...TURN_CHECKS,
  ...HOLD_CHECKS,
  ...BOLT_CHECKS,
];
