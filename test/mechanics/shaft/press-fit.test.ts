import { describe, expect, it } from 'vitest';
import { interferenceWarm, pressStrain } from '../../../src/mechanics/shaft/press-fit.js';

describe('a press fit', () => {
  // plastic 78e-6 a kelvin more than steel, 22 mm, 32 K warmer: 0.055 mm are gone
  it('goes as plastic outgrows steel', () => {
    expect(interferenceWarm({ interference: 0.055, diameter: 22, growth: 78e-6 * 32 })).toBeCloseTo(0, 3);
    expect(interferenceWarm({ interference: 0.05, diameter: 22, growth: 0 })).toBe(0.05);
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
