import { expect, it } from 'vitest';
import { createKernel } from '../../../src/solid/kernel.js';
import { holdGate } from '../../support/hold-gate.js';
import { sensibleEndHolder } from '../../support/sensible-sheets/index.js';

it('makes every sheet of end holders that passes its checks', async () => {
  const { made } = await holdGate(sensibleEndHolder, await createKernel(), { numRuns: 350, seed: 1 });
  expect(made).toBeGreaterThan(100);
});
