import { fault } from '../units/faults.js';
import { type PairVerdict, screwsOfOneAxisMayDiffer } from './axis-pair.js';
import { type ControllerChange, controllerChange } from './controller-change.js';
import { driveNumbers } from './drive-numbers.js';
import type { Duty } from './duty.js';
import type { DriveNumbers } from './numbers.js';
import { PURPOSES, type Purpose, type RankedScrew, rankScrews } from './rank-screws.js';
import { type DriveScrew, screwName } from './screw.js';

/** Screws side by side. */
export interface Comparison {
  /** in the order given */
  readonly screws: readonly DriveNumbers[];
  /** what the controller must be told when the first screw is replaced by another; empty for one screw */
  readonly changes: readonly (ControllerChange & { readonly from: string; readonly to: string })[];
  /** whether the first screw may share an axis with another; empty for one screw */
  readonly pairs: readonly (PairVerdict & { readonly a: string; readonly b: string })[];
  readonly purpose?: Purpose;
  /** best first; only with a purpose */
  readonly ranking?: readonly RankedScrew[];
}

/**
 * Drive numbers of several screws side by side, what changing from the first to each of the others means, and with a
 * purpose their ranking.
 *
 * @param screws   one screw or more; lengths [mm], flank angle [degrees]
 * @param duty     load [N], span [mm], motor torque [N·mm], feed [mm/s] and the like; the same for all
 * @param purpose  what they are wanted for: fine-layers, speed or holding
 * @returns plain data, ready for JSON
 * @throws InputError  no screw, an unknown purpose, or a value outside its range
 * @source common-practice: choosing a lead
 * @example compareScrews([driveScrewOf(parseDesignation('Tr8x2'))], {}).screws[0].full_step // 0.01
 */
export function compareScrews(screws: readonly DriveScrew[], duty: Duty, purpose?: Purpose): Comparison {
  const [first, ...others] = screws;
  if (first === undefined) throw fault('screws', '', 'must be one screw or more');
  if (purpose !== undefined && !PURPOSES.includes(purpose)) {
    throw fault('purpose', purpose, `must be one of ${PURPOSES.join(', ')}`);
  }
  const numbers = screws.map((screw) => driveNumbers(screw, duty));
  const oldStepsPerMm = numbers[0]!.steps_per_mm;
  return {
    screws: numbers,
    changes: others.map((screw) => ({
      from: screwName(first),
      to: screwName(screw),
      ...controllerChange({ oldLead: first.lead, newLead: screw.lead, oldStepsPerMm }),
    })),
    pairs: others.map((screw) => ({
      a: screwName(first),
      b: screwName(screw),
      ...screwsOfOneAxisMayDiffer(first, screw),
    })),
    ...(purpose !== undefined && { purpose, ranking: rankScrews(numbers, purpose) }),
  };
}
