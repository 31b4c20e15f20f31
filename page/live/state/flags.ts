import type { DrawnView, Point, SizeMark } from '../../../src/parts/part-views.js';

/** A size with its place beside the picture, in pixels of the picture's box. */
export interface Flag {
  readonly size: SizeMark;
  /** the middle of its label */
  readonly at: Point;
  /** ends of its dimension line */
  readonly line: readonly [Point, Point];
  /** where its witness lines begin, on the part */
  readonly on: readonly [Point, Point];
}

/** A picture with its flags: where millimetres of the part land in the box. */
export interface Framed {
  readonly scale: number;
  readonly toBox: (point: Point) => Point;
  readonly flags: readonly Flag[];
}

export interface Box {
  readonly width: number;
  readonly height: number;
}

/** Rows above and below, columns beside; narrower on a phone [px]. */
const ROOMY = { row: 36, column: 124, edge: 14 };
const TIGHT = { row: 30, column: 82, edge: 8 };
const NARROW = 520;

type Side = 'above' | 'below' | 'left' | 'right';

/**
 * Fits a section into a box and gives every size a place of its own: diameters as columns beside it, lengths as rows
 * above and below, the shorter ones nearer to the part.
 *
 * @param view the section, axis lying
 * @param box in pixels
 * @returns where things stand; leaders have no flag
 */
export function frame(view: Pick<DrawnView, 'strokes' | 'sizes'>, box: Box): Framed {
  const [[left, low], [right, high]] = boundsOf(view);
  const on = (side: Side) => stacked(view.sizes.filter((size) => size.side === side));
  const tiers = { above: on('above'), below: on('below'), left: on('left'), right: on('right') };
  const { row, column, edge } = box.width < NARROW ? TIGHT : ROOMY;
  const room = {
    left: edge + tiers.left.length * column,
    right: edge + tiers.right.length * column,
    above: edge + tiers.above.length * row,
    below: edge + tiers.below.length * row,
  };
  const scale = Math.max(
    0.2,
    Math.min(
      (box.width - room.left - room.right) / Math.max(1e-6, right - left),
      (box.height - room.above - room.below) / Math.max(1e-6, high - low),
    ),
  );
  const x0 = room.left + (box.width - room.left - room.right - scale * (right - left)) / 2;
  const y0 = room.above + (box.height - room.above - room.below - scale * (high - low)) / 2;
  const toBox = ([x, y]: Point): Point => [x0 + (x - left) * scale, y0 + (high - y) * scale];
  const [[boxLeft, boxLow], [boxRight, boxHigh]] = [toBox([left, low]), toBox([right, high])];
  const flags = (Object.keys(tiers) as Side[]).flatMap((side) =>
    tiers[side].map((size, tier): Flag => {
      const [from, to] = [toBox(size.from), toBox(size.to)];
      const off = (tier + 0.5) * (side === 'above' || side === 'below' ? row : column);
      const line: readonly [Point, Point] =
        side === 'above'
          ? [atY(from, boxHigh - off), atY(to, boxHigh - off)]
          : side === 'below'
            ? [atY(from, boxLow + off), atY(to, boxLow + off)]
            : side === 'left'
              ? [atX(from, boxLeft - off), atX(to, boxLeft - off)]
              : [atX(from, boxRight + off), atX(to, boxRight + off)];
      return { size, line, on: [from, to], at: middle(line) };
    }),
  );
  return { scale, toBox, flags };
}

function stacked(sizes: readonly SizeMark[]): SizeMark[] {
  return [...sizes].sort((a, b) => reach(a) - reach(b));
}

function reach({ from, to }: SizeMark): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

function atY([x]: Point, y: number): Point {
  return [x, y];
}

function atX([, y]: Point, x: number): Point {
  return [x, y];
}

function middle([a, b]: readonly [Point, Point]): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function boundsOf({ strokes }: Pick<DrawnView, 'strokes'>): readonly [Point, Point] {
  const points = strokes.flatMap((stroke): readonly Point[] =>
    stroke.kind === 'path' ? stroke.points : around(stroke.center, stroke.radius),
  );
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  if (points.length === 0)
    return [
      [0, 0],
      [1, 1],
    ];
  return [
    [Math.min(...xs), Math.min(...ys)],
    [Math.max(...xs), Math.max(...ys)],
  ];
}

function around([x, y]: Point, radius: number): Point[] {
  return [
    [x - radius, y - radius],
    [x + radius, y + radius],
  ];
}
