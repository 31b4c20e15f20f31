import {
  type Check,
  hard,
  type LimitsInForce,
  notJudged,
  type Outcome,
  soft,
  told,
  valued,
} from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { columnLoad } from '../../../mechanics/column.js';
import { endSideForce } from '../../../mechanics/end-side-force.js';
import { REFERENCE_TEMPERATURE, STEEL_EXPANSION } from '../../../mechanics/print/thermal.js';
import { whirlSpeed } from '../../../mechanics/whirl.js';
import { plain } from '../../../units/format.js';
import { exactly, type Measured } from '../../../units/measured.js';
import {
  COLUMN,
  type Driven,
  judgeColumn,
  judgeSag,
  judgeWhirl,
  SAG,
  SAG_DIAMETERS,
  WHIRL,
} from '../../common/drive-limits.js';
import { endsOf, judgeLocating, locatingPlaces } from '../../common/locating.js';
import { slidingLimits } from '../../common/sliding-limits.js';
import type { EndHolderDesign } from '../dimensions.js';
import { screwPlay } from './fit.js';

type HolderCheck = Check<EndHolderDesign>;
const about = { group: 'axis', question: 'turns', source: 'common practice' } as const;

/** A bush or bearing with less play than this leads the screw sideways, on the diameter. @source common-practice */
const LEADS = 0.1;

/** A screw that is led at motor, nut and end has more supports than it can follow. */
const overConstraint: HolderCheck = {
  ...about,
  id: 'over-constraint',
  title: 'Supports that are too many',
  unit: '',
  limits: soft({ max: 0 }, { max: 1 }),
  moves: 'nut, coupling, role, bore',
  run: (design, { pass }) => {
    const { role, coupling, nut } = design;
    if (role === 'free') return told('pass', 'a guard ring leads nothing');
    const missing = [...(coupling === undefined ? ['coupling'] : []), ...(nut === undefined ? ['nut'] : [])];
    if (missing.length > 0) return notJudged(...missing);
    const stiff = [
      ...(coupling === 'flexible' ? [] : [`${coupling} coupling`]),
      ...(nut === 'rigid' ? ['rigid nut'] : []),
      ...(screwPlay(design).least < LEADS ? ['holder without play'] : []),
    ];
    const excess = Math.max(0, stiff.length - 1);
    const cure = !keeps(excess, pass)
      ? '; let the nut float, take a coupling that gives, or a guard ring (role: free)'
      : '';
    return valued(exactly(excess), `${stiff.length === 0 ? 'nothing' : stiff.join(', ')} leads the screw${cure}`);
  },
};

/**
 * Exactly one place carries the screw along its axis.
 *
 *     n = holder (role: locating) + thrust bearing at the motor end, else rigid coupling + disc coupling above its motor, 1 for each
 */
const locating: HolderCheck = {
  ...about,
  id: 'locating-bearings',
  question: 'holds',
  title: 'Places that carry the screw along its axis',
  unit: '',
  limits: hard({ min: 1, max: 1 }),
  moves: 'role, coupling, thrust_bearing, mounting',
  grave: true,
  run: ({ role, coupling, thrustBearing, bearingUntold, mounting }, { pass }) => {
    const missing = [
      ...(coupling === undefined ? ['coupling'] : []),
      ...(coupling === 'disc' && mounting === undefined ? ['mounting'] : []),
    ];
    if (missing.length > 0) return notJudged(...missing);
    const placesWith = (bearing: boolean) =>
      locatingPlaces({
        holders: role === 'locating' ? ['this holder'] : [],
        thrustBearing: bearing,
        joint: coupling,
        mounting,
      });
    const places = placesWith(thrustBearing);
    if (bearingUntold && keeps(places.length, pass) && !keeps(placesWith(true).length, pass))
      return notJudged('thrust_bearing');
    return judgeLocating(places, pass, 'a thrust bearing and a collar at the motor end, or role: locating here');
  },
};

/** A bent screw that is held at its end sends its run-out to the nut. */
const wobble: HolderCheck = {
  ...about,
  id: 'screw-wobble',
  title: 'Run-out forced straight',
  unit: 'mm',
  moves: 'runout, role, bore, nut_gap',
  run: (design, inForce) => {
    const { role, runout } = design;
    if (runout === undefined) return notJudged('runout');
    const free = role === 'free';
    const own = free ? hard({ max: 0 }) : soft({ max: 0.05 }, { max: 0.15 });
    const forced = forcedStraight(runout, screwPlay(design));
    const holds = keeps(forced.most, inForce.of(own).pass);
    if (free) {
      const cure = holds ? '' : ' and may strike the ring; take a wider one';
      return valued(forced, `the end swings ${plain(runout, 2)} mm to each side${cure}`, own);
    }
    const force = sideForce(design, forced.most);
    const pushed = force === undefined ? '' : `, ${plain(force, 1)} N sideways on the nut at the end of its travel`;
    const cure = holds ? '' : '; leave the end free (role: free), or straighten the screw';
    return valued(forced, `run-out ${plain(runout, 2)} mm${pushed}${cure}`, own);
  },
};

