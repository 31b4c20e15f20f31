import { expect, it } from 'vitest';
import { FRICTION } from '../../src/mechanics/friction.js';

it('has the three values of common practice, in rising order', () => {
  expect([FRICTION.low, FRICTION.nominal, FRICTION.high]).toEqual([0.08, 0.2, 0.5]);
});
