import { exactly, type Measured, scaled, sum } from '../../units/measured.js';
import { planeResidual } from '../common/residual.js';
import type { NutDesign } from './nut-design.js';

/** What goes into the carriage's bore, and how wide it is. */
export interface Entering {
  readonly what: 'body' | 'stub' | 'screw';
  /** diameter of the circle around it as it is wanted, or as the screw was measured */
  readonly across: Measured;
}

/**
 * What goes into the carriage's bore: the body; where that stands away, the stub below its flange; where there is none, the
 * screw alone.
 */
export function enteringBore(design: NutDesign): Entering {
  const { stands, finished, screw } = design;
  const { length, flange } = finished;
  const standsOut = !flange || length > flange.offset + flange.thickness + 1e-6;
  const around = exactly(widest(design));
  if (stands === 'away') {
    return flange !== undefined && flange.offset > 0
      ? { what: 'stub', across: around }
      : { what: 'screw', across: screw.major };
  }
  return standsOut ? { what: 'body', across: around } : { what: 'screw', across: screw.major };
}

/** Room in the carriage's bore, on the diameter, what enters it as it is printed. */
export function boreRoom(design: NutDesign, bore: Measured): Measured {
  const { what, across } = enteringBore(design);
  const printed = what === 'screw' ? across : sum(across, planeResidual(design, across.likely));
  return sum(bore, scaled(printed, -1));
}

/** How far the nut can move sideways in the carriage's bore. */
export function sidewaysInBore(design: NutDesign, bore: Measured): Measured {
  const { across } = enteringBore(design);
  return scaled(sum(bore, scaled(across, -1)), 0.5);
}

/** Diameter of the circle around the body. */
export function widest({ finished: { body } }: Pick<NutDesign, 'finished'>): number {
  const around = { round: 1, square: Math.SQRT2, hexagon: 2 / Math.sqrt(3) };
  return body.across * around[body.shape];
}
