import type { Finding } from '../../judge/check.js';
import { boundsText, figure } from '../figures.js';
import { valueBeside } from '../inches.js';
import { beside, columns, WIDTH, wrapped } from './layout.js';
import type { Paint } from './paint.js';

/** A check that wants attention: its figures, what it means, and what moves it. */
export function loudCheck(finding: Finding, { bold, bad, warn, dim }: Paint, width = WIDTH, units?: 'inch'): string[] {
  const name = finding.verdict === 'fail' ? bad(bold(finding.id)) : warn(bold(finding.id));
  const figures = [valueBeside(finding, units), ...limitTexts(finding)].filter((part) => part !== '').join('   ');
  return [
    `  ${name}   ${figures}`.trimEnd(),
    ...wrapped(finding.title, 6, width),
    ...wrapped(finding.message, 6, width),
    ...wrapped(`moved by: ${finding.moves}`, 6, width).map(dim),
    ...(finding.accepted === undefined ? [] : wrapped(`accepted: ${finding.accepted}`, 6, width)),
  ];
}

function limitTexts({ limit, margin, replaced_limit, verdict }: Finding): string[] {
  const bounds = limit ? boundsText(limit) : '';
  if (bounds === '') return [];
  return [
    `limit ${bounds}`,
    margin === null
      ? ''
      : margin < 0
        ? `off by ${figure(-margin)}`
        : verdict === 'caution'
          ? 'kept, but not surely'
          : '',
    replaced_limit ? `the sheet's own, instead of ${boundsText(replaced_limit)}` : '',
  ];
}

/** Checks that pass, one row each; those without a figure say what they found. */
export function quietChecks(findings: readonly Finding[], width = WIDTH, units?: 'inch'): string[] {
  const column = Math.max(0, ...findings.map(({ id }) => id.length)) + 4;
  const measured = findings.filter(({ value }) => value !== null);
  const rows = columns(
    measured.map((finding) => [
      `  ${finding.id}`.padEnd(column - 2),
      valueBeside(finding, units),
      finding.limit ? boundsText(finding.limit) : '',
      finding.margin === null ? '' : `room ${figure(finding.margin)}`,
      finding.replaced_limit ? 'own limit' : '',
    ]),
  );
  const told = findings.filter(({ value }) => value === null);
  return [...rows, ...told.flatMap(({ id, message }) => beside(`  ${id}`, column, message, width))];
}
