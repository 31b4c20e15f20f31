import type { Material } from '../../presets/material.js';
import type { FastenerSize } from '../../standards/fasteners/sizes.js';
import { type Bore, boreReach, type Shaft } from './bore.js';
import { clampHeights, fitClamp, leastClampRadius, SLIT_WIDTH } from './clamp.js';
import { type Grip, gripOf } from './grip.js';

/** Clamp screws by size and count. */
export interface ClampChoice {
  readonly screw: FastenerSize;
  readonly count: number;
}

/** What is tried where a sheet leaves the choice, the smallest first. */
const USUAL: readonly FastenerSize[] = ['M3', 'M4'];
const SMALL: readonly FastenerSize[] = ['M2.5', 'M2'];

/** What a clamp is chosen for. */
export interface ClampTask {
  readonly shaft: Shaft;
  readonly bore: Bore;
  readonly torque: number;
  readonly material: Pick<Material, 'compressive'>;
  readonly grip: Omit<Grip, 'clamp'>;
  /** of the outline, where it is given */
  readonly radius?: number;
  /** engaged length by the length that the screws need */
  readonly engagement: (screws: number) => number;
  readonly given: { readonly screw?: FastenerSize | undefined; readonly count?: number | undefined };
}

/**
 * The first clamp that holds the torque, or else the strongest of those that fit.
 * @returns undefined where none fits into the outline
 */
export function chooseClamp(task: ClampTask): ClampChoice | undefined {
  const { given, radius } = task;
  const choices = (sizes: readonly FastenerSize[]) =>
    sizes.flatMap((screw) => (given.count ? [given.count] : [1, 2]).map((count) => ({ screw, count })));
  const reach = boreReach(task.bore).slit;
  const fits = ({ screw }: ClampChoice) =>
    radius === undefined || fitClamp({ radius, bore: reach, slit: SLIT_WIDTH }, screw) !== undefined;
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

function heldBy({ shaft, material, grip, engagement }: ClampTask, clamp: ClampChoice): number {
  const { length } = clampHeights(clamp.screw, clamp.count);
  return gripOf({ ...grip, clamp }, shaft, engagement(length), material).total;
}

/** Least radius of an outline that takes any clamp at all, for the message. */
export function leastRadiusFor(bore: Bore, screw: FastenerSize | undefined): number {
  return leastClampRadius(boreReach(bore).slit, screw ?? 'M2');
}
