import { describe, expect, it } from 'vitest';
import type { AdapterDesign } from '../../../src/parts/adapter/dimensions.js';
import { finishedFloat, floatStop, leftInHoles } from '../../../src/parts/adapter/float-stop.js';
import { thinnestNeck } from '../../../src/parts/adapter/necks.js';
import type { Cutout, OutlinePlan, PlateSizes } from '../../../src/parts/adapter/plan.js';
import { exactly } from '../../../src/units/measured.js';

type Point = readonly [number, number];
const neck = (outline: OutlinePlan, ...cutouts: Partial<Cutout>[]) =>
  thinnestNeck({
    outline,
    flats: [],
    cutouts: cutouts.map((one) => ({ at: [0, 0], turn: 0, ...one })),
  } as unknown as PlateSizes);
const polygon = (...corners: Point[]): OutlinePlan => ({ shape: 'polygon', corners });
const box = (width: number, height: number): OutlinePlan => ({
  shape: 'rectangular',
  size: [width, height],
  corner: 0,
  center: [0, 0],
});
const ROUND: OutlinePlan = { shape: 'round', diameter: 40, center: [0, 0] };

describe('the thinnest place of a plate', () => {
  it('lies between sides that look apart', () => {
    expect(neck(box(40, 30))).toBeCloseTo(30, 9);
    // chords of a round that look apart within 40° are no shorter than 40 · cos 20°, less a facet
    expect(neck(ROUND)).toBeCloseTo(40 * Math.cos(Math.PI / 9), 0);
    // an L with arms 10 and 12 mm wide
    const l = polygon([0, 0], [40, 0], [40, 10], [12, 10], [12, 40], [0, 40]);
    expect(neck(l)).toBeCloseTo(10, 9);
  });

  it('is no air between two arms: a U of 8 mm around 2 mm', () => {
    const u = polygon([0, 0], [18, 0], [18, 40], [10, 40], [10, 9], [8, 9], [8, 40], [0, 40]);
    expect(neck(u)).toBeCloseTo(8, 9);
  });

  it('lies under the tip of a notch, whose corner looks away between its sides', () => {
    const notched = polygon([-20, 0], [20, 0], [20, 20], [3, 20], [0, 7], [-3, 20], [-20, 20]);
    expect(neck(notched)).toBeCloseTo(7, 9);
    // the same from the other side and turned round
    const below = polygon([-20, -20], [-3, -20], [0, -7], [3, -20], [20, -20], [20, 0], [-20, 0]);
    expect(neck(below)).toBeCloseTo(7, 9);
    // a corner that stands out is none: a tip of 2 mm on the far side
    const tip = polygon([-20, 0], [20, 0], [20, 20], [3, 20], [0, 22], [-3, 20], [-20, 20]);
    expect(neck(tip)).toBeCloseTo(20, 9);
  });

  it('lies under a corner between an upright side and a slanted one, which looks away between both', () => {
    expect(neck(polygon([-20, 0], [20, 0], [20, 20], [5, 20], [0, 7], [0, 20], [-20, 20]))).toBeCloseTo(7, 9);
    expect(neck(polygon([-20, 0], [20, 0], [20, 20], [0, 20], [0, 7], [-5, 20], [-20, 20]))).toBeCloseTo(7, 9);
    // lying on its side
    expect(neck(polygon([0, -20], [20, -20], [20, 0], [7, 0], [20, 5], [20, 20], [0, 20]))).toBeCloseTo(7, 9);
  });

  it('lies under a corner whose sides both lean away, aslant, however the plan is turned', () => {
    // a void of 70° with its tip at the origin, between 15° and 85°; the far side runs 5 mm behind it, square to 50°
    const at = (radius: number, angle: number): Point => [
      radius * Math.cos((angle * Math.PI) / 180),
      radius * Math.sin((angle * Math.PI) / 180),
    ];
    const far = (along: number, turn: number): Point => {
      const [[x, y], [u, v]] = [at(-5, 50 + turn), at(along, turn - 40)];
      return [x + u, y + v];
    };
    for (const turn of [0, 100]) {
      const corners = [far(-20, turn), far(20, turn), at(20, 15 + turn), [0, 0], at(20, 85 + turn)] as const;
      expect(neck(polygon(...corners))).toBeCloseTo(5, 9);
    }
  });

  it('is a wall within 40° of parallel, and a wedge beyond', () => {
    // sides that lean apart by 30° from a width of 4 mm on; by 50° the 30 mm between head and foot are the neck
    const wedge = (angle: number) => {
      const half = 2 + 30 * Math.tan((angle * Math.PI) / 360);
      return neck(polygon([-half, 0], [half, 0], [2, 30], [-2, 30]));
    };
    expect(wedge(30)).toBeCloseTo(4, 9);
    expect(wedge(39)).toBeCloseTo(4, 9);
    expect(wedge(41)).toBeCloseTo(30, 9);
    // nothing of an even triangle looks apart, and its corners are no walls
    expect(neck(polygon([0, 0], [20, 0], [10, 10 * Math.sqrt(3)]))).toBe(Infinity);
  });
});

