import { socketCapScrew } from '../../standards/fasteners/cap-screw.js';
import type { FastenerSize } from '../../standards/fasteners/sizes.js';

/** The shortest usual cap screw of at least this length under the head, or undefined where none is long enough. */
export function nextCapScrewLength(size: FastenerSize, least: number): number | undefined {
  return socketCapScrew(size).lengths.find((length) => length >= least - 1e-9);
}

/** The longest usual cap screw between two lengths under the head, or undefined where none is. */
export function screwLengthWithin(size: FastenerSize, least: number, most: number): number | undefined {
  return socketCapScrew(size).lengths.findLast((length) => length >= least - 1e-9 && length <= most + 1e-9);
}
