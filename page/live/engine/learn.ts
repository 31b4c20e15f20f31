import { calibrationLines } from '../../../src/output/terminal/calibration-lines.js';
import { trialLines } from '../../../src/output/terminal/trial-lines.js';
import {
  calibrateRuns,
  readOldProfile,
  readResults,
  refineRuns,
  writeProfile,
} from '../../../src/pipeline/calibrate.js';
import { joinTrials, refineByTrials, trialsOf } from '../../../src/pipeline/refine-by-trials.js';
import { isTrial, readTrial, tryNuts } from '../../../src/pipeline/trials.js';
import { fault } from '../../../src/units/faults.js';

/** What a filled form came to. */
export interface Learned {
  /** in words, for people */
  readonly lines: readonly string[];
  /** the profile that holds it; none of a nut that was made without one */
  readonly profile?: { readonly id: string; readonly revision: number; readonly text: string };
}

/** Profiles at hand, by name. */
export type Profiles = Readonly<Record<string, string>>;

/**
 * What a printer does, by the form of a coupon or of a finished nut. Readings are added to those of a profile of the same
 * name.
 *
 * @param form as it was filled in
 * @param profiles texts by name
 * @throws InputError mistakes of the form, readings that are in the profile already or tell of another printer
 */
export function learn(form: string, profiles: Profiles): Learned {
  return isTrial(form) ? ofTrial(form, profiles) : ofCoupon(form, profiles);
}

function ofCoupon(form: string, profiles: Profiles): Learned {
  const run = readResults(form);
  const id = run.profile;
  if (id === undefined) throw fault('profile', '', 'is missing: a name for what was learned');
  const old = Object.hasOwn(profiles, id) ? readOldProfile(id, profiles[id]!) : undefined;
  const calibrated = old ? refineRuns(old, [run]) : calibrateRuns([run]);
  const revision = (old?.revision ?? 0) + 1;
  const text = writeProfile(id, revision, calibrated, old?.trials ?? []);
  return { lines: calibrationLines(calibrated.calibration, calibrated.believed), profile: { id, revision, text } };
}

function ofTrial(form: string, profiles: Profiles): Learned {
  const trial = readTrial(form);
  const id = trial.profile;
  if (id === undefined || !Object.hasOwn(profiles, id)) return { lines: trialLines(tryNuts([trial])) };
  const text = profiles[id]!;
  const tried = tryNuts(joinTrials(trialsOf(id, text), [trial]));
  return { lines: trialLines(tried), profile: { id, ...refineByTrials(id, text, tried) } };
}
