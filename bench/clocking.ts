import { performance } from 'node:perf_hooks';
import { solveClocking } from '../src/parts/adapter/clocking.js';
import { type Disc, discToDisc } from '../src/parts/adapter/turn-terms.js';
import type { Row } from './nut.js';

/** Pairs of hole circles of 2 to 8 holes: the slowest turn to solve of them all. */
export function clockingRows(): Row[] {
  let slowest = 0;
  for (let count = 2; count <= 8; count++) {
    for (let other = 2; other <= 8; other++) {
      const walls = ring(count, 16 + count).flatMap((one) =>
        ring(other, 20 + other).map((two) => discToDisc(one, two)),
      );
      const start = performance.now();
      solveClocking({ walls, room: [] });
      slowest = Math.max(slowest, performance.now() - start);
    }
  }
  return [{ what: 'clocking of two hole circles, slowest of 49', value: slowest, unit: 'ms' }];
}

function ring(count: number, circle: number): Disc[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count + circle;
    return { at: [(circle / 2) * Math.cos(angle), (circle / 2) * Math.sin(angle)] as const, radius: 1.7 };
  });
}