/** What the play to each side does not take up of a run-out. */
function forcedStraight(runout: number, play: Measured): Measured {
  const left = (across: number) => Math.max(0, runout - across / 2);
  return { least: left(play.most), likely: left(play.likely), most: left(play.least) };
}

function sideForce({ screw, nut_gap, duty }: EndHolderDesign, runout: number): number | undefined {
  if (nut_gap === undefined || nut_gap === 0 || duty.span === undefined || duty.span <= nut_gap) return undefined;
  return endSideForce({
    rootDiameter: screw.minor.likely,
    runout,
    toHolder: nut_gap,
    toMotor: duty.span - nut_gap,
  });
}

/** Room that the nut leaves at the end of travel: of a ring in mm, else in screw diameters. @source common-practice */
const GAPS = { ring: 5, loose: 3, fitted: 8 };

/** Room that a holder wants between itself and the nut at the end of travel, and whether it leads the screw closely [mm]. */
export function nutGapWanted(design: EndHolderDesign): { readonly fitted: boolean; readonly least: number } {
  const { role, nut, held } = design;
  const fitted = screwPlay(design).least < LEADS && nut !== 'floating';
  const least = role === 'free' ? GAPS.ring : (fitted ? GAPS.fitted : GAPS.loose) * held.diameter.likely;
  return { fitted, least };
}

/** Near its holder a screw cannot bend any more. */
const nutDistance: HolderCheck = {
  ...about,
  id: 'nut-distance',
  title: 'From nut to holder, end of travel',
  unit: 'mm',
  moves: 'nut_gap, nut, bore',
  run: (design, inForce) => {
    const { role, nut_gap: gap } = design;
    if (gap === undefined) return notJudged('nut_gap');
    const { fitted, least } = nutGapWanted(design);
    const own = soft({ min: least });
    const { pass } = inForce.of(own);
    const cure = keeps(gap, pass)
      ? ''
      : '; the end of travel goes tight: stop the axis sooner, or give nut or end more play';
    return valued(
      exactly(gap),
      `${plain(pass.min ?? 0, 0)} mm are wanted ${role === 'free' ? 'before a guard ring' : fitted ? 'with a screw that is led closely' : 'with play at nut or end'}${cure}`,
      own,
    );
  },
};

/** Play along the screw that frame and heat need beside its growth, mm. @source common-practice */
const END_PLAY = 0.5;

/**
 * A warm screw is longer.
 *
 *     left = end_room − 12·10⁻⁶/K · duty.span · (duty.temperature − 20 °C), no growth below 20 °C
 */
const endRoom: HolderCheck = {
  ...about,
  id: 'end-room',
  title: 'Room along the screw, warm',
  unit: 'mm',
  limits: soft({ min: END_PLAY }, { min: 0 }),
  moves: 'end_room, duty.span, duty.temperature',
  run: ({ role, end_room: room, duty: { span, temperature } }, { pass }) => {
    if (role === 'locating') return undefined;
    const missing = [
      ...(room === undefined ? ['end_room'] : []),
      ...(span === undefined ? ['duty.span'] : []),
      ...(temperature === undefined ? ['duty.temperature'] : []),
    ];
    if (room === undefined || span === undefined || temperature === undefined) return notJudged(...missing);
    const growth = STEEL_EXPANSION * span * Math.max(0, temperature - REFERENCE_TEMPERATURE);
    const left = room - growth;
    const cure = keeps(left, pass) ? '' : '; shorten the end, or take away what stops it';
    return valued(exactly(left), `it grows by ${plain(growth, 2)} mm${cure}`);
  },
};

/** What asks for a held end beside its sag: shares of whirl and buckling. @source common-practice */
const NEED = { whirl: 0.6, column: 0.5 };

