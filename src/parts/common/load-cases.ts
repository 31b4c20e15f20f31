import { hard, type LimitsInForce, notJudged, type Outcome, valued } from '../../judge/check.js';
import { standingDuration } from '../../mechanics/strength/allowable.js';
import { type LoadDuration, ROOM } from '../../mechanics/strength/plastic.js';
import type { Assumptions } from '../../sheet/assumptions.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { type DutySheet, PULLS, type Pull } from '../../sheet/sections/duty.js';
import { plain, worked } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import { stallForce } from './stall-force.js';

/** Whatever a load goes through. */
export interface Loaded {
  readonly duty: DutySheet;
  readonly screw?: Screw | undefined;
  /** directions in which the standing load must be borne */
  readonly pulls: readonly Pull[];
}

/** One force that a part must bear. */
export interface LoadCase {
  /** N */
  readonly force: number;
  readonly pull: Pull;
  readonly duration: LoadDuration;
}

/** Direction of the standing load: as told or known; both where nobody tells, or the two disagree, and that is listed. */
export function pullsOf(duty: DutySheet, known: Pull | undefined, notes: Assumptions): readonly Pull[] {
  const pull = duty.pull ?? known;
  const disagrees = known !== undefined && pull !== known;
  if (pull !== undefined && !disagrees) return [pull];
  notes.note(
    'duty.pull',
    'away or onto',
    disagrees
      ? `told ${pull}, where a load that weighs on it so mounted goes ${known}: the worse is judged`
      : 'not told whether the load pulls the flange off its carriage: the worse is judged',
  );
  return PULLS;
}

/**
 * The load that stands, and the motor's stall force for a moment in either direction. Of an axis that nobody called upright
 * or level the load may stand for years or change sides, and layers part sooner by the second.
 */
export function loadCases(loaded: Loaded): LoadCase[] {
  const { duty, pulls, screw } = loaded;
  const stall = screw && stallForce({ duty, screw });
  const { axis, load } = duty;
  const standing = axis === undefined ? (['years', 'level'] as const) : [standingDuration(axis)];
  return [
    ...(load === undefined
      ? []
      : pulls.flatMap((pull) => standing.map((duration) => ({ force: load, pull, duration })))),
    ...(stall === undefined ? [] : PULLS.map((pull) => ({ force: stall, pull, duration: 'moment' as const }))),
  ];
}

/** Temperature to judge by: the one told, else room, where what fails fails all the more when it is warm. */
export function judgedTemperature({ temperature }: DutySheet): number {
  return temperature ?? ROOM;
}

/** What a case does to a part, and what the part bears. */
export interface Borne {
  readonly value: number;
  readonly allowed: number;
  /** how it comes about, in words */
  readonly words: string;
}

/**
 * The case that leaves least, against what is allowed in it. Without a load or a temperature only a fail is told: it
 * fails all the more by what is missing.
 * @returns undefined where no case bears on the part
 */
export function judgeCases(
  loaded: Loaded,
  limits: LimitsInForce,
  { borne, cure }: { readonly borne: (one: LoadCase) => Borne | undefined; readonly cure: string },
): Outcome | undefined {
  const { duty } = loaded;
  const rows = loadCases(loaded).flatMap((one) => {
    const found = borne(one);
    return found ? [{ ...found, one }] : [];
  });
  const missing = missingOf(duty);
  if (rows.length === 0) return duty.load === undefined ? notJudged(...missing) : undefined;
  const worst = rows.reduce((a, b) => (usedOf(b) > usedOf(a) ? b : a));
  const own = hard({ max: worst.allowed });
  const { max = worst.allowed } = limits.of(own).pass;
  const fails = worst.value > max;
  if (missing.length > 0 && !fails) return notJudged(...missing);
  return valued(
    exactly(worst.value),
    `${worst.words}; ${caseWords(worst.one)} it may bear ${worked(max, 'MPa')} MPa at ${plain(judgedTemperature(duty), 0)} °C${fails ? `; ${cureOf(worst.one, max, cure)}` : ''}`,
    own,
  );
}

/** What helps in a case: a plastic that bears nothing in the heat is helped by no size. */
function cureOf({ duration }: LoadCase, allowed: number, cure: string): string {
  if (allowed <= 0) return 'less heat, or a plastic that stands it';
  return duration === 'moment' ? `take less motor current, ${cure}` : cure;
}

/** What a strength cannot be judged without, as fields of the sheet. */
export function missingOf(duty: DutySheet): string[] {
  return (['load', 'temperature'] as const)
    .filter((field) => duty[field] === undefined)
    .map((field) => `duty.${field}`);
}

function usedOf({ value, allowed }: Borne): number {
  return usedShare(value, allowed);
}

/** Share that a stress takes of what is allowed: none where nothing is asked, endless where something is asked of nothing. */
export function usedShare(stress: number, allowed: number): number {
  return stress > 0 ? stress / allowed : 0;
}

/** A case in words: whence the force, and for how long. */
export function caseWords({ force, duration }: LoadCase): string {
  const times = {
    years: 'standing for years',
    'thousand-hours': 'standing for 1,000 hours',
    level: 'for 1,000 hours, back and forth,',
    hour: 'standing for an hour',
    repeated: 'again and again',
    moment: 'for a moment, the motor stalled,',
  };
  return `under ${plain(force, 0)} N ${times[duration]}`;
}

/** A crash is so much more than a stall: the axis has its swing besides. @source common-practice */
const CRASH = 2;

/** What a crash against the end of travel asks of a part, and what the part bears for a moment. */
export interface Crash {
  /** N */
  readonly force: number;
  readonly temperature: number;
}

/**
 * The weakest of what a crash goes through, as the share of what it bears for a moment that the crash takes.
 * Without motor or screw it is an open question: nobody knows what hits the end.
 */
export function judgeCrash(
  { duty, screw }: Loaded,
  max: number,
  shares: (crash: Crash) => readonly (readonly [what: string, share: number])[],
): Outcome {
  const stall = screw && stallForce({ duty, screw });
  if (stall === undefined) {
    const torque = duty.motor?.torque === undefined ? ['duty.motor.torque'] : [];
    return notJudged(...(screw ? [] : ['screw']), ...torque);
  }
  const force = CRASH * stall;
  const rows = shares({ force, temperature: judgedTemperature(duty) });
  const [what, share] = rows.reduce((worst, next) => (next[1] > worst[1] ? next : worst));
  if (duty.temperature === undefined && share <= max) return notJudged('duty.temperature');
  const cure = share > max ? '; fit end stops that stop the motor, or take less motor current' : '';
  return valued(
    exactly(share),
    `driven against its end the motor gives up to ${plain(force, 0)} N, twice its stall force, ${share > 1 ? `and ${what} may break at ${plain(force / share, 0)} N` : `which ${what} can bear`}${cure}`,
  );
}
