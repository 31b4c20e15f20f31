import { type Check, hard, notJudged, valued } from '../../judge/check.js';
import { locatingPlaces } from '../../parts/common/locating.js';
import { exactly } from '../../units/measured.js';
import type { AxisDesign } from '../axis-design.js';

/**
 * Exactly one place carries the screw along its axis, whichever part it belongs to.
 *
 *     n = locating holders + thrust bearing at the motor, else rigid sleeve + disc that the screw stands on, motor below
 */
const locating: Check<AxisDesign> = {
  id: 'axis-locating',
  group: 'carried',
  question: 'carried',
  title: 'Places that carry the screw along',
  unit: '',
  source: 'common practice',
  limits: hard({ min: 1, max: 1 }),
  moves: 'thrust_bearing, mounting, coupling, collar, end holder',
  grave: true,
  run: ({ parts, thrustBearing, sheet: { mounting } }) => {
    const joined = parts.find(({ facts }) => facts.joint);
    const joint = joined?.facts.joint?.kind;
    if (joint === undefined) return notJudged('parts.coupling');
    if (joint === 'disc' && mounting === undefined) return notJudged('mounting');
    const holders = parts.filter(({ facts }) => facts.holder?.role === 'locating').map(({ role }) => role);
    const places = locatingPlaces({ holders, thrustBearing, joint, mounting });
    const cure =
      places.length > 1
        ? `; they fight each other when the screw warms: keep one${joint === 'disc' ? ` (parts.${joined?.role}.insert.pad: none, where the disc is the other)` : ''}`
        : places.length === 0
          ? '; nothing keeps it: a collar on a thrust bearing at the motor end (part: collar, thrust_bearing: yes), or an end holder with role: locating'
          : '';
    return valued(exactly(places.length), `${places.length === 0 ? 'none' : places.join(' and ')}${cure}`);
  },
};

/** Whether the screw is carried once along its axis. */
export const CARRIED_CHECKS: readonly Check<AxisDesign>[] = [locating];
