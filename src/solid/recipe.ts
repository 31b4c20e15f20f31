import type { LoftLevel } from './convex-loft.js';
import type { Mesh, Placement } from './mesh.js';
import type { Outline } from './outline.js';
import type { ThreadSweep } from './thread-sweep.js';

/** A flat outline raised from one height to another. */
export interface Prism {
  readonly kind: 'prism';
  /** the outer outline first, holes after it; all counter-clockwise, holes inside and apart, mm */
  readonly outlines: readonly [Outline, ...Outline[]];
  /** bottom, mm */
  readonly from: number;
  /** top, mm, above `from` */
  readonly to: number;
}

/** Outlines that may overlap, joined in their plane and raised as one: the strokes of a mark. */
export interface Strokes {
  readonly kind: 'strokes';
  /** all counter-clockwise, at least one, mm */
  readonly outlines: readonly Outline[];
  /** bottom, mm */
  readonly from: number;
  /** top, mm, above `from` */
  readonly to: number;
}

/**
 * A regular polygon that changes its size along the axis: cylinders, cones, chamfers and fillets on round (many
 * sides), square (4) and hexagonal (6) bodies alike.
 */
export interface Lathe {
  readonly kind: 'lathe';
  /** corners of the polygon; for a round body a multiple of 4 */
  readonly sides: number;
  /** true: the radius reaches the flats (bores, and square and hexagonal bodies by half their width); false: the corners */
  readonly circumscribed: boolean;
  /** angle of corner 0 from +X, degrees, default 0; 45 sets a square body's flats along x and y */
  readonly turn?: number;
  /**
   * [radius, z] from bottom to top along the outside, mm. Closed to the axis by flat ends; only the first and the
   * last radius may be 0.
   */
  readonly contour: readonly (readonly [number, number])[];
  /** pieces of the contour, by the index of the point they start at, that only break an edge or lead into a bore */
  readonly broken?: readonly number[];
}

/** Levels of a loft that stand for a fillet, from the index of the first to that of the last. */
export interface LoftRound {
  readonly from: number;
  readonly to: number;
  /** where it is an arc of a circle that begins past its first level: its beginning and its centre, as levels */
  readonly arc?: { readonly begins: LoftLevel; readonly center: LoftLevel };
}

/** A convex outline raised through levels, its sides moved out or in at each. */
export interface Loft {
  readonly kind: 'loft';
  readonly outline: Outline;
  readonly levels: readonly LoftLevel[];
  /** runs of levels that stand for a fillet */
  readonly rounds?: readonly LoftRound[];
  /** steps, by the index of the level they start at, that only break an edge or lead into a bore */
  readonly broken?: readonly number[];
}

/** What a solid is made of, as plain data: it can be stored, compared and sent to a worker. */
export type Shape =
  | Prism
  | Strokes
  | Lathe
  | Loft
  | { readonly kind: 'thread'; readonly thread: ThreadSweep }
  | { readonly kind: 'mesh'; readonly mesh: Mesh }
  /** all together; they must overlap, never only touch */
  | { readonly kind: 'union'; readonly of: readonly Shape[] }
  /** the first less all others; cutters overshoot */
  | { readonly kind: 'difference'; readonly of: readonly Shape[] }
  /** what all have in common */
  | { readonly kind: 'intersection'; readonly of: readonly Shape[] }
  | ({ readonly kind: 'moved'; readonly shape: Shape } & Placement)
  | Feature;

/** A shape by what it is for, so that a drawing can choose it; one inside another keeps its own name. */
export interface Feature {
  readonly kind: 'feature';
  readonly name: string;
  readonly shape: Shape;
}

/** A recipe without the features of some names. */
export function withoutFeatures(shape: Shape, names: readonly string[]): Shape {
  if (shape.kind === 'moved' || shape.kind === 'feature') {
    const inner = withoutFeatures(shape.shape, names);
    return inner === shape.shape ? shape : { ...shape, shape: inner };
  }
  if (!('of' in shape)) return shape;
  const kept = shape.of.filter((part) => part.kind !== 'feature' || !names.includes(part.name));
  const of = kept.map((part) => withoutFeatures(part, names));
  return of.length === shape.of.length && of.every((part, i) => part === shape.of[i]) ? shape : { ...shape, of };
}

/** Whether a screw thread is anywhere in a recipe. */
export function hasThread(shape: Shape): boolean {
  if (shape.kind === 'moved' || shape.kind === 'feature') return hasThread(shape.shape);
  return 'of' in shape ? shape.of.some(hasThread) : shape.kind === 'thread';
}

/** One body of a part: its shape before it is fused, and what it is printed from. */
export interface BodyRecipe {
  readonly name: string;
  readonly material: string;
  readonly shape: Shape;
}

/**
 * A cylinder as a lathe.
 *
 * @param cylinder.radius         of the circle meant                                [mm]
 * @param cylinder.sides          corners, a multiple of 4                           [-]
 * @param cylinder.circumscribed  true for bores, false for outsides
 * @param cylinder.from           bottom                                             [mm]
 * @param cylinder.to             top                                                [mm]
 * @returns the shape
 * @example cylinder({ radius: 5, sides: 48, circumscribed: false, from: 0, to: 10 }).contour // [[5, 0], [5, 10]]
 */
export function cylinder(cylinder: {
  readonly radius: number;
  readonly sides: number;
  readonly circumscribed: boolean;
  readonly from: number;
  readonly to: number;
}): Lathe {
  const { radius, sides, circumscribed, from, to } = cylinder;
  return {
    kind: 'lathe',
    sides,
    circumscribed,
    contour: [
      [radius, from],
      [radius, to],
    ],
  };
}
