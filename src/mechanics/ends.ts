import { fault } from '../units/faults.js';

/** How a screw is held at its two ends: clamped (fixed), in one bearing (supported) or not at all (free). */
export type ScrewEnds = 'fixed-free' | 'supported' | 'fixed-supported' | 'fixed-fixed';

/** The four ways in rising order of stiffness; `supported` means a plain bearing at both ends. */
export const SCREW_ENDS: readonly ScrewEnds[] = ['fixed-free', 'supported', 'fixed-supported', 'fixed-fixed'];

/** Throws an InputError unless the value names one of the four ways. @internal */
export function requireEnds(path: string, value: string): void {
  if (!SCREW_ENDS.some((ends) => ends === value)) throw fault(path, value, `must be one of ${SCREW_ENDS.join(', ')}`);
}
