import { ALL_SERIES } from './series.js';
import type { SeriesRow } from './series-row.js';

/**
 * What a practitioner means by a short name that is no designation: a trapezoid by its lead (`Tr8x8`), by its diameter
 * alone (`T8`), or sizes without a letter (`8x8`).
 *
 * @param text as typed
 * @returns screws of the series that answer to it, none where the name is not of that sort
 * @source common-practice: how multi-start trapezoidal screws are called in the trade
 * @example meantBy('T8').includes('Tr8x8(P2)') // true
 */
export function meantBy(text: string): readonly string[] {
  const plain = text
    .trim()
    .replace(/[×*]/g, 'x')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/\s+/g, '');
  const [, letters = '', size, second] = /^(tr|t|m)?(\d+(?:\.\d+)?)(?:x(\d+(?:\.\d+)?))?$/i.exec(plain) ?? [];
  if (size === undefined || (letters === '' && second === undefined)) return [];
  const wanted =
    letters === '' ? ['trapezoidal', 'metric-v'] : letters.toLowerCase() === 'm' ? ['metric-v'] : ['trapezoidal'];
  const isMeant = ({ series, major, pitch, starts }: SeriesRow) =>
    wanted.includes(series) &&
    major === Number(size) &&
    (second === undefined || Math.abs(pitch * starts - Number(second)) < 1e-9);
  return ALL_SERIES.filter(isMeant)
    .map(({ designation }) => designation)
    .slice(0, 6);
}

/**
 * The same as the end of a message.
 *
 * @param text as typed
 * @returns such as `; did you mean Tr8x8(P2)?`, empty where nothing answers to it
 * @source common-practice: as `meantBy`
 * @example meantWords('8x8') // '; did you mean Tr8x8(P2)?'
 */
export function meantWords(text: string): string {
  const names = meantBy(text);
  if (names.length === 0) return '';
  if (names.length === 1) return `; did you mean ${names[0]}?`;
  return `; did you mean ${names.slice(0, -1).join(', ')} or ${names.at(-1)}? The travel of one turn tells them apart`;
}
