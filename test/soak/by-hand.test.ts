import fc from 'fast-check';
import { beforeAll, expect, it } from 'vitest';
import { check } from '../../src/pipeline/check.js';
import { type Design, design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { createKernel, type Kernel } from '../../src/solid/kernel.js';
import { InputError } from '../../src/units/faults.js';
import { holdShapeAgainstKernel } from '../solid/random-bores.js';
import {
  sensibleAdapter,
  sensibleCollar,
  sensibleCoupon,
  sensibleEndHolder,
  sensibleGauge,
  sensibleMotorPlate,
  sensibleNut,
} from '../support/sensible-sheets/index.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await createKernel();
});

/** A few screws that are rare among random ones: of the other hand, and of many starts. */
const SCREWS = ['Tr8x2', 'Tr8x8(P2)', 'Tr10x2-LH', 'Tr12x6(P3)-LH'];
const rare = SCREWS.flatMap((screw) => [
  { part: 'gauge', name: 'rare', screw, material: 'petg', printer: { nozzle: 0.4, layer: 0.12, compensation: 'file' } },
  {
    part: 'coupon',
    name: 'rare',
    screw,
    purposes: ['thread'],
    material: 'petg',
    printer: { nozzle: 0.4, layer: 0.12, compensation: 'file' },
  },
]);

function designed(sheet: object): Design[] {
  try {
    const made = design(sheet);
    return check(made).verdict === 'fail' ? [] : [made];
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}

const drawn = (sheets: fc.Arbitrary<object>, numRuns: number) => () => fc.sample(sheets, { numRuns, seed: 12 });

it.each([
  ['nuts', drawn(sensibleNut, 60), 10],
  ['collars', drawn(sensibleCollar, 12), 0],
  ['coupons', drawn(sensibleCoupon, 6), 2],
  ['gauge rings', drawn(sensibleGauge, 5), 20],
  ['adapters', drawn(sensibleAdapter, 15), 0],
  ['end holders', drawn(sensibleEndHolder, 15), 0],
  ['motor plates', drawn(sensibleMotorPlate, 15), 0],
  ['coupons and gauge rings of rare screws', () => rare, 20],
] as const)('%s are the same parts as the kernel cuts', (_, sheets, least) => {
  let byHand = 0;
  for (const made of sheets().flatMap(designed)) {
    for (const { recipe } of kindOfDesign(KINDS, made).bodies(made)) {
      if (holdShapeAgainstKernel(kernel, recipe.shape, `${recipe.name} of ${made.name}`)) byHand++;
    }
  }
  // those that were bored by hand, besides others that are only fused twice
  expect(byHand).toBeGreaterThanOrEqual(least);
});
