import type { Band, Candidate } from './candidates.js';
import { CORE, type Observation, type ObservedLength } from './observations.js';
import type { Readings } from './readings.js';

/** Chance that a reading is a blunder, or the screw worn there: small for what every sound screw keeps. */
const BLUNDER = { core: 1e-4, other: 0.02 } as const;

/** Share of screws whose crests are worn, and how far below the band they are on average [mm]. */
const WORN = { share: 0.1, mean: 0.15 } as const;

/** Chance that a person counts the starts wrongly, spread over the other counts. */
const MISCOUNT = 0.02;

/** Largest count of starts told apart. */
const COUNTS = 12;

/**
 * How far a value lies outside a band, with sign, in standard deviations; 0 inside.
 *
 * @param value a reading                                      [mm]
 * @param deviation its standard deviation                     [mm]  > 0
 * @param band what is allowed                                 [mm]
 * @returns signed distance in standard deviations             [-]
 * @source derived: screws are made within a band, readings scatter around it
 * @example sigmasOutside(8.03, 0.015, { nominal: 8, least: 7.82, most: 8 }) // 2.0
 */
export function sigmasOutside(value: number, deviation: number, band: Band): number {
  if (value > band.most) return (value - band.most) / deviation;
  return value < band.least ? (value - band.least) / deviation : 0;
}

/**
 * Probability density of a reading, given a band: level across the band, falling off as a normal error outside, so that
 * an oversize reading within its error keeps its likelihood while a wide band pays for its width.
 *
 *     p = exp(−z²/2) / (w + σ·√(2π))          z distance outside in σ, w width of the band
 *
 * @param value a reading                                      [mm]
 * @param deviation σ                                          [mm]  > 0
 * @param band what is allowed                                 [mm]
 * @returns density                                            [1/mm]
 * @source derived: its integral over all readings is 1
 * @example plateauDensity(7.9, 0.015, { nominal: 8, least: 7.82, most: 8 }) // 4.60 1/mm
 */
export function plateauDensity(value: number, deviation: number, band: Band): number {
  const z = sigmasOutside(value, deviation, band);
  return Math.exp((-z * z) / 2) / (band.most - band.least + deviation * Math.sqrt(2 * Math.PI));
}

/**
 * Probability density of a reading over crests that may be worn: the level band for most screws, and a tail that falls
 * off below it for the others.
 *
 *     p = (1 − ω)·plateau + ω·exp(−b/τ)/τ          b distance below the middle of the band, ω 0.1, τ 0.15 mm
 *
 * @param value a reading                                      [mm]
 * @param deviation its standard deviation                     [mm]  > 0
 * @param band what is allowed                                 [mm]
 * @returns density                                            [1/mm]
 * @source common-practice: one used screw in ten is worn by a tenth or two
 * @example wornDensity(7.7, 0.015, { nominal: 8, least: 7.82, most: 8 }) // 0.164 1/mm
 */
function wornDensity(value: number, deviation: number, band: Band): number {
  const below = (band.least + band.most) / 2 - value;
  const tail = below > 0 ? Math.exp(-below / WORN.mean) / WORN.mean : 0;
  return (1 - WORN.share) * plateauDensity(value, deviation, band) + WORN.share * tail;
}

/** Reach of a blunder [mm]: a plain diameter goes wrong by less than a root. */
const REACH: Readonly<Record<ObservedLength, number>> = {
  major: 0.3,
  pitch: 0.1,
  lead: 0.2,
  minor: 1,
  nut_bore: 1,
  crest_flat: 0.3,
  wires: 1,
};

/** Density of a blunder: wide, falling slowly so that the nearest candidate still leads. */
function blunderDensity(what: ObservedLength, value: number, band: Band): number {
  const off = Math.max(value - band.most, band.least - value, 0) / REACH[what];
  return 1 / (10 * REACH[what] * (1 + off * off) ** 2);
}

/**
 * Chance of counting a number of starts on a candidate.
 *
 * @param counted threads counted at the end                   [-]
 * @param starts threads of the candidate                      [-]
 * @returns probability                                        [-]
 * @source common-practice: one count in fifty is wrong
 * @example startsChance(4, 4) // 0.98
 */
export function startsChance(counted: number, starts: number): number {
  return counted === starts ? 1 - MISCOUNT : MISCOUNT / (COUNTS - 1);
}

/**
 * Chance that the crests of a candidate look flat: nearly certain on a trapezoid, rare on a V, whose crest flat of an
 * eighth of a pitch shows on coarse threads only.
 *
 * @param candidate a screw of a series, pitch [mm]
 * @returns probability of the answer `flat`                   [-]
 * @source common-practice: what the eye makes of a crest
 */
export function flatChance(candidate: Candidate): number {
  if (candidate.form !== 'metric-v') return 0.98;
  return candidate.row.pitch < 3 ? 0.03 : 0.25;
}

/**
 * Logarithm of the likelihood of all readings for a candidate. Before anything is read, one screw is as likely as another.
 *
 * @param candidate a screw of a series
 * @param observations the lengths read [mm]
 * @param readings for what was counted and seen
 * @returns natural logarithm, always finite                   [-]
 * @source derived: independent readings multiply
 */
export function logLikelihood(
  candidate: Candidate,
  observations: readonly Observation[],
  readings: Pick<Readings, 'starts' | 'crest'>,
): number {
  let log = 0;
  for (const { what, value, deviation, bandOf } of observations) {
    const band = bandOf(candidate);
    const blunder = CORE.has(what) ? BLUNDER.core : BLUNDER.other;
    const density = what === 'major' ? wornDensity : plateauDensity;
    log += Math.log((1 - blunder) * density(value, deviation, band) + blunder * blunderDensity(what, value, band));
  }
  if (readings.starts !== undefined) log += Math.log(startsChance(readings.starts, candidate.row.starts));
  if (readings.crest === 'flat' || readings.crest === 'sharp') {
    const flat = flatChance(candidate);
    log += Math.log(readings.crest === 'flat' ? flat : 1 - flat);
  }
  return log;
}
