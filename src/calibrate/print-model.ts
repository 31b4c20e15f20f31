import type { ReadKind } from './feature.js';

/** What a printer with its material does to sizes, as far as a coupon can tell. */
export const PARAMETERS = [
  /** in-plane shrink, mean of both directions, as a fraction */
  'plane',
  /** half of what X shrinks more than Y */
  'skew',
  /** shrink along the print axis */
  'axial',
  /** what every height is off by, mm */
  'height_error',
  /** what a straight wall stands out, both sides together, mm */
  'wall',
  /** spread of the squashed first layer, a side, mm */
  'first_layer',
  /** line of the hole offset: mm at diameter 0, and mm per mm */
  'hole_at_zero',
  'hole_per_mm',
  /** line of the outside offset */
  'post_at_zero',
  'post_per_mm',
] as const;
export type Parameter = (typeof PARAMETERS)[number];

/** A value of each parameter. */
export type PrintFigures = Readonly<Record<Parameter, number>>;

/** What is expected to be read, and how it moves with each parameter; parameters that do not act are left out. */
export interface Predicted {
  readonly value: number;
  readonly slopes: Readonly<Partial<Record<Parameter, number>>>;
}

/** Every figure 0: a printer that prints what was modelled. */
export const TRUE_PRINTER: PrintFigures = {
  plane: 0,
  skew: 0,
  axial: 0,
  height_error: 0,
  wall: 0,
  first_layer: 0,
  hole_at_zero: 0,
  hole_per_mm: 0,
  post_at_zero: 0,
  post_per_mm: 0,
};

/**
 * What calipers read on a feature of a print.
 *
 *     hole, post   D = (m·(1 − s) − a)/(1 + b)
 *     over X, Y    L = m·(1 − s ∓ d) + w          between X, Y   L = m·(1 − s ∓ d) − w
 *     foot         L = m·(1 − s ∓ d) + w + 2·f    height         H = m·(1 − t) + z
 *
 * with s in-plane shrink, d its skew (X shrinks by s + d, Y by s − d), w what straight walls stand out, f the first
 * layer's spread, t axial shrink, z the error of every height, a and b the line of the offset over the finished
 * diameter. Over and between the same blocks w cancels, so their mean tells the shrink alone.
 *
 * @param kind      what is read
 * @param modelled  m  size in the file  [mm]
 * @param at        figures of the printer  [mm, fractions]
 * @returns the reading [mm], and its slopes
 * @source derived: shrink stated on the modelled size, offsets on the finished one
 * @example predictedReading('hole', 8, { ...TRUE_PRINTER, plane: 0.01, hole_at_zero: 0.12 }).value // 7.8
 */
export function predictedReading(kind: ReadKind, modelled: number, at: PrintFigures): Predicted {
  switch (kind) {
    case 'hole': {
      const value = (modelled * (1 - at.plane) - at.hole_at_zero) / (1 + at.hole_per_mm);
      const share = 1 + at.hole_per_mm;
      return { value, slopes: { plane: -modelled / share, hole_at_zero: -1 / share, hole_per_mm: -value / share } };
    }
    case 'post': {
      const value = (modelled * (1 - at.plane) - at.post_at_zero) / (1 + at.post_per_mm);
      const share = 1 + at.post_per_mm;
      return { value, slopes: { plane: -modelled / share, post_at_zero: -1 / share, post_per_mm: -value / share } };
    }
    case 'height':
      return { value: modelled * (1 - at.axial) + at.height_error, slopes: { axial: -modelled, height_error: 1 } };
    default: {
      const side = kind.endsWith('_x') ? 1 : -1;
      const walls = kind.startsWith('between') ? -1 : 1;
      const foot = kind.startsWith('foot') ? 2 : 0;
      const value = modelled * (1 - at.plane - side * at.skew) + walls * at.wall + foot * at.first_layer;
      const slopes = { plane: -modelled, skew: -side * modelled, wall: walls };
      return { value, slopes: foot === 0 ? slopes : { ...slopes, first_layer: foot } };
    }
  }
}
