import { InputError } from '../../units/faults.js';
import type { Designation } from '../threads/designation.js';
import { screwLimits } from './thread-limits.js';

/** Root of a screw at its thinnest [mm]. */
export interface LeastRoot {
  /** cut or ground, the least that its class allows */
  readonly cut: number;
  /** rolled */
  readonly rolled: number;
}

/** A rolled trapezoidal root may be thinner by this share of the pitch, on the diameter. */
const ROLLED = 0.15;

/**
 * The thinnest root that a screw of this designation may have: what whirls and buckles. Its class is the one of the
 * designation, else the usual one; a size for which the standard has no range follows the rule of `leastRootOf`.
 *
 *     cut: least minor of the class     rolled: 0.15·P less, trapezoidal only
 *
 * @param thread a parsed designation
 * @returns diameters [mm]
 * @source iso-2903: limits of the minor; the others by their own standards
 * @source din-103: rolled screws
 * @example leastRoot(parseDesignation('Tr8x2')).cut // 5.1915
 */
export function leastRoot(thread: Designation): LeastRoot {
  return rolledToo(classRoot(thread), thread);
}

/**
 * The thinnest root of a screw that has no class: its root less about the tolerance and the allowance of grade 7.
 *
 *     cut: d3 − 1.25·(0.1 + 0.042·P) − (0.05 + 0.011·P)
 *
 * @param p.root   d3  basic root, or the least of a reading's  [mm]  > 0
 * @param p.pitch  P   distance of neighbouring crests          [mm]  > 0
 * @param p.form       thread form
 * @returns diameters, at least a tenth of the root [mm]
 * @source derived: Td2 of grade 7 and es of position e in ISO 2903, straight over the pitch
 * @source din-103: rolled screws
 * @example leastRootOf({ root: 5.5, pitch: 2, form: 'trapezoidal' }).cut // 5.198
 */
export function leastRootOf(p: {
  readonly root: number;
  readonly pitch: number;
  readonly form: Designation['form'] | 'free';
}): LeastRoot {
  const cut = p.root - 1.25 * (0.1 + 0.042 * p.pitch) - (0.05 + 0.011 * p.pitch);
  return rolledToo(Math.max(0.1 * p.root, cut), p);
}

function classRoot(thread: Designation): number {
  try {
    return screwLimits({ designation: thread }).minor[0];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return leastRootOf({ root: thread.minor, pitch: thread.pitch, form: thread.form }).cut;
  }
}

function rolledToo(
  cut: number,
  { form, pitch }: { readonly form: Designation['form'] | 'free'; readonly pitch: number },
): LeastRoot {
  const isTrapezoidal = form === 'trapezoidal' || form === 'free';
  return { cut, rolled: isTrapezoidal ? Math.max(0.1 * cut, cut - ROLLED * pitch) : cut };
}
