import { expect, it } from 'vitest';
import { dryFriction, FRICTION, GREASED_LEAST } from '../../src/mechanics/friction.js';

it('has the three values of common practice, in rising order', () => {
  expect([FRICTION.low, FRICTION.nominal, FRICTION.high]).toEqual([0.08, 0.2, 0.5]);
});

it('lets grease go below all of them', () => {
  // greased plastics on steel 0.05 to 0.15, common practice; a screw of Tr8x2 then runs back, tan λ·cos 15° = 0.0878
  expect(GREASED_LEAST).toBe(0.05);
});

it('is 0.15 of a bore on clean steel, 0.1 of acetal, common practice', () => {
  expect(dryFriction({ name: 'petg' })).toBe(0.15);
  expect(dryFriction({ name: 'POM' })).toBe(0.1);
  expect(dryFriction({ name: 'pom black' })).toBe(0.1);
  expect(dryFriction({ name: 'not-pom' })).toBe(0.15);
  expect(dryFriction({ name: 'pompous' })).toBe(0.15);
});
