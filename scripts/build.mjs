// Builds dist/: the command and the library, each bundled so that a start reads few files, and the type declarations.
import { execFileSync } from 'node:child_process';
import { chmodSync, rmSync } from 'node:fs';
import { build } from 'esbuild';
import { bundlePresets } from './bundle-presets.mjs';

const shared = {
  bundle: true,
  format: 'esm',
  splitting: true,
  target: 'node20',
  outdir: 'dist',
  external: ['manifold-3d'],
  logLevel: 'warning',
  legalComments: 'none',
};
const requireForNode = "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);";

rmSync('dist', { recursive: true, force: true });
bundlePresets();
await build({
  ...shared,
  platform: 'node',
  entryPoints: { leadwright: 'src/cli/leadwright.ts' },
  chunkNames: 'command/[name]-[hash]',
  banner: { js: requireForNode },
});
await build({
  ...shared,
  platform: 'neutral',
  mainFields: ['module', 'main'],
  entryPoints: { index: 'src/index.ts' },
  chunkNames: 'library/[name]-[hash]',
});
chmodSync('dist/leadwright.js', 0o755);
execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json'], { stdio: 'inherit' });
