import type { Verdict } from '../judge/check.js';
import type { BodyRow, Report } from '../output/report.js';
import type { HardwareRow, PrintAdvice } from '../parts/part-kind.js';
import type { PairFacts } from './pair-facts.js';

/** A file as it lies in a folder, with what it must hold. */
export interface DigestedFile {
  readonly name: string;
  readonly size: number;
  /** SHA-256, hexadecimal */
  readonly digest: string;
}

/** What a run remembers of a part that was made or refused; plain data, the same for the same address. */
export interface RememberedPart {
  readonly address: string;
  readonly part: string;
  readonly name: string;
  readonly verdict: Verdict;
  /** why it was refused, or what to mind */
  readonly reasons: readonly string[];
  readonly bodies: readonly BodyRow[];
  readonly hardware: readonly HardwareRow[];
  readonly print?: PrintAdvice;
  readonly facts: PairFacts;
  /** none where a check failed */
  readonly files: readonly DigestedFile[];
}

/** What became of a distinct part. */
export type Outcome =
  | { readonly state: 'made'; readonly made: RememberedPart }
  /** its sheet is wrong: every mistake, in one line each */
  | { readonly state: 'wrong'; readonly lines: readonly string[] }
  /** readings of its machine are not there: what is missing, a line each */
  | { readonly state: 'unmeasured'; readonly lines: readonly string[] }
  /** a fault of our own */
  | { readonly state: 'broken'; readonly message: string }
  /** not reached: the run was stopped, or another share makes it */
  | { readonly state: 'missing'; readonly reason: string };

/** A failed check that somebody stands by, as reasons tell it. */
export function acceptedWords({ check, reason }: Report['accepted'][number]): string {
  return `${check}${ACCEPTED}${reason}`;
}

/** Of reasons those that tell what is accepted. */
export function acceptedAmong(reasons: readonly string[]): string[] {
  return reasons.filter((reason) => /^\S+$/.test(reason.split(ACCEPTED, 1)[0]!) && reason.includes(ACCEPTED));
}

const ACCEPTED = ' accepted: ';

/** What a report says that the fleet goes on using. */
export function rememberedPart(
  address: string,
  report: Report,
  facts: PairFacts,
  files: readonly DigestedFile[],
): RememberedPart {
  const telling = report.verdict === 'pass' ? [] : report.checks.filter(({ verdict }) => verdict === report.verdict);
  const accepted = report.accepted.map(acceptedWords);
  return {
    address,
    part: report.part,
    name: report.name,
    verdict: report.verdict,
    reasons: [...accepted, ...telling.map(({ id, message }) => `${id}: ${message}`)],
    bodies: report.bodies,
    hardware: report.hardware,
    ...(report.print ? { print: report.print } : {}),
    facts,
    files,
  };
}
