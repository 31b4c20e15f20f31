import type { Assumptions } from '../../sheet/assumptions.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { motorFrame } from '../../standards/shafts/motor-frame.js';
import { plusMinus } from '../../units/measured.js';
import { resolveShaft, roundShaft, type Shaft } from '../common/bore.js';
import { crestShaft } from '../common/crest-shaft.js';
import type { CouplingSheet } from './sheet.js';

/** The motor's shaft: measured, or the customary one of its frame; undefined where its hub is not made. */
export function motorShaft({ motor }: CouplingSheet, calipers: number, assumptions: Assumptions): Shaft | undefined {
  if (motor.shaft) return resolveShaft(motor.shaft, 'motor.shaft', calipers, assumptions);
  if (motor.frame === undefined) return undefined;
  const { usualShafts, flat, frame } = motorFrame(motor.frame);
  const diameter = usualShafts[0]!;
  const words = flat === undefined ? 'round' : `flat at ${flat} mm`;
  assumptions.note('motor.shaft', `${diameter} mm, ${words}`, `customary for frame ${frame}; measure it`);
  const size = plusMinus(diameter, calipers);
  if (flat === undefined) return roundShaft(size);
  return { form: 'd', diameter: size, across: plusMinus(flat, calipers) };
}

/** The driven shaft: a screw over its crests or by its turned end, or a shaft of any form; undefined where its hub is not made. */
export function screwShaft(
  sheet: CouplingSheet,
  screw: Screw | undefined,
  calipers: number,
  assumptions: Assumptions,
): Shaft | undefined {
  if (sheet.shaft) return resolveShaft(sheet.shaft, 'shaft', calipers, assumptions);
  if (sheet.turned_end) return resolveShaft(sheet.turned_end, 'turned_end', calipers, assumptions);
  return screw && crestShaft(screw, sheet.screw?.major !== undefined);
}
