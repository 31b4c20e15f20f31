import { plain } from '../units/format.js';

/** What several readings of one feature come to. */
export interface MeanReading {
  /** mm */
  readonly mean: number;
  /** standard deviation of the mean, the print's own form included, mm */
  readonly sigma: number;
  readonly kept: readonly number[];
  /** readings that are too far from the others, with why */
  readonly left: readonly { readonly value: number; readonly why: string }[];
  /** true where the readings part into groups and none can be preferred */
  readonly disagree: boolean;
}

/** How far a printed feature is off by itself, one standard deviation, mm. @source common-practice: hole repeatability ± 0.05 mm with the reading */
export const FORM_SIGMA = 0.015;

/** Share of the variance of a reading that all readings of a session have in common. @source common-practice: as readings of a screw take it */
export const COMMON = 0.5;

/** Readings farther apart than this many standard deviations do not belong together. */
const FAR = 4.5;

/**
 * Takes the mean of the readings of one feature; a single reading that is far from two or more others is left out.
 *
 *     σ² = σ_form² + σ_reading²/(2·n)      half of a caliper's variance is common to all readings of a session
 *
 * @param readings  one or more  [mm]
 * @param reading   standard deviation of one reading, half its half-width  [mm]
 * @returns mean, its standard deviation, and what was left out  [mm]
 * @example meanReading([7.9, 7.92, 7.94], 0.015).mean // 7.92
 */
export function meanReading(readings: readonly number[], reading: number): MeanReading {
  const middle = medianOf(readings);
  const near = readings.filter((value) => Math.abs(value - middle) <= FAR * reading);
  const isClear = near.length > readings.length / 2 && spread(near) <= 2 * FAR * reading;
  const disagree = !isClear && spread(readings) > FAR * Math.SQRT2 * reading;
  const kept = isClear ? near : readings;
  const mean = meanOf(kept);
  const left = readings
    .filter((value) => !kept.includes(value))
    .map((value) => ({
      value,
      why: `${plain(Math.abs(value - mean), 2)} mm off the other readings of the same feature`,
    }));
  return { mean, sigma: Math.hypot(FORM_SIGMA, reading * Math.sqrt((1 - COMMON) / kept.length)), kept, left, disagree };
}

function spread(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  return (sorted[Math.floor(half)]! + sorted[Math.ceil(half)]!) / 2;
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
