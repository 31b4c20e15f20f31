import type { PocketStep } from '../../calibrate/feature.js';
import { clipped, outlineBounds } from '../../solid/convex.js';
import { circleOutline, hexagonOutline, type Outline, polygonArea, sidesFor } from '../../solid/outline.js';
import { onceFor } from '../../units/once.js';
import { type Cut, holeCut, OVERSHOOT } from '../common/cut.js';
import { printSizes, uncompensated } from '../common/print-sizes.js';
import type { PlannedBody } from '../part-kind.js';
import type { SizeChoice } from '../part-views.js';
import type { CouponDesign } from './dimensions.js';
import { scalePlate } from './scale-plate.js';
import { type Column, type MarkStyle, markStyle, type Plate, plateBody, type Station, strip } from './strip.js';
import { type ThreadedCoupon, threadStation } from './thread-column.js';

/** Facets of what is measured stay this near to their circle, mm. */
const CHORD = 0.004;
/** Rings are as thick as so many lines. */
const WALL_LINES = 4;
const THICKNESS = 0.8;
const RING_HEIGHT = 4.5;
/** Posts from this diameter on are rings, to save material, mm. */
const HOLLOW = 10;
const POCKET_HEIGHT = 3.5;
/** Room between the bodies on the bed, mm. */
const BETWEEN = 4;

/** Every body of a coupon, laid out on the bed one behind the other. */
export function couponBodies(design: CouponDesign, sizes: SizeChoice = 'printed'): readonly PlannedBody[] {
  return sizes === 'printed' ? printedBodies(design) : bodiesOf(design, sizes);
}

/** What checks weigh is what is fused. */
const printedBodies = onceFor((design: CouponDesign) => bodiesOf(design, 'printed'));

function bodiesOf(design: CouponDesign, sizes: SizeChoice): readonly PlannedBody[] {
  const style = markStyle(design.printer.lineWidth);
  const drawn = sizes === 'printed' ? design : { ...design, printer: uncompensated(design.printer) };
  return couponPlates(design, sizes).map((plate) => plateBody(plate, asInFile(plate.name, drawn), style));
}

/** Scale, bores and posts stand in the file as they are meant. */
function asInFile(plate: string, design: CouponDesign): CouponDesign {
  const isTrue = plate === 'scale' || plate === 'bores';
  return isTrue ? { ...design, printer: uncompensated(design.printer) } : design;
}

/** The plates of a coupon with what stands on them, in their places on the bed. */
export function couponPlates(design: CouponDesign, sizes: SizeChoice = 'printed'): Plate[] {
  const drawn = sizes === 'printed' ? design : { ...design, printer: uncompensated(design.printer) };
  let front = 0;
  return platesOf(drawn, markStyle(design.printer.lineWidth)).map((make) => {
    const plate = make(front);
    front = outlineBounds(plate.outline).max[1] + BETWEEN;
    return plate;
  });
}

function platesOf(design: CouponDesign, style: MarkStyle): ((front: number) => Plate)[] {
  const { plan, features, printer } = design;
  const wall = WALL_LINES * printer.lineWidth;
  const row = (name: string, stations: readonly Station[]) => (front: number) =>
    strip(name, stations, { corner: [0, front], thickness: THICKNESS, style });
  return [
    ...(plan.scale ? [(front: number) => scalePlate(plan.scale!, front, style)] : []),
    ...(plan.diameters ? [row('bores', boreStations(design, wall))] : []),
    ...(plan.thread && design.screw ? [row('thread', threadStations({ ...design, screw: design.screw }, wall))] : []),
    ...(plan.pockets
      ? [
          row(
            'pockets',
            features.pockets.map((step) => pocketStation(design, step, wall)),
          ),
        ]
      : []),
  ];
}

function threadStations(design: ThreadedCoupon, wall: number): Station[] {
  return design.features.threads.map((step) => threadStation(design, step, wall));
}

function boreStations({ features }: CouponDesign, wall: number): Station[] {
  return features.reads.flatMap(({ mark, kind, modelled }): Station[] => {
    if (kind === 'hole') {
      const half = modelled / 2 + wall;
      return [
        {
          mark,
          half,
          column: (center) => ({
            outline: disc(2 * half, center),
            height: RING_HEIGHT,
            wall,
            ...bored(modelled, center),
          }),
        },
      ];
    }
    if (kind !== 'post') return [];
    const inner = modelled - 2 * wall;
    const hollow = (center: readonly [number, number]) =>
      modelled < HOLLOW ? { wall: modelled } : { wall, ...bored(inner, center) };
    return [
      {
        mark,
        half: modelled / 2,
        column: (center) => ({ outline: disc(modelled, center), height: RING_HEIGHT, ...hollow(center) }),
      },
    ];
  });
}

/** A bore through a ring, as it is meant. */
function bored(diameter: number, center: readonly [number, number]): Pick<Column, 'cut' | 'opening'> {
  return {
    cut: holeCut({ center, from: 0, to: RING_HEIGHT, bore: diameter }, (size) => size, CHORD),
    opening: { kind: 'plain', outline: disc(diameter, center) },
  };
}

function pocketStation({ plan, material, printer }: CouponDesign, step: PocketStep, wall: number): Station {
  const { inside } = printSizes(material, printer);
  const at = (center: readonly [number, number]) => pocketOutline(step, inside, plan.pockets!, center);
  const half = Math.max(...at([0, 0]).map(([x, y]) => Math.hypot(x, y))) + wall;
  return {
    mark: step.mark,
    half,
    column: (center) => ({
      outline: disc(2 * half, center),
      height: POCKET_HEIGHT,
      wall,
      cut: through(at(center)),
      opening: { kind: 'plain', outline: at(center) },
    }),
  };
}

function pocketOutline(
  { kind, size, nominal }: PocketStep,
  inside: (size: number) => number,
  { flat }: { readonly flat: number },
  center: readonly [number, number],
): Outline {
  if (kind === 'hexagon') return hexagonOutline({ acrossFlats: inside(size), center, turn: 30 });
  const radius = inside(size) / 2;
  const circle = circleOutline({ radius, sides: sidesFor(radius, CHORD), circumscribed: true, center });
  if (kind !== 'd_shaft') return circle;
  const across = inside(flat + size - nominal);
  return clipped(circle, [1, 0, center[0] + across - radius]);
}

function through(outline: Outline): Cut {
  return {
    shape: { kind: 'prism', outlines: [outline], from: -OVERSHOOT, to: POCKET_HEIGHT + OVERSHOOT },
    volume: polygonArea(outline) * POCKET_HEIGHT,
  };
}

function disc(diameter: number, center: readonly [number, number]): Outline {
  return circleOutline({ radius: diameter / 2, sides: sidesFor(diameter / 2, CHORD), center });
}
