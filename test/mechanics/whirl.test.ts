import { describe, expect, it } from 'vitest';
import { SCREW_ENDS } from '../../src/mechanics/ends.js';
import { DERATING, whirlSpeed } from '../../src/mechanics/whirl.js';
import { InputError } from '../../src/units/faults.js';

// screw-guide: constants confirmed, the worked figures recomputed from them.
describe('worked figures of the guides', () => {
  it.each([
    [6.2, 500, [1079.4, 2998.4, 4407.7, 6686.5]],
    [15.5, 800, [1054.1, 2928.1, 4304.4, 6529.8]],
  ])('root %s, span %s', (rootDiameter, span, wanted) => {
    SCREW_ENDS.forEach((ends, index) => {
      // the page's last digit comes from a constant with one more digit: 0.005 %
      expect(Math.abs(whirlSpeed({ rootDiameter, span, ends }) / wanted[index]! - 1)).toBeLessThan(5e-5);
    });
  });
});

it('stays near beam theory: (β/π)² with β² = 3.516, 9.870, 15.418, 22.373', () => {
  // n = 60/2π · β²/L² · √(E·I/(ρ·A)), E 207 GPa, ρ 7850 kg/m³, √(I/A) = d/4
  const wave = Math.sqrt(207e9 / 7850) * 1000; // mm/s
  const betas = [3.516, 9.8696, 15.418, 22.373];
  SCREW_ENDS.forEach((ends, index) => {
    const theory = ((60 / (2 * Math.PI)) * betas[index]! * wave * (10 / 4)) / 500 ** 2;
    expect(Math.abs(whirlSpeed({ rootDiameter: 10, span: 500, ends }) / theory - 1)).toBeLessThan(0.065);
  });
});

it('gives the derated figures of common practice (8 mm screw free at the top, root 5.5: 2100 at 300, 760 at 500)', () => {
  const at = (span: number) => DERATING * whirlSpeed({ rootDiameter: 5.5, span, ends: 'fixed-free' });
  expect(Math.abs(at(300) - 2100)).toBeLessThan(50);
  expect(Math.abs(at(500) - 760)).toBeLessThan(10);
});

// handbooks of screws, derated: n = fc·d/L²·1e7 with fc 3.4, 9.7, 15.1; root 5.5 on 300 mm: 2078, 5928, 9228 rpm
it.each([
  ['fixed-free', 2078, 0.03],
  ['supported', 5928, 0.01],
  // ours is the more careful one
  ['fixed-supported', 9228, 0.07],
] as const)('derated and %s comes near the %d rpm of the handbooks', (ends, rpm, off) => {
  const ours = DERATING * whirlSpeed({ rootDiameter: 5.5, span: 300, ends });
  expect(Math.abs(ours / rpm - 1)).toBeLessThan(off);
});

it('refuses values outside their ranges', () => {
  const good = { rootDiameter: 6, span: 300, ends: 'supported' } as const;
  expect(() => whirlSpeed({ ...good, rootDiameter: 0 })).toThrow(/^rootDiameter: /);
  expect(() => whirlSpeed({ ...good, span: Number.NaN })).toThrow(/^span: /);
  // @ts-expect-error a script may pass any word
  expect(() => whirlSpeed({ ...good, ends: 'loose' })).toThrow(InputError);
});
