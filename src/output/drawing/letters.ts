import type { Letter, Point } from '../../parts/part-views.js';
import { type Ink, textInk } from './ink.js';
import { sidesOf } from './sides.js';
import { type Box, overlaps, shareInside, textBox } from './text-box.js';
import { textWidth } from './text-width.js';

/** Heights of letters, and how far large ones stand off their points [mm of paper]. */
const [LARGE, SMALL] = [3.5, 2];
const CLEAR = 3;
/** How far a number stands off its hole, the nearest first [mm of paper]. */
const OFF = [0.7, 1.6, 2.6];
/** Directions that are tried about a hole, degrees from the one that is wanted. */
const TURNS = [0, 30, -30, 60, -60, 90, -90, 120, -120, 150, -150, 180];
/**
 * Letters of a view. The number of a hole takes the place about it on which the fewest lines lie; small letters that
 * would lie over one before are left out.
 *
 * @param letters  as the view has them
 * @param onPaper  paper place of a point of the view
 * @param scale    mm of paper a mm of the part
 * @param lines    what is drawn of the view
 */
export function lettersInk(
  letters: readonly Letter[],
  { onPaper, scale, lines }: { onPaper: (point: Point) => Point; scale: number; lines: readonly Ink[] },
): Ink[] {
  const sides = lines.flatMap((line) => sidesOf(line));
  const taken: Box[] = [];
  return letters.flatMap((letter) => {
    const { small, away } = letter;
    const isLarge = Math.hypot(...away) > 0 && !small;
    const height = isLarge ? LARGE : SMALL;
    const texts = placesOf(letter, scale, height).map(([dx, dy]) => {
      const [x, y] = onPaper(letter.at);
      const at: Point = [x + dx, y - dy + height / 2];
      return textInk(letter.text, { at, height, anchor: 'middle', bold: isLarge });
    });
    const crossings = (text: (typeof texts)[number]) => {
      const box = textBox(text);
      if (taken.some((other) => overlaps(box, other))) return Infinity;
      return texts.length === 1 ? 0 : sides.filter(([from, to]) => shareInside(from, to, box)).length;
    };
    const counted = texts.map((text) => ({ text, crossed: crossings(text) }));
    const { text, crossed } = counted.reduce((best, one) => (one.crossed < best.crossed ? one : best));
    if (small && crossed === Infinity) return [];
    taken.push(textBox(text));
    return [text];
  });
}

/** Places of a letter's middle from its point [mm of paper, y upwards], the best first. */
function placesOf({ away: [x, y], around, small, text }: Letter, scale: number, height: number): Point[] {
  if (around === undefined) {
    const clear = small ? CLEAR - 0.8 : CLEAR;
    return [[clear * x, clear * y]];
  }
  const wanted = Math.atan2(y, x);
  const half: Point = [textWidth(text, height) / 2, height / 2];
  return OFF.flatMap((off) =>
    TURNS.map((turn): Point => {
      const angle = wanted + (turn * Math.PI) / 180;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const reach = scale * around + off + Math.abs(c) * half[0] + Math.abs(s) * half[1];
      return [reach * c, reach * s];
    }),
  );
}
