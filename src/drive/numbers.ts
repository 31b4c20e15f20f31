import type { FrictionLevel } from '../mechanics/friction.js';
import type { Holding } from '../mechanics/power-screw/holding.js';
import type { Assumption } from './duty.js';

/** One figure for each of the three friction values 0.08, 0.2 and 0.5. */
export type ByFriction<T> = Readonly<Record<FrictionLevel, T>>;

/** What holds the feed back. */
export type FeedCause = 'motor' | 'whirl' | 'sliding';

/** A layer height on the grid of whole full steps, or off it. */
export interface LayerNumbers {
  readonly height: number;
  readonly full_steps: number;
  readonly on_grid: boolean;
  /** usable heights nearest to it: one when on the grid or below one step, else the one below and the one above */
  readonly nearest: readonly number[];
  /** layers after which the errors repeat; 1 when on the grid */
  readonly repeats_after: number;
  /** largest distance of a layer's top from a full step [mm] */
  readonly worst_off: number;
  /** one period of the errors, twelve layers at most; empty when on the grid */
  readonly pattern: readonly {
    readonly layer: number;
    /** where in the step the layer stops, 0 up to 1 */
    readonly phase: number;
    /** how far above (+) or below (−) the nearest full step it should stop [mm] */
    readonly off: number;
    /** how thick it comes out if the motor settles on the nearest full step [mm] */
    readonly thickness: number;
  }[];
}

/** The drive numbers of one screw, ready for JSON. Lengths mm, angles degrees, forces N, torque N·mm, speed mm/s. */
export interface DriveNumbers {
  readonly designation: string;
  readonly form: string;
  readonly flank_angle: number;
  readonly major: number;
  readonly pitch: number;
  readonly starts: number;
  readonly hand: 'right' | 'left';
  readonly lead: number;
  readonly full_step: number;
  readonly steps_per_mm: number;
  /** at the pitch diameter */
  readonly lead_angle: number;
  /** at friction low, nominal and high: low friction, high efficiency */
  readonly efficiency: ByFriction<number>;
  /** friction below which the load drives the screw */
  readonly self_locking_friction: number;
  /** the worse of the rule on the lead and the rule on friction */
  readonly holding: Holding;
  /** by friction alone, at each value */
  readonly holding_at: ByFriction<Holding>;
  /** at the screw; absent without a load, or where at one friction no torque would raise it */
  readonly torque_raise?: ByFriction<number>;
  /** at the screw, at the friction of 1.1 that a dry print may reach; absent where that locks it, or without a load */
  readonly torque_raise_dry_most?: number;
  /** at the screw; below 0 the load drives it. Absent without a load */
  readonly torque_lower?: ByFriction<number>;
  /** brake torque that keeps the load at rest, 0 where friction does; absent without a load */
  readonly torque_hold?: ByFriction<number>;
  /** share of the motor's holding torque that raising takes; practice stays under 0.5. Needs load and motor torque */
  readonly motor_share?: ByFriction<number>;
  /** force that half the motor's holding torque pushes with; needs the motor's torque */
  readonly push_force?: ByFriction<number>;
  readonly feed_limit: { readonly value: number; readonly set_by: FeedCause };
  /** the limit of each cause [mm/s]; whirl only with a span, already at 80 % */
  readonly feed_limits: { readonly motor: number; readonly sliding: number; readonly whirl?: number };
  /** motor speed at the feed wanted [rpm]; absent without a feed */
  readonly motor_rpm?: number;
  /** how far the flanks slide for a millimetre of travel; speed and metres an hour need a feed */
  readonly sliding: { readonly per_travel: number; readonly speed?: number; readonly metres_per_hour?: number };
  /** underated; absent without a span */
  readonly whirl_rpm?: number;
  /** underated; absent without a span */
  readonly column_load?: number;
  /** the heights asked for, in their order */
  readonly layers: readonly LayerNumbers[];
  /** layer heights between 0.08 and 0.32 mm that are whole full steps */
  readonly grid_heights: readonly number[];
  /** how far the axis may jump when power goes off or on: up to two full steps [mm] */
  readonly power_off_jump: number;
  /** travel of one degree of turn [mm] */
  readonly travel_per_degree: number;
  /** axial play of the nut [mm] and in full steps; needs a clearance */
  readonly play?: { readonly axial: number; readonly full_steps: number };
  /** what the figures mean, in plain words */
  readonly words: readonly string[];
  readonly assumptions: readonly Assumption[];
}
