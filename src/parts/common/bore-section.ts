import type { ToothForm } from '../../mechanics/thread/nut-thread.js';
import { unitAt } from '../../solid/angles.js';
import { cornerRadius, type Outline, polygonArea } from '../../solid/outline.js';
import { commonArea, sectionVolume } from './section-volume.js';
import { nutCutter, type ThreadRun } from './thread-shape.js';

/** A threaded bore with the cones at its ends, as it stands in the file. */
export interface BoreShape extends Omit<ThreadRun, 'from' | 'to'> {
  readonly thread: ToothForm;
  readonly bottom: number;
  readonly top: number;
  readonly leadIn: number;
}

/**
 * Section of a threaded bore: a corner for each column, where the column's ridge stands at this height, or the cone
 * where that is wider. It shares no code with the sweep; between columns the sweep is ruled, and so is this.
 */
export function boreSection(bore: BoreShape): (z: number) => Outline {
  const { thread, starts, hand, columns, bottom, top, leadIn } = bore;
  const { ridge, pitch } = nutCutter(thread, { starts, hand, columns, from: 0, to: 1 });
  const lead = (hand === 'left' ? -1 : 1) * pitch * starts;
  const cone = thread.major / 2 + leadIn;
  return (z) => {
    const open = Math.max(cone - (z - bottom), cone - (top - z));
    return Array.from({ length: columns }, (_, i): readonly [number, number] => {
      const radius = Math.max(radiusAt(ridge, pitch, z - (lead * i) / columns), open);
      const [x, y] = unitAt(i, columns);
      const reach = cornerRadius(radius, columns, true);
      return [reach * x, reach * y];
    });
  };
}

function radiusAt(ridge: readonly (readonly [number, number])[], pitch: number, z: number): number {
  const start = ridge[0]![0];
  const at = start + ((((z - start) % pitch) + pitch) % pitch);
  for (const [i, [low, from]] of ridge.entries()) {
    const [high, to] = ridge[i + 1] ?? [start + pitch, ridge[0]![1]];
    if (at <= high && high > low) return from + ((to - from) * (at - low)) / (high - low);
  }
  return ridge[0]![1];
}

/** Steps over a pitch, enough for a thousandth of the part a piece takes. */
const STEPS = 24;

/** Volume of the part of a threaded bore that lies in a convex outline, between two heights [mm³]. */
export function boreVolumeIn(bore: BoreShape, within: Outline, from: number, to: number): number {
  const section = boreSection(bore);
  const parts = Math.max(2, Math.ceil((STEPS * (to - from)) / bore.thread.pitch));
  const cone = (bore.thread.major - bore.thread.minor) / 2 + bore.leadIn;
  const breaks = [from, to, bore.bottom + cone, bore.top - cone].filter((z) => z >= from && z <= to);
  return sectionVolume((z) => commonArea(section(z), within), breaks, parts);
}

/** Share of a threaded bore that lies in a convex outline. */
export function boreShareIn(bore: BoreShape, within: Outline): number {
  const section = boreSection(bore);
  const whole = (z: number) => polygonArea(section(z));
  const parts = Math.ceil((STEPS * (bore.top - bore.bottom)) / bore.thread.pitch);
  return boreVolumeIn(bore, within, bore.bottom, bore.top) / sectionVolume(whole, [bore.bottom, bore.top], parts);
}
