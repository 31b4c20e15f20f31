import { stepsPerMm } from '../mechanics/travel.js';
import { travelTime } from '../mechanics/travel-time.js';
import { fault } from '../units/faults.js';
import { rounded } from '../units/format.js';
import { type PairedScrew, type PairVerdict, screwsOfOneAxisMayDiffer } from './axis-pair.js';
import { type ControllerChange, controllerChange } from './controller-change.js';
import { driveNumbers } from './drive-numbers.js';
import { type Duty, fullDuty } from './duty.js';
import { type Levelling, levelling, type MotorPlace } from './levelling.js';
import type { DriveNumbers } from './numbers.js';
import { PURPOSES, type Purpose, type RankedScrew, rankScrews } from './rank-screws.js';
import { type DriveScrew, screwName } from './screw.js';
import { endDifference } from './turn.js';

/** What a comparison is made for. */
export interface ComparisonOptions {
  /** what the screws are wanted for */
  readonly purpose?: Purpose | undefined;
  /** the screw that is taken out; the first of several unless given */
  readonly from?: DriveScrew | undefined;
  /** what the controller held with it [1/mm]; worked out from the duty unless given */
  readonly oldStepsPerMm?: number | undefined;
  /** how much one end of an axis on two screws is higher than the other [mm]; 0.1 unless given */
  readonly endDifference?: number | undefined;
  /** where the motors sit */
  readonly motor?: MotorPlace | undefined;
  /** moves whose time is compared; the duty's feed is that of the old screw */
  readonly lifts?: Lifts | undefined;
}

/** A change from one screw to another. */
export type NamedChange = ControllerChange & {
  readonly from: string;
  readonly to: string;
  /** feed of the old screw, and of the new one at the same speed of the motor [mm/s] */
  readonly feed?: { readonly old: number; readonly new: number };
  /** time of all lifts at those feeds [s]; saved is below 0 where the swap costs time */
  readonly lifts?: { readonly count: number; readonly old: number; readonly new: number; readonly saved: number };
};

/** Moves whose time is asked for. */
export interface Lifts {
  readonly count: number;
  /** [mm] */
  readonly height: number;
  /** [mm/s²] */
  readonly acceleration: number;
}

/** Screws side by side. */
export interface Comparison {
  /** in the order given */
  readonly screws: readonly DriveNumbers[];
  /** what the controller must be told when one screw is replaced by another; empty where there is only one */
  readonly changes: readonly NamedChange[];
  /** whether the first screw may share an axis with another; empty for one screw */
  readonly pairs: readonly (PairVerdict & { readonly a: string; readonly b: string })[];
  /** what a difference in height between the two ends of an axis is at each screw's coupling */
  readonly end_difference: {
    /** [mm] */
    readonly difference: number;
    /** [degrees] */
    readonly turns: readonly (Levelling & { readonly designation: string })[];
  };
  readonly purpose?: Purpose;
  /** best first; only with a purpose */
  readonly ranking?: readonly RankedScrew[];
}

const USUAL_END_DIFFERENCE = 0.1;

/**
 * Drive numbers of several screws side by side, what changing from one to another means, what levels an axis on two
 * screws, and with a purpose their ranking.
 *
 * @param screws   one screw or more, lengths [mm], flank angle [degrees]; a clearance of its own goes before the duty's
 * @param duty     load [N], span [mm], motor torque [N·mm], feed [mm/s] and the like; the same for all
 * @param options  purpose, screw taken out, old steps per mm [1/mm], difference between the ends [mm]
 * @returns plain data, ready for JSON
 * @throws InputError  no screw, an unknown purpose, or a value outside its range
 * @source common-practice: choosing a lead
 * @example compareScrews([driveScrewOf(parseDesignation('Tr8x2'))], {}).screws[0].full_step // 0.01
 */
export function compareScrews(screws: readonly PairedScrew[], duty: Duty, options: ComparisonOptions = {}): Comparison {
  const { purpose, endDifference: difference = USUAL_END_DIFFERENCE } = options;
  const [first, ...others] = screws;
  if (first === undefined) throw fault('screws', '', 'must be one screw or more');
  if (purpose !== undefined && !PURPOSES.includes(purpose)) {
    throw fault('purpose', purpose, `must be one of ${PURPOSES.join(', ')}`);
  }
  const numbers = screws.map((screw) => driveNumbers(screw, withClearances(duty, screw)));
  return {
    screws: numbers,
    changes: changesOf(screws, duty, options),
    pairs: others.map((screw) => ({
      a: screwName(first),
      b: screwName(screw),
      ...screwsOfOneAxisMayDiffer(first, screw),
    })),
    end_difference: {
      difference,
      turns: screws.map((screw) => ({
        designation: screwName(screw),
        ...levelled(screw, difference, options.motor),
      })),
    },
    ...(purpose !== undefined && { purpose, ranking: rankScrews(numbers, purpose) }),
  };
}

function levelled(screw: DriveScrew, difference: number, motor: MotorPlace | undefined): Levelling {
  const found = levelling(screw, difference, motor);
  return { ...found, degrees: rounded(endDifference({ difference, lead: screw.lead })) };
}

function withClearances(duty: Duty, screw: PairedScrew): Duty {
  return {
    ...duty,
    diametralClearance: screw.diametralClearance ?? duty.diametralClearance,
    axialClearance: screw.axialClearance ?? duty.axialClearance,
  };
}

function changesOf(screws: readonly DriveScrew[], duty: Duty, options: ComparisonOptions): readonly NamedChange[] {
  const from = options.from ?? screws[0]!;
  const others = options.from === undefined ? screws.slice(1) : screws;
  const oldStepsPerMm = options.oldStepsPerMm ?? stepsPerMm({ ...fullDuty(duty), lead: from.lead });
  return others.map((screw) => ({
    from: screwName(from),
    to: screwName(screw),
    ...controllerChange({
      oldLead: from.lead,
      newLead: screw.lead,
      oldStepsPerMm,
      reverses: from.hand !== screw.hand,
    }),
    ...feedsOf(from, screw, duty.feed, options.lifts),
  }));
}

/** The feed that the same motor speed gives, and what that does to the time of many moves. */
function feedsOf(
  from: DriveScrew,
  to: DriveScrew,
  feed: number | undefined,
  lifts: Lifts | undefined,
): Pick<NamedChange, 'feed' | 'lifts'> {
  if (feed === undefined) return {};
  const after = (feed * to.lead) / from.lead;
  const told = { feed: { old: feed, new: rounded(after) } };
  if (lifts === undefined) return told;
  const { count, height, acceleration } = lifts;
  const time = (at: number) => count * travelTime({ distance: height, feed: at, acceleration });
  const [old, now] = [time(feed), time(after)];
  return { ...told, lifts: { count, old: rounded(old), new: rounded(now), saved: rounded(old - now) } };
}
