import type { Outline } from '../../solid/outline.js';
import { textOutlines } from '../../solid/text-outlines.js';

/** Letters of the engraved figures, and the room around them, mm. @source common-practice */
const HEIGHT = 3.5;
const CLEAR = 0.6;

/** Strokes are as wide as so many lines. */
const LINES = 2;

/** Strokes of a figure about the origin, reading outwards from the axis on +Y when moved there. */
function strokesOf(figure: string, lineWidth: number): readonly Outline[] {
  return textOutlines({ text: figure, height: HEIGHT, stroke: LINES * lineWidth });
}

/** Strokes of a figure in their place beside a bore. */
export function figureOutlines(figure: string, bore: number, lineWidth: number): readonly Outline[] {
  const up = bore + CLEAR + HEIGHT / 2;
  return strokesOf(figure, lineWidth).map((outline) => outline.map(([x, y]) => [x, y + up] as const));
}

/**
 * The least outside that takes every figure beside the bore, in half millimetres.
 * @param ring.bore radius over the mouths of the thread [mm]
 */
export function leastOutside(
  { bore, figures }: { readonly bore: number; readonly figures: readonly string[] },
  lineWidth: number,
): number {
  const corners = figures.flatMap((figure) => figureOutlines(figure, bore, lineWidth).flat());
  const reach = Math.max(...corners.map(([x, y]) => Math.hypot(x, y)));
  return Math.ceil(4 * (reach + CLEAR)) / 2;
}
