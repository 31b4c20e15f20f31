import { it } from 'vitest';
import { createKernel } from '../../src/index.js';
import { huntNuts } from '../support/hunt-nuts.js';

it('makes 400 random nuts that are all closed and mate', async () => {
  await huntNuts(await createKernel(), 400);
});
