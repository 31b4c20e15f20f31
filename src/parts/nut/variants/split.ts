import type { Assumptions } from '../../../sheet/assumptions.js';
import type { FastenerSize } from '../../../standards/fasteners/sizes.js';
import { fault } from '../../../units/faults.js';
import { plain } from '../../../units/format.js';
import { fourLines, LEAST_WALL } from '../../common/walls.js';
import type { NutSizes } from '../nut-sizes.js';
import { boreReach, clampAt, footOf } from './clamp-place.js';
import type { PinHoles } from './pin-holes.js';
import type { VariantSheet } from './sheet.js';
import type { Variant, VariantBase } from './types.js';

/** Two halves, placed by pins, closed by screws or a ring. */
export function splitOf(sheet: VariantSheet, { finished, printer }: VariantBase, notes: Assumptions): Variant {
  const closed = notes.or(sheet.closed, 'family.closed', 'screws', 'one on either side of the screw');
  const pin = sheet.pins ?? { diameter: 2, length: 6 };
  if (!sheet.pins) notes.note('family.pins', '2 x 6', 'two bought pins place the halves');
  const base = footOf(finished);
  const radius = pin.diameter / 2 + 0.05;
  const height = Math.max(LEAST_WALL, finished.relief + 0.8) + radius;
  const screw = notes.or<FastenerSize>(sheet.screw, 'family.screw', 'M3', 'closes the halves');
  const inner = boreReach(finished);
  const wall = fourLines(printer.nozzle);
  const low = Math.max(base, height + radius + LEAST_WALL);
  const clamp = closed === 'screws' ? clampAt(finished, { screw, inner, slit: 0, low, field: 'family' }) : undefined;
  const offset = Math.max(clamp?.offset ?? 0, inner + wall + radius);
  const reach = pinReach(finished, { height, radius });
  const room = Math.sqrt(Math.max(0, reach ** 2 - (offset + radius) ** 2)) - LEAST_WALL;
  if (room <= 0.25)
    throw fault(
      'family.pins.diameter',
      `${plain(pin.diameter)} mm`,
      `leaves no room between thread and outside, of which it needs ${plain(inner + wall + 2 * radius + LEAST_WALL, 1)} mm from the axis on; use thinner pins or a larger body`,
    );
  if (pin.length / 2 + 0.25 > room)
    throw fault(
      'family.pins',
      `${plain(pin.length)} mm`,
      `must be at most ${plain(Math.max(0, 2 * room - 0.5), 1)} mm long in this body; use a larger body`,
    );
  return { kind: 'split', closed, ...(clamp ? { clamp } : {}), pins: { ...pin, offset, height } };
}

/** Radius that is left around a pin: of the flange where the pin lies in it, else of the body. */
export function pinReach({ flange, body }: NutSizes, { height, radius }: Pick<PinHoles, 'height' | 'radius'>): number {
  const above = Math.max(2 * LEAST_WALL, radius + LEAST_WALL);
  const inFlange = flange && height + above < flange.thickness;
  return (inFlange ? Math.min(...flange.size, flange.flats ?? Infinity) : body.across) / 2;
}
