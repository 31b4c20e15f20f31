import type { Check } from '../../judge/check.js';
import type { Question } from '../../judge/question.js';
import type { AxisDesign } from '../axis-design.js';
import { AGREE_CHECKS } from './agrees.js';
import { CARRIED_CHECKS } from './carried.js';
import { HEAT_CHECKS } from './heat.js';
import { LENGTH_CHECKS } from './lengths.js';
import { RUN_CHECKS } from './runs.js';

/** What an axis asks across its parts, in order. */
export const AXIS_QUESTIONS: readonly Question[] = [
  { id: 'agrees', title: 'Parts agree?' },
  { id: 'lengths', title: 'Lengths add up?' },
  { id: 'carried', title: 'Carried once?' },
  { id: 'runs', title: 'Runs as told?' },
  { id: 'heat', title: 'Stands the heat?' },
];

/** Every check that looks across the parts of an axis. */
export const AXIS_CHECKS: readonly Check<AxisDesign>[] = [
  ...AGREE_CHECKS,
  ...LENGTH_CHECKS,
  ...CARRIED_CHECKS,
  ...RUN_CHECKS,
  ...HEAT_CHECKS,
];
