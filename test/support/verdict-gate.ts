import { describe, expect, it } from 'vitest';
import { SOLID_GROUP } from '../../src/judge/accept.js';
import type { Bounds, Finding, Word } from '../../src/judge/check.js';
import { PROFILE_CHECKS } from '../../src/parts/common/profile-checks.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { changed } from './nut-sheets.js';
import { findingOf } from './one-finding.js';

type Tree = { readonly [key: string]: unknown };

/** A sheet and what is changed in it. */
type Sheet = readonly [Tree, Tree];

/** A sheet; in its place a text that says why no sheet gives this word. */
export type VerdictCase = Sheet | string;

/** By check: a sheet for each word that the check can say. */
export type VerdictCases = Readonly<Record<string, Readonly<Partial<Record<Word, VerdictCase>>>>>;

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
      typeof one === 'string' || one === undefined ? [] : [{ id, word, one: one as Sheet }],
    ),
  );
  const find = ([base, changes]: Sheet, id: string) => findingOf(changed(base, changes), id);

  describe(`the checks of the kind ${kind}`, () => {
    it.each(rows)('$id says $word', ({ id, word, one }) => {
      expect(find(one, id)?.word).toBe(word);
    });

    it.each(ids)('%s has a case for each word that its limits allow', (id) => {
      const own = cases[id] ?? {};
      const sheets: readonly Sheet[] = [...rows.filter((row) => row.id === id).map(({ one }) => one), [bare, {}]];
      const wanted = wantedWords(sheets.flatMap((one) => find(one, id) ?? []));
      const missing = wanted.filter((word) => own[word] === undefined);
      expect(missing, `${id} of ${kind}: add cases for these words to test/parts/${kind}/verdict-cases.ts`).toEqual([]);
      const alone = Object.keys(own).length < 2 && !wanted.includes('no');
      expect(alone, `${id} of ${kind} has no limit: give a case, or a reason, for another word than yes`).toBe(false);
    });

    it.each(ids.filter((id) => isCase(cases[id]?.yes) && wrongOf(cases[id])))(
      '%s says only where something is wrong what cures it',
      (id) => {
        const words = (one: VerdictCase | undefined) =>
          withoutFigures(isCase(one) ? find(one, id)?.message : undefined);
        const cure = lastClause(words(wrongOf(cases[id])));
        expect(words(cases[id]?.yes), `the last clause where it is wrong: ${cure}`).not.toContain(cure);
      },
    );

    // what is worked out while tests are declared, mutation testing has to load anew for each mutant
    it.each(ids.filter((id) => isCase(wrongOf(cases[id]))))('%s words its cure from the limit in force', (id) => {
      const wrong = wrongOf(cases[id]) as Sheet;
      const found = find(wrong, id)!;
      if (!hasLimit(found)) return;
      const eased = find([wrong[0], { ...wrong[1], limits: { [id]: roomFor(found) } }], id)!;
      expect(eased.word, `${id}: ${eased.message}`).toBe('yes');
      const cure = lastClause(withoutFigures(found.message));
      expect(withoutFigures(eased.message), 'the clause where it is wrong, though the sheet allows it').not.toContain(
        cure,
      );
    });

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

/** Bounds that a finding keeps by far, in the plain unit of its sheet. */
function roomFor({ limit, least, most, value, unit }: Finding): Bounds {
  const scale = unit === 'N·mm' ? 1000 : 1;
  const [low, high] = [least ?? value!, most ?? value!];
  const room = 1 + Math.abs(value!);
  return {
    ...(limit!.min === undefined ? {} : { min: (low - room) / scale }),
    ...(limit!.max === undefined ? {} : { max: (high + room) / scale }),
  };
}

/** Whether a sheet can move the limit that a figure breaks. */
function hasLimit({ value, limit }: Finding): boolean {
  return value !== undefined && value !== null && Object.keys(limit ?? {}).length > 0;
}

function isCase(one: VerdictCase | undefined): one is Sheet {
  return one !== undefined && typeof one !== 'string';
}

/** A sheet that fails, or else one that gets a caution. */
function wrongOf(own: VerdictCases[string] = {}): VerdictCase | undefined {
  return [own.no, own.but].find(isCase);
}

/** A message by its words alone. */
function withoutFigures(message = ''): string {
  return message.replaceAll(/-?\d[\d.,]*/g, '#');
}

/** What stands after the last semicolon, or after the last colon that is none of a field and its value. */
function lastClause(message: string): string {
  return message.split(/; |(?<!\w[._]\w+): /).at(-1)!;
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
