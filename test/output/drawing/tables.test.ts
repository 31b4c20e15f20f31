import { expect, it } from 'vitest';
import { inLetters, PAPERS } from '../../../src/output/drawing/paper.js';
import { tablesInk } from '../../../src/output/drawing/tables.js';
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
  expect(cells([hole], [body, apart])).toEqual(expect.arrayContaining(['(14.00)', '-9.00', '3.40']));
});

it('places on a stated circle, and stated diameters, are in brackets', () => {
  // 5² = 3² + 4²
  const circle: SizeMark = { name: 'circle', value: 10, sign: '⌀', from: [0, 0], to: [5, 0], side: 'leader' };
  const across: SizeMark = { name: 'hole', value: 3.4, sign: '2 × ⌀', from: [3, 4], to: [4.7, 4], side: 'leader' };
  const on: HoleRow = { ...hole, at: [3, -4] };
  expect(cells([on], [circle, across])).toEqual(expect.arrayContaining(['(3.00)', '(-4.00)', '(3.40)']));
});

it('a hole on an axis is at 0.00, whichever way it was rounded', () => {
  const shown = cells([{ ...hole, at: [-1e-12, 14] }], [], true);
  expect(shown).toEqual(expect.arrayContaining(['0.00', '[0.000]', '14.00']));
  expect(shown.join(' ')).not.toContain('-0.00');
});

it('states inches under each figure where they are asked for', () => {
  // 14/25.4 = 0.5512, 9/25.4 = 0.3543, 3.4/25.4 = 0.1339
  expect(cells([hole], [], true)).toEqual(expect.arrayContaining(['14.00', '[0.551]', '[-0.354]', '[0.134]']));
  expect(cells([hole], []).join()).not.toContain('[');
});

it('letters A3 1.4 times as large as A4: 3.5 mm for 2.5', () => {
  const a3 = inLetters(PAPERS.a3);
  expect(a3.frame.right * 1.4).toBeCloseTo(410, 9);
  expect(2.5 * a3.lettering).toBeCloseTo(3.5, 9);
});
