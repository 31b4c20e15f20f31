import type { Finding } from '../judge/check.js';
import { decimalsOf, plain, worked } from '../units/format.js';

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

/** What stands on either side of a limit, as figures or as texts. */
interface Bound<One> {
  readonly min?: One;
  readonly max?: One;
}

/** A value and its limit in figures that are told apart as they are: no miss reads as if it kept its limit. */
export interface FiguresOf {
  /** `0.25 ± 0.05 mm` */
  readonly value: string;
  readonly limit: Bound<string>;
}

type Figured = Pick<Finding, 'value' | 'uncertainty' | 'unit' | 'limit'>;

const MOST_MORE = 4;

/** The figures of a finding, with as few decimals as tell value and limit apart. */
export function figuresOf({ value, uncertainty, unit, limit }: Figured): FiguresOf {
  const { min, max } = limit ?? {};
  const bounds = (more: number) => ({
    ...(min === undefined ? {} : { min: limitFigure(min, unit, more) }),
    ...(max === undefined ? {} : { max: limitFigure(max, unit, more) }),
  });
  if (value === null) return { value: '', limit: bounds(0) };
  const isApart = (one: number | undefined, more: number) =>
    one === undefined ||
    signOf(Number(worked(value, unit, more)) - Number(limitFigure(one, unit, more))) === signOf(value - one);
  const steps = Array.from({ length: MOST_MORE }, (_, i) => i);
  const more = steps.find((one) => isApart(min, one) && isApart(max, one)) ?? MOST_MORE;
  const half = uncertainty === 0 ? '' : ` ± ${halfFigure(uncertainty, value, unit)}`;
  const text = `${worked(value, unit, more)}${half}`;
  return { value: unit === '°' ? `${text}°` : `${text} ${unit}`.trimEnd(), limit: bounds(more) };
}

/** A half-width with the decimals of its value or its own, whichever are fewer, unless it would vanish. */
function halfFigure(half: number, value: number, unit: string): string {
  const places = Math.min(decimalsOf(value, unit), decimalsOf(half, unit));
  return half >= 0.5 * 10 ** -places ? plain(half, places) : worked(half, unit);
}

/** Limits that stand in a list are told as they stand; those that are worked out have more decimals than a list has. */
function limitFigure(limit: number, unit: string, more: number): string {
  return Math.abs(limit * 100 - Math.round(limit * 100)) < 1e-6 ? plain(limit) : worked(limit, unit, more);
}

function signOf(difference: number): number {
  return Math.abs(difference) < 1e-9 ? 0 : Math.sign(difference);
}

/** `0.25 ± 0.05 mm` */
export function valueText(finding: Figured): string {
  return figuresOf(finding).value;
}

/** `≥ 0.15`, `≤ 0.3` or `0.1 to 0.3` */
export function boundsText({ min, max }: Bound<string | number>): string {
  const [low, high] = [min, max].map((one) => (typeof one === 'number' ? figure(one) : one));
  if (low !== undefined && high !== undefined) return `${low} to ${high}`;
  if (low !== undefined) return `≥ ${low}`;
  return high === undefined ? '' : `≤ ${high}`;
}