describe('a neck beside cut-outs', () => {
  it('of a round one: 20 − 7 − 5 mm', () => {
    expect(neck(ROUND, { at: [0, 7], diameter: 10 })).toBeCloseTo(8, 1);
    expect(neck(ROUND, { at: [-7, 0], diameter: 10 })).toBeCloseTo(8, 1);
  });

  it('of two square ones: 16 − 10 mm', () => {
    expect(neck(box(60, 60), { at: [-8, 0], size: [10, 10] }, { at: [8, 0], size: [10, 10] })).toBeCloseTo(6, 9);
    // corner to corner at 45° they look apart: √2 · 6
    const apart = [
      { at: [-8, -8], size: [10, 10] },
      { at: [8, 8], size: [10, 10] },
    ] as const;
    expect(neck(box(60, 60), ...apart)).toBeGreaterThan(6);
  });

  it('that is open to the edge: 20 − 3 mm beside it, 5 − (−7) under it', () => {
    expect(neck(box(40, 60), { at: [0, 30], size: [6, 20] })).toBeCloseTo(17, 9);
    expect(neck(box(40, 30), { at: [0, 15], size: [6, 36] })).toBeCloseTo(12, 9);
  });

  it('of which nothing lies in the plate is none', () => {
    expect(neck(box(40, 30), { at: [0, 60], size: [6, 20] })).toBeCloseTo(30, 9);
  });

  it('is none between two that both lie beyond the plate, 1 mm apart', () => {
    expect(neck(box(40, 30), { at: [25, 5], size: [6, 4] }, { at: [25, 0], size: [6, 4] })).toBeCloseTo(30, 9);
  });

  it('of a window that leaves a frame: 30 − 28 mm beside it', () => {
    expect(neck(box(60, 40), { size: [56, 30] })).toBeCloseTo(2, 9);
  });

  it('lies over a hole between a bite and the end of a side with two bites, in whatever order they are told', () => {
    // a hole from −17 to −14 whose top is at 13 of 15; bites half a millimetre deep around −10 and 0
    const hole = { at: [-15.5, 8], size: [3, 10] } as const;
    const [near, middle] = [{ at: [-10, 15], size: [4, 1] } as const, { at: [0, 15], size: [4, 1] } as const];
    expect(neck(box(40, 30), hole, near, middle)).toBeCloseTo(2, 9);
    expect(neck(box(40, 30), hole, middle, near)).toBeCloseTo(2, 9);
  });

  it('where two overlap counts what is left of both', () => {
    // a slot 6 mm wide and one across: together they reach from −10 to 10 mm of 30
    const cross = [{ size: [6, 10] }, { size: [20, 4] }] as const;
    expect(neck(box(30, 60), ...cross)).toBeCloseTo(5, 9);
  });
});

