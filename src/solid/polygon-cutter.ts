/** Part of a polygon, as its corners; none where nothing is left. */
export type CutPolygon = (polygon: readonly number[]) => readonly number[];

/**
 * Keeps the part of polygons that lies above a surface. An edge that is cut gets one corner, whichever polygon asks first.
 *
 * @param heightOf  how far a corner stands above the surface; linear along every edge
 * @param made      a new corner at a share of the way between two, by its number
 * @returns what cuts one polygon after the other; what shrinks to an edge on the surface is gone
 */
export function polygonCutter(
  heightOf: (corner: number) => number,
  made: (low: number, high: number, share: number) => number,
): CutPolygon {
  const cuts = new Map<number, number>();
  const cut = (a: number, b: number): number => {
    const [low, high] = a < b ? [a, b] : [b, a];
    const key = low * 2 ** 26 + high;
    const known = cuts.get(key);
    if (known !== undefined) return known;
    const corner = made(low, high, heightOf(low) / (heightOf(low) - heightOf(high)));
    cuts.set(key, corner);
    return corner;
  };
  const stands = (polygon: readonly number[]) =>
    polygon.length >= 3 && polygon.some((corner) => heightOf(corner) > 0) ? polygon : [];
  return (polygon) => {
    if (polygon.every((corner) => heightOf(corner) >= 0)) return stands(polygon);
    const kept: number[] = [];
    for (const [i, corner] of polygon.entries()) {
      const next = polygon[(i + 1) % polygon.length]!;
      const here = heightOf(corner);
      const there = heightOf(next);
      if (here >= 0) kept.push(corner);
      if ((here > 0 && there < 0) || (here < 0 && there > 0)) kept.push(cut(corner, next));
    }
    return stands(kept);
  };
}

/** A coordinate at a share of the way from one corner to another. */
export function between(points: ArrayLike<number>, axis: number, a: number, b: number, share: number): number {
  const start = points[3 * a + axis]!;
  return start + share * (points[3 * b + axis]! - start);
}
