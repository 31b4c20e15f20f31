import { fault } from '../units/faults.js';
import type { CheckFacts, Finding } from './check.js';

/** One `--accept CHECK=REASON`. */
export interface Acceptance {
  readonly check: string;
  readonly reason: string;
}

/** What acceptance must know of a check. */
export type KnownCheck = Pick<CheckFacts, 'id' | 'grave'>;

/** Groups that judge the solid itself; a broken solid is never accepted. */
export const SOLID_GROUP = 'solid';

/** Checks of the wall that is left between openings, or between them and an edge. */
const WALL_CHECKS: readonly string[] = ['hole-edge', 'hole-spacing', 'pocket-wall', 'clocking', 'rim-wall'];

export const LEAST_REASON = 10;

/**
 * Marks failed checks as accepted. The verdict of the check stays `fail`.
 * @throws InputError unknown id, a solid check, a wall that is gone, an empty reason, or a reason too short for a grave check
 */
export function accept(
  findings: readonly Finding[],
  acceptances: readonly Acceptance[],
  known: readonly KnownCheck[],
  field = '--accept',
): Finding[] {
  for (const acceptance of acceptances) requireAcceptable(acceptance, findings, known, field);
  return findings.map((finding) => {
    const match = acceptances.find(({ check }) => check === finding.id);
    return match && finding.verdict === 'fail' ? { ...finding, accepted: match.reason } : finding;
  });
}

/** Whether a wall is not only thin but gone, so that the solid is no longer the one that was worked out. */
export function isBroken({ id, verdict, value }: Pick<Finding, 'id' | 'verdict' | 'value'>): boolean {
  return WALL_CHECKS.includes(id) && verdict === 'fail' && value !== null && value < 0;
}

function requireAcceptable(
  { check, reason }: Acceptance,
  findings: readonly Finding[],
  known: readonly KnownCheck[],
  field: string,
): void {
  const isSolid = check.startsWith('solid-') || findings.some(({ id, group }) => id === check && group === SOLID_GROUP);
  if (isSolid) throw fault(field, check, 'a broken solid cannot be accepted');
  if (findings.some((finding) => finding.id === check && isBroken(finding)))
    throw fault(field, check, 'cannot be accepted below 0 mm: openings then run into one another or out of the edge');
  const facts = known.filter(({ id }) => id === check);
  if (facts.length === 0) throw fault(field, check, `unknown check; known: ${known.map(({ id }) => id).join(', ')}`);
  if (reason.trim() === '')
    throw fault(field, check, field === '--accept' ? 'wants a reason: --accept CHECK=REASON' : 'wants a reason');
  if (facts.some(({ grave }) => grave) && reason.trim().length < LEAST_REASON) {
    throw fault(field, `${check}=${reason}`, `wants a reason of at least ${LEAST_REASON} characters`);
  }
}
