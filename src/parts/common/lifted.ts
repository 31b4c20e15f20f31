import { type Check, type CheckFacts, type LimitsInForce, type Outcome, VERDICTS } from '../../judge/check.js';
import { margin } from '../../judge/judge.js';
import { verdictOf } from '../../judge/run-checks.js';
import type { Assumptions } from '../../sheet/assumptions.js';
import { type CarriedDuty, PULLS, type Pull } from '../../sheet/sections/duty.js';
import { plain } from '../../units/format.js';

/**
 * Force with which work pushes what a nut carries up against its other flank; none on an axis that lies.
 *
 *     F = upward − load
 *
 * @param duty.load   what weighs on the nut, none where it is not told  [N]
 * @param duty.upward with which the work lifts it  [N]
 * @returns F, 0 where more weighs on it  [N]
 * @source derived: forces along the screw
 * @example liftOf({ axis: 'vertical', load: 20, upward: 120 }) // 100
 */
export function liftOf({ axis, load = 0, upward = 0 }: CarriedDuty): number {
  return axis === 'horizontal' ? 0 : Math.max(0, upward - load);
}

/** The duty of what the work lifts: its force comes and goes, as on a level axis; undefined where the weight keeps it down. */
export function liftedDuty(duty: CarriedDuty): CarriedDuty | undefined {
  const load = liftOf(duty);
  return load === 0 ? undefined : { ...duty, axis: 'horizontal', load };
}

/** Of an upright axis that tells nothing of work that lifts, what is taken for granted. */
export function noteLift({ axis, upward }: CarriedDuty, notes: Assumptions): void {
  if (axis !== 'vertical' || upward !== undefined) return;
  notes.note('duty.upward', 0, 'no work, such as a drill that is pushed, lifts what the nut carries');
}

/** What the load goes through on its way from the nut. */
interface Carried {
  readonly duty: CarriedDuty;
  readonly pulls: readonly Pull[];
}

/** The same part as the work lifts it, which turns the pull over; undefined where the weight keeps it down. */
export function asLifted<Design extends Carried>(design: Design): Design | undefined {
  const duty = liftedDuty(design.duty);
  return duty && { ...design, duty, pulls: design.pulls.map(turnedOver) };
}

function turnedOver(pull: Pull): Pull {
  return pull === PULLS[0] ? PULLS[1] : PULLS[0];
}

/**
 * Checks that hang on the load, of a part that the work may lift: each judges what weighs on it and what lifts it, and tells the worse.
 *
 * @param checks of the kind; those that name neither load nor pull among what moves them stay as they are
 * @param lifted the design as the work lifts it
 */
export function liftedToo<Design extends { readonly duty: CarriedDuty }>(
  checks: readonly Check<Design>[],
  lifted: (design: Design) => Design | undefined,
): Check<Design>[] {
  return checks.map((check) => (hangsOnLoad(check) ? worseOfBoth(check, lifted) : check));
}

function hangsOnLoad({ moves }: { readonly moves: string }): boolean {
  return /\bduty\.(load|pull)\b/.test(moves);
}

function worseOfBoth<Design extends { readonly duty: CarriedDuty }>(
  check: Check<Design>,
  lifted: (design: Design) => Design | undefined,
): Check<Design> {
  return {
    ...check,
    moves: check.moves.replace(/\bduty\.(load|pull)\b/, '$&, duty.upward'),
    run: (design, limits) => {
      const standing = check.run(design, limits);
      const up = lifted(design);
      const found = up && check.run(up, limits);
      return found && isWorse(check, { found, than: standing, limits }) ? inWords(found, design.duty) : standing;
    },
  };
}

interface Compared {
  readonly found: Outcome;
  readonly than: Outcome | undefined;
  readonly limits: LimitsInForce;
}

/** By its verdict; of one verdict by the share of its limit that is left. */
function isWorse(check: CheckFacts, { found, than, limits }: Compared): boolean {
  if (than === undefined) return true;
  const rank = (outcome: Outcome) => VERDICTS.indexOf(verdictOf(check, outcome, limits));
  if (rank(found) !== rank(than)) return rank(found) > rank(than);
  return roomOf(check, found, limits) < roomOf(check, than, limits);
}

/** Without a figure a pass has all room there is; of anything else it cannot be said, and nothing is less than that. */
function roomOf(check: CheckFacts, outcome: Outcome, limits: LimitsInForce): number {
  if (outcome.kind !== 'value')
    return outcome.kind === 'told' && outcome.verdict === 'pass' ? Number.POSITIVE_INFINITY : Number.NaN;
  const { pass } = limits.of(outcome.limits ?? check.limits ?? { pass: {} });
  return (margin(outcome.value.likely, pass) ?? Number.NaN) / Math.abs(pass.max ?? pass.min ?? 1);
}

function inWords(outcome: Outcome, duty: CarriedDuty): Outcome {
  if (outcome.kind === 'not-judged') return outcome;
  const more = plain(liftOf(duty), 1);
  return { ...outcome, message: `lifted by the work, with ${more} N more than weighs on it: ${outcome.message}` };
}
