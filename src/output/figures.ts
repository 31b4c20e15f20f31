import type { Bounds, Finding } from '../judge/check.js';
import { plain } from '../units/format.js';

/**
 * A figure with as many decimals as it needs to be told from 0.
 * @example figure(0.00042) // '0.00042'
 */
export function figure(value: number): string {
  const size = Math.abs(value);
  if (size >= 100) return plain(value, 1);
  if (size >= 0.01 || size < 1e-9) return plain(value, 3);
  return String(Number(value.toPrecision(2)));
}

/** `0.25 ± 0.05 mm` */
export function valueText({ value, uncertainty, unit }: Finding): string {
  if (value === null) return '';
  const half = uncertainty === 0 ? '' : ` ± ${figure(uncertainty)}`;
  return `${figure(value)}${half} ${unit}`.trimEnd();
}

/** `≥ 0.15`, `≤ 0.3` or `0.1 to 0.3` */
export function boundsText({ min, max }: Bounds): string {
  if (min !== undefined && max !== undefined) return `${figure(min)} to ${figure(max)}`;
  if (min !== undefined) return `≥ ${figure(min)}`;
  return max === undefined ? '' : `≤ ${figure(max)}`;
}
