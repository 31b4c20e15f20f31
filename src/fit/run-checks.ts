import { rounded } from '../units/format.js';
import { halfWidth } from '../units/measured.js';
import type { Bounds, Check, Finding, Limits, Outcome, Verdict } from './check.js';
import { VERDICTS } from './check.js';
import { judge, margin } from './judge.js';

/** Bounds that a sheet puts in place of a check's own, by check id. */
export type LimitChanges = Readonly<Record<string, Bounds>>;

/** Runs every check that applies, in order. */
export function runChecks<Design>(
  checks: readonly Check<Design>[],
  design: Design,
  changes: LimitChanges = {},
): Finding[] {
  return checks.flatMap((check) => {
    const outcome = check.run(design);
    return outcome ? [finding(check, outcome, changes[check.id])] : [];
  });
}

/** The worst verdict of several; an accepted fail counts as a caution. */
export function worst(findings: readonly Pick<Finding, 'verdict' | 'accepted'>[]): Verdict {
  const ranks = findings.map(({ verdict, accepted }) =>
    verdict === 'fail' && accepted !== undefined ? 1 : VERDICTS.indexOf(verdict),
  );
  return VERDICTS[Math.max(0, ...ranks)]!;
}

/** Turns an outcome into a finding, with the sheet's own bounds where it gave some. */
export function finding<Design>(check: Omit<Check<Design>, 'run'>, outcome: Outcome, change?: Bounds): Finding {
  const { id, group, title, unit, source, moves } = check;
  const about = { id, group, title, unit, moves, message: outcome.message };
  if (outcome.kind !== 'value') {
    const verdict = outcome.kind === 'told' ? outcome.verdict : 'caution';
    const value = outcome.kind === 'told' ? (outcome.value ?? null) : null;
    return { ...about, verdict, value, limit: null, margin: null, uncertainty: 0, source };
  }
  const own = outcome.limits ?? check.limits ?? { pass: {} };
  const limits = change ? changed(own, change) : own;
  const { value } = outcome;
  return {
    ...about,
    verdict: judge(value, limits),
    value: rounded(value.likely),
    least: rounded(value.least),
    most: rounded(value.most),
    limit: limits.pass,
    ...(limits.fail && !sameBounds(limits.fail, limits.pass) ? { fail_limit: limits.fail } : {}),
    margin: nullable(margin(value.likely, limits.pass)),
    uncertainty: rounded(halfWidth(value)),
    source: change ? `the sheet (${source} replaced)` : source,
    ...(change ? { replaced_limit: own.pass } : {}),
  };
}

/** The sheet's bounds replace the pass limits; a fail limit moves along when it would be stricter than they are. */
function changed(own: Limits, change: Bounds): Limits {
  const replace = (bound: 'min' | 'max') =>
    own.pass[bound] === undefined ? undefined : (change[bound] ?? own.pass[bound]);
  const pass = bounds(replace('min'), replace('max'));
  if (!own.fail) return { pass };
  const wasHard = sameBounds(own.pass, own.fail);
  const loosest = (mine: number | undefined, theirs: number | undefined, pick: (a: number, b: number) => number) =>
    mine === undefined || theirs === undefined ? mine : pick(mine, theirs);
  const fail = wasHard
    ? pass
    : bounds(loosest(own.fail.min, pass.min, Math.min), loosest(own.fail.max, pass.max, Math.max));
  return { pass, fail };
}

function bounds(min: number | undefined, max: number | undefined): Bounds {
  return { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) };
}

function sameBounds(a: Bounds, b: Bounds): boolean {
  return a.min === b.min && a.max === b.max;
}

function nullable(value: number | undefined): number | null {
  return value === undefined ? null : rounded(value);
}
