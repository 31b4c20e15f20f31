import type { Assumptions } from '../../sheet/assumptions.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { resolveShaft, type Shaft } from '../common/bore.js';
import { crestShaft } from '../common/crest-shaft.js';
import { turnedEnd } from '../common/turned-end.js';
import type { CouplingSheet } from './sheet.js';

/** The motor's shaft; undefined where its hub is not made. */
export function motorShaft({ motor }: CouplingSheet, calipers: number, assumptions: Assumptions): Shaft | undefined {
  return motor.shaft && resolveShaft(motor.shaft, 'motor.shaft', calipers, assumptions);
}

/** The driven shaft: a screw over its crests or by its turned end, or a shaft of any form; undefined where its hub is not made. */
export function screwShaft(
  sheet: CouplingSheet,
  screw: Screw | undefined,
  calipers: number,
  assumptions: Assumptions,
): Shaft | undefined {
  if (sheet.shaft) return resolveShaft(sheet.shaft, 'shaft', calipers, assumptions);
  if (sheet.turned_end) return turnedEnd(sheet.turned_end, screw, calipers, assumptions);
  return screw && crestShaft(screw, sheet.screw?.major !== undefined);
}
