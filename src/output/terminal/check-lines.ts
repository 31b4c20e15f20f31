import type { Finding } from '../../judge/check.js';
import { worked } from '../../units/format.js';
import { boundsText } from '../figures.js';
import { limitBeside, valueBeside } from '../inches.js';
import { beside, columns, WIDTH, wrapped } from './layout.js';
import type { Paint } from './paint.js';

/** A check that wants attention: its figures, what it means, and what moves it. */
export function loudCheck(finding: Finding, { bold, bad, warn, dim }: Paint, width = WIDTH, units?: 'inch'): string[] {
  const name = finding.verdict === 'fail' ? bad(bold(finding.id)) : warn(bold(finding.id));
  const figures = [valueBeside(finding, units), ...limitTexts(finding, units)]
    .filter((part) => part !== '')
    .join('   ');
  return [
    ...headOf(finding.id, name, figures, width),
    ...wrapped(finding.title, 6, width),
    ...wrapped(finding.message, 6, width),
    ...wrapped(`moved by: ${finding.moves}`, 6, width).map(dim),
    ...(finding.accepted === undefined ? [] : wrapped(`accepted: ${finding.accepted}`, 6, width)),
  ];
}

/** Name and figures in one line, or in two where it is too long. */
function headOf(id: string, name: string, figures: string, width: number): string[] {
  if (figures === '') return [`  ${name}`];
  return id.length + figures.length + 5 <= width
    ? [`  ${name}   ${figures}`]
    : [`  ${name}`, ...wrapped(figures, 6, width)];
}

function limitTexts(finding: Finding, units?: 'inch'): string[] {
  const { margin, replaced_limit, verdict, unit } = finding;
  const bounds = limitBeside(finding, units);
  if (bounds === '') return [];
  return [
    `limit ${bounds}`,
    margin === null
      ? ''
      : margin < 0
        ? `off by ${worked(-margin, unit)}`
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
  const cells = measured.map((finding) => [
    `  ${finding.id}`.padEnd(column - 2),
    valueBeside(finding, units),
    limitBeside(finding, units),
    finding.margin === null ? '' : `room ${worked(finding.margin, finding.unit)}`,
    finding.replaced_limit ? 'own limit' : '',
  ]);
  const table = columns(cells);
  const isWhole = table.every(({ length }) => length <= width);
  const rows = isWhole ? table : cells.flatMap((row) => inLine(row, column, width));
  const told = findings.filter(({ value }) => value === null);
  return [...rows, ...told.flatMap(({ id, message }) => beside(`  ${id}`, column, message, width))];
}

/** A row of a table that the terminal is too narrow for. */
function inLine([label = '', ...cells]: readonly string[], column: number, width: number): string[] {
  return beside(label.trimEnd(), column, cells.filter((cell) => cell !== '').join(', '), width);
}
