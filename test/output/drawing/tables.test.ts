import { expect, it } from 'vitest';
import { inLetters, PAPERS } from '../../../src/output/drawing/paper.js';
import { noteText, tablesInk } from '../../../src/output/drawing/tables.js';
import type { DrawnViews } from '../../../src/parts/draw-views.js';
import type { HoleRow, SizeMark } from '../../../src/parts/part-views.js';

function cells(holes: readonly HoleRow[], sizes: readonly SizeMark[], inches = false): string[] {
  const view = { title: 'a', strokes: [], hatched: [], sizes, letters: [] };
  const views: DrawnViews = { side: view, end: view, holes, notes: [], material: 'a', companions: [], cutTowards: 0 };
  return tablesInk(views, PAPERS.a4, inches).flatMap((ink) => (ink.kind === 'text' ? [ink.text] : []));
}

const hole: HoleRow = { label: '1', at: [14, -9], diameter: 3.4, note: 'M3' };

it('a place is in brackets where an extension line goes to it, not where some size happens to be as long', () => {
  const body: SizeMark = { name: 'body', value: 14, sign: '⌀', from: [-7, 0], to: [7, 0], side: 'left' };
  expect(cells([hole], [body])).toContain('14.00');
  const apart: SizeMark = { name: 'apart', value: 28, from: [-14, -9], to: [14, -9], side: 'above' };
  expect(cells([hole], [body, apart])).toEqual(expect.arrayContaining(['(14.00)', '−9.00', '3.40']));
});

it('a square that is stated once states the places of its holes both ways', () => {
  const square: SizeMark = { name: 's', value: 28, sign: '□', from: [-14, 14], to: [14, 14], side: 'above' };
  const shown = cells([{ ...hole, at: [14, -14] }], [square]);
  expect(shown).toEqual(expect.arrayContaining(['(14.00)', '(−14.00)']));
});

// 25.4 mm are an inch
it.each([
  ['Corners R 25.40 ±0.25 mm', 'Corners R 25.40 ±0.25', 'Corners R 25.40 ±0.25 [1.000]'],
  [
    'at x 12.7 mm, y -2.54 mm, turned 3°',
    'at x 12.7, y −2.54, turned 3°',
    'at x 12.7 [0.500], y −2.54 [−0.100], turned 3°',
  ],
  [
    'Spring 10 mm × 12 mm, 4 N/mm; M3, 2 starts',
    'Spring 10 × 12, 4 N/mm; M3, 2 starts',
    'Spring 10 [0.394] × 12 [0.472], 4 N/mm; M3, 2 starts',
  ],
])('%s is written as dimensions are', (note, mm, inches) => {
  expect(noteText(note, false)).toBe(mm);
  expect(noteText(note, true)).toBe(inches);
});

it('places on a stated circle, and stated diameters, are in brackets', () => {
  // 5² = 3² + 4²
  const circle: SizeMark = { name: 'circle', value: 10, sign: '⌀', from: [0, 0], to: [5, 0], side: 'leader' };
  const across: SizeMark = { name: 'hole', value: 3.4, sign: '2 × ⌀', from: [3, 4], to: [4.7, 4], side: 'leader' };
  const on: HoleRow = { ...hole, at: [3, -4] };
  expect(cells([on], [circle, across])).toEqual(expect.arrayContaining(['(3.00)', '(−4.00)', '(3.40)']));
});

it('a hole on an axis is at 0.00, whichever way it was rounded', () => {
  const shown = cells([{ ...hole, at: [-1e-12, 14] }], [], true);
  expect(shown).toEqual(expect.arrayContaining(['0.00', '[0.000]', '14.00']));
  expect(shown.join(' ')).not.toMatch(/[-−]0\.00/);
});

it('states inches under each figure where they are asked for', () => {
  // 14/25.4 = 0.5512, 9/25.4 = 0.3543, 3.4/25.4 = 0.1339
  expect(cells([hole], [], true)).toEqual(expect.arrayContaining(['14.00', '[0.551]', '[−0.354]', '[0.134]']));
  expect(cells([hole], []).join()).not.toContain('[');
});

it('letters A3 1.4 times as large as A4: 3.5 mm for 2.5', () => {
  const a3 = inLetters(PAPERS.a3);
  expect(a3.frame.right * 1.4).toBeCloseTo(410, 9);
  expect(2.5 * a3.lettering).toBeCloseTo(3.5, 9);
});
