import * as z from 'zod';
import { plain } from '../units/format.js';
import { parseQuantity, type Quantity } from '../units/quantity.js';
import { type Dimension, UNITS } from '../units/unit-table.js';

/** Bounds of a field, in base units. */
export interface Bounds {
  /** smallest allowed */
  readonly least?: number;
  /** largest allowed */
  readonly most?: number;
  /** must be larger than this */
  readonly above?: number;
}

/** A quantity without uncertainty, as a number in base units. */
export function quantity(dimension: Dimension, bounds: Bounds = {}, about = '') {
  return z
    .unknown()
    .transform((input, context): number => {
      const read = readWithin(input, dimension, bounds, context);
      if (read?.half !== undefined) context.addIssue({ code: 'custom', message: 'takes no ± here' });
      return read?.value ?? z.NEVER;
    })
    .meta({ ...describe(dimension, about), quantity: true, ...told(dimension, bounds) });
}

/** A quantity read off an instrument: `7.95 mm` or `7.95 ± 0.02 mm`. */
export function reading(dimension: Dimension, bounds: Bounds = {}, about = '') {
  return z
    .unknown()
    .transform((input, context): Quantity => {
      const read = readWithin(input, dimension, bounds, context);
      if (read?.half !== undefined && bounds.above === 0 && read.half >= read.value) {
        context.addIssue({ code: 'custom', message: 'the part after ± must be smaller than the value' });
      }
      return read ?? z.NEVER;
    })
    .meta({
      ...describe(dimension, about, 'may carry its uncertainty, such as 7.95 ± 0.02 mm'),
      quantity: true,
      reading: dimension,
      ...told(dimension, bounds),
    });
}

/** A whole number within bounds. */
export function whole(least: number, most: number, about = '') {
  const message = `must be a whole number from ${least} to ${most}`;
  return z.number(message).int(message).min(least, message).max(most, message).describe(about);
}

/** One of a few words. */
export function word<const T extends readonly [string, ...string[]]>(words: T, about = '') {
  const error = ({ input }: { readonly input?: unknown }) =>
    `must be one of ${words.join(', ')}${meantWord(input, words)}`;
  return z.enum(words, { error }).describe(about);
}

/** What the trade writes for some of the words. */
const SHORT: Readonly<Record<string, string | readonly string[]>> = {
  rh: 'right',
  lh: 'left',
  r: 'right',
  l: 'left',
  trap: 'trapezoidal',
  tr: 'trapezoidal',
  metric: 'metric-v',
  v: ['metric-v', 'sharp'],
  pointed: 'sharp',
  square: 'flat',
  ball: 'round',
};

function meantWord(input: unknown, words: readonly string[]): string {
  if (typeof input !== 'string') return '';
  const typed = input.trim().toLowerCase();
  const meant = words.find((one) => one.toLowerCase() === typed || [SHORT[typed]].flat().includes(one));
  return meant === undefined ? '' : `; did you mean ${meant}?`;
}

/** A map that knows all its keys; what is said where it is none may be put in other words. */
export function map<T extends z.ZodRawShape>(shape: T, wanted = 'must be a map of fields') {
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'invalid_type' ? wanted : undefined),
  });
}

/**
 * For `superRefine`: look at a map even where single fields of it are wrong, so that all mistakes are told at once.
 * A wrong field may then hold anything.
 */
export const EVEN_IF_WRONG = {
  when: ({ value }: { readonly value: unknown }) =>
    typeof value === 'object' && value !== null && !Array.isArray(value),
};

/** A map that may be written as one plain value: `material: pa12` for `material: {preset: pa12}`. */
export function orShort<T extends z.ZodType>(
  schema: T,
  expand: (short: unknown) => Record<string, unknown>,
  short: 'string' | 'quantity',
) {
  const isPlain = (input: unknown) => typeof input === 'string' || (typeof input === 'number' && short === 'quantity');
  return z.preprocess((input) => (isPlain(input) ? expand(input) : input), schema).meta({ short });
}

function readWithin(
  input: unknown,
  dimension: Dimension,
  bounds: Bounds,
  context: z.core.$RefinementCtx,
): Quantity | undefined {
  const refuse = (message: string) => {
    context.addIssue({ code: 'custom', message, input });
    return undefined;
  };
  if (input === undefined) return refuse('is missing');
  const parsed = parseQuantity(input, dimension);
  if (!parsed.ok) return refuse(parsed.allowed);
  const wrong = outside(parsed.quantity.value, dimension, bounds);
  if (wrong)
    return refuse(typeof input === 'number' && dimension === 'length' ? `${wrong}${inchSlip(input, bounds)}` : wrong);
  return parsed.quantity;
}

/** What is allowed, when a value in base units is outside its bounds. */
function outside(value: number, dimension: Dimension, { least, most, above }: Bounds): string | undefined {
  const show = shown(dimension);
  const kept =
    (least === undefined || value >= least) &&
    (most === undefined || value <= most) &&
    (above === undefined || value > above);
  if (kept) return undefined;
  if (above !== undefined && !(value > above)) return `must be above ${above === 0 ? '0' : show(above)}`;
  if (least !== undefined && most !== undefined) return `must be ${show(least)} to ${show(most)}`;
  if (least !== undefined) return `must be at least ${show(least)}`;
  return `must be at most ${show(most!)}`;
}

function shown(dimension: Dimension): (bound: number) => string {
  return (bound) =>
    (dimension === 'ratio' ? `${plain(bound * 100)} %` : `${plain(bound)} ${UNITS[dimension].base}`).trim();
}

/** Unit of a bare number and bounds of a field in words, for those who read of it. */
function told(
  dimension: Dimension,
  { least, most, above }: Bounds,
): { readonly unit: string; readonly range?: string } {
  const show = shown(dimension);
  const from = above === undefined ? least : above;
  const low = from === undefined ? [] : [`${above === undefined ? 'from' : 'above'} ${from === 0 ? '0' : show(from)}`];
  const high = most === undefined ? [] : [`to ${show(most)}`];
  const range = [...low, ...high].join(' ');
  return { unit: UNITS[dimension].bare, ...(range === '' ? {} : { range }) };
}

/** A bare number that would be right in inches. */
function inchSlip(value: number, bounds: Bounds): string {
  const inMm = value * 25.4;
  const fits =
    value > 0 &&
    bounds.least !== undefined &&
    value < bounds.least &&
    inMm >= bounds.least &&
    inMm <= (bounds.most ?? inMm);
  return fits ? ` (if it was read in inches, write "${plain(value, 4)} in")` : '';
}

function describe(dimension: Dimension, ...about: readonly string[]): { description: string } {
  const bare = UNITS[dimension].bare;
  const unit = dimension === 'ratio' ? 'a percentage such as 0.8 %' : `bare numbers are ${bare}`;
  return { description: [...about, unit].filter((part) => part !== '').join('; ') };
}
