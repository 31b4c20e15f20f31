import type { Acceptance } from '../judge/accept.js';
import { KINDS } from '../pipeline/kinds.js';
import type { KnownKind } from '../pipeline/known-kind.js';
import { requireAcceptable } from '../pipeline/require-acceptable.js';
import { isAxisCheck, partOfAxis } from './accept.js';
import { AXIS_CHECKS } from './checks/index.js';

/**
 * Refuses what neither a part nor an axis can accept, before any sheet is read.
 * @throws InputError an unknown check, one of a built solid, or one without a proper reason
 */
export function requireAcceptableOfAny(
  acceptances: readonly Acceptance[],
  kinds: readonly KnownKind[] = KINDS,
  field = '--accept',
): void {
  const checks = acceptances.map((one) => ({ ...one, check: partOfAxis(one.check)?.check ?? one.check }));
  requireAcceptable(checks, [...kinds, { checks: AXIS_CHECKS }], field);
}

/** Of what is accepted in a call, what concerns the sheet of a single part. */
export function ofSinglePart(acceptances: readonly Acceptance[]): Acceptance[] {
  return acceptances.filter(({ check }) => !partOfAxis(check) && !isAxisCheck(check));
}

/** And what concerns an axis, where sheets of single parts are in the same call. */
export function ofAnAxis(acceptances: readonly Acceptance[], alone: boolean): readonly Acceptance[] {
  return alone ? acceptances : acceptances.filter(({ check }) => partOfAxis(check) || isAxisCheck(check));
}
