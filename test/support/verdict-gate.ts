import { describe, expect, it } from 'vitest';
import { SOLID_GROUP } from '../../src/judge/accept.js';
import type { Finding, Word } from '../../src/judge/check.js';
import { PROFILE_CHECKS } from '../../src/parts/common/profile-checks.js';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { changed } from './nut-sheets.js';

type Tree = { readonly [key: string]: unknown };

/** A sheet and what is changed in it; in its place a text that says why no sheet gives this word. */
export type VerdictCase = readonly [Tree, Tree] | string;

/** By check: a sheet for each word that the check can say. */
export type VerdictCases = Readonly<Record<string, Readonly<Partial<Record<Word, VerdictCase>>>>>;

/** Checks that say the same whether it is right or wrong: figures, or what to do in any case. */
const FIGURES_ONLY = new Set(
  Object.entries({
    nut: 'thread-axial thread-backlash thread-stall wear-depth wear-limit drive-holding drive-torque drive-speed drive-whirl shrink-applied-once',
    adapter: 'mount-float',
    coupling:
      'tool-access head-inside print-bridge misalignment lost-motion assembly-entry speed print-lines shrink-applied-once',
    sleeve: 'tool-access head-inside print-bridge over-constraint bush-wall bore-runout shrink-applied-once',
    coupon: 'coupon-diameters coupon-span coupon-marks print-layers print-thread-depth',
  }).flatMap(([kind, ids]) => ids.split(' ').map((id) => `${kind} ${id}`)),
);

/**
 * The gate for the checks of a kind: each has a case for every word that its limits allow. `yes` always; `no` where it has a
 * limit that fails; `but` where it has one that does not; `perhaps` where its value is uncertain; `not-told` where a sheet
 * that tells nothing of its use is not judged; something else than `yes` where it has no limit.
 *
 * @param kind the part kind
 * @param cases the table of cases, which stands in `test/parts/KIND/verdict-cases.ts`
 * @param bare a sheet of the kind that tells nothing of its use
 */
export function verdictGate(kind: string, cases: VerdictCases, bare: Tree): void {
  const known = KINDS.find((one) => one.kind === kind)!;
  const common = PROFILE_CHECKS.map(({ id }) => id);
  const ids = [...new Set(known.checks.map(({ id }) => id))].filter((id) => !common.includes(id));
  const rows = ids.flatMap((id) =>
    Object.entries(cases[id] ?? {}).flatMap(([word, one]) =>
      typeof one === 'string' || one === undefined ? [] : [{ id, word, one: one as readonly [Tree, Tree] }],
    ),
  );
  const bareFindings = findingsOf([bare, {}]);

  describe(`the checks of the kind ${kind}`, () => {
    it.each(rows)('$id says $word', ({ id, word, one }) => {
      expect(findingsOf(one).get(id)?.word).toBe(word);
    });

    it.each(ids)('%s has a case for each word that its limits allow', (id) => {
      const own = cases[id] ?? {};
      const seen = rows.filter((row) => row.id === id).flatMap(({ one }) => findingsOf(one).get(id) ?? []);
      const wanted = wantedWords([...seen, ...[bareFindings.get(id)].flatMap((row) => row ?? [])]);
      const missing = wanted.filter((word) => own[word] === undefined);
      expect(missing, `${id} of ${kind}: add cases for these words to test/parts/${kind}/verdict-cases.ts`).toEqual([]);
      const alone = Object.keys(own).length < 2 && !wanted.includes('no');
      expect(alone, `${id} of ${kind} has no limit: give a case, or a reason, for another word than yes`).toBe(false);
    });

    it.each(ids.filter((id) => !FIGURES_ONLY.has(`${kind} ${id}`) && isCase(cases[id]?.yes) && wrongOf(cases[id])))(
      '%s says only where something is wrong what cures it',
      (id) => {
        const cure = messageOf(wrongOf(cases[id]), id).split(/[;:] /).at(-1)!;
        expect(messageOf(cases[id]?.yes, id), `the last clause where it is wrong: ${cure}`).not.toContain(cure);
      },
    );

    it('are all of the solid, or in the table; and the table names no others', () => {
      expect(Object.keys(cases).filter((id) => !ids.includes(id))).toEqual([]);
      expect(known.checks.filter(({ group }) => group === SOLID_GROUP)).toEqual([]);
    });

    it('each answer a question of the kind, and have a title that is no sentence', () => {
      const questions = known.questions.map(({ id }) => id);
      for (const { id, question, title } of known.checks) {
        expect(questions, `${id} names the question ${question}`).toContain(question);
        expect(title, id).toMatch(/^[A-Z][^.;:!?]{2,70}$/);
      }
    });
  });
}

function isCase(one: VerdictCase | undefined): one is readonly [Tree, Tree] {
  return one !== undefined && typeof one !== 'string';
}

/** A sheet that fails, or else one that gets a caution. */
function wrongOf(own: VerdictCases[string] = {}): VerdictCase | undefined {
  return [own.no, own.but].find(isCase);
}

/** What a check says of a case, its figures left out. */
function messageOf(one: VerdictCase | undefined, id: string): string {
  const message = isCase(one) ? findingsOf(one).get(id)?.message : undefined;
  return (message ?? '').replaceAll(/[−\d.,]+/g, '#');
}

function wantedWords(findings: readonly Finding[]): Word[] {
  const words = new Set<Word>(['yes']);
  for (const { limit, fail_limit, uncertainty, value, word } of findings) {
    if (word === 'not-told') words.add('not-told');
    if (value === null || limit === null || Object.keys(limit).length === 0) continue;
    if (fail_limit) words.add('no');
    if (fail_limit === null || JSON.stringify(fail_limit) !== JSON.stringify(limit)) words.add('but');
    if (uncertainty > 0) words.add('perhaps');
  }
  return [...words];
}

const known = new Map<string, ReadonlyMap<string, Finding>>();

/** Mutation testing must see which test runs what, so there nothing is kept from one test for the next. */
const KEEP = process.env.MUTANT_TESTS === undefined;

/** Findings of a sheet by check; the same sheet is worked out once. */
function findingsOf([base, changes]: readonly [Tree, Tree]): ReadonlyMap<string, Finding> {
  const sheet = changed(base, changes);
  const key = JSON.stringify(sheet);
  const found = known.get(key) ?? new Map(check(design(sheet)).checks.map((row) => [row.id, row]));
  if (KEEP) known.set(key, found);
  return found;
}
