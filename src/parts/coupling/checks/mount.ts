import { type Bounds, type Check, hard, notJudged, type Outcome, soft, told, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { polygonArea } from '../../../solid/outline.js';
import { plain, worked } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { type AxialPath, carriedWords, judgeMotorThrust, judgeStanding, ownWeight } from '../../common/axial-path.js';
import { BOTH_WAYS, judgeBesideJoint } from '../../common/both-ways.js';
import { judgeLocating, locatingPlaces } from '../../common/locating.js';
import { judgeSpeed, UNBALANCED } from '../../common/turning-speed.js';
import type { CouplingDesign } from '../dimensions.js';
import { insertOutline } from '../insert.js';
import { squeezeAt } from '../misalignment.js';

type CouplingCheck = Check<CouplingDesign>;
const mount = { group: 'mount', question: 'carries', source: 'common practice' } as const;

const HOLDER = 'the holder at its other end (locating_holder)';
const CURE =
  'carry the screw by a thrust bearing and a collar (thrust_bearing: yes) or by a holder that locates it (locating_holder: yes), or join the shafts by a rigid clamp sleeve (part: sleeve)';

/** Jaws carry no pull. */
export const couplingAxial: CouplingCheck = {
  ...mount,
  id: 'coupling-axial',
  title: 'Axial pull on the coupling',
  unit: 'N',
  limits: hard({ max: 0 }),
  moves: 'mounting, thrust_bearing, locating_holder, duty.load, duty.upward, duty.span',
  grave: true,
  run: ({ axial }, { pass }) => {
    const carried = carriedWords(axial);
    if (carried !== undefined) return valued(exactly(0), carried);
    if (axial.mounting === 'motor-below') return judgeStanding(axial, pass, CURE);
    return axial.mounting === 'motor-above' ? hanging(axial, pass) : lying(axial.load, pass);
  },
};

/** A screw that hangs weighs at least what it weighs itself, whatever is told of load. */
function hanging(axial: AxialPath, pass: Bounds): Outcome {
  const own = ownWeight(axial);
  const load = axial.load ?? 0;
  const force = own.force + load;
  const words = `the screw hangs from the coupling with ${load > 0 ? `${plain(load, 1)} N and ` : ''}${own.words}, ${apartWords(force, pass)}`;
  return force > 0 ? valued(exactly(force), words) : told('fail', words);
}

/** That nothing holds jaws together, and what would, unless the sheet takes it so. */
function apartWords(force: number, pass: Bounds): string {
  const taken = force > 0 && keeps(force, pass);
  return `and nothing holds jaws together along the axis${taken ? `; the sheet takes ${plain(pass.max!, 1)} N` : `; ${CURE}`}`;
}

function lying(load: number | undefined, pass: Bounds): Outcome {
  if (load === undefined) return notJudged('duty.load');
  if (load === 0) return valued(exactly(0), 'no load along the screw');
  return valued(
    exactly(load),
    `the screw pulls one way and the other with ${plain(load, 0)} N, ${apartWords(load, pass)}`,
  );
}

/** A thrust bearing carries one way, and jaws none. */
export const bothWays: CouplingCheck = {
  ...mount,
  ...BOTH_WAYS,
  id: 'both-ways',
  moves: `${BOTH_WAYS.moves}, thrust_bearing, locating_holder`,
  run: (design) => judgeBesideJoint(design),
};

/**
 * A bearing at each end of a screw fight each other.
 *
 *     n = 1 for the thrust bearing + 1 for the holder that locates it
 */
export const locating: CouplingCheck = {
  ...mount,
  id: 'locating-bearings',
  title: 'Places that carry the screw along its axis',
  unit: '',
  limits: hard({ min: 1, max: 1 }),
  moves: 'locating_holder, thrust_bearing',
  grave: true,
  run: ({ axial: { locatingHolder, thrustBearing } }, { pass }) =>
    locatingHolder || thrustBearing
      ? judgeLocating(locatingPlaces({ holders: locatingHolder ? [HOLDER] : [], thrustBearing }), pass, CURE)
      : undefined,
};

/** The motor's own bearing. */
export const motorThrust: CouplingCheck = {
  ...mount,
  id: 'motor-thrust',
  title: 'Axial load on the motor',
  unit: 'N',
  source: 'the motor’s data',
  moves: 'motor.axial_limit, duty.load, duty.span, thrust_bearing',
  grave: true,
  run: ({ axial, motor: { axialLimit, jam } }, limits) =>
    axial.mounting === 'motor-below' ? judgeMotorThrust(axial, { axialLimit, jam }, limits) : undefined,
};

const LIFTED = 'leave its end free (insert.pad: none)';

/** A soft pad creeps and lets the axis sink; a hard one beside a bearing takes load off it, onto the motor. */
export const insertThrust: CouplingCheck = {
  ...mount,
  id: 'insert-thrust',
  title: 'Axial squeeze of the insert',
  unit: '',
  limits: { pass: { max: 0 }, fail: { max: 0.05 } },
  moves: 'insert.pad, duty.load, thrust_bearing',
  run: ({ axial, insert, hubs, printer }, { pass }) => {
    const { load } = axial;
    const { kind, diameter, thickness } = insert.pad;
    const carried = carriedWords(axial);
    const isRigid = kind === 'disc' || kind === 'ball';
    // a screw between a holder and a disc grows onto the motor, however it lies
    if (axial.mounting !== 'motor-below' && !(axial.locatingHolder && isRigid)) return undefined;
    if (carried !== undefined)
      return isRigid
        ? told(
            'fail',
            `${carried}, and it stands on a ${kind} besides, so that nobody knows what the motor carries; ${LIFTED}`,
          )
        : undefined;
    if (isRigid) {
      const size = kind === 'ball' ? plain(diameter) : `${plain(diameter)} × ${plain(thickness)}`;
      return valued(exactly(0), `both shaft ends stand on a rigid ${kind} of ${size} mm`);
    }
    if (load === undefined) return notJudged('duty.load');
    const area =
      kind === 'soft'
        ? Math.min(...hubs.map(({ shaft }) => (Math.PI / 4) * shaft.diameter.likely ** 2))
        : polygonArea(insertOutline(insert.finished, printer.chordError)) - (Math.PI / 4) * insert.finished.hole ** 2;
    const weight = load + ownWeight(axial).force;
    const squeeze = weight / (area * insert.modulus);
    const sinks = `${plain(squeeze * insert.finished.height, 2)} mm, and it creeps further`;
    return valued(
      exactly(squeeze),
      `${plain(weight, 0)} N rest on rubber: it sinks by ${sinks}${keeps(squeeze, pass) ? '' : '; use insert.pad: disc or ball'}`,
    );
  },
};

/**
 * Shafts that meet jam the insert.
 *
 *     gap = thickness of the pad; soft pad: floor to floor of the hubs − room at both ends
 *     gap without pad = floor to floor + how far each stop lies behind its floor
 */
export const shaftGap: CouplingCheck = {
  ...mount,
  id: 'shaft-gap',
  question: 'goes-on',
  title: 'Distance of the shaft ends',
  unit: 'mm',
  limits: hard({ min: 0.5 }),
  moves: 'motor.shaft.length, shaft.length, insert.pad, motor_hub.stop, screw_hub.stop',
  run: ({ hubs, shaftGap: gap, insert: { pad } }) => {
    const short = hubs.find(({ shaft, depth }) => pad.kind !== 'none' && (shaft.length ?? Infinity) < depth - 1e-6);
    if (short)
      return told(
        'fail',
        `the shaft of the ${short.name.replace('-', ' ')} is ${plain(short.shaft.length!, 1)} mm long and must go in ${plain(short.depth, 1)} mm to stand on the pad; a shorter hub or insert, or one clamp screw`,
      );
    const untold = hubs.flatMap(({ shaft }) => (pad.kind === 'none' ? [] : (shaft.lengthField ?? [])));
    if (untold.length > 0) return notJudged(...untold);
    if (hubs.length < 2) return undefined;
    if (gap === undefined)
      return told(
        'caution',
        'nothing stops the shafts: mark them so that 0.5 mm or more is left between their ends, or leave out motor_hub.stop and screw_hub.stop',
      );
    return valued(
      exactly(gap),
      pad.kind === 'none'
        ? `${worked(gap, 'mm')} mm between the stops`
        : `${worked(gap, 'mm')} mm, the pad between them`,
    );
  },
};

/**
 * Jaws that meet the other hub's floor.
 *
 *     room = floor to floor of the hubs − greater of jaws.height and insert.height − misalignment.axial
 */
export const assemblyRoom: CouplingCheck = {
  ...mount,
  id: 'assembly-room',
  question: 'goes-on',
  title: 'Gap of jaws pushed together',
  unit: 'mm',
  limits: hard({ min: 0.1 }),
  moves: 'jaws.height, insert.height, misalignment.axial',
  run: ({ gap, jaws, insert, misalignment: { axial } }, { pass }) => {
    const tips = gap - jaws.height;
    const lying = gap - insert.finished.height;
    const room = Math.min(tips, lying) - axial;
    const cure = keeps(room, pass) ? '' : '; less misalignment.axial, or lower jaws.height and insert.height';
    return valued(exactly(room), `${plain(room, 2)} mm left after ${plain(axial, 2)} mm of axial misalignment${cure}`);
  },
};

/**
 * Lobes that do not find their way in.
 *
 *     room = jaws.bevel − squeeze built in; squeeze = −insert.flank_clearance, at least 0
 */
export const assemblyEntry: CouplingCheck = {
  ...mount,
  id: 'assembly-entry',
  question: 'goes-on',
  title: 'Bevel of jaw tips over squeeze',
  unit: 'mm',
  limits: soft({ min: 0.1 }),
  moves: 'jaws.bevel, insert.flank_clearance',
  trifle: true,
  run: (design, { pass }) => {
    const { hubs, jaws } = design;
    if (hubs.length === 0) return undefined;
    const { bevel } = jaws;
    const room = bevel - Math.max(0, -design.insert.flankClearance);
    const cure = keeps(room, pass) ? '' : '; more jaws.bevel, or more insert.flank_clearance';
    return valued(
      exactly(room),
      `tips bevelled by ${plain(bevel, 2)} mm lead the lobes in, ${plain(squeezeAt(design), 2)} mm are squeezed at most${cure}`,
    );
  },
};

/** A bought half fits only by its measured jaws. */
export const matchedHalf: CouplingCheck = {
  ...mount,
  id: 'matched-half',
  question: 'goes-on',
  title: 'Half that is not made',
  unit: '',
  moves: 'jaws, hubs.outside_diameter, motor.shaft, screw',
  run: ({ hubs, skipped, unmeasured }) => {
    if (skipped.length === 0) return undefined;
    const half = hubs.length === 0 ? 'both hubs are bought' : `the ${skipped[0]!.replace('-', ' ')} is bought`;
    if (unmeasured.length === 0) return told('pass', `${half}; the jaws were measured`);
    if (hubs.length === 0) return notJudged(...unmeasured);
    return told(
      'caution',
      `${half}, since its shaft is not given, and its jaws are a guess: measure and give ${unmeasured.join(', ')}`,
    );
  },
};

/**
 * Printed hubs are not balanced.
 *
 *     n = duty.speed
 */
export const speed: CouplingCheck = {
  ...mount,
  id: 'speed',
  question: 'turns',
  title: 'Speed of the hubs',
  unit: 'rpm',
  limits: UNBALANCED,
  moves: 'duty.speed',
  trifle: true,
  run: ({ duty, hubs }, { pass }) =>
    hubs.length === 0 ? undefined : judgeSpeed(duty.speed, pass, 'balanced metal hubs'),
};
