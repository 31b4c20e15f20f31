import type { Loop, Point } from '../meant-outline.js';
import type { MeantExtrusion } from '../meant-shape.js';
import { loopCrossings } from './crossings.js';
import { extent, type Mark } from './marks.js';
import type { Matrix } from './placed.js';
import type { Probe } from './probe.js';
import { NONE } from './spans.js';

/** A prism that lies: a line crosses its outlines between its ends. @throws TypeError it leans */
export function lyingPrism({ regions, from, to }: MeantExtrusion, at: Matrix): Probe {
  if (Math.abs(at[10]!) > 1e-9) throw new TypeError('a leaning prism cannot be measured by lines');
  const loops = regions.flatMap(({ outer, holes }): Loop[] => [outer, ...holes]);
  // own coordinates of a line along Z: own = Mᵀ·(p − p0), of which the first two move with z
  const up: Point = [at[8]!, at[9]!];
  const own = (x: number, y: number, i: 0 | 1 | 2) =>
    at[i]! * (x - at[3]!) + at[4 + i]! * (y - at[7]!) + at[8 + i]! * (0 - at[11]!);
  const marks = lyingMarks(loops, [from, to], at);
  const [reachX, reachY] = [extent(marks, 0), extent(marks, 1)];
  return {
    marks,
    row: (y) => {
      if (y < reachY.least || y > reachY.most) return undefined;
      const spans = (x: number) => {
        const c = own(x, y, 2);
        if (c <= from || c >= to) return NONE;
        const way = { from: [own(x, y, 0), own(x, y, 1)], along: up } as const;
        return loops.flatMap((loop) => loopCrossings(loop, way)).sort((a, b) => a - b);
      };
      return { from: reachX.least, to: reachX.most, at: spans };
    },
  };
}

/** Its two ends as the plan shows them, and along it each place where its outlines turn back or have a corner. */
function lyingMarks(loops: readonly Loop[], [from, to]: readonly [number, number], at: Matrix): Mark[] {
  const [ux, uy] = [at[8]!, at[9]!];
  /** the place of the plan so far across the prism and along it */
  const plan = (across: number, along: number): Point => {
    const [a, b] = [-uy * across, ux * across];
    return [at[0]! * a + at[1]! * b + at[2]! * along + at[3]!, at[4]! * a + at[5]! * b + at[6]! * along + at[7]!];
  };
  const across = loops.flatMap((loop) => turnsOf(loop, [ux, uy])).map(([a, b]) => a * -uy + b * ux);
  const [least, most] = [Math.min(...across), Math.max(...across)];
  const isRoot = loops.some((loop) => loop.kind === 'circle' || loop.pieces.some(({ kind }) => kind === 'arc'));
  return [
    ...[from, to].map((end): Mark => ({ kind: 'line', from: plan(least, end), to: plan(most, end) })),
    ...across.map((s): Mark => ({ kind: 'line', isRoot, from: plan(s, from), to: plan(s, to) })),
  ];
}

/** Corners of an outline, and places of its circles where their tangent runs along a direction. */
function turnsOf(loop: Loop, direction: Point): Point[] {
  if (loop.kind === 'circle') return silhouettes(loop, direction);
  return loop.pieces.flatMap((piece) =>
    piece.kind === 'line' ? [piece.from] : [piece.from, ...silhouettes(piece, direction)],
  );
}

function silhouettes(
  { center: [a, b], radius }: { readonly center: Point; readonly radius: number },
  [ux, uy]: Point,
): Point[] {
  return [
    [a - radius * uy, b + radius * ux],
    [a + radius * uy, b - radius * ux],
  ];
}
