import type { Stroke } from '../../part-views.js';
import { type Bore, boreReach } from '../bore.js';
import { boreSeen } from './bore-seen.js';
import { arc, line, ring } from './strokes.js';

/** A round body seen from an end. */
export interface RoundEnd {
  readonly radius: number;
  /** at the outside, and at the mouth of the bore */
  readonly chamfer: number;
  readonly bore: Bore;
  /** width of a slit on +X; 0 for none */
  readonly slit: number;
}

/** End of a hub or sleeve seen along its axis: outside, bore and the edges of their chamfers, open at the slit. */
export function roundEndSeen({ radius, chamfer, bore, slit }: RoundEnd): Stroke[] {
  const half = slit / 2;
  const circle = (r: number): Stroke => {
    if (half === 0) return ring('outline', [0, 0], r);
    const open = (Math.asin(Math.min(1, half / r)) * 180) / Math.PI;
    return arc('outline', [0, 0], r, open, 360 - open);
  };
  const near = slitFoot(bore, half);
  const wall = Math.sqrt(radius ** 2 - half ** 2);
  const walls = half > 0 ? [half, -half].map((y) => line('outline', [near, y], [wall, y])) : [];
  return [
    circle(radius),
    ...(chamfer > 0 ? [circle(radius - chamfer), ...boreSeen(wider(bore, chamfer), 'outline', slit)] : []),
    ...boreSeen(bore, 'outline', slit),
    ...walls,
  ];
}

/** Where the walls of a slit leave the bore. */
function slitFoot(bore: Bore, half: number): number {
  if (bore.form === 'hexagon' || bore.form === 'double-d') return boreReach(bore).slit;
  return Math.sqrt(Math.max(0, (bore.diameter / 2) ** 2 - half ** 2));
}

/** A bore whose sides are moved out, as at its mouth; a keyway is cut straight through that. */
function wider({ form, diameter, across, key }: Bore, by: number): Bore {
  return {
    form,
    diameter: diameter + 2 * by,
    ...(across === undefined ? {} : { across: across + 2 * by }),
    ...(key && key.depth > by ? { key: { width: key.width, depth: key.depth - by } } : {}),
  };
}
