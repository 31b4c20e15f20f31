// Bundles the library for pages and their workers: one file that imports nothing, the kernel's script in it. Bundlers that know
// the condition `browser` of package.json take it by themselves.
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { SHARED } from './bundle-command.mjs';

/** The kernel's script asks for a module of Node's where it runs there; bundlers stop at its name. */
const withoutNode = {
  name: 'without-node',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^module$/ }, () => ({ path: 'module', namespace: 'without-node' }));
    onLoad({ filter: /.*/, namespace: 'without-node' }, () => ({ contents: 'export {};' }));
  },
};

export async function bundleForPages(outdir) {
  return build({
    ...SHARED,
    outdir,
    platform: 'browser',
    splitting: false,
    external: [],
    minify: true,
    plugins: [...SHARED.plugins, withoutNode],
    entryPoints: { index: 'src/index.ts' },
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundleForPages(process.argv[2] ?? 'dist/browser');
