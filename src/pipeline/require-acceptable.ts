import { type Acceptance, accept } from '../fit/accept.js';
import { nearest } from '../sheet/nearest.js';
import { fault } from '../units/faults.js';
import { KINDS } from './kinds.js';
import type { KnownKind } from './known-kind.js';

/**
 * Refuses to accept a check that no kind has, one of a built solid, or one without a proper reason.
 * @param field what the mistake is said of
 * @throws InputError with the nearest known check
 */
export function requireAcceptable(
  acceptances: readonly Acceptance[],
  kinds: readonly KnownKind[] = KINDS,
  field = '--accept',
): void {
  const ids = checkIds(kinds);
  for (const { check } of acceptances) {
    if (/^(solid|mate)-/.test(check)) throw fault(field, check, 'a broken solid cannot be accepted');
    if (ids.includes(check)) continue;
    const near = nearest(check, ids);
    throw fault(
      field,
      check,
      near ? `unknown check; did you mean ${near}?` : `unknown check; known: ${ids.join(', ')}`,
    );
  }
  accept([], acceptances, ids, field);
}

/** Every check that some kind has. */
export function checkIds(kinds: readonly KnownKind[]): string[] {
  return [...new Set(kinds.flatMap(({ checks }) => checks.map(({ id }) => id)))];
}
