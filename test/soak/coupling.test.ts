import { expect, it } from 'vitest';
import { createKernel } from '../../src/solid/kernel.js';
import { drawRandomCouplings } from '../parts/coupling/draw-hunt.js';
import { huntCouplings } from '../parts/coupling/hunt.js';

it('two hundred random couplings are closed and mate; broken ones are refused with the reason', async () => {
  const counts = await huntCouplings(await createKernel(), 400);
  expect(counts.made).toBeGreaterThan(200);
});

it('draws whatever coupling can be designed', async () => {
  drawRandomCouplings(await createKernel(), 40);
});
