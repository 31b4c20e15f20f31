import { expect, it } from 'vitest';
import { plasticPreload } from '../../../src/mechanics/bolt/plastic-preload.js';

const screw = { pressure: 20, headDiameter: 10, nut: { diameter: 7 }, holeDiameter: 3.2, tightening: 2000 };

// areas by hand, hole π/4·3.2² = 8.0425
it.each([
  ['a bare nut: √3/2·5.5² − 8.0425 = 18.155', { nut: { acrossFlats: 5.5 } }, 'nut', 363.1],
  ['a washer under the nut: π/4·7² − 8.0425 = 30.442', {}, 'nut', 608.8],
  ['a small head: π/4·5.5² − 8.0425 = 15.716', { headDiameter: 5.5 }, 'head', 314.3],
  ['a light hand', { tightening: 100 }, 'tightening', 100],
] as const)('is held by %s', (_, change, heldBy, force) => {
  const found = plasticPreload({ ...screw, ...change });
  expect(found.heldBy).toBe(heldBy);
  expect(found.force).toBeCloseTo(force, 1);
});

it('refuses what leaves no area to bear on', () => {
  expect(() => plasticPreload({ ...screw, headDiameter: 3.2 })).toThrow(/^headDiameter: /);
  expect(() => plasticPreload({ ...screw, nut: { acrossFlats: 3 } })).toThrow(/^nut: /);
});
