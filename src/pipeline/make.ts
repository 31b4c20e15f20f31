import type { Finding } from '../fit/check.js';
import { worst } from '../fit/run-checks.js';
import type { BodyRow, Report } from '../output/report.js';
import { reportJson } from '../output/report-json.js';
import { writeStl } from '../output/write-stl.js';
import { createKernel, type Kernel } from '../solid/kernel.js';
import type { Body } from '../solid/mesh.js';
import { assembleReport, type CheckOptions, check } from './check.js';
import { type Design, type DesignOptions, design } from './design.js';
import { kindOfDesign } from './find-kind.js';
import { fuseBody } from './fuse-body.js';
import { KINDS } from './kinds.js';
import { defects, type MeasuredBody, readBack, verify } from './verify.js';

/** A file to be written, by its name inside the part's folder. */
export interface MadeFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The report of a part, and its files; no files where a check fails. */
export interface MadePart {
  readonly report: Report;
  readonly files: readonly MadeFile[];
}

/** How a part is made. */
export interface MakeOptions extends CheckOptions {
  /** a kernel to go on using, or one that is being loaded; one is created otherwise */
  readonly kernel?: Kernel | Promise<Kernel>;
}

/**
 * The whole way from a sheet to the bytes of its files: checked, modelled, read back, verified and mated.
 *
 * @param sheet a sheet's text (YAML), or the same as a plain object
 * @param options presets, accepted checks, a kernel in use
 * @returns the report and the files; no files where a check fails that is not accepted
 * @throws InputError every mistake of the sheet at once
 */
export async function makePart(sheet: string | object, options: DesignOptions & MakeOptions = {}): Promise<MadePart> {
  return makeDesign(design(sheet, options), options);
}

/** The same from a design. */
export async function makeDesign(made: Design, options: MakeOptions = {}): Promise<MadePart> {
  const checked = check(made, options);
  if (checked.verdict === 'fail') return { report: checked, files: [] };
  const { kinds = KINDS } = options;
  const kernel = await (options.kernel ?? createKernel());
  const kind = kindOfDesign(kinds, made);
  const planned = kind.bodies(made).map(({ recipe, expected }) => ({ body: fuseBody(kernel, recipe), expected }));
  const written = planned.map(({ body, expected }) =>
    readBack({ file: fileName(made, body, planned.length), bytes: writeStl(body), expected }),
  );
  const solid: Finding[] = [...verify(written), ...kind.mate(made, kernel)];
  const findings = [...checked.checks, ...solid];
  if (worst(solid) === 'fail') return { report: assembleReport(made, kind, findings, []), files: [] };
  const rows = planned.map(({ body }, i) => bodyRow(body, written[i]!, made));
  const report = assembleReport(made, kind, findings, rows);
  const files = written.map(({ file, bytes }) => ({ name: file, bytes }));
  return { report, files: [...files, { name: 'report.json', bytes: new TextEncoder().encode(reportJson(report)) }] };
}

/** One body is `NAME.stl`, several are `NAME-BODY.stl`. */
function fileName({ name }: Design, body: Body, count: number): string {
  return count === 1 ? `${name}.stl` : `${name}-${body.name}.stl`;
}

function bodyRow(body: Body, { file, measures }: MeasuredBody, { densities }: Design): BodyRow {
  const density = densities[body.material];
  if (density === undefined) throw new TypeError(`the design states no density for ${body.material}`);
  const { facets, volume, bounds } = measures;
  return {
    file,
    material: body.material,
    facets,
    volume,
    mass: (volume / 1000) * density,
    closed: defects(measures) === 0,
    bounds,
  };
}
