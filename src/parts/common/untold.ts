import { type Check, type LimitsInForce, notJudged, type Outcome, VERDICTS } from '../../judge/check.js';
import { verdictOf } from '../../judge/run-checks.js';

/** A figure that the sheet may not tell: its design holds the worst that is usual. */
export interface Untold<Design> {
  /** of the sheet */
  readonly field: string;
  /** the design by the mildest that is usual; undefined where the sheet tells */
  readonly milder: (design: Design) => Design | undefined;
}

/**
 * Checks of a design some of whose figures may not be told. They judge it by the worst that is usual; where that does not pass, and
 * the mildest comes to another verdict, the verdict hangs on what was not told, and that is asked for.
 */
export function askedWhereItHangs<Design>(
  checks: readonly Check<Design>[],
  untold: readonly Untold<Design>[],
): Check<Design>[] {
  return checks.map((check) => askingFor(untold, check));
}

/** The same of one check. */
export function askingFor<Design>(untold: readonly Untold<Design>[], check: Check<Design>): Check<Design> {
  return {
    ...check,
    run: (design, limits) => {
      const worst = check.run(design, limits);
      if (worst === undefined || worst.kind === 'not-judged' || verdictOf(check, worst, limits) === 'pass')
        return worst;
      return hangingOn({ check, design, limits, worst }, untold) ?? worst;
    },
  };
}

interface Judged<Design> {
  readonly check: Check<Design>;
  readonly design: Design;
  readonly limits: LimitsInForce;
  readonly worst: Outcome;
}

/** The open question; undefined where the mildest figures come to the same verdict. */
function hangingOn<Design>(judged: Judged<Design>, untold: readonly Untold<Design>[]): Outcome | undefined {
  const open = untold.filter(({ milder }) => milder(judged.design) !== undefined);
  const found = changedBy(judged, mildestOf(judged.design, open));
  if (!found) return undefined;
  const alone = open.filter((one) => changedBy(judged, mildestOf(judged.design, [one])));
  const asked = alone.length > 0 ? alone : together(judged, open);
  return notJudged(...asked.map(({ field }) => field), ...(found.kind === 'not-judged' ? found.missing : []));
}

/** Figures that change the verdict only together: without any of these the others do not. */
function together<Design>(judged: Judged<Design>, open: readonly Untold<Design>[]): readonly Untold<Design>[] {
  const others = (one: Untold<Design>) => open.filter((other) => other !== one);
  const needed = open.filter((one) => !changedBy(judged, mildestOf(judged.design, others(one))));
  return needed.length > 0 ? needed : open;
}

function mildestOf<Design>(design: Design, open: readonly Untold<Design>[]): Design {
  return open.reduce((one, { milder }) => milder(one) ?? one, design);
}

/** What a check finds of another design, where its verdict is another. */
function changedBy<Design>({ check, limits, worst }: Judged<Design>, milder: Design): Outcome | undefined {
  const found = check.run(milder, limits);
  if (found === undefined) return undefined;
  const isOther = found.kind === 'not-judged' || verdictOf(check, found, limits) !== verdictOf(check, worst, limits);
  return isOther ? found : undefined;
}

/** A figure that the sheet may not tell: its design holds the usual one, or none. */
export interface Usual<Design> {
  /** of the sheet */
  readonly field: string;
  /** the design by the worst that may be; undefined where the sheet tells */
  readonly worse: (design: Design) => Design | undefined;
}

/**
 * Checks that judge a design by what is usual: where the worst that may be comes to a worse verdict, what was not told is asked for;
 * figures that do so only together are asked for together.
 */
export function askedWhereWorse<Design>(
  checks: readonly Check<Design>[],
  usual: readonly Usual<Design>[],
): Check<Design>[] {
  return checks.map((check) => ({
    ...check,
    run: (design, limits) => {
      const found = check.run(design, limits);
      if (found === undefined || found.kind === 'not-judged') return found;
      const rank = (outcome: Outcome) => VERDICTS.indexOf(verdictOf(check, outcome, limits));
      const missing = worsening(
        usual.filter(({ worse }) => worse(design) !== undefined),
        (some) => {
          const outcome = check.run(worstOf(design, some), limits);
          return outcome !== undefined && rank(outcome) > rank(found);
        },
      );
      return missing.length === 0 ? found : notJudged(...missing.map(({ field }) => field));
    },
  }));
}

function worstOf<Design>(design: Design, some: readonly Usual<Design>[]): Design {
  return some.reduce((one, { worse }) => worse(one) ?? one, design);
}

/** Those that make a verdict worse, each by itself; else those without any of which all together do not. */
function worsening<One>(open: readonly One[], isWorse: (some: readonly One[]) => boolean): readonly One[] {
  const alone = open.filter((one) => isWorse([one]));
  if (alone.length > 0 || open.length < 2 || !isWorse(open)) return alone;
  const needed = open.filter((one) => !isWorse(open.filter((other) => other !== one)));
  return needed.length > 0 ? needed : open;
}
