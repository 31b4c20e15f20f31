import { circleThrough } from '../common/drawn/hole-circle.js';
import { rectangleOf } from '../common/hole-pattern.js';
import type { Sizes } from '../part-kind.js';
import type { MotorPlatePlan } from './plan.js';

/** Sizes of a motor plate by their names. */
export function namedSizes({ length, width, thickness, pilot, motor, machine }: MotorPlatePlan): Sizes {
  const rectangle = rectangleOf(machine);
  const radius = circleThrough(machine.centres);
  return {
    length,
    width,
    thickness,
    pilot_hole: pilot,
    motor_square: motor.square,
    motor_hole_diameter: motor.diameter,
    ...(motor.sunk ? { head_pocket_diameter: motor.sunk.diameter, head_pocket_depth: motor.sunk.depth } : {}),
    hole_diameter: machine.diameter,
    ...(machine.slot ? { slot_length: machine.diameter + 2 * machine.slot.by } : {}),
    ...(rectangle
      ? { holes_along_x: rectangle.along_x, holes_along_y: rectangle.along_y }
      : radius && machine.centres.length > 1
        ? { hole_circle: 2 * radius }
        : {}),
  };
}
