import { expect, it } from 'vitest';
import { FRICTION, FRICTION_LEVELS, FRICTION_SOURCE } from '../../src/mechanics/friction.js';
import { SOURCES } from '../../src/standards/sources.js';

it('has the three values of common practice, in rising order, with a source', () => {
  expect(FRICTION_LEVELS.map((level) => FRICTION[level])).toEqual([0.08, 0.2, 0.5]);
  expect(Object.keys(SOURCES)).toContain(FRICTION_SOURCE);
});
