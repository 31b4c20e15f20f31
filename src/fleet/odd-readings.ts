import { plain } from '../units/format.js';
import type { PlannedPart } from './plan.js';
import type { Reading } from './readings.js';

/** A reading that stands far from those of its fellows. */
export interface OddReading {
  readonly role: string;
  readonly field: string;
  readonly value: number;
  /** what the fellows read, in the middle */
  readonly fellows: number;
  /** what was probably read, where a slip of the pen explains it */
  readonly meant: number | null;
  readonly message: string;
}

/** Readings of sound parts of one size lie within a few hundredths; beyond both of these one stands alone. */
const FAR = { share: 0.02, least: 0.1, spreads: 5 };
/** Standard deviation of a normal spread over its median deviation. */
const SPREAD = 1.4826;
/** Above so many fellows, one more or less does not move their middle. */
const MANY = 50;

interface Held {
  readonly part: PlannedPart;
  readonly reading: Reading;
}

/**
 * Holds every reading against those of the same field at parts of the same template, their screws alike in all but
 * readings, and finds those that stand alone: further from the median of the others than 2 % and 0.1 mm and five times their
 * spread. Of two alone a difference is told, at both, only if a slip explains it.
 *
 * @param parts the plan's parts
 * @returns what was found, by part
 * @source common-practice
 */
export function oddReadings(parts: readonly PlannedPart[]): Map<PlannedPart, OddReading[]> {
  const groups = new Map<string, Held[]>();
  for (const part of parts) {
    for (const reading of part.readings ?? []) {
      const group = groups.get(reading.fellows);
      if (group) group.push({ part, reading });
      else groups.set(reading.fellows, [{ part, reading }]);
    }
  }
  const found = new Map<PlannedPart, OddReading[]>();
  for (const group of groups.values()) {
    for (const { part, odd } of oddIn(group)) found.set(part, [...(found.get(part) ?? []), odd]);
  }
  return found;
}

function oddIn(group: readonly Held[]): { part: PlannedPart; odd: OddReading }[] {
  if (group.length < 2) return [];
  const values = group.map(({ reading }) => reading.value).sort((a, b) => a - b);
  const all = group.length > MANY ? middleOf(values) : undefined;
  return group.flatMap(({ part, reading }) => {
    const { median, spread } = all ?? middleOf(without(values, reading.value));
    const far = Math.max(FAR.share * Math.abs(median), FAR.least, FAR.spreads * spread);
    if (Math.abs(reading.value - median) <= far + 1e-9) return [];
    const slip = likelySlip(reading.value, median, far);
    if (group.length === 2 && (!slip || slip.what === ONE_WRONG)) return [];
    const { field, value, place } = reading;
    const others = group.length - 1;
    const told = slip ? `; ${slip.what}, it was ${plain(slip.meant, 3)}` : '; measure it again';
    const message = `${place} ${field}: ${plain(value, 3)} stands alone, its ${others === 1 ? 'fellow reads' : `${others} fellows read`} about ${plain(median, 3)}${told}`;
    return [{ part, odd: { role: part.role, field, value, fellows: median, meant: slip?.meant ?? null, message } }];
  });
}

function without(sorted: readonly number[], value: number): number[] {
  const at = sorted.indexOf(value);
  return sorted.filter((_, i) => i !== at);
}

function middleOf(sorted: readonly number[]): { median: number; spread: number } {
  const median = middle(sorted);
  const deviations = sorted.map((value) => Math.abs(value - median)).sort((a, b) => a - b);
  return { median, spread: SPREAD * middle(deviations) };
}

function middle(sorted: readonly number[]): number {
  const half = Math.floor((sorted.length - 1) / 2);
  return (sorted[half]! + sorted[sorted.length - 1 - half]!) / 2;
}

/** Explains nearly anything, so that it proves nothing. */
const ONE_WRONG = 'if one digit is wrong';

/** A slip of the pen or of the eye. */
interface Slip {
  readonly what: string;
  readonly meant: number;
}

/**
 * The slip that brings a reading nearest to what its fellows read, the commonest kind first.
 * @param value what was written
 * @param wanted what the fellows read
 * @param within how near it must come
 * @example likelySlip(7.29, 7.93, 0.16) // { what: 'if two digits changed places', meant: 7.92 }
 */
export function likelySlip(value: number, wanted: number, within: number): Slip | undefined {
  const kinds: readonly (readonly [string, readonly number[]])[] = [
    ['if two digits changed places', swapped(value)],
    ['if the decimal sign slipped', [-3, -2, -1, 1, 2, 3].map((by) => value * 10 ** by)],
    ['if it was read in inches', [value * 25.4]],
    ['if it is a radius', [value * 2]],
    [ONE_WRONG, oneWrong(value)],
  ];
  for (const [what, candidates] of kinds) {
    const near = candidates.reduce<number | undefined>(
      (best, one) => (best === undefined || Math.abs(one - wanted) < Math.abs(best - wanted) ? one : best),
      undefined,
    );
    if (near !== undefined && Math.abs(near - wanted) <= within) return { what, meant: Number(near.toPrecision(12)) };
  }
  return undefined;
}

function swapped(value: number): number[] {
  const digits = plain(value, 6).split('');
  const places = digits.flatMap((digit, i) => (/\d/.test(digit) ? [i] : []));
  return places.slice(1).map((place, i) => {
    const turned = [...digits];
    [turned[place], turned[places[i]!]] = [turned[places[i]!]!, turned[place]!];
    return Number(turned.join(''));
  });
}

function oneWrong(value: number): number[] {
  const digits = plain(value, 6);
  return [...digits].flatMap((digit, i) =>
    /\d/.test(digit) ? [...'0123456789'].map((other) => Number(digits.slice(0, i) + other + digits.slice(i + 1))) : [],
  );
}
