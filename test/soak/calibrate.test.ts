import { describe, expect, it } from 'vitest';
import { coverage } from '../calibrate/recovery.js';

describe('recovery of 600 random printers with a common error of the calipers', () => {
  it('lies within two standard errors 93 to 98 times in 100, for every figure', () => {
    const { within } = coverage(600, {}, 3, true);
    for (const [name, share] of Object.entries(within)) {
      expect(share, name).toBeGreaterThanOrEqual(0.93);
      expect(share, name).toBeLessThanOrEqual(0.98);
    }
  });
});

describe('recovery of 200 random printers, otherwise', () => {
  it('calls few sound features outliers', () => {
    expect(coverage(200, {}, 3, true).falseAlarms).toBeLessThan(8);
  });

  it('keeps near that where prints are twice as rough as was taken', () => {
    expect(coverage(200, { form: 0.03 }, 3, true).all).toBeGreaterThan(0.9);
  });

  it('keeps that with a single reading of each feature', () => {
    expect(coverage(200, {}, 1, true).all).toBeGreaterThan(0.945);
  });
});
