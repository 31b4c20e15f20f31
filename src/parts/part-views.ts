import type { Mesh, Placement } from '../solid/mesh.js';

/** A point of a drawing, x to the right and y upwards [mm of the part]. */
export type Point = readonly [number, number];

/** How a line is drawn: outline thick, the rest thin; hidden dashed, centre in chains. */
export type LineKind = 'outline' | 'thin' | 'hidden' | 'centre';

/** A piece of a drawing. Angles in degrees, counter-clockwise from the right. */
export type Stroke =
  | { readonly kind: 'path'; readonly line: LineKind; readonly points: readonly Point[]; readonly closed?: boolean }
  | { readonly kind: 'circle'; readonly line: LineKind; readonly center: Point; readonly radius: number }
  | {
      readonly kind: 'arc';
      readonly line: LineKind;
      readonly center: Point;
      readonly radius: number;
      readonly from: number;
      readonly to: number;
    };

/** A dimension: what is stated, and where it stands. */
export interface SizeMark {
  /** its name in the report; inside a group `group.name` */
  readonly name: string;
  readonly value: number;
  /** half-width that a finished size must be expected within [mm] */
  readonly spread?: number;
  /** before the figure, such as `⌀`, `□` or `4 × ⌀` */
  readonly sign?: string;
  /** after the figure, in words */
  readonly after?: string;
  /** ends of what is measured; for a leader its circle's middle, and the point on the circle it leads to */
  readonly from: Point;
  readonly to: Point;
  /**
   * where the dimension line stands beside the view: `above` and `below` measure along x, `left` and `right` along y; a
   * `leader` leads right, a `riser` straight up from features that stand in a row
   */
  readonly side: 'below' | 'above' | 'left' | 'right' | 'leader' | 'riser';
}

/** Letters in a view, such as those of a section plane or the numbers of holes. */
export interface Letter {
  readonly at: Point;
  readonly text: string;
  /** direction in which the letter stands clear of its point; unit vector, or 0 for a letter on its point */
  readonly away: Point;
  /** a number of a hole or the like: smaller, and nearer to its point */
  readonly small?: true;
}

/** One view of a part. */
export interface DrawnView {
  readonly title: string;
  readonly strokes: readonly Stroke[];
  /** cut material, each region with its holes by the even-odd rule */
  readonly hatched: readonly (readonly (readonly Point[])[])[];
  /** cut material of a second body that touches the first: hatched the other way */
  readonly crossHatched?: readonly (readonly (readonly Point[])[])[];
  readonly sizes: readonly SizeMark[];
  readonly letters: readonly Letter[];
}

/** A row of the hole table. */
export interface HoleRow {
  readonly label: string;
  readonly at: Point;
  /** height of its middle, where it lies across the axis */
  readonly height?: number;
  readonly diameter: number;
  /** what goes through it, and how */
  readonly note: string;
}

/** Something that works with the part and is shown with it: a screw, a shaft. Closed mesh, placed as in use [mm]. */
export interface Companion {
  readonly name: string;
  readonly mesh: Mesh;
}

/**
 * What drawing, picture and page show of a part besides its mesh: plain data, worked out from the dimensions.
 *
 * How a kind joins: give its `PartKind` a function `views(design, sizes)` that returns this for the finished or for the
 * printed sizes. `side` is the section with the part's axis lying and +Z to the left; `end` is seen from +Z; `other`
 * from −Z, +X to the left, where that end has something of its own; `further` views stand apart from these. Each
 * `SizeMark` takes its value from `design.dimensions` under the same name. A part of several bodies says in `inUse`
 * where each stands when the part is put together, and in `apart` how far each moves when the view is pulled apart.
 */
export interface PartViews {
  readonly side: DrawnView;
  readonly end: DrawnView;
  readonly other?: DrawnView;
  readonly further?: readonly DrawnView[];
  readonly holes: readonly HoleRow[];
  /** further lines for the drawing, such as the thread in words */
  readonly notes: readonly string[];
  readonly material: string;
  readonly companions: readonly Companion[];
  /** where each body, by its name, stands in use, moved from where it was modelled; the files keep it as modelled */
  readonly inUse?: Readonly<Record<string, Placement>>;
  /** shift of each body by its name when pulled apart [mm] */
  readonly apart?: Readonly<Record<string, readonly [number, number, number]>>;
  /** direction from the axis in which the section shows most, counter-clockwise from +X [degrees] */
  readonly cutTowards: number;
}

/** Which sizes a drawing states: those in use, or those in the file. */
export type SizeChoice = 'finished' | 'printed';

/** All views of a part. */
export function drawnViews({
  side,
  end,
  other,
  further = [],
}: Pick<PartViews, 'side' | 'end' | 'other' | 'further'>): readonly DrawnView[] {
  return [side, end, ...(other ? [other] : []), ...further];
}
