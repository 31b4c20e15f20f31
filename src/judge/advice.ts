import type { Verdict } from './check.js';

/** A new value of a field: a figure in its base unit, or one of its words. */
export type Setting = number | string;

/** One way to bring a check to pass. */
export interface Cure {
  /** new values by field, figures in the field's base unit */
  readonly set: Readonly<Record<string, Setting>>;
  /** lines to paste in place of those of the sheet */
  readonly lines: readonly string[];
  /** what the check then says: caution where nothing brings a failed one to pass */
  readonly reaches: Verdict;
  /** how much it changes; smaller comes first */
  readonly change: number;
  /** checks that pass now and would become cautions */
  readonly costs: readonly string[];
}

/** A way to let a part go where it does not, that its kind knows of; it is told only where it was tried and leads there. */
export interface Remedy {
  /** the check that it cures */
  readonly check: string;
  /** what to do, such as `bore the carriage out` */
  readonly say: string;
  /** new values by field, figures in mm */
  readonly set: Readonly<Record<string, Setting>>;
  /** the sheet of another part that makes it good, without the sections that both share; `set` then names its fields in words */
  readonly another?: Readonly<Record<string, unknown>>;
}

/** A remedy that was tried on the sheet itself: its check passes, and no other fails by it. */
export type TriedRemedy = Pick<Remedy, 'check' | 'set'> & {
  readonly words: string;
  /** the whole sheet of the other part that makes it good */
  readonly another?: Readonly<Record<string, unknown>>;
};

/** What would bring one check to pass, or why nothing would. */
export interface CheckAdvice {
  readonly check: string;
  readonly verdict: Verdict;
  readonly cures: readonly Cure[];
  /** readings that come first where only their doubt keeps it from passing: taken surely, each lets it pass */
  readonly surer?: readonly string[];
  /** the lines of the sheet of another part that makes it good */
  readonly another?: readonly string[];
  readonly none?: string;
}

/** What a sheet's changes would come to. */
export interface Advice {
  readonly checks: readonly CheckAdvice[];
  /** the best cures together, and the verdict the sheet then has; absent where nothing is to be changed */
  readonly together?: {
    readonly set: Readonly<Record<string, Setting>>;
    readonly lines: readonly string[];
    readonly verdict: Verdict;
    readonly still: readonly string[];
  };
}

/** A field of a sheet that advice may change. */
export type Tunable<Design> = FigureTunable<Design> | WordTunable<Design>;

/** A field that holds a figure. */
export interface FigureTunable<Design> {
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

/** A field that holds one of a few words. */
export interface WordTunable<Design> {
  /** such as `printer.bridging` */
  readonly path: string;
  /** those to be tried, the simplest first */
  readonly words: readonly string[];
  /** what it is now; undefined where the design has no such thing */
  readonly now: (design: Design) => string | undefined;
}
