import { rounded } from '../units/format.js';

/** A value that the sheet did not give. */
export interface Assumption {
  readonly field: string;
  readonly value: string | number;
  readonly why: string;
}

/** Collects, in order, every default that was used. */
export class Assumptions {
  readonly list: Assumption[] = [];

  /** The given value, or the default, which is then listed. */
  or<T extends string | number>(given: T | undefined, field: string, value: T, why: string): T {
    if (given !== undefined) return given;
    this.note(field, value, why);
    return value;
  }

  note(field: string, value: string | number, why: string): void {
    this.list.push({ field, value: typeof value === 'number' ? rounded(value) : value, why });
  }
}
