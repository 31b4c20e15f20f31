import { loftConvex } from '../../solid/convex-loft.js';
import { circleOutline, rectangleOutline, sidesFor } from '../../solid/outline.js';
import { noted, notedSize, spreadOf } from '../common/drawn/spread.js';
import type { Companion, HoleRow, PartViews, SizeChoice } from '../part-views.js';
import type { MotorPlateDesign } from './dimensions.js';
import { motorPlateBodies } from './solid.js';
import { endView } from './views/end.js';
import { CHORD, type PlateInSight } from './views/in-sight.js';
import { sideView } from './views/side.js';

/** Body of a motor in the picture where nobody told its length, and shaft beyond its face, mm. */
const SHOWN = { length: 34, shaft: 21, across: 5 };

/** What a drawing and the page show of a motor plate: a section, its outer face, and the motor. */
export function motorPlateViews(design: MotorPlateDesign, choice: SizeChoice): PartViews {
  const shapes = motorPlateBodies(design, choice).map(({ recipe }) => recipe.shape);
  const sight: PlateInSight = { design, shapes, plan: design[choice], spread: spreadOf(design, choice) };
  return {
    side: sideView(sight),
    end: endView(sight),
    holes: holeRows(sight),
    notes: notesOf(sight),
    material: design.material.name,
    companions: motorShown(design),
    cutTowards: 0,
  };
}

function holeRows({ plan: { motor, machine }, design: { pattern, motor: face, joints } }: PlateInSight): HoleRow[] {
  const { slot } = machine;
  const joint = joints.machine.joint === 'insert' ? 'for a heat-set insert' : 'through';
  const what = slot ? `slot ±${noted(slot.by)} along ${slot.along.toUpperCase()}` : joint;
  return [
    ...motor.centres.map((at, i) => ({
      label: `M${i + 1}`,
      at,
      diameter: motor.diameter,
      note: `${face.screw}, through${motor.sunk ? ', head sunk' : ''}`,
    })),
    ...machine.centres.map((at, i) => ({
      label: `${i + 1}`,
      at,
      diameter: machine.diameter,
      note: `${pattern.screw ?? 'no listed screw'}, ${what}`,
    })),
  ];
}

function notesOf({ design: { motor, machine, finished }, plan: { corner }, spread }: PlateInSight): string[] {
  return [
    `Corners R ${notedSize(corner, spread(corner, 'outside'))}`,
    `Motor: pilot ⌀${noted(motor.pilot.likely)}, holes on a square of ${noted(motor.square.likely)}, ${motor.screw}`,
    `The machine lies on ${machine.face === 'motor' ? "the motor's face" : 'the outer face'} (z = ${machine.face === 'motor' ? '0' : noted(finished.thickness)})`,
  ];
}

/** The motor under its plate, and its shaft through the pilot hole. */
function motorShown({ motor }: MotorPlateDesign): Companion[] {
  const side = motor.body ?? motor.square.likely + 3 * motor.screwDiameter;
  const radius = SHOWN.across / 2;
  return [
    {
      name: 'motor',
      mesh: loftConvex(rectangleOutline({ size: [side, side], radius: 0.08 * side }), [
        [-(motor.length ?? SHOWN.length), 0],
        [0, 0],
      ]),
    },
    {
      name: "the motor's shaft",
      mesh: loftConvex(circleOutline({ radius, sides: sidesFor(radius, CHORD) }), [
        [0, 0],
        [motor.shaftLength ?? SHOWN.shaft, 0],
      ]),
    },
  ];
}
