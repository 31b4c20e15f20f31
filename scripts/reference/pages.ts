// The pages of docs/reference, made of the schemas, the checks and what they say of sheets that are kept for it.
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';
import type * as z from 'zod';
import { checkAxis } from '../../src/axis/check.js';
import { AXIS_CHECKS, AXIS_QUESTIONS } from '../../src/axis/checks/index.js';
import { axisSchema } from '../../src/axis/sheet.js';
import { resultsSchema } from '../../src/calibrate/results.js';
import { fleetSchema } from '../../src/fleet/sheet.js';
import type { Finding } from '../../src/judge/check.js';
import type { DesignBase } from '../../src/parts/part-kind.js';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import type { KnownKind } from '../../src/pipeline/known-kind.js';
import { makePart } from '../../src/pipeline/make.js';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { createKernel } from '../../src/solid/kernel.js';
import { AXIS_CASES } from '../../test/axis/verdict-cases.js';
import { ADAPTER_CASES } from '../../test/parts/adapter/verdict-cases.js';
import { COLLAR_CASES } from '../../test/parts/collar/verdict-cases.js';
import { COUPLING_CASES } from '../../test/parts/coupling/verdict-cases.js';
import { COUPON_CASES } from '../../test/parts/coupon/verdict-cases.js';
import { END_HOLDER_CASES } from '../../test/parts/end-holder/verdict-cases.js';
import { GAUGE_CASES } from '../../test/parts/gauge/verdict-cases.js';
import { MOTOR_PLATE_CASES } from '../../test/parts/motor-plate/verdict-cases.js';
import { NUT_CASES } from '../../test/parts/nut/verdict-cases.js';
import { SLEEVE_CASES } from '../../test/parts/sleeve/verdict-cases.js';
import { AXIS, designed } from '../../test/support/axis-sheets.js';
import { changed } from '../../test/support/nut-sheets.js';
import type { VerdictCases } from '../../test/support/verdict-gate.js';
import { checkSection, checkSections } from './checks.js';
import { exampleValues, fieldRows, fieldTable, table } from './fields.js';
import { type Law, type Laws, lawPage, lawsOf } from './laws.js';
import { reasonsOf } from './reasons.js';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const CASES: Readonly<Record<string, VerdictCases>> = {
  nut: NUT_CASES,
  adapter: ADAPTER_CASES,
  coupling: COUPLING_CASES,
  sleeve: SLEEVE_CASES,
  collar: COLLAR_CASES,
  'end-holder': END_HOLDER_CASES,
  'motor-plate': MOTOR_PLATE_CASES,
  coupon: COUPON_CASES,
  gauge: GAUGE_CASES,
};
const MADE = 'Generated from the schemas and the checks by `npm run reference`; change those, not this page.';
const FIELDS_KEY =
  '`*` is asked for where its map is given; `[]` stands for each item of a list, `NAME` for a name of your own.';

/** Every page by its file name. */
export async function referencePages(): Promise<Map<string, string>> {
  const kernel = createKernel();
  const laws = new Map(KINDS.map(({ kind, formOf = kind }) => [kind, lawsOf(ROOT, `parts/${formOf}`)] as const));
  const kinds = await Promise.all(
    KINDS.map(async (kind) => {
      const { report } = await makePart(startSheet(kind.kind), { kernel });
      return [`${kind.kind}.md`, kindPage(kind, report.checks, laws.get(kind.kind)!)] as const;
    }),
  );
  return new Map([
    ...kinds,
    ['axis.md', axisPage()],
    ['fleet.md', filePage('A fleet file', 'fleet', fleetSchema)],
    ['results.md', filePage('A file of readings', 'results', resultsSchema)],
    [
      'laws.md',
      page(
        'Laws that the checks go by',
        lawPage(
          KINDS.filter(({ formOf }) => formOf === undefined).flatMap((kind) => usedLaws(kind, laws.get(kind.kind)!)),
        ),
      ),
    ],
    ['README.md', contents()],
  ]);
}

/** Laws of the checks that a kind has. */
function usedLaws({ checks }: KnownKind, laws: Laws): Law[] {
  return checks.flatMap(({ id }) => laws.get(id) ?? []);
}

/**
 * @param made what the finished start sheet of the kind was found to be, solid included
 * @param laws what its checks go by
 */
