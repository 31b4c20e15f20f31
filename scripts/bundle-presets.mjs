// Writes src/presets/shipped.ts from presets/**/*.yaml, so that the presets travel inside the bundles.
import { readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';

/** Folders of what is no preset to be read at a start. */
const OTHERS = /^(fleets|results|sheets)\//;

const FROM = new URL('../presets/', import.meta.url);
const TO = new URL('../src/presets/shipped.ts', import.meta.url);

/** Bundles the preset files; the file is touched only when its text changes. */
export function bundlePresets() {
  const text = bundled(presetPaths());
  if (current() === text) return;
  // a rename is one step: whoever reads at the same time sees the old file or the new one, never half of it
  const draft = new URL(`shipped.${process.pid}.tmp`, TO);
  writeFileSync(draft, text);
  renameSync(draft, TO);
}

/** Runs before the tests. */
export const setup = bundlePresets;

function presetPaths() {
  return readdirSync(FROM, { recursive: true })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.yaml'))
    .sort((a, b) => (a < b ? -1 : 1));
}

function bundled(paths) {
  const entries = paths.map((path) => `  ${JSON.stringify(path)}: ${JSON.stringify(presetText(path))},`);
  const values = paths
    .filter((path) => !OTHERS.test(path))
    .map((path) => `  ${JSON.stringify(path)}: ${JSON.stringify(JSON.stringify(parse(presetText(path))))},`);
  return [
    '// Generated from presets/ by scripts/bundle-presets.mjs; not kept under version control.',
    "import type { PresetTexts } from './texts.js';",
    '',
    '/** The preset files that come with the package. */',
    'export const SHIPPED: PresetTexts = {',
    ...entries,
    '};',
    '',
    '/** What those hold that are presets, as JSON, which a start reads sooner than YAML. */',
    'export const SHIPPED_VALUES: Readonly<Record<string, string>> = {',
    ...values,
    '};',
    '',
  ].join('\n');
}

function presetText(path) {
  return readFileSync(new URL(path, FROM), 'utf8').replaceAll('\r\n', '\n');
}

function current() {
  try {
    return readFileSync(TO, 'utf8');
  } catch {
    return undefined;
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) bundlePresets();
