import type { HoleRow, PartViews } from '../../parts/part-views.js';
import { type Ink, textInk } from './ink.js';
import { FRAME, TITLE } from './sheet-layout.js';
import { shortened } from './text-width.js';

const LEFT = FRAME.left + 4;
const [SMALL, NOTE] = [1.8, 2];
/** From line to line. */
const [ROW, NOTE_ROW] = [2.9, 3.6];
/** Rows of holes that find room beside the title block, above the scale bar, their heading aside; and the most. */
const [BESIDE_TITLE, MOST] = [8, 24];

type Tables = Pick<PartViews, 'holes' | 'notes'>;

/** Upper and lower edge of the paper that notes and hole table leave to the views. */
export function roomForViews({ holes, notes }: Tables): { readonly top: number; readonly bottom: number } {
  const rows = Math.min(holes.length, MOST);
  return {
    top: FRAME.top + (notes.length === 0 ? 0 : 3 + NOTE_ROW * notes.length),
    bottom: TITLE.top - ROW * Math.max(0, rows - BESIDE_TITLE),
  };
}

/** Notes high, hole table low on the left. */
export function tablesInk({ holes, notes }: Tables): Ink[] {
  return [
    ...holeTable(holes),
    ...notes.map((note, i) => textInk(note, { at: [LEFT, FRAME.top + 5 + NOTE_ROW * i], height: NOTE })),
  ];
}

function holeTable(holes: readonly HoleRow[]): Ink[] {
  if (holes.length === 0) return [];
  const shown = holes.length > MOST ? holes.slice(0, MOST - 1) : holes;
  const rest = holes.length - shown.length;
  const lying = holes.some(({ height }) => height !== undefined);
  const places = [LEFT, LEFT + 8, LEFT + 20, ...(lying ? [LEFT + 32] : []), LEFT + (lying ? 44 : 32)];
  const last = LEFT + (lying ? 55 : 43);
  const top = roomForViews({ holes, notes: [] }).bottom + 3;
  const row = (cells: readonly string[], note: string, i: number, bold = false): Ink[] => [
    ...cells.map((cell, k) => textInk(cell, { at: [places[k]!, top + ROW * i], height: SMALL, bold })),
    textInk(shortened(note, TITLE.left - last - 1, SMALL), { at: [last, top + ROW * i], height: SMALL, bold }),
  ];
  return [
    ...row(['Hole', 'x', 'y', ...(lying ? ['z'] : []), '⌀'], '', 0, true),
    ...shown.flatMap((hole, i) => row(cellsOf(hole, lying), hole.note, i + 1)),
    ...(rest > 0 ? row([`+${rest}`], '', shown.length + 1) : []),
  ];
}

function cellsOf({ label, at, height, diameter }: HoleRow, lying: boolean): string[] {
  const up = lying ? [height === undefined ? '' : height.toFixed(2)] : [];
  return [label, at[0].toFixed(2), at[1].toFixed(2), ...up, diameter.toFixed(2)];
}