/** Whether the end wants holding at all: below 1 a free one does as well. */
const needed: HolderCheck = {
  ...about,
  id: 'holding-needed',
  title: 'Need for a held end',
  unit: '',
  moves: 'role, duty.span, duty.feed, duty.load, mounting',
  trifle: true,
  run: ({ role, screw, mounting, duty }, inForce) => {
    const { span, feed, load } = duty;
    const missing = [
      ...(mounting === undefined ? ['mounting'] : []),
      ...(span === undefined ? ['duty.span'] : []),
      ...(feed === undefined ? ['duty.feed'] : []),
      ...(load === undefined ? ['duty.load'] : []),
    ];
    if (mounting === undefined || span === undefined || feed === undefined || load === undefined)
      return notJudged(...missing);
    const bar = { rootDiameter: screw.leastRoot.cut, span, ends: 'fixed-free' } as const;
    const asks: readonly (readonly [string, number])[] = [
      ['its sag', mounting === 'horizontal' ? span / (SAG_DIAMETERS['fixed-free'] * screw.major.likely) : 0],
      ['its speed', (60 * feed) / screw.lead / (NEED.whirl * whirlSpeed(bar))],
      ['its load', load / (NEED.column * columnLoad(bar))],
    ];
    const [what, most] = asks.reduce((a, b) => (b[1] > a[1] ? b : a));
    const free = role === 'free';
    const own = free ? soft({ max: 1 }, { max: 1 / NEED.whirl }) : soft({ min: 1 });
    const advice = free
      ? '; hold it (role: guiding)'
      : '; a short stiff screw runs better with its end free: a guard ring (role: free)';
    const cure = keeps(most, inForce.of(own).pass) ? '' : advice;
    return valued(exactly(most), `${what} asks most, ${plain(100 * most, 0)} % of where an end is held${cure}`, own);
  },
};

/** Turns a minute that a screw makes in a plain bush before it squeaks and wears it out. @source common-practice */
const BUSH_TURNS = 200;

/** Times as fast as is usual, from which on it fails. @source common-practice */
const TOO_FAST = 3;

/**
 * Crests of a screw run on the plastic of a plain bush: a thick one slides faster at the same turns, and is held to what the plastic bears
 * as a nut is.
 *
 *     n = 60 · feed / lead; at most 200 rpm, and 60·v / (π·⌀screw); v = sliding speed that the plastic bears
 */
const bushSpeed: HolderCheck = {
  ...about,
  id: 'bush-speed',
  title: 'Speed of the screw in its bush',
  unit: 'rpm',
  moves: 'bearing, duty.feed, role, material',
  run: ({ bearing, role, screw, held, material, duty: { feed } }, inForce) => {
    if (bearing || role === 'free') return undefined;
    if (feed === undefined) return notJudged('duty.feed');
    const turns = (60 * feed) / screw.lead;
    const around = Math.PI * held.diameter.likely;
    const turnsAt = (speed: number) => (60 * speed) / around;
    const { usual, most } = slidingLimits(material);
    const own = soft(
      { max: Math.min(BUSH_TURNS, turnsAt(usual)) },
      { max: Math.min(TOO_FAST * BUSH_TURNS, turnsAt(most)) },
    );
    const cure = keeps(turns, inForce.of(own).pass)
      ? ''
      : '; take a ball bearing (bearing), a slower feed, or leave the end free (role: free)';
    const slides = `the screw slides on ${material.name} with ${plain((around * turns) / 60, 0)} mm/s`;
    return valued(exactly(turns), `${slides}, which bears ${plain(usual, 0)} mm/s${cure}`, own);
  },
};

/**
 * A screw that is held at this end, judged: its ends are those that are told, unless they say that it is free, or as coupling and holder
 * hold them. One bearing clamps nothing, whatever is told.
 */
function ofHeld(judge: (driven: Driven, limits: LimitsInForce) => Outcome | undefined): HolderCheck['run'] {
  return ({ role, coupling, screw, duty }, limits) => {
    if (role === 'free') return undefined;
    const told = duty.ends === 'fixed-fixed' ? 'fixed-supported' : duty.ends;
    const ends = told === undefined || told === 'fixed-free' ? endsOf(true, coupling) : told;
    return judge({ screw, duty: { ...duty, ends } }, limits);
  };
}

/** A long thin screw whips, though it is held at its end. */
const heldWhirl: HolderCheck = {
  ...about,
  ...WHIRL,
  id: 'drive-whirl',
  moves: 'duty.feed, duty.span, duty.ends, coupling, screw.minor',
  run: ofHeld(judgeWhirl),
};

/** A long thin screw that is pushed bows out, though it is held at its end. */
const heldColumn: HolderCheck = {
  ...about,
  ...COLUMN,
  id: 'drive-column',
  question: 'holds',
  moves: 'duty.load, duty.span, duty.ends, coupling, screw.minor',
  run: ofHeld(judgeColumn),
};

/**
 * A long level screw hangs down between its ends.
 *
 *     share = L / (85 · d)      L = free length, d = major diameter; 114 where the other end is clamped
 */
const heldSag: HolderCheck = {
  ...about,
  ...SAG,
  id: 'drive-sag',
  moves: 'duty.span, duty.ends, coupling, screw.major',
  run: (design, limits) => (design.mounting === 'horizontal' ? ofHeld(judgeSag)(design, limits) : undefined),
};

/** Whether the screw turns freely in all that holds it. */
export const TURN_CHECKS: readonly HolderCheck[] = [
  overConstraint,
  bushSpeed,
  heldWhirl,
  heldColumn,
  heldSag,
  wobble,
  nutDistance,
  endRoom,
  needed,
  locating,
];
