import { expect, it } from 'vitest';
import { createKernel } from '../../../src/solid/kernel.js';
import { holdGate } from '../../support/hold-gate.js';
import { sensibleCollar } from '../../support/sensible-sheets/index.js';

it('makes every sheet of collars that passes its checks', async () => {
  const { made } = await holdGate(sensibleCollar, await createKernel(), { numRuns: 350, seed: 1 });
  expect(made).toBeGreaterThan(120);
});
