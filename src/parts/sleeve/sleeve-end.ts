import type { Shaft } from '../common/bore.js';
import type { Grip } from '../common/grip.js';

/** One held end of a clamp sleeve. */
export interface SleeveEnd {
  readonly name: 'motor end' | 'screw end';
  readonly shaft: Shaft;
  readonly clearance: number;
  readonly grip: Grip;
  readonly engagement: number;
  /** the same, were the bore longer than the shaft */
  readonly reach: number;
}
