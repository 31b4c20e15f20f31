import type { Acceptance } from '../judge/accept.js';
import { fault } from '../units/faults.js';

/**
 * Reads the values of `--accept`.
 * @throws InputError not of the form CHECK=REASON
 * @example parseAccept(['wall=thin on purpose']) // [{ check: 'wall', reason: 'thin on purpose' }]
 */
export function parseAccept(values: readonly string[] = []): Acceptance[] {
  return values.map((value) => {
    const at = value.indexOf('=');
    if (at < 1) throw fault('--accept', value, 'must be CHECK=REASON');
    return { check: value.slice(0, at).trim(), reason: value.slice(at + 1).trim() };
  });
}
