import type { FastenerSize } from '../../standards/fasteners/sizes.js';
import { type Bore, boreReach, type Shaft } from './bore.js';
import { clampHeights, fitClamp, leastClampRadius, SLIT_WIDTH } from './clamp.js';
import { ringFor } from './clamp-ring.js';
import { type ClampScrews, type Grip, type GripLife, gripOf } from './grip.js';

/** What is tried where a sheet leaves the choice, the smallest first. */
const USUAL: readonly FastenerSize[] = ['M3', 'M4'];
const SMALL: readonly FastenerSize[] = ['M2.5', 'M2'];

/** What a clamp is chosen for. */
export interface ClampTask {
  readonly shaft: Shaft;
  readonly bore: Bore;
  /** of the bore on the shaft, at its worst */
  readonly play: number;
  /** to be held at the end of life */
  readonly torque: number;
  readonly life: GripLife;
  readonly grip: Omit<Grip, 'clamp'>;
  /** of the outline, where it is given */
  readonly radius?: number;
  /** whether the slit ends at a web */
  readonly web: boolean;
  /** whether there are as many on either side of two halves */
  readonly halves?: true;
  /** engaged length by the length that the screws need */
  readonly engagement: (screws: number) => number;
  readonly given: {
    readonly screw?: FastenerSize | undefined;
    readonly count?: number | undefined;
    readonly washers?: 'yes' | 'no' | undefined;
  };
}

/**
 * The first clamp that holds the torque, or else the strongest of those that fit.
 * @returns undefined where none fits into the outline
 */
export function chooseClamp(task: ClampTask): ClampScrews | undefined {
  const { given, radius } = task;
  const washers = given.washers === 'yes';
  const choices = (sizes: readonly FastenerSize[]) =>
    sizes.flatMap((screw) => (given.count ? [given.count] : [1, 2]).map((count) => ({ screw, count, washers })));
  const reach = boreReach(task.bore);
  const fits = ({ screw }: ClampScrews) =>
    radius === undefined || fitClamp({ radius, bore: reach, slit: SLIT_WIDTH }, screw, washers) !== undefined;
  const usual = choices(given.screw ? [given.screw] : USUAL).filter(fits);
  const open = usual.length > 0 || given.screw ? usual : choices(SMALL).filter(fits);
  const held = open.map((choice) => ({ choice, torque: heldBy(task, choice) }));
  const enough = held.find(({ torque }) => torque >= task.torque);
  if (enough) return enough.choice;
  return held.reduce<(typeof held)[number] | undefined>(
    (best, next) => (best === undefined || next.torque > best.torque ? next : best),
    undefined,
  )?.choice;
}

function heldBy(task: ClampTask, clamp: ClampScrews): number {
  const { bore, radius, web, halves, shaft, play, grip, life } = task;
  const engagement = task.engagement(clampHeights(clamp.screw, clamp.count, clamp.washers).length);
  const ring = ringFor(
    {
      bore,
      ...(radius === undefined ? {} : { outer: radius }),
      ...(halves ? { halves } : {}),
      web,
      length: engagement,
      reach: shaft.length,
    },
    clamp,
  );
  return gripOf({ ...grip, clamp }, { shaft, engagement, play, ring }, life).holds;
}

/** Clamp screws in words, such as `2 × M3 with washers`. */
export function clampWords({ screw, count, washers }: ClampScrews): string {
  return `${count} × ${screw}${washers ? ' with washers' : ''}`;
}

/** Least radius of an outline that takes any clamp at all, for the message. */
export function leastRadiusFor(bore: Bore, screw: FastenerSize | undefined, washers: boolean): number {
  return leastClampRadius(boreReach(bore), screw ?? 'M2', washers);
}
