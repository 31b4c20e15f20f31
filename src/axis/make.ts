import type { Format } from '../output/formats.js';
import { reportJson } from '../output/report-json.js';
import { type MadeFile, type MakeOptions, makeDesign } from '../pipeline/make.js';
import { createKernel } from '../solid/kernel.js';
import { shareOut } from './accept.js';
import type { AxisDesign } from './axis-design.js';
import { axisReport, checkAxis } from './check.js';
import { axisPage, type ShownPart } from './page.js';
import type { AxisReport } from './report.js';

/** The report of an axis, and all its files by their paths in its folder; none where a check of it or of a part fails. */
export interface MadeAxis {
  readonly report: AxisReport;
  readonly files: readonly MadeFile[];
}

/** How an axis is made. */
export interface MakeAxisOptions
  extends Pick<MakeOptions, 'accept' | 'kernel' | 'formats' | 'drawing' | 'projection' | 'paper' | 'step' | 'onStep'> {
  /** all files in one folder: those of a part without its own page and report, its drawing by the part's name */
  readonly flat?: boolean;
}

/**
 * The whole way of every part of an axis, each into a folder of its own, with one report and one page for all.
 *
 * @param axis what `designAxis` gave
 * @param options accepted checks, a kernel in use
 * @returns the report and the files; no files where anything fails that is not accepted
 * @throws SolidFault a solid is not what was worked out, though nothing was accepted or loosened
 */
export async function makeAxis(axis: AxisDesign, options: MakeAxisOptions = {}): Promise<MadeAxis> {
  const { accept = [], onStep, formats = ['stl'], flat = false } = options;
  const checked = checkAxis(axis, { accept });
  if (checked.verdict === 'fail') return { report: checked, files: [] };
  const { ofPart } = shareOut(accept, axis);
  const kernel = options.kernel ?? createKernel();
  const parts: ShownPart[] = [];
  const files: MadeFile[] = [];
  for (const { role, design, kind } of axis.parts) {
    const made = await makeDesign(design, {
      ...options,
      formats: flat ? formats.filter((format) => format !== 'page') : formats,
      kernel,
      kinds: [kind],
      accept: ofPart(role),
      ...(formats.includes('page') ? { picture: 'still' as const } : {}),
      ...(onStep ? { onStep: (what: string) => onStep(`${role}: ${what}`) } : {}),
    });
    const { report, picture } = made;
    const own = flat ? flattened(role, made.files) : made.files;
    const named = { ...report, files: own.map(({ name }) => name) };
    parts.push({ role, folder: flat ? '' : role, report: named, ...(picture ? { picture } : {}) });
    files.push(...own.map(({ name, bytes }) => ({ name: flat ? name : `${role}/${name}`, bytes })));
  }
  const reports = parts.map(({ picture: _, ...part }) => part);
  const report = axisReport(axis, reports, accept);
  if (report.verdict === 'fail') return { report, files: [] };
  return finished(axis, report, parts, files, formats);
}

/** The report goes last: it names all other files, so that a later make can tell which are ours. */
async function finished(
  axis: AxisDesign,
  report: AxisReport,
  parts: readonly ShownPart[],
  made: readonly MadeFile[],
  formats: readonly Format[],
): Promise<MadeAxis> {
  const page = formats.includes('page')
    ? [{ name: 'report.html', bytes: utf8(await axisPage(report, axis, parts)) }]
    : [];
  const files = [...made, ...page];
  const named = { ...report, files: files.map(({ name }) => name) };
  return { report: named, files: [...files, { name: 'report.json', bytes: utf8(reportJson(named)) }] };
}

/** Solids are called by axis and part as they are; the drawing takes the part's name, and its report stands in that of the axis. */
function flattened(role: string, files: readonly MadeFile[]): MadeFile[] {
  return files
    .filter(({ name }) => name !== 'report.json')
    .map(({ name, bytes }) => ({ name: /^drawing(?:-\d+)?\.svg$/.test(name) ? `${role}-${name}` : name, bytes }));
}

function utf8(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
