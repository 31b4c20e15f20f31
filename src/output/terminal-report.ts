import { isBroken } from '../fit/accept.js';
import type { Finding } from '../fit/check.js';
import { plain } from '../units/format.js';
import type { Report } from './report.js';
import { adviceLines } from './terminal/advice-lines.js';
import { loudCheck, quietChecks } from './terminal/check-lines.js';
import { driveLines } from './terminal/drive-lines.js';
import { fitLines } from './terminal/fit-lines.js';
import { beside, columns, wrapped } from './terminal/layout.js';
import { type Paint, paint } from './terminal/paint.js';
import { sizeLines } from './terminal/size-lines.js';

/** How a report is shown. */
export interface TerminalOptions {
  readonly colour?: boolean;
  /** files that were written, as they should be named to the reader; absent where nothing was to be written */
  readonly written?: readonly string[];
}

/**
 * A report for people: the verdict and what to do, then what wants attention, then the rest; at most 80 columns where
 * words allow.
 *
 * @param report what a part was found to be
 * @param options colour, and the files that were written
 * @returns lines, a line break after each
 */
export function terminalReport(report: Report, { colour = false, written }: TerminalOptions = {}): string {
  const style = paint(colour);
  const { checks } = report;
  const of = (verdict: Finding['verdict']) => checks.filter((finding) => finding.verdict === verdict);
  const loud = (findings: readonly Finding[]) => findings.flatMap((finding) => loudCheck(finding, style));
  const sections: [string, string[]][] = [
    ['', headLines(report, written, style)],
    ['Failed', loud(of('fail'))],
    ['To look at', loud(of('caution'))],
    ['Advice', report.advice ? adviceLines(report.advice) : []],
    ['Passed', quietChecks(of('pass'))],
    ['Sizes', [...sizeLines(report.dimensions), ...wrapped(report.applied, 2), ...wrapped(report.figures ?? '', 2)]],
    ['Fit on the bench', report.fit ? fitLines(report.fit) : []],
    ['Drive', report.drive ? driveLines(report.drive) : []],
    ['Printing', printLines(report)],
    ['Hardware', columns(report.hardware.map(({ item, size, count }) => [`  ${count} ×`, size, item]))],
    ['Taken as given', assumptionLines(report)],
    ['Mind', report.cautions.flatMap((caution) => beside('  –', 4, caution))],
  ];
  return sections
    .filter(([, lines]) => lines.length > 0)
    .map(([title, lines]) => `${title === '' ? '' : `${style.bold(title)}\n`}${lines.join('\n')}\n`)
    .join('\n');
}

function headLines(report: Report, written: readonly string[] | undefined, style: Paint): string[] {
  const word = { pass: style.good('PASS'), caution: style.warn('CAUTION'), fail: style.bad('FAIL') }[report.verdict];
  const [first = '', ...rest] = wrapped(
    `${report.name} (${report.part}): ${advice(report, written)}`,
    report.verdict.length + 2,
  );
  return [
    `${style.bold(word)}  ${first.trimStart()}`,
    ...rest,
    ...report.accepted.flatMap(({ check, reason }) =>
      wrapped(`accepted although it fails: ${check} — ${reason}`, 2).map(style.bold),
    ),
    ...(written ?? []).map((file) => `  written: ${file}`),
  ];
}

/** What the verdict means for the reader. */
function advice({ checks, verdict }: Report, written: readonly string[] | undefined): string {
  const open = checks.filter((finding) => finding.verdict === 'fail' && finding.accepted === undefined);
  const cautions = checks.filter((finding) => finding.verdict === 'caution').length;
  const go = written === undefined ? 'may be made' : 'ready to print';
  if (verdict === 'pass') return `${go}, every check passes.`;
  if (verdict === 'caution') {
    const look = cautions === 0 ? 'read what was accepted' : `look at the ${count(cautions, 'caution')} below`;
    return `${go}; ${look} first.`;
  }
  const own = open.filter(({ id }) => !/^(solid|mate)-/.test(id));
  const override = own.find((finding) => !isBroken(finding));
  const nothing = written === undefined ? '' : 'nothing was written. ';
  const byName = override ? `, or accept by name: --accept ${override.id}=REASON` : '.';
  const change =
    own.length > 0
      ? `Change what moves ${open.length === 1 ? 'it' : 'them'}${byName}`
      : 'What was accepted, or a limit that the sheet replaces, lets through what cannot be made: take it back.';
  return `${count(open.length, 'check')} failed, ${nothing}${change}`.replace('failed, Change', 'failed. Change');
}

function count(number: number, thing: string): string {
  return `${number} ${thing}${number === 1 ? '' : 's'}`;
}

function printLines({ print, bodies }: Report): string[] {
  const rows = bodies.map(({ file, material, facets, volume, mass }) => [
    `  ${file}`,
    material,
    `${plain(volume / 1000, 2)} cm³`,
    `${plain(mass, 1)} g`,
    `${facets} facets`,
  ]);
  if (!print) return columns(rows, [2, 3, 4]);
  const support = print.support === 'none' ? 'no support' : 'with support';
  return [...columns(rows, [2, 3, 4]), ...wrapped(`face up: ${print.face_up}, ${support}; ${print.why}`, 2)];
}

function assumptionLines({ assumptions }: Report): string[] {
  const column = Math.max(0, ...assumptions.map(({ field }) => field.length)) + 4;
  return assumptions.flatMap(({ field, value, why }) => {
    const shown = typeof value === 'number' ? plain(value, 4) : value;
    return beside(`  ${field}`, Math.min(column, 32), `${shown} – ${why}`);
  });
}
