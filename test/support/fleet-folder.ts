import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileFaultLine } from '../../src/fleet/machines.js';
import type { FileRow, MachineRow, ManifestHead, ManifestRow } from '../../src/fleet/manifest.js';
import { SHIPPED } from '../../src/presets/shipped.js';
import { localMaker } from '../../src/work/fleet/makers.js';
import { openFleet } from '../../src/work/fleet/open-fleet.js';
import { type FleetResult, type RunOptions, runFleet } from '../../src/work/fleet/run-fleet.js';
import { CUBES } from './cube-kind.js';
import { sharedKernel } from './shared-kernel.js';

/** A folder with files by their paths. */
export function folderOf(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'fleet-'));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

export const kernel = sharedKernel;
const FORMATS = ['stl'] as const;

/** Opens a fleet of cubes; its mistakes as lines. */
export async function openCubes(cwd: string, file = 'fleet.yaml', keepGoing = false) {
  const place = { cwd, stdin: async function* () {} };
  const opened = await openFleet(file, place, { kinds: CUBES, presets: SHIPPED, formats: FORMATS, keepGoing });
  return { ...opened, lines: opened.faults.map(fileFaultLine) };
}

/** A manifest as its file has it. */
export interface ReadManifest extends ManifestHead {
  readonly machines: readonly MachineRow[];
  readonly parts: readonly ManifestRow[];
  readonly files: readonly FileRow[];
}

/** Runs a fleet of cubes in this thread, into out/ beside its file. */
export async function runCubes(
  cwd: string,
  changes: Partial<RunOptions> & { readonly file?: string } = {},
): Promise<FleetResult & { readonly manifest: ReadManifest }> {
  const { file = 'fleet.yaml', ...options } = changes;
  const { plan, lines } = await openCubes(cwd, file);
  if (!plan) throw new Error(lines.join('\n'));
  const out = options.out ?? join(cwd, 'out');
  const result = await runFleet(plan, {
    out,
    stores: [{ folder: join(cwd, 'cache') }],
    maker: () => localMaker({ kernel, kinds: CUBES }),
    formats: FORMATS,
    onProgress: () => undefined,
    stopped: () => false,
    ...options,
  });
  return { ...result, manifest: manifestIn(out)! };
}

/** Every file below a folder by its path with forward slashes, with its digest. */
export function filesBelow(folder: string): Record<string, string> {
  if (!existsSync(folder)) return {};
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();
  const files = names.filter((name) => statSync(join(folder, name)).isFile());
  return Object.fromEntries(files.map((name) => [name.replaceAll('\\', '/'), digestOf(join(folder, name))]));
}

function digestOf(path: string): string {
  return createHash('sha256').update(readFileSync(path)).digest('hex');
}

/** What a folder holds, and what its manifest says it holds. */
export function accounts(out: string): {
  readonly there: Record<string, string>;
  readonly told: Record<string, string>;
} {
  const { 'manifest.json': _, ...there } = filesBelow(out);
  const manifest = manifestIn(out);
  return { there, told: Object.fromEntries((manifest?.files ?? []).map(({ file, digest }) => [file, digest])) };
}

export function manifestIn(out: string): ReadManifest | undefined {
  const path = join(out, 'manifest.json');
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined;
}
