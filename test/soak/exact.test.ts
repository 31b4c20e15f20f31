import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../src/pipeline/check.js';
import { type Design, design } from '../../src/pipeline/design.js';
import { exactRequest } from '../../src/pipeline/exact-request.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { exactPart } from '../../src/solid/exact/exact-part.js';
import { createKernel, type Kernel } from '../../src/solid/kernel.js';
import { measureMesh } from '../../src/solid/measure.js';
import { InputError } from '../../src/units/faults.js';
import { exactKernel, HAS_EXACT, NEEDS_EXACT } from '../support/exact-kernel.js';
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

// Two kernels build the same recipes: the exact body and the mesh agree within what the chords of the mesh explain.
// The exact body is held against its own gate besides, before and after it is written.

let mesh: Kernel;
beforeAll(async () => {
  mesh = await createKernel();
});

const CHORD = 0.01;

/** The first designs of a kind that pass their checks. */
function passed(sheets: fc.Arbitrary<Record<string, unknown>>, count: number): Design[] {
  const found: Design[] = [];
  for (const given of fc.sample(sheets, { numRuns: 30 * count, seed: 22 })) {
    const printer = { ...(given.printer as object), chord_error: CHORD };
    try {
      const made = design({ ...given, printer });
      if (check(made).verdict !== 'fail') found.push(made);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
    if (found.length === count) break;
  }
  return found;
}

const SHEETS = [
  ['nuts', sensibleNut, 4],
  ['adapters', sensibleAdapter, 4],
  ['couplings', sensibleCoupling, 2],
  ['sleeves', sensibleSleeve, 3],
  ['collars', sensibleCollar, 2],
  ['end holders', sensibleEndHolder, 3],
  ['motor plates', sensibleMotorPlate, 2],
  ['gauges', sensibleGauge, 1],
  ['coupons', sensibleCoupon, 1],
] as const;

describe(`the exact body and the mesh${NEEDS_EXACT}`, () => {
  it.skipIf(!HAS_EXACT).each(SHEETS)('of random %s', async (_, sheets, count) => {
    const designs = passed(sheets as fc.Arbitrary<Record<string, unknown>>, count);
    expect(designs).toHaveLength(count);
    for (const made of designs) {
      const kind = kindOfDesign(KINDS, made);
      const request = exactRequest(made, { kind, kernel: mesh }, { sizes: 'printed', threads: 'exact' });
      const { measures } = exactPart(await exactKernel(), request);
      for (const [i, { recipe }] of kind.bodies(made, 'printed').entries()) {
        const drawn = measureMesh(mesh.fuse(recipe.shape));
        const exact = measures[i]!;
        const name = `${JSON.stringify(made.name)} ${recipe.name}`;
        // chords stand off their surface by two thirds of the chord error at most on the mean; 24 sides of lying holes
        // and steps of fillets by a little more
        expect(Math.abs(exact.volume - drawn.volume), name).toBeLessThan(CHORD * exact.area);
        const [min, max] = drawn.bounds;
        for (const axis of [0, 1, 2] as const) {
          const shift = axis === 0 ? Math.round(exact.bounds[0][0] - min[0]) : 0;
          expect(Math.abs(exact.bounds[0][axis] - shift - min[axis]), name).toBeLessThan(2 * CHORD);
          expect(Math.abs(exact.bounds[1][axis] - shift - max[axis]), name).toBeLessThan(2 * CHORD);
        }
      }
    }
  });
});
