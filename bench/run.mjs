// Bundles the bench and runs it, so that it measures the sources of this tree.
import { mkdirSync } from 'node:fs';
import { build } from 'esbuild';

mkdirSync('node_modules/.bench', { recursive: true });
await build({
  entryPoints: ['bench/main.ts'],
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  external: ['manifold-3d'],
  outfile: 'node_modules/.bench/main.mjs',
  banner: {
    js: "import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);",
  },
  logLevel: 'warning',
});
await import('../node_modules/.bench/main.mjs');
