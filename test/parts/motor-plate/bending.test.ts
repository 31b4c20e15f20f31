import { describe, expect, it } from 'vitest';
import { bendPlate } from '../../../src/parts/motor-plate/bending.js';
import type { MotorPlateDesign } from '../../../src/parts/motor-plate/dimensions.js';
import type { Point } from '../../../src/parts/motor-plate/plan.js';
import { design } from '../../../src/pipeline/design.js';
import { MOUNTED } from '../../support/motor-plate-sheets.js';

/** A plate of 100 × 100 × 6 mm with a pilot of 10 mm, whose motor hangs on two screws 35 mm from its shaft. */
function bent(machine: readonly Point[], turn = (at: Point): Point => at) {
  return plate({
    motor: [
      [35, 0],
      [-35, 0],
    ].map(([x, y]) => turn([x!, y!])),
    machine: machine.map(turn),
  }).strip;
}

function plate(p: { readonly motor: readonly Point[]; readonly machine: readonly Point[]; readonly pilot?: number }) {
  const made = design(MOUNTED) as MotorPlateDesign;
  const { motor, machine: holes } = made.finished;
  return bendPlate({
    ...made,
    finished: {
      ...made.finished,
      ...{ length: 100, width: 100, middle: [0, 0], thickness: 6, pilot: p.pilot ?? 10 },
      motor: { ...motor, centres: p.motor },
      machine: { ...holes, centres: p.machine },
    },
  });
}

describe('a plate whose motor’s screws stand further out than the machine’s', () => {
  it('is backed as wide as the machine’s screws stand apart, on both sides of the shaft', () => {
    // half of the load 35 − 12 = 23 mm out; 20 + 12 mm across between two: π/2·32 wide, less the machine’s hole of 4.5 mm
    const aside: Point[] = [
      [20, 0],
      [-12, 0],
    ];
    const upright = bent(aside, ([x, y]) => [y, x]);
    expect(bent(aside)).toMatchObject({ share: 0.5, arm: 23, along: [-1, 0], distance: 12 });
    expect(upright).toMatchObject({ share: 0.5, arm: 23, along: [0, -1], distance: 12 });
    for (const { stress } of [bent(aside), upright])
      expect(stress).toBeCloseTo((0.5 * 23 * 6) / ((16 * Math.PI - 4.5) * 6 ** 2), 6);
  });

  // at 12 mm a pilot of 30 mm takes 2·√(15² − 12²) = 18 mm, the hole among them
  it('is as much weaker as its pilot takes', () => {
    const { strip } = plate({
      motor: [
        [35, 0],
        [-35, 0],
      ],
      machine: [
        [20, 0],
        [-12, 0],
      ],
      pilot: 30,
    });
    expect(strip.stress).toBeCloseTo((0.5 * 23 * 6) / ((16 * Math.PI - 18) * 6 ** 2), 6);
  });

  // a row 40 mm beside the shaft: across it the plate turns from the motor's screws, 35 or 10 mm out; along it on half of the 50 mm to its edge
  it('turns by the least lever of either row, about either way', () => {
    const square = (half: number): Point[] =>
      [
        [1, 1],
        [1, -1],
        [-1, 1],
        [-1, -1],
      ].map(([x, y]) => [half * x!, half * y!]);
    const machine: Point[] = [
      [40, 10],
      [40, -10],
    ];
    expect(plate({ motor: square(35), machine }).perMoment).toBeCloseTo(1 / 25, 9);
    expect(plate({ motor: square(10), machine }).perMoment).toBeCloseTo(1 / 10, 9);
    const upright = machine.map(([x, y]): Point => [y, x]);
    expect(plate({ motor: square(35), machine: upright }).perMoment).toBeCloseTo(1 / 25, 9);
    // about the shaft a square of 60 mm has 30 mm, and so has the motor's
    expect(plate({ motor: square(35), machine: square(30) }).perMoment).toBeCloseTo(1 / 30, 9);
  });

  it('tips about its edge where the machine’s stand in a line beside the load, 5 mm beyond the motor’s', () => {
    // all of the load 40 mm out, on 70 mm between the motor’s and 5 more on either side, less two holes of 4.5
    const strip = bent([
      [40, 10],
      [40, -10],
    ]);
    expect(strip).toMatchObject({ share: 1, arm: 40, along: [1, 0], distance: 40 });
    expect(strip.stress).toBeCloseTo((40 * 6) / ((80 - 2 * 4.5) * 6 ** 2), 6);
  });
});
