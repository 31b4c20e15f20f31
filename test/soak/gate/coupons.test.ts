import { expect, it } from 'vitest';
import { createKernel } from '../../../src/solid/kernel.js';
import { holdGate } from '../../support/hold-gate.js';
import { sensibleCoupon } from '../../support/sensible-sheets/index.js';

it('makes every sheet of coupons that passes its checks', async () => {
  const { made } = await holdGate(sensibleCoupon, await createKernel(), { numRuns: 100, seed: 1 });
  expect(made).toBeGreaterThan(80);
});
