import type { Shape } from '../../src/solid/recipe.js';
import { cylinder } from '../../src/solid/recipe.js';
import { ridgeCorners } from '../../src/solid/thread-ridge.js';
import type { ThreadSweep } from '../../src/solid/thread-sweep.js';

/** A thread by the figures its designation states; see the nut thread of the conventions for the clearances. */
export interface ThreadFigures {
  readonly major: number;
  readonly pitch: number;
  readonly starts: number;
  readonly flankAngle: number;
  readonly hand: 'right' | 'left';
  readonly columns: number;
  readonly diametralClearance: number;
  readonly axialClearance: number;
  /** diameters of the nut's crest and root, where not by the clearances */
  readonly nutMinor?: number;
  readonly nutMajor?: number;
}

export const TR8X2: ThreadFigures = {
  major: 8,
  pitch: 2,
  starts: 1,
  flankAngle: 15,
  hand: 'right',
  columns: 96,
  diametralClearance: 0.3,
  axialClearance: 0.1,
};

/** Share of the pitch that the basic thread is deep: half for trapezoids, 0.6 of it for steep flanks, so crests keep a flat. */
function depthOf({ pitch, flankAngle }: ThreadFigures): number {
  return Math.min(pitch / 2, (0.35 * pitch) / Math.tan((flankAngle * Math.PI) / 180));
}

/** A screw of basic size: ridge half the pitch wide at the pitch diameter. */
export function screwThread(figures: ThreadFigures, from: number, to: number): ThreadSweep {
  const { major, pitch, starts, flankAngle, hand, columns } = figures;
  const depth = depthOf(figures);
  const ridge = ridgeCorners({
    pitch,
    flankAngle,
    pitchDiameter: major - depth,
    widthAtPitchDiameter: pitch / 2,
    major,
    minor: major - 2 * depth,
  });
  return { ridge, pitch, starts, hand, columns, from, to, airSide: 'outside', circumscribed: true };
}

/** The nut's cutter for the same screw: wider by the clearances. */
export function nutThread(figures: ThreadFigures, from: number, to: number): ThreadSweep {
  const { major, pitch, starts, flankAngle, hand, columns, diametralClearance: c, axialClearance: a } = figures;
  const depth = depthOf(figures);
  const ridge = ridgeCorners({
    pitch,
    flankAngle,
    pitchDiameter: major - depth + c,
    widthAtPitchDiameter: pitch / 2 + a,
    major: figures.nutMajor ?? major + c + Math.min(0.5, 0.1 * pitch),
    minor: figures.nutMinor ?? major - 2 * depth + c + 0.1 * depth,
  });
  return { ridge, pitch, starts, hand, columns, from, to, airSide: 'inside', circumscribed: true };
}

/** Greatest radius of a sweep's ridge. */
export function widest(thread: ThreadSweep): number {
  return Math.max(...thread.ridge.map(([, radius]) => radius));
}

/** Least radius of a sweep's ridge. */
export function narrowest(thread: ThreadSweep): number {
  return Math.min(...thread.ridge.map(([, radius]) => radius));
}

/** A round nut with flange, four holes, and a chamfer at either end of its thread. */
export function flangedNut(figures: ThreadFigures, length: number): Shape {
  const { pitch, columns } = figures;
  const thread = nutThread(figures, -pitch / 2, length + pitch / 2);
  const [top, foot] = [widest(thread), narrowest(thread)];
  const bore = { kind: 'lathe', sides: columns, circumscribed: true } as const;
  const hole = cylinder({ radius: 1.7, sides: 32, circumscribed: true, from: -1, to: 5 });
  const circle = top + 8;
  return {
    kind: 'difference',
    of: [
      {
        kind: 'lathe',
        sides: columns,
        circumscribed: false,
        contour: [
          [circle + 4, 0],
          [circle + 4, 4],
          [top + 3, 4],
          [top + 3, length],
        ],
      },
      { kind: 'thread', thread },
      {
        ...bore,
        contour: [
          [top + 1, -1],
          [foot * 0.98, top - foot * 0.98],
        ],
      },
      {
        ...bore,
        contour: [
          [foot * 0.98, length - (top - foot * 0.98)],
          [top + 1, length + 1],
        ],
      },
      ...[45, 135, 225, 315].map(
        (turn): Shape => ({ kind: 'moved', turn, shape: { kind: 'moved', by: [circle, 0, 0], shape: hole } }),
      ),
    ],
  };
}
