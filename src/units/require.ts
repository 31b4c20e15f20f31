import { fault } from './faults.js';

/** Throws an InputError unless the value is a finite number above zero. */
export function requirePositive(path: string, value: number): void {
  if (!(Number.isFinite(value) && value > 0)) throw fault(path, value, 'must be above 0');
}

/** Throws an InputError unless the value is a finite number of at least zero. */
export function requireNotNegative(path: string, value: number): void {
  if (!(Number.isFinite(value) && value >= 0)) throw fault(path, value, 'must be 0 or above');
}

/** Throws an InputError unless the value is a finite number from `least` to `most`. */
export function requireRange(path: string, value: number, least: number, most: number): void {
  if (!(value >= least && value <= most)) throw fault(path, value, `must be ${least} to ${most}`);
}

/** Throws an InputError unless the value is a whole number from `least` to `most`. */
export function requireWhole(path: string, value: number, least: number, most: number): void {
  if (!(Number.isInteger(value) && value >= least && value <= most)) {
    throw fault(path, value, `must be a whole number from ${least} to ${most}`);
  }
}
