import { requirePositive } from '../../units/require.js';
import type { ThrustBearing } from './thrust-bearing.js';

/** What a thrust bearing carries along its axis [N]. */
export interface ThrustRating {
  /** C0, standing: the balls dent their track by a ten-thousandth of their diameter */
  readonly standing: number;
  /** C, turning: nine of ten run a million turns */
  readonly turning: number;
}

/** Balls in shares of the bearing's height, at the cautious end, and their spacing in their own diameters. @source common-practice */
const BALL = 0.45;
const SPACING = 1.3;

/** Needles of a cage with two washers of 1 mm, and the share of its width that they roll on. @source common-practice */
const NEEDLE = 2;
const ROLLS = 0.5;

/** Factors of thrust bearings whose contact stands along the axis. @source memory: ISO 76 and ISO 281; the rating factor of modern steel left out */
const F = { ball: 61.6, needle: 220, turning: 90 };

/**
 * Load ratings of a thrust bearing from its boundary dimensions, where no list is at hand: by the formulas of the standards,
 * with balls as small and as few as such a bearing has.
 *
 *     C0 = 61.6·Z·Dw²      C = 90·Z^(2/3)·Dw^1.8      balls: Dw = 0.45·T, Z = π·(d + D)/2 / (1.3·Dw)
 *     C0 = 220·Z·L·Dw      C = C0/3                   needles: Dw = 2, L = (D − d)/4, Z by twice their diameter
 *
 * @param bearing.bore     d  [mm]  > 0
 * @param bearing.outside  D  [mm]  > 0
 * @param bearing.height   T  [mm]  > 0
 * @param needles whether it is a needle cage between two washers of 1 mm
 * @returns both ratings [N]
 * @throws InputError  a size is not above 0
 * @source iso-76: static ratings; sizes of the balls are derived
 * @source memory: factors; lists give 51100 some 10 kN turning and 14 kN standing, half and a third more than this
 * @example thrustRating({ bore: 8, outside: 16, height: 5 }).standing // 3742 N
 */
export function thrustRating({ bore, outside, height }: ThrustBearing, needles = false): ThrustRating {
  requirePositive('bore', bore);
  requirePositive('outside', outside);
  requirePositive('height', height);
  const round = (Math.PI * (bore + outside)) / 2;
  if (needles) {
    const count = Math.floor(round / (2 * NEEDLE));
    const standing = (F.needle * count * NEEDLE * ROLLS * (outside - bore)) / 2;
    return { standing, turning: standing / 3 };
  }
  const ball = BALL * height;
  const count = Math.floor(round / (SPACING * ball));
  return { standing: F.ball * count * ball ** 2, turning: F.turning * count ** (2 / 3) * ball ** 1.8 };
}
