import { type Dimension, foldUnit, UNITS, unitChoices } from './unit-table.js';

/** A quantity as typed, in base units; `half` is the half-width after `±`, when one was typed. */
export interface Quantity {
  readonly value: number;
  readonly half?: number;
}

/** Either a quantity, or what was expected instead. */
export type ParsedQuantity = { readonly ok: true; readonly quantity: Quantity } | { readonly ok: false; readonly allowed: string };

const NUMBER = String.raw`[+-]?(?:\d+\s+\d+\/\d+|\d+\/\d+|(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)`;
const SHAPE = new RegExp(String.raw`^\s*(${NUMBER})\s*(?:(?:±|\+\/?-)\s*(${NUMBER}))?\s*(.*?)\s*$`);

/**
 * Reads `7.95 ± 0.02 mm`, `5/16 in`, `1 1/4 in`, `20 kgf`, `0.8 %` or a bare number.
 * A bare number has the dimension's usual unit; a text must name its unit (a ratio's text is a percentage).
 *
 * @param input what the sheet holds
 * @param dimension what kind of quantity is wanted
 * @returns the quantity in base units (mm, degrees, N, N·mm, mm/s, MPa, °C; a ratio as a fraction), or what was expected
 * @source iso-80000
 * @example parseQuantity('5/16 in', 'length').quantity.value // 7.9375
 */
export function parseQuantity(input: unknown, dimension: Dimension): ParsedQuantity {
  const units = UNITS[dimension];
  if (typeof input === 'number') {
    if (!Number.isFinite(input)) return refused(dimension);
    return { ok: true, quantity: { value: input * (units.factors[foldUnit(units.bare)] ?? 1) } };
  }
  if (typeof input !== 'string') return refused(dimension);
  const parts = SHAPE.exec(input);
  if (!parts) return refused(dimension, input);
  const [, number = '', half, unit = ''] = parts;
  if (unit === '') return { ok: false, allowed: `needs a unit: ${unitChoices(dimension)}` };
  const factor = Object.hasOwn(units.factors, foldUnit(unit)) ? units.factors[foldUnit(unit)] : undefined;
  if (factor === undefined) return { ok: false, allowed: `unit must be one of ${unitChoices(dimension)}` };
  const value = toNumber(number) * factor;
  const width = half === undefined ? undefined : toNumber(half) * factor;
  if (!Number.isFinite(value) || (width !== undefined && !Number.isFinite(width))) return refused(dimension);
  if (width !== undefined && width < 0) return { ok: false, allowed: 'the part after ± must be 0 or above' };
  return { ok: true, quantity: width === undefined ? { value } : { value, half: width } };
}

function toNumber(text: string): number {
  const sign = text.startsWith('-') ? -1 : 1;
  const parts = text.replace(/^[+-]/, '').split(/\s+/);
  return sign * parts.reduce((total, part) => total + fraction(part), 0);
}

function fraction(text: string): number {
  const [above = '', below] = text.split('/');
  return below === undefined ? Number(above) : Number(above) / Number(below);
}

function refused(dimension: Dimension, input = ''): ParsedQuantity {
  if (/^\s*[+-]?\d+,\d/.test(input)) return { ok: false, allowed: 'write the decimal with a point, not a comma' };
  const example = { length: '12 mm or 0.5 in', ratio: '0.8 %', temperature: '25 C' }[dimension as string] ?? `1 ${UNITS[dimension].bare}`;
  return { ok: false, allowed: `must be a finite number or a quantity such as ${example}` };
}
