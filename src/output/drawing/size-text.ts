import { sizeWords } from '../../parts/common/drawn/spread.js';
import type { SizeMark } from '../../parts/part-views.js';
import { inchFigure } from '../inches.js';
import { type Ink, type TextPlace, textInk } from './ink.js';
import { textWidth } from './text-width.js';

/** Height of the figures of a drawing [mm of paper]. */
export const FIGURE = 2.5;

/** Clear of the line that it stands on, and of its arrows [mm of paper]. */
export const OVER_LINE = 1;

/** A size as it is written: two decimals for a size in use with its spread, three for the file's. */
export function sizeText({ value, spread, sign = '', after, inches }: SizeMark): string {
  const figure = sizeWords(value, spread === undefined ? {} : { spread });
  const beside = inches ? ` [${inchFigure(value, 3)}]` : '';
  return `${sign}${figure}${beside}${after ? ` ${after}` : ''}`;
}

/** About how wide that comes out [mm of paper]. */
export function sizeWidth(mark: SizeMark): number {
  return textWidth(sizeText(mark), FIGURE);
}

/** The text of a size in its place; it carries the size's name. */
export function sizeInk(mark: SizeMark, place: Pick<TextPlace, 'at' | 'turn' | 'anchor'>): Ink {
  return textInk(sizeText(mark), {
    ...place,
    height: FIGURE,
    size: mark.name,
    ...(mark.field ? { field: mark.field } : {}),
  });
}
