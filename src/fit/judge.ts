import type { Measured } from '../units/measured.js';
import type { Bounds, Limits, Verdict } from './check.js';

/** Below this a difference is rounding, not a miss. */
const ROUNDING = 1e-9;

/**
 * Pass if every value within the uncertainty keeps the limits; fail if the likely value breaks the fail limit;
 * caution otherwise.
 */
export function judge(value: Measured, limits: Limits): Verdict {
  if (limits.fail && !keeps(value.likely, limits.fail)) return 'fail';
  const allKeep = keeps(value.least, limits.pass) && keeps(value.likely, limits.pass) && keeps(value.most, limits.pass);
  return allKeep ? 'pass' : 'caution';
}

/** Distance of a value to the nearest bound; negative outside, undefined without bounds. */
export function margin(value: number, bounds: Bounds): number | undefined {
  const room = [
    ...(bounds.min === undefined ? [] : [value - bounds.min]),
    ...(bounds.max === undefined ? [] : [bounds.max - value]),
  ];
  return room.length === 0 ? undefined : Math.min(...room);
}

function keeps(value: number, { min, max }: Bounds): boolean {
  return (min === undefined || value >= min - ROUNDING) && (max === undefined || value <= max + ROUNDING);
}
