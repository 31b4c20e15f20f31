import { PRINTS } from '../common/questions.js';
import type { PartKind } from '../part-kind.js';
import { COUPON_CHECKS } from './checks.js';
import { type CouponDesign, designCoupon } from './dimensions.js';
import { couponParticulars } from './particulars.js';
import { type CouponSheet, couponSchema } from './sheet.js';
import { sizeField } from './size-fields.js';
import { couponBodies } from './solid.js';
import { couponViews } from './views.js';

/** A coupon to calibrate a printer by. */
export const couponKind: PartKind<CouponSheet, CouponDesign> = {
  kind: 'coupon',
  schema: couponSchema,
  design: designCoupon,
  checks: COUPON_CHECKS,
  promise: 'It tells what it should',
  questions: [
    { id: 'tells-enough', title: 'Tells enough?' },
    { id: 'worth-printing', title: 'Worth printing?' },
    PRINTS,
  ],
  particulars: couponParticulars,
  bodies: couponBodies,
  mate: () => [],
  views: couponViews,
  sizeField,
};

/** Whether a design is that of a coupon. */
export function isCoupon(design: { readonly part: string }): design is CouponDesign {
  return design.part === couponKind.kind;
}
