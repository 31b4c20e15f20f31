import { type Fault, InputError, type Place } from '../units/faults.js';

/** The place of a field, or of the nearest thing around it. */
export type Locate = (path: readonly PropertyKey[]) => Place | undefined;

/**
 * Runs a step; mistakes that it finds without a place get the place of their field.
 * @throws InputError the step's own, located
 */
export function locating<T>(locate: Locate, step: () => T): T {
  try {
    return step();
  } catch (error) {
    if (error instanceof InputError) throw new InputError(error.faults.map((fault) => located(fault, locate)));
    throw error;
  }
}

function located(fault: Fault, locate: Locate): Fault {
  if (fault.at !== undefined || fault.path.startsWith('--')) return fault;
  const at = locate(keysOf(fault.path));
  return at ? { ...fault, at } : fault;
}

/**
 * The keys of a dotted path.
 * @example keysOf('duty.layer_heights[2]') // ['duty', 'layer_heights', 2]
 */
export function keysOf(path: string): (string | number)[] {
  return path
    .split(/\.|(?=\[)/)
    .filter((key) => key !== '')
    .map((key) => (/^\[\d+\]$/.test(key) ? Number(key.slice(1, -1)) : key));
}
