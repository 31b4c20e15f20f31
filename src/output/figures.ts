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
  /** `0.25 ± 0.05 mm`, or `31 to 37 °C` where it may be off to one side alone */
  readonly value: string;
  readonly limit: Bound<string>;
}

type Figured = Pick<Finding, 'value' | 'uncertainty' | 'unit' | 'limit'> & Partial<Pick<Finding, 'least' | 'most'>>;

/** A value counts as off to one side where the other is less than this share of it. */
const ONE_SIDED = 0.1;

const MOST_MORE = 4;
const steps = Array.from({ length: MOST_MORE }, (_, i) => i);

/** The figures of a finding, with as few decimals as tell value and limit apart. */
export function figuresOf(finding: Figured): FiguresOf {
  const { value, uncertainty, unit, limit } = finding;
  const { min, max } = limit ?? {};
  const bounds = (more: number) => ({
    ...(min === undefined ? {} : { min: limitFigure(min, unit, more) }),
    ...(max === undefined ? {} : { max: limitFigure(max, unit, more) }),
  });
  if (value === null) return { value: '', limit: bounds(0) };
  const ends = endsOf(finding) ?? [value];
  const isApart = (one: number | undefined, more: number) =>
    one === undefined ||
    ends.every(
      (end) => signOf(Number(worked(end, unit, more)) - Number(limitFigure(one, unit, more))) === signOf(end - one),
    );
  const more = steps.find((one) => isApart(min, one) && isApart(max, one)) ?? MOST_MORE;
  const texts = ends.map((end) => worked(end, unit, more));
  if (ends.length > 1) return { value: withUnit([...new Set(texts)].join(' to '), unit), limit: bounds(more) };
  const shown = worked(value, unit, more);
  const isTold = (half: string) =>
    isSurelyWithin(+shown, +half, limit ?? {}) === isSurelyWithin(value, uncertainty, limit ?? {});
  const half = uncertainty === 0 ? '' : ` ± ${halfFigure({ half: uncertainty, value, unit }, isTold)}`;
  return { value: withUnit(`${shown}${half}`, unit), limit: bounds(more) };
}

/** Both ends of a value that may be off to one side alone: what is likely is one of them. */
function endsOf({ value, least, most }: Figured): readonly [number, number] | undefined {
  if (value === null || typeof least !== 'number' || typeof most !== 'number') return undefined;
  const [below, above] = [value - least, most - value];
  const isOneSided = Math.min(below, above) < ONE_SIDED * Math.max(below, above);
  return isOneSided ? [least, most] : undefined;
}

function withUnit(text: string, unit: string): string {
  return unit === '°' ? `${text}°` : `${text} ${unit}`.trimEnd();
}

interface HalfWidth {
  readonly half: number;
  readonly value: number;
  readonly unit: string;
}

/**
 * A half-width with the decimals of its value or its own, whichever are fewer, unless it would vanish or an end would read as if it
 * kept a limit that it misses.
 */
function halfFigure({ half, value, unit }: HalfWidth, isTold: (half: string) => boolean): string {
  const places = Math.min(decimalsOf(value, unit), decimalsOf(half, unit));
  const texts = steps.map((more) => plain(half, places + more));
  const usual = half >= 0.5 * 10 ** -places ? texts[0]! : worked(half, unit);
  return isTold(usual) ? usual : (texts.find(isTold) ?? usual);
}

/** Whether both ends of a figure keep its limits. */
function isSurelyWithin(value: number, half: number, { min = -Infinity, max = Infinity }: Bound<number>): boolean {
  return signOf(value - half - min) >= 0 && signOf(value + half - max) <= 0;
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
