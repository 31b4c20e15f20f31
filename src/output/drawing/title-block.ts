import type { PartViews, SizeChoice } from '../../parts/part-views.js';
import { plain } from '../../units/format.js';
import type { Report } from '../report.js';
import { VERSION } from '../version.js';
import { FRAME, type Projection, TITLE } from './sheet-layout.js';
import { lineTag, num, shortened, textTag, wrapped } from './svg.js';

/** What the title block says. */
export interface TitleFacts {
  readonly report: Pick<Report, 'name' | 'part' | 'applied'>;
  readonly views: Pick<PartViews, 'material'>;
  readonly sizes: SizeChoice;
  readonly scale: number;
  readonly projection: Projection;
}

const LABEL = 1.8;
const VALUE = 2.5;

/** Title block by ISO 7200, low on the right. */
export function titleTags({ report, views, sizes, scale, projection }: TitleFacts): string[] {
  const { left, top, right, bottom } = TITLE;
  const rows = [top, top + 12, top + 22, top + 31, bottom];
  const middle = left + 100;
  const cell = (x: number, y: number, label: string, value: string, room: number): string[] => [
    textTag(label, { at: [x + 2, y + 3.4], height: LABEL }),
    textTag(shortened(value, room - 4, VALUE), { at: [x + 2, y + 7.6], height: VALUE }),
  ];
  const stated = sizes === 'finished' ? 'in use, as they must come out' : 'in the file, as they are sent to print';
  const spread = sizes === 'finished' ? 'spread expected after compensation' : 'none: these are the sizes drawn';
  return [
    `<rect class="o" x="${left}" y="${top}" width="${right - left}" height="${bottom - top}"/>`,
    ...rows.slice(1, -1).map((y) => lineTag('t', [y === rows[3] ? middle : left, y], [right, y])),
    lineTag('t', [middle, top], [middle, bottom]),
    textTag(shortened(report.name, 92, 4.2), { at: [left + 2, top + 7.5], height: 4.2, bold: true }),
    textTag(report.part, { at: [left + 2, top + 10.8], height: LABEL }),
    ...cell(middle, top, 'Scale', scaleText(scale), 45),
    ...projectionSymbol(projection, [right - 17, top + 6]),
    ...cell(left, rows[1]!, 'Sizes, mm', stated, 100),
    ...cell(middle, rows[1]!, 'Material', views.material, 80),
    ...cell(left, rows[2]!, 'Compensation', '', 100),
    ...wrapped(report.applied, 96, LABEL, 4).map((line, i) =>
      textTag(line, { at: [left + 2, rows[2]! + 7 + 3.2 * i], height: LABEL }),
    ),
    ...cell(middle, rows[2]!, '± figures', spread, 80),
    ...cell(middle, rows[3]!, 'Drawn from the dimensions by', `leadwright ${VERSION}`, 80),
  ];
}

/** A bar of 50 mm of paper with what it stands for; it prints true when the page is not scaled. */
export function scaleBarTags(scale: number): string[] {
  const [x, y] = [FRAME.left + 4, FRAME.bottom - 5];
  const ticks = Array.from({ length: 6 }, (_, i) =>
    lineTag('o', [x + 10 * i, y - (i % 5 === 0 ? 3 : 2)], [x + 10 * i, y]),
  );
  const step = plain(50 / scale, 2);
  return [
    `<path class="o" id="scale-bar" d="M${num(x)} ${num(y)}L${num(x + 50)} ${num(y)}"/>`,
    ...ticks,
    textTag('50 mm of paper', { at: [x + 52, y], height: LABEL }),
    textTag(`${step} mm of the part`, { at: [x + 52, y - 3], height: LABEL }),
  ];
}

/** `2:1`, `1:5` */
export function scaleText(scale: number): string {
  return scale >= 1 ? `${plain(scale)}:1` : `1:${plain(1 / scale)}`;
}

/**
 * ISO 5456-2: a truncated cone, narrow on its left, and how it looks from there: by first angle that view stands on the
 * right, behind the wide end, by third angle on the left, before the narrow one.
 */
function projectionSymbol(projection: Projection, [x, y]: readonly [number, number]): string[] {
  const [cone, end] = projection === 'first' ? [x - 5, x + 5] : [x + 5, x - 5];
  const [narrow, wide] = [cone - 4, cone + 4];
  return [
    `<g id="projection-${projection}">`,
    `<path class="o" d="M${num(narrow)} ${num(y - 1.7)}L${num(wide)} ${num(y - 3.4)}L${num(wide)} ${num(y + 3.4)}L${num(narrow)} ${num(y + 1.7)}Z"/>`,
    `<circle class="o" cx="${num(end)}" cy="${num(y)}" r="3.4"/>`,
    `<circle class="o" cx="${num(end)}" cy="${num(y)}" r="1.7"/>`,
    lineTag('c', [x - 11, y], [x + 11, y]),
    lineTag('c', [end, y - 4.6], [end, y + 4.6]),
    '</g>',
  ];
}
