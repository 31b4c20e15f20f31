import type { PaperPoint } from './drawn.js';
import type { Region } from './regions.js';

/** Two corners lie in one face of the part to this; so far beside them it is looked for what is cut, mm. */
const BESIDE = 0.02;
/** An outline that turns by less is smooth there, degrees. */
const SMOOTH = 22.5;

/** Edges across a hole or bore, by their ends. */
type Rim = readonly [from: PaperPoint, to: PaperPoint];

/**
 * Rims of holes and bores as they are seen behind a section: straight from a corner of what is cut to the one across,
 * where the cut is open between them and to both sides.
 *
 * @param cut  the section of one body, the axis on y = 0, +Z to the left [mm]
 * @returns lines on the paper                                            [mm]
 */
export function rimsBehind(cut: Region): Rim[] {
  const corners = cut.flatMap(cornersOf).sort((p, q) => p[1] - q[1]);
  return corners.flatMap((low, i): Rim[] => {
    const high = corners.slice(i + 1).find(([x, y]) => Math.abs(x - low[0]) < BESIDE && y > low[1] + BESIDE);
    return high && isOpen(cut, low, high) ? [[low, [low[0], high[1]]]] : [];
  });
}

function cornersOf(loop: readonly PaperPoint[]): PaperPoint[] {
  return loop.filter((at, i) => {
    const [before, after] = [loop.at(i - 1)!, loop[(i + 1) % loop.length]!];
    const turn = Math.abs(angleOf(before, at) - angleOf(at, after));
    return Math.min(turn, 2 * Math.PI - turn) > (SMOOTH * Math.PI) / 180;
  });
}

function angleOf([x0, y0]: PaperPoint, [x1, y1]: PaperPoint): number {
  return Math.atan2(y1 - y0, x1 - x0);
}

/** Whether nothing is cut between two corners, just before and just behind them. */
function isOpen(cut: Region, [x, low]: PaperPoint, [, high]: PaperPoint): boolean {
  return [x - BESIDE, x + BESIDE].every((at) => {
    const crossed = crossings(cut, at);
    const inside = crossed.filter((y) => y > low + 2 * BESIDE && y < high - 2 * BESIDE);
    return inside.length === 0 && crossed.filter((y) => y > (low + high) / 2).length % 2 === 0;
  });
}

/** Where the edges of what is cut cross a line across the axis. */
function crossings(cut: Region, x: number): number[] {
  return cut.flatMap((loop) =>
    loop.flatMap(([x0, y0], i) => {
      const [x1, y1] = loop[(i + 1) % loop.length]!;
      return x0 > x === x1 > x ? [] : [y0 + ((x - x0) / (x1 - x0)) * (y1 - y0)];
    }),
  );
}
