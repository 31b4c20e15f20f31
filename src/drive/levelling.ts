import { plain } from '../units/format.js';
import type { DriveScrew } from './screw.js';
import { endDifference } from './turn.js';

/** Where the motors of an axis on two screws sit. */
export const MOTOR_PLACES = ['above', 'below'] as const;
export type MotorPlace = (typeof MOTOR_PLACES)[number];

/** Which way one screw is turned to lift its end. */
export interface Levelling {
  readonly low_end: 'left' | 'right' | 'none';
  /** at the coupling of the low end [degrees] */
  readonly degrees: number;
  /** seen from above, whichever end the motor is at */
  readonly seen_from_above: 'clockwise' | 'counter-clockwise';
  readonly words: string;
}

/**
 * How two ends of a vertical axis are brought level: by how much one coupling is turned, and which way. The nuts move,
 * the screws turn in place. Seen from above a right-hand screw that turns clockwise lifts its nut, a left-hand one lowers
 * it; where the motor sits does not change that, only from where one looks at its coupling.
 *
 * @param screw       its hand and lead [mm]
 * @param difference  height of the left end less that of the right one  [mm]  any sign
 * @param motor       above or below the axis, where known
 * @returns turn, sense and a sentence
 * @throws InputError the difference is no number
 * @source derived: the helix of a right-hand screw rises away from an eye that sees it turn clockwise
 * @example levelling({ hand: 'right', lead: 2 }, -0.35).degrees // 63
 */
export function levelling(screw: Pick<DriveScrew, 'hand' | 'lead'>, difference: number, motor?: MotorPlace): Levelling {
  const degrees = Math.abs(endDifference({ difference, lead: screw.lead }));
  const sense = screw.hand === 'right' ? 'clockwise' : 'counter-clockwise';
  const low = difference < 0 ? 'left' : difference > 0 ? 'right' : 'none';
  return {
    low_end: low,
    degrees,
    seen_from_above: sense,
    words: levelWords({ low, degrees, sense, difference, motor }),
  };
}

function levelWords(p: {
  readonly low: Levelling['low_end'];
  readonly degrees: number;
  readonly sense: Levelling['seen_from_above'];
  readonly difference: number;
  readonly motor: MotorPlace | undefined;
}): string {
  if (p.low === 'none') return 'Both ends are level.';
  const high = p.low === 'left' ? 'right' : 'left';
  const other = p.sense === 'clockwise' ? 'counter-clockwise' : 'clockwise';
  const seen =
    p.motor === 'above'
      ? ` (looking up at the motor from below, ${other})`
      : p.motor === 'below'
        ? ' (looking down at the motor)'
        : '';
  return `The ${p.low} end is ${plain(Math.abs(p.difference))} mm low: power off, hold the coupling of the ${high} one and turn the ${p.low} screw ${plain(p.degrees, 1)}° ${p.sense} as seen from above${seen}; its nut rises. Measure near both ends of the travel.`;
}
