import type { Placement } from '../solid/mesh.js';
import { besideOneAnother } from './beside.js';
import type { BodyRow } from './report.js';

/** Least and most x, y and z [mm]. */
export type Bounds = readonly [readonly number[], readonly number[]];

/** A body turned over, where it is printed so: leaned by half a turn about +Y. */
export function leanOf({ turn_over }: Pick<BodyRow, 'turn_over'>): Placement {
  return turn_over ? { tilt: 180 } : {};
}

/** The bounds of a body the way up that it is printed [mm]. */
export function printedWayUp({ bounds, turn_over }: Pick<BodyRow, 'bounds' | 'turn_over'>): Bounds {
  const [[x0, y0, z0], [x1, y1, z1]] = bounds as readonly [Point, Point];
  if (!turn_over) return bounds;
  return [
    [0 - x1, y0, 0 - z1],
    [0 - x0, y1, 0 - z0],
  ];
}

/** Where bodies lie on the bed as they are printed, beside one another, each standing on it. */
export function onBed(bodies: readonly Pick<BodyRow, 'bounds' | 'turn_over'>[]): Placement[] {
  const boxes = bodies.map(printedWayUp);
  const shifts = besideOneAnother(boxes);
  return bodies.map((body, i) => {
    const [x, y] = shifts[i]!;
    return { ...leanOf(body), by: [x, y, 0 - boxes[i]![0][2]!] };
  });
}

type Point = readonly [number, number, number];
