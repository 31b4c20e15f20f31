import { pocketRadius } from '../common/joints.js';
import { printSizes } from '../common/print-sizes.js';
import { type Roof, takesRoof } from '../common/roof.js';
import type { PrintAdvice } from '../part-kind.js';
import type { NutDesign } from './dimensions.js';
import { boreOf, pocketOf } from './pockets.js';

const CLEAN = 'the flank that carries the load then faces up and comes out clean';
/** A flange that ends so near the body's end lies on the bed [mm]. */
const FLUSH = 0.01;

/** Which end of the nut is on top while it is printed. */
export type TopFace = 'body-end' | 'flange-face';

/**
 * The end that goes up on the bed. A nut that rests on a vertical screw bears with the lower flanks of its teeth; they
 * come out clean when they face up on the bed, so such a nut is printed upside down. Where nothing is known of the
 * mounting, the flange lies on the bed.
 */
export function topFace({ duty, mounting, finished }: NutDesign): TopFace {
  const loaded = duty.axis === 'vertical' && mounting !== undefined && finished.flange !== undefined;
  return loaded && mounting === 'flange-down' ? 'flange-face' : 'body-end';
}

/** Whether the way up was worked out from the mounting, and so is marked on the part. */
export function isMarked({ duty, mounting, finished }: NutDesign): boolean {
  return duty.axis === 'vertical' && mounting !== undefined && finished.flange !== undefined;
}

/** Whether the pockets of the holes open on the bed. */
export function opensOnBed(design: NutDesign): boolean {
  const { holes, family } = design;
  const sunk = holes && pocketOf(holes);
  const turned = family?.kind === 'holder' ? family.opens === 'face' : topFace(design) === 'flange-face';
  return sunk !== undefined && (sunk.side === 'flange') !== turned;
}

/** What the plate around the holes leaves over a pocket, as printed; roofs aside [mm]. */
export function pocketFloor({ holes, printed, printer, material }: NutDesign): number | undefined {
  const sunk = holes && pocketOf(holes);
  if (!sunk) return undefined;
  const plate = printed.flange?.thickness ?? printed.length;
  return plate - printSizes(material, printer).along(sunk.pocket.depth);
}

/** The roof over its pockets as they are printed: none where they open upwards, or too little stands over them. */
export function pocketRoof(design: NutDesign): Roof | undefined {
  const { holes, printer } = design;
  const floor = pocketFloor(design);
  if (!holes?.roof || floor === undefined || !opensOnBed(design)) return undefined;
  const roof = { kind: holes.roof, layer: printer.layer };
  return takesRoof(floor, roof) ? roof : undefined;
}

/** How far ceilings of pockets that open on the bed hang over their holes; 0 where none does, or where they are roofed [mm]. */
export function hangingLedge(design: NutDesign): number {
  const { holes } = design;
  if (!holes || !opensOnBed(design) || pocketRoof(design)) return 0;
  return pocketRadius(pocketOf(holes)!.pocket) - boreOf(holes) / 2;
}

/** The same in words for the report. */
export function printAdvice(design: NutDesign): PrintAdvice {
  const { flange, length } = design.finished;
  const stub = (flange?.offset ?? 0) > 0;
  if (topFace(design) === 'flange-face') {
    const face_up = `${stub ? 'stub' : 'flange face'} up, body end on the bed (turn the file over)`;
    const isFlush = flange !== undefined && flange.offset + flange.thickness > length - FLUSH;
    if (isFlush) return { face_up, why: CLEAN, support: 'none' };
    const instead = stub ? '' : '. Without support: flange on the bed, and chase the thread with the screw';
    return { face_up, why: `${CLEAN}; the flange needs support underneath${instead}`, support: 'needed' };
  }
  const isTold = design.mounting !== undefined && design.duty.axis !== undefined;
  const hint = isTold ? '' : '; say duty.axis and mounting to have the loaded flank face up';
  const why = isMarked(design)
    ? CLEAN
    : `${stub ? 'no flank is known to carry more' : 'prints without support'}${hint}`;
  if (stub)
    return { face_up: 'body end up, stub on the bed', why: `${why}; the flange overhangs the stub`, support: 'needed' };
  return {
    face_up: design.finished.flange ? 'body end up, flange face on the bed' : 'either end',
    why,
    support: 'none',
  };
}
