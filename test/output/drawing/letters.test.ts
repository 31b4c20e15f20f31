import { expect, it } from 'vitest';
import { lineInk } from '../../../src/output/drawing/ink.js';
import { lettersInk } from '../../../src/output/drawing/letters.js';
import { shareInside, textBox } from '../../../src/output/drawing/text-box.js';
import type { Letter, Point } from '../../../src/parts/part-views.js';

const onPaper = ([x, y]: Point): Point => [100 + 2 * x, 100 - 2 * y];
const number: Letter = { at: [0, 0], text: '1', away: [1, 0], around: 2, small: true };
const placed = (letters: readonly Letter[], lines = [lineInk('wide', [0, 0], [0, 1])]) =>
  lettersInk(letters, { onPaper, scale: 2, lines }).flatMap((ink) => (ink.kind === 'text' ? [ink] : []));

it('the number of a hole stands beside it, where it is wanted', () => {
  const [text] = placed([number]);
  // 2 mm of radius at 2:1 are 4 mm of paper
  expect(text!.at[0]).toBeGreaterThan(104.7);
  expect(text!.at[1] - 1).toBeCloseTo(100, 9);
});

it('goes elsewhere about its hole where a line runs through that place', () => {
  const line = lineInk('wide', [105.5, 0], [105.5, 200]);
  const [text] = placed([number], [line]);
  expect(shareInside([105.5, 0], [105.5, 200], textBox(text!))).toBeUndefined();
  const off = Math.hypot(text!.at[0] - 100, text!.at[1] - 1 - 100);
  expect(off).toBeGreaterThan(4.7);
  expect(off).toBeLessThan(9);
});

it('goes beside a number before it, and is left out where it can go nowhere', () => {
  expect(placed([number, number])).toHaveLength(2);
  const fixed: Letter = { at: [0, 0], text: 'C', away: [0, 0], small: true };
  expect(placed([fixed, fixed])).toHaveLength(1);
});
