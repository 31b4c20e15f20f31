import { type NutPocket, nutPocketReach } from '../../common/bought-nut.js';
import type { NutSizes } from '../nut-sizes.js';
import { besideBore } from '../walls.js';
import type { PinHoles } from './pin-holes.js';

type Point = readonly [number, number];

/** From holes along the axis to the joint of the halves, and to the pins across it. */
export function holesToJoint({ radius, offset, reach }: PinHoles, centres: readonly Point[], opening: number): number {
  const walls = centres.map(([x, y]) => {
    const toPin = Math.hypot(Math.abs(x) - offset, Math.max(0, Math.abs(y) - reach));
    return Math.min(Math.abs(y), toPin - radius);
  });
  return Math.min(...walls) - opening;
}

/** From the bore of a pin to what is bored on the axis. */
export function pinToBore({ offset, radius }: Pick<PinHoles, 'offset' | 'radius'>, boreRadius: number): number {
  return offset - radius - boreRadius;
}

/** From the corners of a bought nut to the outside of the body, and to holes through it. */
export function aroundNut(
  pocket: Pick<NutPocket, 'shape' | 'acrossFlats'>,
  { body, flange }: Pick<NutSizes, 'body' | 'flange'>,
  { centres, opening }: { readonly centres: readonly Point[]; readonly opening: number },
): number {
  const reach = nutPocketReach(pocket);
  const beside = flange ? [] : centres.map((centre) => Math.hypot(...centre) - opening - reach);
  return Math.min(besideBore({ body }, reach), ...beside);
}
