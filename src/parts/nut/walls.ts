import { edgeDistance } from './edges.js';
import type { NutSizes } from './nut-sizes.js';

type Point = readonly [number, number];

/** From what is bored on the axis to the outside of body or flange, where they come nearest; sizes of one kind. */
export function besideBore({ body, flange }: Pick<NutSizes, 'body' | 'flange'>, boreRadius: number): number {
  return Math.min(body.across, body.flats ?? Infinity, flange?.flats ?? Infinity) / 2 - boreRadius;
}

/** From openings about the centres of holes to what is bored on the axis. */
export function holesToBore(centres: readonly Point[], opening: number, boreRadius: number): number {
  return Math.min(...centres.map((centre) => Math.hypot(...centre))) - opening - boreRadius;
}

/** From openings about the centres of holes to the edge of the plate they stand in. */
export function holesToEdge(
  sizes: Pick<NutSizes, 'body' | 'flange'>,
  centres: readonly Point[],
  opening: number,
): number {
  return Math.min(...centres.map((centre) => edgeDistance(sizes, centre))) - opening;
}

/** Between the two openings of holes that come nearest to one another; endless for one hole alone. */
export function holesApart(centres: readonly Point[], opening: number): number {
  const gaps = centres.flatMap((a, i) => centres.slice(i + 1).map((b) => Math.hypot(a[0] - b[0], a[1] - b[1])));
  return Math.min(...gaps) - 2 * opening;
}
