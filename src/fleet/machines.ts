import type { Acceptance } from '../judge/accept.js';
import type { Fields } from '../sheet/fields-map.js';
import { type Fault, faultLine, type Place } from '../units/faults.js';

/** Where a field stands: its file, and the place in it. */
export interface Origin {
  readonly file: string;
  readonly at?: Place | undefined;
}

/** A mistake with the file that it is in. */
export interface FileFault extends Omit<Fault, 'at'>, Origin {
  /** the machine that it concerns, where it concerns only one */
  readonly machine?: string;
}

/** `file:line:column field: value; allowed` */
export function fileFaultLine({ file, at, path, value, allowed }: FileFault): string {
  const fault = { path, value, allowed };
  const line = faultLine(at ? { ...fault, at } : fault, file);
  return at || file === '' ? line : `${file}: ${faultLine(fault)}`;
}

/** Finds where a field of a piece of the fleet file stands; the path is seen from that piece. */
export type Find = (path: readonly PropertyKey[]) => Origin;

/** Fields, with where they stand. */
export interface GivenFields {
  readonly fields: Fields;
  readonly find: Find;
  /** whether it is for parts of several kinds, each of which takes only what it has a field for */
  readonly shared?: boolean;
}

/** One part of a machine, as the fleet says it, before its sheet is read. */
export interface GivenPart {
  readonly role: string;
  /** path of a part sheet, seen from the file that names it */
  readonly sheet?: string | undefined;
  /** a part sheet of its own */
  readonly own?: GivenFields | undefined;
  /** what replaces fields of the sheet, lowest first */
  readonly over: readonly GivenFields[];
  /** what its own machine says of it, among all these */
  readonly given: readonly GivenFields[];
  /** fields that must be measured at its own machine */
  readonly needs: readonly string[];
  /** fields that its table has a column for */
  readonly columns: readonly string[];
  /** pieces that are mounted */
  readonly quantity: number;
  /** pieces that are kept besides */
  readonly spare: number;
  readonly axis?: string | undefined;
  /** failed checks that are accepted */
  readonly accept: readonly Acceptance[];
  readonly find: Find;
}

/** One machine, its parts aside. */
export interface PlannedMachine {
  readonly name: string;
  readonly kind?: string | undefined;
  readonly group?: string | undefined;
  /** diameter of its motor's shaft  [mm] */
  readonly motorShaft?: number | undefined;
  /** names of parts that its kind lists */
  readonly needs: readonly string[];
}

/** One machine as the fleet gives it. */
export interface GivenMachine extends PlannedMachine {
  readonly parts: readonly GivenPart[];
}

/** A fleet, read and found whole, its part sheets aside. */
export interface GivenFleet {
  readonly name: string;
  readonly defaults: GivenFields | undefined;
  readonly machines: readonly GivenMachine[];
}

/** A machine or part as it is given once, before what its kind and its group say is put under it. */
export interface Entry {
  readonly sheet?: string | undefined;
  readonly own?: GivenFields | undefined;
  readonly with?: GivenFields | undefined;
  readonly quantity?: number | undefined;
  readonly spare?: number | undefined;
  readonly needs?: readonly string[] | undefined;
  /** fields that its table has a column for */
  readonly columns?: readonly string[] | undefined;
  readonly axis?: string | undefined;
  readonly accept?: Readonly<Record<string, string>> | undefined;
  readonly find: Find;
}

export interface BareMachine {
  readonly name: string;
  readonly kind?: string | undefined;
  readonly group?: string | undefined;
  readonly motorShaft?: number | undefined;
  readonly with?: GivenFields | undefined;
  readonly parts: ReadonlyMap<string, Entry>;
  readonly find: Find;
}
