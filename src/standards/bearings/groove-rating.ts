import { fault } from '../../units/faults.js';
import { requirePositive } from '../../units/require.js';

/** What a deep-groove ball bearing carries along its axis, nothing pushing it sideways [N]. */
export interface GrooveRating {
  /** C0, standing, across the axis */
  readonly standing: number;
  /** what stands along the axis for good, lest the balls climb to the edge of their groove */
  readonly along: number;
  /** what pushes along the axis for a moment */
  readonly moment: number;
  /** what makes C turning, along the axis: nine of ten run a million turns */
  readonly turning: number;
}

/** Balls in shares of the ring's section and of the width, and the share of their circle that they fill, all at the cautious end. @source common-practice */
const BALL = { section: 0.25, width: 0.6 };
const FILLED = 0.45;

/** Share of C0 along the axis: of any such bearing, and of light series and small bores. @source memory: handbooks' general practice */
const ALONG = { any: 0.5, light: 0.25 };
const SMALL_BORE = 12;

/** Outside over bore below which a bearing is of a light series: 68, 69 and 60 of bores to 20 mm are below, 62 above. @source common-practice */
const LIGHT = 2.2;

/** Rating factor from a tenth to three tenths of ball over pitch circle, and what a load along the axis counts across it. @source memory: ISO 281 */
const TURNING = 55;
const COUNTS = 1.2;

/**
 * What a deep-groove ball bearing carries along its axis, from its boundary dimensions, where no list is at hand: rated by the
 * formulas of the standards, with balls as small and as few as such a bearing has.
 *
 *     Dw = min((D − d)/4, 0.6·B)      Dp = (d + D)/2      Z = 0.45·π·Dp/Dw, whole      x = Dw/Dp
 *     C0 = f0·Z·Dw²                   f0 = min(14.7 + 18·x, 18.7 − 23.4·x), within 0.3 of the table
 *     for good: C0/4 where d ≤ 12 or D < 2.2·d, else C0/2      for a moment: C0/2
 *     turning: 55·Z^(2/3)·Dw^1.8 / 1.2, the factor of a load along the axis from a fifth of C0 on
 *
 * @param bearing.bore     d  [mm]  > 0
 * @param bearing.outside  D  [mm]  > d
 * @param bearing.width    B  [mm]  > 0
 * @returns C0 and what it carries along its axis [N]
 * @throws InputError  a size is not above 0, the outside not above the bore
 * @source iso-76: static rating; sizes and number of the balls are derived
 * @source memory: factors; shares of C0 along the axis are handbooks' general practice; lists give 608 some 1.4 kN, 6204 some 6.5 kN, two fifths and half more than this
 * @example grooveRating({ bore: 8, outside: 22, width: 7 }).along // 243 N
 */
export function grooveRating({
  bore,
  outside,
  width,
}: {
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
}): GrooveRating {
  requirePositive('bore', bore);
  requirePositive('width', width);
  if (!(outside > bore)) throw fault('outside', outside, 'must be above the bore');
  const ball = Math.min(BALL.section * (outside - bore), BALL.width * width);
  const circle = (bore + outside) / 2;
  const count = Math.floor((FILLED * Math.PI * circle) / ball);
  const standing = staticFactor(ball / circle) * count * ball ** 2;
  const share = bore <= SMALL_BORE || outside < LIGHT * bore ? ALONG.light : ALONG.any;
  return {
    standing,
    along: share * standing,
    moment: ALONG.any * standing,
    turning: (TURNING * count ** (2 / 3) * ball ** 1.8) / COUNTS,
  };
}

/** f0 by ball over pitch circle, as two lines. */
function staticFactor(x: number): number {
  return Math.min(14.7 + 18 * x, 18.7 - 23.4 * x);
}
