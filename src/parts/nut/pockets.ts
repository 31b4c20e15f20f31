import { socketCapScrew } from '../../standards/fasteners/cap-screw.js';
import { hexNut } from '../../standards/fasteners/nuts.js';
import { heatSetBore } from '../../standards/fasteners/plastic-holes.js';
import type { Holes } from './dimensions.js';

/** Room that a pocket leaves around a head, and across the flats of a nut, on the diameter. @source common-practice */
const HEAD_ROOM = 0.5;
const NUT_ROOM = 0.2;

/** A pocket beside a hole, finished sizes. */
export type Pocket =
  | { readonly kind: 'round'; readonly side: 'body' | 'flange'; readonly diameter: number; readonly depth: number }
  | {
      readonly kind: 'hexagon';
      readonly side: 'body' | 'flange';
      readonly acrossFlats: number;
      readonly depth: number;
    };

/** The pocket that a joint needs, or undefined for a plain hole. A nut sits opposite the head. */
export function pocketOf({ joint, head, screw }: Holes): Pocket | undefined {
  if (screw === undefined || joint === 'through' || joint === 'insert') return undefined;
  if (joint === 'counterbore') {
    const { headDiameterKnurled, headHeight } = socketCapScrew(screw);
    return {
      kind: 'round',
      side: head === 'flange' ? 'flange' : 'body',
      diameter: headDiameterKnurled + HEAD_ROOM,
      depth: headHeight,
    };
  }
  const { acrossFlats, height } = hexNut(screw);
  return {
    kind: 'hexagon',
    side: head === 'flange' ? 'body' : 'flange',
    acrossFlats: acrossFlats + NUT_ROOM,
    depth: height,
  };
}

/** Diameter of the hole itself: a heat-set insert wants its own bore. */
export function boreOf(holes: Holes): number {
  return holes.joint === 'insert' && holes.screw ? heatSetBore(holes.screw).bore : holes.diameter.likely;
}

/** Radius of the largest opening of a hole anywhere in the plate. */
export function openingRadius(holes: Holes): number {
  const pocket = pocketOf(holes);
  if (!pocket) return boreOf(holes) / 2;
  return pocket.kind === 'round' ? pocket.diameter / 2 : pocket.acrossFlats / Math.sqrt(3);
}

/** Radius that a head, or the washer under it, takes up on the side it sits on; 0 where nothing sits. */
export function headRadius({ head, screw, joint }: Holes): number {
  if (head === 'none' || screw === undefined) return 0;
  const under = joint === 'counterbore' ? 0 : socketCapScrew(screw).headDiameter / 2;
  return joint === 'counterbore' ? socketCapScrew(screw).headDiameterKnurled / 2 + HEAD_ROOM / 2 : under;
}
