import type { LimitChanges } from '../judge/run-checks.js';
import { runChecks } from '../judge/run-checks.js';
import { resolveLimits } from '../pipeline/resolve-limits.js';
import type { AxisDesign } from './axis-design.js';
import { AXIS_CHECKS } from './checks/index.js';

/**
 * Limits of the checks across the parts that the sheet changes.
 * @throws InputError a check that an axis does not have, or a bound that it cannot take
 */
export function limitsOf(axis: AxisDesign): LimitChanges {
  const finding = (id: string) =>
    runChecks(
      AXIS_CHECKS.filter((check) => check.id === id),
      axis,
    )[0];
  return resolveLimits(axis.limits, { checks: AXIS_CHECKS, finding });
}
