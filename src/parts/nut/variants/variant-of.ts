import type { Assumptions } from '../../../sheet/assumptions.js';
import { fault } from '../../../units/faults.js';
import { plain } from '../../../units/format.js';
import { antiBacklashOf } from './anti-backlash.js';
import { clampedOf } from './clamped.js';
import { holderOf } from './pocket.js';
import type { VariantSheet } from './sheet.js';
import { splitOf } from './split.js';
import { twinOf } from './twin.js';
import type { Variant, VariantBase } from './types.js';

/**
 * Works out how a nut differs from a plain one.
 * @throws InputError the body has no room for it, and what would have
 */
export function variantOf(sheet: VariantSheet | undefined, base: VariantBase, notes: Assumptions): Variant | undefined {
  if (!sheet) return undefined;
  const { flange, body } = base.finished;
  if (flange && flange.offset > 0)
    throw fault(
      'flange.offset',
      `${plain(flange.offset)} mm`,
      `must be 0 where family.kind is ${sheet.kind}: a stub under the flange would need support`,
    );
  const isPlain = sheet.kind === 'holder' || sheet.kind === 'twin';
  if (!isPlain && (body.shape !== 'round' || body.flats !== undefined))
    throw fault('body.shape', body.shape, `must be round, without flats, where family.kind is ${sheet.kind}`);
  if (!isPlain && !flange && base.finished.holes)
    throw fault(
      'holes',
      '',
      `need a flange where family.kind is ${sheet.kind}: in the body they would meet its screws, pins or spring`,
    );
  switch (sheet.kind) {
    case 'split':
      return splitOf(sheet, base, notes);
    case 'clamped':
      return clampedOf(sheet, base, notes);
    case 'holder':
      return holderOf(sheet, base, notes);
    case 'anti-backlash':
      return antiBacklashOf(sheet, base, notes);
    case 'twin':
      return twinOf(sheet, base, notes);
  }
}
