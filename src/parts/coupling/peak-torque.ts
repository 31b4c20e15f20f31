import { ROUGH_DRIVE, SHOCK_FACTORS, type Shock, startFactor } from '../../mechanics/coupling/service-factors.js';

/** How a drive works; what is not told counts as the worst. */
interface Drive {
  /** an hour */
  readonly starts?: number | undefined;
  readonly shock?: Shock | undefined;
}

/** How much more than evenly starts and shocks ask of a coupling. */
export function driveFactors({ starts = ROUGH_DRIVE.starts, shock = ROUGH_DRIVE.shock }: Drive) {
  return { start: startFactor(starts), shock: SHOCK_FACTORS[shock] };
}

/** Torque of start, stall and shock, for a moment [N·mm]. */
export function peakTorque({ torque, ...drive }: Drive & { readonly torque: number }): number {
  const { start, shock } = driveFactors(drive);
  return torque * Math.max(start, shock);
}
