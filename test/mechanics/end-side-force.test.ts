import { describe, expect, it } from 'vitest';
import { endSideForce } from '../../src/mechanics/end-side-force.js';

describe('side force of a held bent screw', () => {
  // I = π·5.5⁴/64 = 44.92; 3·207000·44.92·0.2/(24²·300) = 32.28
  it('is that of a beam with an overhang', () => {
    const p = { rootDiameter: 5.5, runout: 0.2, toHolder: 24, toMotor: 276 };
    expect(endSideForce(p)).toBeCloseTo(32.28, 2);
    // a nut that does not tilt: 3·E·I·e/x³, the upper bound
    expect(endSideForce({ ...p, toMotor: 0 })).toBeCloseTo((3 * 207000 * 44.918 * 0.2) / 24 ** 3, 0);
    // three times as far from the nut: a ninth
    expect(endSideForce({ ...p, toHolder: 72, toMotor: 228 })).toBeCloseTo(32.28 / 9, 2);
    expect(endSideForce({ ...p, runout: 0 })).toBe(0);
    expect(() => endSideForce({ ...p, toHolder: 0 })).toThrow('toHolder');
  });

  // by hand, E 200 GPa, I 44.918 mm⁴, 0.2 mm forced straight, 300 mm from motor to holder
  it.each([
    [25, 28.75],
    [50, 7.187],
    [100, 1.797],
  ])('is, %d mm from the holder, %d N', (toHolder, force) => {
    const p = { rootDiameter: 5.5, runout: 0.2, modulus: 200_000, toHolder };
    expect(endSideForce({ ...p, toMotor: 300 - toHolder })).toBeCloseTo(force, 2);
    expect(endSideForce({ ...p, toHolder: 50, toMotor: 0 })).toBeCloseTo(43.1, 1);
  });
});
