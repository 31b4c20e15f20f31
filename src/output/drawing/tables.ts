import {
  type DrawnView,
  type HoleRow,
  type PartViews,
  type Point,
  type SizeMark,
  viewsOf,
} from '../../parts/part-views.js';
import { inchFigure } from '../inches.js';
import { boxOf, isWithin } from './bands.js';
import { type Ink, textInk } from './ink.js';
import type { Paper } from './paper.js';
import type { SheetViews } from './sheets.js';
import { wrapped } from './text-width.js';

const INDENT = 4;
const [SMALL, NOTE] = [1.8, 2];
/** Widths of the columns of labels and of figures. */
const [LABEL, COLUMN] = [8, 13];
/** From line to line. */
const [ROW, NOTE_ROW] = [2.9, 3.6];
/** Lines of the hole table at most; and paper that the scale bar and its heading take beside the title block. */
const [MOST, BESIDE] = [24, 16.8];

type Tables = Pick<PartViews, 'holes' | 'notes'>;

/** Upper and lower edge of the paper that notes and hole table leave to the views. */
export function roomForViews(
  views: Tables,
  paper: Paper,
  inches: boolean,
): { readonly top: number; readonly bottom: number } {
  const lines = shownRows(views.holes, paper, inches).reduce((sum, row) => sum + row.lines, 0);
  const beside = Math.floor((paper.title.bottom - paper.title.top - BESIDE) / ROW);
  const notes = noteLines(views, paper, inches).length;
  return {
    top: paper.frame.top + (notes === 0 ? 0 : 3 + NOTE_ROW * notes),
    bottom: paper.title.top - ROW * Math.max(0, lines - beside),
  };
}

/** Notes high, hole table low on the left, where inches are asked for with them under each of its figures. */
export function tablesInk(views: SheetViews, paper: Paper, inches: boolean): Ink[] {
  const { left, top } = paper.frame;
  return [
    ...holeTable(views, paper, inches),
    ...noteLines(views, paper, inches).map((line, i) =>
      textInk(line, { at: [left + INDENT, top + 5 + NOTE_ROW * i], height: NOTE }),
    ),
  ];
}

function noteLines({ notes }: Pick<Tables, 'notes'>, { frame }: Paper, inches: boolean): string[] {
  return notes.flatMap((note) => wrapped(noteText(note, inches), frame.right - frame.left - 2 * INDENT, NOTE));
}

/** A length in a note, with its spread where it has one. */
const NOTED = /([−-]?\d+(?:\.\d+)?)((?: ±\d+(?:\.\d+)?)?) mm\b/g;

/** A note as dimensions are written: mm unsaid, and inches in brackets where they are asked for. */
export function noteText(note: string, inches: boolean): string {
  const stated = note.replace(NOTED, (_, value: string, spread: string) => {
    const beside = inches ? ` [${inchFigure(Number(value.replace('−', '-')), 3)}]` : '';
    return `${value}${spread}${beside}`;
  });
  return withMinus(stated);
}

