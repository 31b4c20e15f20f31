import { besideScrews } from '../../mechanics/bolt/beside-screws.js';
import { screwShares } from '../../mechanics/bolt/screw-shares.js';
import { onceFor } from '../../units/once.js';
import { bendSlab, type SlabBending, type Support } from '../common/held-slab.js';
import { boreOf, type JointHole, seatDiameter } from '../common/joints.js';
import { dot, reachAlong, type Slab } from '../common/slab.js';
import { tipSlab } from '../common/tipped-slab.js';
import type { MotorPlateDesign } from './dimensions.js';
import { type MotorPlatePlan, motorGrip, type Point } from './plan.js';
import { plateOutline, slotOutline } from './solid.js';

/** Fine enough for a section whose stress a limit hangs on, mm. */
const CHORD = 0.02;

/** How a plate bends under one newton between motor and machine, and what a moment across the shaft comes to. */
export interface PlateBending extends Pick<SlabBending, 'strip' | 'lean'> {
  /** thrust that bends the plate as much as a moment of 1 N·mm does [1/mm] */
  readonly perMoment: number;
}

/**
 * The plate hangs between the motor's screws and those of the machine. Where the machine's stand further out they hold it, and
 * the load comes in at the motor's; where they stand further in, the other way round. Between the motor's screws its stiff face
 * backs the plate; what lies behind the rest of it is left out. Their holes stand apart, so that one or the other reaches further out.
 * Bolts in a line beside the load do not hold it by pull alone: the plate tips about its edge.
 */
export const bendPlate = onceFor((design: MotorPlateDesign): PlateBending => {
  const { finished, joints } = design;
  const slab = slabOf(design);
  const [motor, machine] = [finished.motor.centres, finished.machine.centres];
  const held = { slab, supports: supportsAt(machine, joints.machine), ...heldBetween(motor) };
  const bent = [
    bendSlab(held),
    bendSlab({ slab, supports: supportsAt(motor, joints.motor), ...heldBetween(machine) }),
    tipSlab(held, { across: held.backed }),
  ].filter((one) => one !== undefined);
  return {
    perMoment: 1 / leverOf(design),
    strip: bent.map(({ strip }) => strip).reduce((worst, next) => (next.stress > worst.stress ? next : worst)),
    lean: Math.max(...bent.map(({ lean }) => lean)),
  };
});

function supportsAt(centres: readonly Point[], hole: JointHole): Support[] {
  const head = Math.max(seatDiameter(hole), boreOf(hole));
  const shares = screwShares(centres);
  return centres.map((at, i) => ({ at, head, hole: boreOf(hole), share: shares[i]! }));
}

/** Screws clamp the plate to something stiff: it does not bend between them, and is as wide there as they stand apart. */
function heldBetween(centres: readonly Point[]): { reach: (along: Point) => number; backed: number } {
  const reach = (along: Point) => Math.max(0, ...centres.map((at) => dot(at, along)));
  const across = ([x, y]: Point) => reach([x, y]) + reach([-x, -y]);
  return { reach, backed: Math.max(across([1, 0]), across([0, 1])) };
}

/**
 * A moment M across the shaft pulls the screws on one side and presses on the other like a thrust of M / Σ s·|d|, with s the share
 * of a screw and d its distance from the axis, or from their own middle where that is less. Where they stand in a row the plate leans on its nearer edge; where that row is
 * beside the load, the moment turns the plate by as much from where the motor's screws end.
 */
function leverOf({ finished }: MotorPlateDesign): number {
  const { motor, machine, length, width, middle: plate } = finished;
  const beside = besideScrews(machine.centres);
  const lever = (centres: readonly Point[], axis: 0 | 1) => {
    const mean = (of: (at: Point) => number) => centres.reduce((sum, at) => sum + of(at), 0) / centres.length;
    const middle = mean((at) => at[axis]);
    const edge = [length, width][axis]! / 2 - Math.abs(middle - plate[axis]);
    const tips = beside && centres === machine.centres && beside.along[axis] ** 2 > 0.5;
    const spread = Math.min(...[0, middle].map((from) => mean((at) => Math.abs(at[axis] - from))));
    return Math.max(spread, tips ? heldBetween(motor.centres).reach(beside.along) : edge / 2);
  };
  return Math.min(...([0, 1] as const).flatMap((axis) => [lever(motor.centres, axis), lever(machine.centres, axis)]));
}

/** How far a plate reaches on its seat along a unit vector, from the axis, mm. */
export function plateReach(finished: MotorPlatePlan): (along: Point) => number {
  const outline = plateOutline(finished, CHORD);
  return (along) => reachAlong(outline, along);
}

function slabOf({ finished }: MotorPlateDesign): Slab {
  const { thickness, pilot, motor, machine } = finished;
  const { slot } = machine;
  const through = { from: 0, to: thickness };
  return {
    outline: plateOutline(finished, CHORD),
    thickness,
    openings: [
      { shape: { at: [0, 0], radius: pilot / 2 }, ...through },
      ...motor.centres.map((at) => ({ shape: { at, radius: motor.diameter / 2 }, ...through })),
      ...(motor.sunk
        ? motor.centres.map((at) => ({
            shape: { at, radius: motor.sunk!.diameter / 2 },
            from: motorGrip(finished),
            to: thickness,
          }))
        : []),
      ...machine.centres.map((at) => ({
        shape: slot ? { outline: slotOutline({ ...machine, slot }, at, CHORD) } : { at, radius: machine.diameter / 2 },
        ...through,
      })),
    ],
  };
}
