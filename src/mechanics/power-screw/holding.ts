import { requirePositive, requireRange } from '../../units/require.js';
import { degrees, radians } from '../angle.js';
import { FRICTION } from '../friction.js';
import { leadAngle } from './lead-angle.js';
import { selfLockingFriction } from './self-locking.js';
import type { ScrewThread } from './thread.js';

/** What an axis does when its motor is without power: three answers, in rising order of trust. */
export type Holding = 'falls' | 'may-creep' | 'holds';

/** Share of the friction angle that counts as safe at rest, the rest being left to vibration. */
const SAFE_SHARE = 0.7;

/**
 * Whether an unpowered screw keeps its load: the worse of a rule of thumb on the lead and of the friction.
 *
 *     falls      l > d/2   or   0.20 < tan λ · cos α
 *     may-creep  l > d/3   or   λ > 0.7 · atan(0.08 / cos α)
 *     holds      otherwise; normally, never to be relied on where a fall would hurt
 *
 * @param p.lead           l   travel per turn                      [mm]       > 0
 * @param p.major          d   major diameter of the screw          [mm]       > 0
 * @param p.pitchDiameter  d2  pitch diameter, where λ is taken     [mm]       > 0
 * @param p.flankAngle     α   one flank                            [degrees]  0 to 60
 * @returns one of the three answers
 * @throws InputError  a value is outside its range
 * @source common-practice: falling axes
 * @example holding({ lead: 2, major: 8, pitchDiameter: 7, flankAngle: 15 }) // 'may-creep'
 */
export function holding(p: {
  readonly lead: number;
  readonly major: number;
  readonly pitchDiameter: number;
  readonly flankAngle: number;
}): Holding {
  requirePositive('major', p.major);
  requirePositive('pitchDiameter', p.pitchDiameter);
  const thread = { lead: p.lead, meanDiameter: p.pitchDiameter, flankAngle: p.flankAngle };
  if (p.lead > p.major / 2 || FRICTION.nominal < selfLockingFriction(thread)) return 'falls';
  if (p.lead > p.major / 3 || leadAngle(thread) > safeLeadAngle(thread, FRICTION.low)) return 'may-creep';
  return 'holds';
}

/**
 * Whether the thread alone keeps its load at one stated friction.
 *
 *     falls      f < tan λ · cos α
 *     may-creep  λ > 0.7 · atan(f / cos α)
 *     holds      otherwise
 *
 * @param p.lead          l   travel per turn            [mm]       > 0
 * @param p.meanDiameter  dm  pitch diameter             [mm]       > 0
 * @param p.flankAngle    α   one flank                  [degrees]  0 to 60
 * @param p.friction      f   friction of the thread     [-]        0 to 2
 * @returns one of the three answers
 * @throws InputError  a value is outside its range
 * @source common-practice: falling axes, with the self-locking condition of power screws
 * @example holdingAtFriction({ lead: 2, meanDiameter: 7, flankAngle: 15, friction: 0.2 }) // 'holds'
 */
export function holdingAtFriction(p: ScrewThread & { readonly friction: number }): Holding {
  requireRange('friction', p.friction, 0, 2);
  if (p.friction < selfLockingFriction(p)) return 'falls';
  return leadAngle(p) > safeLeadAngle(p, p.friction) ? 'may-creep' : 'holds';
}

function safeLeadAngle(thread: ScrewThread, friction: number): number {
  return SAFE_SHARE * degrees(Math.atan(friction / Math.cos(radians(thread.flankAngle))));
}
