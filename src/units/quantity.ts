import { type Dimension, foldUnit, UNITS, unitChoices } from './unit-table.js';

/** A quantity as typed, in base units; `half` is the half-width after `±`, when one was typed. */
export interface Quantity {
  readonly value: number;
  readonly half?: number;
}

/** Either a quantity, or what was expected instead. */
export type ParsedQuantity =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly allowed: string };

/** A text longer than this is no quantity. */
const LONGEST = 80;
const PLUS_MINUS = /±|\+\/?-/;
const PART = /^([+-]?(?:\d+ \d+\/\d+|\d+\/\d+|(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)) ?(.*)$/i;
const DECIMAL_COMMA = /^[+-]?\d*,\d/;

/** What is refused, with what was expected. */
class Refused {
  readonly allowed: string;

  constructor(allowed: string) {
    this.allowed = allowed;
  }
}

/**
 * Reads `7.95 ± 0.02 mm`, `7.95 mm ± 20 µm`, `5/16 in`, `1 1/4 in`, `20 kgf`, `77 F`, `0.8 %` or a bare number.
 * A bare number has the dimension's usual unit; a text must name its unit (a ratio's text is a percentage).
 * On either side of ± the unit may stand once or twice.
 *
 * @param input what the sheet holds
 * @param dimension what kind of quantity is wanted
 * @returns the quantity in base units (mm, degrees, N, N·mm, mm/s, MPa, °C, K; a ratio as a fraction), or what was expected
 * @source iso-80000
 * @example parseQuantity('5/16 in', 'length').quantity.value // 7.9375
 */
export function parseQuantity(input: unknown, dimension: Dimension): ParsedQuantity {
  const read = typeof input === 'string' ? fromText(input, dimension) : fromNumber(input, dimension);
  return read instanceof Refused ? { ok: false, allowed: read.allowed } : { ok: true, quantity: read };
}

function fromNumber(input: unknown, dimension: Dimension): Quantity | Refused {
  const { factors, bare } = UNITS[dimension];
  const value = typeof input === 'number' ? input * (factors[foldUnit(bare)] ?? 1) : Number.NaN;
  return Number.isFinite(value) ? { value } : notAQuantity(dimension);
}

function fromText(input: string, dimension: Dimension): Quantity | Refused {
  if (input.length > LONGEST) return notAQuantity(dimension);
  const plain = input.replaceAll('−', '-').replace(/\s+/g, ' ').trim();
  const sides = plain.split(PLUS_MINUS).map((side) => side.trim());
  if (sides.some((side) => DECIMAL_COMMA.test(side))) return COMMA;
  const [value, half] = sides.map(splitUnit);
  if (value === undefined || sides.length > 2 || (sides.length === 2 && half === undefined)) {
    return notAQuantity(dimension);
  }
  if (half === undefined) return inBaseUnits(value, dimension);
  const read = inBaseUnits({ number: value.number, unit: value.unit || half.unit }, dimension);
  const width = inBaseUnits({ number: half.number, unit: half.unit || value.unit }, dimension, 'width');
  if (read instanceof Refused) return read;
  if (width instanceof Refused) return width;
  if (width.value < 0) return new Refused('the part after ± must be 0 or above');
  return { value: read.value, half: width.value };
}

interface Typed {
  readonly number: string;
  readonly unit: string;
}

function splitUnit(side: string): Typed | undefined {
  const [, number, unit] = PART.exec(side) ?? [];
  return number === undefined || unit === undefined ? undefined : { number, unit };
}

/** A width is how far two values are apart: where a scale starts does not matter to it. */
function inBaseUnits(
  { number, unit }: Typed,
  dimension: Dimension,
  what: 'value' | 'width' = 'value',
): Quantity | Refused {
  const { factors, zeros = {} } = UNITS[dimension];
  const folded = foldUnit(unit);
  if (folded === '') return new Refused(`needs a unit: ${unitChoices(dimension)}`);
  const factor = Object.hasOwn(factors, folded) ? factors[folded] : undefined;
  if (factor === undefined)
    return new Refused(`unit must be one of ${unitChoices(dimension)}${meantUnit(dimension, number, folded)}`);
  const value = (toNumber(number) - (what === 'value' ? (zeros[folded] ?? 0) : 0)) * factor;
  if (!Number.isFinite(value)) return notAQuantity(dimension);
  return { value: dimension === 'length' && factor !== 1 ? withoutDust(value) : value };
}

/** So finely lengths of other units come to mm: 0.31496063 in are 8 mm, and lie on no other side of a limit. */
const DUST = 1e7;

function withoutDust(mm: number): number {
  return Math.round(mm * DUST) / DUST;
}

/** Units of daily speech, in small letters, and what they mean. */
const DAILY: Readonly<Partial<Record<Dimension, Readonly<Record<string, string>>>>> = {
  force: { kg: 'kgf', g: 'gf', lb: 'lbf', lbs: 'lbf', oz: 'ozf' },
  temperature: { c: 'C', f: 'F' },
};

function meantUnit(dimension: Dimension, number: string, unit: string): string {
  const daily = DAILY[dimension] ?? {};
  const typed = unit.toLowerCase();
  return Object.hasOwn(daily, typed) ? `; did you mean ${number} ${daily[typed]}?` : '';
}

function toNumber(text: string): number {
  const sign = text.startsWith('-') ? -1 : 1;
  const parts = text.replace(/^[+-]/, '').split(' ');
  return sign * parts.reduce((total, part) => total + fraction(part), 0);
}

function fraction(text: string): number {
  const [above = '', below] = text.split('/');
  return below === undefined ? Number(above) : Number(above) / Number(below);
}

const COMMA = new Refused('write the decimal with a point, not a comma');

const EXAMPLES: Readonly<Partial<Record<Dimension, string>>> = {
  length: '12 mm or 0.5 in',
  ratio: '0.8 %',
  temperature: '25 C or 77 F',
};

function notAQuantity(dimension: Dimension): Refused {
  const example = EXAMPLES[dimension] ?? `1 ${UNITS[dimension].bare}`;
  return new Refused(`must be a finite number or a quantity such as ${example}`);
}
