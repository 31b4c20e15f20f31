import type { Verdict } from '../judge/check.js';
import type { HardwareRow } from '../parts/part-kind.js';
import type { PairFinding } from './neighbours.js';
import type { OddReading } from './odd-readings.js';
import type { MaterialMass } from './totals.js';

/** How a part or a machine stands: judged, or not made at all. */
export type Standing = Verdict | 'wrong' | 'missing' | 'unmeasured';

/** One printable file of one part of one machine; `file` is null where none was made. */
export interface ManifestRow {
  readonly machine: string;
  readonly role: string;
  /** kind of part; empty where its sheet could not be read */
  readonly part: string;
  readonly name: string;
  /** pieces that are mounted */
  readonly quantity: number;
  /** pieces that are kept besides */
  readonly spare: number;
  /** the printer that its sheet is for, in words */
  readonly printer: string | null;
  readonly axis: string | null;
  readonly verdict: Standing;
  /** why it was not made, or what to mind */
  readonly reasons: readonly string[];
  readonly file: string | null;
  readonly digest: string | null;
  readonly material: string | null;
  /** g, of one */
  readonly mass: number | null;
  readonly bounds: readonly [readonly number[], readonly number[]] | null;
  readonly address: string;
  /** folder with its report and page */
  readonly folder: string | null;
}

/** One machine. */
export interface MachineRow {
  readonly machine: string;
  readonly kind: string | null;
  readonly group: string | null;
  readonly verdict: Standing;
  /** every part that it has and its kind lists is made, and its pairs suit each other */
  readonly complete: boolean;
  /** names of parts that its kind lists and it does not have */
  readonly lacks: readonly string[];
  /** whether readings of it are not there, so that nothing of it was made */
  readonly unmeasured: boolean;
  /** readings that stand far from those of its fellows */
  readonly odd: readonly OddReading[];
  readonly pairs: readonly PairFinding[];
  readonly hardware: readonly HardwareRow[];
  readonly filament: readonly MaterialMass[];
}

/** All that is said of one machine. */
export interface MachineRows {
  readonly machine: MachineRow;
  readonly parts: readonly ManifestRow[];
}
