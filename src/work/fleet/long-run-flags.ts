/**
 * How the engine shall treat long runs of the same work.
 *
 * A full collection throws away the compiled code of every callback that no part in hand holds, and the next part
 * compiles it again: a heap of 128 MB to begin with makes that rare. Compiling only what stays hot leaves the second
 * processor to the second worker; engines from version 12 on count calls instead, and need no telling.
 *
 * @param engine version of V8, as `process.versions.v8` has it
 * @returns flags of that version
 * @example longRunFlags('12.4.254.21') // ['--initial-heap-size=128']
 */
export function longRunFlags(engine: string): string[] {
  const heap = '--initial-heap-size=128';
  return Number.parseInt(engine, 10) < 12 ? [heap, '--interrupt-budget=270000'] : [heap];
}
