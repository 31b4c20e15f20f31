import { type Check, notJudged, soft, told, valued } from '../../../judge/check.js';
import { allKeep, keeps } from '../../../judge/judge.js';
import { plain } from '../../../units/format.js';
import { exactly, scaled, shifted } from '../../../units/measured.js';
import { judgeHeads, judgePosition, patternError } from '../../common/bolting.js';
import { CARRIAGE_WALL, judgeCarriageWall } from '../../common/carriage-wall.js';
import { shrinkAppliedOnce } from '../../common/checks.js';
import { boreOf, headRadius, seatDiameter, seatName, threadReach, washerRadius } from '../../common/joints.js';
import { holeResidual, planeResidual } from '../../common/residual.js';
import { LEAST_WALL } from '../../common/walls.js';
import type { MotorPlateDesign } from '../dimensions.js';
import { apart, edgeDistance, motorOpening, type Point, slotEnds } from '../plan.js';
import { wallCure } from '../wall-cure.js';
import { thinnestWall } from '../walls.js';

type PlateCheck = Check<MotorPlateDesign>;
const about = { group: 'bolts', question: 'bolts-on', unit: 'mm', source: 'common practice' } as const;

/** All bolts to the machine go in at once. */
const machinePosition: PlateCheck = {
  ...about,
  id: 'machine-position',
  title: 'Error of the holes to the machine',
  moves: 'machine.holes, printer.hole_offset, material',
  run: (design, limits) => {
    const { pattern, joints, finished } = design;
    if (pattern.screw === undefined)
      return told('caution', 'no listed bolt passes these holes; name one (machine.holes.screw)');
    const { diameter, joint } = joints.machine;
    // an insert fills its bore: the play is that of its screw in the machine's own hole, which is no print
    const hole = joint === 'insert' ? exactly(diameter) : shifted(holeResidual(design, diameter), diameter);
    const { spacing } = pattern;
    return judgePosition(
      {
        error: patternError(scaled(shifted(spacing, -spacing.likely), 0.5), planeResidual(design, spacing.likely)),
        play: scaled(shifted(hole, -pattern.screwDiameter), 0.5),
        pattern: { hole: joints.machine, length: finished.thickness },
        cause: finished.machine.slot ? ' across the slots' : '',
      },
      design,
      limits,
    );
  },
};

/** What sits on a hole is held by it; washers of screws that go into inserts of the plate sit on the machine's own holes. */
const headSeat: PlateCheck = {
  ...about,
  id: 'head-seat',
  title: 'Heads and washers on their holes',
  grave: true,
  moves: 'machine.holes.screw, machine.holes.diameter',
  run: (design, limits) => {
    const { pattern, finished, joints, motor } = design;
    const holeOf = (diameter: number) => shifted(holeResidual(design, diameter), diameter);
    const { screw } = pattern;
    const rows = [
      {
        what: `${seatName(joints.motor)} on the motor's holes`,
        across: seatDiameter(joints.motor),
        hole: holeOf(finished.motor.diameter),
        screw: motor.screwDiameter,
      },
      ...(screw
        ? [
            {
              what: "washer on the machine's holes",
              across: 2 * washerRadius(joints.machine),
              hole: joints.machine.joint === 'insert' ? pattern.diameter : holeOf(finished.machine.diameter),
              screw: pattern.screwDiameter,
            },
          ]
        : []),
    ];
    return judgeHeads(rows, pattern.screwUnsure ? ['machine.holes.screw'] : [], limits);
  },
};

/**
 * Washers lie on the plate, clear of its edge, its openings and each other.
 *
 *     room = middle of a hole to the edge of plate or pilot − ⌀washer/2; hole to hole − radii of washers or openings; the least
 */
