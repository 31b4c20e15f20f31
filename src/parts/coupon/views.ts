import { outlineBounds } from '../../solid/convex.js';
import { alike } from '../../units/format.js';
import { noted } from '../common/drawn/spread.js';
import type { AskedView, HoleRow, PartViews, SizeChoice } from '../part-views.js';
import type { CouponDesign } from './dimensions.js';
import { couponBodies, couponPlates } from './solid.js';
import type { Plate } from './strip.js';
import { type PlateInSight, plateFromAbove, plateFromRight } from './views/plate.js';
import { scaleSizes, stepSizes, stripSizes, uncorrected } from './views/sizes.js';

const TITLES: Readonly<Record<string, string>> = {
  scale: 'Scale, from above',
  bores: 'Bores and posts',
  thread: 'Short nuts',
  pockets: 'Pockets',
};

/** What a drawing and the page show of a coupon: each plate from above with the size of every mark, as on the bed. */
export function couponViews(design: CouponDesign, choice: SizeChoice): PartViews {
  const plates = couponPlates(design, choice);
  const shapes = couponBodies(design, choice).map(({ recipe }) => recipe.shape);
  const [first, ...rest] = plates.map((plate, i) => ({ plate, shape: shapes[i]! })) as [
    PlateInSight,
    ...PlateInSight[],
  ];
  const fromAbove = (one: PlateInSight): AskedView =>
    plateFromAbove(one, TITLES[one.plate.name]!, sizesOf(design, one.plate, choice));
  const alone = (one: PlateInSight): AskedView => ({ ...fromAbove(one), isAlone: true });
  return {
    side: plateFromRight(
      first,
      design.plan.scale ? stepSizes(design.plan.scale, first.plate, uncorrected(design, choice)) : [],
    ),
    end: fromAbove(first),
    ...(rest.length > 0 ? { further: rest.map(alone) } : {}),
    holes: plates.flatMap((plate) => nutRows(design, plate)),
    notes: notesOf(design),
    material: design.material.name,
    companions: [],
    inUse: inTheMiddle(plates),
    cutTowards: 0,
  };
}

function sizesOf(design: CouponDesign, plate: Plate, choice: SizeChoice) {
  return plate.name === 'scale'
    ? scaleSizes(design.plan.scale!, uncorrected(design, choice))
    : stripSizes(design, plate, choice);
}

/** The short nuts, by their bores in the file. */
function nutRows({ features }: CouponDesign, { marks, columns }: Plate): HoleRow[] {
  const axials = alike(features.threads.map(({ axial }) => axial));
  return marks.flatMap(({ text }, i): HoleRow[] => {
    const opening = columns[i]?.opening;
    const step = features.threads.findIndex(({ mark }) => mark === text);
    if (step < 0 || opening?.kind !== 'thread') return [];
    const note = `in the file; axial +${axials[step]} mm`;
    return [{ label: text, at: opening.center, diameter: opening.minor, note }];
  });
}

/** Where to put the calipers, and what to try; one line a plate. */
function notesOf({ plan: { scale, diameters, thread, pockets }, screw }: CouponDesign): string[] {
  const steps = scale && scale.heights.length > 0 ? '; Z: from the underside' : '';
  return [
    ...(scale
      ? [
          `X, Y: jaws over the outer, then between the inner faces of the corner block and the block with the mark; F: width of the bar at its lowest edge${steps}`,
        ]
      : []),
    [
      ...(diameters ? ['B: inside, at the top of the bore; P: outside, half way up the post'] : []),
      ...(thread && screw ? [`T: try ${screw.designation ?? 'the screw'}, + is its clearance on the diameter`] : []),
    ].join('; '),
    ...(pockets
      ? [
          `H: nut ${pockets.screw}, across flats; I: insert ${pockets.screw}; S: shaft ${noted(pockets.shaft)}; D: the same with a flat at ${noted(pockets.flat)}`,
        ]
      : []),
  ].filter((line) => line !== '');
}

/** All plates shifted as one, so that a cut runs along the foremost row. */
function inTheMiddle(plates: readonly Plate[]): NonNullable<PartViews['inUse']> {
  const widest = Math.max(...plates.map(({ outline }) => outlineBounds(outline).max[0]));
  const first = plates[0]!.columns[0]!.outline;
  const { min, max } = outlineBounds(first);
  const by = [-widest / 2, -(min[1] + max[1]) / 2, 0] as const;
  return Object.fromEntries(plates.map(({ name }) => [name, { by }]));
}
