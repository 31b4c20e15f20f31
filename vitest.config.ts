import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      { test: { name: 'unit', include: ['test/**/*.test.ts'], exclude: ['test/soak/**'], testTimeout: 30_000 } },
      { test: { name: 'soak', include: ['test/soak/**/*.test.ts'], testTimeout: 900_000 } },
    ],
  },
});
