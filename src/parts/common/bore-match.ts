import { type Limits, soft } from '../../judge/check.js';

/** A bore and its shaft may differ by a reading's error; beyond the second the hub goes not on, or does not grip [mm]. @source common-practice */
export const BORE_MATCH: Limits = soft({ max: 0.05 }, { max: 0.2 });
/** A screw end may be turned down, so that a smaller bore than the screw's crests is no fault [mm]. @source common-practice */
export const OVER_CRESTS = 0.1;
