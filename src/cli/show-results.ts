import { jsonText } from '../output/report-json.js';
import { terminalReport } from '../output/terminal-report.js';
import { faultLine, InputError } from '../units/faults.js';
import type { SheetResult } from '../work/make-sheets.js';
import { EXIT } from './exit-codes.js';
import { internalLine } from './internal-line.js';
import { type Io, wantsColour, widthOf } from './io.js';

/** How results are shown. */
export interface ShowOptions {
  readonly json: boolean;
  /** whether files were to be written */
  readonly writes: boolean;
  /** everything, and not only the answer */
  readonly all: boolean;
}

/**
 * Shows what became of each sheet: reports on stdout, mistakes on stderr.
 * @returns the highest exit code
 */
export function showResults(results: readonly SheetResult[], io: Io, { json, writes, all }: ShowOptions): number {
  for (const result of results) for (const line of messages(result, io)) io.stderr.write(`${line}\n`);
  if (json) {
    const answers = results.map(answer);
    io.stdout.write(jsonText(answers.length === 1 ? answers[0] : answers));
  } else {
    const width = widthOf(io);
    const look = { colour: wantsColour(io), width, all };
    const reports = results.flatMap((result) =>
      'report' in result
        ? [terminalReport(result.report, { ...look, ...(writes ? { written: result.written } : {}) })]
        : [],
    );
    if (reports.length > 0) io.stdout.write(reports.join(`\n${'─'.repeat(width)}\n\n`));
  }
  return Math.max(...results.map(codeOf));
}

function codeOf(result: SheetResult): number {
  if ('report' in result) return result.report.verdict === 'fail' ? EXIT.failed : EXIT.done;
  return result.error instanceof InputError ? EXIT.wrong : EXIT.internal;
}

function messages(result: SheetResult, io: Io): string[] {
  const lines = 'report' in result ? [] : errorLines(result.error, result.file, io);
  if (result.earlier === undefined) return lines;
  return [
    ...lines,
    `${result.file}: ${result.earlier} still holds files of an earlier make; they do not belong to this sheet`,
  ];
}

/** One line a mistake, each beginning with its file and place. */
function errorLines(error: Error, file: string, io: Io): string[] {
  if (!(error instanceof InputError)) return [`${file}: ${internalLine(error, io)}`];
  return error.faults.map((fault) => (fault.at ? faultLine(fault, file) : `${file}: ${faultLine(fault)}`));
}

function answer(result: SheetResult): unknown {
  if ('report' in result) return result.report;
  const { file, error } = result;
  if (!(error instanceof InputError)) return { name: file, internal: error.message };
  return {
    name: file,
    error: error.faults.map(({ path, at, value, allowed }) => ({
      path,
      line: at?.line ?? null,
      column: at?.column ?? null,
      value,
      allowed,
    })),
  };
}
