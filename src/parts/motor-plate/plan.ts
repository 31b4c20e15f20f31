import type { HolePlaces } from '../common/hole-pattern.js';
import { nearestPlaces } from '../common/polygon-distance.js';
import type { PrintSizes } from '../common/print-sizes.js';

export type Point = readonly [number, number];

/** Holes to the machine; as slots they reach so far to each side. */
export interface MachineHoles extends HolePlaces {
  readonly diameter: number;
  readonly slot?: { readonly along: 'x' | 'y'; readonly by: number };
}

/** A motor plate, the face of the motor on z = 0, the motor's axis on Z. Sizes of one kind: finished or printed. */
export interface MotorPlatePlan {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly corner: number;
  /** middle of the outline */
  readonly middle: Point;
  /** hole for the pilot of the motor */
  readonly pilot: number;
  readonly motor: {
    /** side of the square of holes */
    readonly square: number;
    readonly centres: readonly Point[];
    readonly diameter: number;
    /** pockets for heads, from the outer face */
    readonly sunk?: { readonly diameter: number; readonly depth: number };
  };
  readonly machine: MachineHoles;
}

/** Middles of both ends of a hole to the machine: one place where it is round. */
export function slotEnds({ slot }: Pick<MachineHoles, 'slot'>, [x, y]: Point): readonly [Point, Point] {
  const [dx, dy] = !slot ? [0, 0] : slot.along === 'x' ? [slot.by, 0] : [0, slot.by];
  return [
    [x - dx, y - dy],
    [x + dx, y + dy],
  ];
}

/** Distance of the middle lines of two holes or slots; one place stands for a round hole. */
export function apart(a: readonly [Point, Point], b: readonly [Point, Point]): number {
  const [p, q] = nearestPlaces(a, b);
  return Math.hypot(p[0] - q[0], p[1] - q[1]);
}

/** How far a point inside a plate lies from its edge, rounded corners counted. */
export function edgeDistance(
  { length, width, corner, middle }: Pick<MotorPlatePlan, 'length' | 'width' | 'corner' | 'middle'>,
  [x, y]: Point,
): number {
  const [dx, dy] = [length / 2 - Math.abs(x - middle[0]), width / 2 - Math.abs(y - middle[1])];
  if (dx >= corner || dy >= corner) return Math.min(dx, dy);
  return corner - Math.hypot(corner - dx, corner - dy);
}

/** Radius of a motor hole where it is widest. */
export function motorOpening({ motor: { diameter, sunk } }: Pick<MotorPlatePlan, 'motor'>): number {
  return Math.max(diameter, sunk?.diameter ?? 0) / 2;
}

/** Plastic under the heads of the motor's screws. */
export function motorGrip({ motor: { sunk }, thickness }: Pick<MotorPlatePlan, 'motor' | 'thickness'>): number {
  return thickness - (sunk?.depth ?? 0);
}

/** Sizes of a motor plate as they must stand in the file. */
export function printedPlate(plan: MotorPlatePlan, { inside, outside, along, across }: PrintSizes): MotorPlatePlan {
  const { motor, machine } = plan;
  const placed = ([x, y]: Point): [number, number] => [across(x), across(y)];
  return {
    length: outside(plan.length),
    width: outside(plan.width),
    thickness: along(plan.thickness),
    corner: across(plan.corner),
    middle: placed(plan.middle),
    pilot: inside(plan.pilot),
    motor: {
      square: across(motor.square),
      centres: motor.centres.map(placed),
      diameter: inside(motor.diameter),
      ...(motor.sunk ? { sunk: { diameter: inside(motor.sunk.diameter), depth: along(motor.sunk.depth) } } : {}),
    },
    machine: {
      ...machine,
      diameter: inside(machine.diameter),
      centres: machine.centres.map(placed),
      ...(machine.slot ? { slot: { ...machine.slot, by: across(machine.slot.by) } } : {}),
    },
  };
}
