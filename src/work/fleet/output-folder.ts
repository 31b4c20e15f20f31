import { randomBytes } from 'node:crypto';
import { appendFileSync, mkdirSync, readdirSync, readFileSync, rmdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Manifest } from '../../fleet/manifest.js';
import { jsonText } from '../../output/report-json.js';
import { linkWhole, writeWhole } from './whole-file.js';

export const MANIFEST = 'manifest.json';
const JOURNAL = /^\.run-.*\.txt$/;

/**
 * The output folder of a run. Before anything in it changes, the manifest goes and a journal of what may be there
 * comes; at the end what no longer belongs is cleared, and the new manifest comes last. So a manifest that is there
 * always tells the truth, and a killed run leaves a trace of what it wrote.
 */
export interface OutputFolder {
  readonly path: string;
  /** the manifest that stood there at the start */
  readonly earlier: Manifest | undefined;
  /** puts a file in place whose content is at hand */
  readonly write: (file: string, content: string | Uint8Array) => void;
  /** gives a file of a store a name here */
  readonly link: (from: string, file: string) => void;
  /** clears what the manifest does not list of what earlier runs wrote, and puts the manifest in place */
  readonly finish: (manifest: Manifest) => void;
}

/** Opens an output folder; nothing is changed yet. */
export function openOutput(path: string): OutputFolder {
  const earlier = readManifest(path);
  const journals = journalsIn(path);
  const ours = new Set([
    ...journals.flatMap((name) => linesOf(join(path, name))),
    ...(earlier?.files ?? []).map(({ file }) => file),
  ]);
  const own = `.run-${process.pid}-${randomBytes(6).toString('hex')}.txt`;
  let begun = false;
  const note = (file: string) => {
    if (!begun) {
      mkdirSync(path, { recursive: true });
      appendFileSync(join(path, own), [...ours, ''].join('\n'), { flush: true });
      rmSync(join(path, MANIFEST), { force: true });
      begun = true;
    }
    ours.add(file);
    appendFileSync(join(path, own), `${file}\n`);
  };
  return {
    path,
    earlier,
    write: (file, content) => {
      if (holds(join(path, file), content)) return;
      note(file);
      writeWhole(join(path, file), content);
    },
    link: (from, file) => {
      if (linkWhole(from, join(path, file), () => note(file))) return;
      ours.add(file);
    },
    finish: (manifest) => {
      const text = jsonText(manifest);
      const kept = new Set(manifest.files.map(({ file }) => file));
      const stale = [...ours].filter((file) => !kept.has(file) && isInside(file));
      if (stale.length > 0) note(MANIFEST);
      clear(path, stale);
      if (!holds(join(path, MANIFEST), text)) writeWhole(join(path, MANIFEST), text);
      for (const name of [...journals, own]) rmSync(join(path, name), { force: true });
    },
  };
}

/** The manifest in a folder, where there is one that can be read. */
export function readManifest(path: string): Manifest | undefined {
  try {
    const value: unknown = JSON.parse(readFileSync(join(path, MANIFEST), 'utf8'));
    return isManifest(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

function isManifest(value: unknown): value is Manifest {
  if (typeof value !== 'object' || value === null) return false;
  const { leadwright, fleet, machines, parts, files }: Partial<Record<keyof Manifest, unknown>> = value;
  return leadwright === 1 && typeof fleet === 'string' && [machines, parts, files].every(Array.isArray);
}

function journalsIn(path: string): string[] {
  try {
    return readdirSync(path).filter((name) => JOURNAL.test(name));
  } catch {
    return [];
  }
}

/** Lines that were wholly written. */
function linesOf(path: string): string[] {
  try {
    return readFileSync(path, 'utf8')
      .split('\n')
      .slice(0, -1)
      .filter((line) => line !== '');
  } catch {
    return [];
  }
}

function holds(path: string, content: string | Uint8Array): boolean {
  try {
    return readFileSync(path).equals(typeof content === 'string' ? Buffer.from(content) : content);
  } catch {
    return false;
  }
}

/** Journals and manifests lie where anybody may write; only what a run of ours may have written is cleared. */
function isInside(file: string): boolean {
  return /^(?:(?:machines|parts)\/[\w-]+\/|plates\/|zips\/|)[\w-][\w.-]*$/.test(file) && file !== MANIFEST;
}

/** Removes files, and the folders that they leave empty. */
function clear(path: string, files: readonly string[]): void {
  for (const file of files) rmSync(join(path, file), { force: true });
  const folders = new Set(files.flatMap((file) => [dirname(file), dirname(dirname(file))]));
  for (const folder of [...folders].sort((a, b) => b.length - a.length)) {
    if (folder === '.') continue;
    try {
      rmdirSync(join(path, folder));
    } catch {
      // not empty, or gone
    }
  }
}
