import { defineConfig } from 'vitest/config';

// The tests that mutation testing runs, without browsers and long hunts.
export default defineConfig({
  test: {
    setupFiles: ['test/support/seed.ts'],
    include: (process.env.MUTANT_TESTS ?? '').split(' ').filter((word) => word !== ''),
    // the sources are rewritten when they are mutated, so what is said of their texts does not hold then
    // nor are gates that look for missing cases, which only run all cases again
    testNamePattern: /^(?!.*(gives units, sources and examples|has a case for each word))/,
    // one load of the sources a run
    isolate: false,
    testTimeout: 30_000,
  },
});
