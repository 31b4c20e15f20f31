import type { Assumptions } from '../../../sheet/assumptions.js';
import { fault } from '../../../units/faults.js';
import { plain } from '../../../units/format.js';
import { CATCH_GAP, type CatchNutSheet, type NutPocket, nutPocket, nutPocketReach } from '../../common/bought-nut.js';
import { LEAST_WALL } from '../../common/walls.js';
import type { NutSizes } from '../nut-sizes.js';
import type { VariantSheet } from './sheet.js';
import type { Variant, VariantBase } from './types.js';

/** A body around a bought nut. */
export function holderOf(sheet: VariantSheet, { finished, screw }: VariantBase, notes: Assumptions): Variant {
  const given = sheet.nut!;
  const usual = finished.flange ? 'end' : 'face';
  const why = finished.flange ? 'a flange on the bed prints without support' : 'the carriage closes the pocket';
  const opens = notes.or(sheet.pocket, 'family.pocket', usual, why);
  if (opens === 'face' && finished.flange)
    throw fault('family.pocket', 'face', 'must be end under a flange: a flange over the bed would need support');
  const pocket = nutPocket(given);
  const bore = Math.round((screw.major.likely + 0.8) * 100) / 100;
  requirePocket(pocket, finished, 'family.nut');
  if (bore > pocket.acrossFlats - 2)
    throw fault(
      'family.nut.across_flats',
      `${plain(pocket.nut.acrossFlats)} mm`,
      `must be above ${plain(bore + 2)} mm, so that the nut has a seat around the screw`,
    );
  return { kind: 'holder', pocket, opens, bore };
}

function requirePocket(pocket: NutPocket, { body, length, flange }: NutSizes, field: string): void {
  const wall = Math.min(body.across, body.flats ?? Infinity) / 2 - nutPocketReach(pocket);
  if (wall < LEAST_WALL)
    throw fault(
      'body',
      `${plain(body.across)} mm`,
      `must be at least ${plain(2 * (nutPocketReach(pocket) + LEAST_WALL), 1)} mm across around the nut of ${field}`,
    );
  const floor = length - pocket.depth;
  const least = Math.max(3, flange ? flange.thickness : 0);
  if (floor < least)
    throw fault(
      'body.length',
      `${plain(length)} mm`,
      `must be at least ${plain(pocket.depth + least)} mm: the pocket is ${plain(pocket.depth)} mm deep`,
    );
}

/**
 * The pocket of a metal nut that stands by, on the body end.
 * @throws InputError the body has no room for it
 */
export function catchPocketOf(
  sheet: CatchNutSheet | undefined,
  finished: NutSizes,
  notes: Assumptions,
): (NutPocket & { readonly gap: number }) | undefined {
  if (!sheet) return undefined;
  const gap = notes.or(sheet.gap, 'catch_nut.gap', CATCH_GAP.usual, 'bears nothing until the working thread fails');
  const pocket = nutPocket(sheet, gap);
  requirePocket(pocket, finished, 'catch_nut');
  return { ...pocket, gap };
}
