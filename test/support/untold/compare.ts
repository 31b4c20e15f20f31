import { checkAxis } from '../../../src/axis/check.js';
import { designAxis } from '../../../src/axis/design.js';
import { axisSchema } from '../../../src/axis/sheet.js';
import type { Finding, Word } from '../../../src/judge/check.js';
import { kindOfDesign } from '../../../src/pipeline/find-kind.js';
import { KINDS } from '../../../src/pipeline/kinds.js';
import { judgedBy, resolveLimits } from '../../../src/pipeline/resolve-limits.js';
import { workOut } from '../../../src/pipeline/work-out.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { fieldsAt } from '../../../src/sheet/schema-keys.js';
import { withoutField } from '../../../src/sheet/without-field.js';
import { InputError } from '../../../src/units/faults.js';
import { reasonFor } from './exempt.js';
import { FACTS, type Fact } from './facts.js';
import { at, type Sheet, told } from './sheet.js';

/** A range that crosses a limit is as open as a question. */
const RANK: Readonly<Record<Word, number>> = { yes: 0, but: 1, perhaps: 1, 'not-told': 1, no: 2 };

/** A check that reads better untold than it would with something that may be told. */
export interface Find {
  readonly check: string;
  readonly untold: Word | 'absent';
  readonly told: Word;
  readonly value: unknown;
}

/** What all checks find; undefined where the sheet is refused. */
export function findingsOf(sheet: Sheet): readonly Finding[] | undefined {
  try {
    if (sheet.part === 'axis') return checkAxis(designAxis(sheet)).checks;
    const made = workOut(sheet, { presets: SHIPPED, kinds: KINDS });
    const kind = kindOfDesign(KINDS, made);
    return kind.runChecks(made, resolveLimits(made.limits, judgedBy(kind, made)));
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** Finds of facts that are all taken out of a sheet: each is told in turn, the others as the sheet has them. */
export function readBetter(sheet: Sheet, facts: readonly Fact[]): Find[] {
  const untold = findingsOf(facts.reduce((rest, { path }) => withoutField(rest, path.split('.')), sheet));
  if (!untold) return [];
  const worst = new Map<string, Find>();
  for (const values of tellings(sheet, facts)) {
    const findings = findingsOf(facts.reduce((rest, { path }, i) => told(rest, path, values[i]), sheet));
    for (const row of findings ?? []) {
      const find = { check: row.id, untold: wordOf(untold, row.id), told: row.word, value: values };
      if (isBetter(find) && !isAsked(untold, row, facts) && rank(row.word) > rank(worst.get(row.id)?.told ?? 'yes'))
        worst.set(row.id, find);
    }
  }
  return [...worst.values()];
}

/** Every value with every other. */
function tellings(sheet: Sheet, facts: readonly Fact[]): unknown[][] {
  return facts.reduce<unknown[][]>(
    (all, fact) => {
      const own = at(sheet, fact.path);
      const values = [...(own === undefined ? [] : [own]), ...fact.told(sheet)];
      return all.flatMap((some) => values.map((value) => [...some, value]));
    },
    [[]],
  );
}

const rank = (word: Word | 'absent') => (word === 'absent' ? 0 : RANK[word]);
const isBetter = ({ untold, told }: Find) => untold !== 'not-told' && untold !== 'perhaps' && rank(told) > rank(untold);

/** Of several findings of one check the worst. */
function wordOf(findings: readonly Finding[], id: string): Word | 'absent' {
  const words = findings.filter((row) => row.id === id).map(({ word }) => word);
  return words.length === 0 ? 'absent' : words.reduce((a, b) => (RANK[b] > RANK[a] ? b : a));
}

/** Whether the same question of the kind stands open for one of the facts, or a grave check asks: one question for one cause. */
function isAsked(untold: readonly Finding[], { question }: Finding, facts: readonly Fact[]): boolean {
  const asks = (field: string) => facts.some(({ path }) => path === field || path.startsWith(`${field}.`));
  return untold.some((row) => (row.question === question || row.grave) && row.missing?.some(asks));
}

/** Finds of one sheet, one fact out at a time, those with a reason left out; and which facts it has. */
export function findsOf(sheet: Sheet): string[] {
  return factsOf(sheet).flatMap((fact) =>
    readBetter(sheet, [fact])
      .filter((find) => reasonFor(fact.path, find) === undefined)
      .map((find) => worded([fact], find)),
  );
}

/** The facts that a sheet of its kind may tell. */
export function factsOf(sheet: Sheet): Fact[] {
  const schema = sheet.part === 'axis' ? axisSchema : KINDS.find(({ kind }) => kind === sheet.part)!.schema;
  return FACTS.filter(({ path }) => fieldsAt(schema, path.split('.')).length > 0 && !isToldBeside(sheet, path));
}

/** The motor of a plate is told by its own section; what the duty says of it besides is for parts without one. */
function isToldBeside(sheet: Sheet, path: string): boolean {
  return path === 'duty.motor.torque' && sheet.part !== 'axis' && at(sheet, 'motor.torque') !== undefined;
}

/** A find in a line. */
export function worded(facts: readonly Fact[], { check, untold, told, value }: Find): string {
  return `${facts.map(({ path }) => path).join(' and ')}: ${check} reads ${untold} untold, ${told} with ${JSON.stringify(value)}`;
}
