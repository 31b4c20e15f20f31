import type { Printer } from '../../../presets/printer.js';
import type { Screw } from '../../../sheet/resolve-screw.js';
import type { DutySheet } from '../../../sheet/sections/duty.js';
import type { NutPocket } from '../../common/bought-nut.js';
import type { Clamp } from '../../common/clamp.js';
import type { NutSizes } from '../nut-sizes.js';

/** Bought pins in the joint of two halves, one on either side of the axis. */
export interface Pins {
  readonly diameter: number;
  readonly length: number;
  /** beside the axis, along X */
  readonly offset: number;
  readonly height: number;
}

/** A bought compression spring. */
export interface Spring {
  readonly inside: number;
  readonly outside: number;
  readonly free: number;
  readonly solid: number;
  readonly rate: number;
  readonly working: number;
}

/** Two bars that rise from the main nut into slots of the follower, at ±X. */
export interface Tongue {
  readonly inner: number;
  readonly outer: number;
  readonly width: number;
  readonly height: number;
  /** how deep the slots of the follower are, and how much wider than the tongue */
  readonly slotDepth: number;
  readonly air: number;
}

/** How a nut differs from a plain one, finished sizes. */
export type Variant =
  | { readonly kind: 'split'; readonly closed: 'screws' | 'ring'; readonly clamp?: Clamp; readonly pins: Pins }
  | {
      readonly kind: 'clamped';
      readonly clamp: Clamp;
      readonly slit: { readonly width: number; readonly from: number };
    }
  | { readonly kind: 'holder'; readonly pocket: NutPocket; readonly opens: 'face' | 'end'; readonly bore: number }
  | AntiBacklash
  | Twin;

/** Two nuts that a spring keeps apart. */
export interface AntiBacklash {
  readonly kind: 'anti-backlash';
  readonly spring: Spring;
  /** length of the second nut */
  readonly follower: number;
  readonly tongue: Tongue;
}

/** Two threads in one body, the bore between them wide. */
export interface Twin {
  readonly kind: 'twin';
  /** from middle to middle */
  readonly apart: number;
  /** length of either thread */
  readonly each: number;
  /** how far the bore between them stands beyond the nut's major, on the radius */
  readonly deeper: number;
  /** by which the upper thread is set off the helix of the lower one, upwards */
  readonly shift: number;
  /** where the load acts beside the screw */
  readonly lever?: number;
}

/** What the family is worked out from. */
export interface VariantBase {
  readonly finished: NutSizes;
  readonly screw: Screw;
  readonly duty: DutySheet;
  readonly printer: Pick<Printer, 'nozzle'>;
}
