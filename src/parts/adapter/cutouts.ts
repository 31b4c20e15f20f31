import { insideBy } from '../../solid/convex.js';
import type { Outline } from '../../solid/outline.js';
import { cutoutOutline, type PlateSizes, type Point, plateOutline, toCutout } from './plan.js';

/** Corners of what is left of an outline when convex pieces are cut out of it: its own, and those where they cross. */
export function cornersLeft(outline: Outline, cutouts: readonly Outline[]): Outline {
  const own = outline.filter((point) => cutouts.every((cutout) => insideBy(cutout, point) < 0));
  return [...own, ...cutouts.flatMap((cutout) => crossings(outline, cutout))];
}

/** Points where the sides of two polygons cross. */
export function crossings(first: Outline, second: Outline): Point[] {
  return first.flatMap((a, i) => {
    const b = first[(i + 1) % first.length]!;
    return alongCrossings([a, b], second).map(
      (along) => [a[0] + along * (b[0] - a[0]), a[1] + along * (b[1] - a[1])] as const,
    );
  });
}

/** Where the sides of a polygon cross a stretch, as shares of it. */
export function alongCrossings([a, b]: readonly [Point, Point], polygon: Outline): number[] {
  return polygon.flatMap((c, j) => {
    const d = polygon[(j + 1) % polygon.length]!;
    const turn = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0]);
    if (turn === 0) return [];
    const along = ((c[0] - a[0]) * (d[1] - c[1]) - (c[1] - a[1]) * (d[0] - c[0])) / turn;
    const across = ((c[0] - a[0]) * (b[1] - a[1]) - (c[1] - a[1]) * (b[0] - a[0])) / turn;
    return along < 0 || along >= 1 || across < 0 || across >= 1 ? [] : [along];
  });
}

/** Whether every cut-out leaves the plate in one piece: it crosses the edge twice, or lies within it. */
export function leavesWhole(plate: Pick<PlateSizes, 'outline' | 'flats' | 'cutouts'>): boolean {
  const outline = plateOutline(plate, undefined, 0.02);
  return plate.cutouts.every((cutout) => crossings(outline, cutoutOutline(cutout, undefined, 0.02)).length <= 2);
}

/** Least distance between two cut-outs; negative where they overlap. */
export function cutoutsApart({ cutouts }: Pick<PlateSizes, 'cutouts'>): number {
  let apart = Infinity;
  const outlines = cutouts.map((cutout) => cutoutOutline(cutout, undefined, 0.02));
  for (const [i, cutout] of cutouts.entries()) {
    for (const [j, outline] of outlines.entries()) {
      if (i === j) continue;
      for (const point of outline) apart = Math.min(apart, toCutout(cutout, point));
      apart = Math.min(apart, -insideBy(outline, cutout.at));
    }
  }
  return apart;
}
