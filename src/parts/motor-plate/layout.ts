import type { Assumptions } from '../../sheet/assumptions.js';
import { clearanceHole } from '../../standards/fasteners/clearance-hole.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import type { HolePattern } from '../common/hole-pattern.js';
import { boreOf, type JointHole, pocketOf, threadReach, washerRadius } from '../common/joints.js';
import type { Motor } from './motor.js';
import { hasUsualScrew, headHeight } from './motor-screw.js';
import { edgeDistance, type MotorPlatePlan, motorOpening, type Point, slotEnds } from './plan.js';
import type { MotorPlateSheet } from './sheet.js';
import { wallCure } from './wall-cure.js';
import { ligamentsOf } from './walls.js';

/** Figures that a plate starts from where its sheet does not say, mm. @source common-practice */
const D = {
  corner: 3,
  /** a pilot that locates its motor has so much play, on the diameter */
  pilotPlay: 0.3,
  /** thickness by the side of the motor's square */
  thickness: [
    [28, 5],
    [40, 6],
    [60, 8],
    [Infinity, 12],
  ],
  /** plastic under sunk heads, and beyond what stands nearest to the edge */
  floor: 4,
  edge: 2,
  /** steps in which a thickness is looked for that suits the screws in the shops, and how many of them */
  step: 0.5,
  steps: 8,
} as const;

/** Without so much plastic between two openings there is no plate, mm. */
const LEAST_GAP = 0.4;

/** What a plate is laid out around. */
export interface Task {
  readonly motor: Motor;
  readonly sunk: boolean;
  readonly pattern: HolePattern;
  readonly joint: JointHole;
}

/** The holes for the motor's screws, as bolting sees them. */
export function motorJoint({ screw }: Pick<Motor, 'screw'>, sunk: boolean): JointHole {
  return { joint: sunk ? 'counterbore' : 'through', screw, diameter: clearanceHole(screw, 'medium') };
}

/**
 * Lays a plate out at finished sizes.
 * @throws InputError holes that leave the plate or meet, a plate too thin for its heads
 */
export function layOut(sheet: MotorPlateSheet, task: Task, assumptions: Assumptions): MotorPlatePlan {
  const { motor, sunk, pattern, joint } = task;
  const square = motor.square.likely;
  const own = motorJoint(motor, sunk);
  const pocket = pocketOf(own);
  const play = assumptions.or<number>(sheet.fit?.pilot, 'fit.pilot', D.pilotPlay, 'a pilot that locates its motor');
  const machine = {
    diameter: boreOf(joint),
    centres: pattern.centres,
    isRectangle: pattern.isRectangle ?? false,
    ...(sheet.slots ? { slot: { along: sheet.slots.along, by: sheet.slots.by } } : {}),
  };
  const bare = {
    thickness: thicknessOf(sheet, task, assumptions),
    pilot: motor.pilot.likely + play,
    motor: {
      square,
      centres: squareOf(square),
      diameter: own.diameter,
      ...(pocket?.kind === 'round' ? { sunk: { diameter: pocket.diameter, depth: pocket.depth } } : {}),
    },
    machine,
  };
  const plan = { ...outlineOf(sheet, { ...task, bare }, assumptions), ...bare };
  requireRoom(plan);
  return plan;
}

function squareOf(side: number): Point[] {
  const half = side / 2;
  return [
    [half, half],
    [-half, half],
    [-half, -half],
    [half, -half],
  ];
}

