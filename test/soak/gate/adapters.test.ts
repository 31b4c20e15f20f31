import { expect, it } from 'vitest';
import { createKernel } from '../../../src/solid/kernel.js';
import { holdGate } from '../../support/hold-gate.js';
import { sensibleAdapter } from '../../support/sensible-sheets/index.js';

it('makes every sheet of adapters that passes its checks', async () => {
  const { made } = await holdGate(sensibleAdapter, await createKernel(), { numRuns: 900, seed: 1 });
  expect(made).toBeGreaterThan(400);
});
