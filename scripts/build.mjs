// Builds dist/: the command and the library, each bundled so that a start reads few files, and the type declarations.
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { build } from 'esbuild';
import { AT_RUN_TIME, bundleCommand, ROOT, SHARED } from './bundle-command.mjs';
import { bundleForPages } from './bundle-for-pages.mjs';
import { bundleLive } from './bundle-live.mjs';
import { bundlePage } from './bundle-page.mjs';
import { bundlePresets } from './bundle-presets.mjs';

const DIST = join(ROOT, 'dist');

rmSync(DIST, { recursive: true, force: true });
bundlePresets();
await bundlePage();
const command = await bundleCommand('dist');
const library = await build({
  ...SHARED,
  outdir: 'dist',
  platform: 'neutral',
  mainFields: ['module', 'main'],
  entryPoints: { index: 'src/index.ts' },
  chunkNames: 'library/[name]-[hash]',
});
const inPages = await bundleForPages('dist/browser');
await bundleLive(join(DIST, 'live.html'));
execFileSync(
  process.execPath,
  [join(ROOT, 'node_modules/typescript/bin/tsc'), '-p', join(ROOT, 'tsconfig.build.json')],
  {
    stdio: 'inherit',
  },
);
keepDeclarations(join(DIST, 'types'));

refuse(
  'the library must run without Node',
  importsOf(library).filter((path) => path.startsWith('node:')),
);
refuse('the library for pages must be whole', importsOf(inPages));
refuse('only what package.json declares may be left to run time', [
  ...importsOf(library).filter((path) => !AT_RUN_TIME.includes(path)),
  ...importsOf(command).filter((path) => !AT_RUN_TIME.includes(path) && !isBuiltin(path)),
]);
refuse('help must load neither schemas, YAML nor solids', heavyAtStart(command));

/** Takes away declarations that those of the library do not lead to. */
function keepDeclarations(folder) {
  const kept = new Set();
  const keep = (file) => {
    if (kept.has(file)) return;
    kept.add(file);
    for (const [, path] of readFileSync(file, 'utf8').matchAll(/(?:from |import\()["'](\.[^"']+)\.js["']/g))
      keep(resolve(dirname(file), `${path}.d.ts`));
  };
  keep(join(folder, 'index.d.ts'));
  for (const name of readdirSync(folder, { recursive: true })) {
    const file = join(folder, name);
    if (file.endsWith('.d.ts') && !kept.has(file)) rmSync(file);
  }
}

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
  // the entry only finds what was kept of compiled code, and then loads what reads the call
  read('dist/leadwright.js');
  read('dist/command/run.cjs');
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
