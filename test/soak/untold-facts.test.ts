import { describe, expect, it } from 'vitest';
import { AXES, DEMOS, OWN, STARTS } from '../support/untold/bases.js';
import { factsOf, findsOf, readBetter, worded } from '../support/untold/compare.js';
import { reasonFor } from '../support/untold/exempt.js';
import type { Fact } from '../support/untold/facts.js';
import { at, type Sheet } from '../support/untold/sheet.js';

/** Maps of facts that are left out whole, each field as the sheet tells it. */
const GROUPS = ['duty', 'duty.motor', 'motor', 'screw', 'carriage', 'machine', 'mounting'];

/** The facts of a group that a sheet tells, with what it tells. */
function groupOf(sheet: Sheet, group: string): Fact[] {
  return factsOf(sheet)
    .filter(({ path }) => (path === group || path.startsWith(`${group}.`)) && at(sheet, path) !== undefined)
    .map(({ path }) => ({ path, told: () => [] }));
}

/** Pairs of facts that a sheet tells, each with what it tells and the bad end of what it may. */
function pairsOf(sheet: Sheet): (readonly [Fact, Fact])[] {
  const told = factsOf(sheet)
    .filter(({ path }) => at(sheet, path) !== undefined)
    .map((fact): Fact => ({ path: fact.path, told: (one) => fact.told(one).slice(-1) }));
  return told.flatMap((one, i) => told.slice(i + 1).map((other) => [one, other] as const));
}

const findsTogether = (sheet: Sheet, facts: readonly Fact[]) =>
  readBetter(sheet, facts)
    .filter((find) => !facts.some(({ path }) => reasonFor(path, find) !== undefined))
    .map((find) => worded(facts, find));

describe('facts that are not told make no check better', () => {
  it.each([...STARTS, ...DEMOS, ...OWN, ...AXES])('one by one, of %s', (_, sheet) => {
    expect(findsOf(sheet)).toEqual([]);
  });

  it.each([...STARTS, ...DEMOS, ...OWN, ...AXES])('in groups, of %s', (_, sheet) => {
    expect(GROUPS.flatMap((group) => findsTogether(sheet, groupOf(sheet, group)))).toEqual([]);
  });

  it.each(STARTS)('in pairs, of %s', (_, sheet) => {
    expect(pairsOf(sheet).flatMap((pair) => findsTogether(sheet, pair))).toEqual([]);
  });
});
