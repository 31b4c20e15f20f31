import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { weightedLeastSquares } from '../../src/calibrate/least-squares.js';
import { studentT95 } from '../../src/calibrate/student-t.js';
import { toldApart } from '../../src/calibrate/told-apart.js';
import { InputError } from '../../src/units/faults.js';
import { chance } from '../support/simulated-printer.js';

function problem(seed: number, rows: number, unknowns: number) {
  const { between, normal } = chance(seed);
  const truth = Array.from({ length: unknowns }, () => between(-2, 2));
  return Array.from({ length: rows }, () => {
    const slopes = Array.from({ length: unknowns }, () => between(-5, 5));
    const sigma = between(0.01, 0.5);
    return { slopes, sigma, value: slopes.reduce((sum, one, i) => sum + one * truth[i]!, 0) + sigma * normal() };
  });
}

describe('weightedLeastSquares', () => {
  it.each([
    [1, 6, 2],
    [2, 21, 10],
    [3, 40, 7],
    [4, 5, 5],
    [5, 12, 1],
  ])('agrees with a general-purpose library (seed %d, %d rows, %d unknowns)', (seed, count, unknowns) => {
    const rows = problem(seed, count, unknowns);
    const fit = weightedLeastSquares(rows);
    // the library solves the same rows, each divided by its sigma, by singular values
    const x = new Matrix(rows.map(({ slopes, sigma }) => slopes.map((one) => one / sigma)));
    const y = Matrix.columnVector(rows.map(({ value, sigma }) => value / sigma));
    const other = solve(x, y, true).to1DArray();
    fit.estimate.forEach((one, i) => {
      expect(one).toBeCloseTo(other[i]!, 9);
    });
    const covariance = solve(x.transpose().mmul(x), Matrix.eye(unknowns), true).to2DArray();
    fit.covariance.forEach((row, i) => {
      row.forEach((one, j) => {
        expect(one).toBeCloseTo(covariance[i]![j]!, 9);
      });
    });
    // the hat matrix has a trace of one for each unknown
    expect(fit.leverages.reduce((sum, one) => sum + one, 0)).toBeCloseTo(unknowns, 9);
  });

  it('takes the weighted mean of two readings', () => {
    // weights 1 and 4: (1·1 + 4·2)/5 = 1.8, variance 1/(1 + 4) = 0.2, χ² = 0.8² + (0.2/0.5)² = 0.8
    const fit = weightedLeastSquares([
      { slopes: [1], value: 1, sigma: 1 },
      { slopes: [1], value: 2, sigma: 0.5 },
    ]);
    expect(fit.estimate[0]).toBeCloseTo(1.8, 12);
    expect(fit.covariance[0]![0]).toBeCloseTo(0.2, 12);
    expect(fit.chiSquare).toBeCloseTo(0.8, 12);
  });

  it('keeps its digits where columns differ by a million', () => {
    const rows = [0, 1, 2, 3].map((x) => ({ slopes: [1, 1e6 * x], value: 5 + 2e-6 * 1e6 * x, sigma: 1e-3 }));
    expect(weightedLeastSquares(rows).estimate[1]).toBeCloseTo(2e-6, 15);
  });

  it('refuses rows that do not tell the unknowns apart', () => {
    const rows = [1, 2, 3].map((x) => ({ slopes: [x, 2 * x], value: x, sigma: 1 }));
    expect(() => weightedLeastSquares(rows)).toThrow(InputError);
  });
});

describe('toldApart', () => {
  it.each([
    [[[1, 0]], [true, false]],
    [[[1, 1]], [false, false]],
    [
      [
        [1, 1],
        [1, -1],
      ],
      [true, true],
    ],
    [
      [
        [1, 1, 0],
        [2, 2, 1],
      ],
      [false, false, true],
    ],
    [[], [false, false]],
  ])('%j settles %j', (rows, settled) => {
    expect(toldApart(rows, settled.length)).toEqual(settled);
  });
});

describe('studentT95', () => {
  // table of Student's t, two-sided 95 %; from memory
  it.each([
    [4, 2.776],
    [5, 2.571],
    [10, 2.228],
    [20, 2.086],
    [30, 2.042],
    [120, 1.98],
  ])('t(%d) is %f', (freedom, t) => {
    expect(Math.abs(studentT95(freedom) - t)).toBeLessThan(0.007);
  });
});
