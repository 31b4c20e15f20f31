import { expect, it } from 'vitest';
import { type MaterialFamily, residualSpread } from '../../../src/mechanics/print/residual-spread.js';

// Common practice: ± 0.2 % PLA, PETG, TPU; ± 0.3 % ABS, ASA, PC; ± 0.5 % PA, POM; hole offset ± 0.05.
it.each<[MaterialFamily, number]>([
  ['pla', 0.002],
  ['petg', 0.002],
  ['tpu', 0.002],
  ['abs', 0.003],
  ['asa', 0.003],
  ['pc', 0.003],
  ['pa', 0.005],
  ['pom', 0.005],
])('%s keeps ± %s', (family, shrink) => {
  expect(residualSpread(family)).toEqual({ shrink, holeOffset: 0.05 });
});

it('refuses an unknown family, inherited names too', () => {
  // @ts-expect-error a script may pass any word
  expect(() => residualSpread('wood')).toThrow(/^family: wood; must be one of/);
  // @ts-expect-error a script may pass any word
  expect(() => residualSpread('toString')).toThrow(/^family: /);
});
