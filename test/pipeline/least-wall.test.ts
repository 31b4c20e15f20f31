import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../src/pipeline/check.js';
import { type Design, design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { fuseBody } from '../../src/pipeline/fuse-body.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { measureBody } from '../../src/pipeline/measure-solid.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { InputError } from '../../src/units/faults.js';
import {
  sensibleAdapter,
  sensibleCollar,
  sensibleCoupling,
  sensibleCoupon,
  sensibleEndHolder,
  sensibleGauge,
  sensibleMotorPlate,
  sensibleNut,
  sensibleSleeve,
} from '../support/sensible-sheets/index.js';
import { sharedKernel } from '../support/shared-kernel.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const passed = (sheets: fc.Arbitrary<object>, numRuns: number): Design[] =>
  fc.sample(sheets, { numRuns, seed: 11 }).flatMap((sheet) => {
    try {
      const made = design(sheet);
      return check(made).verdict === 'fail' ? [] : [made];
    } catch (error) {
      if (error instanceof InputError) return [];
      throw error;
    }
  });

describe.each([
  ['nuts', sensibleNut, 24],
  ['adapters', sensibleAdapter, 16],
  ['couplings', sensibleCoupling, 8],
  ['sleeves', sensibleSleeve, 20],
  ['collars', sensibleCollar, 20],
  ['end holders', sensibleEndHolder, 20],
  ['motor plates', sensibleMotorPlate, 48],
  ['coupons', sensibleCoupon, 1],
  ['gauges', sensibleGauge, 1],
] as const)('%s', (_, sheets, numRuns) => {
  it('have no wall thinner than arithmetic says', () => {
    let measured = 0;
    for (const made of passed(sheets, numRuns)) {
      for (const plan of kindOfDesign(KINDS, made).bodies(made)) {
        const { name } = plan.recipe;
        const { wall } = measureBody({ ...plan, body: fuseBody(kernel, plan.recipe), file: name });
        const { size, where } = plan.leastWall;
        expect(wall!.thickness, `${name}: ${where}`).toBeGreaterThan(size - 0.05);
        measured++;
      }
    }
    expect(measured).toBeGreaterThan(numRuns / 4);
  });
});

/** Walls that can be worked out by hand from the sheet alone; arcs are drawn finely, three chords of 0.01 mm come off. */
const BY_HAND: readonly (readonly [string, object, number])[] = [
  [
    'a bush: (11 − 0.1 − 6 − 0.1) / 2',
    { part: 'sleeve', form: 'bush', shaft: '6 mm', bore: 11, length: 16, material: 'pa12' },
    2.4,
  ],
  [
    // major 8 + 2 · 0.25 + 0.3 = 8.8; (15 − 8.8) / 2
    'a round nut: (15 − 8.8) / 2',
    {
      part: 'nut',
      screw: 'Tr8x2',
      fit: { diametral: 0.3, axial: 0.1 },
      body: { diameter: 15, length: 15 },
      material: 'pa12',
    },
    3.1,
  ],
  [
    'the floor under the head of an M4, 6 − 4',
    {
      part: 'nut',
      screw: 'Tr8x2',
      fit: { diametral: 0.3, axial: 0.1 },
      body: { diameter: 16, length: 20 },
      flange: { diameter: 44, thickness: 6 },
      holes: { count: 4, circle: 30, screw: 'M4', joint: 'counterbore', head: 'body' },
      material: 'pa12',
    },
    2,
  ],
];

it.each(BY_HAND)('%s', (_, sheet, wall) => {
  const made = design({ name: 'a', printer: { compensation: 'none' }, ...sheet });
  const [body] = kindOfDesign(KINDS, made).bodies(made);
  expect(body!.leastWall.size).toBeCloseTo(wall - 0.03, 6);
});

describe('the follower of a nut without play', () => {
  it('is thinnest at the corners of its slots', () => {
    const made = design({
      part: 'nut',
      name: 'follower',
      screw: 'Tr8x2',
      body: { diameter: 22, length: 18 },
      family: { kind: 'anti-backlash', spring: { inside: 15.2, outside: 17.6, free: 18, solid: 7, rate: 4 } },
      material: 'petg',
      printer: { compensation: 'file' },
    });
    const plan = kindOfDesign(KINDS, made)
      .bodies(made)
      .find(({ recipe }) => recipe.name === 'follower')!;
    const { wall } = measureBody({ ...plan, body: fuseBody(kernel, plan.recipe), file: 'follower' });
    expect(Math.abs(wall!.thickness - plan.leastWall.size)).toBeLessThan(0.05);
  });
});

it('counts no wall where the cone that stops a hexagonal shaft comes near the jaws: its faces stand 45° apart from the floor', () => {
  const made = design({
    part: 'coupling',
    name: 'a',
    motor: { torque: 0.29, axial_limit: 30, temperature: 35, shaft: { across_flats: 8.56 } },
    screw: 'Tr10x2',
    mounting: 'horizontal',
    thrust_bearing: 'yes',
    jaws: { count: 6, flank: 'straight', fillet: 0.25, bevel: 0.58 },
    material: 'pa12',
    printer: { chord_error: 0.05, compensation: 'none', layer: 0.16 },
  });
  const plan = kindOfDesign(KINDS, made)
    .bodies(made)
    .find(({ recipe }) => recipe.name === 'motor-hub')!;
  const { wall } = measureBody({ ...plan, body: fuseBody(kernel, plan.recipe), file: 'motor-hub' });
  expect(wall!.thickness).toBeGreaterThan(plan.leastWall.size - 0.05);
});
