import { plain } from '../units/format.js';
import type { ReadKind } from './feature.js';
import { type LinearRow, type LinearSolution, weightedLeastSquares } from './least-squares.js';
import { PARAMETERS, type Parameter, type PrintFigures, predictedReading, TRUE_PRINTER } from './print-model.js';
import { studentT95 } from './student-t.js';
import { toldApart } from './told-apart.js';

/** The mean of a feature's readings. */
export interface Observation {
  readonly mark: string;
  readonly kind: ReadKind;
  /** mm */
  readonly modelled: number;
  readonly mean: number;
  /** of its own: form and single readings [mm] */
  readonly sigma: number;
  /** standard deviation of what all readings of its session share, such as the zero of the calipers [mm] */
  readonly common?: number;
  /** readings of one session share their common error */
  readonly session?: number;
}

/** A figure known from elsewhere, with its standard deviation. */
export interface Prior {
  readonly value: number;
  readonly sigma: number;
}

/** Figures to fall back on, where readings cannot tell a figure from others. */
export type Priors = Readonly<Record<Parameter, Prior>>;

/** A figure as the readings give it. */
export interface Estimate {
  readonly value: number;
  /** half of what the truth is within, 19 times in 20 */
  readonly standardError: number;
}

/** A feature with what the solution leaves of it. */
export interface Residual {
  readonly mark: string;
  /** read less expected, mm */
  readonly residual: number;
  /** in its own standard deviations */
  readonly standardised: number;
}

/** Feature that does not follow the others. */
export interface Outlier extends Residual {
  readonly why: string;
}

/** What a printer does, by its readings. */
export interface PrintSolution {
  readonly estimates: Readonly<Partial<Record<Parameter, Estimate>>>;
  /** figures that no reading touches */
  readonly untouched: readonly Parameter[];
  /** figures that readings touch but cannot tell apart; they rest on the fallback */
  readonly borrowed: readonly Parameter[];
  readonly residuals: readonly Residual[];
  readonly outliers: readonly Outlier[];
  /** by how much the readings scatter more than was stated, 1 or above */
  readonly scatter: number;
  /** standard error of a combination of figures, given by its slopes */
  readonly errorOf: (slopes: Readonly<Partial<Record<Parameter, number>>>) => number;
  /** readings left over after the figures were found */
  readonly freedom: number;
}

/** What calipers and prints usually scatter is known beforehand, as if so many readings had confirmed it. */
const LEAST_FREEDOM = 4;

/** A feature this many standard deviations off what the others say does not follow them. */
const OFF = 4;

/** Shrink first, then the small corrections that are told apart from it: in this order figures are borrowed. */
const BORROWING: readonly Parameter[] = [
  'plane',
  'skew',
  'axial',
  'height_error',
  'wall',
  'hole_per_mm',
  'post_per_mm',
  'first_layer',
  'hole_at_zero',
  'post_at_zero',
];

/**
 * A printer's figures from the means of its readings: weighted least squares, repeated until the figures settle,
 * features that do not follow the others left out one at a time, the worst first.
 *
 * @param observations means of features  [mm]
 * @param priors figures to fall back on  [mm, fractions]
 * @returns estimates with errors, residuals and outliers, and what the readings do not tell
 */
export function solvePrint(observations: readonly Observation[], priors: Priors): PrintSolution {
  let kept = observations;
  const outliers: Outlier[] = [];
  for (;;) {
    const solved = solveOnce(kept, priors);
    const worst = worstOf(solved);
    if (!worst) return finished(solved, outliers);
    outliers.push(worst.outlier);
    kept = kept.filter((one) => one !== worst.observation);
  }
}

interface Solved {
  readonly observations: readonly Observation[];
  readonly unknowns: readonly Parameter[];
  readonly borrowed: readonly Parameter[];
  readonly at: PrintFigures;
  readonly solution: LinearSolution;
  readonly freedom: number;
  /** what each session's common error moves the figures by, in standard deviations of it [mm] */
  readonly shifts: readonly (readonly number[])[];
}

function solveOnce(observations: readonly Observation[], priors: Priors): Solved {
  const unknowns = PARAMETERS.filter((name) =>
    observations.some(({ kind }) => predictedReading(kind, 1, TRUE_PRINTER).slopes[name] !== undefined),
  );
  if (unknowns.length === 0)
    return { observations, unknowns, borrowed: [], at: TRUE_PRINTER, solution: NOTHING, freedom: 0, shifts: [] };
  const start = { ...TRUE_PRINTER, ...Object.fromEntries(unknowns.map((name) => [name, priors[name].value])) };
  const borrowed = borrowedOf(observations, unknowns, start);
  const extra = borrowed.map(
    (name): LinearRow => ({
      slopes: unknowns.map((one) => (one === name ? 1 : 0)),
      value: priors[name].value,
      sigma: priors[name].sigma,
    }),
  );
  let at: PrintFigures = start;
  let solution = NOTHING;
  for (let round = 0; round < ROUNDS; round++) {
    solution = weightedLeastSquares([...linearised(observations, unknowns, at), ...extra]);
    at = { ...at, ...Object.fromEntries(unknowns.map((name, i) => [name, solution.estimate[i]!])) };
  }
  const freedom = observations.length + borrowed.length - unknowns.length;
  const shifts = shiftsOf(observations, [...linearised(observations, unknowns, at), ...extra]);
  return { observations, unknowns, borrowed, at, solution, freedom, shifts };
}