const headRoom: PlateCheck = {
  ...about,
  id: 'head-room',
  title: 'Room around the washers on the plate',
  moves: 'machine.holes, plate.length, plate.width, motor_heads',
  run: ({ finished, joints, machine }, inForce) => {
    const onMachine = joints.machine.joint === 'through' && joints.machine.screw !== undefined;
    const proud = joints.motor.joint === 'through';
    if (!onMachine && !proud) return undefined;
    const ofMotor = proud ? washerRadius(joints.motor) : motorOpening(finished);
    const ofMachine = onMachine ? washerRadius(joints.machine) : finished.machine.diameter / 2;
    const slots = finished.machine.centres.map((at) => slotEnds(finished.machine, at));
    const pilot = finished.pilot / 2;
    const motorRooms = finished.motor.centres.flatMap((at) => [
      edgeDistance(finished, at) - ofMotor,
      Math.hypot(...at) - pilot - ofMotor,
    ]);
    const middle: readonly [Point, Point] = [
      [0, 0],
      [0, 0],
    ];
    const machineRooms = slots.flatMap((ends) => [
      ...ends.map((at) => edgeDistance(finished, at) - ofMachine),
      apart(ends, middle) - pilot - ofMachine,
    ]);
    // washers of both patterns meet on the outer face; from the other side those of the machine meet the motor's holes
    const beside = machine.face === 'motor' || !onMachine ? ofMotor : finished.motor.diameter / 2;
    const between = slots.flatMap((ends) =>
      finished.motor.centres.map((at) => apart(ends, [at, at]) - beside - ofMachine),
    );
    const room = Math.min(...(proud ? motorRooms : []), ...(onMachine ? machineRooms : []), ...between);
    const bolts = [...(onMachine ? [joints.machine] : []), ...(proud ? [joints.motor] : [])];
    // room that a washer lacks, its head does not yet
    const own = soft({ min: 0 }, { min: Math.max(...bolts.map((one) => headRadius(one) - washerRadius(one))) });
    const cure = keeps(room, inForce.of(own).pass)
      ? ''
      : '; make the plate larger, sink the heads, or set the holes further apart';
    const washers = `washers of ${plain(2 * washerRadius(bolts[0]!), 1)} mm to the ${onMachine ? 'machine' : 'motor'}`;
    return valued(exactly(room), `${washers}${cure}`, own);
  },
};

/**
 * Heads or nuts beside the motor.
 *
 *     room = middle of a hole, or end of a slot, to the square of the motor's body − ⌀washer/2, the least
 */
const motorRoom: PlateCheck = {
  ...about,
  id: 'motor-room',
  title: 'Room beside the motor',
  limits: soft({ min: 0.5 }, { min: 0 }),
  moves: 'machine.holes, machine.joint, machine.face, motor.body',
  run: ({ machine, joints, finished, motor }, { pass }) => {
    const { screw, joint } = joints.machine;
    if (screw === undefined || joint === 'insert') return undefined;
    if (machine.face === 'motor' && machine.tapped) return undefined;
    if (motor.body === undefined) return notJudged('motor.body');
    const ring = washerRadius(joints.machine);
    const ends = finished.machine.centres.flatMap((at) => slotEnds(finished.machine, at));
    const room = Math.min(...ends.map((at) => toSquare(at, motor.body! / 2))) - ring;
    const cure = keeps(room, pass)
      ? ''
      : '; let screws come from the machine into inserts (machine.joint: insert), or set its holes further out';
    return valued(
      exactly(room),
      `washers of ${plain(2 * ring, 1)} mm beside a body of ${plain(motor.body, 1)} mm${cure}`,
    );
  },
};

/**
 * What passes the machine's opening: the motor, where the plate lies on the machine with the motor's face; else a pilot that is higher than the plate, or
 * the shaft.
 *
 *     room = (machine.opening − side of the motor's body, ⌀pilot or ⌀shaft)/2
 */
const motorPasses: PlateCheck = {
  ...about,
  id: 'motor-opening',
  title: 'Air around the motor in the opening',
  limits: soft({ min: 0.5 }, { min: 0 }),
  moves: 'machine.opening, machine.face, motor.body, motor.pilot_height, plate.thickness',
  run: (design, { pass }) => {
    const { opening } = design.machine;
    const through = passes(design);
    if (through === undefined || (opening === undefined && !through.asks)) return undefined;
    if (opening === undefined) return notJudged('machine.opening');
    if (through.across === undefined) return notJudged('motor.body');
    const room = scaled(shifted(scaled(through.across, -1), opening), 0.5);
    const cure = allKeep(room, pass) ? '' : `; widen it${through.cure}`;
    return valued(
      room,
      `${through.what} of ${plain(through.across.likely, 1)} mm in an opening of ${plain(opening, 1)} mm${cure}`,
    );
  },
};

/** What passes the opening, and whether it is to be told where something does. */
function passes({ machine, motor, finished }: MotorPlateDesign) {
  if (machine.face === 'motor')
    return {
      what: 'a body',
      across: motor.body === undefined ? undefined : exactly(motor.body),
      asks: false,
      cure: ', or let the outer face lie on the machine (machine.face: outer)',
    };
  if (motor.pilotHeight > finished.thickness)
    return {
      what: 'a pilot higher than the plate,',
      across: motor.pilot,
      asks: true,
      cure: ', or make the plate thicker',
    };
  return motor.shaftDiameter && { what: 'a shaft', across: motor.shaftDiameter, asks: false, cure: '' };
}

