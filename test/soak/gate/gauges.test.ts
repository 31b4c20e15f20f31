import { expect, it } from 'vitest';
import { createKernel } from '../../../src/solid/kernel.js';
import { holdGate } from '../../support/hold-gate.js';
import { sensibleGauge } from '../../support/sensible-sheets/index.js';

it('makes every sheet of gauge rings that passes its checks', async () => {
  const { made } = await holdGate(sensibleGauge, await createKernel(), { numRuns: 40, seed: 1 });
  expect(made).toBeGreaterThan(20);
});
