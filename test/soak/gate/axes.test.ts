import { expect, it } from 'vitest';
import { createKernel } from '../../../src/solid/kernel.js';
import { holdGate } from '../../support/hold-gate.js';
import { sensibleAxis } from '../../support/sensible-sheets/index.js';

it('makes every axis that passes its checks', async () => {
  const { made } = await holdGate(sensibleAxis, await createKernel(), { numRuns: 100, seed: 1 });
  expect(made).toBeGreaterThan(40);
});
