import type { DriveNumbers } from '../drive/numbers.js';
import type { FitBlock } from '../fit/stack/fit-block.js';
import type { Advice } from '../judge/advice.js';
import type { Finding, Verdict } from '../judge/check.js';
import type { HardwareRow, Mounting, PrintAdvice, Sizes } from '../parts/part-kind.js';
import type { ProfileUse } from '../presets/profile.js';
import type { Assumption } from '../sheet/assumptions.js';
import type { Answer, FirstThing } from './answers/answer.js';

/** A body as it lies in its file. */
export interface BodyRow {
  readonly file: string;
  readonly material: string;
  readonly facets: number;
  /** mm³ */
  readonly volume: number;
  /** g */
  readonly mass: number;
  readonly closed: boolean;
  /** true where it lies on the bed the other way up than in the file */
  readonly turn_over: boolean;
  readonly bounds: readonly [readonly number[], readonly number[]];
}

/** The report of one part, as in report.json. */
export interface Report {
  readonly leadwright: 1;
  readonly part: string;
  readonly name: string;
  /** as the sheet counts it */
  readonly revision?: string;
  readonly verdict: Verdict;
  /** the answer in one sentence */
  readonly sentence: string;
  /** what its kind asks, answered, in order */
  readonly questions: readonly Answer[];
  /** what to see to, the most urgent first */
  readonly first: readonly FirstThing[];
  readonly accepted: readonly { readonly check: string; readonly reason: string }[];
  readonly checks: readonly Finding[];
  readonly dimensions: { readonly finished: Sizes; readonly printed: Sizes };
  /** what would bring open checks to pass, where it was asked for */
  readonly advice?: Advice;
  readonly fit?: FitBlock;
  readonly drive?: DriveNumbers;
  readonly print?: PrintAdvice;
  /** what was done to the sizes in the file, in words */
  readonly applied: string;
  /** where the figures of the printer come from, in words */
  readonly figures?: string;
  /** the profile that supplied them */
  readonly profile?: ProfileUse;
  readonly bodies: readonly BodyRow[];
  readonly hardware: readonly HardwareRow[];
  /** how it goes on, in the order of work */
  readonly mounting?: Mounting;
  readonly assumptions: readonly Assumption[];
  readonly cautions: readonly string[];
  /** texts and tables state inches beside mm; figures are mm all the same */
  readonly units?: 'inch';
  /** files that were written beside this report, by name */
  readonly files?: readonly string[];
}
