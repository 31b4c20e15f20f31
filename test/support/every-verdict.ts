import { describe, expect, it } from 'vitest';
import type { Bounds, CheckFacts, Finding, Verdict } from '../../src/judge/check.js';

/** A row of a kind's table: which check finds what of which changes to a plain sheet, and why. */
export type VerdictCase<Changes> = readonly [id: string, found: Verdict | 'not-told', changes: Changes, why: string];

/** A kind's table of verdicts. */
interface VerdictTable<Changes> {
  readonly checks: readonly CheckFacts[];
  readonly cases: readonly VerdictCase<Changes>[];
  readonly findingsOf: (changes: Changes) => readonly Finding[];
  /** verdicts that no sheet reaches, such as `wall: fail`, each with the reason */
  readonly never?: Readonly<Record<string, string>>;
}

/** Tries every row, and demands one for each verdict that the limits of a check allow. */
export function everyVerdict<Changes>({ checks, cases, findingsOf, never = {} }: VerdictTable<Changes>): void {
  const known = new Map<string, readonly Finding[]>();
  const rowsOf = (changes: Changes) => {
    const key = JSON.stringify(changes, (_, value) => (value === undefined ? 'left out' : value));
    if (!known.has(key)) known.set(key, findingsOf(changes));
    return known.get(key)!;
  };

  describe('every verdict of every check', () => {
    it.each(cases)('%s: %s, %o, %s', (id, found, changes) => {
      const row = rowsOf(changes).find((finding) => finding.id === id);
      expect(row && outcomeOf(row), JSON.stringify(row)).toBe(found);
    });

    it('has a case for each verdict that its limits allow', () => {
      const all = cases.flatMap(([, , changes]) => rowsOf(changes));
      const missing = checks.flatMap(({ id }) => {
        const wanted = new Set(all.filter((row) => row.id === id).flatMap(allowedBy));
        const tried = new Set(cases.filter((row) => row[0] === id).map(([, found]) => found));
        return wanted.size === 0
          ? [`${id}: any`]
          : [...wanted].filter((one) => !tried.has(one)).map((one) => `${id}: ${one}`);
      });
      expect(missing.filter((one) => never[one] === undefined)).toEqual([]);
    });
  });
}

function outcomeOf({ word, verdict }: Finding): Verdict | 'not-told' {
  return word === 'not-told' ? 'not-told' : verdict;
}

/** What a finding is, and what else it could have been by its limits. */
function allowedBy(row: Finding): (Verdict | 'not-told')[] {
  const { limit, fail_limit: fail } = row;
  if (!limit) return [outcomeOf(row)];
  return ['pass', ...(fail ? (['fail'] as const) : []), ...(fail && same(limit, fail) ? [] : (['caution'] as const))];
}

function same(a: Bounds, b: Bounds): boolean {
  return a.min === b.min && a.max === b.max;
}
