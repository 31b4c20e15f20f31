import type { PrintAdvice } from '../part-kind.js';
import type { NutDesign } from './dimensions.js';

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

/** The same in words for the report. */
export function printAdvice(design: NutDesign): PrintAdvice {
  const stub = (design.finished.flange?.offset ?? 0) > 0;
  if (topFace(design) === 'flange-face') {
    return {
      face_up: 'flange face up, body end on the bed (turn the file over)',
      why: 'the flank that carries the load then faces up and comes out clean; the flange needs support underneath. Without support: flange on the bed, and chase the thread with the screw',
      support: 'needed',
    };
  }
  const why = isMarked(design)
    ? 'the flank that carries the load then faces up and comes out clean'
    : 'prints without support; say duty.axis and mounting to have the loaded flank face up';
  if (stub)
    return { face_up: 'body end up, stub on the bed', why: `${why}; the flange overhangs the stub`, support: 'needed' };
  return {
    face_up: design.finished.flange ? 'body end up, flange face on the bed' : 'either end',
    why,
    support: 'none',
  };
}
