import { beforeAll, expect, it } from 'vitest';
import { createKernel, type Kernel } from '../../src/solid/kernel.js';
import { expectAgreement, gridCase } from '../support/mate-grid.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await createKernel();
});

it('arithmetic and solids agree on the whole grid of 60 nuts', () => {
  const states = Array.from({ length: 60 }, (_, n) => expectAgreement(gridCase(n), kernel).free);
  expect(states.filter((free) => free).length).toBeGreaterThan(30);
  expect(states.filter((free) => !free).length).toBeGreaterThan(3);
});

it('arithmetic and solids agree on 500 nuts', () => {
  const states = Array.from({ length: 500 }, (_, n) => expectAgreement(gridCase(1000 + n), kernel).free);
  expect(states.filter((free) => free).length).toBeGreaterThan(200);
  expect(states.filter((free) => !free).length).toBeGreaterThan(20);
});
