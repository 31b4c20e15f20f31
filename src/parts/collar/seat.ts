import { keeps } from '../../judge/judge.js';
import type { ThrustBearing, ThrustDesignation } from '../../standards/bearings/thrust-bearing.js';
import type { Measured } from '../../units/measured.js';
import type { Shaft } from '../common/bore.js';
import { thrustSizes } from '../common/thrust-section.js';
import type { CollarPlan } from './plan.js';
import type { CollarSheet } from './sheet.js';

/** A washer that has more play than this on its shaft is centred by a lip of the collar, mm on the diameter. @source common-practice */
const CENTRED_BY_SHAFT = 0.4;

/** A lip takes a washer with this on the diameter; washers on shafts are smaller than the bearing by 0.2, mm. @source common-practice */
const LIP_ROOM = 0.05;
const WASHER_SMALLER = 0.2;

/** A lip reaches over so much of the bearing's height: less than its one washer, so that the other turns free. @source derived */
const LIP_SHARE = 0.25;

/** A thrust bearing, and what centres its turning washer. */
export interface CollarBearing extends ThrustBearing {
  readonly designation?: ThrustDesignation;
  readonly centredBy: 'shaft' | 'lip';
}

/** The bearing of a sheet on its shaft. */
export function bearingOf({ bearing }: CollarSheet, shaft: Shaft): CollarBearing | undefined {
  if (!bearing) return undefined;
  const { designation } = bearing;
  const sizes = thrustSizes(bearing);
  const play = sizes.bore - shaft.diameter.likely;
  return {
    ...sizes,
    ...(designation ? { designation } : {}),
    centredBy: keeps(play, { max: CENTRED_BY_SHAFT }) ? 'shaft' : 'lip',
  };
}

/** The lip for a bearing; none where the shaft centres it. */
export function lipOf(bearing: CollarBearing | undefined): CollarPlan['lip'] {
  if (bearing?.centredBy !== 'lip') return undefined;
  return { diameter: bearing.outside + LIP_ROOM, depth: Math.ceil(20 * LIP_SHARE * bearing.height) / 20 };
}

/** How far the turning washer may stand off the axis, before bore and print have their say [mm]. */
export function washerOffset({ bore, centredBy }: CollarBearing, shaft: Shaft): Measured {
  if (centredBy === 'lip') {
    const off = (LIP_ROOM + WASHER_SMALLER) / 2;
    return { least: off, likely: off, most: off };
  }
  const { least, likely, most } = shaft.diameter;
  const off = (diameter: number) => Math.max(0, bore - diameter) / 2;
  return { least: off(most), likely: off(likely), most: off(Math.min(least, shaft.thinnest ?? least)) };
}

/** Face of the collar under the turning washer, the slit left out, and how much of the washer that is. */
export function backing({ outside, chamfer, slit, halves, bore, thread, lip }: CollarPlan, bearing: ThrustBearing) {
  const mouth = bore.diameter / 2 + (thread ? 0 : chamfer);
  const inner = Math.max(bearing.bore / 2, mouth);
  const outer = Math.min(bearing.outside / 2, lip ? lip.diameter / 2 : outside / 2 - chamfer);
  const ring = Math.max(0, Math.PI * (outer ** 2 - inner ** 2) - (halves ? 2 : 1) * slit * (outer - inner));
  return { area: ring, share: ring / (Math.PI * ((bearing.outside / 2) ** 2 - (bearing.bore / 2) ** 2)) };
}
