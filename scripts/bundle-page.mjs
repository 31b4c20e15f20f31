// Writes src/output/page/assets.ts: the page's script (with three inside) and style, and the hashes of script and styles
// for the page's security policy.
import { createHash } from 'node:crypto';
import { readdirSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { deflateSync } from 'fflate';

const ROOT = join(import.meta.dirname, '..');
const TO = join(ROOT, 'src/output/page/assets.ts');
const INPUTS = [
  'page',
  'src/output/mesh',
  'src/solid/facet-normals.ts',
  'src/output/page/packing.ts',
  'src/output/page/unpack-mesh.ts',
  'src/output/page/page-data.ts',
  'scripts/bundle-page.mjs',
  'package-lock.json',
];

/** Bundles the page's script and style unless what was bundled last is newer than all they are made from. */
export async function bundlePage() {
  if (changedAt(TO) > Math.max(...INPUTS.map((path) => changedAt(join(ROOT, path))))) return;
  const options = { absWorkingDir: ROOT, bundle: true, minify: true, write: false, legalComments: 'none' };
  const target = ['chrome109', 'firefox115', 'safari16.4'];
  const script = async (entry, define = {}) => {
    const { outputFiles } = await build({ ...options, target, define, entryPoints: [entry], format: 'iife' });
    return outputFiles[0].text.replaceAll('</script', '<\\/script').trim();
  };
  const [worker, viewer, style] = await Promise.all([
    script('page/client/worker.ts'),
    script('page/client/viewer-entry.ts'),
    build({ ...options, target, entryPoints: ['page/style.css'] }),
  ]);
  const code = await script('page/client/main.ts', { WORKER_CODE: JSON.stringify(worker) });
  const look = style.outputFiles[0].text.trim();
  const deflated = Buffer.from(deflateSync(Buffer.from(viewer), { level: 9 })).toString('base64');
  const text = [
    '// Generated from page/ by scripts/bundle-page.mjs; not kept under version control.',
    '',
    '/** What a page runs at once, and the viewer that it starts when the part is scrolled to. */',
    `export const SCRIPT: string = ${JSON.stringify(code)};`,
    `export const VIEWER: string = ${JSON.stringify(viewer)};`,
    '/** The viewer deflated, in base64. */',
    `export const VIEWER_DEFLATED: string = ${JSON.stringify(deflated)};`,
    '/** How it looks, and the hashes of scripts and style for its security policy. */',
    `export const SCRIPT_HASHES: readonly string[] = ${JSON.stringify([hashOf(code), hashOf(viewer)])};`,
    `export const STYLE: string = ${JSON.stringify(look)};`,
    `export const STYLE_HASHES: readonly string[] = ${JSON.stringify([hashOf(look)])};`,
    '',
  ].join('\n');
  const draft = `${TO}.${process.pid}.tmp`;
  writeFileSync(draft, text);
  renameSync(draft, TO);
}

/** As a security policy names a text. */
function hashOf(text) {
  return `sha256-${createHash('sha256').update(text).digest('base64')}`;
}

/** Runs before the tests. */
export const setup = bundlePage;

/** When a file, or the newest in a folder, was changed last; 0 where there is none. */
function changedAt(path) {
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found) return 0;
  if (!found.isDirectory()) return found.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => changedAt(join(path, name))));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await bundlePage();
