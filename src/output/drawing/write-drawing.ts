import type { DrawnViews } from '../../parts/draw-views.js';
import type { SizeChoice } from '../../parts/part-views.js';
import type { Report } from '../report.js';
import { xmlText } from '../xml-text.js';
import { breakLines } from './break-lines.js';
import { dimensionsInk } from './dimensions.js';
import { boxInk } from './ink.js';
import { PAPERS, type PaperName } from './paper.js';
import { layOut, type Projection } from './sheet-layout.js';
import { INK_STYLE, svgOf } from './svg.js';
import { roomForViews, tablesInk } from './tables.js';
import { scaleBarInk, titleInk } from './title-block.js';
import { viewInk } from './view-ink.js';

/** Views of a part at the sizes that are to be stated. */
export interface DrawnSizes {
  readonly sizes: SizeChoice;
  readonly views: DrawnViews;
  /** first angle unless said otherwise */
  readonly projection?: Projection;
  /** A4 unless said otherwise */
  readonly sheet?: PaperName;
}

/**
 * A drawing on one sheet: the section and the end views beside each other, further views below, thread by ISO 6410,
 * dimensions by ISO 129, hole table and title block. Lines come from the solid, sizes from the dimensions.
 *
 * @param report name, kind and what was applied
 * @param drawn  views at the finished or at the printed sizes, and how they are projected
 * @returns an SVG as large as the sheet: A4 297 by 210 mm, A3 420 by 297 mm
 * @source iso-128, iso-5456-2, iso-6410, iso-129, iso-5455, iso-7200
 */
export function writeDrawing(
  report: Pick<Report, 'name' | 'part' | 'applied' | 'revision' | 'units'>,
  { sizes, views, projection = 'first', sheet = 'a4' }: DrawnSizes,
): string {
  const paper = PAPERS[sheet];
  const { scale, views: placed } = layOut(views, projection, paper, roomForViews(views, paper));
  const { width, height, frame } = paper;
  const words = sizes === 'finished' ? 'sizes in use' : 'sizes in the file';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" class="drawing" role="img" aria-labelledby="drawing-title" color="#1b2a33">`,
    `<title id="drawing-title">Drawing of ${xmlText(report.name)}, ${words}</title>`,
    `<g ${INK_STYLE}>`,
    ...breakLines([
      boxInk('wide', [frame.left, frame.top], [frame.right, frame.bottom]),
      ...placed.flatMap((view) => [...viewInk(view), ...dimensionsInk(view)]),
      ...tablesInk(views, paper),
      ...scaleBarInk(scale, paper),
      ...titleInk({ report, views, sizes, scale, projection, paper }),
    ]).map(svgOf),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}