function kindPage(kind: KnownKind, made: readonly Finding[], laws: Laws): string {
  const designs = sheetsOf(kind.kind).map((sheet) => ({ sheet, made: design(sheet) }));
  const facts = {
    defaults: defaultsOf(designs.map(({ made }) => made)),
    examples: exampleValues([parse(startSheet(kind.kind)), ...designs.map(({ sheet }) => sheet)]),
  };
  const findings = gathered(
    designs.flatMap(({ made }) => check(made).checks),
    ({ id }: Finding) => id,
  );
  const asked = kind.questions.map(({ title }) => `**${title}**`).join(' · ');
  if (kind.formOf !== undefined)
    return page(`Sheet of the kind \`${kind.kind}\``, [
      `Guide: [${kind.formOf}](../${kind.formOf}.md). A sheet to start from: \`leadwright new ${kind.kind}\`.`,
      `## Fields\n\n${FIELDS_KEY}`,
      fieldTable(fieldRows(kind.schema), facts),
      `## Checks\n\nThose of [${kind.formOf}](${kind.formOf}.md); they answer ${asked}.`,
    ]);
  const reasons = reasonsOf(ROOT, `parts/${kind.kind}`);
  const solids = new Map([...reasonsOf(ROOT, 'pipeline'), ...reasons]);
  return page(`Sheet and checks of the kind \`${kind.kind}\``, [
    `Guide: [${kind.kind}](../${kind.kind}.md). A sheet to start from: \`leadwright new ${kind.kind}\`.`,
    `## Fields\n\n${FIELDS_KEY}`,
    fieldTable(fieldRows(kind.schema), facts),
    `## Checks\n\nThey answer ${asked}. After each: what it says where it is not content, of sheets kept to try it.`,
    checkSections(kind.checks, kind.questions, { findings, reasons, laws }),
    '### The solid\n\nMeasured on every `make`, on the file that is written, and tried against its counterpart.',
    ...ofSolid(kind, made).map((row) => checkSection(row, [row], { reason: solids.get(row.id) })),
  ]);
}

/** What is found only once the solid is there. */
function ofSolid({ checks }: KnownKind, made: readonly Finding[]): Finding[] {
  return made.filter(({ id }) => !checks.some((check) => check.id === id));
}

/** The start sheet, and a sheet for every word that each check of the kind can say. */
function sheetsOf(kind: string): Record<string, unknown>[] {
  const cases = Object.values(CASES[kind] ?? {})
    .flatMap((words) => Object.values(words))
    .flatMap((one) => (typeof one === 'string' || one === undefined ? [] : [changed(one[0], one[1])]));
  const texts = new Set([parse(startSheet(kind)), ...cases].map((sheet) => JSON.stringify(sheet)));
  return [...texts].map((text) => JSON.parse(text));
}

/** What is taken where a field is left out: one value, or a few and why. */
function defaultsOf(designs: readonly Pick<DesignBase, 'assumptions'>[]): Map<string, string> {
  const all = gathered(
    designs.flatMap(({ assumptions }) => assumptions),
    ({ field }) => field,
  );
  return new Map(
    [...all].map(([field, taken]) => {
      const values = [...new Set(taken.map(({ value }) => String(value)))];
      const whys = [...new Set(taken.map(({ why }) => why))];
      const value = values.length === 1 ? values[0]! : `worked out, such as ${values[0]!}`;
      return [field, whys.length === 1 ? `${value}: ${whys[0]!}` : value];
    }),
  );
}

function filePage(title: string, kind: 'fleet' | 'results', schema: z.ZodType): string {
  const facts = { defaults: new Map<string, string>(), examples: exampleValues([parse(startSheet(kind))]) };
  return page(title, [
    `A file to start from: \`leadwright new ${kind}\`.`,
    `## Fields\n\n${FIELDS_KEY}`,
    fieldTable(fieldRows(schema), facts),
  ]);
}

/** The sheet of an axis, and the checks that look across its parts. */
function axisPage(): string {
  const designs = Object.values(AXIS_CASES).flatMap((words) => Object.values(words).map(designed));
  const facts = {
    defaults: defaultsOf(designs),
    examples: exampleValues([parse(startSheet('axis')), AXIS]),
  };
  const findings = gathered(
    designs.flatMap((made) => checkAxis(made).checks),
    ({ id }: Finding) => id,
  );
  const asked = AXIS_QUESTIONS.map(({ title }) => `**${title}**`).join(' · ');
  return page('Sheet and checks of an axis', [
    'Guide: [an axis](../axis.md). A sheet to start from: `leadwright new axis`.',
    `## Fields\n\n${FIELDS_KEY} A section of \`parts\` has the fields of its kind.`,
    fieldTable(fieldRows(axisSchema), facts),
    `## Checks\n\nThey answer ${asked}; each part answers its own besides. After each: what it says where it is not content, of sheets kept to try it.`,
    checkSections(AXIS_CHECKS, AXIS_QUESTIONS, {
      findings,
      reasons: reasonsOf(ROOT, 'axis/checks'),
      laws: lawsOf(ROOT, 'axis/checks'),
    }),
  ]);
}

function contents(): string {
  const rows = KINDS.map(({ kind, checks, questions, schema }) => [
    `[${kind}](${kind}.md)`,
    String(fieldRows(schema).length),
    String(checks.length),
    questions.map(({ title }) => title).join(' '),
  ]);
  return page('Reference', [
    table(['kind', 'fields', 'checks', 'what it asks'], rows),
    'Formulas, symbols and their sources: [laws](laws.md). Several parts of one screw: [axis](axis.md). Files that are no sheet of a part: [fleet](fleet.md), [results](results.md).',
    'The same for editors: `leadwright schema KIND` prints a JSON Schema.',
  ]);
}

function page(title: string, parts: readonly string[]): string {
  return `${[`# ${title}`, MADE, ...parts].join('\n\n')}\n`;
}

function gathered<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return groups;
}
