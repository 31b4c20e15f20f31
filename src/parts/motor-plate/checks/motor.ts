import { type Check, hard, notJudged, soft, told, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { socketCapScrew } from '../../../standards/fasteners/cap-screw.js';
import { clearanceHole } from '../../../standards/fasteners/clearance-hole.js';
import { plain } from '../../../units/format.js';
import { difference, exactly, scaled, shifted } from '../../../units/measured.js';
import { judgeMotorThrust } from '../../common/axial-path.js';
import { judgePosition, patternError } from '../../common/bolting.js';
import { washerRadius } from '../../common/joints.js';
import { judgeLocating, locatingPlaces } from '../../common/locating.js';
import { holeResidual, planeResidual } from '../../common/residual.js';
import { stallForce } from '../../common/stall-force.js';
import type { MotorPlateDesign } from '../dimensions.js';
import { engagementBounds, type MotorThread, motorScrewLength, underHead } from '../motor-screw.js';
import { motorGrip } from '../plan.js';

type PlateCheck = Check<MotorPlateDesign>;
const about = { group: 'motor', question: 'goes-on', unit: 'mm', source: 'common practice' } as const;

/** The pilot centres the motor; the screws only clamp it. */
const pilotFit: PlateCheck = {
  ...about,
  id: 'pilot-fit',
  title: 'Play of the pilot in its hole',
  limits: soft({ min: 0.1, max: 0.6 }, { min: 0 }),
  moves: 'fit.pilot, motor.pilot, printer.hole_offset',
  run: (design, { pass: { min = 0, max = Infinity } }) => {
    const { finished, motor } = design;
    const play = difference(shifted(holeResidual(design, finished.pilot), finished.pilot), motor.pilot);
    const cure =
      play.least < min
        ? '; widen it (fit.pilot), or measure it on a print and correct printer.hole_offset'
        : play.most > max
          ? '; narrow it (fit.pilot), or nothing centres the motor'
          : '';
    return valued(play, `pilot ${plain(motor.pilot.likely, 2)} mm in ${plain(finished.pilot, 2)} mm${cure}`);
  },
};

/** The motor's screws go through four printed holes at once. */
const holePosition: PlateCheck = {
  ...about,
  id: 'hole-position',
  title: "Error of the motor's holes",
  moves: 'motor.square, printer.hole_offset, material',
  run: (design, limits) => {
    const { motor, joints, finished } = design;
    const { square } = motor;
    const hole = shifted(holeResidual(design, finished.motor.diameter), finished.motor.diameter);
    return judgePosition(
      {
        error: patternError(
          scaled(shifted(square, -square.likely), Math.SQRT1_2),
          planeResidual(design, Math.SQRT2 * square.likely),
        ),
        play: shifted(scaled(shifted(hole, -motor.screwDiameter), 0.5), playInMotor(motor)),
        pattern: { hole: joints.motor, length: motorGrip(finished) },
        cause: '',
      },
      design,
      limits,
    );
  },
};

/** Where bolts go through the face of the motor, its own holes leave them room too: a fine clearance hole at least. */
function playInMotor({ screw, screwDiameter, threadDepth }: MotorPlateDesign['motor']): number {
  return threadDepth === undefined ? (clearanceHole(screw, 'fine') - screwDiameter) / 2 : 0;
}

/**
 * A screw that is too long stands on the ground of its hole and clamps nothing; one that is too short strips.
 *
 *     thread = length of the screw − plastic under its head − washer under a proud head
 *     length = the longest usual one that ends 0.5 mm or more above the ground of the hole
 */
const screwEngagement: PlateCheck = {
  ...about,
  id: 'screw-engagement',
  title: "Thread of the screws in the motor's holes",
  moves: 'plate.thickness, motor.thread_depth, motor_heads',
  grave: true,
  run: ({ motor, finished, joints }, inForce) => {
    const { screw, threadDepth: depth, flange } = motor;
    if (depth === undefined) return told('pass', `bolts go through the face of the motor, ${plain(flange!, 1)} mm`);
    const thread = { screw, depth, grip: motorGrip(finished), sunk: joints.motor.joint === 'counterbore' };
    const { wanted, holds, most, ground } = engagementBounds(thread);
    const base = underHead(thread);
    const length = motorScrewLength(thread);
    if (length === undefined || length <= base)
      return told(
        'fail',
        `no usual ${screw} has thread below ${plain(base, 2)} mm and ends above the ground of its hole${otherPlate(thread, length ?? base)}`,
      );
    // in shallow holes no screw has what is wanted
    const pass = most < wanted ? { min: wanted } : { min: wanted, max: most };
    const own = { pass, fail: { min: holds, max: ground } };
    const engaged = length - base;
    const cure = keeps(engaged, inForce.of(own).pass) ? '' : otherPlate(thread, length);
    return valued(
      exactly(engaged),
      `${screw}x${length} through ${plain(base, 2)} mm has ${plain(engaged, 2)} mm of thread in holes ${plain(depth, 1)} mm deep${cure}`,
      own,
    );
  },
};

/** What to do with the plate so that a screw of a usual length holds well. */
function otherPlate(thread: MotorThread, length: number): string {
  const { wanted, most } = engagementBounds(thread);
  if (most < wanted) return '; its holes are shallow: measure motor.thread_depth, and tighten by hand';
  const base = underHead(thread);
  const longer = socketCapScrew(thread.screw).lengths.find((one) => one > length);
  const thinner = base + wanted - length;
  const ways = [
    ...(thinner > 0 && thinner < thread.grip / 2 ? [`${plain(thinner, 2)} mm thinner`] : []),
    ...(longer === undefined ? [] : [`${plain(longer - most - base, 2)} mm thicker for ${thread.screw}x${longer}`]),
  ];
  return ways.length > 0 ? `; make the plate ${ways.join(', or ')}` : '';
}

/**
 * Shaft that is left on the far side of the plate.
 *
 *     left = motor.shaft.length − thickness of the plate − hub_depth
 */
const shaftLeft: PlateCheck = {
  ...about,
  id: 'shaft-left',
  title: 'Shaft beyond the plate',
  limits: soft({ min: 1 }, { min: 0 }),
  moves: 'motor.shaft.length, hub_depth, plate.thickness',
  run: ({ drive, motor, finished, hubDepth }, { pass }) => {
    if (drive === 'belt') return undefined;
    const missing = [
      ...(motor.shaftLength === undefined ? ['motor.shaft.length'] : []),
      ...(hubDepth === undefined ? ['hub_depth'] : []),
    ];
    if (motor.shaftLength === undefined || hubDepth === undefined) return notJudged(...missing);
    const left = motor.shaftLength - finished.thickness;
    const cure = keeps(left - hubDepth, pass) ? '' : '; make the plate thinner, or take a motor with a longer shaft';
    return valued(
      exactly(left - hubDepth),
      `${plain(left, 2)} mm stand out of the plate, ${plain(hubDepth, 1)} mm go into the hub${cure}`,
    );
  },
};

/**
 * Heads between plate and machine need an opening, or pockets.
 *
 *     room = machine.opening/2 − side of the square of holes/√2 − ⌀washer/2
 */
const headsClear: PlateCheck = {
  ...about,
  id: 'heads-clear',
  title: "Room around the heads of the motor's screws behind the plate",
  limits: soft({ min: 0.5 }, { min: 0 }),
  moves: 'motor_heads, machine.opening, machine.face',
  run: ({ machine, joints, finished }, { pass }) => {
    if (machine.face !== 'outer') return undefined;
    if (joints.motor.joint === 'counterbore') return told('pass', 'sunk below the face that lies on the machine');
    if (machine.opening === undefined) return notJudged('machine.opening');
    const reach = Math.SQRT1_2 * finished.motor.square + washerRadius(joints.motor);
    const room = machine.opening / 2 - reach;
    const cure = keeps(room, pass) ? '' : '; sink the heads (motor_heads: sunk)';
    return valued(
      exactly(room),
      `washers reach ${plain(reach, 1)} mm from the axis, the opening ${plain(machine.opening / 2, 1)} mm${cure}`,
    );
  },
};

/** The rotor of a stepper stands on a spring, and its bearings carry little along the shaft. */
const motorThrust: PlateCheck = {
  ...about,
  id: 'motor-thrust',
  group: 'mount',
  question: 'holds',
  title: 'Axial load on the motor',
  unit: 'N',
  source: 'the motor’s data',
  moves: 'motor.axial_limit, duty.load, duty.span, thrust_bearing',
  grave: true,
  run: ({ axial, motor: { axialLimit }, drive, screw, duty }, limits) =>
    drive === 'belt'
      ? undefined
      : judgeMotorThrust(axial, { axialLimit, jam: screw && stallForce({ duty, screw }) }, limits),
};

/**
 * One place carries the screw along its axis: of jaws and other couplings that give, none does, and two fight each other.
 *
 *     n = thrust bearing at the motor end + holder at the far end + rigid coupling + disc coupling above its motor, 1 for each
 */
const locating: PlateCheck = {
  ...about,
  id: 'locating-bearings',
  group: 'mount',
  question: 'holds',
  title: 'Places that carry the screw along its axis',
  unit: '',
  limits: hard({ min: 1, max: 1 }),
  moves: 'thrust_bearing, locating_holder, coupling, mounting',
  grave: true,
  run: ({ drive, joint, axial: { thrustBearing, locatingHolder, mounting } }, { pass }) => {
    if (drive === 'belt') return undefined;
    const holders = locatingHolder ? ['the holder at the far end'] : [];
    const asked = holders.length === 0 && !thrustBearing;
    if (asked && joint === undefined) return notJudged('coupling');
    if (asked && joint === 'disc' && mounting === undefined) return notJudged('mounting');
    const places = locatingPlaces({ holders, thrustBearing, joint, mounting });
    return judgeLocating(
      places,
      pass,
      'a thrust bearing and a collar at the motor end (thrust_bearing: yes), or a holder at the far end (locating_holder: yes)',
    );
  },
};

/**
 * A thrust bearing that stands in the plate stands around the hole of the pilot: under its row of balls or needles must be plastic,
 * or its washer bends through, and a small one falls in.
 *
 *     land = ((d + D)/2 − hole of the pilot)/2
 */
const bearingSeat: PlateCheck = {
  ...about,
  id: 'bearing-seat',
  group: 'mount',
  question: 'holds',
  title: 'Plate under the thrust bearing, in from its row of balls or needles',
  limits: soft({ min: 1 }, { min: 0 }),
  moves: 'bearing, bearing_on, motor.pilot',
  grave: true,
  run: (design, { pass }) => {
    const { drive, axial, bearingOn, bearing, finished } = design;
    if (drive === 'belt' || !axial.thrustBearing || bearingOn === 'machine') return undefined;
    if (bearingOn === undefined) return notJudged('bearing_on');
    if (!bearing) return notJudged('bearing');
    const row = (bearing.bore + bearing.outside) / 2;
    const hole = shifted(holeResidual(design, finished.pilot), finished.pilot);
    const land = scaled(difference(exactly(row), hole), 0.5);
    const cure = keeps(land.least, pass)
      ? ''
      : '; stand it in a plate of the machine with a bore of its own (bearing_on: machine), or take a wider one';
    return valued(
      land,
      `a row of ⌀${plain(row, 1)} mm over the hole of ⌀${plain(finished.pilot, 1)} for the pilot${cure}`,
    );
  },
};

/** Whether the motor goes on, and drives what it is for. */
export const MOTOR_CHECKS: readonly PlateCheck[] = [
  pilotFit,
  holePosition,
  screwEngagement,
  shaftLeft,
  headsClear,
  locating,
  bearingSeat,
  motorThrust,
];
