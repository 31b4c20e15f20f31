import { createKernel } from '../../src/solid/kernel.js';

/**
 * One kernel for all tests of a worker: it keeps no solid between calls, and its code runs fast only once it has run for
 * a while. Making a nut with a fresh one takes twice as long.
 */
export const sharedKernel = createKernel();
