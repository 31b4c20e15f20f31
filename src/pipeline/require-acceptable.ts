import { type Acceptance, accept, type KnownCheck } from '../judge/accept.js';
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
  kinds: readonly Pick<KnownKind, 'checks'>[] = KINDS,
  field = '--accept',
): void {
  if (acceptances.length === 0) return;
  const known = knownChecks(kinds);
  const ids = known.map(({ id }) => id);
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
  accept([], acceptances, known, field);
}

/** Every check that some kind has; grave where one kind says so. */
export function knownChecks(kinds: readonly Pick<KnownKind, 'checks'>[]): KnownCheck[] {
  const graves = new Map<string, boolean>();
  for (const { id, grave } of kinds.flatMap(({ checks }) => checks))
    graves.set(id, graves.get(id) === true || grave === true);
  return [...graves].map(([id, grave]) => ({ id, grave }));
}
