import { nearest } from '../sheet/nearest.js';
import { fault } from '../units/faults.js';

/** Kinds of file that can be written. */
export const FORMATS = ['stl'] as const;

/** @throws InputError the list names a kind of file that cannot be written */
export function requireFormats(list: string): void {
  const names = list.split(',').map((name) => name.trim());
  for (const name of names) {
    if (FORMATS.some((known) => known === name)) continue;
    const near = nearest(name, FORMATS);
    throw fault('--formats', name, `must be one of ${FORMATS.join(', ')}${near ? `; did you mean ${near}?` : ''}`);
  }
}
