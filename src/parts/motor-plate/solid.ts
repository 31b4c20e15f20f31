import { type Outline, polygonArea, rectangleOutline, sidesFor } from '../../solid/outline.js';
import { prismVolume } from '../../solid/volume.js';
import { type Cut, holeCut, OVERSHOOT } from '../common/cut.js';
import { lessChords } from '../common/wall-in-file.js';
import type { PlannedBody } from '../part-kind.js';
import type { SizeChoice } from '../part-views.js';
import type { MotorPlateDesign } from './dimensions.js';
import type { MachineHoles, MotorPlatePlan, Point } from './plan.js';
import { thinnestWall } from './walls.js';

/** The plate as a recipe, and what it must measure. */
export function motorPlateBodies(design: MotorPlateDesign, sizes: SizeChoice = 'printed'): PlannedBody[] {
  const { name, material, printer } = design;
  const plan = design[sizes];
  const { thickness, length, width, middle } = plan;
  const outline = plateOutline(plan, printer.chordError);
  const cuts = cutsOf(plan, printer.chordError);
  return [
    {
      recipe: {
        name,
        material: material.name,
        shape: {
          kind: 'difference',
          of: [{ kind: 'prism', outlines: [outline], from: 0, to: thickness }, ...cuts.map(({ shape }) => shape)],
        },
      },
      expected: () => ({
        volume: polygonArea(outline) * thickness - cuts.reduce((sum, { volume }) => sum + volume, 0),
        mark: 0,
        bounds: [
          [middle[0] - length / 2, middle[1] - width / 2, 0],
          [middle[0] + length / 2, middle[1] + width / 2, thickness],
        ],
      }),
      printer,
      leastWall: lessChords(thinnestWall(plan), printer.chordError),
    },
  ];
}

/** Outline of a plate. */
export function plateOutline({ length, width, corner, middle }: MotorPlatePlan, chordError: number): Outline {
  return rectangleOutline({
    size: [length, width],
    center: middle,
    radius: corner,
    sides: sidesFor(corner, chordError),
  });
}

/** A slot to the machine. */
export function slotOutline(
  { diameter, slot }: MachineHoles & { readonly slot: NonNullable<MachineHoles['slot']> },
  center: Point,
  chordError: number,
): Outline {
  const long = diameter + 2 * slot.by;
  return rectangleOutline({
    size: slot.along === 'x' ? [long, diameter] : [diameter, long],
    center,
    radius: diameter / 2,
    sides: sidesFor(diameter / 2, chordError),
  });
}

function cutsOf({ thickness, pilot, motor, machine }: MotorPlatePlan, chordError: number): Cut[] {
  const through = { from: 0, to: thickness };
  const asItIs = (size: number) => size;
  const { sunk } = motor;
  const { slot } = machine;
  return [
    holeCut({ center: [0, 0], ...through, bore: pilot }, asItIs, chordError),
    ...motor.centres.map((center) =>
      holeCut(
        {
          center,
          ...through,
          bore: motor.diameter,
          ...(sunk
            ? {
                pocket: {
                  pocket: { kind: 'round' as const, ...sunk },
                  side: 'high' as const,
                  depth: sunk.depth,
                },
              }
            : {}),
        },
        asItIs,
        chordError,
      ),
    ),
    ...machine.centres.map((center) =>
      slot
        ? slotCut(slotOutline({ ...machine, slot }, center, chordError), thickness)
        : holeCut({ center, ...through, bore: machine.diameter }, asItIs, chordError),
    ),
  ];
}

function slotCut(outline: Outline, thickness: number): Cut {
  return {
    shape: { kind: 'prism', outlines: [outline], from: -OVERSHOOT, to: thickness + OVERSHOOT },
    volume: prismVolume({ outlines: [outline], from: 0, to: thickness }),
  };
}
