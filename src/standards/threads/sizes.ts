import { type AcmeSizes, acmeSizes } from './acme.js';
import type { ThreadForm } from './form.js';
import { vSizes } from './metric-v.js';
import { trapezoidalSizes } from './trapezoidal.js';

/** Basic sizes of a thread of any form [mm]. */
export type ThreadSizes = AcmeSizes;

/**
 * Basic sizes of a thread of any form, see the function of the form for its equations.
 *
 * @param p.form trapezoidal, acme or metric-v
 * @param p.major  d  nominal major diameter                  [mm]  > 0
 * @param p.pitch  P  distance of neighbouring crests         [mm]  > 0
 * @returns pitch diameter, minors, nut major, engagement and crest flat [mm]
 * @throws InputError a value is not above 0
 * @source iso-2904: trapezoidal
 * @source asme-b1.5: Acme
 * @source iso-724: V
 * @example threadSizes({ form: 'trapezoidal', major: 10, pitch: 2 }).pitchDiameter // 9 mm
 */
export function threadSizes(p: {
  readonly form: ThreadForm;
  readonly major: number;
  readonly pitch: number;
}): ThreadSizes {
  if (p.form === 'trapezoidal') return trapezoidalSizes(p);
  return p.form === 'acme' ? acmeSizes(p) : vSizes(p);
}
