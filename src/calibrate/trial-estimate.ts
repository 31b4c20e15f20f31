import type { Trial } from './trial.js';

/** A figure with its standard deviation. */
export interface Found {
  readonly value: number;
  readonly sigma: number;
}

/** What trials say of the printer beyond what was believed. */
export interface TrialEstimate {
  /** shrink along the axis, as a fraction */
  readonly axial: Found;
  /** play that nuts have more than wanted, run in, pitch error aside [mm] */
  readonly gap: Found;
  /** how sure the direction of the pitch error is, 0.5 to 1 */
  readonly sure: number;
}

/** Errors of a hand at the bench, standard deviations: play by a dial, a turn, a length [mm, turns, mm]. */
const SIGMA = { play: 0.015, turn: 0.5, length: 0.015, feel: 0.02 } as const;

/** What the flank gap of a printer may be off by before anything is known [mm]. @source common-practice */
const GAP_SIGMA = 0.12;

const STEPS = 120;

/**
 * Shrink along the axis and flank gap from what was seen on finished nuts, by the likelihood of all of it on a grid.
 *
 *     play   p = w + g − |e|·L      jam after n turns   w + g = |e|·n·P      length   l = L·(1 + e)
 *
 * with w the wanted play, g the gap that is found beyond it (less the edges of the layers where the nut is fresh),
 * e = (a − s)/(1 − a) the pitch error of a file compensated by a on a printer that shrinks by s.
 *
 * @param trials one or more, of one material and printer  [mm]
 * @param prior  axial shrink as a coupon or the preset has it, with its standard deviation
 * @returns means and standard deviations of the likelier way of the pitch error
 * @source derived: Bayes' rule; errors of the hand by common practice
 */
export function estimateFromTrials(trials: readonly Trial[], prior: Found): TrialEstimate {
  const shrinks = around(prior.value, 4 * prior.sigma);
  const gaps = around(0, 4 * GAP_SIGMA);
  const last = trials.at(-1)!;
  const logs = shrinks.flatMap((axial) =>
    gaps.map((gap) => ({
      axial,
      gap,
      log:
        normal(axial - prior.value, prior.sigma) +
        normal(gap, GAP_SIGMA) +
        trials.reduce((sum, trial) => sum + likelihoodOf(trial, axial, gap), 0),
    })),
  );
  const top = Math.max(...logs.map(({ log }) => log));
  const points = logs.map(({ axial, gap, log }) => ({ axial, gap, weight: Math.exp(log - top) }));
  const total = sumOf(points, () => 1);
  const short = points.filter(({ axial }) => axial > last.applied.axial);
  const shareShort = sumOf(short, () => 1) / total;
  const kept = shareShort >= 0.5 ? short : points.filter(({ axial }) => axial <= last.applied.axial);
  const branch = Math.abs(shareShort - 0.5) > 0.4 ? points : kept;
  const weight = sumOf(branch, () => 1);
  const found = (of: (point: Point) => number): Found => {
    const value = sumOf(branch, of) / weight;
    return { value, sigma: Math.sqrt(sumOf(branch, (point) => (of(point) - value) ** 2) / weight) };
  };
  return {
    axial: found(({ axial }) => axial),
    gap: found(({ gap }) => gap),
    sure: Math.max(shareShort, 1 - shareShort),
  };
}

interface Point {
  readonly axial: number;
  readonly gap: number;
  readonly weight: number;
}

function sumOf(points: readonly Point[], of: (point: Point) => number): number {
  return points.reduce((sum, point) => sum + point.weight * of(point), 0);
}

function around(middle: number, reach: number): number[] {
  return Array.from({ length: STEPS + 1 }, (_, i) => middle + reach * ((2 * i) / STEPS - 1));
}

function normal(off: number, sigma: number): number {
  return -((off / Math.max(sigma, 1e-9)) ** 2) / 2;
}

/** How well one trial goes with a shrink and a gap, as a logarithm. */
function likelihoodOf(trial: Trial, axial: number, gap: number): number {
  const { applied, wanted, pitch, goes, play, length } = trial;
  const error = (applied.axial - axial) / (1 - applied.axial);
  const clear = wanted.play + gap - (trial.run_in === 'yes' ? 0 : trial.edges);
  const left = clear - Math.abs(error) * wanted.length;
  let log = 0;
  if (length)
    log += normal(length.value - wanted.length * (1 + error), Math.hypot(SIGMA.length, (length.half ?? 0) / 2));
  if (goes === 'jams' && trial.jams_after !== undefined) {
    const drift = Math.abs(error) * pitch;
    log += normal(clear - drift * trial.jams_after, Math.hypot(SIGMA.feel, SIGMA.turn * drift));
  }
  if (goes === 'by-hand') log += normal(Math.min(0, left), SIGMA.feel);
  if (goes === 'tight') log += normal(left, 2 * SIGMA.feel);
  if (goes === 'no') log += normal(Math.max(0, clear), SIGMA.feel);
  if (play && goes !== 'no' && goes !== 'jams')
    log += normal(play.value - Math.max(0, left), Math.hypot(SIGMA.play, (play.half ?? 0) / 2));
  return log;
}
