import type { Duty } from '../../drive/duty.js';
import {
  comparisonFoot,
  comparisonHead,
  comparisonTold,
  type Entry,
  type ShownComparison,
} from '../drive/comparison-told.js';
import { driveTable } from './drive-table.js';
import { beside, hung, WIDTH, wrapped } from './layout.js';
import { paint } from './paint.js';
import { type Section, sectionsText } from './sections.js';

/**
 * Screws side by side for people: one screen that answers which of them, and what the change means; as wide as the terminal
 * where words allow.
 *
 * @param comparison the screws, at one duty
 * @param duty as it was given
 * @param options colour, columns of the terminal, and whether the levelling of two ends is told
 * @returns lines, a line break after each
 */
export function comparisonText(
  comparison: ShownComparison,
  duty: Duty,
  {
    colour = false,
    levelled = false,
    width = WIDTH,
  }: { readonly colour?: boolean; readonly levelled?: boolean; readonly width?: number } = {},
): string {
  const style = paint(colour);
  const head = wrapped(comparisonHead(comparison, duty), 0, width).map(style.bold);
  const foot = comparisonFoot(comparison, duty).flatMap((sentence) => wrapped(sentence, 0, width));
  return sectionsText(
    [
      ['', [...head, ...driveTable(comparison, duty, style, width)]],
      ...comparisonTold(comparison, duty, levelled).map(
        ({ title, entries }): Section => [title, entryLines(entries, width)],
      ),
      ['', foot.map(style.dim)],
    ],
    style,
  );
}

const GAP = 2;

/** Labels in a column, their texts beside; texts without a label as paragraphs. */
function entryLines(entries: readonly Entry[], width: number): string[] {
  const column = 2 + GAP + Math.max(...entries.map(({ label = '' }) => label.length));
  return entries.flatMap(({ label, text }) =>
    label === undefined ? hung(text, width) : beside(label === '' ? '' : `  ${label}`, column, text, width),
  );
}
