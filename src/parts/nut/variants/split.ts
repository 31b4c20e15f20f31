import type { Assumptions } from '../../../sheet/assumptions.js';
import type { FastenerSize } from '../../../standards/fasteners/sizes.js';
import { fault } from '../../../units/faults.js';
import { plain } from '../../../units/format.js';
import { LEAST_WALL } from '../../common/walls.js';
import type { NutSizes } from '../nut-sizes.js';
import { boreReach, clampAt, footOf } from './clamp-place.js';
import type { VariantSheet } from './sheet.js';
import type { Variant, VariantBase } from './types.js';

/** Two halves, placed by pins, closed by screws or a ring. */
export function splitOf(sheet: VariantSheet, { finished }: VariantBase, notes: Assumptions): Variant {
  const closed = notes.or(sheet.closed, 'family.closed', 'screws', 'one on either side of the screw');
  const pin = sheet.pins ?? { diameter: 2, length: 6 };
  if (!sheet.pins) notes.note('family.pins', '2 x 6', 'two bought pins place the halves');
  const base = footOf(finished);
  const radius = pin.diameter / 2 + 0.05;
  const height = Math.max(LEAST_WALL, finished.relief + 0.8) + radius;
  const screw = notes.or<FastenerSize>(sheet.screw, 'family.screw', 'M3', 'closes the halves');
  const inner = boreReach(finished);
  const low = Math.max(base, height + radius + LEAST_WALL);
  const clamp = closed === 'screws' ? clampAt(finished, { screw, inner, slit: 0, low, field: 'family' }) : undefined;
  const offset = clamp?.offset ?? inner + LEAST_WALL + radius;
  const reach = pinReach(finished, height);
  const room = Math.sqrt(Math.max(0, reach ** 2 - (offset + radius) ** 2)) - LEAST_WALL;
  if (pin.length / 2 + 0.25 > room)
    throw fault(
      'family.pins',
      `${plain(pin.length)} mm`,
      `must be at most ${plain(Math.max(0, 2 * room - 0.5), 1)} mm long in this body; use a larger body`,
    );
  return { kind: 'split', closed, ...(clamp ? { clamp } : {}), pins: { ...pin, offset, height } };
}

/** Radius that is left around a pin: of the flange where the pin lies in it, else of the body. */
export function pinReach({ flange, body }: NutSizes, height: number): number {
  const inFlange = flange && height + 2 * LEAST_WALL < flange.thickness;
  return (inFlange ? Math.min(...flange.size, flange.flats ?? Infinity) : body.across) / 2;
}
