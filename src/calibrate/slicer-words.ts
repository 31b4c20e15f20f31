import type { SlicerAnswer } from '../sheet/sections/profile.js';
import { plain } from '../units/format.js';
import type { Estimate } from './solve-print.js';

/** What the double-correction check looks at. */
export interface SlicerView {
  readonly answer: SlicerAnswer;
  /** in-plane shrink as read, and what the material usually does */
  readonly plane?: Estimate;
  readonly usualPlane: number;
  /** hole offset as read, at the middle diameter */
  readonly hole?: Estimate;
}

/** A shrink below this share of the usual one, or a hole offset below this, looks as if somebody had corrected it. */
const LITTLE = 0.35;
const LITTLE_HOLE = 0.04;
/** From this shrink on a missing one is remarkable. */
const REMARKABLE = 0.004;

/**
 * What the print says about the slicer, where it does not go with the answer given.
 * @returns one line each; none where all agrees
 */
export function slicerWords({ answer, plane, usualPlane, hole }: SlicerView): string[] {
  const says = { shrink: answer === 'shrink' || answer === 'both', holes: answer === 'holes' || answer === 'both' };
  const words: string[] = [];
  const percent = (share: number) => `${plain(100 * share, 2)} %`;
  if (plane) {
    const { value, standardError } = plane;
    const enlarged = value < -2 * standardError && value < -0.001;
    const little = Math.abs(value) < LITTLE * usualPlane + 2 * standardError && usualPlane >= REMARKABLE;
    const full = value > (1 - LITTLE) * usualPlane && usualPlane >= REMARKABLE;
    if (enlarged)
      words.push(
        `The print is ${percent(-value)} larger than the file: something scales it too much, perhaps twice. Look at the slicer's scaling before the profile is used.`,
      );
    else if (!says.shrink && little && value < 0.5 * usualPlane)
      words.push(
        `The print shrank by ${percent(value)} only, where this material usually shrinks by ${percent(usualPlane)}: does the slicer scale by itself after all? If it does, answer slicer_compensates: shrink, and leave its setting as it is.`,
      );
    if (says.shrink && full)
      words.push(
        `The slicer is said to take out the shrink, yet the print shrank by ${percent(value)}: is its scaling really on? Read a new print if it is switched on later.`,
      );
  }
  if (hole) {
    const { value, standardError } = hole;
    if (says.holes && value - 2 * standardError > 2 * LITTLE_HOLE)
      words.push(
        `The slicer is said to enlarge holes, yet they came out ${plain(value, 2)} mm small: is its hole compensation really on?`,
      );
    if (!says.holes && value + 2 * standardError < -LITTLE_HOLE)
      words.push(
        `Holes came out ${plain(-value, 2)} mm larger than in the file: does the slicer enlarge them? If it does, answer slicer_compensates: holes.`,
      );
  }
  return words;
}
