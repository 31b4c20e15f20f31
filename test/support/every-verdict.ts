import { describe, expect, it } from 'vitest';
import type { Bounds, CheckFacts, Finding, Verdict } from '../../src/judge/check.js';
import { findingOf } from './one-finding.js';

/** A row of a kind's table: which check finds what of which changes to a plain sheet, and why. */
export type VerdictCase<Changes> = readonly [id: string, found: Verdict | 'not-told', changes: Changes, why: string];

/** A kind's table of verdicts. */
interface VerdictTable<Changes> {
  readonly checks: readonly CheckFacts[];
  readonly cases: readonly VerdictCase<Changes>[];
  readonly sheetOf: (changes: Changes) => object;
  /** verdicts that no sheet reaches, such as `wall: fail`, each with the reason */
  readonly never?: Readonly<Record<string, string>>;
}

/** Tries every row, and demands one for each verdict that the limits of a check allow. */
export function everyVerdict<Changes>({ checks, cases, sheetOf, never = {} }: VerdictTable<Changes>): void {
  describe('every verdict of every check', () => {
    it.each(cases)('%s: %s, %o, %s', (id, found, changes) => {
      const row = findingOf(sheetOf(changes), id);
      expect(row && outcomeOf(row), JSON.stringify(row)).toBe(found);
    });

    it('has a case for each word that its limits allow', () => {
      const missing = checks.flatMap(({ id }) => {
        const found = cases.flatMap(([about, , changes]) =>
          about === id ? findingOf(sheetOf(changes), id) : undefined,
        );
        const wanted = new Set(found.flatMap((row) => (row ? allowedBy(row) : [])));
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
