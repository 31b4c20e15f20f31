import { readdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { Trial } from '../calibrate/trial.js';
import type { Found } from '../calibrate/trial-estimate.js';
import { joinTrials, refineByTrials, trialsOf } from '../pipeline/refine-by-trials.js';
import { isTrial, readTrial, type TriedNuts, tryNuts } from '../pipeline/trials.js';
import { PROFILE_NAME } from '../sheet/sections/profile.js';
import { fault, InputError } from '../units/faults.js';
import { FileMistakes } from './calibrate-files.js';
import { type InputPlace, readInput } from './read-input.js';
import { withFolders } from './writer/basics.js';
import { putFile } from './writer/files.js';
import { settleAll } from './writer/settle.js';
import { withLock } from './writer/with-lock.js';

/** Files of results, parted into coupons and trials; stdin is a coupon's. */
export interface PartedFiles {
  readonly coupons: readonly string[];
  readonly trials: readonly Trial[];
}

/**
 * Reads the trials among results files.
 * @throws InputError mistakes of a trial, with its file
 */
export async function partTrials(files: readonly string[], place: InputPlace): Promise<PartedFiles> {
  const coupons: string[] = [];
  const trials: Trial[] = [];
  for (const file of files) {
    // what cannot be read is told where coupons are read
    const text = file === '-' ? '' : await readInput(file, place).catch(() => '');
    if (isTrial(text)) trials.push(inFile(file, () => readTrial(text)));
    else coupons.push(file);
  }
  return { coupons, trials };
}

/** How trials become part of a profile. */
export interface TrialOptions {
  readonly to: string;
  readonly name?: string;
  /** true: the profile that is there is refined */
  readonly refines: boolean;
  readonly writes: boolean;
  /** axial shrink by coupons that were read beside */
  readonly axial?: Found;
}

/** What trials come to, and the profile that took it in. */
export interface TriedFiles extends TriedNuts {
  readonly written?: { readonly path: string; readonly id: string; readonly revision: number };
  /** a profile that could take it in */
  readonly could?: string;
}

/**
 * Works out what trials say, and refines the profile they were made with where that is asked for.
 * @throws InputError trials that do not belong together, no profile to refine
 */
export async function tryFiles(
  trials: readonly Trial[],
  place: InputPlace,
  { to, name, refines, writes, axial }: TrialOptions,
): Promise<TriedFiles> {
  const id = name ?? trials.at(-1)?.profile;
  const folder = resolve(place.cwd, to);
  const isThere = id !== undefined && (await readdir(folder).catch((): string[] => [])).includes(`${id}.yaml`);
  if (!refines || !writes) return { ...tryNuts(trials, axial), ...(isThere ? { could: id } : {}) };
  if (id === undefined || !PROFILE_NAME.test(id)) throw fault('--name', id ?? '', 'must be the profile to refine');
  if (!isThere) throw fault('--refine', id, `there is no ${join(to, `${id}.yaml`)} to refine`);
  const path = join(folder, `${id}.yaml`);
  settleAll(folder);
  return await withFolders(folder, () =>
    withLock(path, async () => {
      const text = await readInput(path, place);
      return inFile(path, () => {
        const tried = tryNuts(joinTrials(trialsOf(id, text), trials), axial);
        const { text: refined, revision } = refineByTrials(id, text, tried);
        putFile(path, refined);
        return { ...tried, written: { path: join(to, `${id}.yaml`), id, revision } };
      });
    }),
  );
}

function inFile<T>(file: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof InputError) throw new FileMistakes(file, error.faults);
    throw error;
  }
}
