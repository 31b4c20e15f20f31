import { expect, it } from 'vitest';
import { sharedKernel } from '../../support/shared-kernel.js';
import { huntCouplings } from './hunt.js';

it('random couplings are refused with a reason, or all their bodies are closed, sized right and mate', async () => {
  const counts = await huntCouplings(await sharedKernel, 8);
  expect(counts.made).toBeGreaterThan(1);
}, 60_000);
