import type { Drawn, PaperPoint } from '../solid/drawn.js';
import type { Mesh, Placement } from '../solid/mesh.js';
import type { Shape } from '../solid/recipe.js';

/** A point of a drawing, x to the right and y upwards [mm of the part]. */
export type Point = PaperPoint;

/** How a line is drawn: outline thick, the rest thin; hidden dashed, centre in chains. */
export type LineKind = 'outline' | 'thin' | 'hidden' | 'centre';

/** A piece of a drawing. Angles in degrees, counter-clockwise from the right. */
export type Stroke = Drawn & { readonly line: LineKind };

/** A dimension: what is stated, and where it stands. */
export interface SizeMark {
  /** its name in the report; inside a group `group.name` */
  readonly name: string;
  readonly value: number;
  /** field of the sheet that it shows, such as `body.diameter`, or `derived`; filled in by its kind */
  readonly field?: string;
  /** half-width that a finished size must be expected within [mm] */
  readonly spread?: number;
  /** before the figure, such as `⌀`, `□` or `4 × ⌀` */
  readonly sign?: string;
  /** after the figure, in words */
  readonly after?: string;
  /** the same in inches stands beside it, in brackets */
  readonly inches?: true;
  /** ends of what is measured; for a leader its circle's middle, and the point on the circle it leads to */
  readonly from: Point;
  readonly to: Point;
  /** middles of equal circles, or where there is none, points, that its leader may lead to as well */
  readonly alike?: readonly Point[];
  /**
   * where the dimension line stands beside the view: `above` and `below` measure along x, `left` and `right` along y; a
   * `leader` leads to either side, wherever its way is free, a `riser` straight up from features that stand in a row
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
  /** radius of the hole whose middle is the point: the number stands beside it, this way or where fewer lines lie */
  readonly around?: number;
}

/** From where a solid is looked at, or how it is cut. */
export type Sight =
  /** along the axis, from +Z or from −Z */
  | { readonly kind: 'end'; readonly from: 1 | -1 }
  /** across the axis, +Z to the left, the direction of this angle above [degrees] */
  | { readonly kind: 'side'; readonly upwards: number }
  /** cut by two half-planes from the axis, turned into one; by their angles, the upper one first [degrees] */
  | { readonly kind: 'section'; readonly planes: readonly [number, number] }
  /** cut across the axis at a height, seen from +Z [mm] */
  | { readonly kind: 'across'; readonly height: number };

/** Lines of a view that come from the solid. */
export interface SolidLines {
  /** bodies as they stand, at the sizes of the view; where they are cut, hatched by turns one way and the other */
  readonly bodies: readonly Shape[];
  readonly sight: Sight;
  /** features whose edges are drawn where they are hidden, too */
  readonly hidden?: readonly string[];
}

/** A view as its kind asks for it: what comes from the solid, and what convention adds to that. */
export interface AskedView
  extends Pick<DrawnView, 'title' | 'strokes' | 'planes' | 'sizes' | 'letters' | 'enlarged' | 'isAlone' | 'origin'> {
  /** none of a detail of a thread, which is drawn by its sizes */
  readonly solid?: SolidLines;
  readonly hatched?: DrawnView['hatched'];
}

/** One end of a plane in which a section is cut, in the view that shows the plane as a line. */
export interface CuttingPlane {
  readonly letter: string;
  /** where the line leaves the outline */
  readonly at: Point;
  /** the way it runs on from there, and the way the section is looked at; unit vectors */
  readonly away: Point;
  readonly look: Point;
}

/** One view of a part. */
export interface DrawnView {
  readonly title: string;
  /** a detail: drawn at the first standard scale from this on that is above the scale of the other views */
  readonly enlarged?: number;
  /** a further view of a body that stands alone: it takes a sheet of its own where it would be small beside the others */
  readonly isAlone?: true;
  /** from where the hole table counts what this view shows; the axis unless said otherwise */
  readonly origin?: Point;
  readonly planes?: readonly CuttingPlane[];
  /** of a view along the axis: from which of its ends; from −Z, +X is on the left */
  readonly seenFrom?: 1 | -1;
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
  /** what goes through it, and how; lengths with their unit, mm */
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
 * printed sizes. A view says which bodies it shows, from where or how cut; their lines come from the solid. `side` is the section with the part's axis lying and +Z to the left; `end` is seen from +Z; `other`
 * from −Z, +X to the left, where that end has something of its own; `further` views stand apart from these. Each
 * `SizeMark` takes its value from `design.dimensions` under the same name. A part of several bodies says in `inUse`
 * where each stands when the part is put together, and in `apart` how far each moves when the view is pulled apart.
 */
export interface PartViews {
  readonly side: AskedView;
  readonly end: AskedView;
  readonly other?: AskedView;
  readonly further?: readonly AskedView[];
  readonly holes: readonly HoleRow[];
  /** further lines for the drawing, such as the thread in words; lengths with their unit, mm */
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

/** What pictures and pages show of a part besides its mesh. */
export type Staging = Pick<PartViews, 'companions' | 'inUse' | 'apart' | 'cutTowards'>;

/** Which sizes a drawing states: those in use, or those in the file. */
export type SizeChoice = 'finished' | 'printed';

/** All views of a part. */
export function viewsOf<View>({
  side,
  end,
  other,
  further = [],
}: {
  readonly side?: View;
  readonly end: View;
  readonly other?: View;
  readonly further?: readonly View[];
}): readonly View[] {
  return [...(side ? [side] : []), end, ...(other ? [other] : []), ...further];
}
