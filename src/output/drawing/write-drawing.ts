import type { DrawnViews } from '../../parts/draw-views.js';
import type { SizeChoice } from '../../parts/part-views.js';
import type { Report } from '../report.js';
import { xmlText } from '../xml-text.js';
import { breakLines } from './break-lines.js';
import { dimensionsInk } from './dimensions.js';
import { boxInk, enlarged } from './ink.js';
import { originInk } from './origin.js';
import { inLetters, PAPERS, type PaperName } from './paper.js';
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
  /** left out: A4, or A3 where A4 would show the part smaller than it is */
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
  { sizes, views, projection = 'first', sheet }: DrawnSizes,
): string {
  const inches = report.units === 'inch';
  const laid = (name: PaperName) => {
    const lettered = inLetters(PAPERS[name]);
    return {
      ...layOut(views, projection, lettered, roomForViews(views, lettered, inches)),
      paper: PAPERS[name],
      lettered,
    };
  };
  const { paper, lettered, scale, views: placed } = sheet ? laid(sheet) : onSmallest(laid);
  const { width, height, frame, lettering } = paper;
  const drawn = [
    ...placed.flatMap((view) => [...viewInk(view), ...dimensionsInk(view)]),
    ...tablesInk(views, lettered, inches),
  ];
  const words = sizes === 'finished' ? 'sizes in use' : 'sizes in the file';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" class="drawing" role="img" aria-labelledby="drawing-title" color="#1b2a33">`,
    `<title id="drawing-title">Drawing of ${xmlText(report.name)}, ${words}</title>`,
    `<g ${INK_STYLE}>`,
    ...breakLines([
      boxInk('wide', [frame.left, frame.top], [frame.right, frame.bottom]),
      ...[...drawn, ...originInk(placed, views, drawn)].map((ink) => enlarged(ink, lettering)),
      ...scaleBarInk(scale, paper),
      ...titleInk({ report, views, sizes, scale, projection, paper }),
    ]).map(svgOf),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

/** On A4, unless the part is drawn smaller than it is there, and larger on A3. */
function onSmallest<Laid extends { readonly scale: number }>(laid: (name: PaperName) => Laid): Laid {
  const small = laid('a4');
  if (small.scale >= 1) return small;
  const large = laid('a3');
  return large.scale > small.scale ? large : small;
}
