import type { DrawnViews } from '../../parts/draw-views.js';
import type { SizeChoice } from '../../parts/part-views.js';
import type { Report } from '../report.js';
import { xmlText } from '../xml-text.js';
import { breakLines } from './break-lines.js';
import { dimensionsInk } from './dimensions.js';
import { boxInk, enlarged } from './ink.js';
import { leadersInk } from './leaders.js';
import { originInk } from './origin.js';
import { inLetters, PAPERS, type Paper, type PaperName } from './paper.js';
import { type Layout, layOut, type Projection } from './sheet-layout.js';
import { type SheetViews, sheetsOf } from './sheets.js';
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
 * A drawing: the section and the end views beside each other, further views below, thread by ISO 6410, dimensions by
 * ISO 129, hole table and title block. Lines come from the solid, sizes from the dimensions.
 *
 * @param report name, kind and what was applied
 * @param drawn  views at the finished or at the printed sizes, and how they are projected
 * @returns an SVG for each sheet, as large as the sheet: A4 297 by 210 mm, A3 420 by 297 mm
 * @source iso-128, iso-5456-2, iso-6410, iso-129, iso-5455, iso-7200
 */
export function writeDrawing(report: DrawnReport, drawn: DrawnSizes): readonly string[] {
  const { projection = 'first', sheet, views } = drawn;
  const inches = report.units === 'inch';
  const laidOn = (shown: SheetViews, name: PaperName): Laid => {
    const [paper, lettered] = [PAPERS[name], inLetters(PAPERS[name])];
    return { ...layOut(shown, projection, lettered, roomForViews(shown, lettered, inches)), paper, lettered };
  };
  const laid = (shown: SheetViews) =>
    sheet ? laidOn(shown, sheet) : onSmallest((name: PaperName) => laidOn(shown, name));
  const sheets = sheetsOf(views, (shown) => laid(shown).scale);
  return sheets.map((shown, i) =>
    sheetText(report, { ...drawn, projection, views: shown }, laid(shown), [i + 1, sheets.length]),
  );
}

type DrawnReport = Pick<Report, 'name' | 'part' | 'applied' | 'revision' | 'units'>;

/** Views in their places on a paper. */
interface Laid extends Layout {
  readonly paper: Paper;
  readonly lettered: Paper;
}

function sheetText(
  report: DrawnReport,
  {
    sizes,
    views,
    projection,
  }: Omit<DrawnSizes, 'views'> & { readonly views: SheetViews; readonly projection: Projection },
  { paper, lettered, scale, views: placed }: Laid,
  sheet: readonly [number, number],
): string {
  const { width, height, frame, lettering } = paper;
  const drawn = [
    ...placed.flatMap((view) => [...viewInk(view), ...dimensionsInk(view), ...leadersInk(view)]),
    ...tablesInk(views, lettered, report.units === 'inch'),
  ];
  const words = `${sizes === 'finished' ? 'sizes in use' : 'sizes in the file'}${sheet[1] > 1 ? `, sheet ${sheet.join(' of ')}` : ''}`;
  const ink = breakLines([
    boxInk('wide', [frame.left, frame.top], [frame.right, frame.bottom]),
    ...[...drawn, ...originInk(placed, views, drawn)].map((one) => enlarged(one, lettering)),
    ...scaleBarInk(scale, paper),
    ...titleInk({ report, views, sizes, scale, projection, paper, sheet }),
  ]);
  // sheets of one drawing may stand in one page
  const own = sheet[0] > 1 ? `-${sheet[0]}` : '';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" class="drawing" role="img" aria-labelledby="drawing-title${own}" color="#1b2a33">`,
    `<title id="drawing-title${own}">Drawing of ${xmlText(report.name)}, ${words}</title>`,
    `<g ${INK_STYLE}>`,
    ...ink.map((one) => svgOf(one, own)),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

/** On A4, unless the part is drawn smaller than it is there, and larger on A3. */
function onSmallest(laid: (name: PaperName) => Laid): Laid {
  const small = laid('a4');
  if (small.scale >= 1) return small;
  const large = laid('a3');
  return large.scale > small.scale ? large : small;
}
