import type { DrawnView, Point } from '../../parts/part-views.js';
import type { Paper } from './paper.js';
import type { PlacedView } from './placed-view.js';
import { scaleText } from './scale-text.js';
import type { SheetViews } from './sheets.js';
import { leastZone, type Zone, zoneOf } from './zones.js';

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

/** A view in its place with its leaders. */
export type LaidView = PlacedView & Pick<Zone, 'leaders'>;

export interface Layout {
  readonly scale: number;
  /** the row of views that belong together, then the further ones */
  readonly views: readonly LaidView[];
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

/** The scale of the views, and how large they are lettered. */
interface Size {
  readonly scale: number;
  readonly lettering: number;
}

/** The same, and how the paper is found that a view takes. */
interface ZoneSize extends Size {
  readonly zone: typeof zoneOf;
}

/** Groups above each other. */
interface Stack {
  readonly groups: readonly Group[];
  readonly width: number;
  readonly height: number;
}

/** Stacks beside each other. */
interface Row {
  readonly stacks: readonly Stack[];
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
  views: Pick<SheetViews, 'side' | 'end' | 'other' | 'further'>,
  projection: Projection,
  paper: Paper,
  room: { readonly top: number; readonly bottom: number } = { top: paper.frame.top, bottom: paper.title.top },
): Layout {
  const { left, right } = paper.frame;
  const size = { left, width: right - left, height: room.bottom - room.top };
  const { lettering } = paper;
  const waysAt = (scale: number, zone = zoneOf) =>
    waysOf(groupsOf(views, projection, { scale, lettering, zone }), size.width);
  const mayFit = (scale: number) => waysAt(scale, leastZone).some((rows) => fits(rows, size));
  const fitting = (scale: number) => (mayFit(scale) ? waysAt(scale).find((rows) => fits(rows, size)) : undefined);
  const scale = SCALES.find((one) => one <= LARGEST && fitting(one)) ?? SCALES.at(-1)!;
  const rows = fitting(scale) ?? waysAt(scale)[0]!;
  return { scale, views: placed(rows, { scale, lettering }, { ...room, ...size }) };
}

function groupsOf(
  { side, end, other, further = [] }: Parameters<typeof layOut>[0],
  projection: Projection,
  size: ZoneSize,
): Group[] {
  const firstAngle = [...(other ? [other] : []), ...(side ? [side] : []), end];
  const row = projection === 'first' ? firstAngle : firstAngle.reverse();
  return [groupOf(row, size), ...further.map((view) => groupOf([view], size))];
}

function groupOf(views: readonly DrawnView[], { scale, lettering, zone }: ZoneSize): Group {
  const zones = views.map((view) => zone(view, scaleOf(view, scale) / lettering));
  return {
    views,
    zones,
    width: zones.reduce((sum, { width }) => sum + width, BETWEEN * (zones.length - 1)),
    above: Math.max(...zones.map(({ above }) => above)),
    below: Math.max(...zones.map(({ below }) => below)),
  };
}

/** Ways to set out the groups, the best first: in rows; or beside the first, all others above each other. */
function waysOf([first, ...further]: readonly Group[], most: number): Row[][] {
  const [beside, alone] = [stackOf(further), stackOf([first!])];
  const rows = rowsOf([first!, ...further], most);
  return further.length < 2 ? [rows] : [rows, [rowOf([alone, beside])]];
}

/** Each group goes into the first row that has room for it. */
function rowsOf(groups: readonly Group[], most: number): Row[] {
  const rows: Row[] = [];
  for (const stack of groups.map((group) => stackOf([group]))) {
    const i = rows.findIndex((row) => row.width + BETWEEN + stack.width <= most);
    const row = rows[i];
    if (row) rows[i] = rowOf([...row.stacks, stack]);
    else rows.push(rowOf([stack]));
  }
  return rows;
}

function stackOf(groups: readonly Group[]): Stack {
  return {
    groups,
    width: Math.max(...groups.map(({ width }) => width)),
    height: groups.reduce((sum, { above, below }) => sum + above + below, 0),
  };
}

function rowOf(stacks: readonly Stack[]): Row {
  return {
    stacks,
    width: stacks.reduce((sum, { width }) => sum + width, BETWEEN * (stacks.length - 1)),
    height: Math.max(...stacks.map(({ height }) => height)),
  };
}

function fits(rows: readonly Row[], room: { width: number; height: number }): boolean {
  const height = rows.reduce((sum, row) => sum + row.height, 0);
  return height <= room.height && rows.every(({ width }) => width <= room.width);
}

/** Spare paper is shared out evenly around the rows, and left and right of each. */
function placed(
  rows: readonly Row[],
  { scale, lettering }: Size,
  room: { left: number; top: number; width: number; height: number },
): LaidView[] {
  const spare = room.height - rows.reduce((sum, row) => sum + row.height, 0);
  const gap = Math.max(0, spare) / (rows.length + 1);
  let top = room.top;
  return rows.flatMap(({ stacks, width, height }) => {
    top += gap;
    let left = room.left + (room.width - width) / 2;
    const views = stacks.flatMap((stack) => {
      // in a stack of several, each stands in the middle of its width, and the room that is left lies between them
      const between = stack.groups.length > 1 ? (height - stack.height) / (stack.groups.length - 1) : 0;
      let upper = top;
      const made = stack.groups.flatMap((group) => {
        const views = groupAt(group, [left + (stack.width - group.width) / 2, upper + group.above], {
          scale,
          lettering,
        });
        upper += group.above + group.below + between;
        return views;
      });
      left += stack.width + BETWEEN;
      return made;
    });
    top += height;
    return views;
  });
}

/** Views of a group beside each other on their axis line, from a left end on. */
function groupAt({ views, zones }: Group, [start, axis]: Point, { scale, lettering }: Size): LaidView[] {
  let left = start;
  return zones.map(({ box, beside, start, leaders, ...zone }, i): LaidView => {
    const view = views[i]!;
    const stated = scaleOf(view, scale);
    const own = stated / lettering;
    const origin = left + zone.left - own * box.min[0];
    left += zone.width + BETWEEN;
    const titled = view.enlarged === undefined ? view : { ...view, title: `${view.title} (${scaleText(stated)})` };
    const at = ([x, y]: Point): Point => [origin + own * x, axis - own * y];
    return { view: titled, box, beside, start, leaders, scale: own, at };
  });
}
