import { patientFlags } from '../patient-flags.js';

/**
 * How the engine shall treat long runs of the same work.
 *
 * A full collection throws away the compiled code of every callback that no part in hand holds, and the next part
 * compiles it again: a heap of 128 MB to begin with makes that rare. Compiling only what stays hot leaves the second
 * processor to the second worker.
 *
 * @param engine version of V8, as `process.versions.v8` has it
 * @returns flags of that version
 * @example longRunFlags('12.4.254.21') // ['--initial-heap-size=128']
 */
export function longRunFlags(engine: string): string[] {
  return ['--initial-heap-size=128', ...patientFlags(engine)];
}
