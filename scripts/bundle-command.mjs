// Bundles the command, the worker of fleets and that of exact bodies, so that a start reads few files.
import { chmodSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

export const ROOT = join(import.meta.dirname, '..');

/** manifold-3d finds its wasm beside its own file, and tinypool its worker: they are not bundled but read at run time. */
export const AT_RUN_TIME = ['manifold-3d', 'tinypool'];

/**
 * The STL serializer asks for the whole of @jscad/modeling, 40 ms at the start, and uses two functions of it; it gets
 * those two.
 */
const fewGeometries = {
  name: 'few-geometries',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^@jscad\/modeling$/ }, ({ importer }) =>
      /[\\/]stl-serializer[\\/]/.test(importer) ? { path: 'few', namespace: 'few-geometries' } : undefined,
    );
    onLoad({ filter: /.*/, namespace: 'few-geometries' }, () => ({
      resolveDir: ROOT,
      contents: `
        const toPolygons = require('@jscad/modeling/src/geometries/geom3/toPolygons');
        const plane = require('@jscad/modeling/src/geometries/poly3/plane');
        module.exports = { geometries: { geom3: { toPolygons }, poly3: { plane } } };`,
    }));
  },
};

/** zod carries its messages in some forty languages, 300 kB; every message of ours is our own. */
const oneLanguage = {
  name: 'one-language',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /\/locales\/index\.js$/ }, ({ importer }) =>
      /[\\/]node_modules[\\/]zod[\\/]/.test(importer) ? { path: 'none', namespace: 'one-language' } : undefined,
    );
    onLoad({ filter: /.*/, namespace: 'one-language' }, () => ({ contents: 'export {};' }));
  },
};

/**
 * yargs brings three copies of string-width, and each makes an Intl.Segmenter when it is loaded: 20 to 40 ms at the start.
 * Plain ASCII falls apart into its characters; a segmenter is made for the first other text.
 */
const segmenterWhenNeeded = {
  name: 'segmenter-when-needed',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]node_modules[\\/]string-width[\\/]index\.js$/ }, ({ path }) => {
      const text = readFileSync(path, 'utf8');
      const made = 'const segmenter = new Intl.Segmenter();';
      if (!text.includes(made)) throw new Error(`${path} makes its segmenter in another way: mend this plugin`);
      const lazy = `let made;
const segmenter = {
  segment: (text) => /^[ -~]*$/.test(text) ? Array.from(text, (segment) => ({ segment })) : (made ??= new Intl.Segmenter()).segment(text),
};`;
      return { contents: text.replace(made, () => lazy) };
    });
  },
};

/** What the command and the library are bundled with. */
export const SHARED = {
  absWorkingDir: ROOT,
  bundle: true,
  format: 'esm',
  splitting: true,
  target: 'node20',
  external: AT_RUN_TIME,
  plugins: [fewGeometries, oneLanguage, segmenterWhenNeeded],
  logLevel: 'warning',
  legalComments: 'none',
  metafile: true,
};

/** Bundles the command into a folder of this project, below which its packages are found; gives what the bundler tells. */
export async function bundleCommand(outdir) {
  const result = await build({
    ...SHARED,
    outdir,
    platform: 'node',
    entryPoints: {
      leadwright: 'src/cli/leadwright.ts',
      'command/fleet-worker': 'src/work/fleet/worker.ts',
      'command/exact-worker': 'src/work/exact/worker.ts',
    },
    chunkNames: 'command/[name]-[hash]',
    // what is small is read soon; the library stays readable
    minify: true,
    // yargs asks for require to be there
    banner: {
      js: "import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);",
    },
  });
  chmodSync(join(ROOT, outdir, 'leadwright.js'), 0o755);
  return result;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundleCommand(process.argv[2] ?? 'dist');