function thicknessOf(sheet: MotorPlateSheet, { motor, sunk, joint }: Task, assumptions: Assumptions): number {
  const [, usual] = D.thickness.find(([side]) => motor.square.likely <= side)!;
  const head = sunk ? headHeight(motor.screw) : 0;
  const insert = joint.joint === 'insert' && joint.screw ? threadReach(joint.screw) : 0;
  const first = Math.max(usual, insert, Math.ceil((head + D.floor) / D.step) * D.step);
  const { threadDepth } = motor;
  const suits = (thickness: number) =>
    threadDepth === undefined ||
    hasUsualScrew({ screw: motor.screw, depth: threadDepth, grip: thickness - head, sunk });
  const tries = Array.from({ length: D.steps + 1 }, (_, i) => first + i * D.step);
  const thickness = assumptions.or<number>(
    sheet.plate?.thickness,
    'plate.thickness',
    tries.find(suits) ?? first,
    'usual for such a motor, and for screws of a usual length',
  );
  if (thickness < head + 1)
    throw fault('plate.thickness', `${plain(thickness)} mm`, `must be at least ${plain(head + 1)} mm under sunk heads`);
  return thickness;
}

type Bare = Omit<MotorPlatePlan, 'length' | 'width' | 'corner' | 'middle'>;

/** An outline around all that stands in or on the plate. */
function outlineOf(
  { plate }: MotorPlateSheet,
  { motor, joint, bare }: Task & { readonly bare: Bare },
  assumptions: Assumptions,
): Pick<MotorPlatePlan, 'length' | 'width' | 'corner' | 'middle'> {
  const { machine } = bare;
  const around = (radius: number) => radius + D.edge;
  const motorReach = Math.max(
    (motor.body ?? 0) / 2,
    motor.square.likely / 2 + around(Math.max(motorOpening(bare), washerRadius({ ...joint, screw: motor.screw }))),
    bare.pilot / 2 + around(0),
  );
  const holeReach = around(
    joint.joint === 'insert' ? machine.diameter : Math.max(machine.diameter / 2, washerRadius(joint)),
  );
  const ends = machine.centres.flatMap((at) => slotEnds(machine, at));
  const span = (axis: 0 | 1) => ({
    low: Math.min(-motorReach, ...ends.map((at) => at[axis] - holeReach)),
    high: Math.max(motorReach, ...ends.map((at) => at[axis] + holeReach)),
  });
  const side = (axis: 0 | 1, field: 'length' | 'width') =>
    assumptions.or<number>(
      plate?.[field],
      `plate.${field}`,
      Math.ceil(span(axis).high - span(axis).low),
      'around the motor and all holes',
    );
  const middleOf = (axis: 0 | 1) => Math.round(10 * (span(axis).low + span(axis).high)) / 20 + 0;
  const [length, width] = [side(0, 'length'), side(1, 'width')];
  return {
    length,
    width,
    corner: Math.min(D.corner, length / 4, width / 4),
    middle: [middleOf(0), middleOf(1)],
  };
}

/** Openings must stand in the plate and apart, so that there is a plate at all. */
function requireRoom(plan: MotorPlatePlan): void {
  const { length, width, motor, machine } = plan;
  const inside = (at: Point, radius: number) => edgeDistance(plan, at) >= radius + LEAST_GAP;
  const places = [
    { what: 'the pilot of the motor', at: [0, 0] as Point, radius: plan.pilot / 2 },
    ...motor.centres.map((at) => ({ what: 'the holes of the motor', at, radius: motorOpening(plan) })),
    ...machine.centres
      .flatMap((at) => slotEnds(machine, at))
      .map((at) => ({
        what: `a hole at x ${plain(at[0], 2)}, y ${plain(at[1], 2)}`,
        at,
        radius: machine.diameter / 2,
      })),
  ];
  const outside = places.find(({ at, radius }) => !inside(at, radius));
  if (outside) throw fault('plate', `${plain(length)} × ${plain(width)} mm`, `must be larger to hold ${outside.what}`);
  const met = ligamentsOf(plan).find(({ size }) => size < LEAST_GAP);
  if (!met) return;
  const ofMotor = met.where === 'pilot and motor hole';
  const field = ofMotor ? 'motor' : machine.slot ? 'slots' : 'machine.holes';
  throw fault(
    field,
    met.where,
    `must stand ${plain(LEAST_GAP - met.size, 2)} mm further apart; ${wallCure(plan, met.where, { min: LEAST_GAP })}`,
  );
}
