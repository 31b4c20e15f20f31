import { requireNotNegative, requirePositive } from '../../units/require.js';
import { degrees } from '../angle.js';
import type { Section } from './section.js';

/** Poisson's ratio of printed plastics [-]. */
const POISSON = 0.35;

/** Rectangles shear by so much more than their mean stress says [-]. */
const SHEAR_FACTOR = 1.2;

/** A length of a strip with the section it has there. */
export interface StripPiece extends Pick<Section, 'area' | 'inertia'> {
  /** distance of its near end from the force [mm] */
  readonly from: number;
  /** distance of its far end [mm] */
  readonly to: number;
}

/**
 * How far a strip that is held at one end gives under a force at the other, and how much it leans there. Short strips
 * shear as much as they bend.
 *
 *     δ = Σ F·(x₂³ − x₁³)/(3·E·I) + 1.2·F·(x₂ − x₁)/(G·A)        θ = Σ F·(x₂² − x₁²)/(2·E·I)        G = E/(2·(1 + ν)), ν = 0.35
 *
 * @param p.force    F  at the free end                                    [N]    0 or above
 * @param p.modulus  E  of the plastic, crept and warm                     [MPa]  > 0
 * @param p.pieces      its lengths from the force to where it is held: area [mm²], second moment [mm⁴]
 * @returns sag δ [mm], lean θ [degrees]
 * @throws InputError  a value is outside its range
 * @validity sags of less than half the thickness
 * @source memory: handbook beam tables, cantilever with shear
 * @example stripSag({ force: 200, modulus: 2000, pieces: [{ from: 0, to: 6, area: 72, inertia: 216 }] }).sag // 0.0603
 */
export function stripSag(p: {
  readonly force: number;
  readonly modulus: number;
  readonly pieces: readonly StripPiece[];
}): { readonly sag: number; readonly lean: number } {
  requireNotNegative('force', p.force);
  requirePositive('modulus', p.modulus);
  const shearModulus = p.modulus / (2 * (1 + POISSON));
  let [sag, lean] = [0, 0];
  for (const { from, to, area, inertia } of p.pieces) {
    requirePositive('area', area);
    requirePositive('inertia', inertia);
    sag += (p.force * (to ** 3 - from ** 3)) / (3 * p.modulus * inertia);
    sag += (SHEAR_FACTOR * p.force * (to - from)) / (shearModulus * area);
    lean += (p.force * (to ** 2 - from ** 2)) / (2 * p.modulus * inertia);
  }
  return { sag, lean: degrees(lean) };
}
