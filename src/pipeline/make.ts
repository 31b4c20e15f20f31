import type { Finding } from '../judge/check.js';
import { worst } from '../judge/run-checks.js';
import type { PaperName } from '../output/drawing/paper.js';
import type { Projection } from '../output/drawing/sheet-layout.js';
import { type Format, showStill, writeFormats } from '../output/formats.js';
import type { PageScript } from '../output/page/page-shell.js';
import type { PartInHand } from '../output/part-in-hand.js';
import type { PictureOptions } from '../output/picture/picture.js';
import type { BodyRow, Report } from '../output/report.js';
import { reportJson } from '../output/report-json.js';
import { stlAbout } from '../output/stl-about.js';
import { writeStl } from '../output/write-stl.js';
import { drawViews } from '../parts/draw-views.js';
import type { PlannedBody } from '../parts/part-kind.js';
import type { SizeChoice } from '../parts/part-views.js';
import type { ExactWriter } from '../solid/exact/exact-part.js';
import { createKernel, type Kernel } from '../solid/kernel.js';
import type { Body } from '../solid/mesh.js';
import { rounded } from '../units/format.js';
import { assembleReport, type CheckOptions, check } from './check.js';
import { type Design, type DesignOptions, design } from './design.js';
import type { StepOptions } from './exact-request.js';
import { kindOfDesign } from './find-kind.js';
import { fuseBody } from './fuse-body.js';
import { KINDS } from './kinds.js';
import type { KnownKind } from './known-kind.js';
import { type FusedBody, measureBody, measuredFindings, needsSupport } from './measure-solid.js';
import { isRelaxed, SolidFault } from './solid-fault.js';
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
  /** where a picture was asked for */
  readonly picture?: Uint8Array;
}

/** How a part is made. */
export interface MakeOptions extends CheckOptions {
  /** a kernel to go on using, or one that is being loaded; one is created otherwise */
  readonly kernel?: Kernel | Promise<Kernel>;
  /** kinds of file to write besides the report; STL alone unless said otherwise */
  readonly formats?: readonly Format[];
  /** sizes that the drawing states; those in use unless said otherwise */
  readonly drawing?: SizeChoice;
  /** how the drawing's views stand to each other; first angle unless said otherwise */
  readonly projection?: Projection;
  /** what it is drawn on; left out: A4, or A3 where A4 would show the part smaller than it is */
  readonly paper?: PaperName;
  /** where the page finds its script; inside the page unless said otherwise */
  readonly pageScript?: PageScript;
  /** what writes STEP files, and how they are asked for; needed where the formats hold `step` */
  readonly step?: StepOptions & { readonly write: ExactWriter };
  /** a picture to be given besides: rendered for it, or the one that page and 3MF show */
  readonly picture?: PictureOptions | 'still';
  /** told before each step that may take long: what it does, in a few words */
  readonly onStep?: (what: string) => void;
}

/**
 * The whole way from a sheet to the bytes of its files: checked, modelled, read back, verified and mated.
 *
 * @param sheet a sheet's text (YAML), or the same as a plain object
 * @param options presets, accepted checks, a kernel in use
 * @returns the report and the files; no files where a check fails that is not accepted
 * @throws InputError every mistake of the sheet at once
 * @throws SolidFault the solid is not what was worked out, though nothing was accepted or loosened
 */
export async function makePart(sheet: string | object, options: DesignOptions & MakeOptions = {}): Promise<MadePart> {
  return makeDesign(design(sheet, options), options);
}

/** The same from a design. */
export async function makeDesign(made: Design, options: MakeOptions = {}): Promise<MadePart> {
  const checked = check(made, options);
  if (checked.verdict === 'fail') return { report: checked, files: [] };
  const { kinds = KINDS, onStep = () => undefined } = options;
  const kernel = await (options.kernel ?? createKernel());
  const kind = kindOfDesign(kinds, made);
  const bodiesPlanned = kind.bodies(made);
  const planned = bodiesPlanned.map((plan): FusedBody & PlannedBody => {
    onStep(`fusing ${plan.recipe.name}`);
    const body = fuseBody(kernel, plan.recipe);
    return { ...plan, body, file: fileName(made, body, bodiesPlanned.length) };
  });
  const written = planned.map(({ body, expected, file, printer }) =>
    readBack({ file, bytes: writeStl(body, stlAbout({ part: made.part, file, printer })), expected: expected() }),
  );
  onStep('measuring it');
  const measured = planned.map(measureBody);
  onStep('trying it on its counterpart');
  const solid: Finding[] = [...verify(written), ...measuredFindings(measured), ...kind.mate(made, kernel)];
  const findings = [...checked.checks, ...solid];
  if (worst(solid) === 'fail') {
    if (!isRelaxed(checked.checks))
      throw new SolidFault(
        made.name,
        solid.filter(({ verdict }) => verdict === 'fail'),
      );
    return { report: assembleReport(made, kind, findings, []), files: [] };
  }
  const rows = planned.map(({ body, turnOver = false }, i) => bodyRow(body, written[i]!, made, turnOver));
  const report = withSupport(assembleReport(made, kind, findings, rows), measured.some(needsSupport));
  const bodies = planned.map(({ body }) => body);
  onStep('drawing it');
  return filesOf({ report, bodies, written }, { made, kind, kernel }, options);
}

