import { fault } from '../../units/faults.js';

/** The thread forms that are told apart by their flanks. Unified inch threads have the metric V form. */
export type ThreadForm = 'trapezoidal' | 'acme' | 'metric-v';

/** Every thread form, in the order in which they are listed. */
const THREAD_FORMS = ['trapezoidal', 'acme', 'metric-v'] as const satisfies readonly ThreadForm[];

/** The angle of one flank to the plane across the axis, half the included angle [deg]. */
export const FLANK_ANGLES: Readonly<Record<ThreadForm, number>> = {
  trapezoidal: 15,
  acme: 14.5,
  'metric-v': 30,
};

/**
 * The angle of one flank of a form: half of 30, 29 and 60 degrees.
 *
 * @param form trapezoidal, acme or metric-v
 * @returns the angle between a flank and the plane across the axis [deg]
 * @throws InputError the form is not known
 * @source iso-2901: 30 deg included
 * @source asme-b1.5: 29 deg included
 * @source iso-724: 60 deg included
 * @example flankAngleOf('acme') // 14.5 deg
 */
export function flankAngleOf(form: ThreadForm): number {
  const angle = Object.hasOwn(FLANK_ANGLES, form) ? FLANK_ANGLES[form] : undefined;
  if (angle === undefined) throw fault('form', form, `must be one of ${THREAD_FORMS.join(', ')}`);
  return angle;
}
