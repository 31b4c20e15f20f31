import { expect, it } from 'vitest';
import { besideScrews } from '../../../src/mechanics/bolt/beside-screws.js';

it('knows how far and which way, whatever the unit', () => {
  for (const unit of [1e-2, 1, 1e2]) {
    const { along, distance } = besideScrews([
      [3 * unit, 4 * unit],
      [-5 * unit, 10 * unit],
      [11 * unit, -2 * unit],
    ])!;
    expect(distance / unit).toBeCloseTo(5, 9);
    expect(along[0]).toBeCloseTo(0.6, 9);
    expect(along[1]).toBeCloseTo(0.8, 9);
  }
  expect(besideScrews([])).toBeUndefined();
});

it('takes screws for one line that are off it by rounding, a ten-thousandth of a millimetre', () => {
  expect(
    besideScrews([
      [15, 9],
      [15.0001, 0],
      [15, -9],
    ])?.distance,
  ).toBeCloseTo(15, 3);
  expect(
    besideScrews([
      [15, 9],
      [15.01, 0],
      [15, -9],
    ]),
  ).toBeUndefined();
});
