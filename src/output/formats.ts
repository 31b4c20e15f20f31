import type { DrawnSizes } from './drawing/write-drawing.js';
import type { PageScript } from './page/page-shell.js';
import type { PartInHand } from './part-in-hand.js';

/** Kinds of file that a part can be written as; the report is always written. */
export const FORMATS = ['stl', '3mf', 'drawing', 'page', 'step'] as const;
export type Format = (typeof FORMATS)[number];

/** A file by its name inside the part's folder. */
export interface WrittenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** How the files besides the STL are written. */
export interface FormatOptions {
  readonly formats: readonly Format[];
  /** sizes in use or in the file, with the views that draw them */
  readonly drawn: DrawnSizes;
  /** where the page finds its script; inside the page unless said otherwise */
  readonly pageScript?: PageScript;
  /** files that stand beside these, made elsewhere */
  readonly others?: readonly string[];
  /** picture of the part for page and 3MF; each renders its own where it is not at hand */
  readonly still?: Uint8Array;
}

/** The name that a format's file has in the folder of a part; the STL's depend on the bodies. */
export function fileOf(format: Exclude<Format, 'stl'>, name: string): string {
  return { '3mf': `${name}.3mf`, drawing: drawingFile(1), page: 'report.html', step: `${name}.step` }[format];
}

/** Sheets of a drawing by their numbers: the first one stands for the drawing. */
function drawingFile(sheet: number): string {
  return sheet === 1 ? 'drawing.svg' : `drawing-${sheet}.svg`;
}

/** Whether a chosen format shows the still picture, which takes as long as all else that it holds. */
export function showStill(formats: readonly Format[]): boolean {
  return formats.includes('3mf') || formats.includes('page');
}

/** Writes the chosen formats besides STL and STEP. Writers are loaded when they are asked for, so that an STL alone stays quick. */
export async function writeFormats(part: PartInHand, options: FormatOptions): Promise<WrittenFile[]> {
  const { formats, drawn, pageScript, still, others = [] } = options;
  const { name } = part.report;
  const files: WrittenFile[] = [];
  if (formats.includes('3mf')) {
    const { writeThreeMf } = await import('./threemf/write-threemf.js');
    files.push({ name: fileOf('3mf', name), bytes: writeThreeMf(part, still) });
  }
  if (!formats.includes('drawing') && !formats.includes('page')) return files;
  const { writeDrawing } = await import('./drawing/write-drawing.js');
  const drawing = writeDrawing(part.report, drawn);
  if (formats.includes('drawing'))
    files.push(...drawing.map((sheet, i) => ({ name: drawingFile(i + 1), bytes: utf8(sheet) })));
  if (formats.includes('page')) {
    const { writePage } = await import('./page/write-page.js');
    const beside = [
      ...(formats.includes('stl') ? part.report.bodies.map(({ file }) => file) : []),
      ...files.map(({ name }) => name),
      ...others,
    ];
    const page = await writePage(part, { views: drawn.views, drawing, beside }, pageScript, still);
    files.push({ name: fileOf('page', name), bytes: utf8(page) });
  }
  return files;
}

function utf8(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
