import { expect, it } from 'vitest';
import { FRICTION, GREASED_LEAST } from '../../src/mechanics/friction.js';

it('has the three values of common practice, in rising order', () => {
  expect([FRICTION.low, FRICTION.nominal, FRICTION.high]).toEqual([0.08, 0.2, 0.5]);
});

it('lets grease go below all of them', () => {
  // greased plastics on steel 0.05 to 0.15, common practice; a screw of Tr8x2 then runs back, tan λ·cos 15° = 0.0878
  expect(GREASED_LEAST).toBe(0.05);
});
