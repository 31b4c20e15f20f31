import type { Designation } from '../../standards/threads/designation.js';
import type { Assumptions } from '../assumptions.js';
import type { ScrewSheet } from '../sections/screw.js';

/** What a screw is worked out from. */
export interface Given {
  readonly sheet: ScrewSheet;
  /** its designation, where the sheet has one */
  readonly named: Designation | undefined;
  /** half-width of a reading that states none, mm */
  readonly instrument: number;
  /** collects what the sheet did not say */
  readonly assumptions: Assumptions;
}
