import { type SizeWay, spreadOf } from '../../common/drawn/spread.js';
import type { Sizes } from '../../part-kind.js';
import type { Point, SizeChoice, SizeMark } from '../../part-views.js';
import { type CouponDesign, keyOf } from '../dimensions.js';
import { BLOCK, type ScalePlan } from '../plan.js';
import type { Plate } from '../strip.js';
import { topOf } from './plate.js';

/** Half-width that a size comes out with which stands in the file as it is meant. */
export type AsMeant = (size: number, way: SizeWay) => { spread?: number };

/** Nothing is corrected: all of the shrink and of the offset counts. Nothing for the sizes of the file. */
export function uncorrected({ material: { shrink }, printer }: CouponDesign, choice: SizeChoice): AsMeant {
  return (size, way) => {
    if (choice === 'printed') return {};
    const { at_zero, per_mm } = way === 'inside' ? printer.holeOffset : printer.outsideOffset;
    const offset =
      way === 'along' ? 0 : Math.abs(at_zero + per_mm * size) + (way === 'inside' ? printer.holeSpread : 0);
    return { spread: (way === 'along' ? shrink.axial : shrink.plane).most * size + offset };
  };
}

/** Sizes of the scale from above: over and between its blocks along X and Y, and the widths of its bars. */
export function scaleSizes({ span, bar }: ScalePlan, spread: AsMeant): SizeMark[] {
  const half = bar / 2;
  const over = ['x', 'y'].flatMap((axis) =>
    [span / 2, span].flatMap((place, i): SizeMark[] => {
      const mark = `${axis.toUpperCase()}${i + 1}`;
      const at = (along: number): Point => {
        return axis === 'x' ? [half + along, half - BLOCK / 2] : [half + BLOCK / 2, half + along];
      };
      const size = (what: string, from: number, to: number): SizeMark => ({
        name: keyOf(`${mark} ${what}`),
        value: to - from,
        ...spread(to - from, 'outside'),
        sign: `${mark} `,
        from: at(from),
        to: at(to),
        // the two sets stand apart, so that their figures find room
        side: axis === 'x' ? 'below' : 'right',
      });
      return [size('over', -BLOCK / 2, place + BLOCK / 2), size('between', BLOCK / 2, place - BLOCK / 2)];
    }),
  );
  // clear of the marks of the blocks, wherever these find room
  const along = [0.75, 0.62, 0.88].map((share) => half + share * span);
  const bars = [
    { name: 'f1', sign: 'F1 ', at: along.map((y): Point => [bar, y]) },
    { name: 'f2', sign: 'F2 ', at: along.map((x): Point => [x, bar]) },
  ];
  return [
    ...over,
    ...bars.map(
      ({ at, ...one }): SizeMark => ({
        ...one,
        value: bar,
        ...spread(bar, 'outside'),
        from: at[0]!,
        to: at[0]!,
        alike: at.slice(1),
        side: 'leader',
      }),
    ),
  ];
}

/** Heights of the steps from the underside, seen from +X. */
export function stepSizes({ heights }: ScalePlan, plate: Plate, spread: AsMeant): SizeMark[] {
  return heights.map((height, i): SizeMark => {
    const step = plate.columns.find((column) => column.height === height)!;
    const y = Math.min(...step.outline.map(([, up]) => up));
    return {
      name: `z${i + 1}`,
      value: height,
      ...spread(height, 'along'),
      sign: `Z${i + 1} `,
      from: [0, y],
      to: [-height, y],
      side: 'below',
    };
  });
}

/** What each station of a strip measures, straight above it. */
export function stripSizes(design: CouponDesign, plate: Plate, choice: SizeChoice): SizeMark[] {
  const spread = spreadOf(design, choice);
  const asMeant = uncorrected(design, choice);
  const sizes: Sizes = design.dimensions[choice];
  return plate.marks.flatMap(({ text }, i): SizeMark[] => {
    const tip = topOf(plate, i);
    const place = { from: tip, to: tip, side: 'riser' } as const;
    const key = keyOf(text);
    const step = design.features.threads.find(({ mark }) => mark === text);
    if (step)
      return choice === 'finished'
        ? [{ name: `${key}.diametral`, value: step.diametral, spread: design.printer.holeSpread, sign: '+', ...place }]
        : [];
    const value = sizes[key];
    if (typeof value !== 'number') return [];
    const pocket = design.features.pockets.find(({ mark }) => mark === text);
    if (pocket)
      return [{ name: key, value, sign: pocket.kind === 'hexagon' ? '' : '⌀', ...spread(value, 'inside'), ...place }];
    const way = text.startsWith('B') ? 'inside' : 'outside';
    return [{ name: key, value, sign: '⌀', ...asMeant(value, way), ...place }];
  });
}
