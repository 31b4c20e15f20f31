import type { HardwareRow } from '../parts/part-kind.js';
import { type Counts, counter } from './counts.js';
import type { MachineRows, Standing } from './manifest-rows.js';
import { filamentSum, hardwareSum, type MaterialMass } from './totals.js';

const STANDINGS: readonly Standing[] = ['pass', 'caution', 'missing', 'unmeasured', 'fail', 'wrong'];

/** A run in sum. */
export interface Sums {
  readonly verdict: Standing;
  readonly counts: Counts;
  readonly hardware: readonly HardwareRow[];
  /** g by material, supports and waste aside */
  readonly filament: readonly MaterialMass[];
}

/** The worst of several; pass for none. */
export function worstOf(standings: readonly Standing[]): Standing {
  return standings.reduce((worst, one) => (STANDINGS.indexOf(one) > STANDINGS.indexOf(worst) ? one : worst), 'pass');
}

/** Sums a run up, machine by machine. */
export function tally(): { readonly add: (rows: MachineRows) => void; readonly sums: () => Sums } {
  const counting = counter();
  let verdict: Standing = 'pass';
  let hardware: readonly HardwareRow[] = [];
  let filament: readonly MaterialMass[] = [];
  return {
    add: (rows) => {
      const { machine } = rows;
      counting.add(rows);
      verdict = worstOf([verdict, machine.verdict]);
      hardware = hardwareSum([hardware, machine.hardware]);
      filament = filamentSum([filament, machine.filament]);
    },
    sums: () => ({ verdict, counts: counting.counts(), hardware, filament }),
  };
}
