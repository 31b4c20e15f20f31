import { expect, it } from 'vitest';
import { createKernel } from '../../../src/solid/kernel.js';
import { holdGate } from '../../support/hold-gate.js';
import { sensibleCoupling } from '../../support/sensible-sheets/index.js';

it('makes every sheet of couplings that passes its checks', async () => {
  const { made } = await holdGate(sensibleCoupling, await createKernel(), { numRuns: 600, seed: 1 });
  expect(made).toBeGreaterThan(250);
});
