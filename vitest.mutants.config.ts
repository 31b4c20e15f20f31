import { defineConfig } from 'vitest/config';

// The tests that mutation testing runs, without browsers and long hunts.
export default defineConfig({
  test: {
    setupFiles: ['test/support/seed.ts'],
    include: (process.env.MUTANT_TESTS ?? '').split(' ').filter((word) => word !== ''),
    // the sources are rewritten when they are mutated, so what is said of their texts does not hold then
    testNamePattern: /^(?!.*gives units, sources and examples)/,
    testTimeout: 30_000,
  },
});
