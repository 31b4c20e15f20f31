import { nutPocketReach } from '../common/clamp.js';
import { heldWalls } from '../common/hub-walls.js';
import type { Wall } from '../common/walls.js';
import { boreEnd, type CollarPlan } from './plan.js';

/** Every wall of a collar. Sizes of one kind. */
export function collarWalls(plan: CollarPlan): Wall[] {
  const { outside, bore, slit, clamp, length } = plan;
  const held = { outside, bore, clamp, slit: { width: slit, length, web: false } };
  return [...heldWalls(held), ...ownWalls(plan), { where: 'length', size: boreEnd(plan) }];
}

/** Those beside pin and lip, and over the upper pocket. */
export function ownWalls(plan: CollarPlan): Wall[] {
  const { outside, clamp, pin, lip } = plan;
  const end = boreEnd(plan);
  const pocket = clamp.washers ? Math.max(clamp.head, clamp.nut) : clamp.head;
  return [
    { where: 'pocket to the upper face', size: end - clamp.heights.at(-1)! - pocket / 2 },
    ...(pin
      ? [
          { where: 'head pocket to the pin', size: clamp.offset - clamp.head / 2 - pin.hole / 2 },
          { where: 'nut pocket to the pin', size: clamp.offset - nutPocketReach(clamp) - pin.hole / 2 },
          { where: 'pin to the ends', size: Math.min(pin.height, end - pin.height) - pin.hole / 2 },
        ]
      : []),
    ...(lip ? [{ where: 'lip of the bearing', size: (outside - lip.diameter) / 2 }] : []),
  ];
}
