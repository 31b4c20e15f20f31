import type { Loop, Point } from '../meant-outline.js';

/**
 * A curve of the plan across which what a line meets may change. Where `isRoot`, it may do so as a root does: beside a
 * fillet or a lying cylinder.
 */
export type Mark =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point; readonly isRoot?: boolean }
  | { readonly kind: 'circle'; readonly center: Point; readonly radius: number; readonly isRoot?: boolean };

/** A circle about the axis. */
export function circleMark(radius: number): Extract<Mark, { kind: 'circle' }> {
  return { kind: 'circle', center: [0, 0], radius };
}

/** An outline, and the whole circles that its arcs belong to. */
export function loopMarks(loop: Loop): Mark[] {
  if (loop.kind === 'circle') return [loop];
  return loop.pieces.flatMap((piece): Mark[] => [
    { kind: 'line', from: piece.from, to: piece.to },
    ...(piece.kind === 'arc' ? [{ kind: 'circle', center: piece.center, radius: piece.radius } as const] : []),
  ]);
}

/** How far marks reach along x or y. */
export function extent(marks: readonly Mark[], axis: 0 | 1): { readonly least: number; readonly most: number } {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const mark of marks) {
    const ends =
      mark.kind === 'line'
        ? [mark.from[axis], mark.to[axis]]
        : [mark.center[axis] - mark.radius, mark.center[axis] + mark.radius];
    least = Math.min(least, ...ends);
    most = Math.max(most, ...ends);
  }
  return { least, most };
}
