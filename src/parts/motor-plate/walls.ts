import { thinnest, type Wall } from '../common/walls.js';
import { apart, edgeDistance, type MotorPlatePlan, motorGrip, motorOpening, type Point, slotEnds } from './plan.js';

/** The thinnest wall of a plate by arithmetic. Sizes of one kind. */
export function thinnestWall(plan: MotorPlatePlan): Wall {
  return thinnest(ligamentsOf(plan).concat([{ where: 'thickness', size: motorGrip(plan) }]));
}

/** All walls between pilot, holes, slots and edge. */
export function ligamentsOf(plan: MotorPlatePlan): Wall[] {
  const { pilot, motor, machine } = plan;
  const axis: readonly [Point, Point] = [
    [0, 0],
    [0, 0],
  ];
  const holes = [
    ...motor.centres.map((at) => ({ name: 'motor hole', ends: [at, at] as const, radius: motorOpening(plan) })),
    ...machine.centres.map((at) => ({
      name: machine.slot ? 'slot' : 'machine hole',
      ends: slotEnds(machine, at),
      radius: machine.diameter / 2,
    })),
  ];
  return [
    { where: 'pilot and edge', size: edgeDistance(plan, [0, 0]) - pilot / 2 },
    ...holes.flatMap(({ name, ends, radius }, i) => [
      { where: `pilot and ${name}`, size: apart(axis, ends) - pilot / 2 - radius },
      { where: `${name} and edge`, size: Math.min(...ends.map((at) => edgeDistance(plan, at))) - radius },
      ...holes.slice(0, i).map((other) => ({
        where: `${other.name} and ${name}`,
        size: apart(ends, other.ends) - radius - other.radius,
      })),
    ]),
  ];
}
