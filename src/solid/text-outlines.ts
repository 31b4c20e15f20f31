import vectorText from '@jscad/modeling/src/text/vectorText.js';
import { fault } from '../units/faults.js';
import { requirePositive } from '../units/require.js';
import { cosd, sind } from './angles.js';
import type { Outline } from './outline.js';

/** A raised or sunk mark of straight strokes. */
export interface TextOptions {
  /** printable ASCII, one line */
  readonly text: string;
  /** of a capital letter over its strokes, mm, above the stroke */
  readonly height: number;
  /** width of a stroke, mm */
  readonly stroke: number;
}

/** Height of a capital letter's strokes for a font height of 1: 21 of 14 units. */
const CAPITAL = 1.5;

/** Half circles at a stroke's ends are drawn with so many sides. */
const END_SIDES = 4;

/**
 * A line of text as capsules, one for each straight piece of a stroke, centred on the origin along both axes. They
 * overlap where strokes meet: raise them together as `strokes`, sunk 0.2 mm into the body so that no faces are shared.
 *
 * @param options  text, letter height and stroke width  [mm]
 * @returns outlines, each counter-clockwise; none for a text of spaces  [mm]
 * @throws InputError  a size is not above 0, or the text holds other than printable ASCII
 * @example textOutlines({ text: 'I', height: 4, stroke: 0.8 }).length // 1
 */
export function textOutlines({ text, height, stroke }: TextOptions): readonly Outline[] {
  requirePositive('height', height);
  requirePositive('stroke', stroke);
  requirePositive('height', height - stroke);
  if (!/^[ -~]*$/.test(text)) throw fault('text', text, 'must be printable ASCII');
  const strokes = text.trim() === '' ? [] : vectorText({ height: (height - stroke) / CAPITAL }, text);
  const middle = middleOf(strokes.flat());
  const pieces = strokes.flatMap((points) =>
    points.slice(1).map((point, i) => capsule(shifted(points[i]!, middle), shifted(point, middle), stroke / 2)),
  );
  return pieces.filter((piece) => piece.length > 0);
}

function capsule(from: Point, to: Point, radius: number): Outline {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return [];
  const [c, s] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const round = (center: Point, start: number) =>
    Array.from({ length: END_SIDES + 1 }, (_, i): Point => {
      const angle = start + (180 * i) / END_SIDES;
      const [x, y] = [radius * cosd(angle), radius * sind(angle)];
      return [center[0] + c * x - s * y, center[1] + s * x + c * y];
    });
  return [...round(to, -90), ...round(from, 90)];
}

function middleOf(points: readonly Point[]): Point {
  const middle = (axis: 0 | 1) => {
    const values = points.map((point) => point[axis]);
    return (Math.min(...values) + Math.max(...values)) / 2;
  };
  return points.length === 0 ? [0, 0] : [middle(0), middle(1)];
}

function shifted(point: Point, by: Point): Point {
  return [point[0] - by[0], point[1] - by[1]];
}

type Point = readonly [number, number];
