import type { Loop, Piece, Point } from '../meant-outline.js';
import type { Mark } from './marks.js';

/** A move, 3 × 4 and row by row, as of a placement. */
export type Matrix = readonly number[];

function placedPoint([x, y]: Point, at: Matrix): Point {
  return [at[0]! * x + at[1]! * y + at[3]!, at[4]! * x + at[5]! * y + at[7]!];
}

/** A mark of a leaf that stands, where it stands. */
export function placedMark(mark: Mark, at: Matrix): Mark {
  return mark.kind === 'line'
    ? { ...mark, from: placedPoint(mark.from, at), to: placedPoint(mark.to, at) }
    : { ...mark, center: placedPoint(mark.center, at) };
}

/** A loop where its prism stands; seen from below it runs the other way. */
export function placedLoop(loop: Loop, at: Matrix): Loop {
  if (loop.kind === 'circle') return { ...loop, center: placedPoint(loop.center, at) };
  const isTurned = at[10]! < 0;
  const pieces = loop.pieces.map((piece): Piece => {
    const ends = { from: placedPoint(piece.from, at), to: placedPoint(piece.to, at) };
    if (piece.kind === 'line') return { ...piece, ...ends };
    return { ...piece, ...ends, center: placedPoint(piece.center, at), outwards: piece.outwards !== isTurned };
  });
  return { kind: 'pieces', pieces };
}
