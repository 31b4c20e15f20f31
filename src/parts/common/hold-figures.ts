import { dryFriction, GREASED_LEAST } from '../../mechanics/friction.js';
import type { Assumptions } from '../../sheet/assumptions.js';
import type { Shaft } from './bore.js';

/** Diametral clearance of a bore: one that a clamp closes, one that stays as it is, mm. @source common-practice */
const BORE_CLEARANCE = { clamp: 0.05, fixed: 0.1 };

/** Share of a screw's length that stands in its crests, 0.366 of the pitch. @source derived */
export const CREST_SHARE = 0.37;

/** Whether a friction is that of a screw whose grease was left on it, which washing cures. */
export function isGreased({ friction }: { readonly friction: number }): boolean {
  return friction === GREASED_LEAST;
}

/** The same grip with grease on a shaft of which nobody tells; undefined where the sheet does. */
export function greasedGrip<Own extends { readonly friction: number; readonly greaseUntold?: true | undefined }>(
  grip: Own,
): Own | undefined {
  return grip.greaseUntold ? { ...grip, friction: GREASED_LEAST } : undefined;
}

/** What a sheet says of a bore. */
interface HoldSheet {
  readonly bore_clearance?: number | undefined;
  readonly friction?: number | undefined;
  readonly degreased?: 'yes' | 'no' | undefined;
}

/** Where a shaft is held. */
interface HoldPlace {
  readonly field: string;
  readonly shaft: Shaft;
  readonly clamped: boolean;
  readonly material: { readonly name: string };
}

/** Clearance and friction of a bore: the sheet's, or the usual ones, which are listed. */
export function holdFigures(
  own: HoldSheet,
  { field, shaft, clamped, material }: HoldPlace,
  assumptions: Assumptions,
): { readonly clearance: number; readonly friction: number; readonly greaseUntold?: true } {
  const [usual, why] = clamped
    ? [BORE_CLEARANCE.clamp, 'the slit opens for the shaft, and closes on it']
    : [BORE_CLEARANCE.fixed, 'slides on'];
  const clearance = assumptions.or<number>(own.bore_clearance, `${field}.bore_clearance`, usual, why);
  const greased = own.degreased === undefined ? shaft.crests === true : own.degreased === 'no';
  const friction = assumptions.or<number>(
    own.friction,
    `${field}.friction`,
    greased ? GREASED_LEAST : dryFriction(material),
    greased ? `grease of the screw; ${field}.degreased: yes counts more` : 'steel in plastic, washed free of grease',
  );
  // a plain shaft counts as washed: whether it is hangs on what nobody tells
  const isUntold = own.degreased === undefined && own.friction === undefined && !greased;
  return { clearance, friction, ...(isUntold ? { greaseUntold: true as const } : {}) };
}
