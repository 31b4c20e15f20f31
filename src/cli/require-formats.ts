import { FORMATS, type Format } from '../output/formats.js';
import { nearest } from '../sheet/nearest.js';
import { fault } from '../units/faults.js';

/** @throws InputError the list names a kind of file that cannot be written */
export function requireFormats(list: string): Format[] {
  return list.split(',').map((given) => {
    const name = given.trim();
    const known = FORMATS.find((format) => format === name);
    if (known) return known;
    const near = nearest(name, FORMATS);
    throw fault('--formats', name, `must be one of ${FORMATS.join(', ')}${near ? `; did you mean ${near}?` : ''}`);
  });
}
