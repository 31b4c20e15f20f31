import type { Loop, Piece, Point } from '../meant-outline.js';

/** A straight line of the plane: a point of it, and which way it runs, of length 1. */
export interface Way {
  readonly from: Point;
  readonly along: Point;
}

/** How far along a line from its point an outline is crossed. */
export function loopCrossings(loop: Loop, way: Way): number[] {
  return loop.kind === 'circle'
    ? circleCrossings(loop, way)
    : loop.pieces.flatMap((piece) => (piece.kind === 'line' ? sideCrossings(piece, way) : arcCrossings(piece, way)));
}

/** The same of a straight side; one whose end lies on the line counts where its other end is to the left. */
export function sideCrossings({ from, to }: { readonly from: Point; readonly to: Point }, way: Way): number[] {
  const [s0, s1] = [leftOf(way, from[0], from[1]), leftOf(way, to[0], to[1])];
  if (s0 > 0 === s1 > 0) return [];
  const share = s0 / (s0 - s1);
  return [aheadOf(way, from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]))];
}

/** The same of a circle; a tangent does not cross it. */
export function circleCrossings(
  { center, radius }: { readonly center: Point; readonly radius: number },
  way: Way,
): number[] {
  const off = leftOf(way, center[0], center[1]);
  const square = radius * radius - off * off;
  if (square <= 0) return [];
  const [middle, half] = [aheadOf(way, center[0], center[1]), Math.sqrt(square)];
  return [middle - half, middle + half];
}

function arcCrossings(arc: Extract<Piece, { kind: 'arc' }>, way: Way): number[] {
  const { from, along } = way;
  const outwards = arc.outwards ? arc : { ...arc, from: arc.to, to: arc.from };
  return circleCrossings(arc, way).filter((t) => inSector(outwards, from[0] + t * along[0], from[1] + t * along[1]));
}

/** How far along a line a place lies. */
function aheadOf({ from, along }: Way, x: number, y: number): number {
  return (x - from[0]) * along[0] + (y - from[1]) * along[1];
}

/** How far to the left of a line a place lies. */
function leftOf({ from, along }: Way, x: number, y: number): number {
  return (x - from[0]) * -along[1] + (y - from[1]) * along[0];
}

/** Whether a place is seen from an arc's centre between both its ends, as it runs counter-clockwise. */
export function inSector({ from, to, center }: Extract<Piece, { kind: 'arc' }>, x: number, y: number): boolean {
  const [dx, dy] = [x - center[0], y - center[1]];
  const after = (from[0] - center[0]) * dy - (from[1] - center[1]) * dx >= 0;
  const before = dx * (to[1] - center[1]) - dy * (to[0] - center[0]) >= 0;
  const turn = (from[0] - center[0]) * (to[1] - center[1]) - (from[1] - center[1]) * (to[0] - center[0]);
  return turn >= 0 ? after && before : after || before;
}
