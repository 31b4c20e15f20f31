import { describe, expect, it } from 'vitest';
import { coverage } from '../calibrate/recovery.js';

describe('recovery of 200 random printers', () => {
  it('lies within two standard errors 19 times in 20', () => {
    const { all, within, falseAlarms } = coverage(200);
    expect(all).toBeGreaterThan(0.945);
    for (const [name, share] of Object.entries(within)) expect(share, name).toBeGreaterThan(0.91);
    expect(falseAlarms).toBeLessThan(8);
  });

  it('keeps near that where prints are twice as rough as was taken', () => {
    expect(coverage(200, { form: 0.03 }).all).toBeGreaterThan(0.9);
  });

  it('keeps that with a single reading of each feature', () => {
    expect(coverage(200, {}, 1).all).toBeGreaterThan(0.945);
  });
});
