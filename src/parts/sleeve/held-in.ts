import { ROOM } from '../../mechanics/strength/plastic.js';
import type { HeldView } from '../common/held.js';
import type { SleeveDesign } from './dimensions.js';
import { webOf } from './plan.js';

/** Both ends of a clamp sleeve as they are held; undefined for a bush, which holds nothing by itself. */
export function heldIn(design: SleeveDesign): HeldView | undefined {
  const { ends, finished, demand, material, printer, retighten, reversing, temperature } = design;
  if (!demand) return undefined;
  const { length, bores } = finished;
  const web = webOf(finished);
  const held = ends.map((end, i) => {
    const [clamp, { bore, depth }] = [finished.clamps[i]!, bores[i]!];
    // heights of the upper clamp counted from its own end; each end closes its half of the web, which is slit too
    const heights = i === 0 ? clamp.heights : clamp.heights.map((height) => length - height);
    const slit = { width: finished.slit, length: depth + web / 2, web: false };
    return {
      ...end,
      bore,
      outside: finished.outside,
      slit,
      clamp: { ...clamp, heights },
      temperature: temperature ?? { at: ROOM, known: false },
    };
  });
  return { held, demand, retighten, reversing, material, printer };
}
