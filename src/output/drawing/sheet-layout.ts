import type { DrawnViews } from '../../parts/draw-views.js';
import type { DrawnView, Point } from '../../parts/part-views.js';
import type { Paper } from './paper.js';
import { scaleText } from './scale-text.js';
import { type Zone, zoneOf } from './zones.js';

/** ISO 5455, largest first. */
const SCALES = [50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02];
/** Of a view that is no detail. */
const LARGEST = 10;

/** The scale of a view: that of the sheet, or a larger one of a detail. */
function scaleOf({ enlarged }: DrawnView, scale: number): number {
  if (enlarged === undefined) return scale;
  return SCALES.findLast((one) => one >= enlarged - 1e-9 && one > scale) ?? SCALES[0]!;
}

/** Gap between the views' zones. */
const BETWEEN = 8;

/** A view in its place on the paper. */
export interface PlacedView extends Pick<Zone, 'box' | 'beside' | 'start'> {
  readonly view: DrawnView;
  readonly scale: number;
  /** paper place of a point of the view */
  readonly at: (point: Point) => Point;
}

export interface Layout {
  readonly scale: number;
  /** the row of views that belong together, then the further ones */
  readonly views: readonly PlacedView[];
}

/** First angle: what is seen from one side stands on the other; third angle: on the same side. */
export type Projection = 'first' | 'third';

/** Views that share an axis line, or a single one, with their zones. */
interface Group {
  readonly views: readonly DrawnView[];
  readonly zones: readonly Zone[];
  readonly width: number;
  readonly above: number;
  readonly below: number;
}

/** Groups beside each other. */
interface Row {
  readonly groups: readonly Group[];
  readonly width: number;
  readonly height: number;
}

/**
 * Finds the largest standard scale at which all views with their dimensions fit above the title block, and puts them
 * there. The side view has +Z to the left; the end is seen from +Z, so by first angle it stands on the right, by third
 * angle on the left, and the other end opposite. Further views follow in rows.
 *
 * @param views  what is to be drawn
 * @param paper  the sheet
 * @param room   upper and lower edge of the paper that is free for them [mm]
 */
export function layOut(
  views: Pick<DrawnViews, 'side' | 'end' | 'other' | 'further'>,
  projection: Projection,
  paper: Paper,
  room: { readonly top: number; readonly bottom: number } = { top: paper.frame.top, bottom: paper.title.top },
): Layout {
  const { left, right } = paper.frame;
  const size = { left, width: right - left, height: room.bottom - room.top };
  const rowsAt = (scale: number) => rowsOf(groupsOf(views, projection, scale), size.width);
  const scale = SCALES.find((one) => one <= LARGEST && fits(rowsAt(one), size)) ?? SCALES.at(-1)!;
  return { scale, views: placed(rowsAt(scale), scale, { ...room, ...size }) };
}

function groupsOf(
  { side, end, other, further = [] }: Parameters<typeof layOut>[0],
  projection: Projection,
  scale: number,
): Group[] {
  const firstAngle = [...(other ? [other] : []), side, end];
  const row = projection === 'first' ? firstAngle : firstAngle.reverse();
  return [groupOf(row, scale), ...further.map((view) => groupOf([view], scale))];
}

function groupOf(views: readonly DrawnView[], scale: number): Group {
  const zones = views.map((view) => zoneOf(view, scaleOf(view, scale)));
  return {
    views,
    zones,
    width: zones.reduce((sum, { width }) => sum + width, BETWEEN * (zones.length - 1)),
    above: Math.max(...zones.map(({ above }) => above)),
    below: Math.max(...zones.map(({ below }) => below)),
  };
}

function rowsOf(groups: readonly Group[], most: number): Row[] {
  const rows: Row[] = [];
  for (const group of groups) {
    const last = rows.at(-1);
    const height = group.above + group.below;
    if (last && last.width + BETWEEN + group.width <= most) {
      rows[rows.length - 1] = {
        groups: [...last.groups, group],
        width: last.width + BETWEEN + group.width,
        height: Math.max(last.height, height),
      };
    } else rows.push({ groups: [group], width: group.width, height });
  }
  return rows;
}

function fits(rows: readonly Row[], room: { width: number; height: number }): boolean {
  const height = rows.reduce((sum, row) => sum + row.height, 0);
  return height <= room.height && rows.every(({ width }) => width <= room.width);
}

/** Spare paper is shared out evenly around the rows, and left and right of each. */
function placed(
  rows: readonly Row[],
  scale: number,
  room: { left: number; top: number; width: number; height: number },
): PlacedView[] {
  const spare = room.height - rows.reduce((sum, row) => sum + row.height, 0);
  const gap = Math.max(0, spare) / (rows.length + 1);
  let top = room.top;
  return rows.flatMap(({ groups, width, height }) => {
    top += gap;
    let left = room.left + (room.width - width) / 2;
    const views = groups.flatMap(({ views, zones, above }) => {
      const axis = top + above;
      return zones.map(({ box, beside, start, ...zone }, i): PlacedView => {
        const view = views[i]!;
        const own = scaleOf(view, scale);
        const origin = left + zone.left - own * box.min[0];
        left += zone.width + BETWEEN;
        const titled = view.enlarged === undefined ? view : { ...view, title: `${view.title} (${scaleText(own)})` };
        return { view: titled, box, beside, start, scale: own, at: ([x, y]) => [origin + own * x, axis - own * y] };
      });
    });
    top += height;
    return views;
  });
}
