import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { readManifestText, type StoredManifest } from '../../fleet/stored-manifest.js';
import { fault } from '../../units/faults.js';
import { codeOf, disk } from '../writer/disk.js';

export const MANIFEST = 'manifest.json';
/** Temporary files and journals that runs of an earlier version left. */
const OLD_TRACES = /^\.(?:run-.*\.txt|new-\d+-[0-9a-f]+)$/;
const LONGEST_MANIFEST = 2_000_000_000;

/**
 * The manifest in a folder, where there is one.
 * @param withRows whether its rows are wanted
 * @throws InputError it is damaged
 */
export function readManifest(path: string, withRows: boolean): StoredManifest | undefined {
  const file = join(path, MANIFEST);
  let text: string;
  try {
    const about = statSync(file);
    if (!about.isFile() || about.size > LONGEST_MANIFEST) throw fault(file, '', 'is no manifest of a fleet');
    text = readFileSync(file, 'utf8');
  } catch (error) {
    if (['ENOENT', 'ENOTDIR'].includes(codeOf(error))) return undefined;
    throw error;
  }
  return readManifestText(text, file, withRows);
}

/** Files of ours in an output folder: what its manifest lists, as far as a run of ours can have written it. */
export function earlierFiles(path: string, earlier: StoredManifest | undefined): string[] {
  const traces = disk.about(path) === undefined ? [] : disk.names(path).map(({ name }) => name);
  return [
    ...(earlier?.files ?? []).map(({ file }) => file).filter(isInside),
    MANIFEST,
    ...traces.filter((name) => OLD_TRACES.test(name)),
  ];
}

/** What a manifest says of the machines whose files are all still there. */
export function withWholeMachines(path: string, earlier: StoredManifest): StoredManifest {
  const isThere = (file: string) => disk.about(join(path, file))?.isFile() === true;
  const torn = new Set(
    earlier.parts.filter(({ file }) => file !== null && !isThere(file)).map(({ machine }) => machine),
  );
  if (torn.size === 0) return earlier;
  return {
    ...earlier,
    machines: earlier.machines.filter(({ machine }) => !torn.has(machine)),
    parts: earlier.parts.filter(({ machine }) => !torn.has(machine)),
  };
}

/** Manifests lie where anybody may write; only what a run of ours may have written is cleared. */
function isInside(file: string): boolean {
  return /^(?:(?:machines|parts)\/[\w-]+\/|plates\/|zips\/|)[\w-][\w.-]*$/.test(file) && file !== MANIFEST;
}
