import type { Bounds, Finding } from '../../judge/check.js';
import { type FiguresOf, figuresOf } from '../figures.js';

/**
 * What was found in one line: the title, the figure and its limit; where there is none, what is missing or was told.
 * @example figureLine(finding) // 'Least wall beside the thread: 0.9 ± 0.05 mm, at least 1.6'
 */
export function figureLine(finding: Finding): string {
  return `${finding.title}: ${foundIn(finding)}`;
}

/** The same inside a sentence, such as `least wall beside the thread (0.9 ± 0.05 mm, at least 1.6)`. */
export function figureWords(finding: Finding): string {
  return `${lowered(finding.title)} (${foundIn(finding)})`;
}

/** A title inside a sentence. */
export function lowered(title: string): string {
  return /^[A-Z][a-z]/.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}

/** `a, b and c` */
export function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

function foundIn(finding: Finding): string {
  const { message, missing, limit, value, unit } = finding;
  if (missing) return `${listed(missing)} ${missing.length === 1 ? 'is' : 'are'} not told`;
  if (value === null || limit === null || isShare(unit, limit)) return firstClause(message);
  const figures = figuresOf(finding);
  const bounds = boundsWords(figures.limit);
  return `${figures.value}${bounds === '' ? '' : `, ${bounds}`}`;
}

/** A bare share of what is allowed, such as 1.22 of 1, says little; its message tells what stands behind it. */
function isShare(unit: string, { min, max }: Bounds): boolean {
  return unit === '' && min === undefined && max === 1;
}

/** A message up to its first stop. */
function firstClause(message: string): string {
  return message.split(/[;:.] /, 1)[0] ?? message;
}

/** `at least 0.15`, `at most 0.3`, `0.1 to 0.3`, or `wanted 1` where nothing else will do */
function boundsWords({ min, max }: FiguresOf['limit']): string {
  if (min !== undefined && min === max) return `wanted ${min}`;
  if (min !== undefined && max !== undefined) return `${min} to ${max}`;
  if (min !== undefined) return `at least ${min}`;
  return max === undefined ? '' : `at most ${max}`;
}
