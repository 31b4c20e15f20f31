import type { Assumptions } from '../../sheet/assumptions.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import type { Measured } from '../../units/measured.js';
import { resolveShaft, type Shaft } from './bore.js';
import type { ShaftSheet } from './shaft-section.js';

/** Crests are worn or rolled below the bar that they were cut from, mm. @source common-practice */
const WORN = 0.2;

/** An end is turned down: what is wider than its screw was read amiss. @throws InputError */
export function requireTurnedDown(end: Measured, screw: Screw | undefined, field: string): void {
  if (!screw || end.least <= screw.major.most + WORN) return;
  throw fault(
    field,
    `${plain(end.likely, 2)} mm`,
    `must be at most ${plain(screw.major.most + WORN, 2)} mm, of the screw that it is turned from`,
  );
}

/** The turned end of a screw as a shaft. @throws InputError */
export function turnedEnd(
  sheet: ShaftSheet,
  screw: Screw | undefined,
  calipers: number,
  assumptions: Assumptions,
): Shaft {
  const shaft = resolveShaft(sheet, 'turned_end', calipers, assumptions);
  requireTurnedDown(shaft.diameter, screw, 'turned_end.diameter');
  return shaft;
}
