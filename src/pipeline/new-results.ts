import { blankResults } from '../calibrate/results-text.js';
import { couponHead } from '../parts/coupon/head.js';
import { isCoupon } from '../parts/coupon/index.js';
import { fault } from '../units/faults.js';
import { type DesignOptions, design } from './design.js';
import { COUPON_START } from './start-sheets/coupon.js';

/**
 * The results file of a coupon, with a blank line for each marked feature.
 *
 * @param sheet the coupon's sheet, text or plain object; the sheet that `new coupon` gives unless said otherwise
 * @param options presets, where not those that ship
 * @returns YAML to be filled in beside the print
 * @throws InputError every mistake of the sheet; a sheet of another part
 */
export function newResults(sheet: string | object = COUPON_START, options: DesignOptions = {}): string {
  const made = design(sheet, options);
  if (!isCoupon(made)) throw fault('part', made.part, 'must be coupon: results are read off a printed coupon');
  return blankResults(couponHead(made), made.features);
}
