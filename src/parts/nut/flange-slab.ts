import type { Opening, Slab } from '../common/slab.js';
import type { NutDesign } from './dimensions.js';
import { flangeOutline } from './plan.js';
import { boreOf, openingRadius, pocketOf } from './pockets.js';

/** Fine enough for a section whose stress a limit hangs on; a drawn outside is never wider than meant, mm. */
const CHORD = 0.02;

/** The flange as it bends beside the body, finished sizes, its own face at z = 0. */
export function flangeSlab({ finished: { flange }, holes }: Pick<NutDesign, 'finished' | 'holes'>): Slab | undefined {
  if (!flange) return undefined;
  const { thickness } = flange;
  return {
    outline: flangeOutline(flange, CHORD),
    thickness,
    openings: holes ? holes.centres.flatMap((at) => openingsOf(at, holes, thickness)) : [],
  };
}

function openingsOf(
  at: readonly [number, number],
  holes: NonNullable<NutDesign['holes']>,
  thickness: number,
): Opening[] {
  const bore: Opening = { shape: { at, radius: boreOf(holes) / 2 }, from: 0, to: thickness };
  const sunk = pocketOf(holes);
  if (!sunk) return [bore];
  const { depth } = sunk.pocket;
  const span = sunk.side === 'flange' ? { from: 0, to: depth } : { from: thickness - depth, to: thickness };
  return [bore, { shape: { at, radius: openingRadius(holes) }, ...span }];
}