/**
 * Bolts hold on to the machine beside its opening.
 *
 *     wall = middle of a hole to the axis − machine.opening/2 − ⌀hole/2, the least
 */
const machineWall: PlateCheck = {
  ...CARRIAGE_WALL,
  question: 'bolts-on',
  group: 'bolts',
  id: 'machine-wall',
  title: 'Machine left beside its opening',
  moves: 'machine.opening, machine.holes',
  run: ({ machine: { opening }, finished, pattern }, limits) =>
    opening === undefined
      ? undefined
      : judgeCarriageWall(
          { bore: exactly(opening), offset: [0, 0] },
          { centres: finished.machine.centres, across: pattern.diameter },
          limits,
        ),
};

/** Distance of a point to a square about the axis; negative inside. */
function toSquare([x, y]: Point, half: number): number {
  const [dx, dy] = [Math.abs(x) - half, Math.abs(y) - half];
  return dx > 0 && dy > 0 ? Math.hypot(dx, dy) : Math.max(dx, dy);
}

/**
 * An insert stands in as much plastic as it is long.
 *
 *     beyond = thickness of the plate − 2·⌀screw
 */
const insertRoom: PlateCheck = {
  ...about,
  id: 'insert-room',
  title: 'Plate beyond the length of its inserts',
  limits: soft({ min: 0 }),
  moves: 'plate.thickness, machine.holes.screw',
  run: ({ joints, finished }, { pass }) => {
    const { joint, screw } = joints.machine;
    if (joint !== 'insert' || screw === undefined) return undefined;
    const reach = threadReach(screw);
    const cure = keeps(finished.thickness - reach, pass) ? '' : '; make the plate thicker, or take a smaller screw';
    return valued(
      exactly(finished.thickness - reach),
      `an insert for ${screw}, ${plain(reach, 1)} mm long, in a bore of ${plain(boreOf(joints.machine), 1)} mm${cure}`,
    );
  },
};

/** Slots are for belts: along them a motor that drives a screw loses its line. */
const slots: PlateCheck = {
  ...about,
  id: 'slots',
  title: 'How far the plate can be set along its slots',
  moves: 'slots, drive',
  run: ({ finished: { machine }, drive }) => {
    const { slot } = machine;
    if (!slot) return undefined;
    const reach = `${plain(slot.by, 1)} mm each way along ${slot.along}`;
    return drive === 'belt'
      ? told('pass', reach, slot.by)
      : told(
          'caution',
          `${reach}: a motor on a coupling loses its line when they slip; use round holes, or dowel it once it is set`,
          slot.by,
        );
  },
};

/**
 * Every wall is thick enough to be printed as one.
 *
 *     wall = least of plate under the heads, and distances of pilot, holes, slots and edge − radii
 */
const wall: PlateCheck = {
  ...about,
  id: 'wall',
  group: 'print',
  question: 'prints',
  title: 'Thinnest wall of the plate',
  limits: soft({ min: LEAST_WALL }, { min: 1.2 }),
  moves: 'plate, machine.holes, slots',
  run: ({ finished, printer }, { pass }) => {
    const { where, size } = thinnestWall(finished);
    const cure = keeps(size, pass) ? '' : `; ${wallCure(finished, where, pass)}`;
    return valued(exactly(size), `${where}: ${plain(size, 2)} mm, ${plain(size / printer.lineWidth, 1)} lines${cure}`);
  },
};

/**
 * A thin sheet has few turns of thread for the screws that hold the plate.
 *
 *     l/d = machine.thickness / ⌀screw
 */
const machineThread: PlateCheck = {
  ...about,
  id: 'machine-thread',
  title: "Thread in the machine's holes, in diameters",
  unit: '',
  limits: soft({ min: 1 }, { min: 0.5 }),
  moves: 'machine.thickness, machine.bare, machine.holes.screw',
  run: ({ machine: { tapped, thickness }, pattern: { screw, screwDiameter } }, { pass }) => {
    if (!tapped || screw === undefined) return undefined;
    if (thickness === undefined) return notJudged('machine.thickness');
    const turns = thickness / screwDiameter;
    const cure = keeps(turns, pass) ? '' : '; put nuts behind it (machine.bare: clear), or take a smaller screw';
    return valued(exactly(turns), `${screw} in ${plain(thickness, 1)} mm of thread${cure}`);
  },
};

/** Whether it can be bolted on and printed. */
export const BOLT_CHECKS: readonly PlateCheck[] = [
  machinePosition,
  headSeat,
  headRoom,
  motorRoom,
  motorPasses,
  machineWall,
  insertRoom,
  machineThread,
  slots,
  wall,
  shrinkAppliedOnce,
];
