import type { ToothForm } from '../../mechanics/thread/nut-thread.js';
import type { HolePlaces } from '../common/hole-pattern.js';
import type { BodyPlan, FlangePlan } from './plan.js';

/** A flange with its place along the axis. */
export interface Flange extends FlangePlan {
  readonly thickness: number;
  /** length of the stub of the body below the flange face */
  readonly offset: number;
}

/** Sizes of a nut, all of one kind: finished or printed. */
export interface NutSizes {
  readonly thread: ToothForm;
  readonly lead: number;
  readonly body: BodyPlan;
  /** over all */
  readonly length: number;
  readonly flange?: Flange;
  /** centres and diameter of the holes */
  readonly holes?: HolePlaces & { readonly diameter: number };
  readonly leadIn: number;
  readonly relief: number;
  readonly fillet: number;
}
