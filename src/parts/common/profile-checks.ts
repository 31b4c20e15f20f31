import { type Check, told } from '../../judge/check.js';
import type { Material } from '../../presets/material.js';
import type { ProfileUse } from '../../presets/profile.js';
import { howMany, plain } from '../../units/format.js';

/** A part that was made with a profile. */
export interface Profiled {
  readonly profile?: ProfileUse;
  readonly material?: Material;
}

/** Growth below this share is not worth a word. */
const LITTLE_GROWTH = 0.001;

/** A polyamide that was read dry and is used wet has other sizes. */
const state: Check<Profiled> = {
  id: 'profile-state',
  group: 'print',
  question: 'prints',
  title: 'Moisture of coupon and part',
  unit: '',
  source: 'common practice',
  moves: 'profile.state, a coupon read in the other state',
  run: ({ profile, material }) => {
    if (!profile) return undefined;
    const { state: read, state_in_use: used } = profile;
    const growth = material?.moistureGrowth ?? 0;
    if (read === used) return told('pass', `read and used ${inWords(read)}`);
    if (growth < LITTLE_GROWTH)
      return told('pass', `read ${inWords(read)}, used ${inWords(used)}; it hardly takes up moisture`);
    return told(
      'caution',
      `read ${inWords(read)}, used ${inWords(used)}: from dry to room air ${material?.name ?? 'it'} grows by ${plain(100 * growth, 2)} %, soaked by more; read a coupon in the state of use`,
    );
  },
};

/** Shrink and holes are known better where a coupon was read. */
const measured: Check<Profiled> = {
  id: 'profile-measured',
  group: 'print',
  question: 'prints',
  title: 'Origin of shrink and offsets',
  unit: '',
  source: 'the profile',
  moves: 'readings of a coupon: leadwright calibrate RESULTS --refine',
  run: ({ profile }) => {
    if (!profile) return undefined;
    const { assumed, readings, revision, name } = profile;
    if (assumed.length === 0)
      return told('pass', `all by ${howMany(readings, 'reading')}, ${name} revision ${revision}`);
    return told(
      'caution',
      `still as the preset has it: ${assumed.join(', ')}; ${name} revision ${revision} does not know better`,
    );
  },
};

/** Checks that go with a profile, whatever the part. */
export const PROFILE_CHECKS: readonly Check<Profiled>[] = [state, measured];

function inWords(one: ProfileUse['state']): string {
  return { dry: 'dry', room: 'in room air', wet: 'wet' }[one];
}