/** The figures that the common error of each session alone would give: a shift is not averaged out by more readings. */
function shiftsOf(observations: readonly Observation[], rows: readonly LinearRow[]): number[][] {
  const sessions = [...new Set(observations.filter(({ common = 0 }) => common > 0).map(({ session = 0 }) => session))];
  return sessions.map((session) => {
    const shifted = rows.map((row, i) => {
      const one = observations[i];
      return { ...row, value: one && (one.session ?? 0) === session ? (one.common ?? 0) : 0 };
    });
    return [...weightedLeastSquares(shifted).estimate];
  });
}

/** The model is so nearly straight that the third round changes nothing. */
const ROUNDS = 4;
const NOTHING: LinearSolution = { estimate: [], covariance: [], residuals: [], leverages: [], chiSquare: 0 };

/** Rows that are straight in the figures themselves: y − f(β₀) + J·β₀ = J·β. */
function linearised(
  observations: readonly Observation[],
  unknowns: readonly Parameter[],
  at: PrintFigures,
): LinearRow[] {
  return observations.map(({ kind, modelled, mean, sigma }) => {
    const { value, slopes } = predictedReading(kind, modelled, at);
    const row = unknowns.map((name) => slopes[name] ?? 0);
    const moved = unknowns.reduce((sum, name, i) => sum + row[i]! * at[name], 0);
    return { slopes: row, value: mean - value + moved, sigma };
  });
}

/** Figures to borrow, one after the other, until the rest are told apart. */
function borrowedOf(
  observations: readonly Observation[],
  unknowns: readonly Parameter[],
  at: PrintFigures,
): Parameter[] {
  const rows = linearised(observations, unknowns, at).map(({ slopes }) => slopes);
  const borrowed: Parameter[] = [];
  for (const name of BORROWING.filter((one) => unknowns.includes(one))) {
    const settled = toldApart(
      [...rows, ...borrowed.map((one) => unknowns.map((other) => (one === other ? 1 : 0)))],
      unknowns.length,
    );
    if (!settled[unknowns.indexOf(name)]) borrowed.push(name);
  }
  return borrowed;
}

function worstOf({ observations, solution, freedom }: Solved) {
  if (freedom < 2) return undefined;
  const rows = observations.flatMap((observation, i) => {
    const { mean, sigma, mark } = observation;
    const residual = solution.residuals[i] ?? 0;
    const room = 1 - (solution.leverages[i] ?? 1);
    if (room < 1e-6) return [];
    const share = residual / sigma;
    const others = scatterOf(solution.chiSquare - share ** 2 / room, freedom - 1);
    const standardised = share / Math.sqrt(room) / others;
    return [{ observation, mark, mean, residual: residual / room, standardised }];
  });
  const [worst] = rows.sort((a, b) => Math.abs(b.standardised) - Math.abs(a.standardised));
  if (!worst || Math.abs(worst.standardised) < OFF) return undefined;
  const { observation, mark, mean, residual, standardised } = worst;
  const way = residual > 0 ? 'larger' : 'smaller';
  const why = `reads ${plain(mean, 2)} mm, ${plain(Math.abs(residual), 2)} mm ${way} than the other features say`;
  return { observation, outlier: { mark, residual, standardised, why } };
}

function scatterOf(chiSquare: number, freedom: number): number {
  return freedom > 0 ? Math.sqrt(Math.max(1, chiSquare / freedom)) : 1;
}

/** Half of what the truth is within, 19 times in 20, in standard deviations: stated ones, unless the readings scatter more. */
function wideningOf(scatter: number, freedom: number): number {
  const asStated = scatter ** 2 <= 1 + Math.sqrt(2 / Math.max(1, freedom));
  return asStated ? 1.96 / 2 : (scatter * studentT95(Math.max(LEAST_FREEDOM, freedom))) / 2;
}

function finished(
  { observations, unknowns, borrowed, solution, freedom, shifts }: Solved,
  outliers: readonly Outlier[],
): PrintSolution {
  const scatter = scatterOf(solution.chiSquare, freedom);
  const widening = wideningOf(scatter, freedom);
  const errorOf: PrintSolution['errorOf'] = (slopes) => {
    const at = unknowns.map((name) => slopes[name] ?? 0);
    const variance = at.reduce(
      (sum, one, i) => sum + at.reduce((s, two, j) => s + one * two * solution.covariance[i]![j]!, 0),
      0,
    );
    const common = shifts.map((shift) => at.reduce((sum, one, i) => sum + one * shift[i]!, 0));
    return Math.hypot(widening * Math.sqrt(Math.max(0, variance)), ...common);
  };
  const estimates = Object.fromEntries(
    unknowns.map((name, i) => [name, { value: solution.estimate[i]!, standardError: errorOf({ [name]: 1 }) }]),
  );
  return {
    estimates,
    untouched: PARAMETERS.filter((name) => !unknowns.includes(name)),
    borrowed,
    residuals: observations.map(({ mark, sigma }, i) => ({
      mark,
      residual: solution.residuals[i]!,
      standardised: solution.residuals[i]! / sigma / Math.sqrt(Math.max(1e-6, 1 - solution.leverages[i]!)),
    })),
    outliers,
    scatter,
    errorOf,
    freedom,
  };
}