/** What was measured says whether support is needed, whatever was foreseen. */
function withSupport(report: Report, needed: boolean): Report {
  return report.print && needed ? { ...report, print: { ...report.print, support: 'needed' } } : report;
}

interface Built {
  readonly report: Report;
  readonly bodies: readonly Body[];
  readonly written: readonly MeasuredBody[];
}

/** The files of the formats asked for, the report last, and the picture. */
async function filesOf(
  { report, bodies, written }: Built,
  { made, kind, kernel }: { readonly made: Design; readonly kind: KnownKind; readonly kernel: Kernel },
  { formats = ['stl'], drawing = 'finished', projection, paper, pageScript, picture, step, onStep }: MakeOptions,
): Promise<MadePart> {
  const stl = formats.includes('stl') ? written.map(({ file, bytes }) => ({ name: file, bytes })) : [];
  const exact = formats.includes('step') ? [await exactFile({ made, kind, kernel }, step, onStep)] : [];
  if (!picture && formats.every((format) => format === 'stl' || format === 'step'))
    return finished(report, [...stl, ...exact]);
  const printed = kind.views(made, 'printed');
  const part: PartInHand = { design: made, report, bodies, views: printed };
  const asked = drawing === 'printed' ? printed : kind.views(made, drawing);
  const drawn = {
    sizes: drawing,
    views: drawViews(kernel, asked),
    ...(projection ? { projection } : {}),
    ...(paper ? { sheet: paper } : {}),
  };
  const pictures = picture || showStill(formats) ? await import('../output/picture/picture.js') : undefined;
  const still = picture === 'still' || showStill(formats) ? pictures?.stillPicture(part) : undefined;
  const more = await writeFormats(part, {
    formats,
    drawn,
    others: exact.map(({ name }) => name),
    ...(pageScript ? { pageScript } : {}),
    ...(still ? { still } : {}),
  });
  const all = finished(report, [...stl, ...exact, ...more]);
  const shown = picture === 'still' ? still : picture && pictures?.writePicture(part, picture);
  return shown ? { ...all, picture: shown } : all;
}

/** @throws Error a body that does not keep its gate, which is named */
async function exactFile(
  { made, kind, kernel }: { readonly made: Design; readonly kind: KnownKind; readonly kernel: Kernel },
  step: MakeOptions['step'],
  onStep: MakeOptions['onStep'] = () => undefined,
): Promise<MadeFile> {
  if (!step) throw new TypeError('formats that hold step want a writer of it');
  onStep('building its exact body');
  const { exactRequest } = await import('./exact-request.js');
  const request = exactRequest(made, { kind, kernel }, step);
  try {
    return { name: request.file, bytes: new TextEncoder().encode(await step.write(request)) };
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    throw new Error(`${request.file} is not written: ${error.message}; other --formats do not need it`);
  }
}

/** The report goes last: it names all other files, so that a later make can tell which are ours. */
function finished(report: Report, files: readonly MadeFile[]): MadePart {
  const named = { ...report, files: files.map(({ name }) => name) };
  const bytes = new TextEncoder().encode(reportJson(named));
  return { report: named, files: [...files, { name: 'report.json', bytes }] };
}

/** One body is `NAME.stl`, several are `NAME-BODY.stl`. */
function fileName({ name }: Design, body: Body, count: number): string {
  return count === 1 ? `${name}.stl` : `${name}-${body.name}.stl`;
}

function bodyRow(body: Body, { file, measures }: MeasuredBody, { densities }: Design, turnOver: boolean): BodyRow {
  const density = densities[body.material];
  if (density === undefined) throw new TypeError(`the design states no density for ${body.material}`);
  const { facets, volume, bounds } = measures;
  return {
    file,
    material: body.material,
    facets,
    volume: rounded(volume),
    mass: rounded((volume / 1000) * density),
    closed: defects(measures) === 0,
    turn_over: turnOver,
    bounds,
  };
}
