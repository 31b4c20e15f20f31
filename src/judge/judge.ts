import type { Measured } from '../units/measured.js';
import type { Bounds, Limits, Verdict, Word } from './check.js';

/** Below this a difference is rounding, not a miss. */
const ROUNDING = 1e-9;

/**
 * Pass if every value within the uncertainty keeps the limits; fail if the likely value breaks the fail limit;
 * caution otherwise.
 */
export function judge(value: Measured, limits: Limits): Verdict {
  if (limits.fail && !keeps(value.likely, limits.fail)) return 'fail';
  return allKeep(value, limits.pass) ? 'pass' : 'caution';
}

/** The verdict in a word: a caution is `perhaps` where the uncertainty crosses a limit that the likely value keeps. */
export function wordOf(value: Measured, limits: Limits): Word {
  const verdict = judge(value, limits);
  if (verdict !== 'caution') return verdict === 'pass' ? 'yes' : 'no';
  const mayFail = limits.fail !== undefined && !allKeep(value, limits.fail);
  return mayFail || keeps(value.likely, limits.pass) ? 'perhaps' : 'but';
}

/** Distance of a value to the nearest bound; negative outside, undefined without bounds. */
export function margin(value: number, bounds: Bounds): number | undefined {
  const room = [
    ...(bounds.min === undefined ? [] : [value - bounds.min]),
    ...(bounds.max === undefined ? [] : [bounds.max - value]),
  ];
  return room.length === 0 ? undefined : Math.min(...room);
}

/** Whether a value is within bounds whatever it is within its uncertainty. */
export function allKeep({ least, likely, most }: Measured, bounds: Bounds): boolean {
  return [least, likely, most].every((value) => keeps(value, bounds));
}

/** Whether a value is within bounds. */
export function keeps(value: number, { min, max }: Bounds): boolean {
  return (min === undefined || value >= min - ROUNDING) && (max === undefined || value <= max + ROUNDING);
}
