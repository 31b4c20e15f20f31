import type { AskedView, Companion, HoleRow, Letter, PartViews, Point, SizeMark, Stroke } from '../../part-views.js';

/** A threaded stretch of the bore with the cones at its ends. */
export interface Threaded {
  readonly bottom: number;
  readonly top: number;
}

/** What a family adds to a view by convention. */
interface Added {
  readonly strokes: readonly Stroke[];
  readonly sizes: readonly SizeMark[];
}

/** How a nut of one family is drawn otherwise than a plain one. */
export interface Member {
  /** directions in which the upper and the lower half of the section are cut [degrees] */
  readonly planes: readonly [number, number];
  /** direction in which pictures are cut, where it is not the upper half's */
  readonly cutTowards?: number;
  /** true where a slit opens the round body in the section, so that its diameter is seen from the end only */
  readonly isSlit?: boolean;
  /** threaded stretches: the working one first; none in a holder */
  readonly threads: readonly Threaded[];
  /** of the section */
  readonly side: Added & { readonly letters?: readonly Letter[]; readonly hidden?: readonly string[] };
  /** of the end view */
  readonly end: Added & { readonly title?: string };
  /** bodies that the end view leaves out, by their names */
  readonly notInEnd?: readonly string[];
  readonly further: readonly AskedView[];
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
