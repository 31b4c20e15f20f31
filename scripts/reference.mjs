// Writes docs/reference/ from the schemas and the checks: npm run reference.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { ROOT } from './bundle-command.mjs';
import { bundlePage } from './bundle-page.mjs';
import { bundlePresets } from './bundle-presets.mjs';

const TO = join(ROOT, 'docs/reference');
// beside the generator, so that it finds the sources as it does when tests run it
const BUNDLE = join(ROOT, 'scripts/reference/bundled.tmp.mjs');

bundlePresets();
await bundlePage();
await build({
  entryPoints: [join(ROOT, 'scripts/reference/pages.ts')],
  outfile: BUNDLE,
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  logLevel: 'warning',
});
const { referencePages } = await import(pathToFileURL(BUNDLE).href).finally(() => rmSync(BUNDLE));
rmSync(TO, { recursive: true, force: true });
mkdirSync(TO, { recursive: true });
for (const [file, text] of await referencePages()) writeFileSync(join(TO, file), text);
