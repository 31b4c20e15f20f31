import { clipped, insideSides, sidesOf } from '../../solid/convex.js';
import { circleOutline, type Outline, rectangleOutline } from '../../solid/outline.js';
import { onceFor } from '../../units/once.js';
import type { Point } from './plan.js';

/** The nut on its seat, as far as others must keep clear of it. */
export interface SeatedNut {
  readonly seat: 'outside' | 'carriage';
  /** diameter of a round flange without flats */
  readonly roundFlange?: number;
  /** distance to the flange's edge at no turn; negative outside */
  readonly insideFlange: (point: Point) => number;
  /** the nut can be fitted when the plate already sits on the carriage */
  readonly fitsLast: boolean;
  /** the heads or nuts of its screws stand on the outer side */
  readonly headsOutside: boolean;
  /** nuts or heads stand proud of the face that lies on the carriage */
  readonly hardwareOnCarriageFace: boolean;
}

/** A flange's sizes as measured. */
export interface FlangeSizes {
  readonly shape: 'round' | 'square' | 'rectangular';
  readonly size: readonly [number, number];
  readonly flats?: number;
}

/** Across a flange where it is widest: of a round one its diameter, of others over their corners. */
export function widest({ shape, size }: FlangeSizes): number {
  return shape === 'round' ? size[0] : Math.hypot(...size);
}

/** The flange drawn, at no turn. */
export function flangeShape({ shape, size, flats }: FlangeSizes): Outline {
  const plain = shape === 'round' ? circleOutline({ radius: size[0] / 2, sides: 360 }) : rectangleOutline({ size });
  if (flats === undefined) return plain;
  return clipped(clipped(plain, [0, 1, flats / 2]), [0, -1, flats / 2]);
}

/** Distance of a point to the flange's edge; negative outside, where it may be too small but never has the wrong sign. */
export function insideFlangeOf(flange: FlangeSizes): (point: Point) => number {
  return (point) => insideSides(flangeSides(flange), point);
}

/** Every turn and every joint that is tried asks about one flange. */
const flangeSides = onceFor((flange: FlangeSizes) => sidesOf(flangeShape(flange)));
