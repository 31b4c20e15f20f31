/** What calipers can read off a coupon. */
export const READ_KINDS = [
  'hole',
  'post',
  'over_x',
  'between_x',
  'over_y',
  'between_y',
  'height',
  'foot_x',
  'foot_y',
] as const;
export type ReadKind = (typeof READ_KINDS)[number];

/** What is tried on a ladder of pockets, apart from threads. */
export const POCKET_KINDS = ['hexagon', 'insert', 'shaft', 'd_shaft'] as const;
export type PocketKind = (typeof POCKET_KINDS)[number];

/** A ladder of fits: a thread or one kind of pocket. */
export type LadderKind = 'thread' | PocketKind;

/** A size of the coupon that is read with calipers. */
export interface ReadFeature {
  /** as raised on the print, with a word where one mark serves two readings */
  readonly mark: string;
  readonly kind: ReadKind;
  /** size in the file, mm */
  readonly modelled: number;
  /** where to put the calipers */
  readonly what: string;
}

/** A short nut of the coupon, by the clearances it was meant to have. */
export interface ThreadStep {
  readonly mark: string;
  readonly diametral: number;
  readonly axial: number;
}

/** A pocket of the coupon, by the size it was meant to have. */
export interface PocketStep {
  readonly mark: string;
  readonly kind: PocketKind;
  /** finished, mm */
  readonly size: number;
  /** size of what goes in, mm */
  readonly nominal: number;
}

/** Everything marked on a coupon. */
export interface CouponFeatures {
  readonly reads: readonly ReadFeature[];
  readonly threads: readonly ThreadStep[];
  readonly pockets: readonly PocketStep[];
}
