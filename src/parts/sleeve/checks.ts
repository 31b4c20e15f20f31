import { type Check, hard, notJudged, soft, told, valued } from '../../judge/check.js';
import { allKeep, judge, keeps } from '../../judge/judge.js';
import { isReplaced } from '../../judge/limits-in-force.js';
import { plain } from '../../units/format.js';
import { exactly, halfWidth, plusMinus } from '../../units/measured.js';
import { loosePullOf, pullAsked, pullCures, pullForJam, pullOf } from '../common/axial-grip.js';
import { carriedWords, judgeMotorThrust, UNTOLD_SPAN } from '../common/axial-path.js';
import { boreReach } from '../common/bore.js';
import { BOTH_WAYS, judgeBesideJoint } from '../common/both-ways.js';
import { shrinkAppliedOnce } from '../common/checks.js';
import { finerNozzle, oneOf } from '../common/finer-print.js';
import { greasedIn, gripOfHeld, type Held, type HeldView, sectionOf } from '../common/held.js';
import { heldChecks } from '../common/held-checks.js';
import { judgeLocating, locatingPlaces } from '../common/locating.js';
import { askingPlastic } from '../common/plastic-told.js';
import { holeResidual, planeResidual } from '../common/residual.js';
import { judgeSpeed, UNBALANCED } from '../common/turning-speed.js';
import { askedWhereItHangs, askedWhereWorse } from '../common/untold.js';
import { besideCoolest, neverStruck, type SleeveDesign } from './dimensions.js';
import { heldIn } from './held-in.js';

type SleeveCheck = Check<SleeveDesign>;
const body = { group: 'body', question: 'holds', source: 'common practice' } as const;

/** What holds for every body that holds a shaft; a bush holds nothing by itself. */
const HOLDS = ['motor_end', 'screw_end'];
const holding = heldChecks<SleeveDesign>(heldIn, { outside: 'outside_diameter', holds: HOLDS });

/**
 * Two shafts held rigidly have two bearings each.
 *
 *     e = offset, as it is told
 */
const overConstraint: SleeveCheck = {
  ...body,
  id: 'over-constraint',
  question: 'turns',
  title: 'Offset between the shafts',
  unit: 'mm',
  limits: soft({ max: 0.05 }, { max: 0.15 }),
  moves: 'offset',
  run: ({ form, offset }, { pass }) => {
    if (form === 'bush') return undefined;
    if (offset === undefined)
      return told(
        'caution',
        'a rigid sleeve takes no misalignment: an offset of 0.1 mm bends the motor shaft once a turn and binds. Leave the far end of the screw free, set the shafts in line with the sleeve loose, tighten last',
      );
    const cure = keeps(offset, pass) ? '' : '; leave the far end of the screw free, or use a jaw coupling';
    return valued(exactly(offset), `an offset of ${plain(offset, 2)} mm bends the motor shaft once a turn${cure}`);
  },
};

/** One clamp along its shaft [N]. */
interface Pulled {
  readonly one: Held;
  /** what it holds beside the torque in work, at the end of its life */
  readonly pull: number;
  /** what is to be left so for a jam; 0 where nobody knows of one */
  readonly jams: number;
}

/** The clamp that slips first: for good, or else when the axis jams. */
function weakerEnd({ jam }: SleeveDesign, view: HeldView, needed: number): Pulled {
  const rows = view.held.map(
    (one): Pulled => ({
      one,
      pull: pullOf(gripOfHeld(one, view), one, view),
      jams: jam === undefined ? 0 : pullForJam(jam, one, view),
    }),
  );
  const standing = rows.reduce((a, b) => (b.pull < a.pull ? b : a));
  if (jam === undefined || standing.pull < needed) return standing;
  return rows.reduce((a, b) => (b.pull * a.jams < a.pull * b.jams ? b : a));
}

