import type { DrawnViews } from '../../parts/draw-views.js';
import { type DrawnView, type HoleRow, type PartViews, viewsOf } from '../../parts/part-views.js';
import { type Ink, textInk } from './ink.js';
import type { Paper } from './paper.js';
import { wrapped } from './text-width.js';

const INDENT = 4;
const [SMALL, NOTE] = [1.8, 2];
/** From line to line. */
const [ROW, NOTE_ROW] = [2.9, 3.6];
/** Lines of the hole table that find room beside the title block, above the scale bar, their heading aside; and the most. */
const [BESIDE_TITLE, MOST] = [8, 24];

type Tables = Pick<PartViews, 'holes' | 'notes'>;

/** Upper and lower edge of the paper that notes and hole table leave to the views. */
export function roomForViews(views: Tables, paper: Paper): { readonly top: number; readonly bottom: number } {
  const lines = shownRows(views.holes, paper).reduce((sum, { note }) => sum + note.length, 0);
  const notes = noteLines(views, paper).length;
  return {
    top: paper.frame.top + (notes === 0 ? 0 : 3 + NOTE_ROW * notes),
    bottom: paper.title.top - ROW * Math.max(0, lines - BESIDE_TITLE),
  };
}

/** Notes high, hole table low on the left. */
export function tablesInk(views: DrawnViews, paper: Paper): Ink[] {
  const { left, top } = paper.frame;
  return [
    ...holeTable(views, paper),
    ...noteLines(views, paper).map((line, i) =>
      textInk(line, { at: [left + INDENT, top + 5 + NOTE_ROW * i], height: NOTE }),
    ),
  ];
}

function noteLines({ notes }: Pick<Tables, 'notes'>, { frame }: Paper): string[] {
  return notes.flatMap((note) => wrapped(note, frame.right - frame.left - 2 * INDENT, NOTE));
}

/** A row of the table with its note in lines. */
interface ShownRow {
  readonly hole?: HoleRow;
  readonly label: string;
  readonly note: readonly string[];
}

function columnsOf(holes: readonly HoleRow[], { frame }: Paper): { places: number[]; last: number; lying: boolean } {
  const x = frame.left + INDENT;
  const lying = holes.some(({ height }) => height !== undefined);
  return {
    places: [x, x + 8, x + 20, ...(lying ? [x + 32] : []), x + (lying ? 44 : 32)],
    last: x + (lying ? 56 : 44),
    lying,
  };
}

function shownRows(holes: readonly HoleRow[], paper: Paper): ShownRow[] {
  const room = paper.title.left - columnsOf(holes, paper).last - 1;
  const shown = holes.length > MOST ? holes.slice(0, MOST - 1) : holes;
  const rest = holes.length - shown.length;
  return [
    ...shown.map((hole) => ({
      hole,
      label: hole.label,
      note: hole.note === '' ? [''] : wrapped(hole.note, room, SMALL),
    })),
    ...(rest > 0 ? [{ label: `+${rest}`, note: [''] }] : []),
  ];
}

function holeTable(views: DrawnViews, paper: Paper): Ink[] {
  const { holes } = views;
  if (holes.length === 0) return [];
  const { places, last, lying } = columnsOf(holes, paper);
  const isStated = statedBy(views);
  const cell = (text: string, column: number, y: number, bold = false): Ink =>
    textInk(text, { at: [column, y], height: SMALL, bold });
  let y = roomForViews({ holes, notes: [] }, paper).bottom + 3;
  const ink = ['Hole', 'x', 'y', ...(lying ? ['z'] : []), '⌀'].map((text, k) => cell(text, places[k]!, y, true));
  for (const { hole, label, note } of shownRows(holes, paper)) {
    y += ROW;
    const figures = hole ? cellsOf(hole, lying, isStated) : [];
    ink.push(...[label, ...figures].map((text, k) => cell(text, places[k]!, y)));
    ink.push(...note.map((line, i) => cell(line, last, y + ROW * i)));
    y += ROW * (note.length - 1);
  }
  return ink.filter((one) => one.kind !== 'text' || one.text !== '');
}

/** Half the last figure of a dimension, mm. */
const SAME = 0.0051;

/** Tells whether a dimension of the drawing states a length, whole or as half of a symmetric one. */
function statedBy(views: DrawnViews): (length: number) => boolean {
  const stated = viewsOf<DrawnView>(views).flatMap(({ sizes }) => sizes.map(({ value }) => value));
  return (length) => stated.some((value) => [value, value / 2].some((one) => Math.abs(one - length) < SAME));
}

/** ISO 129: what a dimension states already stands in brackets. */
function cellsOf(
  { at: [x, y], height, diameter }: HoleRow,
  lying: boolean,
  isStated: (length: number) => boolean,
): string[] {
  const onCircle = Math.abs(x) > SAME && Math.abs(y) > SAME && isStated(Math.hypot(x, y));
  const told = (value: number, stated: boolean) => (stated ? `(${value.toFixed(2)})` : value.toFixed(2));
  const along = (value: number) => told(value, onCircle || (Math.abs(value) > SAME && isStated(Math.abs(value))));
  return [
    along(x),
    along(y),
    ...(lying ? [height === undefined ? '' : along(height)] : []),
    told(diameter, isStated(diameter)),
  ];
}
