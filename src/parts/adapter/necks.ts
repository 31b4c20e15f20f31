import type { Outline } from '../../solid/outline.js';
import { FACING } from '../../solid/walls/is-wall.js';
import { onceFor } from '../../units/once.js';
import { insideSimple, nearestPlaces } from '../common/polygon-distance.js';
import { alongCrossings } from './cutouts.js';
import { cutoutOutline, type PlateSizes, type Point, plateOutline } from './plan.js';

/** A stretch of the plan's edge, or a corner that stands into the plate, with its direction out of the plate. */
interface Stretch {
  readonly from: Point;
  readonly to: Point;
  readonly out: Point;
}

/**
 * The thinnest place of a plate seen along the axis, between stretches of its edge and of its cut-outs that look apart
 * within the angle of a wall; neighbours meet in a corner and are none. Endless where no two do [mm].
 */
export const thinnestNeck = onceFor((plate: PlateSizes): number => {
  const stretches = edgesOf(plate);
  let least = Infinity;
  for (const [i, one] of stretches.entries()) {
    for (const other of stretches.slice(i + 1)) {
      if (one.out[0] * other.out[0] + one.out[1] * other.out[1] > -FACING) continue;
      const [[x, y], [u, v]] = nearestPlaces([one.from, one.to], [other.from, other.to]);
      const distance = Math.hypot(u - x, v - y);
      // between two that look at each other there is air
      const isWall = (u - x) * one.out[0] + (v - y) * one.out[1] < 0;
      if (isWall && distance < least && distance > TOGETHER) least = distance;
    }
  }
  return least;
});

/** Sharp corners of outline and cut-outs that stand into the plate. A rectangular cut-out has no radius: it is drawn sharp. */
export function hollowCorners(plate: PlateSizes): Point[] {
  return edgesOf(plate).flatMap(({ from, to }) => (from === to ? [from] : []));
}

const edgesOf = onceFor((plate: PlateSizes): Stretch[] => {
  const polygons = [plateOutline(plate), ...plate.cutouts.map((cutout) => cutoutOutline(cutout))];
  const bounds = (point: Point, own: number) =>
    polygons.every((polygon, i) => i === own || insideSimple(polygon, point) > 0 === (i === 0));
  return polygons.flatMap((polygon, i) => stretchesOf(polygon, i, polygons, bounds));
});

/** Sides of an arc turn by less than this, and have no corner between them. */
const SMOOTH = Math.cos((25 * Math.PI) / 180);
/** Stretches whose ends are nearer than this meet there, mm. */
const TOGETHER = 1e-6;

/** The sides of one polygon as far as they bound the plate, and its corners that stand into it. */
function stretchesOf(
  polygon: Outline,
  own: number,
  polygons: readonly Outline[],
  bounds: (point: Point, own: number) => boolean,
): Stretch[] {
  // a cut-out bounds the plate from within
  const way = own === 0 ? 1 : -1;
  const outs = polygon.map((from, i): Point => {
    const to = polygon[(i + 1) % polygon.length]!;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return [(way * (to[1] - from[1])) / length, (way * (from[0] - to[0])) / length];
  });
  return polygon.flatMap((from, i) => {
    const out = outs[i]!;
    const to = polygon[(i + 1) % polygon.length]!;
    const at = (share: number): Point => [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
    const shares = polygons.flatMap((other, j) => (j === own ? [] : alongCrossings([from, to], other)));
    const stops = [0, ...shares.sort((a, b) => a - b), 1];
    const sides = stops.slice(1).flatMap((stop, k): Stretch[] => {
      const start = stops[k]!;
      if (stop - start < 1e-9 || !bounds(at((start + stop) / 2), own)) return [];
      return [{ from: at(start), to: at(stop), out }];
    });
    const between = hollowOut(outs.at(i - 1)!, out, way);
    return between && bounds(from, own) ? [...sides, { from, to: from, out: between }] : sides;
  });
}

/** The direction midway between those of two sides whose corner stands into the plate; undefined of any other corner. */
function hollowOut([a, b]: Point, [c, d]: Point, way: number): Point | undefined {
  const isHollow = way * (a * d - b * c) < 0 && a * c + b * d < SMOOTH;
  const length = Math.hypot(a + c, b + d);
  return isHollow && length > TOGETHER ? [(a + c) / length, (b + d) / length] : undefined;
}
