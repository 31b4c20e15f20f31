import { fault } from '../../units/faults.js';

/** Filament families whose spread differs. */
export type MaterialFamily = 'pla' | 'petg' | 'tpu' | 'abs' | 'asa' | 'pc' | 'pa' | 'pom';

/** What stays uncertain after compensation, as half-widths. */
export interface ResidualSpread {
  /** in-plane and axial shrink, as a fraction [-] */
  readonly shrink: number;
  /** hole offset, diametral [mm] */
  readonly holeOffset: number;
}

const SHRINK_SPREAD: Readonly<Record<MaterialFamily, number>> = {
  pla: 0.002,
  petg: 0.002,
  tpu: 0.002,
  abs: 0.003,
  asa: 0.003,
  pc: 0.003,
  pa: 0.005,
  pom: 0.005,
};

/** Spread of the hole offset, whatever the material; diametral [mm]. */
const HOLE_OFFSET_SPREAD = 0.05;

/**
 * Spread of shrink and hole offset that stays after both were compensated, unless a coupon gave a better figure.
 *
 *     ± 0.2 % PLA, PETG, TPU; ± 0.3 % ABS, ASA, PC; ± 0.5 % PA, POM; hole offset ± 0.05 mm
 *
 * @param family  filament family, lower case
 * @returns half-widths: shrink as a fraction [-], hole offset diametral [mm]
 * @throws InputError  the family is unknown
 * @source common-practice: residual after compensation
 * @example residualSpread('pa') // { shrink: 0.005, holeOffset: 0.05 }
 */
export function residualSpread(family: MaterialFamily): ResidualSpread {
  if (!Object.hasOwn(SHRINK_SPREAD, family)) {
    throw fault('family', family, `must be one of ${Object.keys(SHRINK_SPREAD).join(', ')}`);
  }
  return { shrink: SHRINK_SPREAD[family], holeOffset: HOLE_OFFSET_SPREAD };
}
