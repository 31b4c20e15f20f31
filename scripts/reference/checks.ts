// The checks of a kind as sections: what is asked and why, limits, source, what moves it, and what it says.
import { type Bounds, type CheckFacts, type Finding, WORDS } from '../../src/judge/check.js';
import type { Question } from '../../src/judge/question.js';
import { plain } from '../../src/units/format.js';
import type { Law, Laws } from './laws.js';
import type { Reason } from './reasons.js';

/** What the checks of a kind say of its sheets, by check. */
export type Findings = ReadonlyMap<string, readonly Finding[]>;

/**
 * One section a check, below the question that it answers.
 * @param reasons what the code says of each check, by its id
 * @param laws what it goes by, by its id
 */
export function checkSections(
  checks: readonly CheckFacts[],
  questions: readonly Question[],
  {
    findings,
    reasons,
    laws,
  }: { readonly findings: Findings; readonly reasons: ReadonlyMap<string, Reason>; readonly laws: Laws },
): string {
  return questions
    .map(({ id, title }) => {
      const own = checks.filter(({ question }) => question === id);
      const sections = own.map((check) =>
        checkSection(check, findings.get(check.id) ?? [], { reason: reasons.get(check.id), laws: laws.get(check.id) }),
      );
      return own.length === 0 ? '' : [`### ${title}`, ...sections].join('\n\n');
    })
    .filter((part) => part !== '')
    .join('\n\n');
}

/** One check; what it says is taken from its findings. */
export function checkSection(
  check: CheckFacts,
  findings: readonly Finding[],
  { reason, laws = [] }: { readonly reason?: Reason | undefined; readonly laws?: readonly Law[] | undefined } = {},
): string {
  const { why = '', formula = [] } = reason ?? {};
  const rows = [
    ...formula.map((line) => `- formula: \`${line}\``),
    ...laws.map(formulaRow),
    `- limits: ${limitsOf(check, findings)}`,
    `- source: ${check.source}`,
    `- moved by: ${check.moves}`,
    ...(check.grave ? ['- a miss can hurt: untold it is an open question in the first lines'] : []),
    ...saidOf(findings),
  ];
  return [`#### \`${check.id}\`: ${check.title}`, ...(why === '' ? [] : [why]), rows.join('\n')].join('\n\n');
}

/** The first line of the equation, with a way to the rest. */
function formulaRow({ name, formula }: Law): string {
  return `- formula: \`${formula[0]!.replace(/\s{2,}/g, '; ')}\`, [${name}](laws.md#${name.toLowerCase()})`;
}

/** What it says at its worst, which names the cure, and where something is missing. */
function saidOf(findings: readonly Finding[]): string[] {
  const told = findings.filter(({ replaced_limit }) => replaced_limit === undefined);
  const byWord = new Map([...told, ...findings].map((row) => [row.word, row] as const).reverse());
  return [...WORDS]
    .reverse()
    .flatMap((word) => byWord.get(word) ?? [])
    .filter(({ word }) => word !== 'yes')
    .map(({ word, message }) => `- *${word === 'but' ? 'yes, but' : word.replace('-', ' ')}*: ${message}`);
}

function limitsOf(check: Pick<CheckFacts, 'unit' | 'limits'>, findings: readonly Finding[]): string {
  const unit = check.unit === '' ? '' : ` ${check.unit}`;
  const seen = [
    ...new Set(findings.filter(({ replaced_limit }) => !replaced_limit).flatMap((row) => inForce(row, unit))),
  ];
  if (seen.length === 1) return seen[0]!;
  if (seen.length > 1) return `by the design; such as ${seen.slice(0, 3).join('; or ')}`;
  if (check.limits) return inWords(check.limits.pass, check.limits.fail ?? null, unit);
  return 'none; it is told as it is';
}

function inForce({ limit, fail_limit }: Finding, unit: string): string[] {
  return limit === null || Object.keys(limit).length === 0 ? [] : [inWords(limit, fail_limit, unit)];
}

function inWords(pass: Bounds, fail: Bounds | null, unit: string): string {
  const kept = bounds(pass, 'at least', 'at most', unit);
  if (fail === null) return `${kept}; outside, a caution`;
  if (JSON.stringify(fail) === JSON.stringify(pass)) return `${kept}; outside, a fail`;
  return `${kept}; a fail ${bounds(fail, 'below', 'above', unit)}`;
}

function bounds({ min, max }: Bounds, low: string, high: string, unit: string): string {
  const parts = [
    ...(min === undefined ? [] : [`${low} ${plain(min)}${unit}`]),
    ...(max === undefined ? [] : [`${high} ${plain(max)}${unit}`]),
  ];
  return parts.join(low === 'below' ? ' or ' : ', ');
}
