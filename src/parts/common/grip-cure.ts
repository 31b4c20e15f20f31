import type { Material } from '../../presets/material.js';
import type { FastenerSize } from '../../standards/fasteners/sizes.js';
import { plain } from '../../units/format.js';
import { type Bore, boreReach, type Shaft } from './bore.js';
import { clampHeights, leastClampRadius } from './clamp.js';
import { type Grip, gripOf } from './grip.js';

const TRIED: readonly (readonly [FastenerSize, number])[] = [
  ['M3', 1],
  ['M3', 2],
  ['M4', 1],
  ['M4', 2],
  ['M5', 1],
  ['M5', 2],
  ['M6', 2],
];

/** A grip that holds too little. */
export interface WeakGrip {
  readonly grip: Grip;
  readonly shaft: Shaft;
  readonly bore: Bore;
  readonly engagement: number;
  readonly outside: number;
  readonly torque: number;
  readonly material: Material;
}

/** What would hold the torque: other clamp screws with the outside they need, or no printed hub at all. */
export function gripCure({ grip, shaft, bore, engagement, outside, torque, material }: WeakGrip): string {
  for (const [screw, count] of TRIED) {
    const { length } = clampHeights(screw, count);
    const held = gripOf({ ...grip, clamp: { screw, count } }, shaft, Math.max(engagement, length), material).total;
    if (held < torque) continue;
    const least = 2 * leastClampRadius(boreReach(bore).slit, screw);
    const larger = least > outside + 1e-9 ? `, with an outside of ${plain(least)} mm or more` : '';
    return `${count === 1 ? 'one' : 'two'} ${screw} clamp screw${count === 1 ? '' : 's'} would hold ${plain(held, 0)} N·mm${larger}`;
  }
  const flat = shaft.form === 'round' ? ', a shaft with a flat or a key' : '';
  return `no clamp of ${material.name} up to two M6 holds it on ${plain(shaft.diameter.likely, 2)} mm: use metal hubs with the printed insert, a thicker shaft${flat}, or a stronger material`;
}
