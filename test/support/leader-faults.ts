import { dimensionsInk } from '../../src/output/drawing/dimensions.js';
import type { Ink } from '../../src/output/drawing/ink.js';
import { leadersInk } from '../../src/output/drawing/leaders.js';
import type { LaidView } from '../../src/output/drawing/sheet-layout.js';
import { viewInk } from '../../src/output/drawing/view-ink.js';
import type { Point } from '../../src/parts/part-views.js';

type Line = readonly [Point, Point];

interface Box {
  readonly min: Point;
  readonly max: Point;
}

/** A line may touch a circle or a text by this much, mm of paper. */
const TOUCH = 0.25;
/** How far the line of a leader may miss the middle of its circle, mm of paper. */
const MISSED = 0.05;

/**
 * What leaders of a view do that they must not: run through a circle that is not about their own, through a text or
 * another leader, or come to a circle otherwise than from its middle.
 */
export function leaderFaults(placed: LaidView): string[] {
  const { view, at, scale, leaders } = placed;
  const [left, top] = at([0, 0]);
  const led = leaders.map(({ mark, points, circle }) => {
    const on = points.map(([x, y]): Point => [left + x, top + y]);
    return { name: mark.name, mark, tip: on[0]!, lines: on.slice(1).map((end, i): Line => [on[i]!, end]), circle };
  });
  const texts = [...viewInk(placed), ...dimensionsInk(placed), ...leadersInk(placed)].flatMap(boxOf);
  const discs = view.strokes.flatMap((stroke) =>
    stroke.kind === 'circle' && stroke.line !== 'centre'
      ? [{ middle: at(stroke.center), radius: scale * stroke.radius }]
      : [],
  );
  return led.flatMap(({ name, tip, lines, mark, circle }, i) => {
    const middles = [mark.from, ...(mark.alike ?? [])].map(at);
    const own = middles.reduce((best, one) => (off(one, lines[0]!) < off(best, lines[0]!) ? one : best));
    return [
      ...discs
        .filter(({ middle, radius }) => apart(middle, tip) > radius - TOUCH)
        .filter(({ middle, radius }) => lines.some((line) => distance(line, middle) < radius - TOUCH))
        .map(() => `${name} crosses a circle`),
      ...discs
        .filter(({ middle, radius }) => circle && apart(middle, tip) < radius - TOUCH && apart(middle, own) > radius)
        .map(() => `${name} ends in a circle`),
      ...texts.filter((box) => lines.some((line) => isIn(line, box))).map(({ text }) => `${name} crosses ${text}`),
      ...led
        .slice(i + 1)
        .filter((other) => lines.some((a) => other.lines.some((b) => cross(a, b))))
        .map((other) => `${name} crosses the leader of ${other.name}`),
      ...(circle && off(own, lines[0]!) > MISSED ? [`${name} does not aim at the middle`] : []),
    ];
  });
}

function boxOf(ink: Ink): (Box & { text: string })[] {
  if (ink.kind !== 'text' || ink.text === '') return [];
  const { text, at, height, anchor, turn } = ink;
  const width = (0.55 * height * [...text].length) / 0.72;
  const start = anchor === 'middle' ? -width / 2 : anchor === 'end' ? -width : 0;
  const [x, y] = at;
  return turn
    ? [{ text, min: [x - height, y - start - width], max: [x, y - start] }]
    : [{ text, min: [x + start, y - height], max: [x + start + width, y] }];
}

/** How far a point lies off the whole line through two others. */
function off([x, y]: Point, [[x0, y0], [x1, y1]]: Line): number {
  return Math.abs((x1 - x0) * (y - y0) - (y1 - y0) * (x - x0)) / Math.hypot(x1 - x0, y1 - y0);
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** Looked at in steps, which is slow and plain. */
function samples([from, to]: Line): Point[] {
  const steps = Math.ceil(apart(from, to) / 0.1);
  return Array.from({ length: steps + 1 }, (_, i) => [
    from[0] + ((to[0] - from[0]) * i) / steps,
    from[1] + ((to[1] - from[1]) * i) / steps,
  ]);
}

function distance(line: Line, point: Point): number {
  return Math.min(...samples(line).map((one) => apart(one, point)));
}

function isIn(line: Line, { min, max }: Box): boolean {
  return samples(line).some(([x, y]) => x > min[0] && x < max[0] && y > min[1] && y < max[1]);
}

function cross([a, b]: Line, [c, d]: Line): boolean {
  const side = (p: Point, q: Point, r: Point) =>
    Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
