// Bundles the command, the worker of fleets and that of exact bodies, so that a start reads few files.
import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, transform } from 'esbuild';

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

/** A piece of a package's file put in another way; a package that looks different stops the build. */
const mended = (name, filter, from, to) => ({
  name,
  setup({ onLoad }) {
    onLoad({ filter }, ({ path }) => {
      const text = readFileSync(path, 'utf8');
      if (!text.includes(from)) throw new Error(`${path} is not what it was: mend the plugin ${name}`);
      return { contents: text.replace(from, () => to) };
    });
  },
});

/**
 * yargs brings three copies of string-width, and each makes an Intl.Segmenter when it is loaded: 20 to 40 ms at the start.
 * Plain ASCII falls apart into its characters; a segmenter is made for the first other text.
 */
const segmenterWhenNeeded = mended(
  'segmenter-when-needed',
  /[\\/]node_modules[\\/]string-width[\\/]index\.js$/,
  'const segmenter = new Intl.Segmenter();',
  `let made;
const segmenter = {
  segment: (text) => /^[ -~]*$/.test(text) ? Array.from(text, (segment) => ({ segment })) : (made ??= new Intl.Segmenter()).segment(text),
};`,
);

/** zod writes a function for each map and has it compiled, which pays after thousands of sheets; pages forbid it too. */
const readSchemasAsTheyAre = mended(
  'read-schemas-as-they-are',
  /[\\/]zod[\\/]v4[\\/]core[\\/]core\.js$/,
  '(_a = globalThis).__zod_globalConfig ?? (_a.__zod_globalConfig = {});\nexport const globalConfig = globalThis.__zod_globalConfig;',
  'export const globalConfig = { jitless: true };',
);

/** yargs words the whole help at each call, lest the work fail later; ours is done when yargs has long ended. */
const noHelpInReserve = mended(
  'no-help-in-reserve',
  /[\\/]yargs[\\/]build[\\/]lib[\\/]command\.js$/,
  'yargs.getInternalMethods().getUsageInstance().cacheHelpMessage();',
  '',
);

/** What the command and the library are bundled with. */
export const SHARED = {
  absWorkingDir: ROOT,
  bundle: true,
  format: 'esm',
  splitting: true,
  target: 'node20',
  external: AT_RUN_TIME,
  plugins: [fewGeometries, oneLanguage, segmenterWhenNeeded, readSchemasAsTheyAre, noHelpInReserve],
  logLevel: 'warning',
  legalComments: 'none',
  metafile: true,
};

/** What starts a worker thread: the bundled worker is a script for `require`. */
const workerStart = (name) => `import { createRequire } from 'node:module';
export default createRequire(import.meta.url)('./${name}.cjs').default;
`;

/**
 * Bundles the command into a folder of this project, below which its packages are found; gives what the bundler tells. Its
 * files are scripts for `require`, since of those alone every engine can keep what it compiled (`src/cli/load-program.ts`).
 */
export async function bundleCommand(outdir) {
  const starter = await build({
    ...SHARED,
    splitting: false,
    outdir,
    platform: 'node',
    entryPoints: { leadwright: 'src/cli/leadwright.ts' },
    minify: true,
  });
  const result = await build({
    ...SHARED,
    outdir: join(outdir, 'command'),
    platform: 'node',
    entryPoints: {
      run: 'src/cli/run.ts',
      'keep-code': 'src/work/keep-code.ts',
      'fleet-worker': 'src/work/fleet/worker.ts',
      'exact-worker': 'src/work/exact/worker.ts',
    },
    chunkNames: '[name]-[hash]',
    outExtension: { '.js': '.cjs' },
    define: { 'import.meta.url': '__moduleUrl' },
    // what is small is read soon; the library stays readable
    minify: true,
    write: false,
  });
  mkdirSync(join(ROOT, outdir, 'command'), { recursive: true });
  for (const { path, text } of result.outputFiles) writeFileSync(path, await asScript(text));
  for (const name of ['fleet-worker', 'exact-worker'])
    writeFileSync(join(ROOT, outdir, 'command', `${name}.js`), workerStart(name));
  chmodSync(join(ROOT, outdir, 'leadwright.js'), 0o755);
  return { metafile: { outputs: { ...starter.metafile.outputs, ...result.metafile.outputs } } };
}

/**
 * A bundled module as a script for `require`: what it imports when needed, it asks a function for, since code that is kept
 * cannot import; packages that know imports alone come from whoever loads it.
 */
async function asScript(module) {
  const { code } = await transform(module.replaceAll(/\bimport\("(?=\.\/|manifold-3d|tinypool)/g, '__load("'), {
    format: 'cjs',
    platform: 'node',
    target: 'node20',
    minify: true,
  });
  const url = code.includes('__moduleUrl')
    ? 'const __moduleUrl=require("node:url").pathToFileURL(__filename).href;'
    : '';
  const load = code.includes('__load(')
    ? 'const __load=async(path)=>path.startsWith("./")?require(path):module.import?module.import(path):import(path);'
    : '';
  // the bundler leaves patterns as they are; plain ASCII needs no decoding
  const ascii = code.replace(/[^\0-\x7f]/g, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);
  return `"use strict";${url}${load}${ascii}`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundleCommand(process.argv[2] ?? 'dist');
