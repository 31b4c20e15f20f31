import type { Point } from '../../parts/part-views.js';
import type { Ink } from './ink.js';

/** Distance of hatch lines: a share of the region's width, between these [mm of paper]. */
const SHARE = 0.1;
const [CLOSEST, WIDEST] = [1.5, 3];
/** A shorter hatch line is left out, mm. */
const LEAST = 0.05;

/**
 * Hatch lines of a region at 45°, as far apart as the region is wide; all pieces of it alike.
 *
 * @param loops on the paper, holes among them by the even-odd rule [mm]
 * @param way   1: rising to the right; −1: falling
 */
export function hatchInk(loops: readonly (readonly Point[])[], way: 1 | -1): Ink[] {
  const area = Math.abs(loops.reduce((sum, loop) => sum + areaOf(loop), 0));
  const apart = Math.min(WIDEST, Math.max(CLOSEST, SHARE * Math.sqrt(area)));
  // along the lines, and across them; y runs downwards on the paper
  const turned = loops.map((loop) =>
    loop.map(([x, y]): Point => [(x - way * y) * Math.SQRT1_2, (way * x + y) * Math.SQRT1_2]),
  );
  const across = turned.flat().map(([, v]) => v);
  const first = Math.ceil(Math.min(...across) / apart);
  const last = Math.floor(Math.max(...across) / apart);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * apart).flatMap((v) => {
    const hits = turned.flatMap((loop) => crossings(loop, v)).sort((a, b) => a - b);
    return hits.flatMap((from, k): Ink[] => {
      const to = hits[k + 1];
      if (k % 2 === 1 || to === undefined || to - from < LEAST) return [];
      const back = (u: number): Point => [(u + way * v) * Math.SQRT1_2, (v - way * u) * Math.SQRT1_2];
      return [{ kind: 'line', pen: 'hatch', points: [back(from), back(to)] }];
    });
  });
}

/** Where a loop crosses the line at v. */
function crossings(loop: readonly Point[], v: number): number[] {
  return loop.flatMap(([x0, y0], i) => {
    const [x1, y1] = loop[(i + 1) % loop.length]!;
    return y0 > v === y1 > v ? [] : [x0 + ((v - y0) / (y1 - y0)) * (x1 - x0)];
  });
}

function areaOf(loop: readonly Point[]): number {
  return loop.reduce((sum, [x, y], i) => {
    const [u, w] = loop[(i + 1) % loop.length]!;
    return sum + (x * w - u * y) / 2;
  }, 0);
}
