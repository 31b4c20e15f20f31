import { expect, it } from 'vitest';
import { createKernel } from '../../../src/solid/kernel.js';
import { holdGate } from '../../support/hold-gate.js';
import { sensibleMotorPlate } from '../../support/sensible-sheets/index.js';

it('makes every sheet of motor plates that passes its checks', async () => {
  const { made } = await holdGate(sensibleMotorPlate, await createKernel(), { numRuns: 350, seed: 1 });
  expect(made).toBeGreaterThan(100);
});
