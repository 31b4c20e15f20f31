import { besideScrews } from '../../mechanics/bolt/beside-screws.js';
import { sectionOf } from '../../mechanics/flange/section.js';
import { stripSag } from '../../mechanics/flange/strip-sag.js';
import type { HeldSlab, SlabBending, Strip } from './held-slab.js';
import { materialAt } from './slab.js';

/** Cuts tried on the way from where the load comes in to the line of the screws. */
const STATIONS = 8;

/**
 * How a slab bends that tips about its edge, since the load that pulls it off passes beside the line of its screws: on the way from
 * load to line a cut bends with its whole distance from the load, as wide as the load spreads by 45°.
 *
 *     M = F·s        σ = K·M / Z,  b = D + 2·(s − r), no wider than the slab, less what is cut out of it
 *
 * @param p.across D, of what brings the load in; r is how far it reaches, mm
 * @param p.notch  K, what the corner adds where the load comes in; 1 at every other cut
 * @returns undefined where the screws stand around the load, or their line runs under what brings it in
 */
export function tipSlab(
  { slab, supports, reach }: Pick<HeldSlab, 'slab' | 'supports' | 'reach'>,
  { across, notch = 1 }: { readonly across: number; readonly notch?: number },
): SlabBending | undefined {
  const beside = besideScrews(supports.map(({ at }) => at));
  if (!beside) return undefined;
  const { along, distance: last } = beside;
  const first = reach(along);
  if (last <= first) return undefined;
  const cuts = Array.from({ length: STATIONS + 1 }, (_, i): Strip => {
    const distance = first + ((last - first) * i) / STATIONS;
    const half = across / 2 + distance - first;
    const section = sectionOf(materialAt(slab, { along, distance }, [[-half, half]]));
    const corner = i === 0 ? notch : 1;
    const stress = section.modulus === 0 ? Infinity : (corner * distance) / section.modulus;
    return { share: 1, arm: distance, section, corner, along, distance, stress };
  });
  return { strip: cuts.reduce((worst, next) => (next.stress > worst.stress ? next : worst)), ...sagOf(cuts) };
}

/** Of the load against the line of the screws, by the lesser section of both ends of every step. */
function sagOf(cuts: readonly Strip[]): Pick<SlabBending, 'sag' | 'lean'> {
  const pieces = cuts.slice(1).map(({ distance, section }, i) => {
    const before = cuts[i]!;
    const lesser = before.section.inertia < section.inertia ? before.section : section;
    return { from: before.distance, to: distance, area: lesser.area, inertia: lesser.inertia };
  });
  if (pieces.some(({ area }) => area === 0)) return { sag: Infinity, lean: Infinity };
  return stripSag({ force: 1, modulus: 1, pieces });
}
