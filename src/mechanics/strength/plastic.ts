/** How long a load acts, or how often. */
export type LoadDuration =
  /** stands for years: a vertical axis, a weight */
  | 'years'
  /** some 1,000 hours over a life */
  | 'thousand-hours'
  /** of a level axis: for 1,000 hours, and from one side to the other with every move */
  | 'level'
  | 'hour'
  /** seconds: stall, shock, jam */
  | 'moment'
  /** more than 10,000 times, or reversing */
  | 'repeated';

/** Where a stress pulls: along the layers, or so that they open. */
export type Direction = 'plane' | 'across';

/** Hours of the durations that stand; five years stand for "years". */
export const HOURS = { years: 43_800, 'thousand-hours': 1000, level: 1000, hour: 1 } as const;

/** Temperature at which strengths are given [°C]. */
export const ROOM = 23;

/** How heat takes strength from a plastic: a glass fades towards its glass transition, others by an exponential. */
export type HeatLoss =
  | { readonly glass: number }
  | {
      /** fall of the standing and of the short strength by 1/e [K] */
      readonly standing: number;
      readonly moment: number;
    };

/** Figures of a printed plastic from which everything that it bears follows. */
export interface Plastic {
  /** MPa at 23 °C, in seconds, along the layers and across them */
  readonly tensile: number;
  readonly tensileAcross: number;
  /** MPa at 23 °C, in seconds */
  readonly shear: number;
  /** MPa at 23 °C, in seconds, pressed all around, of a soft plastic that sinks before 1.2 times its tensile strength */
  readonly bearing?: number;
  /** MPa at 23 °C */
  readonly modulus: number;
  readonly heat: HeatLoss;
  /** °C above which nothing may stand on it */
  readonly standingLimit: number;
  /** shares of the strength that it bears for an hour, 1,000 hours, years */
  readonly shares: { readonly hour: number; readonly thousandHours: number; readonly years: number };
  /** share of its modulus after an hour, exponent of the fall with hours, strain that it takes for good */
  readonly creep: { readonly hour: number; readonly exponent: number; readonly strain: number };
  /** [°C, share of the modulus at 23 °C], rising temperatures */
  readonly stiffness: readonly (readonly [temperature: number, share: number])[];
}
