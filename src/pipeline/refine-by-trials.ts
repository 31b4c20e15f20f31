import { isMap, parseDocument } from 'yaml';
import { readProfile } from '../presets/profile.js';
import { plain } from '../units/format.js';
import type { TriedNuts } from './trials.js';

/** A profile's text with what finished nuts have told put in, and its new revision. */
export interface RefinedProfile {
  readonly text: string;
  readonly revision: number;
}

/**
 * Puts what trials told into a profile: axial shrink with its uncertainty, the hole offset where the bore was read, and
 * the flank gap. Everything else stays as it is; the provenance says where the new figures come from.
 *
 * @param id    name of the profile
 * @param text  the profile as it stands
 * @param tried what the trials came to
 * @returns the new text, read back and found whole
 * @throws InputError a faulty profile
 */
export function refineByTrials(id: string, text: string, { trials, estimate, findings }: TriedNuts): RefinedProfile {
  const { data } = readProfile(id, { [`profiles/${id}.yaml`]: text });
  const document = parseDocument(text);
  const revision = data.revision + 1;
  const { axial, gap } = estimate;
  document.setIn(['revision'], revision);
  document.setIn(
    ['material', 'shrink', 'axial'],
    `${plain(100 * axial.value, 3)} ± ${plain(Math.max(0.05, 200 * axial.sigma), 2)} %`,
  );
  const bore = findings.find(({ change }) => change?.field === 'printer.hole_offset')?.change;
  const offset = data.printer?.hole_offset;
  if (bore && typeof offset === 'object' && isMap(document.getIn(['printer', 'hole_offset'], true)))
    document.setIn(['printer', 'hole_offset', 'at_zero'], `${plain(offset.at_zero + bore.to - bore.from, 4)} mm`);
  const last = trials.at(-1)!;
  document.setIn(['fit'], {
    diametral: `${plain(last.fit.diametral, 3)} mm`,
    axial: `${plain(last.fit.axial - gap.value, 3)} mm`,
  });
  for (const path of ['material.shrink.axial', 'fit'])
    document.setIn(['provenance', path], {
      type: 'measured',
      source: `finished nuts ${trials.map(({ nut }) => nut).join(', ')}`,
      where: 'trials, by what was seen on them',
      tolerance: `as stated, play ± ${plain(2 * gap.sigma, 3)} mm, 19 times in 20`,
    });
  const refined = document.toString({ lineWidth: 0 });
  readProfile(id, { [`profiles/${id}.yaml`]: refined });
  return { text: refined, revision };
}
