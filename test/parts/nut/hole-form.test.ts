import { expect, it } from 'vitest';
import { formOf } from '../../../src/parts/nut/views/hole-form.js';

const square = [
  [13, 13],
  [-13, 13],
  [-13, -13],
  [13, -13],
] as const;

it('a square is stated by its distances where it was given by them, else by its circle', () => {
  expect(formOf({ centres: square, isRectangle: true })).toEqual({ kind: 'rectangle', along_x: 26, along_y: 26 });
  expect(formOf({ centres: square })).toMatchObject({ kind: 'circle', radius: expect.closeTo(Math.hypot(13, 13), 9) });
});

it('two holes on X are stated by their distance, two elsewhere and one by a circle, odd places by the table', () => {
  const pair = [
    [15, 0],
    [-15, 0],
  ] as const;
  expect(formOf({ centres: pair })).toEqual({ kind: 'pair', distance: 30 });
  expect(formOf({ centres: pair.map(([x, y]) => [y, x] as const) }).kind).toBe('circle');
  expect(formOf({ centres: [[15, 0]] })).toEqual({ kind: 'circle', radius: 15 });
  expect(formOf({ centres: [...pair, [3, 4]] }).kind).toBe('free');
});
