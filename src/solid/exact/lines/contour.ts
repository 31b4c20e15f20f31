import type { ContourPiece } from '../meant-shape.js';
import type { Spans } from './spans.js';

/** Whether a fillet runs along a contour. */
export function isFilleted(contour: readonly ContourPiece[]): boolean {
  return contour.some(({ center }) => center !== undefined);
}

/** Radii or offsets of a contour at its own corners and at heights. */
export function reachesAt(contour: readonly ContourPiece[], heights: readonly number[]): number[] {
  const all = contour.flatMap((piece) => {
    const { from, to } = piece;
    const between = heights.filter((z) => z > from[1] && z < to[1]);
    return [from[0], to[0], ...between.map((z) => reachAt(piece, z))];
  });
  return [...new Set(all)];
}

function reachAt({ from, to, center }: ContourPiece, z: number): number {
  if (!center) return from[0] + ((z - from[1]) / (to[1] - from[1])) * (to[0] - from[0]);
  const radius = Math.hypot(from[0] - center[0], from[1] - center[1]);
  const half = Math.sqrt(Math.max(0, radius ** 2 - (z - center[1]) ** 2));
  return center[0] + Math.sign((from[0] + to[0]) / 2 - center[0]) * half;
}

/** Heights at which a contour that rises along its outside reaches past a radius or an offset. */
export function upTo(contour: readonly ContourPiece[], reach: number): Spans {
  const ends: number[] = [];
  const [first, last] = [contour[0]!, contour.at(-1)!];
  if (first.from[0] > reach) ends.push(first.from[1]);
  for (const piece of contour) if (piece.from[0] > reach !== piece.to[0] > reach) ends.push(heightAt(piece, reach));
  if (last.to[0] > reach) ends.push(last.to[1]);
  return ends.sort((a, b) => a - b);
}

function heightAt({ from, to, center }: ContourPiece, reach: number): number {
  if (!center) return from[1] + ((reach - from[0]) / (to[0] - from[0])) * (to[1] - from[1]);
  const radius = Math.hypot(from[0] - center[0], from[1] - center[1]);
  const half = Math.sqrt(Math.max(0, radius ** 2 - (reach - center[0]) ** 2));
  const isUnder = (from[1] + to[1]) / 2 < center[1];
  return center[1] + (isUnder ? -half : half);
}
