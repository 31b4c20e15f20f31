import { type DeepGroove, deepGroove } from '../../standards/bearings/deep-groove.js';
import { fault, InputError } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import type { EndHolderSheet } from './sheet.js';

/** A ball bearing whose sizes are all known [mm]. */
export interface Bearing extends Omit<DeepGroove, 'width' | 'widths'> {
  /** as it is bought */
  readonly name: string;
  readonly width: number;
}

/** Least chamfer where none is told. @source common-practice */
const CHAMFER = 0.3;

/**
 * A bearing by its designation, by what was measured, or both; what was measured must be what the designation says.
 * @throws InputError an unknown designation, a size that is missing or contradicts it
 */
export function resolveBearing(sheet: NonNullable<EndHolderSheet['bearing']>): Bearing {
  const known = sheet.designation === undefined ? undefined : named(sheet.designation);
  for (const field of ['bore', 'outside'] as const) {
    const [told, listed] = [sheet[field], known?.[field]];
    if (told === undefined && listed === undefined)
      throw fault(`bearing.${field}`, undefined, 'is missing; measure it, or give a designation such as 608');
    if (told !== undefined && listed !== undefined && Math.abs(told - listed) > 0.1)
      throw fault(
        `bearing.${field}`,
        `${plain(told)} mm`,
        `does not agree with ${sheet.designation}: ${plain(listed)} mm`,
      );
  }
  const [bore, outside] = [known?.bore ?? sheet.bore!, known?.outside ?? sheet.outside!];
  if (bore >= outside)
    throw fault('bearing.bore', `${plain(bore)} mm`, `must be below the outside, ${plain(outside)} mm`);
  const width = sheet.width ?? known?.width;
  if (width === undefined) {
    const [open, shielded] = known?.widths ?? [];
    throw fault(
      'bearing.width',
      undefined,
      known?.widths
        ? `is missing; ${sheet.designation} is ${plain(open!)} mm wide when open, ${plain(shielded!)} mm with shields: measure yours`
        : 'is missing; measure it, or give a designation such as 608',
    );
  }
  const size = `${plain(bore)} × ${plain(outside)} × ${plain(width)}`;
  return {
    name: sheet.designation === undefined ? size : `${sheet.designation} (${size})`,
    bore,
    outside,
    width,
    chamfer: sheet.chamfer ?? known?.chamfer ?? CHAMFER,
  };
}

function named(designation: string): DeepGroove {
  try {
    return deepGroove(designation);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.faults.map((one) => ({ ...one, path: 'bearing.designation' })));
  }
}
