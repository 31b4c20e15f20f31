import { expect, it } from 'vitest';
import type { MotorPlatePlan } from '../../../src/parts/motor-plate/plan.js';
import { ligamentsOf, thinnestWall } from '../../../src/parts/motor-plate/walls.js';

const PLAN: MotorPlatePlan = {
  length: 60,
  width: 50,
  thickness: 6,
  corner: 3,
  middle: [0, 0],
  pilot: 22,
  motor: {
    square: 31,
    centres: [
      [15.5, 15.5],
      [15.5, -15.5],
    ],
    diameter: 3.4,
    sunk: { diameter: 6.5, depth: 3 },
  },
  machine: { centres: [[25, 0]], diameter: 4.5, slot: { along: 'x', by: 1 } },
};
const walls = (changes: Partial<MotorPlatePlan> = {}) =>
  ligamentsOf({ ...PLAN, ...changes }).map(({ where, size }) => [where, Number(size.toFixed(3))]);

// by hand: heads of 6.5 mm in their pockets, a slot that reaches from 24 to 26 mm
it('are between pilot, holes, slots and edge', () => {
  expect(walls()).toEqual([
    ['pilot and edge', 14],
    // 15.5·√2 − 11 − 3.25; 25 − 15.5 − 3.25; 31 − 6.5
    ['pilot and motor hole', 7.67],
    ['motor hole and edge', 6.25],
    ['pilot and motor hole', 7.67],
    ['motor hole and edge', 6.25],
    ['motor hole and motor hole', 24.5],
    // 24 − 11 − 2.25; 30 − 26 − 2.25; √(8.5² + 15.5²) − 3.25 − 2.25
    ['pilot and slot', 10.75],
    ['slot and edge', 1.75],
    ['motor hole and slot', 12.178],
    ['motor hole and slot', 12.178],
  ]);
  const machine = { centres: [[25, 0] as const], diameter: 4.5 };
  expect(walls({ machine })).toContainEqual(['machine hole and edge', 2.75]);
});

// 6 mm less a pocket of 5 mm
it('are thinnest beside a slot, or under the heads', () => {
  expect(thinnestWall(PLAN)).toEqual({ where: 'slot and edge', size: 1.75 });
  const { motor } = PLAN;
  const deep = { ...motor, sunk: { diameter: 6.5, depth: 5 } };
  expect(thinnestWall({ ...PLAN, motor: deep })).toEqual({ where: 'thickness', size: 1 });
});
