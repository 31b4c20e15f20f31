import { heldWalls } from '../common/hub-walls.js';
import { thinnest, type Wall } from '../common/walls.js';
import { type SleevePlan, webOf } from './plan.js';

/** The thinnest wall of a sleeve by arithmetic: beside bores, pockets and slit, between its two ends, and of its web. Sizes of one kind. */
export function leastSleeveWall(plan: SleevePlan): Wall {
  const { outside, length, slit, bores, clamps } = plan;
  const ends = bores.flatMap((held, i) => {
    const clamp = clamps[i];
    const fromEnd = (height: number) => (i === 0 ? height : length - height);
    return heldWalls({
      outside,
      bore: held.bore,
      slit: { width: slit, length: held.depth, web: false },
      ...(clamp ? { clamp: { ...clamp, heights: clamp.heights.map(fromEnd) } } : {}),
    });
  });
  return thinnest([
    ...ends,
    { where: 'length', size: length },
    ...(bores[1] ? [{ where: 'web between the bores', size: webOf(plan) }] : []),
  ]);
}
