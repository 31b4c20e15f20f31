import type { ProfileUse } from '../../presets/profile.js';
import { howMany } from '../../units/format.js';

/** Where the figures of a part come from, so that parts made before and after a calibration can be told apart. */
export function figuresWords(profile: ProfileUse | undefined): string {
  if (!profile) return 'figures of the printer as presets and sheet have them: no coupon of it was read for this part';
  const { name, revision, readings, assumed } = profile;
  const rest = assumed.length === 0 ? '' : `, ${assumed.join(' and ')} aside`;
  return `figures of the printer are measured${rest}: profile ${name}, revision ${revision}, by ${howMany(readings, 'reading')}`;
}

/** What to keep to when a part is printed by its profile. */
export function profileCautions({ slicer_compensates, name }: ProfileUse): string[] {
  if (slicer_compensates === 'no')
    return [`Profile ${name} was read with a slicer that corrects nothing: leave its shrink and hole corrections off.`];
  const what = { shrink: 'scaled for shrink', holes: 'enlarged holes', both: 'scaled for shrink and enlarged holes' };
  return [
    `Profile ${name} was read with a slicer that ${what[slicer_compensates]}: leave that on as it was; this file corrects only what was left.`,
  ];
}
