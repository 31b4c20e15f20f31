import { type Check, notJudged, soft, told, valued } from '../../../judge/check.js';
import { allKeep, keeps } from '../../../judge/judge.js';
import { DRY_PRINT_MOST, DRY_PRINT_WORDS, FRICTION } from '../../../mechanics/friction.js';
import { holding } from '../../../mechanics/power-screw/holding.js';
import { leadAngle } from '../../../mechanics/power-screw/lead-angle.js';
import { loweringTorque } from '../../../mechanics/power-screw/lowering-torque.js';
import { raisingTorque } from '../../../mechanics/power-screw/raising-torque.js';
import { canBeRaised } from '../../../mechanics/power-screw/thread.js';
import { USABLE_TORQUE_SHARE } from '../../../mechanics/stepper.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { COLUMN, judgeColumn, judgeSag, judgeWhirl, SAG, WHIRL } from '../../common/drive-limits.js';
import type { NutDesign } from '../dimensions.js';
import { springForceOf } from '../variants/anti-backlash.js';
import { sideOf } from '../variants/twin-side.js';

type NutCheck = Check<NutDesign>;
const drive = { group: 'drive', question: 'axis', source: 'common practice' } as const;

/** How far the screw is past the point where it surely holds: the worse of the two rules, 1 being the limit. */
function creepRatio({ screw, finished }: NutDesign): number {
  const byLead = finished.lead / (screw.major.likely / 3);
  const angle = leadAngle({ lead: finished.lead, meanDiameter: screw.pitchDiameter.likely });
  const safe = (0.7 * (Math.atan(FRICTION.low / Math.cos((screw.flankAngle * Math.PI) / 180)) * 180)) / Math.PI;
  return Math.max(byLead, angle / safe);
}

/** A vertical axis that is not held comes down; one that nobody called level may be vertical. */
export const driveHolding: NutCheck = {
  ...drive,
  id: 'drive-holding',
  title: 'Holding without power',
  unit: '',
  limits: soft({ max: 1 }),
  moves: 'screw.lead, a brake, a counterweight',
  grave: true,
  run: (design, { pass }) => {
    const { screw, finished, duty } = design;
    if (duty.axis === 'horizontal') return undefined;
    const ratio = exactly(creepRatio(design));
    if (duty.axis === undefined && !allKeep(ratio, pass)) return notJudged('duty.axis');
    const answer = holding({
      lead: finished.lead,
      major: screw.major.likely,
      pitchDiameter: screw.pitchDiameter.likely,
      flankAngle: screw.flankAngle,
    });
    const lead = `, at a lead of ${plain(finished.lead)} mm on ${plain(screw.major.likely, 2)} mm`;
    const facts = {
      falls: `the axis FALLS when the motor is off${lead}`,
      'may-creep': `the axis may creep down when greased and shaken${lead}`,
      holds: `the axis normally holds${lead}`,
    };
    const care = {
      falls: ': block it, and fit a brake, a counterweight or a finer lead',
      'may-creep': ': block it before work, do not rely on the screw',
      holds: '; do not rely on it where a fall would hurt',
    };
    const fine = keeps(ratio.likely, pass);
    if (fine === (answer === 'holds')) return valued(ratio, `${facts[answer]}${care[answer]}`);
    const past = `, ${plain(ratio.likely, 2)} times what surely holds where the sheet takes ${plain(pass.max!, 2)}`;
    return valued(ratio, `${facts[answer]}${past}${fine ? '' : '; a finer lead holds better'}`);
  },
};

/** Torque at the screw that raises the load at one friction; infinite where none does. */
function raisedBy(design: NutDesign, friction: number): number {
  const { screw, finished, family, duty } = design;
  const thread = { lead: finished.lead, meanDiameter: screw.pitchDiameter.likely, flankAngle: screw.flankAngle };
  const spring = family?.kind === 'anti-backlash' ? springForceOf(family) : 0;
  if (!canBeRaised({ ...thread, friction })) return Number.POSITIVE_INFINITY;
  const axialForce = duty.load! + spring;
  const lifted = axialForce === 0 ? 0 : raisingTorque({ ...thread, axialForce, friction });
  const dragged = spring === 0 ? 0 : loweringTorque({ ...thread, axialForce: spring, friction });
  // both threads are pressed sideways on the screw, half its major diameter out
  const beside = friction * (sideOf(design, duty.load!)?.force ?? 0) * screw.major.likely;
  return lifted + Math.max(0, dragged) + beside;
}

/**
 * A dry nut must not stall the motor; a bought one of metal rubs less than a print. One that asks for more than all of its torque
 * at the least friction that is usual, greased or dry, is not raised at all.
 */
