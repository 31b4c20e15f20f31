// Builds dist/: the command and the library, each bundled so that a start reads few files, and the type declarations.
import { execFileSync } from 'node:child_process';
import { chmodSync, rmSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { join } from 'node:path';
import { build } from 'esbuild';
import { bundlePage } from './bundle-page.mjs';
import { bundlePresets } from './bundle-presets.mjs';

const ROOT = join(import.meta.dirname, '..');
const DIST = join(ROOT, 'dist');

/** manifold-3d finds its wasm beside its own file, so it is not bundled; it is the one package read at run time. */
const AT_RUN_TIME = ['manifold-3d'];

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

const shared = {
  absWorkingDir: ROOT,
  bundle: true,
  format: 'esm',
  splitting: true,
  target: 'node20',
  outdir: 'dist',
  external: AT_RUN_TIME,
  plugins: [fewGeometries, oneLanguage],
  logLevel: 'warning',
  legalComments: 'none',
  metafile: true,
};

rmSync(DIST, { recursive: true, force: true });
bundlePresets();
await bundlePage();
const command = await build({
  ...shared,
  platform: 'node',
  entryPoints: { leadwright: 'src/cli/leadwright.ts' },
  chunkNames: 'command/[name]-[hash]',
  // what is small is read soon; the library stays readable
  minify: true,
  // yargs asks for require to be there
  banner: {
    js: "import { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);",
  },
});
const library = await build({
  ...shared,
  platform: 'neutral',
  mainFields: ['module', 'main'],
  entryPoints: { index: 'src/index.ts' },
  chunkNames: 'library/[name]-[hash]',
});
chmodSync(join(DIST, 'leadwright.js'), 0o755);
execFileSync(
  process.execPath,
  [join(ROOT, 'node_modules/typescript/bin/tsc'), '-p', join(ROOT, 'tsconfig.build.json')],
  {
    stdio: 'inherit',
  },
);

refuse(
  'the library must run without Node',
  importsOf(library).filter((path) => path.startsWith('node:')),
);
refuse('only what package.json declares may be left to run time', [
  ...importsOf(library).filter((path) => !AT_RUN_TIME.includes(path)),
  ...importsOf(command).filter((path) => !AT_RUN_TIME.includes(path) && !isBuiltin(path)),
]);
refuse('help must load neither schemas, YAML nor solids', heavyAtStart(command));

/** Every import that a bundle leaves to run time. */
function importsOf({ metafile }) {
  const outputs = Object.values(metafile.outputs);
  return [
    ...new Set(outputs.flatMap(({ imports }) => imports.filter(({ external }) => external).map(({ path }) => path))),
  ];
}

/** Heavy packages in the files that the entry reads before any command is chosen. */
function heavyAtStart({ metafile }) {
  const seen = new Set();
  const read = (file) => {
    if (seen.has(file)) return;
    seen.add(file);
    for (const { path, kind, external } of metafile.outputs[file].imports) {
      if (kind === 'import-statement' && !external) read(path);
    }
  };
  read('dist/leadwright.js');
  const inputs = [...seen].flatMap((file) => Object.keys(metafile.outputs[file].inputs));
  return inputs.filter((input) =>
    /node_modules\/(zod|yaml|@jscad|manifold-3d)\/|src\/(parts|solid|presets|pipeline)\//.test(input),
  );
}

function refuse(rule, found) {
  if (found.length === 0) return;
  console.error(`${rule}:\n  ${[...new Set(found)].slice(0, 10).join('\n  ')}`);
  process.exit(1);
}
