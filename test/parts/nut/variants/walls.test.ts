import { expect, it } from 'vitest';
import { aroundNut, holesToJoint, pinToBore } from '../../../../src/parts/nut/variants/walls.js';

// pins of 2 mm radius along Y, 10 mm aside, to 8 mm either way; openings of 1 mm radius
it('holes stay off the joint of halves, and off the pins across it', () => {
  const wall = (...centres: readonly (readonly [number, number])[]) =>
    holesToJoint({ radius: 2, offset: 10, reach: 8, height: 5 }, centres, 1);
  // 3 to the joint; 13 − 10 − 2 beside a pin; √(3² + 4²) − 2 beyond its end
  expect(wall([20, 3])).toBe(2);
  expect(wall([20, -3])).toBe(2);
  expect(wall([13, 2])).toBe(0);
  expect(wall([-13, -12])).toBe(2);
  expect(wall([20, 3], [13, 2])).toBe(0);
  expect(pinToBore({ radius: 2, offset: 10 }, 5)).toBe(3);
});

// a square of 10·√2 mm reaches 10 mm: 16 − 10, and 14 − 2 − 10 beside a hole where no flange bears the holes
it('a bought nut keeps a wall around its corners', () => {
  const nut = { shape: 'square', acrossFlats: 10 * Math.SQRT2 } as const;
  const holes = { centres: [[15, 0] as const, [0, 14] as const], opening: 2 };
  const body = { shape: 'round', across: 32 } as const;
  const flange = { shape: 'round', size: [60, 60], thickness: 5 } as never;
  expect(aroundNut(nut, { body }, holes)).toBeCloseTo(2, 9);
  expect(aroundNut(nut, { body, flange }, holes)).toBeCloseTo(6, 9);
  expect(aroundNut(nut, { body }, { centres: [], opening: 0 })).toBeCloseTo(6, 9);
});
