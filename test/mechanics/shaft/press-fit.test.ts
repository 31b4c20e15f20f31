import { describe, expect, it } from 'vitest';
import { interferenceWarm, pressFit, pressStrain } from '../../../src/mechanics/shaft/press-fit.js';
import { allowableStress } from '../../../src/mechanics/strength/allowable.js';
import { HOURS } from '../../../src/mechanics/strength/plastic.js';
import { strainKept } from '../../../src/mechanics/strength/relaxation.js';
import { resolveMaterial } from '../../../src/presets/resolve-material.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';

describe('a press fit', () => {
  // plastic 78e-6 a kelvin more than steel, 22 mm, 32 K warmer: 0.055 mm are gone
  it('goes as plastic outgrows steel', () => {
    expect(interferenceWarm({ interference: 0.055, diameter: 22, growth: 78e-6 * 32 })).toBeCloseTo(0, 3);
    expect(interferenceWarm({ interference: 0.05, diameter: 22, growth: 0 })).toBe(0.05);
  });

  // by hand: of 0.05 mm years leave half, of what is loose nothing is given back: 0.025 − 78e-6·10·22
  it('springs back by what relaxation left of it', () => {
    const warm = { diameter: 22, growth: 78e-6 * 10, kept: 0.5 };
    expect(interferenceWarm({ ...warm, interference: 0.05 })).toBeCloseTo(0.00784, 9);
    expect(interferenceWarm({ ...warm, interference: -0.02 })).toBeCloseTo(-0.02 - 0.01716, 9);
    expect(() => interferenceWarm({ ...warm, interference: 0.05, kept: 1.1 })).toThrow(/^kept: /);
  });

  // common practice: at most 0.4 % of PLA, PC and ABS, 0.6 % of PETG and PA, whatever they take for good
  it.each([
    ['PLA', 0.005, 0.004],
    ['PETG', 0.008, 0.006],
    ['ABS', 0.007, 0.004],
    ['PC', 0.008, 0.004],
    ['PA', 0.015, 0.006],
  ])('strains %s no more than is usual', (_, long, usual) => {
    expect(pressStrain(long)).toBeGreaterThan(0);
    expect(pressStrain(long)).toBeLessThanOrEqual(Math.min(long, usual));
  });

  it('of 0.05 mm on 22 strains a pocket by 0.227 %, which all of them take', () => {
    expect(0.05 / 22).toBeLessThanOrEqual(Math.min(...[0.005, 0.008, 0.007, 0.015].map(pressStrain)));
  });
});

describe('a ring of plastic around pressed steel, as a thick cylinder (Lamé)', () => {
  // by hand: k = (34² + 22²)/(34² − 22²) = 1640/672 = 2.4405; p = 0.08·2000/(22·2.8205) = 2.579;
  // σ = 2.4405·2.579 = 6.29; F = 0.25·2.579·π·22·7 = 312
  it('of 22 in 34 and 7 wide bears 2.579 MPa and is pushed in by 312 N at 0.08 mm', () => {
    const found = pressFit({ interference: 0.08, diameter: 22, outside: 34, width: 7, modulus: 2000 });
    expect(found.pressure).toBeCloseTo(2.579, 3);
    expect(found.hoop).toBeCloseTo(6.29, 2);
    expect(found.push).toBeCloseTo(312, 0);
  });

  // by hand: W = 80/48; 4·60/2400·(W + 0.38)/W = 0.123 mm, and a quarter of it for good
  it.each([
    [0.1228, 60],
    [0.0307, 15],
  ])('of 4 in 8 mm and %d mm has %d MPa around its bore', (interference, hoop) => {
    const found = pressFit({ interference, diameter: 4, outside: 8, width: 8, modulus: 2400 });
    expect(Math.abs(found.hoop / hoop - 1)).toBeLessThan(0.001);
  });

  // a held strain: its tension relaxes by c, and is at no time more than what may stand so long
  it.each(['pla', 'petg', 'abs', 'asa', 'pc', 'pa12', 'pa6', 'pom'])(
    'of %s, at the most that its pocket may be pressed, has no more tension than it bears at once and for long',
    (preset) => {
      const material = resolveMaterial({ preset }, SHIPPED, new Assumptions());
      const interference = pressStrain(material.creep.strain) * 22;
      for (const outside of [26, 34, 60]) {
        const { hoop } = pressFit({ interference, diameter: 22, outside, width: 7, modulus: material.modulus });
        for (const [duration, hours] of [
          ['moment', 0],
          ['thousand-hours', HOURS['thousand-hours']],
          ['years', HOURS.years],
        ] as const)
          expect(hoop * strainKept(material, { hours, temperature: 23 }), duration).toBeLessThan(
            allowableStress(material, { kind: 'tension', duration, temperature: 23 }),
          );
      }
    },
  );

  it('refuses what is no press fit', () => {
    const good = { interference: 0.05, diameter: 22, outside: 34, width: 7, modulus: 2000 };
    for (const change of [{ interference: -0.1 }, { diameter: 0 }, { outside: 22 }, { width: 0 }, { modulus: 0 }])
      expect(() => pressFit({ ...good, ...change })).toThrow(new RegExp(`^${Object.keys(change)[0]}: `));
  });
});