/** Figures below nought with a minus sign: a hyphen before a figure that begins a word, or stands in brackets. */
function withMinus(text: string): string {
  return text.replace(/(?<=^|[\s([])-(?=\d)/g, '−');
}

/** A row of the table with its note in lines. */
interface ShownRow {
  readonly hole?: HoleRow;
  readonly label: string;
  readonly note: readonly string[];
  /** how many lines it takes */
  readonly lines: number;
}

function columnsOf(holes: readonly HoleRow[], { frame }: Paper): { places: number[]; last: number; lying: boolean } {
  const x = frame.left + INDENT;
  const lying = holes.some(({ height }) => height !== undefined);
  return {
    places: [x, ...Array.from({ length: lying ? 4 : 3 }, (_, i) => x + LABEL + COLUMN * i)],
    last: x + LABEL + COLUMN * (lying ? 4 : 3),
    lying,
  };
}

function shownRows(holes: readonly HoleRow[], paper: Paper, inches: boolean): ShownRow[] {
  const room = paper.title.left - columnsOf(holes, paper).last - 1;
  const most = inches ? MOST / 2 : MOST;
  const shown = holes.length > most ? holes.slice(0, most - 1) : holes;
  const rest = holes.length - shown.length;
  return [
    ...shown.map((hole) => {
      const note = hole.note === '' ? [''] : wrapped(noteText(hole.note, inches), room, SMALL);
      return { hole, label: hole.label, note, lines: Math.max(note.length, inches ? 2 : 1) };
    }),
    ...(rest > 0 ? [{ label: `+${rest}`, note: [''], lines: 1 }] : []),
  ];
}

function holeTable(views: SheetViews, paper: Paper, inches: boolean): Ink[] {
  const { holes } = views;
  if (holes.length === 0) return [];
  const { places, last, lying } = columnsOf(holes, paper);
  const isStated = statedBy(views);
  const cell = (text: string, column: number, y: number, bold = false): Ink =>
    textInk(text, { at: [column, y], height: SMALL, bold });
  let y = roomForViews({ holes, notes: [] }, paper, inches).bottom + 3;
  const ink = ['Hole', 'x', 'y', ...(lying ? ['z'] : []), '⌀'].map((text, k) => cell(text, places[k]!, y, true));
  for (const { hole, label, note, lines } of shownRows(holes, paper, inches)) {
    y += ROW;
    const figures = hole ? cellsOf({ ...hole, at: counted(hole, views) }, lying, isStated) : [];
    ink.push(...[label, ...figures.map(({ text }) => text)].map((text, k) => cell(text, places[k]!, y)));
    if (inches) ink.push(...figures.map(({ inch }, k) => cell(inch, places[k + 1]!, y + ROW)));
    ink.push(...note.map((line, i) => cell(line, last, y + ROW * i)));
    y += ROW * (lines - 1);
  }
  return ink.filter((one) => one.kind !== 'text' || one.text !== '');
}

/** Where a hole stands, counted from the origin of the view that shows it. */
function counted({ at: [x, y] }: HoleRow, views: SheetViews): Point {
  const shown = viewsOf<DrawnView>(views).find((view) => view.origin && isWithin([x, y], boxOf(view)));
  const [x0, y0] = shown?.origin ?? [0, 0];
  return [x - x0, y - y0];
}

/** Half the last figure of a dimension, mm. */
const SAME = 0.0051;

/** Which lengths of a hole dimensions state. */
interface Stated {
  /** across a hole, or across its flats */
  readonly across: (diameter: number) => boolean;
  /** a circle about the axis on which it stands */
  readonly circle: (radius: number) => boolean;
  /** its place: an extension line goes to it, along x or along y of some view */
  readonly place: (length: number) => boolean;
}

function statedBy(views: SheetViews): Stated {
  const sizes = viewsOf<DrawnView>(views).flatMap((view) => view.sizes);
  const isRound = ({ sign = '' }: SizeMark) => sign.includes('⌀');
  const same = (a: number, b: number) => Math.abs(a - b) < SAME;
  // slots are as wide as their holes, without a sign for that
  const across = sizes.filter((mark) => isRound(mark) || /across|hole_diameter/.test(mark.name));
  const circles = sizes.filter((mark) => isRound(mark) && mark.side === 'leader' && Math.hypot(...mark.from) < SAME);
  const places = sizes.flatMap((mark) => {
    const axis = mark.side === 'above' || mark.side === 'below' ? 0 : 1;
    const isPlace = !isRound(mark) && mark.side !== 'leader' && mark.side !== 'riser';
    return isPlace ? [mark.from[axis], mark.to[axis]].map(Math.abs) : [];
  });
  return {
    across: (diameter) => across.some(({ value }) => same(value, diameter)),
    circle: (radius) => circles.some(({ value }) => same(value / 2, radius)),
    place: (length) => places.some((place) => same(place, length)),
  };
}

/** A cell of the table, and the same in inches. */
interface Cell {
  readonly text: string;
  readonly inch: string;
}

/** ISO 129: what a dimension states already stands in brackets. */
function cellsOf({ at: [x, y], height, diameter }: HoleRow, lying: boolean, stated: Stated): Cell[] {
  const onCircle = stated.circle(Math.hypot(x, y));
  const told = (exact: number, isStated: boolean): Cell => {
    // a hole beside the axis by rounding is not at −0.00
    const value = Math.abs(exact) < 0.005 ? 0 : exact;
    return {
      text: withMinus(isStated ? `(${value.toFixed(2)})` : value.toFixed(2)),
      inch: withMinus(`[${inchFigure(value, 3)}]`),
    };
  };
  const along = (value: number) => told(value, Math.abs(value) > SAME && (onCircle || stated.place(Math.abs(value))));
  return [
    along(x),
    along(y),
    ...(lying ? [height === undefined ? { text: '', inch: '' } : along(height)] : []),
    told(diameter, stated.across(diameter)),
  ];
}
