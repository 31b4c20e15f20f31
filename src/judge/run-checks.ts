import { rounded } from '../units/format.js';
import { halfWidth } from '../units/measured.js';
import type { Bounds, Check, CheckFacts, Finding, Limits, LimitsInForce, Outcome, Verdict, Word } from './check.js';
import { VERDICTS } from './check.js';
import { judge, margin, wordOf } from './judge.js';
import { limitsInForce } from './limits-in-force.js';

/** Bounds that a sheet puts in place of a check's own, by check id. */
export type LimitChanges = Readonly<Record<string, Bounds>>;

/** Runs every check that applies, in order. */
export function runChecks<Design>(
  checks: readonly Check<Design>[],
  design: Design,
  changes: LimitChanges = {},
): Finding[] {
  return checks.flatMap((check) => {
    const change = changes[check.id];
    const outcome = check.run(design, limitsInForce(check.limits, change));
    return outcome ? [finding(check, outcome, change)] : [];
  });
}

/** The verdict that an outcome comes to by the limits in force. */
export function verdictOf(
  { limits: own }: Pick<CheckFacts, 'limits'>,
  outcome: Outcome,
  limits: LimitsInForce,
): Verdict {
  if (outcome.kind === 'not-judged') return 'caution';
  if (outcome.kind === 'told') return outcome.verdict;
  return judge(outcome.value, limits.of(outcome.limits ?? own ?? { pass: {} }));
}

/** The worst verdict of several; an accepted fail counts as a caution. */
export function worst(findings: readonly Pick<Finding, 'verdict' | 'accepted'>[]): Verdict {
  const ranks = findings.map(({ verdict, accepted }) =>
    verdict === 'fail' && accepted !== undefined ? 1 : VERDICTS.indexOf(verdict),
  );
  return VERDICTS[Math.max(0, ...ranks)]!;
}

const WORD_OF_VERDICT: Readonly<Record<Verdict, Word>> = { pass: 'yes', caution: 'but', fail: 'no' };

/** Turns an outcome into a finding, with the sheet's own bounds where it gave some. */
export function finding(check: CheckFacts, outcome: Outcome, change?: Bounds): Finding {
  const { id, group, question, title, unit, source, moves, grave, trifle } = check;
  const marks = { ...(grave ? { grave } : {}), ...(trifle ? { trifle } : {}) };
  const about = { id, group, question, title, unit, moves, message: outcome.message };
  const without = { limit: null, fail_limit: null, margin: null, uncertainty: 0, source, ...marks };
  if (outcome.kind === 'not-judged')
    return { ...about, verdict: 'caution', word: 'not-told', value: null, ...without, missing: outcome.missing };
  if (outcome.kind === 'told') {
    const { verdict, value } = outcome;
    const figure = value === undefined || isUnbounded(id, [value]) ? null : value;
    return { ...about, verdict, word: WORD_OF_VERDICT[verdict], value: figure, ...without };
  }
  const own = outcome.limits ?? check.limits ?? { pass: {} };
  const limits = limitsInForce(own, change);
  const { value } = outcome;
  const {
    margin: room,
    uncertainty,
    ...measured
  } = isUnbounded(id, [value.least, value.likely, value.most])
    ? UNBOUNDED
    : {
        value: rounded(value.likely),
        least: rounded(value.least),
        most: rounded(value.most),
        margin: nullable(margin(value.likely, limits.pass)),
        uncertainty: rounded(halfWidth(value)),
      };
  return {
    ...about,
    verdict: judge(value, limits),
    word: wordOf(value, limits),
    ...measured,
    limit: roundedBounds(limits.pass),
    fail_limit: limits.fail ? roundedBounds(limits.fail) : null,
    margin: room,
    uncertainty,
    source: change ? `the sheet (${source} replaced)` : source,
    ...(change ? replaced(own, judge(value, own), judge(value, limits)) : {}),
    ...marks,
  };
}

/** What a sheet's bounds stand in place of, and the verdict that they spare the part. */
function replaced(own: Limits, usual: Verdict, verdict: Verdict): Pick<Finding, 'replaced_limit' | 'usual_verdict'> {
  const isSpared = VERDICTS.indexOf(usual) > VERDICTS.indexOf(verdict);
  return { replaced_limit: roundedBounds(own.pass), ...(isSpared ? { usual_verdict: usual } : {}) };
}

/** Nothing that a report could hold: the message tells why, the verdict is that of the value as it is. */
const UNBOUNDED = { value: null, margin: null, uncertainty: 0 } as const;

/** Whether a value has no bound, such as the stress in a section that is not there. */
function isUnbounded(id: string, figures: readonly number[]): boolean {
  if (figures.some(Number.isNaN)) throw new Error(`${id}: its value is not a number`);
  return !figures.every(Number.isFinite);
}

/** As values are: the last digits of a worked-out limit hang on the engine. */
function roundedBounds({ min, max }: Bounds): Bounds {
  return {
    ...(min === undefined ? {} : { min: rounded(min) }),
    ...(max === undefined ? {} : { max: rounded(max) }),
  };
}

function nullable(value: number | undefined): number | null {
  return value === undefined ? null : rounded(value);
}
