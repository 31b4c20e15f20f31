import { type Bounds, notJudged, type Outcome, valued } from '../../judge/check.js';
import { type AskedStress, allowableStress, standingDuration } from '../../mechanics/strength/allowable.js';
import { ROOM } from '../../mechanics/strength/plastic.js';
import type { Material } from '../../presets/material.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import type { DutySheet } from '../../sheet/sections/duty.js';
import { plain, worked } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import { usedShare } from './load-cases.js';
import { stallForce } from './stall-force.js';

/** A metal nut that takes over falls onto its seat: twice the load for a moment. @source textbook-design, sudden load */
export const SUDDEN = 2;

/** What bears the load of a nut. */
interface Bearing {
  readonly duty: DutySheet;
  readonly material: Material;
  readonly screw: Screw;
}

/** Stresses that a force on the nut sets up somewhere in it. */
export type StressesUnder = (
  force: number,
) => readonly { readonly kind: AskedStress['kind']; readonly stress: number }[];

/**
 * The worst share of what the plastic bears: under the load for as long as it stands, and for a moment at the motor's
 * stall force or a sudden load. Without a temperature only a fail is told.
 *
 * @param pass    what is allowed of it
 * @param sudden  how many times the load comes down at once, 1 where it does not
 */
export function borneShare(
  design: Bearing,
  { max = 1 }: Bounds,
  { stresses, sudden, where, cure }: { stresses: StressesUnder; sudden: number; where: string; cure: string },
): Outcome {
  const { duty, material } = design;
  if (duty.load === undefined) return notJudged('duty.load');
  const temperature = duty.temperature ?? ROOM;
  const cases = [
    [duty.load, standingDuration(duty.axis)],
    [Math.max(sudden * duty.load, stallForce(design) ?? 0), 'moment'],
  ] as const;
  const rows = cases.flatMap(([force, duration]) =>
    stresses(force).map(({ kind, stress }) => {
      const most = allowableStress(material, { kind, duration, temperature });
      return { force, kind, stress, most, share: usedShare(stress, most) };
    }),
  );
  const worst = rows.reduce((a, b) => (b.share > a.share ? b : a));
  if (duty.temperature === undefined && worst.share <= max) return notJudged('duty.temperature');
  return valued(
    exactly(worst.share),
    `${worked(worst.stress, 'MPa')} MPa of ${worst.kind} ${where} under ${plain(worst.force, 0)} N, of ${worked(worst.most, 'MPa')} MPa at ${plain(temperature, 0)} °C${worst.share > max ? `; ${cure}` : ''}`,
  );
}
