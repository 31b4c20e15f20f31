import type { Plastic } from '../mechanics/strength/plastic.js';
import type { Measured } from '../units/measured.js';

/** A printing material with the figures that parts are worked out from. Shrink carries its spread. */
export interface Material extends Plastic {
  /** preset name, or `custom` */
  readonly name: string;
  /** a plastic that nobody names, and of which neither softening nor loss by heat nor strength is told: its figures are another's */
  readonly unnamed?: true;
  /** fractions of the modelled size; the bounds are what is left after compensation */
  readonly shrink: { readonly plane: Measured; readonly axial: Measured };
  /** g/cm³ */
  readonly density: number;
  /** °C */
  readonly softening: number;
  /** MPa, at yield */
  readonly compressive: number;
  /** MPa, moving on steel, smooth surface */
  readonly pressureLimit: number;
  /** MPa·m/s, dry */
  readonly pvLimit: number;
  /** MPa, moving on steel, whatever the share of the time */
  readonly pressureCap: number;
  /** mm/s, sliding on steel */
  readonly speedLimit: number;
  /** J/(kg·K) */
  readonly heatCapacity: number;
  /** whether oil, solvent or threadlocker cracks it under stress */
  readonly stressCracks: boolean;
  /** mm per km of sliding and MPa; undefined where nobody has measured it */
  readonly wear?: number;
  /** linear growth from dry to room air, as a fraction */
  readonly moistureGrowth: number;
}
