import { SOLID_GROUP } from '../../judge/accept.js';
import { type Finding, hard, valued } from '../../judge/check.js';
import { finding } from '../../judge/run-checks.js';
import type { Kernel } from '../../solid/kernel.js';
import { NO_COMMON_VOLUME } from '../../solid/mate.js';
import { sidesFor } from '../../solid/outline.js';
import { cylinder, type Shape } from '../../solid/recipe.js';
import { exactly } from '../../units/measured.js';
import type { MotorPlateDesign } from './dimensions.js';
import { motorGrip, type Point, slotEnds } from './plan.js';
import { motorPlateBodies } from './solid.js';

const LOOSE = 0.01;
const CHORD = 0.005;
const BEYOND = 5;

/**
 * Tries the pilot, the motor's screws with their sunk heads, and what goes to the machine, in the plate at finished sizes.
 *
 *     V = volume in common of the plate and one of pilot, screws and sunk heads, the largest
 */
export function mateMotorPlate(design: MotorPlateDesign, kernel: Kernel): Finding[] {
  const [body] = motorPlateBodies(design, 'finished').map(({ recipe }) => recipe.shape);
  const parts = [pilotIn(design), ...motorScrews(design), ...machineScrews(design)];
  const volumes = parts.flatMap((part) => kernel.commonVolumes(body!, part, [{}]));
  const about = {
    id: 'solid-mate',
    group: SOLID_GROUP,
    question: 'prints',
    title: 'Common volume of the plate with the pilot and all screws',
    unit: 'mm³',
    source: 'derived: the solids themselves',
    limits: hard({ max: NO_COMMON_VOLUME }),
    moves: 'fit.pilot, machine.holes',
  };
  return [finding(about, valued(exactly(Math.max(...volumes)), 'at finished sizes, the motor on its face'))];
}

/** The pilot as large as it may be, where it passes at all. */
function pilotIn({ motor, finished }: MotorPlateDesign): Shape {
  const across = Math.min(motor.pilot.most, finished.pilot - LOOSE);
  return bar(across, [0, 0], -BEYOND, motor.pilotHeight);
}

function motorScrews({ motor, joints, finished }: MotorPlateDesign): Shape[] {
  const { centres, diameter, sunk } = finished.motor;
  const grip = motorGrip(finished);
  return centres.flatMap((at) => [
    bar(Math.min(motor.screwDiameter, diameter - LOOSE), at, -BEYOND, finished.thickness + BEYOND),
    ...(sunk && joints.motor.screw ? [bar(sunk.diameter - LOOSE, at, grip + LOOSE, finished.thickness)] : []),
  ]);
}

/** Bolts at both ends of their slots; where an insert stands, what it fills. */
function machineScrews({ pattern, finished }: MotorPlateDesign): Shape[] {
  const { machine, thickness } = finished;
  if (pattern.screwDiameter === 0) return [];
  const across = Math.min(pattern.screwDiameter, machine.diameter - LOOSE);
  return machine.centres
    .flatMap((at) => slotEnds(machine, at))
    .map((at) => bar(across, at, -BEYOND, thickness + BEYOND));
}

function bar(diameter: number, [x, y]: Point, from: number, to: number): Shape {
  const radius = diameter / 2;
  const shape = cylinder({ radius, sides: sidesFor(radius, CHORD), circumscribed: false, from, to });
  return { kind: 'moved', shape, by: [x, y, 0] };
}
