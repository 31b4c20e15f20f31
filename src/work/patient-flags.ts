/**
 * How long the engine shall wait before it optimises a function. Engines up to version 11 spend half of a short call's
 * processor time on that, in threads beside it, and the memory it takes; most of what they optimise is hardly called again. Those
 * from 12 on count calls instead, and need no telling.
 *
 * @param engine version of V8, as `process.versions.v8` has it
 * @returns flags of that version
 * @example patientFlags('11.3.244.8') // ['--interrupt-budget=270000']
 */
export function patientFlags(engine: string): string[] {
  return Number.parseInt(engine, 10) < 12 ? ['--interrupt-budget=270000'] : [];
}
