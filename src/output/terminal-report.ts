import type { Finding } from '../judge/check.js';
import { plain } from '../units/format.js';
import type { Report } from './report.js';
import { adviceLines } from './terminal/advice-lines.js';
import { briefLines, headLines, overrideLines, questionLines } from './terminal/brief.js';
import { loudCheck, quietChecks } from './terminal/check-lines.js';
import { driveLines } from './terminal/drive-lines.js';
import { fitLines } from './terminal/fit-lines.js';
import { beside, columns, WIDTH, wrapped } from './terminal/layout.js';
import { type Paint, paint } from './terminal/paint.js';
import { type Section, sectionsText } from './terminal/sections.js';
import { sizeLines } from './terminal/size-lines.js';

/** How a report is shown. */
export interface TerminalOptions {
  readonly colour?: boolean;
  /** files that were written, as they should be named to the reader; absent where nothing was to be written */
  readonly written?: readonly string[];
  /** everything, and not only the answer */
  readonly all?: boolean;
  /** columns of the terminal */
  readonly width?: number;
}

/**
 * A report for people: the answer first, in at most 24 lines for a usual part; with `all` everything that was found, the
 * verdict and the sentence last too.
 *
 * @param report what a part was found to be
 * @param options colour, width, and the files that were written
 * @returns lines, a line break after each
 */
export function terminalReport(
  report: Report,
  { colour = false, all = false, ...options }: TerminalOptions = {},
): string {
  const style = paint(colour);
  const brief: Section[] = [['', briefLines(report, style, options)], adviceSection(report, options.width)];
  return sectionsText(all ? wholeSections(report, style, options) : brief, style);
}

function wholeSections(
  report: Report,
  style: Paint,
  { written, width = WIDTH }: Pick<TerminalOptions, 'written' | 'width'>,
): Section[] {
  const { checks, first } = report;
  const of = (verdict: Finding['verdict']) => checks.filter((finding) => finding.verdict === verdict);
  const loud = (findings: readonly Finding[]) =>
    findings.flatMap((finding) => loudCheck(finding, style, width, report.units));
  const untold = first.filter(({ field }) => field !== undefined);
  return [
    ['', topLines(report, written, style, width)],
    ['Questions', questionLines(report.questions, style, width)],
    ['Failed', loud(of('fail'))],
    ['Not told', untold.flatMap(({ text }) => beside('  –', 4, text, width))],
    ['To look at', loud(of('caution').filter(({ missing }) => missing === undefined))],
    adviceSection(report, width),
    ['Passed', quietChecks(of('pass'), width, report.units)],
    [
      'Sizes',
      [
        ...sizeLines(report.dimensions, width, report.units),
        ...wrapped(report.applied, 2, width),
        ...wrapped(report.figures ?? '', 2, width),
      ],
    ],
    ['Fit on the bench', report.fit ? fitLines(report.fit, width, report.units) : []],
    ['Drive', report.drive ? driveLines(report.drive, width) : []],
    ['Printing', printLines(report, width)],
    [
      'Hardware',
      columns(
        report.hardware.map(({ item, size, count }) => [`  ${count} ×`, size, item]),
        { width },
      ),
    ],
    ['Taken as given', assumptionLines(report, width)],
    ['Mind', report.cautions.flatMap((caution) => beside('  –', 4, caution, width))],
    ['In short', headLines(report, style, width)],
  ];
}

function adviceSection({ advice }: Report, width?: number): Section {
  return ['Advice', advice ? adviceLines(advice, width) : []];
}

function topLines(report: Report, written: readonly string[] | undefined, style: Paint, width?: number): string[] {
  return [
    ...headLines(report, style, width),
    ...report.accepted.flatMap(({ check, reason }) =>
      wrapped(`accepted although it fails: ${check} — ${reason}`, 2, width).map(style.bold),
    ),
    ...overrideLines(report, width),
    ...(written ?? []).map((file) => `  written: ${file}`),
  ];
}

function printLines({ print, bodies }: Report, width: number): string[] {
  const rows = bodies.map(({ file, material, facets, volume, mass }) => [
    `  ${file}`,
    material,
    `${plain(volume / 1000, 2)} cm³`,
    `${plain(mass, 1)} g`,
    `${facets} facets`,
  ]);
  if (!print) return columns(rows, { right: [2, 3, 4], width });
  const support = print.support === 'none' ? 'no support' : 'with support';
  return [
    ...columns(rows, { right: [2, 3, 4], width }),
    ...wrapped(`face up: ${print.face_up}, ${support}; ${print.why}`, 2, width),
  ];
}

function assumptionLines({ assumptions }: Report, width?: number): string[] {
  const column = Math.max(0, ...assumptions.map(({ field }) => field.length)) + 4;
  return assumptions.flatMap(({ field, value, why }) => {
    const shown = typeof value === 'number' ? plain(value, 4) : value;
    return beside(`  ${field}`, Math.min(column, 32), `${shown} – ${why}`, width);
  });
}
