import type { Verdict } from '../judge/check.js';
import { boundsText } from '../output/figures.js';
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

/** What somebody stands by, as reasons tell it: failed checks that are accepted, and those that a limit of the sheet lets pass. */
export function stoodBy({ accepted, checks }: Pick<Report, 'accepted' | 'checks'>): string[] {
  const eased = checks.filter(({ usual_verdict }) => usual_verdict === 'fail');
  return [
    ...accepted.map(({ check, reason }) => `${check} accepted: ${reason}`),
    ...eased.map(({ id, replaced_limit = {}, unit }) =>
      `${id} by a limit of the sheet: usually ${boundsText(replaced_limit)} ${unit}`.trimEnd(),
    ),
  ];
}

/** Of reasons those that tell what somebody stands by. */
export function stoodByAmong(reasons: readonly string[]): string[] {
  return reasons.filter((reason) => /^\S+ (accepted|by a limit of the sheet): /.test(reason));
}

/** What a report says that the fleet goes on using. */
export function rememberedPart(
  address: string,
  report: Report,
  facts: PairFacts,
  files: readonly DigestedFile[],
): RememberedPart {
  const telling = report.verdict === 'pass' ? [] : report.checks.filter(({ verdict }) => verdict === report.verdict);
  return {
    address,
    part: report.part,
    name: report.name,
    verdict: report.verdict,
    reasons: [...stoodBy(report), ...telling.map(({ id, message }) => `${id}: ${message}`)],
    bodies: report.bodies,
    hardware: report.hardware,
    ...(report.print ? { print: report.print } : {}),
    facts,
    files,
  };
}
