import { keeps } from '../../judge/judge.js';
import { type DeepGroove, deepGroove, type RingFlange, ringFlange } from '../../standards/bearings/deep-groove.js';
import { fault, InputError } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import type { EndHolderSheet } from './sheet.js';

/** A ball bearing whose sizes are all known [mm]. */
export interface Bearing extends Omit<DeepGroove, 'width' | 'widths'> {
  /** as it is bought */
  readonly name: string;
  readonly width: number;
  /** on its outer ring, at one of its faces */
  readonly flange?: RingFlange;
}

/** A reading may be off its list by this, mm. @source common-practice */
const AGREES = 0.1;

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
    if (told !== undefined && listed !== undefined && !keeps(Math.abs(told - listed), { max: AGREES }))
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
    const widths = known?.widths;
    throw fault(
      'bearing.width',
      undefined,
      widths
        ? `is missing; ${sheet.designation} is ${plain(widths[0])} mm wide when open, ${plain(widths[1])} mm with shields: measure yours`
        : 'is missing; measure it, or give a designation such as 608',
    );
  }
  const flange = flangeOf(sheet, { outside, width });
  const size = `${plain(bore)} × ${plain(outside)} × ${plain(width)}${flange ? `, flange ${plain(flange.outside)} × ${plain(flange.thickness)}` : ''}`;
  return {
    name: sheet.designation === undefined ? size : `${sheet.designation} (${size})`,
    bore,
    outside,
    width,
    chamfer: sheet.chamfer ?? known?.chamfer ?? CHAMFER,
    ...(flange ? { flange } : {}),
  };
}

const F = /^F(?=\d)/i;

/** The flange that is measured, or that the designation begins with; none without either. */
function flangeOf(
  { flange, designation = '' }: NonNullable<EndHolderSheet['bearing']>,
  { outside, width }: { readonly outside: number; readonly width: number },
): RingFlange | undefined {
  if (!flange && !F.test(designation)) return undefined;
  const listed = F.test(designation) ? ringFlange(designation.replace(F, '')) : undefined;
  const own = { outside: flange?.outside ?? listed?.outside, thickness: flange?.thickness ?? listed?.thickness };
  for (const field of ['outside', 'thickness'] as const)
    if (own[field] === undefined)
      throw fault(
        `bearing.flange.${field}`,
        undefined,
        `is missing; measure the flange${listed ? '' : ', it is not listed'}`,
      );
  const found = { outside: own.outside!, thickness: own.thickness! };
  if (found.outside < outside + 1)
    throw fault(
      'bearing.flange.outside',
      `${plain(found.outside)} mm`,
      `must be at least ${plain(outside + 1)} mm, beyond the ring`,
    );
  if (found.thickness > width - 1)
    throw fault(
      'bearing.flange.thickness',
      `${plain(found.thickness)} mm`,
      `must be at most ${plain(width - 1)} mm, of the whole width`,
    );
  return found;
}

function named(designation: string): DeepGroove {
  try {
    return deepGroove(designation.replace(F, ''));
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.faults.map((one) => ({ ...one, path: 'bearing.designation' })));
  }
}
