import { type Outline, rectangleOutline } from '../../solid/outline.js';
import { BLOCK, type ScalePlan } from './plan.js';
import { type Column, type MarkStyle, markAt, markWidth, type Plate } from './strip.js';

const THICKNESS = 1.2;
const BLOCK_HEIGHT = 6;
/** Sides of the steps: the highest one stands more firmly. */
const STEP_SIDES = [5, 5, 6] as const;
const GAP = 1;

/**
 * Two bars at right angles with blocks at equal places, and steps of rising height on a pad in the corner.
 * @param front least y of the plate
 */
export function scalePlate({ span, bar, heights }: ScalePlan, front: number, style: MarkStyle): Plate {
  const half = bar / 2;
  const [x0, y0] = [half, front + half];
  const far = span + half;
  const pad = padOf(heights, style);
  const inner: readonly (readonly [number, number])[] =
    heights.length === 0
      ? [[half, half]]
      : [
          [half + GAP + pad.size[0], half],
          [half + GAP + pad.size[0], half + pad.size[1]],
          [half + GAP, half + pad.size[1]],
          [half + GAP, half],
          [half, half],
        ];
  const outline: Outline = (
    [[-half, -half], [far, -half], [far, half], ...inner, [half, far], [-half, far]] as const
  ).map(([x, y]): [number, number] => [x + x0, y + y0]);
  const block = (x: number, y: number): Column => ({
    outline: rectangleOutline({ size: [BLOCK, BLOCK], center: [x0 + x, y0 + y] }),
    height: BLOCK_HEIGHT,
    wall: BLOCK,
  });
  const places = [span / 2, span];
  const beside = (text: string) => BLOCK / 2 + GAP + markWidth(text, style) / 2;
  const under = BLOCK / 2 + GAP + style.height / 2;
  const marks = [
    ...places.map((place, i) => markAt(`X${i + 1}`, [x0 + place - beside(`X${i + 1}`), y0], style)),
    ...places.map((place, i) => markAt(`Y${i + 1}`, [x0, y0 + place - under], style)),
    markAt('F2', [x0 + span / 2 + beside('F2'), y0], style),
    markAt('F1', [x0, y0 + span / 2 + under], style),
    ...pad.marks(x0 + half + GAP, y0 + half),
  ];
  return {
    name: 'scale',
    outline,
    thickness: THICKNESS,
    columns: [
      block(0, 0),
      ...places.flatMap((place) => [block(place, 0), block(0, place)]),
      ...pad.columns(x0 + half + GAP, y0 + half),
    ],
    marks,
  };
}

/** Least width of a bar and least span for the marks to stand clear of the blocks, mm. */
export function roomForMarks(style: MarkStyle): { readonly bar: number; readonly span: number } {
  const width = Math.max(...['X1', 'X2', 'Y1', 'Y2', 'F1', 'F2'].map((text) => markWidth(text, style)));
  return {
    bar: Math.max(8, Math.ceil(Math.max(style.height, width) + GAP)),
    span: Math.ceil(2 * (BLOCK + 2 * width + 3 * GAP)),
  };
}

/** The pad that the steps stand on, behind the bar along X. */
function padOf(heights: readonly number[], style: MarkStyle) {
  const names = heights.map((_, i) => `Z${i + 1}`);
  const cells = names.map((name, i) => Math.max(markWidth(name, style), STEP_SIDES[i] ?? 6) + 1.5 * GAP);
  const middles = cells.map((cell, i) => cells.slice(0, i).reduce((sum, one) => sum + one, GAP / 2) + cell / 2);
  const deep = 6;
  return {
    size: [cells.reduce((sum, cell) => sum + cell, GAP), style.height + deep + 3 * GAP] as const,
    columns: (x: number, y: number) =>
      heights.map(
        (height, i): Column => ({
          outline: rectangleOutline({
            size: [STEP_SIDES[i] ?? 6, STEP_SIDES[i] ?? 6],
            center: [x + middles[i]!, y + 2 * GAP + style.height + deep / 2],
          }),
          height,
          wall: STEP_SIDES[i] ?? 6,
        }),
      ),
    marks: (x: number, y: number) =>
      names.map((name, i) => markAt(name, [x + middles[i]!, y + GAP + style.height / 2], style)),
  };
}
