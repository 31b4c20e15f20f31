import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    // one worker a core: the usual rule leaves one core idle
    maxWorkers: '100%',
    // modules are transformed anew where their text changed
    experimental: { fsModuleCache: true },
    projects: [
      {
        test: {
          name: 'unit',
          globalSetup: ['scripts/bundle-presets.mjs', 'scripts/bundle-page.mjs'],
          setupFiles: ['test/support/seed.ts'],
          include: ['test/**/*.test.ts'],
          exclude: ['test/soak/**', 'test/browser/**', 'test/engines/**'],
          // a slow machine is no fault
          testTimeout: 120_000,
          // modules are loaded once a worker, not once a file: nothing here keeps state in them
          isolate: false,
        },
      },
      {
        test: {
          name: 'soak',
          globalSetup: ['scripts/bundle-presets.mjs', 'scripts/bundle-page.mjs'],
          setupFiles: ['test/support/seed.ts'],
          include: ['test/soak/**/*.test.ts'],
          testTimeout: 900_000,
        },
      },
      {
        test: {
          name: 'engines',
          globalSetup: ['scripts/bundle-presets.mjs', 'scripts/bundle-page.mjs', 'test/engines/install.ts'],
          include: ['test/engines/**/*.test.ts'],
          testTimeout: 300_000,
        },
      },
      {
        test: {
          name: 'browser',
          globalSetup: ['scripts/bundle-presets.mjs', 'scripts/bundle-page.mjs'],
          include: ['test/browser/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
