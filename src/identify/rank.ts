import { type Candidate, candidates } from './candidates.js';
import { logLikelihood, sigmasOutside } from './likelihood.js';
import { CORE, type Observation } from './observations.js';
import type { Readings } from './readings.js';

/** A candidate with its share of the belief. */
export interface Ranked {
  readonly candidate: Candidate;
  /** share of all candidates kept; they sum to one */
  readonly probability: number;
}

/** Candidates kept: at least a few, at most many, and none that is out of the question. */
const KEPT = { least: 4, most: 60, share: 1e-4 } as const;

/** Standard deviations beyond which a screw is none of the series. */
export const FAR_OFF = 4;

/** A candidate this many times less likely than the first is told apart from it. */
export const APART = 20;

/**
 * Ranks every screw of every series by the likelihood of the readings.
 *
 * @param observations the lengths read [mm]
 * @param readings for what was counted and seen
 * @returns those that are not out of the question, most likely first; their probabilities sum to one
 * @source derived: Bayes' rule over the series
 */
export function rank(
  observations: readonly Observation[],
  readings: Pick<Readings, 'starts' | 'crest'>,
): readonly Ranked[] {
  const logs = candidates().map((candidate) => ({ candidate, log: logLikelihood(candidate, observations, readings) }));
  logs.sort((a, b) => b.log - a.log || byName(a.candidate, b.candidate));
  const top = logs[0]!.log;
  const open = logs.filter(({ log }) => Math.exp(log - top) >= KEPT.share).length;
  const kept = logs.slice(0, Math.min(KEPT.most, Math.max(KEPT.least, open)));
  const weights = kept.map(({ log }) => Math.exp(log - top));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return kept.map(({ candidate }, i) => ({ candidate, probability: weights[i]! / total }));
}

function byName(a: Candidate, b: Candidate): number {
  return a.row.designation < b.row.designation ? -1 : 1;
}

/**
 * How far the readings of major, pitch and lead lie outside a candidate at the worst.
 *
 * @param candidate a screw of a series
 * @param observations the lengths read [mm]
 * @returns standard deviations, 0 or above                    [-]
 * @source derived: largest distance outside its band
 */
export function misfit(candidate: Candidate, observations: readonly Observation[]): number {
  return observations
    .filter(({ what }) => CORE.has(what))
    .reduce(
      (worst, one) => Math.max(worst, Math.abs(sigmasOutside(one.value, one.deviation, one.bandOf(candidate)))),
      0,
    );
}
