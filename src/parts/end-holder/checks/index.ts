import type { Check } from '../../../judge/check.js';
import { SHORTEST_SPAN } from '../../common/axial-path.js';
import { askedWhereItHangs } from '../../common/untold.js';
import type { EndHolderDesign } from '../dimensions.js';
import { BOLT_CHECKS } from './bolts.js';
import { FIT_CHECKS } from './fit.js';
import { HOLD_CHECKS } from './hold.js';
import { LIP_CHECKS } from './lip.js';
import { RATING_CHECKS } from './rating.js';
import { TURN_CHECKS } from './turn.js';

/** Every check of an end holder, in the order of the report. */
export const END_HOLDER_CHECKS: readonly Check<EndHolderDesign>[] = askedWhereItHangs(
  [...FIT_CHECKS, ...LIP_CHECKS, ...TURN_CHECKS, ...RATING_CHECKS, ...HOLD_CHECKS, ...BOLT_CHECKS],
  [{ field: 'duty.span', milder: byShortest }],
);

/** The same holder of the shortest screw that is usual; undefined where its length is told, or the screw lies. */
function byShortest(design: EndHolderDesign): EndHolderDesign | undefined {
  const { duty } = design;
  if (duty.span !== undefined || duty.axis === 'horizontal') return undefined;
  return { ...design, duty: { ...duty, span: SHORTEST_SPAN } };
}
