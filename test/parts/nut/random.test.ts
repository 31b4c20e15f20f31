import { beforeAll, describe, it } from 'vitest';
import type { Kernel } from '../../../src/index.js';
import { huntNuts } from '../../support/hunt-nuts.js';
import { sharedKernel } from '../../support/shared-kernel.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

describe('random nuts', () => {
  it('are refused by a check or closed, of the right volume and size, mated, and the same bytes twice', async () => {
    await huntNuts(kernel, 8);
  });
});
