import type { CouponFeatures, ReadKind } from '../../src/calibrate/feature.js';
import type { Felt } from '../../src/calibrate/ladder.js';
import type { Results } from '../../src/calibrate/results.js';
import type { CouponHead } from '../../src/calibrate/results-text.js';
import type { SlicerAnswer, State } from '../../src/sheet/sections/profile.js';

/** What a printer does, put in by hand; lengths in mm, shrink as a fraction of the modelled size. */
export interface Nature {
  readonly shrinkX: number;
  readonly shrinkY: number;
  readonly shrinkZ: number;
  /** how much smaller than modelled a hole comes out: at ⌀ 0, and per mm of its finished diameter */
  readonly hole: readonly [number, number];
  readonly post: readonly [number, number];
  /** how far each straight wall stands out, a side */
  readonly wall: number;
  /** how far the first layer spreads, a side */
  readonly squash: number;
  /** error of every height */
  readonly nozzleGap: number;
  /** standard deviation of a feature's own form, and of a reading */
  readonly form: number;
  readonly reading: number;
}

/** Uniform and normal numbers of one seed, written apart from the program's own. */
export function chance(seed: number) {
  let state = (seed * 2654435761) >>> 0 || 1;
  const uniform = () => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 2 ** 32;
  };
  const between = (low: number, high: number) => low + (high - low) * uniform();
  // twelve uniform numbers have a variance of 1
  const normal = () => Array.from({ length: 12 }, uniform).reduce((sum, one) => sum + one, -6);
  return { uniform, between, normal };
}

/** A printer as one might buy it, with calipers of ± 0.03 mm in the hand that reads. */
export function randomNature(seed: number): Nature {
  const { between, uniform } = chance(seed);
  for (let i = 0; i < 10; i++) uniform();
  const shrink = between(0.001, 0.018);
  const skew = between(-0.001, 0.001);
  return {
    shrinkX: shrink + skew,
    shrinkY: shrink - skew,
    shrinkZ: between(0, 0.01),
    hole: [between(0.05, 0.35), between(-0.006, 0.003)],
    post: [between(-0.1, 0.1), between(-0.003, 0.003)],
    wall: between(-0.04, 0.06),
    squash: between(0.02, 0.3),
    nozzleGap: between(-0.08, 0.08),
    form: 0.015,
    reading: 0.015,
  };
}

/** Size of a printed feature before anybody reads it. */
export function trueSize(kind: ReadKind, modelled: number, n: Nature): number {
  const round = (shrunk: number, [atZero, perMm]: readonly [number, number]) => {
    // the offset goes by the diameter that comes out, so it is found by trying
    let out = shrunk;
    for (let i = 0; i < 50; i++) out = shrunk - (atZero + perMm * out);
    return out;
  };
  const plane = (n.shrinkX + n.shrinkY) / 2;
  const byAxis = { x: modelled - n.shrinkX * modelled, y: modelled - n.shrinkY * modelled };
  switch (kind) {
    case 'hole':
      return round(modelled - plane * modelled, n.hole);
    case 'post':
      return round(modelled - plane * modelled, n.post);
    case 'height':
      return modelled - n.shrinkZ * modelled + n.nozzleGap;
    case 'over_x':
      return byAxis.x + 2 * n.wall;
    case 'over_y':
      return byAxis.y + 2 * n.wall;
    case 'between_x':
      return byAxis.x - 2 * n.wall;
    case 'between_y':
      return byAxis.y - 2 * n.wall;
    case 'foot_x':
      return byAxis.x + 2 * n.wall + 2 * n.squash;
    case 'foot_y':
      return byAxis.y + 2 * n.wall + 2 * n.squash;
  }
}

/** How a print is read. */
export interface ReadingHabits {
  readonly seed: number;
  /** of each feature */
  readonly times?: number;
  readonly answer?: SlicerAnswer;
  readonly state?: State;
  /** error that all readings share; their own scatter is then smaller by √½, mm */
  readonly zero?: number;
  /** how a short nut of such clearances feels */
  readonly feel?: (mark: string) => Felt;
}

/** Calipers show hundredths, except those without any error. */
function shown(size: number, { reading }: Nature): number {
  return reading === 0 ? size : Math.round(100 * size) / 100;
}

/** What calipers say of a coupon printed on that printer, as a filled results file. */
export function readCoupon(
  head: CouponHead,
  { reads, threads, pockets }: CouponFeatures,
  nature: Nature,
  { seed, times = 3, answer = 'no', state = 'room', zero = 0, feel }: ReadingHabits,
): Results {
  const { normal } = chance(seed);
  const scatter = nature.reading * (zero === 0 ? 1 : Math.SQRT1_2);
  const readings = reads.map(({ mark, kind, modelled }) => {
    const size = trueSize(kind, modelled, nature) + nature.form * normal();
    const read = Array.from({ length: times }, () => shown(size + zero + scatter * normal(), nature));
    return [mark, { [kind]: modelled, read }];
  });
  const tried = feel
    ? [
        ...threads.map(({ mark, diametral, axial }) => [mark, { thread: { diametral, axial }, felt: feel(mark) }]),
        ...pockets.map(({ mark, kind, size, nominal }) => [mark, { [kind]: size, for: nominal, felt: feel(mark) }]),
      ]
    : [];
  return {
    results: 'coupon',
    ...head,
    state,
    slicer_compensates: answer,
    calipers: 0.03,
    readings: Object.fromEntries(readings),
    tried: Object.fromEntries(tried),
  };
}