describe('where a floating nut is stopped, by hand', () => {
  const TWO_HOLES: readonly Point[] = [
    [0, 12],
    [9, -12],
  ];
  const pattern = {
    diameter: { least: 5.5, likely: 5.6, most: 5.7 },
    screwDiameter: 3,
    centres: TWO_HOLES,
  };
  const design = (more: object = {}, nut: object = {}, plate: object = {}) =>
    ({
      nut: { pattern, stands: 'on', seat: 'outside', body: exactly(17), flange: { size: [37] }, ...nut },
      input: { keys: [] },
      layout: { plate: { bore: 18, ...plate } },
      ...more,
    }) as unknown as AdapterDesign;
  const half = (pin: number) => ({
    least: expect.closeTo((5.5 - pin) / 2, 9),
    likely: expect.closeTo((5.6 - pin) / 2, 9),
    most: expect.closeTo((5.7 - pin) / 2, 9),
  });

  it('is what stands in its holes, on the outermost of them: 15 mm from the axis', () => {
    expect(floatStop(design())).toEqual({ sideways: half(3), radius: 15 });
    expect(floatStop(design({ spacers: { pin: 5 } }))).toEqual({ sideways: half(5), radius: 15 });
  });

  it('is the end of its keys', () => {
    const keyed = design({ float: 0.4, input: { keys: [{ size: [24, 6] }] } });
    expect(floatStop(keyed)).toEqual({ sideways: exactly(0.4), radius: 12 });
  });

  it('has less left in printed holes, by what their pattern and its read spacing come out off', () => {
    // shrink of 0.3 ± 0.1 % of 24 mm: 0.048 to 0.096, half of it each, 0.1 of scatter and half of 2 · 0.2 mm that was read
    const printed = {
      printer: { compensation: { shrink: 'none' } },
      material: { shrink: { plane: { likely: 0.003, most: 0.004 } } },
    };
    const holes = (centres: readonly Point[]) => ({
      pattern: { ...pattern, centres, spacing: { least: 23.8, likely: 24, most: 24.2 } },
    });
    const pins = { ...printed, spacers: { pin: 5 } };
    const both = leftInHoles(design(pins, holes(TWO_HOLES)));
    expect(both.least).toBeCloseTo(0.25 - (0.048 + 0.1 + 0.1), 9);
    expect(both.likely).toBeCloseTo(0.3 - 0.036, 9);
    expect(both.most).toBeCloseTo(0.35 - 0.024, 9);
    // a single hole has no spacing, and keys have no holes
    expect(leftInHoles(design(pins, holes([[0, 12]])))).toEqual(half(5));
    const keys = { ...printed, float: 0.4, input: { keys: [{ size: [24, 6] }] } };
    expect(leftInHoles(design(keys, holes(TWO_HOLES)))).toEqual(exactly(0.4));
    expect(leftInHoles(design({ ...keys, nut: undefined }))).toEqual(exactly(0.4));
  });

  it('is whatever is met first: holes 0.3, a body of 17 in 18 mm 0.5, a flange of 37 in a step of 37.5 mm 0.25', () => {
    const spacers = { spacers: { pin: 5 } };
    expect(finishedFloat(design(spacers))).toBeCloseTo(0.3, 9);
    expect(finishedFloat(design(spacers, { stands: 'through' }))).toBeCloseTo(0.3, 9);
    expect(finishedFloat(design(spacers, { stands: 'through' }, { bore: 17.2 }))).toBeCloseTo(0.1, 9);
    expect(finishedFloat(design(spacers, {}, { bore: 17.2 }))).toBeCloseTo(0.3, 9);
    expect(finishedFloat(design(spacers, {}, { outerStep: { diameter: 37.5 } }))).toBeCloseTo(0.25, 9);
    expect(finishedFloat(design(spacers, { seat: 'inside' }, { outerStep: { diameter: 37.5 } }))).toBeCloseTo(0.3, 9);
  });
});
