import type { PartViews, SizeChoice } from '../../parts/part-views.js';
import type { Report } from '../report.js';
import { xmlText } from '../xml-text.js';
import { dimensionTags } from './dimensions.js';
import { DRAWING_STYLE } from './drawing-style.js';
import { FRAME, layOut, PAPER, type Projection } from './sheet-layout.js';
import { roomForViews, tableTags } from './tables.js';
import { scaleBarTags, titleTags } from './title-block.js';
import { viewTags } from './view-tags.js';

/** Views of a part at the sizes that are to be stated. */
export interface DrawnSizes {
  readonly sizes: SizeChoice;
  readonly views: PartViews;
  /** first angle unless said otherwise */
  readonly projection?: Projection;
}

/**
 * A drawing on A4: the section and the end views beside each other, further views below, thread by ISO 6410,
 * dimensions by ISO 129, hole table and title block. It is made from the dimensions, not from the mesh.
 *
 * @param report name, kind and what was applied
 * @param drawn  views at the finished or at the printed sizes, and how they are projected
 * @returns an SVG of 297 by 210 mm
 * @source iso-128, iso-5456-2, iso-6410, iso-129, iso-5455, iso-7200
 */
export function writeDrawing(
  report: Pick<Report, 'name' | 'part' | 'applied'>,
  { sizes, views, projection = 'first' }: DrawnSizes,
): string {
  const { scale, views: placed } = layOut(views, projection, roomForViews(views));
  const { width, height } = PAPER;
  const words = sizes === 'finished' ? 'sizes in use' : 'sizes in the file';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" class="drawing" role="img" aria-labelledby="drawing-title" color="#1b2a33">`,
    `<title id="drawing-title">Drawing of ${xmlText(report.name)}, ${words}</title>`,
    `<defs><style>${DRAWING_STYLE}</style>${hatchPattern('hatch', 45)}${hatchPattern('hatch-back', -45)}</defs>`,
    `<rect class="o" x="${FRAME.left}" y="${FRAME.top}" width="${FRAME.right - FRAME.left}" height="${FRAME.bottom - FRAME.top}"/>`,
    ...placed.flatMap((view) => [...viewTags(view), ...dimensionTags(view)]),
    ...tableTags(views),
    ...scaleBarTags(scale),
    ...titleTags({ report, views, sizes, scale, projection }),
    '</svg>',
    '',
  ].join('\n');
}

function hatchPattern(id: string, turn: number): string {
  return `<pattern id="${id}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(${turn})"><path d="M0 0V2.4" stroke="currentColor" stroke-width=".3"/></pattern>`;
}
