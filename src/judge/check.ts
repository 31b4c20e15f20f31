import type { Measured } from '../units/measured.js';

/** Worst last. */
export const VERDICTS = ['pass', 'caution', 'fail'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** The verdict in a word for people, worst last. */
export const WORDS = ['yes', 'but', 'not-told', 'perhaps', 'no'] as const;

/**
 * `yes` kept by every value within the uncertainty; `perhaps` the uncertainty crosses a limit; `but` works, may disappoint;
 * `no` does not work, or would hurt; `not-told` a figure is missing. A pass is `yes`, a fail `no`, the rest are cautions.
 */
export type Word = (typeof WORDS)[number];

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
  | { readonly kind: 'not-judged'; readonly message: string; readonly missing: readonly string[] };

/** The limits a check is judged by: its own, with the bounds that the sheet puts in their place. */
export interface LimitsInForce extends Limits {
  /** the same of limits that hang on the design, for a check that words its message from them */
  readonly of: (own: Limits) => Limits;
}

/** What a check is about, and its limits with unit and source. */
export interface CheckFacts {
  /** as in `--accept` and in the report */
  readonly id: string;
  readonly group: string;
  /** the question of its kind that it answers, by id */
  readonly question: string;
  /** what is asked, never what was found */
  readonly title: string;
  /** unit of value and limits; empty for plain numbers */
  readonly unit: string;
  /** a standard, or "common practice" */
  readonly source: string;
  readonly limits?: Limits;
  /** what moves the value, in words of the sheet */
  readonly moves: string;
  /** a miss can hurt: unanswered it is an open question in the first lines, accepting it wants a longer reason */
  readonly grave?: boolean;
  /** certain and of little weight, such as a chamfer: it leads its question only where nothing else does */
  readonly trifle?: boolean;
}

/** A check: what it is about, and how it looks at a design. */
export interface Check<Design> extends CheckFacts {
  /** undefined where the check does not apply to this design; the message is worded from the limits in force */
  readonly run: (design: Design, limits: LimitsInForce) => Outcome | undefined;
}

/** A check's answer, ready for a report. */
export interface Finding {
  readonly id: string;
  readonly group: string;
  readonly question: string;
  readonly title: string;
  readonly verdict: Verdict;
  readonly word: Word;
  readonly value: number | null;
  readonly least?: number;
  readonly most?: number;
  readonly limit: Bounds | null;
  readonly fail_limit: Bounds | null;
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
  /** what it comes to by the limit that the sheet replaced, where that is worse */
  readonly usual_verdict?: Verdict;
  /** fields of the sheet without which it could not be judged */
  readonly missing?: readonly string[];
  readonly grave?: true;
  readonly trifle?: true;
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

/** An outcome for want of fields of the sheet; a caution, never a pass. */
export function notJudged(...missing: readonly string[]): Outcome {
  const names = missing.join(' and ');
  return {
    kind: 'not-judged',
    message: `not judged: ${names} ${missing.length === 1 ? 'is' : 'are'} missing`,
    missing,
  };
}

/** Limits outside which a part cannot work. */
export function hard(bounds: Bounds): Limits {
  return { pass: bounds, fail: bounds };
}

/** Limits outside which a part may disappoint. */
export function soft(pass: Bounds, fail?: Bounds): Limits {
  return fail ? { pass, fail } : { pass };
}
