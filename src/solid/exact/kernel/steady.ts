import { type Placement, placementMatrix } from '../../mesh.js';
import type { OcShape, Session } from './session.js';

/** Numbers are rounded before the kernel, since the last digits of sines differ between engines, mm. */
export function steady(value: number): number {
  return Math.round(value * 1e9) / 1e9 + 0;
}

/** A placement as the kernel takes it. */
export function locationOf({ oc, keep }: Session, place: Placement): OcShape {
  const trsf = keep(new oc.gp_Trsf());
  trsf.SetValues(...placementMatrix(place).map(steady));
  return keep(new oc.TopLoc_Location(trsf));
}
