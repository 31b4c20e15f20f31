import type { Measured } from '../units/measured.js';

/** Worst last. */
export const VERDICTS = ['pass', 'caution', 'fail'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** What a value must keep. */
export interface Bounds {
  readonly min?: number;
  readonly max?: number;
}

/**
 * The limits of a check as data. `pass` is what a good part keeps: outside it the verdict is a caution, or a fail where
 * no separate `fail` bounds are given and `hard` is set. Outside `fail` the part cannot work or would hurt.
 */
export interface Limits {
  readonly pass: Bounds;
  readonly fail?: Bounds;
}

/** What a check found: a value, a plain verdict where there is nothing to measure, or why it could not judge. */
export type Outcome =
  | { readonly kind: 'value'; readonly value: Measured; readonly message: string; readonly limits?: Limits }
  | { readonly kind: 'told'; readonly verdict: Verdict; readonly message: string; readonly value?: number }
  | { readonly kind: 'not-judged'; readonly message: string };

/** A check: what it is about, its limits with unit and source, and how it looks at a design. */
export interface Check<Design> {
  /** as in `--accept` and in the report */
  readonly id: string;
  readonly group: string;
  readonly title: string;
  /** unit of value and limits; empty for plain numbers */
  readonly unit: string;
  /** a standard, or "common practice" */
  readonly source: string;
  readonly limits?: Limits;
  /** what moves the value, in words of the sheet */
  readonly moves: string;
  /** undefined where the check does not apply to this design */
  readonly run: (design: Design) => Outcome | undefined;
}

/** A check's answer, ready for a report. */
export interface Finding {
  readonly id: string;
  readonly group: string;
  readonly title: string;
  readonly verdict: Verdict;
  readonly value: number | null;
  readonly least?: number;
  readonly most?: number;
  readonly limit: Bounds | null;
  readonly fail_limit?: Bounds;
  /** distance to the nearest limit at the likely value; negative outside */
  readonly margin: number | null;
  readonly unit: string;
  /** half-width of the value */
  readonly uncertainty: number;
  readonly message: string;
  readonly source: string;
  readonly moves: string;
  /** the limit that the sheet replaced */
  readonly replaced_limit?: Bounds;
  readonly accepted?: string;
}

/** An outcome with a value. */
export function valued(value: Measured, message: string, limits?: Limits): Outcome {
  return limits ? { kind: 'value', value, message, limits } : { kind: 'value', value, message };
}

/** An outcome that is known without measuring. */
export function told(verdict: Verdict, message: string, value?: number): Outcome {
  return value === undefined ? { kind: 'told', verdict, message } : { kind: 'told', verdict, message, value };
}

/** An outcome for want of a figure; a caution, never a pass. */
export function notJudged(missing: string): Outcome {
  return { kind: 'not-judged', message: `not judged: ${missing} is missing` };
}

/** Limits outside which a part cannot work. */
export function hard(bounds: Bounds): Limits {
  return { pass: bounds, fail: bounds };
}

/** Limits outside which a part may disappoint. */
export function soft(pass: Bounds, fail?: Bounds): Limits {
  return fail ? { pass, fail } : { pass };
}
