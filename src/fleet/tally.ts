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
  /** every word by which machines and parts may be chosen, sorted */
  readonly words: {
    readonly kinds: readonly string[];
    readonly verdicts: readonly string[];
    readonly materials: readonly string[];
  };
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
  const [kinds, verdicts, materials] = [new Set<string>(), new Set<string>(), new Set<string>()];
  const note = ({ machine, parts }: MachineRows) => {
    if (machine.kind !== null) kinds.add(machine.kind);
    for (const one of [machine, ...parts]) verdicts.add(one.verdict);
    for (const { material } of parts) if (material !== null) materials.add(material);
  };
  return {
    add: (rows) => {
      const { machine } = rows;
      note(rows);
      counting.add(rows);
      verdict = worstOf([verdict, machine.verdict]);
      hardware = hardwareSum([hardware, machine.hardware]);
      filament = filamentSum([filament, machine.filament]);
    },
    sums: () => {
      const words = { kinds: [...kinds].sort(), verdicts: [...verdicts].sort(), materials: [...materials].sort() };
      return { verdict, counts: counting.counts(), hardware, filament, words };
    },
  };
}
