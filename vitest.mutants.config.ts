import { defineConfig } from 'vitest/config';

// The tests that mutation testing runs, without browsers and long hunts.
export default defineConfig({
  test: {
    setupFiles: ['test/support/seed.ts'],
    include: (process.env.MUTANT_TESTS ?? '').split(' ').filter((word) => word !== ''),
    testTimeout: 30_000,
  },
});
