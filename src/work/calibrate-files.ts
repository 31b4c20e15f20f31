import { readdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { Results } from '../calibrate/results.js';
import {
  type Calibrated,
  calibrateRuns,
  readOldProfile,
  readResults,
  refineRuns,
  writeProfile,
} from '../pipeline/calibrate.js';
import { PROFILE_NAME } from '../sheet/sections/profile.js';
import { type Fault, fault, InputError } from '../units/faults.js';
import { diskReason } from './disk-reason.js';
import { type InputPlace, readInput } from './read-input.js';
import { withFolders } from './writer/basics.js';
import { putFile } from './writer/files.js';
import { settleAll } from './writer/settle.js';
import { withLock } from './writer/with-lock.js';

/** What is done with a profile that is there already. */
export type WhenThere = 'keep' | 'refine' | 'replace';

/** How results become a profile. */
export interface CalibrateOptions {
  /** folder of the profiles */
  readonly to: string;
  /** name of the profile, where not that of the results */
  readonly name?: string;
  readonly whenThere: WhenThere;
  /** false: nothing is written */
  readonly writes: boolean;
}

/** A profile that was worked out, and where it lies. */
export interface CalibratedFiles extends Calibrated {
  readonly id: string;
  readonly revision: number;
  readonly path: string;
}

/**
 * Reads results, works the printer out and writes its profile in one step: a run that is killed leaves the old one.
 * @throws InputError mistakes of the results, each with its file; a profile that is there and may not be touched
 */
export async function calibrateFiles(
  files: readonly string[],
  place: InputPlace,
  options: CalibrateOptions,
): Promise<CalibratedFiles> {
  const runs: Results[] = [];
  for (const file of files) runs.push(await ofFile(file, async () => readResults(await readInput(file, place))));
  const id = options.name ?? runs[0]?.profile;
  if (id === undefined) throw fault('--name', '', 'is missing: the results name no profile either');
  if (!PROFILE_NAME.test(id)) throw fault('--name', id, 'must be small letters, digits, points and hyphens');
  const folder = resolve(place.cwd, options.to);
  const path = join(options.to, `${id}.yaml`);
  const decide = async () => {
    const old = (await readdir(folder).catch((): string[] => [])).includes(`${id}.yaml`)
      ? await readInput(join(folder, `${id}.yaml`), place)
      : undefined;
    return ofFile(files.length === 1 ? files[0]! : path, async () =>
      // nothing is touched where nothing is written
      decided(id, path, {
        old,
        runs,
        whenThere: options.writes || options.whenThere === 'refine' ? options.whenThere : 'replace',
      }),
    );
  };
  const { calibrated, revision } = options.writes ? await written(folder, id, decide) : await decide();
  return { ...calibrated, id, revision, path };
}

type Decided = ReturnType<typeof decided>;

/** Decides and writes while no other run may touch the profile: of two runs that refine it, each adds to the other. */
async function written(folder: string, id: string, decide: () => Promise<Decided>): Promise<Decided> {
  const path = join(folder, `${id}.yaml`);
  settleAll(folder);
  try {
    return await withFolders(folder, () =>
      withLock(path, async () => {
        const made = await decide();
        putFile(path, writeProfile(id, made.revision, made.calibrated, made.trials));
        return made;
      }),
    );
  } catch (error) {
    if (error instanceof FileMistakes) throw error;
    throw fault(folder, '', diskReason(error));
  }
}

interface Given {
  readonly old: string | undefined;
  readonly runs: readonly Results[];
  readonly whenThere: WhenThere;
}

function decided(id: string, path: string, { old, runs, whenThere }: Given) {
  if (old === undefined) {
    if (whenThere === 'refine') throw fault('--refine', id, `there is no ${path} to refine`);
    return { calibrated: calibrateRuns(runs), revision: 1, trials: [] };
  }
  if (whenThere === 'refine') {
    const before = readOldProfile(id, old);
    return { calibrated: refineRuns(before, runs), revision: before.revision + 1, trials: before.trials };
  }
  if (whenThere === 'keep') {
    const how = '--refine adds these readings to its own, --replace writes it anew, --name gives this one another name';
    throw new FileMistakes(path, [{ path: '', value: '', allowed: `is already there: ${how}` }]);
  }
  return { calibrated: calibrateRuns(runs), revision: revisionOf(id, old) + 1, trials: [] };
}

/** What is replaced need not be whole. */
function revisionOf(id: string, text: string): number {
  try {
    return readOldProfile(id, text).revision;
  } catch (error) {
    if (error instanceof InputError) return 0;
    throw error;
  }
}

/** Mistakes of a file name it. */
async function ofFile<T>(file: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof InputError && !(error instanceof FileMistakes)) throw new FileMistakes(file, error.faults);
    throw error;
  }
}

/** Mistakes with the file they are in. */
export class FileMistakes extends InputError {
  readonly file: string;

  constructor(file: string, faults: readonly Fault[]) {
    super(faults);
    this.file = file;
  }
}
