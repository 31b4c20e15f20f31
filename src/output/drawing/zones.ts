import type { DrawnView } from '../../parts/part-views.js';
import { onceFor } from '../../units/once.js';
import { type Bands, bandsOf, MARGIN } from './bands.js';
import { shelfBox } from './leader-ways.js';
import { type Leader, leadersOf } from './leaders.js';

/** Room above a view for its title [mm of paper]. */
const HEADING = 10;

/** Paper around a view [mm]. */
export interface Zone extends Bands {
  /** its leaders, counted from the part's origin */
  readonly leaders: readonly Leader[];
  /** from the view's edges to those of its zone */
  readonly left: number;
  readonly right: number;
  readonly width: number;
  /** above and below the part's origin */
  readonly above: number;
  readonly below: number;
}

/** Zones of a view by its scales, which are asked for again and again until all views fit. */
const zonesOf = onceFor((view: DrawnView) => {
  const known = new Map<number, Zone>();
  return (scale: number): Zone => {
    const bands = bandsOf(view, scale);
    const zone = known.get(scale) ?? around(bands, scale, leadersOf(view, scale, bands));
    known.set(scale, zone);
    return zone;
  };
});

/** Paper that a view takes with its dimensions, leaders and title. */
export function zoneOf(view: DrawnView, scale: number): Zone {
  return zonesOf(view)(scale);
}

/** Paper that it takes at least, wherever its leaders go: they cost most of the work. */
export function leastZone(view: DrawnView, scale: number): Zone {
  return around(bandsOf(view, scale), scale, []);
}

function around(bands: Bands, scale: number, leaders: readonly Leader[]): Zone {
  const { box, past } = bands;
  const shelves = leaders.map(shelfBox);
  const left = Math.max(past.left, ...shelves.map(({ min }) => scale * box.min[0] - min[0] + MARGIN));
  const right = Math.max(past.right, ...shelves.map(({ max }) => max[0] - scale * box.max[0] + MARGIN));
  return {
    ...bands,
    leaders,
    left,
    right,
    width: left + scale * (box.max[0] - box.min[0]) + right,
    above: Math.max(HEADING + past.above + scale * box.max[1], ...shelves.map(({ min }) => MARGIN - min[1])),
    below: Math.max(past.below - scale * box.min[1], ...shelves.map(({ max }) => max[1] + MARGIN)),
  };
}
