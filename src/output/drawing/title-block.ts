import type { PartViews, SizeChoice } from '../../parts/part-views.js';
import { plain } from '../../units/format.js';
import type { Report } from '../report.js';
import { VERSION } from '../version.js';
import { boxInk, circleInk, type Ink, lineInk, textInk } from './ink.js';
import type { Paper } from './paper.js';
import { scaleText } from './scale-text.js';
import type { Projection } from './sheet-layout.js';
import { textWidth, wrapped } from './text-width.js';

/** What the title block says. */
export interface TitleFacts {
  readonly report: Pick<Report, 'name' | 'part' | 'applied' | 'revision' | 'units'>;
  readonly views: Pick<PartViews, 'material'>;
  readonly sizes: SizeChoice;
  readonly scale: number;
  readonly projection: Projection;
  readonly paper: Paper;
  /** which sheet of how many */
  readonly sheet: readonly [number, number];
}

const LABEL = 1.8;
const VALUE = 2.5;
const NAME = 4.2;

/** Title block by ISO 7200, low on the right. */
export function titleInk({ report, views, sizes, scale, projection, paper, sheet }: TitleFacts): Ink[] {
  const { left, top, right, bottom } = paper.title;
  const rows = [top, top + 12, top + 22, top + 31, bottom];
  const middle = left + 100;
  const cell = (x: number, y: number, label: string, value: string, room: number): Ink[] => [
    textInk(label, { at: [x + 2, y + 3.4], height: LABEL }),
    ...valueInk(value, [x + 2, y + 7.6], room - 4),
  ];
  const stated = sizes === 'finished' ? 'in use, as they must come out' : 'in the file, as they are sent to print';
  const spread = sizes === 'finished' ? 'spread expected after compensation' : 'none: these are the sizes drawn';
  return [
    boxInk('wide', [left, top], [right, bottom]),
    ...rows.slice(1, -1).map((y) => lineInk('narrow', [y === rows[3] ? middle : left, y], [right, y])),
    lineInk('narrow', [middle, top], [middle, bottom]),
    ...nameInk(report.name, [left + 2, top], 96),
    textInk(report.part, { at: [left + 2, top + 10.8], height: LABEL }),
    ...cell(middle, top, 'Scale', scaleText(scale), 20),
    ...cell(middle + 18, top, 'Sheet', `${paper.name}, sheet ${sheet[0]} of ${sheet[1]}`, 44),
    projectionSymbol(projection, [right - 13, top + 6]),
    ...cell(left, rows[1]!, report.units === 'inch' ? 'Sizes, mm [in]' : 'Sizes, mm', stated, 100),
    ...cell(middle, rows[1]!, 'Material', views.material, 80),
    ...cell(left, rows[2]!, 'Compensation', '', 100),
    ...wrapped(report.applied, 96, LABEL).map((line, i) =>
      textInk(line, { at: [left + 2, rows[2]! + 6.6 + 2.7 * i], height: LABEL }),
    ),
    ...cell(middle, rows[2]!, '± figures', spread, 80),
    ...cell(middle, rows[3]!, 'Drawn from the dimensions by', `leadwright ${VERSION}`, 52),
    lineInk('narrow', [middle + 52, rows[3]!], [middle + 52, bottom]),
    ...cell(middle + 52, rows[3]!, 'Revision', report.revision ?? '–', 28),
  ];
}

/** A value on one line, or smaller on two where it is longer than its cell. */
function valueInk(value: string, [x, y]: readonly [number, number], room: number): Ink[] {
  if (textWidth(value, VALUE) <= room) return value === '' ? [] : [textInk(value, { at: [x, y], height: VALUE })];
  return wrapped(value, room, LABEL).map((line, i) => textInk(line, { at: [x, y - 1.3 + 2.5 * i], height: LABEL }));
}

/** The name in the largest letters that hold it whole. */
function nameInk(name: string, [x, top]: readonly [number, number], room: number): Ink[] {
  const bold = true;
  if (textWidth(name, NAME) <= room) return [textInk(name, { at: [x, top + 7.5], height: NAME, bold })];
  return wrapped(name, room, VALUE).map((line, i) =>
    textInk(line, { at: [x, top + 4 + 3.6 * i], height: VALUE, bold }),
  );
}

/** A bar of 50 mm of paper with what it stands for; it prints true when the page is not scaled. */
export function scaleBarInk(scale: number, { frame }: Paper): Ink[] {
  const [x, y] = [frame.left + 4, frame.bottom - 5];
  const ticks = Array.from({ length: 6 }, (_, i) =>
    lineInk('wide', [x + 10 * i, y - (i % 5 === 0 ? 3 : 2)], [x + 10 * i, y]),
  );
  const step = plain(50 / scale, 2);
  return [
    {
      kind: 'line',
      pen: 'wide',
      points: [
        [x, y],
        [x + 50, y],
      ],
      id: 'scale-bar',
    },
    ...ticks,
    textInk('50 mm of paper', { at: [x + 52, y], height: LABEL }),
    textInk(`${step} mm of the part`, { at: [x + 52, y - 3], height: LABEL }),
  ];
}

/**
 * ISO 5456-2: a truncated cone, narrow on its left, and how it looks from there: by first angle that view stands on the
 * right, behind the wide end, by third angle on the left, before the narrow one.
 */
function projectionSymbol(projection: Projection, [x, y]: readonly [number, number]): Ink {
  const [cone, end] = projection === 'first' ? [x - 5, x + 5] : [x + 5, x - 5];
  const [narrow, wide] = [cone - 4, cone + 4];
  const outline: readonly (readonly [number, number])[] = [
    [narrow, y - 1.7],
    [wide, y - 3.4],
    [wide, y + 3.4],
    [narrow, y + 1.7],
  ];
  return {
    kind: 'group',
    id: `projection-${projection}`,
    of: [
      { kind: 'line', pen: 'wide', points: outline, closed: true },
      circleInk('wide', [end, y], 3.4),
      circleInk('wide', [end, y], 1.7),
      lineInk('centre', [x - 11, y], [x + 11, y]),
      lineInk('centre', [end, y - 4.6], [end, y + 4.6]),
    ],
  };
}
