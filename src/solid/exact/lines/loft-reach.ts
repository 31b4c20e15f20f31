import type { Point } from '../meant-outline.js';
import type { MeantLoft } from '../meant-shape.js';
import { inSector } from './crossings.js';
import type { Mark } from './marks.js';

/** How far out the sides of a loft must be moved to reach a place. */
export function loftReach({ outline, circle }: MeantLoft): (x: number, y: number) => number {
  const sides = outline.map((piece) => {
    const [dx, dy] = [piece.to[0] - piece.from[0], piece.to[1] - piece.from[1]];
    const length = Math.hypot(dx, dy);
    return { piece, a: dy / length, b: -dx / length };
  });
  return (x, y) => {
    let most = circle ? Math.hypot(x, y) - circle : Number.NEGATIVE_INFINITY;
    for (const { piece, a, b } of sides) {
      if (piece.kind === 'line') most = Math.max(most, a * (x - piece.from[0]) + b * (y - piece.from[1]));
      else if (!circle && inSector(piece, x, y))
        most = Math.max(most, Math.hypot(x - piece.center[0], y - piece.center[1]) - piece.radius);
    }
    return most;
  };
}

/** The outline at every level of its contour, each side carried on to the corners of the widest. */
export function loftMarks({ outline }: MeantLoft, offsets: readonly number[]): Mark[] {
  const most = Math.max(0, ...offsets);
  const along = 2 * (most - Math.min(0, ...offsets));
  return offsets.flatMap((offset) =>
    outline.map((piece): Mark => {
      if (piece.kind === 'arc') return { kind: 'circle', center: piece.center, radius: piece.radius + offset };
      const [dx, dy] = [piece.to[0] - piece.from[0], piece.to[1] - piece.from[1]];
      const length = Math.hypot(dx, dy);
      const [ux, uy] = [dx / length, dy / length];
      const end = ([x, y]: Point, by: number): Point => [x + offset * uy + by * ux, y - offset * ux + by * uy];
      return { kind: 'line', from: end(piece.from, -along), to: end(piece.to, along) };
    }),
  );
}
