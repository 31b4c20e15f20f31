import { type CheckFacts, notJudged, type Outcome, told } from '../../judge/check.js';
import { plain } from '../../units/format.js';
import { type AxialPath, isUpright, ownWeight } from './axial-path.js';

/** What the check of every part beside a thrust bearing shares. */
export const BOTH_WAYS = {
  title: 'What holds the screw the other way',
  unit: '',
  source: 'common practice',
  moves: 'pair, mounting, duty.load, duty.upward, duty.span',
  grave: true,
} as const satisfies Partial<CheckFacts>;

/** What pushes a screw off its thrust bearing. */
export interface OtherWay {
  /** undefined where nobody tells [N] */
  readonly force?: number;
  readonly words: string;
}

/**
 * What pushes a screw off a thrust bearing, which carries one way: a level screw pushes both ways, one that stands or hangs is lifted by work that
 * is stronger than what weighs on it.
 *
 *     F = duty.upward − duty.load − weight of the screw; level: duty.load
 *
 * @returns undefined where nothing does, or nobody tells
 * @source common-practice
 */
export function otherWay(axial: AxialPath): OtherWay | undefined {
  const { mounting, load, upward = 0 } = axial;
  if (mounting === 'horizontal')
    return { ...(load === undefined ? {} : { force: load }), words: 'a level screw pushes both ways' };
  // what nobody tells may be nothing
  const weight = (load ?? 0) + (axial.span === undefined ? 0 : ownWeight(axial).force);
  if (!isUpright(mounting) || upward <= weight) return undefined;
  return {
    force: upward - weight,
    words: `the work lifts the screw with ${plain(upward, 1)} N of which ${plain(weight, 1)} N weigh on it`,
  };
}

/** Whether a second collar holds what is pushed the other way. */
export function judgeBothWays({ words }: OtherWay, isPaired: boolean | undefined): Outcome {
  if (isPaired) return told('pass', `a second collar on a bearing of its own; ${words}`);
  if (isPaired === undefined) return notJudged('pair');
  return told(
    'fail',
    `nothing: a thrust bearing carries one way, and ${words}; put a second collar on a bearing of its own on the other side of what it stands in (pair: yes)`,
  );
}

/** The same beside a joint: it asks where the motor is and what lifts a screw. @param carries what else carries the other way, in words */
export function judgeBesideJoint(
  { axial, isPaired }: { readonly axial: AxialPath; readonly isPaired?: boolean },
  carries?: (pushed: OtherWay) => string | undefined,
): Outcome | undefined {
  // a holder that locates the screw carries both ways
  if (!axial.thrustBearing || axial.locatingHolder) return undefined;
  if (axial.mounting === undefined && !isPaired) return notJudged('mounting');
  const pushed = otherWay(axial);
  if (!pushed) return isPaired || axial.upward !== undefined ? undefined : notJudged('duty.upward');
  const besides = isPaired ? undefined : carries?.(pushed);
  return besides === undefined ? judgeBothWays(pushed, isPaired) : told('pass', besides);
}
