import type { Acceptance } from '../judge/accept.js';
import type { PlannedMachine } from './machines.js';
import type { WholeSheet } from './put-together.js';
import type { Reading } from './readings.js';

/** One part of one machine, its sheet put together. */
export interface PlannedPart {
  readonly machine: string;
  readonly role: string;
  /** pieces that are mounted */
  readonly quantity: number;
  /** pieces that are kept besides */
  readonly spare: number;
  readonly axis?: string | undefined;
  /** empty where its sheet cannot be used */
  readonly address: string;
  /** what is wrong with its sheet, a line a mistake */
  readonly wrong?: readonly string[];
  /** why its machine counts as not measured, a line a field */
  readonly unmeasured?: readonly string[];
  /** what was measured at its own machine */
  readonly readings?: readonly Reading[];
  /** the printer that its sheet is for, in words */
  readonly printer?: string;
}

/** A part that is made once, however many machines have it. */
export interface DistinctPart {
  readonly address: string;
  /** failed checks that are accepted */
  readonly accept: readonly Acceptance[];
  /** its sheet, put together when it is asked for; its fields stand where the first machine that has it gives them */
  readonly whole: () => Pick<WholeSheet, 'sheet' | 'find'>;
}

/** All that a run does, in the order of the fleet file. */
export interface FleetPlan {
  readonly fleet: string;
  readonly formats: readonly string[];
  readonly machines: readonly PlannedMachine[];
  /** machine by machine */
  readonly parts: readonly PlannedPart[];
  readonly distinct: readonly DistinctPart[];
}

/** Every machine with its parts. */
export function* partsByMachine({
  machines,
  parts,
}: FleetPlan): Iterable<{ readonly machine: PlannedMachine; readonly parts: readonly PlannedPart[] }> {
  let from = 0;
  for (const machine of machines) {
    let to = from;
    while (parts[to]?.machine === machine.name) to++;
    yield { machine, parts: parts.slice(from, to) };
    from = to;
  }
}
