import type { Outline } from '../../../solid/outline.js';
import type { Companion, DrawnView, HoleRow, Letter, PartViews, Point, SizeMark, Stroke } from '../../part-views.js';

/** A threaded stretch of the bore with the cones at its ends. */
export interface Threaded {
  readonly bottom: number;
  readonly top: number;
}

/** Added to the body and cut from it where a half-plane meets them: loops [z, r]. */
export interface Faces {
  readonly added: readonly Outline[];
  readonly cut: readonly Outline[];
}

/** How a nut of one family is drawn otherwise than a plain one. */
export interface Member {
  /** directions in which the upper and the lower half of the section are cut [degrees] */
  readonly planes: readonly [number, number];
  /** direction in which pictures are cut, where it is not the upper half's */
  readonly cutTowards?: number;
  /** threaded stretches: the working one first; none in a holder */
  readonly threads: readonly Threaded[];
  /** what the body has more in a direction */
  readonly faces: (angle: number) => Faces;
  /** further bodies that are cut, hatched the other way */
  readonly others: (angle: number) => readonly Faces[];
  /** true where the lower half is a body of its own, hatched the other way */
  readonly inHalves?: boolean;
  /** of the section */
  readonly side: {
    readonly strokes: readonly Stroke[];
    readonly sizes: readonly SizeMark[];
    readonly letters?: readonly Letter[];
  };
  /** of the end view; `open` is cut from the outlines of body and plate */
  readonly end: {
    readonly strokes: readonly Stroke[];
    readonly sizes: readonly SizeMark[];
    readonly title?: string;
    readonly open?: { readonly body?: readonly Outline[]; readonly plate?: readonly Outline[] };
  };
  readonly further: readonly DrawnView[];
  readonly rows: readonly HoleRow[];
  readonly notes: readonly string[];
  readonly companions: readonly Companion[];
  /** highest point of the parts put together */
  readonly top: number;
  readonly apart?: NonNullable<PartViews['apart']>;
}

/** A nut without anything more. */
export function plainMember(angle: number, { bottom, top }: Threaded): Member {
  return {
    planes: [angle, angle + 180],
    threads: [{ bottom, top }],
    faces: () => ({ added: [], cut: [] }),
    others: () => [],
    side: { strokes: [], sizes: [] },
    end: { strokes: [], sizes: [] },
    further: [],
    rows: [],
    notes: [],
    companions: [],
    top,
  };
}

/** Place on the paper of [z, r] on one side of the axis. */
export function onSide(side: 1 | -1): (point: Point) => Point {
  return ([z, r]) => [-z, side * r];
}
