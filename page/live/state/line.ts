import type { Bounds, Finding } from '../../../src/judge/check.js';

/** A finding on the line of its question, from 0 at the left to 1 at the right. */
export interface OnLine {
  /** where the likely value stands */
  readonly mark: number;
  /** how far it is unsure */
  readonly blur: readonly [number, number];
  /** where it cannot work any more; undefined where nothing forbids it */
  readonly wall?: number;
}

/** Where every line has the limit that a good part keeps. */
export const LIMIT_AT = 0.24;

/** Room of this share of the limit stands half way to the right end. */
const HALF_WAY = 0.8;

/**
 * Places a finding on its line: the limit always in one place, room to spare to the right, what is missing to the left.
 *
 *     x = L + (1 − L)·t/(t + h) for t ≥ 0,  L − L·|t|/(|t| + h) below      t = room / size of the limit
 *
 * @param finding one with a figure and a limit
 * @returns undefined where nothing was measured
 */
export function onLine({ value, least, most, limit, fail_limit }: Finding): OnLine | undefined {
  if (value === null || limit === null || (limit.min === undefined && limit.max === undefined)) return undefined;
  const { bound, sign } = nearest(value, limit);
  const size = Math.abs(bound) > 1e-9 ? Math.abs(bound) : Math.max(Math.abs(value), 1e-9);
  const place = (figure: number) => placed((sign * (figure - bound)) / size);
  const ends = [place(least ?? value), place(most ?? value)].sort((a, b) => a - b);
  const hard = sign > 0 ? fail_limit?.min : fail_limit?.max;
  return {
    mark: place(value),
    blur: [ends[0]!, ends[1]!],
    ...(hard === undefined ? {} : { wall: place(hard) }),
  };
}

/** The bound that is nearer, and the way in which room grows. */
function nearest(value: number, { min, max }: Bounds): { readonly bound: number; readonly sign: 1 | -1 } {
  if (max === undefined || (min !== undefined && value - min < max - value)) return { bound: min!, sign: 1 };
  return { bound: max, sign: -1 };
}

function placed(room: number): number {
  const share = Math.abs(room) / (Math.abs(room) + HALF_WAY);
  return room >= 0 ? LIMIT_AT + (1 - LIMIT_AT) * share : LIMIT_AT - LIMIT_AT * share;
}
