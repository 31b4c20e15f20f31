import type { DesignBase, Expected, Sizes } from './part-kind.js';
import type { DrawnView, HoleRow, PartViews, Point, SizeChoice, SizeMark, Stroke } from './part-views.js';

/** A body's outer sizes under its name. */
export interface BodyBox {
  readonly name: string;
  readonly material: string;
  readonly bounds: Expected['bounds'];
}

/** Room between boxes that would lie in one another [mm]. */
const GAP = 8;

/** Views for a part kind that gives none: a box a body with its outer sizes in the file, and the holes it names. */
export function plainViews(design: DesignBase, bodies: readonly BodyBox[], sizes: SizeChoice): PartViews {
  const shifts = besideOneAnother(bodies.map(({ bounds }) => bounds));
  const moved = bodies.map((body, i) => ({ ...body, bounds: shifted(body.bounds, shifts[i]!) }));
  return {
    side: boxView('Side, outer sizes in the file', moved, (b) => [
      [-b[1][2], b[0][1]],
      [-b[0][2], b[1][1]],
    ]),
    end: boxView('End, outer sizes in the file', moved, (b) => [
      [b[0][0], b[0][1]],
      [b[1][0], b[1][1]],
    ]),
    holes: holesOf(design.dimensions[sizes]),
    notes: [],
    material: [...new Set(bodies.map(({ material }) => material))].join(', '),
    companions: [],
    ...(bodies.length > 1
      ? { inUse: Object.fromEntries(bodies.map(({ name }, i) => [name, { by: shifts[i]! }])) }
      : {}),
    cutTowards: 0,
    turnedOver: false,
  };
}

/** Shifts along X that set boxes beside one another in their order, the first where it is; none where there is one. */
export function besideOneAnother(
  boxes: readonly (readonly [readonly number[], readonly number[]])[],
): (readonly [number, number, number])[] {
  let edge: number | undefined;
  return boxes.map(([low, high]) => {
    const shift = edge === undefined ? 0 : edge + GAP - low[0]!;
    edge = high[0]! + shift;
    return [shift, 0, 0] as const;
  });
}

function shifted([low, high]: Expected['bounds'], by: readonly [number, number, number]): Expected['bounds'] {
  return [
    [low[0] + by[0], low[1] + by[1], low[2] + by[2]],
    [high[0] + by[0], high[1] + by[1], high[2] + by[2]],
  ];
}

type Corners = readonly [Point, Point];

function boxView(
  title: string,
  bodies: readonly BodyBox[],
  cornersOf: (bounds: Expected['bounds']) => Corners,
): DrawnView {
  const boxes = bodies.map(({ bounds }) => cornersOf(bounds));
  const all: Corners = [
    [Math.min(...boxes.map(([low]) => low[0])), Math.min(...boxes.map(([low]) => low[1]))],
    [Math.max(...boxes.map(([, high]) => high[0])), Math.max(...boxes.map(([, high]) => high[1]))],
  ];
  const strokes: Stroke[] = boxes.map(([[x0, y0], [x1, y1]]) => ({
    kind: 'path',
    line: 'thin',
    closed: true,
    points: [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ],
  }));
  const [low, high] = all;
  const sizes: SizeMark[] = [
    { name: 'file.width', value: high[0] - low[0], from: low, to: [high[0], low[1]], side: 'below' },
    { name: 'file.height', value: high[1] - low[1], from: [low[0], low[1]], to: [low[0], high[1]], side: 'left' },
  ];
  return { title, strokes, hatched: [], sizes, letters: [] };
}

/** Every size that is named as the diameter of holes. */
function holesOf(sizes: Sizes): HoleRow[] {
  return Object.entries(sizes).flatMap(([name, size]): HoleRow[] => {
    if (typeof size !== 'number') return holesOf(size);
    if (!/hole.*diameter$|bore$/.test(name)) return [];
    const circle = sizes[name.replace(/diameter$/, 'circle')];
    const note = typeof circle === 'number' && circle !== size ? `on a circle of ${circle.toFixed(2)}` : '';
    return [{ label: name.replaceAll('_', ' '), at: [0, 0], diameter: size, note }];
  });
}
