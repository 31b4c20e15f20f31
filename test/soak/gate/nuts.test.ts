import { expect, it } from 'vitest';
import { createKernel } from '../../../src/solid/kernel.js';
import { holdGate } from '../../support/hold-gate.js';
import { sensibleNut } from '../../support/sensible-sheets/index.js';

it('makes every sheet of nuts that passes its checks', async () => {
  const { made } = await holdGate(sensibleNut, await createKernel(), { numRuns: 1100, seed: 1 });
  expect(made).toBeGreaterThan(400);
});
