import { type Bore, boreReach } from '../../common/bore.js';
import { type SizeWay, spreadOf } from '../../common/drawn/spread.js';
import type { SizeChoice } from '../../part-views.js';
import type { SleeveDesign } from '../dimensions.js';
import type { SleevePlan } from '../plan.js';

/** A sleeve at the sizes of one choice, with what several views ask of it. */
export interface SleeveInSight {
  readonly design: SleeveDesign;
  readonly plan: SleevePlan;
  readonly radius: number;
  readonly spread: (size: number, way: SizeWay) => { spread?: number };
}

/** Before the names of the sizes of the lower and the upper end. */
export const BEFORE = ['', 'upper_'] as const;

/** Words that begin a line. */
export function sentence(words: string): string {
  return `${words[0]!.toUpperCase()}${words.slice(1)}`;
}

/** A sleeve at the sizes of one choice. */
export function inSight(design: SleeveDesign, choice: SizeChoice): SleeveInSight {
  const plan = design[choice];
  return { design, plan, radius: plan.outside / 2, spread: spreadOf(design, choice) };
}

/** A place on the wall of the bore: height, reach on −X where flat and keyway are, and on +X. */
export interface BorePlace {
  readonly z: number;
  readonly far: number;
  readonly near: number;
}

/** The hole in the stop: the lower bore without its keyway, narrower all around. */
export function stopBore({ bores: [{ bore }], step }: SleevePlan): Bore {
  return {
    form: bore.form === 'keyed' ? 'round' : bore.form,
    diameter: bore.diameter - 2 * step,
    ...(bore.across === undefined ? {} : { across: bore.across - 2 * step }),
  };
}

/** The bore along the axis from below: mouth, stop with its taper, upper bore. */
export function borePlaces(plan: SleevePlan): BorePlace[] {
  const {
    bores: [lower, upper],
    chamfer,
    step,
    length,
  } = plan;
  const at = (z: number, bore: Bore, offset = 0): BorePlace => {
    const { far, slit } = boreReach(bore);
    // a keyway is cut straight through the mouth
    return { z, far: bore.key ? Math.max(far, bore.diameter / 2 + offset) : far + offset, near: slit + offset };
  };
  const mouth = [at(0, lower.bore, chamfer), at(chamfer, lower.bore)];
  if (!upper) return [...mouth, at(length - chamfer, lower.bore), at(length, lower.bore, chamfer)];
  const floor = length - upper.depth;
  const stop = stopBore(plan);
  return [
    ...mouth,
    at(lower.depth, lower.bore),
    ...(lower.bore.key ? [at(lower.depth, stop, step)] : []),
    at(lower.depth + step, stop),
    at(floor, stop),
    at(floor, upper.bore),
    at(length - chamfer, upper.bore),
    at(length, upper.bore, chamfer),
  ];
}
