import { isMap, parseDocument } from 'yaml';
import { type Trial, trialSchema } from '../calibrate/trial.js';
import { playBeyondWanted } from '../calibrate/trial-words.js';
import { readProfile } from '../presets/profile.js';
import { validate } from '../sheet/validate.js';
import { fault } from '../units/faults.js';
import { plain } from '../units/format.js';
import { type TriedNuts, trialFields } from './trials.js';

/** A profile's text with what finished nuts have told put in. */
export interface RefinedProfile {
  readonly text: string;
  readonly revision: number;
}

/** An offset of the bore by less than this is left as coupons have it [mm]. */
const SLIGHT = 0.06;

/**
 * The trials that a profile rests on, the oldest first.
 * @throws InputError a faulty profile
 */
export function trialsOf(id: string, text: string): readonly Trial[] {
  const { data } = readProfile(id, { [`profiles/${id}.yaml`]: text });
  return (data.trials ?? []).map((trial) => validate(trialSchema, trial));
}

/**
 * Trials of a profile, and new ones.
 * @throws InputError a trial that is in the profile already
 */
export function joinTrials(old: readonly Trial[], more: readonly Trial[]): readonly Trial[] {
  const known = new Set(old.map((trial) => JSON.stringify(trialFields(trial))));
  for (const trial of more) {
    if (known.has(JSON.stringify(trialFields(trial))))
      throw fault('nut', trial.nut, 'is in the profile already as it was seen here; give new trials alone');
  }
  return [...old, ...more];
}

/**
 * Puts what trials told into a profile: axial shrink with its uncertainty, the hole offset where bores were read, the
 * flank gap, and the trials themselves. Everything else stays as it is; the provenance says where the new figures come
 * from.
 *
 * @param id       name of the profile
 * @param text     the profile as it stands
 * @param tried    what all trials came to
 * @param revision of the new text
 * @returns the new text, read back and found whole
 * @throws InputError a faulty profile
 */
export function refineByTrials(
  id: string,
  text: string,
  { trials, estimate }: TriedNuts,
  revision?: number,
): RefinedProfile {
  const { data } = readProfile(id, { [`profiles/${id}.yaml`]: text });
  const document = parseDocument(text);
  const { axial, gap } = estimate;
  const next = revision ?? data.revision + 1;
  document.setIn(['revision'], next);
  document.setIn(
    ['material', 'shrink', 'axial'],
    `${plain(100 * axial.value, 3)} ± ${plain(Math.max(0.05, 200 * axial.sigma), 2)} %`,
  );
  const offset = data.printer?.hole_offset;
  const told = typeof offset === 'object' ? boreOffset(trials, offset) : undefined;
  if (told !== undefined && isMap(document.getIn(['printer', 'hole_offset'], true)))
    document.setIn(['printer', 'hole_offset', 'at_zero'], `${plain(told, 4)} mm`);
  const last = trials.at(-1)!;
  document.setIn(['fit'], {
    diametral: `${plain(last.fit.diametral, 3)} mm`,
    axial: `${plain(last.fit.axial - playBeyondWanted(trials, estimate), 3)} mm`,
  });
  document.setIn(['trials'], trials.map(trialFields));
  const source = `finished nuts ${trials.map(({ nut }) => nut).join(', ')}`;
  for (const path of ['material.shrink.axial', 'fit', 'trials'])
    document.setIn(['provenance', path], {
      type: 'measured',
      source,
      where: 'trials, by what was seen on them',
      tolerance: `as stated, play ± ${plain(2 * gap.sigma, 3)} mm, 19 times in 20`,
    });
  const refined = document.toString({ lineWidth: 0 });
  readProfile(id, { [`profiles/${id}.yaml`]: refined });
  return { text: refined, revision: next };
}

/** Offset at ⌀ 0 that goes with the bores of finished nuts, where it is another than the profile's. */
function boreOffset(
  trials: readonly Trial[],
  line: { readonly at_zero: number; readonly per_mm: number },
): number | undefined {
  const offs = trials.flatMap(({ bore, wanted, applied }) =>
    bore ? [applied.hole_offset + wanted.bore - bore.value - (line.at_zero + line.per_mm * wanted.bore)] : [],
  );
  const mean = offs.reduce((sum, off) => sum + off, 0) / offs.length;
  return Math.abs(mean) > SLIGHT ? line.at_zero + mean : undefined;
}
