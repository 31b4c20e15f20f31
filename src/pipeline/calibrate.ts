import { calibrate, requireFigures } from '../calibrate/calibrate.js';
import type { Believed, Calibration } from '../calibrate/calibration.js';
import { observe } from '../calibrate/observations.js';
import { requireAlike, requireSameRun } from '../calibrate/one-printer.js';
import { profileText } from '../calibrate/profile-text.js';
import { type Results, resultsSchema } from '../calibrate/results.js';
import type { Trial } from '../calibrate/trial.js';
import { readProfile } from '../presets/profile.js';
import { resolveMaterial } from '../presets/resolve-material.js';
import { resolvePrinter } from '../presets/resolve-printer.js';
import { SHIPPED } from '../presets/shipped.js';
import type { PresetTexts } from '../presets/texts.js';
import { Assumptions } from '../sheet/assumptions.js';
import { readYaml } from '../sheet/read-yaml.js';
import { validate } from '../sheet/validate.js';
import { fault } from '../units/faults.js';
import { halfWidth } from '../units/measured.js';
import { locating } from './locate-faults.js';
import { refineByTrials, trialsOf } from './refine-by-trials.js';
import { tryNuts } from './trials.js';

/** A calibration with what was believed before. */
export interface Calibrated {
  readonly calibration: Calibration;
  readonly believed: Believed;
}

/**
 * Reads a results file.
 * @throws InputError every mistake at once, readings that cannot be of their feature included, each located
 */
export function readResults(text: string): Results {
  const { value, locate } = readYaml(text);
  const results = validate(resultsSchema, value, locate);
  locating(locate, () => observe(results));
  return results;
}

/**
 * Works out what a printer does from one or more results.
 * @throws InputError readings that are of two printers, or that tell nothing yet; an unknown material
 */
export function calibrateRuns(runs: readonly Results[], presets: PresetTexts = SHIPPED): Calibrated {
  const calibrated = fromRuns(runs, presets);
  requireFigures(calibrated.calibration);
  return calibrated;
}

/** The same, even where the readings tell nothing yet. */
function fromRuns(runs: readonly Results[], presets: PresetTexts): Calibrated {
  const [first] = runs;
  if (!first) throw fault('', '', 'at least one results file is needed');
  const assumptions = new Assumptions();
  const believed = {
    material: resolveMaterial({ preset: first.material }, presets, assumptions),
    printer: resolvePrinter(first.printer, presets, assumptions),
  };
  return { calibration: calibrate(runs, believed), believed };
}

/** An old profile, to be refined. */
export interface OldProfile {
  readonly revision: number;
  readonly runs: readonly Results[];
  /** finished nuts that told of it, the oldest first */
  readonly trials: readonly Trial[];
}

/**
 * Reads an old profile with all readings in it.
 * @throws InputError a faulty profile
 */
export function readOldProfile(id: string, text: string): OldProfile {
  const { data } = readProfile(id, { [`profiles/${id}.yaml`]: text });
  return {
    revision: data.revision,
    runs: data.runs.map((run) => validate(resultsSchema, run)),
    trials: trialsOf(id, text),
  };
}

/**
 * New readings together with those of an old profile.
 * @throws InputError readings that are in the profile already, or that tell of another printer
 */
export function refineRuns(
  old: Pick<OldProfile, 'runs'>,
  runs: readonly Results[],
  presets: PresetTexts = SHIPPED,
): Calibrated {
  const known = new Set(old.runs.map(fingerprint));
  if (runs.some((run) => known.has(fingerprint(run))))
    throw fault('readings', '', 'are in the profile already; read another print, or the same one anew');
  requireSameRun([...old.runs, ...runs]);
  requireAlike(fromRuns(old.runs, presets).calibration, fromRuns(runs, presets).calibration);
  return calibrateRuns([...old.runs, ...runs], presets);
}

function fingerprint({ coupon, readings, tried }: Results): string {
  return JSON.stringify([coupon, readings ?? {}, tried ?? {}]);
}

/** The text of a profile; what finished nuts have told stays told, on what coupons say now. */
export function writeProfile(
  id: string,
  revision: number,
  { calibration, believed }: Calibrated,
  trials: readonly Trial[] = [],
): string {
  const text = profileText({ id, revision }, calibration, believed);
  if (trials.length === 0) return text;
  const { axial } = calibration;
  const tried = tryNuts(trials, axial && { value: axial.likely, sigma: halfWidth(axial) / 2 });
  return refineByTrials(id, text, tried, revision).text;
}
