import { cosd, sind } from '../../../solid/angles.js';
import type { Outline } from '../../../solid/outline.js';
import type { Point } from '../../part-views.js';

/** A piece that a plate is put together from or that is cut out of it: an outline between two heights. */
export interface Piece {
  readonly adds: boolean;
  readonly from: number;
  readonly to: number;
  /** its outline, or how that changes with the height */
  readonly outline: Outline | ((z: number) => Outline);
  /** heights between its ends at which its walls bend */
  readonly bends?: readonly number[];
}

/** What is cut on one side of the axis, as [z, r]. */
export interface HalfCut {
  readonly regions: readonly (readonly Point[])[];
  readonly lines: readonly (readonly [Point, Point])[];
}

type Interval = readonly [number, number];

/** A height is looked at this little above and below, mm. */
const NEAR = 1e-6;

/** Cuts pieces in the half plane from the axis in a direction [degrees]: what they add, less what they cut. */
export function raySection(pieces: readonly Piece[], angle: number): HalfCut {
  const heights = [...new Set(pieces.flatMap(({ from, to, bends = [] }) => [from, ...bends, to]))].sort(
    (a, b) => a - b,
  );
  const materialAt = (z: number) => subtracted(ofPieces(pieces, true, z, angle), ofPieces(pieces, false, z, angle));
  const bands = heights.slice(1).flatMap((to, i) => {
    const from = heights[i]!;
    return to - from < 4 * NEAR ? [] : [bandOf(from, to, materialAt)];
  });
  return {
    regions: bands.flatMap(({ from, to, low, high }) =>
      low.map(([a, b], i): Point[] => {
        const [c, d] = high[i]!;
        return [
          [from, a],
          [from, b],
          [to, d],
          [to, c],
        ];
      }),
    ),
    lines: [
      ...bands.flatMap(wallsOf),
      ...heights.flatMap((z) => facesAt(z, materialAt)),
      ...pieces.filter(({ adds }) => !adds).flatMap((piece) => edgesOf(piece, angle, materialAt)),
    ],
  };
}

interface Band {
  readonly from: number;
  readonly to: number;
  readonly low: readonly Interval[];
  readonly high: readonly Interval[];
}

function bandOf(from: number, to: number, materialAt: (z: number) => Interval[]): Band {
  const [low, high] = [materialAt(from + NEAR), materialAt(to - NEAR)];
  if (low.length === high.length) return { from, to, low, high };
  const middle = materialAt((from + to) / 2);
  return { from, to, low: middle, high: middle };
}

function wallsOf({ from, to, low, high }: Band): [Point, Point][] {
  return low.flatMap((ends, i) =>
    ([0, 1] as const).flatMap((k): [Point, Point][] =>
      // what reaches the axis goes on beyond it
      ends[k] === 0
        ? []
        : [
            [
              [from, ends[k]],
              [to, high[i]![k]],
            ],
          ],
    ),
  );
}

/** Where material ends at a height. */
function facesAt(z: number, materialAt: (z: number) => Interval[]): [Point, Point][] {
  const [below, above] = [materialAt(z - NEAR), materialAt(z + NEAR)];
  return across(z, [...subtracted(below, above), ...subtracted(above, below)]);
}

/** Edges of an opening that are seen behind the cut, straight across it. */
function edgesOf(piece: Piece, angle: number, materialAt: (z: number) => Interval[]): [Point, Point][] {
  return [piece.from, piece.to].flatMap((z) => {
    const [below, above] = [materialAt(z - NEAR), materialAt(z + NEAR)];
    const buried = subtracted(below, subtracted(below, above));
    return across(z, subtracted(alongRay(outlineOf(piece, z), angle), buried));
  });
}

function across(z: number, intervals: readonly Interval[]): [Point, Point][] {
  return intervals
    .filter(([a, b]) => b - a > 1e-4)
    .map(([a, b]) => [
      [z, a],
      [z, b],
    ]);
}

function ofPieces(pieces: readonly Piece[], adds: boolean, z: number, angle: number): Interval[] {
  return united(
    pieces
      .filter((piece) => piece.adds === adds && piece.from < z && z < piece.to)
      .flatMap((piece) => alongRay(outlineOf(piece, z), angle)),
  );
}

function outlineOf({ outline }: Piece, z: number): Outline {
  return typeof outline === 'function' ? outline(z) : outline;
}

/**
 * Where a ray from the origin runs inside an outline [mm].
 * @example alongRay([[1, -1], [3, -1], [3, 1], [1, 1]], 0) // [[1, 3]]
 */
export function alongRay(outline: Outline, angle: number): Interval[] {
  const [c, s] = [cosd(angle), sind(angle)];
  const turned = outline.map(([x, y]): Point => [c * x + s * y, c * y - s * x]);
  const hits = turned.flatMap(([x0, y0], i) => {
    const [x1, y1] = turned[(i + 1) % turned.length]!;
    if (y0 > 0 === y1 > 0) return [];
    return [x0 + (y0 / (y0 - y1)) * (x1 - x0)];
  });
  const ahead = hits.filter((x) => x > 0).sort((a, b) => a - b);
  const ends = ahead.length % 2 === 1 ? [0, ...ahead] : ahead;
  return ends.flatMap((end, i): Interval[] => (i % 2 === 0 ? [[end, ends[i + 1]!]] : []));
}

function united(intervals: readonly Interval[]): Interval[] {
  const made: Interval[] = [];
  for (const one of [...intervals].sort((a, b) => a[0] - b[0])) {
    const last = made.at(-1);
    if (last && one[0] <= last[1]) made[made.length - 1] = [last[0], Math.max(last[1], one[1])];
    else made.push(one);
  }
  return made;
}

function subtracted(from: readonly Interval[], cuts: readonly Interval[]): Interval[] {
  return cuts.reduce<Interval[]>(
    (left, [a, b]) =>
      left.flatMap(([from, to]): Interval[] =>
        (
          [
            [from, Math.min(to, a)],
            [Math.max(from, b), to],
          ] as const
        ).filter(([low, high]) => high > low),
      ),
    [...from],
  );
}
