// Writes src/output/page/assets.ts: the page's script (with three inside) and style, and the hashes of script and styles
// for the page's security policy.
import { createHash } from 'node:crypto';
import { readdirSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const ROOT = join(import.meta.dirname, '..');
const TO = join(ROOT, 'src/output/page/assets.ts');
const INPUTS = [
  'page',
  'src/output/mesh',
  'src/output/page/page-data.ts',
  'scripts/bundle-page.mjs',
  'package-lock.json',
];

/** Bundles the page's script and style unless what was bundled last is newer than all they are made from. */
export async function bundlePage() {
  if (changedAt(TO) > Math.max(...INPUTS.map((path) => changedAt(join(ROOT, path))))) return;
  const options = { absWorkingDir: ROOT, bundle: true, minify: true, write: false, legalComments: 'none' };
  const target = ['chrome109', 'firefox115', 'safari16'];
  const [script, style] = await Promise.all([
    build({ ...options, target, entryPoints: ['page/client/main.ts'], format: 'iife' }),
    build({ ...options, target, entryPoints: ['page/style.css'] }),
  ]);
  const code = script.outputFiles[0].text.replaceAll('</script', '<\\/script').trim();
  const look = style.outputFiles[0].text.trim();
  const text = [
    '// Generated from page/ by scripts/bundle-page.mjs; not kept under version control.',
    '',
    '/** What a page runs and how it looks, with the hashes for its security policy: of script and style. */',
    `export const SCRIPT: string = ${JSON.stringify(code)};`,
    `export const SCRIPT_HASH: string = ${JSON.stringify(hashOf(code))};`,
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
