// Writes dist/live.html: the whole tool in one page, which asks for nothing. Script, engine and kernel lie in it deflated, in letters;
// the script is put in by its hash, the engine runs in workers made from a blob.
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deflateRawSync } from 'node:zlib';
import { build } from 'esbuild';
import { ROOT, SHARED } from './bundle-command.mjs';
import { FOR_PAGES } from './bundle-for-pages.mjs';

/** Where the command puts a sheet into the page. */
const NO_SHEET = '""';

export async function bundleLive(to) {
  const [look, loader, page, engine, exact] = await Promise.all([
    bundled('page/live/style.css'),
    bundled('page/live/loader.ts'),
    bundled('page/live/main.tsx'),
    bundled('page/live/engine/worker.ts'),
    bundled('page/live/engine/exact-worker.ts'),
  ]);
  const kernel = readFileSync(createRequire(import.meta.url).resolve('manifold-3d/manifold.wasm'));
  const policy = [
    "default-src 'none'",
    `script-src '${hashOf(loader)}' '${hashOf(page)}' 'wasm-unsafe-eval'`,
    `style-src '${hashOf(look)}'`,
    "style-src-attr 'unsafe-inline'",
    'worker-src blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  const html = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1, interactive-widget=resizes-content">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<title>Leadwright</title>
<style>${look}</style>
</head>
<body>
<div id="live"><p role="status">one moment</p><noscript>This page works by its script; without it, the command leadwright does the same.</noscript></div>
<script type="application/json" id="sheet">${NO_SHEET}</script>
<script type="text/plain" id="engine">${packed(Buffer.from(engine))}</script>
<script type="text/plain" id="kernel">${packed(kernel)}</script>
<script type="text/plain" id="exact">${packed(Buffer.from(exact))}</script>
<script type="text/plain" id="page">${packed(Buffer.from(page))}</script>
<script>${loader}</script>
</body>
</html>
`;
  mkdirSync(dirname(to), { recursive: true });
  writeFileSync(to, html);
  return html.length;
}

async function bundled(entry) {
  const { outputFiles } = await build({
    ...SHARED,
    outdir: 'dist',
    write: false,
    platform: 'browser',
    format: 'iife',
    splitting: false,
    external: [],
    minify: true,
    target: ['chrome109', 'firefox115', 'safari16.4'],
    // the kernel is given its bytes, so that no script address is asked for
    define: { 'import.meta.url': '""' },
    plugins: [...SHARED.plugins, ...FOR_PAGES],
    entryPoints: [entry],
  });
  return outputFiles[0].text.trim();
}

function packed(bytes) {
  return deflateRawSync(bytes, { level: 9 }).toString('base64');
}

/** As a security policy names a text. */
function hashOf(text) {
  return `sha256-${createHash('sha256').update(text).digest('base64')}`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const to = process.argv[2] ?? join(ROOT, 'dist/live.html');
  console.log(`${to}: ${await bundleLive(to)} bytes`);
}
