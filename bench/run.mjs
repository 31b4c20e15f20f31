// Bundles a bench and runs it, so that it measures the sources of this tree: `node bench/run.mjs [main|recovery]`.
import { mkdirSync } from 'node:fs';
import { build } from 'esbuild';

const [entry = 'main'] = process.argv.slice(2);

mkdirSync('node_modules/.bench', { recursive: true });
await build({
  entryPoints: [`bench/${entry}.ts`],
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  external: ['manifold-3d', 'playwright-core'],
  outfile: `node_modules/.bench/${entry}.mjs`,
  banner: {
    js: "import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);",
  },
  logLevel: 'warning',
});
await import(`../node_modules/.bench/${entry}.mjs`);
