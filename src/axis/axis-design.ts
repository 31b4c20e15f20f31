import type { DriveNumbers } from '../drive/numbers.js';
import type { Design } from '../pipeline/design.js';
import type { Assumption } from '../sheet/assumptions.js';
import type { Fields } from '../sheet/fields-map.js';
import type { Screw } from '../sheet/resolve-screw.js';
import type { CarriedDuty } from '../sheet/sections/duty.js';
import type { LimitsSheet } from '../sheet/sections/limits.js';
import type { PartFacts } from './facts.js';
import type { Along } from './lengths.js';
import type { Role } from './roles.js';
import type { AxisSheet } from './sheet.js';

/** One part of an axis, worked out. */
export interface AxisPart extends Role {
  readonly sheet: Fields;
  readonly design: Design;
  readonly facts: PartFacts;
}

/** An axis, worked out: its parts, and what lies along its screw. */
export interface AxisDesign {
  readonly part: 'axis';
  readonly name: string;
  readonly revision?: string;
  readonly units?: 'inch';
  readonly sheet: AxisSheet;
  readonly screw: Screw;
  readonly old?: { readonly screw?: Screw; readonly stepsPerMm?: number };
  /** what the axis does, its free length and its ends counted */
  readonly duty: CarriedDuty;
  readonly drive: DriveNumbers;
  readonly thrustBearing: boolean;
  readonly along: Along;
  readonly parts: readonly AxisPart[];
  /** what a part would have to say of its neighbours */
  readonly follows: Fields;
  readonly limits: LimitsSheet;
  readonly assumptions: readonly Assumption[];
}
