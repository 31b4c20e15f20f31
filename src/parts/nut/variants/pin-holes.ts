import { type PrintSizes, TRUE_SIZES } from '../../common/print-sizes.js';
import type { Pins } from './types.js';

/** Bores of the pins on either side, across the joint of two halves; sizes of one kind. */
export interface PinHoles {
  readonly radius: number;
  /** beside the axis, along X */
  readonly offset: number;
  readonly height: number;
  /** how far they go into either half, a little farther than the pins */
  readonly reach: number;
}

/** The bores for bought pins, finished unless sizes of the file are wanted. */
export function pinHoles(
  { diameter, length, offset, height }: Pins,
  { inside, across, along }: PrintSizes = TRUE_SIZES,
): PinHoles {
  return {
    radius: inside(diameter + 0.1) / 2,
    offset: across(offset),
    height: along(height),
    reach: across(length / 2 + 0.25),
  };
}
