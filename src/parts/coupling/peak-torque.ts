import { SHOCK_FACTORS, type Shock, startFactor } from '../../mechanics/coupling/service-factors.js';

/** Torque of start, stall and shock, for a moment [N·mm]. */
export function peakTorque(p: {
  readonly torque: number;
  readonly starts?: number | undefined;
  readonly shock: Shock;
}): number {
  return p.torque * Math.max(startFactor(p.starts ?? 0), SHOCK_FACTORS[p.shock]);
}
