import * as z from 'zod';
import { map, orShort, quantity, word } from '../../sheet/fields.js';
import { THRUST_DESIGNATIONS, type ThrustBearing, thrustBearing } from '../../standards/bearings/thrust-bearing.js';

/** A thrust bearing in a sheet: by its designation, or all three sizes. */
export const thrustSection = orShort(
  map({
    designation: z
      .preprocess((input) => (typeof input === 'number' ? String(input) : input), word(THRUST_DESIGNATIONS))
      .optional(),
    bore: quantity('length', { least: 2, most: 60 }, 'of the washer that sits on the shaft').optional(),
    outside: quantity('length', { least: 4, most: 100 }, 'of the washer that lies in the plate').optional(),
    height: quantity('length', { least: 1, most: 40 }, 'of balls or needles and both washers together').optional(),
  }),
  (short) => ({ designation: short }),
  'quantity',
);
export type ThrustSection = z.output<typeof thrustSection>;

/** Refuses sizes beside a designation, some sizes alone, and a washer that is no ring. */
export function refuseBearing(
  bearing: ThrustSection | undefined,
  refuse: (path: string[], message: string) => void,
): void {
  if (!bearing) return;
  const sizes = (['bore', 'outside', 'height'] as const).filter((key) => bearing[key] !== undefined);
  if (bearing.designation !== undefined)
    for (const key of sizes) refuse(['bearing', key], 'is told by the designation; give one or the other');
  else if (sizes.length < 3)
    for (const key of ['bore', 'outside', 'height'] as const)
      if (bearing[key] === undefined) refuse(['bearing', key], 'is missing; give all three sizes, or a designation');
  if (bearing.bore !== undefined && bearing.outside !== undefined && bearing.outside < 1.3 * bearing.bore)
    refuse(['bearing', 'outside'], 'must be at least 1.3 times the bore');
}

/** Bore, outside and height of the bearing that a sheet tells. */
export function thrustSizes({ designation, bore, outside, height }: ThrustSection): ThrustBearing {
  return designation ? thrustBearing(designation) : { bore: bore!, outside: outside!, height: height! };
}
