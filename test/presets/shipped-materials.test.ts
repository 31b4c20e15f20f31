import { describe, expect, it } from 'vitest';
import { allowableStress } from '../../src/mechanics/strength/allowable.js';
import { momentHeatShare, standingHeatShare } from '../../src/mechanics/strength/heat-shares.js';
import { HOURS } from '../../src/mechanics/strength/plastic.js';
import { BEDDED, strainKept } from '../../src/mechanics/strength/relaxation.js';
import { listPresets } from '../../src/presets/list-presets.js';
import { presetIds } from '../../src/presets/read-preset.js';
import { resolveMaterial } from '../../src/presets/resolve-material.js';
import { SHIPPED } from '../../src/presets/shipped.js';
import { Assumptions } from '../../src/sheet/assumptions.js';

const of = (preset: string) => resolveMaterial({ preset }, SHIPPED, new Assumptions());
/** A figure of a table that is rounded to two places. */
const near = (value: number, table: number) => expect(Math.abs(value - table)).toBeLessThanOrEqual(0.0075);

it('are all of those below', () => {
  expect(presetIds('material', SHIPPED).sort()).toEqual(STANDING.map(([name]) => name).sort());
  expect(listPresets(SHIPPED).length).toBeGreaterThan(STANDING.length);
});

// Shares of what may stand, against 23 °C: ((Tg − T)/(Tg − 23))^1.5 after the derating of PVC pipe (Machinery's Handbook),
// Tg 58, 70, 103, 100, 147; others e^(−(T − 23)/τ), τ 70, 60, 52, 40. Beyond the limit of what stands nothing.
const STANDING: readonly (readonly [string, Readonly<Record<number, number>>])[] = [
  ['pla', { 40: 0.37, 50: 0, 60: 0 }],
  ['petg', { 40: 0.51, 50: 0.28, 60: 0 }],
  ['abs', { 40: 0.7, 50: 0.54, 60: 0.39, 80: 0 }],
  ['asa', { 40: 0.69, 50: 0.52, 60: 0.37, 80: 0 }],
  ['pc', { 40: 0.8, 50: 0.69, 60: 0.59, 80: 0.4, 100: 0.23 }],
  ['pa12', { 40: 0.78, 50: 0.68, 60: 0.59, 80: 0.44, 100: 0 }],
  ['pa6', { 40: 0.75, 50: 0.64, 60: 0.54, 80: 0.39, 100: 0 }],
  ['pom', { 40: 0.72, 50: 0.59, 60: 0.49, 80: 0.33, 100: 0 }],
  ['tpu95a', { 40: 0.65, 50: 0.51, 60: 0.4, 80: 0 }],
];

it.each(STANDING)('%s bears what stands by its share at heat', (name, table) => {
  const material = of(name);
  for (const [temperature, share] of Object.entries(table))
    near(Number(temperature) > material.standingLimit ? 0 : standingHeatShare(material, Number(temperature)), share);
});

// Shares of the strength for seconds: the same to the power of 0.75; others τ 85, 80, 72, 55
it.each([
  ['pla', { 40: 0.61, 50: 0.33, 60: 0 }],
  ['petg', { 40: 0.71, 50: 0.53, 60: 0.31, 80: 0 }],
  ['abs', { 40: 0.84, 50: 0.73, 60: 0.63, 80: 0.39, 100: 0.09 }],
  ['asa', { 40: 0.83, 50: 0.72, 60: 0.61, 80: 0.36, 100: 0 }],
  ['pc', { 40: 0.9, 50: 0.83, 60: 0.77, 80: 0.63, 100: 0.48 }],
  ['pa12', { 40: 0.82, 50: 0.73, 60: 0.65, 80: 0.51, 100: 0.4 }],
  ['pa6', { 40: 0.81, 50: 0.71, 60: 0.63, 80: 0.49, 100: 0.38 }],
  ['pom', { 40: 0.79, 50: 0.69, 60: 0.6, 80: 0.45, 100: 0.34 }],
  ['tpu95a', { 40: 0.73, 50: 0.61, 60: 0.51, 80: 0.35 }],
] as const)('%s bears a moment by its share at heat', (name, table) => {
  for (const [temperature, share] of Object.entries(table)) near(momentHeatShare(of(name), Number(temperature)), share);
});

describe('a screw force in plastic', () => {
  // creep sheets of moulded grades, 0.90 for bedding in: after an hour, a day, 1,000 hours, five years
  it.each([
    ['pla', 0.79, 0.66, 0.54, 0.44],
    ['petg', 0.79, 0.69, 0.59, 0.5],
    ['abs', 0.77, 0.63, 0.5, 0.39],
    ['asa', 0.77, 0.63, 0.5, 0.39],
    ['pc', 0.83, 0.75, 0.67, 0.6],
    ['pa12', 0.68, 0.54, 0.42, 0.33],
    ['pa6', 0.63, 0.51, 0.41, 0.32],
    ['pom', 0.78, 0.6, 0.43, 0.31],
    ['tpu95a', 0.63, 0.51, 0.41, 0.32],
  ] as const)('of %s is left by %d, %d, %d and %d', (name, ...table) => {
    for (const [i, hours] of [1, 24, 1000, HOURS.years].entries())
      near(BEDDED * strainKept(of(name), { hours, temperature: 23 }), Number(table[i]));
  });

  // 1,000 hours in the warmth
  it.each([
    ['pla', 40, 0.38],
    ['petg', 40, 0.49],
    ['petg', 60, 0.19],
    ['abs', 60, 0.34],
    ['abs', 80, 0.17],
    ['pc', 80, 0.57],
    ['pa12', 60, 0.36],
    ['pa12', 80, 0.32],
    ['pa6', 60, 0.34],
    ['pom', 60, 0.35],
    ['pom', 80, 0.31],
    ['tpu95a', 60, 0.34],
  ] as const)('of %s at %d °C is left by %d', (name, temperature, share) => {
    near(BEDDED * strainKept(of(name), { hours: 1000, temperature }), share);
  });
});

// Makers' guides and one rule of confined pressure: what stands under a head for five years; cautious figures for what slides
// on steel: pressure × velocity dry, pressure in motion, speed
it.each([
  ['pla', 10.2, 0.025, 2.5, 100],
  ['petg', 11, 0.03, 2.5, 150],
  ['abs', 8.64, 0.03, 2.5, 200],
  ['asa', 8.64, 0.03, 2.5, 200],
  ['pc', 14.4, 0.03, 4, 200],
  ['pa12', 12.6, 0.105, 4, 400],
  ['pa6', 9.6, 0.105, 4, 400],
  ['pom', 10.8, 0.1, 5, 500],
  ['tpu95a', 2, 0.02, 1, 100],
] as const)('%s takes no more than %d MPa under a head, a PV of %d, %d MPa in motion, %d mm/s', (name, ...most) => {
  const material = of(name);
  const head = allowableStress(material, { kind: 'pressure', duration: 'years', temperature: 23 });
  const taken = [head, material.pvLimit, material.pressureCap, material.speedLimit];
  for (const [i, figure] of taken.entries()) expect(figure).toBeLessThanOrEqual(Number(most[i]) + 1e-9);
});
