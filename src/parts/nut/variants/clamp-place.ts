import type { FastenerSize } from '../../../standards/fasteners/sizes.js';
import { fault } from '../../../units/faults.js';
import { plain } from '../../../units/format.js';
import { roundReach } from '../../common/bore.js';
import { type Clamp, clampHalfHeight, fitClamp, leastClampRadius } from '../../common/clamp.js';
import { LEAST_WALL } from '../../common/walls.js';
import type { NutSizes } from '../nut-sizes.js';

/** Where the straight part of the body begins. */
export function footOf({ flange, fillet, relief }: NutSizes): number {
  return flange ? flange.thickness + fillet + 0.3 : relief + 0.3;
}

/** Reach of the threaded bore, chamfers included: nothing else may come nearer. */
export function boreReach({ thread, leadIn }: NutSizes): number {
  return thread.major / 2 + leadIn;
}

/** Where a closing screw is wanted. */
interface ClampWish {
  readonly screw: FastenerSize;
  readonly inner: number;
  readonly slit: number;
  /** nothing below this height */
  readonly low: number;
  readonly field: string;
}

/** A screw across the body, beside the thread, in the middle of the height that is free. */
export function clampAt({ body, length, relief }: NutSizes, { screw, inner, slit, low, field }: ClampWish): Clamp {
  const radius = body.across / 2;
  const fitted = fitClamp({ radius, bore: roundReach(inner), slit }, screw);
  if (!fitted) {
    const least = leastClampRadius(roundReach(inner), screw);
    throw fault(
      'body.diameter',
      `${plain(body.across)} mm`,
      `must be at least ${plain(2 * least)} mm for ${screw} screws beside this thread; or use a smaller family.screw`,
    );
  }
  const half = clampHalfHeight(screw) + 0.1;
  const [least, most] = [low + half, length - Math.max(LEAST_WALL, relief + 0.3) - half];
  if (most < least)
    throw fault(
      'body.length',
      `${plain(length)} mm`,
      `must be at least ${plain(length + least - most, 1)} mm: the ${field} screw and its walls need that much above flange and pins`,
    );
  return { ...fitted, heights: [(least + most) / 2] };
}
