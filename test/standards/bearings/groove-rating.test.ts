import { describe, expect, it } from 'vitest';
import { deepGroove } from '../../../src/standards/bearings/deep-groove.js';
import { grooveRating } from '../../../src/standards/bearings/groove-rating.js';
import { InputError } from '../../../src/units/faults.js';

describe('load ratings of deep-groove ball bearings', () => {
  // by hand, Dw, Z, x, f0 and f0·Z·Dw²; light series and bores to 12 mm carry a quarter of it for good, others half
  it.each([
    // 14/4; 0.45·π·15/3.5 = 6.06; 3.5/15; 18.7 − 5.46 = 13.24
    ['608', { bore: 8, outside: 22, width: 7 }, 973.14, 0.25],
    // 8/4; 0.45·π·12/2 = 8.48; 1/6; 18.7 − 3.9 = 14.8
    ['688', { bore: 8, outside: 16, width: 5 }, 473.6, 0.25],
    // 27/4; 0.45·π·33.5/6.75 = 7.02; 0.201493; 13.985; 47 above 44
    ['6204', { bore: 20, outside: 47, width: 14 }, 4460.4, 0.5],
    // 22/4; 0.45·π·31/5.5 = 7.97; 0.177419; 14.548; 42 below 44
    ['6004', { bore: 20, outside: 42, width: 12 }, 3080.6, 0.25],
    // 15/4; 0.45·π·57.5/3.75 = 21.7; 0.0652174; 14.7 + 1.1739 = 15.874
    ['a thin ring', { bore: 50, outside: 65, width: 7 }, 4687.8, 0.25],
    // 0.6·4 = 2.4 in place of 5; 0.45·π·20/2.4 = 11.8; 0.12; 15.892; wide, but of a small bore
    ['a narrow one', { bore: 10, outside: 30, width: 4 }, 1006.9, 0.25],
  ] as const)('of %s follow the formulas', (_, sizes, standing, share) => {
    const found = grooveRating(sizes);
    expect(found.standing / standing).toBeCloseTo(1, 4);
    expect(found.along / standing).toBeCloseTo(share, 4);
    expect(found.moment / standing).toBeCloseTo(0.5, 4);
  });

  it('turn with the formula of ISO 281, a load along the axis counted 1.2 times', () => {
    // 55·6^(2/3)·3.5^1.8 = 55·3.3019·9.535 = 1731.6
    expect(grooveRating({ bore: 8, outside: 22, width: 7 }).turning / (1731.6 / 1.2)).toBeCloseTo(1, 3);
  });

  it('count a bearing of 12 mm as small, and one of 13 mm by its series', () => {
    const share = (bore: number, outside: number) => {
      const { along, standing } = grooveRating({ bore, outside, width: 10 });
      return along / standing;
    };
    expect(share(12, 32)).toBe(0.25);
    expect(share(13, 32)).toBe(0.5);
    expect(share(13, 28)).toBe(0.25);
    // 2.2·20, and less
    expect(share(20, 44)).toBe(0.5);
    expect(share(20, 43.9)).toBe(0.25);
  });

  // bearing lists, from memory: turning and standing, kN
  it.each([
    ['608', 3.3, 1.37],
    ['6000', 4.6, 1.96],
    ['6001', 5.1, 2.36],
    ['6204', 12.7, 6.55],
  ] as const)('of %s stay below lists, and above a third of them', (name, turning, standing) => {
    const { bore, outside, width } = deepGroove(name);
    const found = grooveRating({ bore, outside, width: width! });
    expect(found.turning / 1000).toBeLessThan(turning);
    expect(found.turning / 1000).toBeGreaterThan(turning / 3);
    expect(found.standing / 1000).toBeLessThan(standing);
    expect(found.standing / 1000).toBeGreaterThan(standing / 3);
  });

  it.each([{ bore: 0 }, { width: 0 }, { outside: 8 }])('refuse sizes of no bearing: %o', (wrong) => {
    expect(() => grooveRating({ bore: 8, outside: 22, width: 7, ...wrong })).toThrow(InputError);
  });
});
