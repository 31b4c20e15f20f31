import type { ThreadSweep } from '../../thread-sweep.js';
import { NONE, type Spans } from './spans.js';

/** Heights at which the metal of a swept thread stands over a place. */
export function threadSpans({ ridge, pitch, starts, hand, from, to }: ThreadSweep, x: number, y: number): Spans {
  const radius = Math.hypot(x, y);
  const turn = (hand === 'left' ? -1 : 1) * Math.atan2(y, x);
  const lift = (pitch * starts * turn) / (2 * Math.PI);
  const own = ridgeCrossings(ridge, pitch, radius);
  const [[start, crest]] = ridge as readonly [readonly [number, number]];
  const isInside = crest > radius;
  if (own.length === 0) return isInside ? [from, to] : NONE;
  const low = Math.floor((from - lift) / pitch) - 1;
  const high = Math.ceil((to - lift) / pitch) + 1;
  const ends: number[] = isInside ? [low * pitch + lift + start] : [];
  for (let k = low; k < high; k++) for (const z of own) ends.push(k * pitch + z + lift);
  if (ends.length % 2 === 1) ends.push(high * pitch + lift + start);
  return within(ends, from, to);
}

/** Heights over one pitch at which a ridge passes a radius. */
function ridgeCrossings(ridge: ThreadSweep['ridge'], pitch: number, radius: number): number[] {
  const heights: number[] = [];
  for (const [i, [z, r]] of ridge.entries()) {
    const [next, nextR] = ridge[i + 1] ?? [ridge[0]![0] + pitch, ridge[0]![1]];
    if (r > radius !== nextR > radius) heights.push(z + ((radius - r) / (nextR - r)) * (next - z));
  }
  return heights;
}

/** What of stretches lies between two heights. */
function within(ends: readonly number[], from: number, to: number): Spans {
  const spans: number[] = [];
  for (let i = 0; i < ends.length; i += 2) {
    const [a, b] = [Math.max(from, ends[i]!), Math.min(to, ends[i + 1]!)];
    if (b > a) spans.push(a, b);
  }
  return spans;
}
