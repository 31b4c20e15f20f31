import { fault } from '../units/faults.js';

/** A linear problem: each row of the design with its observation and standard deviation. */
export interface LinearRow {
  readonly slopes: readonly number[];
  readonly value: number;
  /** above 0 */
  readonly sigma: number;
}

/** The solution of a weighted linear problem. */
export interface LinearSolution {
  readonly estimate: readonly number[];
  /** by the stated standard deviations, unscaled */
  readonly covariance: readonly (readonly number[])[];
  /** value less what the solution says, in units of the value */
  readonly residuals: readonly number[];
  /** share of each row in its own value, 0 to 1 */
  readonly leverages: readonly number[];
  /** Σ (residual/σ)² */
  readonly chiSquare: number;
}

/** A column shorter than this share of its length is spanned by the columns before it. */
const SPANNED = 1e-9;

/**
 * Weighted linear least squares by orthogonal reflections of the rows, which keeps twice the digits that normal
 * equations would.
 *
 *     minimise Σ ((yᵢ − xᵢ·β)/σᵢ)²    cov β = (Xᵀ W X)⁻¹,  W = diag(1/σᵢ²)
 *
 * @param rows at least as many as unknowns
 * @returns estimate, covariance, residuals, leverages and χ²
 * @throws InputError the rows do not tell all unknowns apart
 * @source numerical linear algebra: QR by reflections
 * @example weightedLeastSquares([{ slopes: [1], value: 1, sigma: 1 }, { slopes: [1], value: 3, sigma: 1 }]).estimate // [2]
 */
export function weightedLeastSquares(rows: readonly LinearRow[]): LinearSolution {
  const count = rows[0]?.slopes.length ?? 0;
  const a = rows.map(({ slopes, sigma }) => slopes.map((slope) => slope / sigma));
  const q = rows.map((_, i) => rows.map((__, j) => (i === j ? 1 : 0)));
  for (let k = 0; k < count; k++) reflect(a, q, k);
  const y = rows.map(({ value, sigma }) => value / sigma);
  const turned = q.slice(0, count).map((row) => dot(row, y));
  const inverse = inverseUpper(a.slice(0, count));
  const estimate = inverse.map((row) => dot(row, turned));
  const residuals = rows.map(({ slopes, value }) => value - dot(slopes, estimate));
  return {
    estimate,
    covariance: inverse.map((one) => inverse.map((other) => dot(one, other))),
    residuals,
    leverages: rows.map((_, i) => q.slice(0, count).reduce((sum, row) => sum + row[i]! ** 2, 0)),
    chiSquare: rows.reduce((sum, { sigma }, i) => sum + (residuals[i]! / sigma) ** 2, 0),
  };
}

/** Turns column k so that nothing is left below row k; the same is done to q. */
function reflect(a: number[][], q: number[][], k: number): void {
  const length = Math.hypot(...a.map((row) => row[k]!));
  const below = Math.hypot(...a.slice(k).map((row) => row[k]!));
  if (!(below > SPANNED * length)) throw fault('rows', k, 'the rows do not tell all unknowns apart');
  const alpha = a[k]![k]! > 0 ? -below : below;
  const v = a.map((row, i) => (i < k ? 0 : row[k]! - (i === k ? alpha : 0)));
  const square = dot(v, v);
  for (const matrix of [a, q]) {
    for (let j = 0; j < matrix[0]!.length; j++) {
      const scale =
        (2 *
          dot(
            v,
            matrix.map((row) => row[j]!),
          )) /
        square;
      for (let i = k; i < matrix.length; i++) matrix[i]![j] = matrix[i]![j]! - scale * v[i]!;
    }
  }
}

function inverseUpper(r: readonly (readonly number[])[]): number[][] {
  const n = r.length;
  const inverse = r.map(() => new Array<number>(n).fill(0));
  for (let j = 0; j < n; j++) {
    for (let i = j; i >= 0; i--) {
      let sum = i === j ? 1 : 0;
      for (let k = i + 1; k <= j; k++) sum -= r[i]![k]! * inverse[k]![j]!;
      inverse[i]![j] = sum / r[i]![i]!;
    }
  }
  return inverse;
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
