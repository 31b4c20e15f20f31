import { expect, it } from 'vitest';
import { flanksMeet } from '../../../src/parts/nut/flanks-meet.js';

/** Grooves of 1 mm at 8 mm of diameter, pitch 2 mm; each flank leans 0.25 mm a millimetre of diameter. */
const thread = { major: 9, pitchDiameter: 8, minor: 7, pitch: 2, flankSlope: 0.25, grooveWidth: 1 };

it.each([
  // a groove narrows outwards by the slope times the diameter: none is left 1/0.25 = 4 mm further out, no tooth 4 mm further in
  ['a thread of the usual depth', {}, undefined],
  ['a groove that comes to nothing', { major: 12 }, 'groove'],
  ['a groove that is nearly nothing', { major: 11.99 }, undefined],
  ['a tooth that comes to nothing', { minor: 4 }, 'tooth'],
  ['a tooth that is nearly nothing', { minor: 4.01 }, undefined],
  ['both', { major: 13, minor: 3 }, 'tooth'],
] as const)('%s', (_, changes, meets) => {
  expect(flanksMeet({ ...thread, ...changes })).toBe(meets);
});
