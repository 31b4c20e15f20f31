import type { Verdict } from './check.js';

/** One way to bring a check to pass. */
export interface Cure {
  /** new values by field, in the field's base unit */
  readonly set: Readonly<Record<string, number>>;
  /** lines to paste in place of those of the sheet */
  readonly lines: readonly string[];
  /** what the check then says: caution where nothing brings a failed one to pass */
  readonly reaches: Verdict;
  /** how much it changes; smaller comes first */
  readonly change: number;
  /** checks that pass now and would become cautions */
  readonly costs: readonly string[];
}

/** What would bring one check to pass, or why nothing would. */
export interface CheckAdvice {
  readonly check: string;
  readonly verdict: Verdict;
  readonly cures: readonly Cure[];
  readonly none?: string;
}

/** What a sheet's changes would come to. */
export interface Advice {
  readonly checks: readonly CheckAdvice[];
  /** the best cures together, and the verdict the sheet then has; absent where nothing is to be changed */
  readonly together?: {
    readonly set: Readonly<Record<string, number>>;
    readonly lines: readonly string[];
    readonly verdict: Verdict;
    readonly still: readonly string[];
  };
}

/** A field of a sheet that advice may change. */
export interface Tunable<Design> {
  /** such as `fit.diametral` */
  readonly path: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  /** values are whole steps of this */
  readonly step: number;
  /** a change that counts as one when cures are ranked */
  readonly grain: number;
  /** what it is now; undefined where the design has no such thing */
  readonly now: (design: Design) => number | undefined;
}