/** What hangs on a clamp slips out of it, for good or when the axis jams. */
const axialGrip: SleeveCheck = {
  ...body,
  group: 'grip',
  id: 'axial-grip',
  title: 'Axial pull of the weaker clamp',
  unit: 'N',
  source: 'derived: relaxation of held strains',
  moves:
    'mounting, thrust_bearing, motor.torque, duty.load, duty.upward, duty.span, motor_end.clamp, screw_end.clamp, motor_end.degreased, screw_end.degreased, retighten, material',
  grave: true,
  run: (design, inForce) => {
    const view = heldIn(design);
    if (!view) return undefined;
    const { axial } = design;
    const { needed, words, missing } = pullAsked(axial);
    const { one: weaker, pull, jams } = weakerEnd(design, view, needed);
    const carried = carriedWords(axial);
    if (carried !== undefined) return valued(exactly(pull), carried, hard({ min: 0 }));
    const own = { pass: { min: Math.max(needed, jams) }, fail: { min: needed } };
    const limits = inForce.of(own);
    const least = limits.fail?.min ?? needed;
    const verdict = judge(exactly(pull), limits);
    const unknown = [
      ...missing,
      ...(view.held.every(({ temperature }) => temperature.known) ? [] : ['duty.temperature']),
      ...(view.held.some((one) => (loosePullOf(one, view) ?? Infinity) < least) ? ['screw.major'] : []),
    ];
    if (verdict !== 'fail' && unknown.length > 0) return notJudged(...unknown);
    const slips = verdict === 'caution' ? `; it slips when the axis jams, under ${plain(jams, 0)} N` : '';
    const cure =
      verdict === 'pass'
        ? ''
        : `; use ${pullCures(weaker.grip, sectionOf(weaker), view).join(', ')} or a thrust bearing (thrust_bearing: yes)`;
    return valued(
      exactly(pull),
      `${plain(pull, 0)} N are left, ${plain(least, 0)} N are asked${isReplaced(own.pass, limits.pass) ? ' by the sheet' : `: 2 × ${words}`}${slips}${cure}`,
      own,
    );
  },
};

/** The motor's own bearing carries what a rigid sleeve holds. */
const motorThrust: SleeveCheck = {
  ...body,
  group: 'mount',
  id: 'motor-thrust',
  title: 'Axial load on the motor',
  unit: 'N',
  source: 'the motor’s data',
  moves: 'motor.axial_limit, duty.load, duty.upward, duty.span, thrust_bearing',
  grave: true,
  run: ({ form, axial, axialLimit, jam }, limits) =>
    form === 'clamp' ? judgeMotorThrust(axial, { axialLimit, jam, isPulled: true }, limits) : undefined,
};

/**
 * A rigid sleeve hands the screw to the motor's bearing, or to a thrust bearing beside it; a holder that locates it at its other end
 * fights that when the screw warms.
 *
 *     n = 1 for the sleeve, with or without a thrust bearing + holder that locates the screw
 */
const locating: SleeveCheck = {
  ...body,
  id: 'locating-bearings',
  title: 'Places that carry the screw along its axis',
  unit: '',
  limits: hard({ min: 1, max: 1 }),
  moves: 'locating_holder, thrust_bearing',
  grave: true,
  run: ({ form, axial: { locatingHolder, thrustBearing } }, { pass }) =>
    form === 'bush'
      ? undefined
      : judgeLocating(
          locatingPlaces({
            holders: locatingHolder ? ['the holder at its other end (locating_holder)'] : [],
            thrustBearing,
            joint: 'rigid',
          }),
          pass,
          'a clamp sleeve',
        ),
};

/** A thrust bearing carries one way; the other way a rigid sleeve hands on to the motor, as far as it grips and the motor bears it. */
const bothWays: SleeveCheck = {
  ...body,
  ...BOTH_WAYS,
  id: 'both-ways',
  moves: `${BOTH_WAYS.moves}, thrust_bearing, locating_holder, motor.axial_limit, motor_end.degreased, screw_end.degreased`,
  run: (design) => {
    const view = heldIn(design);
    const { axialLimit = 0 } = design;
    if (!view) return undefined;
    return judgeBesideJoint(design, ({ force = Infinity, words }) => {
      const pull = Math.min(...view.held.map((one) => pullOf(gripOfHeld(one, view), one, view)));
      return force <= axialLimit && 2 * force <= pull
        ? `${words}; the sleeve hands ${plain(force, 1)} N to the motor shaft, which may carry ${plain(axialLimit, 1)} N`
        : undefined;
    });
  },
};

/**
 * Printed sleeves are not balanced.
 *
 *     n = duty.speed
 */
const speed: SleeveCheck = {
  ...body,
  group: 'mount',
  id: 'speed',
  question: 'turns',
  title: 'Speed of the sleeve',
  unit: 'rpm',
  limits: UNBALANCED,
  moves: 'duty.speed',
  trifle: true,
  run: ({ form, speed: rpm }, { pass }) =>
    form === 'bush' ? undefined : judgeSpeed(rpm, pass, 'a balanced metal sleeve'),
};

