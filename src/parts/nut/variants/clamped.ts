import type { Assumptions } from '../../../sheet/assumptions.js';
import type { FastenerSize } from '../../../standards/fasteners/sizes.js';
import { SLIT_WIDTH } from '../../common/clamp.js';
import { LEAST_WALL } from '../../common/walls.js';
import { boreReach, clampAt, footOf } from './clamp-place.js';
import type { VariantSheet } from './sheet.js';
import type { Variant, VariantBase } from './types.js';

/** A slit that one screw closes. */
export function clampedOf(sheet: VariantSheet, { finished }: VariantBase, notes: Assumptions): Variant {
  const screw = notes.or<FastenerSize>(sheet.screw, 'family.screw', 'M3', 'adjusts the slit');
  const foot = finished.flange ? footOf(finished) : 0;
  const inner = boreReach(finished);
  const low = finished.flange ? foot : LEAST_WALL;
  const clamp = clampAt(finished, { screw, inner, slit: SLIT_WIDTH, low, field: 'adjusting' });
  return { kind: 'clamped', clamp, slit: { width: SLIT_WIDTH, from: foot } };
}
