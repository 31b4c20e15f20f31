import type { CouponFeatures, PocketKind, PocketStep, ReadFeature, ThreadStep } from '../../calibrate/feature.js';
import { hexNut } from '../../standards/fasteners/nuts.js';
import { heatSetBore } from '../../standards/fasteners/plastic-holes.js';
import type { FastenerSize } from '../../standards/fasteners/sizes.js';
import { rounded } from '../../units/format.js';

/** Side of a block of the scale coupon, mm. */
export const BLOCK = 5;

/** The scale coupon. */
export interface ScalePlan {
  /** middle of the corner block to the middle of the last one, mm */
  readonly span: number;
  /** width of the bars that the blocks stand on, mm */
  readonly bar: number;
  /** heights of the steps over the bed, rising; none where they are left out */
  readonly heights: readonly number[];
}

/** Clearances of the short nuts. */
export interface ThreadPlan {
  readonly steps: number;
  readonly diametral: number;
  readonly axial: number;
  readonly step: number;
  readonly axialStep: number;
}

/** Pockets to try things in. */
export interface PocketPlan {
  readonly screw: FastenerSize;
  readonly shaft: number;
  readonly flat: number;
  readonly steps: number;
  readonly step: number;
}

/** What is on a coupon. */
export interface CouponPlan {
  readonly scale?: ScalePlan;
  readonly diameters?: readonly number[];
  readonly thread?: ThreadPlan;
  readonly pockets?: PocketPlan;
}

/** Heights of the steps: a fifth, half and the whole. */
export function stepHeights(highest: number): number[] {
  return highest === 0 ? [] : [rounded(0.2 * highest, 2), rounded(0.5 * highest, 2), highest];
}

/** Everything that is marked on a coupon, in the order in which it is read. */
export function featuresOf({ scale, diameters, thread, pockets }: CouponPlan): CouponFeatures {
  return {
    reads: [...(scale ? scaleReads(scale) : []), ...(diameters ? boreReads(diameters) : [])],
    threads: thread ? threadSteps(thread) : [],
    pockets: pockets ? pocketSteps(pockets) : [],
  };
}

function scaleReads({ span, bar, heights }: ScalePlan): ReadFeature[] {
  const blocks = (['x', 'y'] as const).flatMap((axis) =>
    [span / 2, span].flatMap((place, i): ReadFeature[] => {
      const mark = `${axis.toUpperCase()}${i + 1}`;
      const pair = `the corner block and block ${mark}`;
      return [
        { mark: `${mark} over`, kind: `over_${axis}`, modelled: place + BLOCK, what: `outside, over ${pair}` },
        { mark: `${mark} between`, kind: `between_${axis}`, modelled: place - BLOCK, what: `inside, between ${pair}` },
      ];
    }),
  );
  const steps = heights.map(
    (height, i): ReadFeature => ({
      mark: `Z${i + 1}`,
      kind: 'height',
      modelled: height,
      what: `from the underside to the top of step Z${i + 1}`,
    }),
  );
  return [
    ...blocks,
    { mark: 'F1', kind: 'foot_x', modelled: bar, what: 'width of the bar at F1, jaws down on its lowest edge' },
    { mark: 'F2', kind: 'foot_y', modelled: bar, what: 'width of the bar at F2, jaws down on its lowest edge' },
    ...steps,
  ];
}

function boreReads(diameters: readonly number[]): ReadFeature[] {
  const each = (letter: string, kind: 'hole' | 'post', what: string) =>
    diameters.map(
      (modelled, i): ReadFeature => ({ mark: `${letter}${i + 1}`, kind, modelled, what: `${what} ${letter}${i + 1}` }),
    );
  return [...each('B', 'hole', 'inside, at the top of bore'), ...each('P', 'post', 'outside, half way up post')];
}

function threadSteps({ steps, diametral, axial, step, axialStep }: ThreadPlan): ThreadStep[] {
  return Array.from({ length: steps }, (_, i) => ({
    mark: `T${i + 1}`,
    diametral: rounded(diametral + (i - (steps - 1) / 2) * step, 4),
    axial: rounded(axial + (i - (steps - 1) / 2) * axialStep, 4),
  }));
}

const LETTERS: Readonly<Record<PocketKind, string>> = { hexagon: 'H', insert: 'I', shaft: 'S', d_shaft: 'D' };

/** Room that each kind of pocket is usually given, mm. @source common-practice */
const ROOM: Readonly<Record<PocketKind, number>> = { hexagon: 0.2, insert: 0, shaft: 0.1, d_shaft: 0.1 };

function pocketSteps({ screw, shaft, steps, step }: PocketPlan): PocketStep[] {
  const nominal: Readonly<Record<PocketKind, number>> = {
    hexagon: hexNut(screw).acrossFlats,
    insert: heatSetBore(screw).bore,
    shaft,
    d_shaft: shaft,
  };
  const kinds: readonly PocketKind[] = ['hexagon', 'insert', 'shaft', 'd_shaft'];
  return kinds.flatMap((kind) =>
    Array.from({ length: steps }, (_, i) => ({
      mark: `${LETTERS[kind]}${i + 1}`,
      kind,
      size: rounded(nominal[kind] + ROOM[kind] + (i - (steps - 1) / 2) * step, 4),
      nominal: nominal[kind],
    })),
  );
}