/**
 * A bush without a wall.
 *
 *     wall = ⌀outside/2 − farthest reach of the bore, keyway counted
 */
const bushWall: SleeveCheck = {
  ...body,
  id: 'bush-wall',
  question: 'prints',
  title: 'Wall of the bush',
  unit: 'mm',
  moves: 'bore, shaft',
  run: ({ form, finished, printer }, limits) => {
    if (form === 'clamp') return undefined;
    const wall = finished.outside / 2 - boreReach(finished.bores[0].bore).most;
    const own = soft({ min: 2 * printer.lineWidth }, { min: printer.lineWidth });
    const { pass } = limits.of(own);
    const cure = keeps(wall, pass)
      ? ''
      : oneOf(finerNozzle(printer, wall / 2), 'drill the bore out for a thicker bush');
    return valued(exactly(wall), `${plain(wall, 2)} mm, ${plain(wall / printer.lineWidth, 1)} lines${cure}`, own);
  },
};

/**
 * Two fits in a row.
 *
 *     e = (max(0, ⌀bore that it fills − ⌀outside of the bush) + max(0, ⌀bore of the bush − ⌀shaft)) / 2
 *     as both come out of the printer: where nobody compensates, shrink and hole offset are counted whole
 */
const bushRunout: SleeveCheck = {
  ...body,
  id: 'bore-runout',
  question: 'turns',
  title: 'Eccentricity of the shaft',
  unit: 'mm',
  limits: soft({ max: 0.15 }),
  moves: 'bore, shaft',
  run: (design, { pass }) => {
    const { fills, finished, shaft } = design;
    if (fills === undefined) return undefined;
    const residual = planeResidual(design, finished.outside);
    const { bore } = finished.bores[0];
    const outer = fills - finished.outside - residual.likely;
    const inner = bore.diameter + holeResidual(design, bore.diameter).likely - shaft.diameter.likely;
    // a fit that comes out tight is in the middle, and takes nothing off the play of the other
    const play = Math.max(0, outer) + Math.max(0, inner);
    const spread = design.printer.holeSpread + (residual.most - residual.likely) + halfWidth(shaft.diameter);
    const aside = plusMinus(play / 2, spread / 2);
    const cure = allKeep(aside, pass) ? '' : '; a printer profile read off a coupon narrows it, a turned bush is truer';
    return valued(
      aside,
      `two clearances in a row, ${plain(play, 2)} mm on the diameter before the clamp closes${cure}`,
    );
  },
};

/**
 * A sleeve on a hot shaft goes soft.
 *
 *     reserve = softening temperature of the material − the hotter of shaft and air
 */
const heat: SleeveCheck = askingPlastic({
  ...body,
  id: 'heat',
  title: 'Reserve before it softens',
  unit: 'K',
  limits: hard({ min: 20 }),
  moves: 'motor.temperature, duty.temperature, material',
  grave: true,
  run: ({ material, temperature }, { pass }) => {
    if (temperature === undefined) return notJudged('duty.temperature');
    const { at: local, known } = temperature;
    const reserve = material.softening - local;
    const holds = keeps(reserve, pass);
    if (holds && !known) return notJudged('duty.temperature');
    const cure = holds ? '' : '; use a material that softens later, or keep the heat away';
    return valued(
      exactly(reserve),
      `${material.name} softens at ${plain(material.softening, 0)} °C, ${plain(local, 0)} °C at the shaft${cure}`,
    );
  },
});

/** The same sleeve with grease on a shaft of which nobody tells; undefined where the sheet does. */
function greasy(design: SleeveDesign, hold: string): SleeveDesign | undefined {
  const ends = greasedIn(design.ends, hold);
  return ends && { ...design, ends };
}

/** What is held by friction along the screw hangs on whether it is greased. */
const pulled = askedWhereWorse(
  [axialGrip, bothWays],
  HOLDS.map((hold) => ({ field: `${hold}.degreased`, worse: (design: SleeveDesign) => greasy(design, hold) })),
);

/** Every check of a sleeve, in the order of the report. */
export const SLEEVE_CHECKS: readonly SleeveCheck[] = askedWhereItHangs(
  [
    ...holding.filter(({ id }) => id !== 'bore-runout'),
    ...pulled,
    motorThrust,
    overConstraint,
    locating,
    speed,
    bushWall,
    bushRunout,
    heat,
    shrinkAppliedOnce,
  ],
  [{ field: 'motor.temperature', milder: besideCoolest }, { field: 'duty.shock', milder: neverStruck }, UNTOLD_SPAN],
);