export const driveTorque: NutCheck = {
  ...drive,
  id: 'drive-torque',
  title: 'Torque to raise the load',
  unit: 'N·mm',
  moves: 'duty.load, duty.motor.torque, screw.lead, duty.grease',
  run: (design, limits) => {
    const { duty } = design;
    if (duty.load === undefined) return notJudged('duty.load');
    const torque = duty.motor?.torque;
    if (torque === undefined)
      return duty.motor === undefined ? notJudged('duty.motor') : notJudged('duty.motor.torque');
    const bought = design.family?.kind === 'holder';
    const most = USABLE_TORQUE_SHARE * torque * (duty.motor?.gear ?? 1);
    const friction = bought ? FRICTION.nominal : FRICTION.high;
    const needed = raisedBy(design, friction);
    const dry = bought ? needed : raisedBy(design, DRY_PRINT_MOST);
    const reached = Number.isFinite(dry) ? `then it takes ${plain(dry, 0)} N·mm` : 'then no torque raises it';
    const words = bought ? 'as of a metal nut' : `${DRY_PRINT_WORDS}, ${reached}`;
    if (!Number.isFinite(needed))
      return told('fail', `at friction ${friction} no torque raises the load; ${words}; take a finer lead`);
    const least = duty.grease === 'greased' ? FRICTION.low : FRICTION.nominal;
    const atLeast = raisedBy(design, least);
    const whole = most / USABLE_TORQUE_SHARE;
    const own = soft({ max: most }, { max: needed === 0 ? whole : (whole * needed) / atLeast });
    const { pass, fail } = limits.of(own);
    const stalls = !keeps(needed, fail!);
    const never = `even at friction ${least} it takes ${plain(atLeast, 0)} N·mm, and the motor stalls at ${plain(whole, 0)}`;
    const value = { least: needed, likely: needed, most: duty.grease === 'greased' ? needed : Math.min(dry, 1e9) };
    const cure = keeps(needed, pass)
      ? '; grease it (duty.grease: greased)'
      : '; a finer lead, a stronger motor, a gear or less load';
    return valued(
      value,
      `${plain(needed, 0)} N·mm at friction ${friction} of ${plain(pass.max!, 0)} N·mm that may be used; ${stalls ? never : words}${allKeep(value, pass) ? '' : cure}`,
      own,
    );
  },
};

/**
 * Layers between full steps come out unequal.
 *
 *     miss = largest |h/s − nearest whole number|, h = layer height, s = travel of a full step
 */
export const driveLayerGrid: NutCheck = {
  ...drive,
  id: 'drive-layer-grid',
  title: 'Layers off whole full steps',
  unit: '',
  limits: soft({ max: 0.01 }),
  moves: 'duty.layer_heights, screw.lead',
  trifle: true,
  run: (design, { pass }) => {
    const layers = design.drive.layers;
    if (layers.length === 0) return undefined;
    const miss = Math.max(...layers.map(({ full_steps }) => Math.abs(full_steps - Math.round(full_steps))));
    const off = layers.filter(({ on_grid }) => !on_grid);
    if (off.length === 0) return valued(exactly(miss), 'all heights are whole full steps');
    const fine = keeps(miss, pass);
    const words = off.map(
      ({ height, nearest }) =>
        `${plain(height)} mm${fine ? '' : ` (use ${nearest.map((h) => plain(h, 4)).join(' or ')})`}`,
    );
    return valued(
      exactly(miss),
      `off the full-step grid: ${words.join('; ')}${fine ? ', as the sheet allows' : '; advice, not an error'}`,
    );
  },
};

/** A long thin screw whips. */
export const driveWhirl: NutCheck = {
  ...drive,
  ...WHIRL,
  id: 'drive-whirl',
  moves: 'duty.feed, duty.span, duty.ends, screw.minor',
  run: judgeWhirl,
};

/** A long thin screw that is pushed bows out. */
export const driveColumn: NutCheck = {
  ...drive,
  ...COLUMN,
  id: 'drive-column',
  moves: 'duty.load, duty.span, duty.ends, screw.minor',
  run: judgeColumn,
};

/**
 * A long level screw hangs down, and turns the nut askew.
 *
 *     share = L / (40 · d)      L = free length, d = major diameter; 85, 114, 145 where both ends are held
 */
export const driveSag: NutCheck = {
  ...drive,
  ...SAG,
  id: 'drive-sag',
  moves: 'duty.axis, duty.span, duty.ends, screw.major',
  run: (design, limits) => {
    const { axis } = design.duty;
    if (axis === 'vertical') return undefined;
    const found = judgeSag(design, limits);
    if (axis === 'horizontal') return found;
    return found?.kind === 'value' && allKeep(found.value, limits.pass) ? undefined : notJudged('duty.axis');
  },
};

/**
 * Motors lose their torque with speed.
 *
 *     n = 60 · feed / lead · gear
 */
export const driveSpeed: NutCheck = {
  ...drive,
  id: 'drive-speed',
  title: 'Motor speed at the wanted feed',
  unit: 'rpm',
  moves: 'duty.feed, duty.motor.speed, screw.lead',
  trifle: true,
  run: ({ duty, finished }, limits) => {
    if (duty.feed === undefined) return undefined;
    const most = duty.motor?.speed ?? 300;
    const own = soft({ max: most });
    const speed = ((60 * duty.feed) / finished.lead) * (duty.motor?.gear ?? 1);
    const basis = duty.motor?.speed === undefined ? ', assumed since duty.motor.speed is missing' : '';
    const cure = keeps(speed, limits.of(own).pass) ? '' : '; a slower duty.feed or a coarser lead';
    return valued(
      exactly(speed),
      `${plain(speed, 0)} rpm for ${plain(duty.feed)} mm/s; the motor is useful up to ${plain(most, 0)} rpm${basis}${cure}`,
      own,
    );
  },
};
