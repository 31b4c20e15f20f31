import { describe, expect, it } from 'vitest';
import { nutSheet } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

const moist = (changes: Record<string, unknown> = {}) => findingOf(nutSheet(changes), 'moisture')!;

// PA12 grows by 0.2 %; Tr10x2 in a body of 17 mm: pitch diameter 9.3, wall (17 − 10.8)/2 = 3.1 mm; 18 mm long
describe('moist air, by hand', () => {
  it('opens a bore that nothing holds by 0.002 · 9.3, and drifts the pitch by 0.002 · 18', () => {
    expect(moist({ carriage: { bore: '17.2 ± 0 mm' } }).message).toMatch(
      /^the bore opens by 0\.019 mm as nothing holds the body, the pitch drifts by 0\.036 mm over the nut; /,
    );
  });

  it('closes one that is held all around by 2 · 0.002 · 3.1', () => {
    expect(moist().message).toMatch(/^the bore closes by 0\.012 mm if its body is held all around, /);
    // a bore that grows to 17 · 1.002 = 17.034 mm is still free
    expect(moist({ carriage: { bore: '17.03 ± 0 mm' } }).message).toMatch(/closes/);
    expect(moist({ carriage: { bore: '17.04 ± 0 mm' } }).message).toMatch(/opens/);
  });

  it('counts once, also where the fit is worked out with it', () => {
    const value = (effects: object) => moist({ effects }).value;
    expect(value({ moisture: 'on' })).toBeCloseTo(value({ moisture: 'off' })!, 9);
    // of the axial play, the drift is taken off by itself
    const dry = findingOf(nutSheet({ effects: { moisture: 'off' } }), 'thread-axial')!;
    const left = moist();
    expect([left.least, left.value, left.most]).toEqual(
      [dry.least, dry.value, dry.most].map((one) => expect.closeTo(one! - 0.036, 6)),
    );
  });
});
