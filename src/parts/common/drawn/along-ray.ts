import { cosd, sind } from '../../../solid/angles.js';
import type { Outline } from '../../../solid/outline.js';
import type { Point } from '../../part-views.js';

/**
 * Where a ray from the origin runs inside an outline [mm].
 * @example alongRay([[1, -1], [3, -1], [3, 1], [1, 1]], 0) // [[1, 3]]
 */
function alongRay(outline: Outline, angle: number): (readonly [number, number])[] {
  const [c, s] = [cosd(angle), sind(angle)];
  const turned = outline.map(([x, y]): Point => [c * x + s * y, c * y - s * x]);
  const hits = turned.flatMap(([x0, y0], i) => {
    const [x1, y1] = turned[(i + 1) % turned.length]!;
    if (y0 > 0 === y1 > 0) return [];
    return [x0 + (y0 / (y0 - y1)) * (x1 - x0)];
  });
  const ahead = hits.filter((x) => x > 0).sort((a, b) => a - b);
  const ends = ahead.length % 2 === 1 ? [0, ...ahead] : ahead;
  return ends.flatMap((end, i) => (i % 2 === 0 ? [[end, ends[i + 1]!] as const] : []));
}

/** How far an outline reaches from the origin in a direction; 0 where the ray misses it [mm]. */
export function rayReach(outline: Outline, angle: number): number {
  return alongRay(outline, angle).at(-1)?.[1] ?? 0;
}
