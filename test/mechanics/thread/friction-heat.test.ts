import { describe, expect, it } from 'vitest';
import { nutWarmth, skinWarmth, warmShare } from '../../../src/mechanics/thread/friction-heat.js';

// Worked example, by hand: ⌀25/⌀10 × 25 of POM: V 10308 mm³, m 14.5 g, A 2788 mm², h 10 W/(m²·K).
const barrel = { outside: 25, bore: 10, length: 25, density: 1.41, heatCapacity: 1480 };

describe('how a nut warms', () => {
  it('its own time is 21.51/0.02788 = 772 s, and one watt warms it by 36 K', () => {
    const { time, perWatt } = nutWarmth(barrel);
    expect(Math.abs(time - 772)).toBeLessThan(1);
    expect(perWatt).toBeCloseTo(1 / 0.02788, 1);
  });

  it.each([
    // (1 − e^(−t_on/772))/(1 − e^(−t_c/772))
    [1200, 6000, 0.789],
    [120, 600, 0.266],
  ])('%d s in %d s: %d of the steady warmth', (onTime, cycle, share) => {
    expect(warmShare({ onTime, cycle, time: 772 })).toBeCloseTo(share, 3);
  });

  it('a cycle up to 0.4 of its own time is averaged, a longer one is not', () => {
    expect(warmShare({ onTime: 60, cycle: 300, time: 772 })).toBeCloseTo(0.2, 12);
    expect(warmShare({ onTime: 62, cycle: 310, time: 772 })).toBeCloseTo(0.2333, 4);
    expect(warmShare({ onTime: 80, cycle: 400, time: 1000 })).toBeCloseTo(0.2, 12);
  });

  it('the whole time in motion is the whole warmth, none is none', () => {
    expect(warmShare({ onTime: 5000, cycle: 5000, time: 772 })).toBe(1);
    expect(warmShare({ onTime: 0, cycle: 5000, time: 772 })).toBe(0);
  });

  it('skin: friction 0.2, 60 s: 129 K at PV 1, 13 K at PV 0.1', () => {
    const at = (pressureVelocity: number) => skinWarmth({ friction: 0.2, pressureVelocity, onTime: 60 });
    expect(at(1)).toBeCloseTo(129, 0);
    expect(at(0.1)).toBeCloseTo(13, 0);
  });

  it('refuses values outside their ranges', () => {
    expect(() => nutWarmth({ ...barrel, bore: 25 })).toThrow(/^bore: /);
    expect(() => nutWarmth({ ...barrel, heatCapacity: 0 })).toThrow(/^heatCapacity: /);
    expect(() => warmShare({ onTime: 20, cycle: 10, time: 772 })).toThrow(/^onTime: /);
    expect(() => warmShare({ onTime: 2, cycle: 10, time: 0 })).toThrow(/^time: /);
    expect(() => skinWarmth({ friction: -1, pressureVelocity: 1, onTime: 1 })).toThrow(/^friction: /);
  });
});
