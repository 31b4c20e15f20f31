import { describe, expect, it } from 'vitest';
import { thrustBearing } from '../../../src/standards/bearings/thrust-bearing.js';
import { thrustRating } from '../../../src/standards/bearings/thrust-rating.js';
import { InputError } from '../../../src/units/faults.js';

describe('load ratings of thrust bearings', () => {
  it('follow the formulas of the standards', () => {
    // by hand: Dw 0.45·9 = 4.05, Z = π·17/(1.3·4.05) = 10.1 → 10; 61.6·10·4.05² = 10,104; 90·10^(2/3)·4.05^1.8 = 5,180
    const { standing, turning } = thrustRating(thrustBearing('51100'));
    expect(standing).toBeCloseTo(10_104, 0);
    expect(turning / 5180).toBeCloseTo(1, 2);
    // needles 2 mm, 13 of them on ⌀17, each rolls on 3.5 mm: 220·13·3.5·2 = 20,020
    expect(thrustRating(thrustBearing('AXK1024'), true).standing).toBeCloseTo(20_020, 6);
    expect(thrustRating(thrustBearing('AXK1024'), true).turning).toBeCloseTo(20_020 / 3, 6);
  });

  // bearing lists, from memory: turning and standing, kN
  it.each([
    ['51100', 9.95, 14],
    ['51104', 14.3, 24],
    ['51200', 12.5, 17],
  ] as const)('of %s stay below lists, and above a third of them', (name, turning, standing) => {
    const found = thrustRating(thrustBearing(name));
    expect(found.turning / 1000).toBeLessThan(turning);
    expect(found.turning / 1000).toBeGreaterThan(turning / 3);
    expect(found.standing / 1000).toBeLessThan(standing);
    expect(found.standing / 1000).toBeGreaterThan(standing / 3);
  });

  it.each(['bore', 'outside', 'height'])('refuse a %s of 0', (size) => {
    expect(() => thrustRating({ bore: 8, outside: 16, height: 5, [size]: 0 })).toThrow(InputError);
  });
});
