import type { Measured } from '../units/measured.js';

/** A printing material with the figures that parts are worked out from. Shrink carries its spread. */
export interface Material {
  /** preset name, or `custom` */
  readonly name: string;
  /** fractions of the modelled size; the bounds are what is left after compensation */
  readonly shrink: { readonly plane: Measured; readonly axial: Measured };
  /** g/cm³ */
  readonly density: number;
  /** °C */
  readonly softening: number;
  /** MPa, in the plane of the layers */
  readonly tensile: number;
  /** MPa, across the layers */
  readonly tensileAcross: number;
  /** MPa, for design */
  readonly shear: number;
  /** MPa, at yield */
  readonly compressive: number;
  /** MPa */
  readonly modulus: number;
  /** MPa, moving on steel, smooth surface */
  readonly pressureLimit: number;
  /** MPa·m/s, dry */
  readonly pvLimit: number;
  /** long-term share of the short-term yield */
  readonly creepShare: number;
  /** mm per km of sliding and MPa; undefined where nobody has measured it */
  readonly wear?: number;
  /** linear growth from dry to room air, as a fraction */
  readonly moistureGrowth: number;
}
