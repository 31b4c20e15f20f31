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

const SET_SCREW_LENGTHS = [3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30];

/** The longest usual set screw that does not stand out of a wall this thick. @source memory: length series */
export function nextSetScrewLength(most: number): number {
  return SET_SCREW_LENGTHS.filter((length) => length <= most + 0.1).at(-1) ?? SET_SCREW_LENGTHS[0]!;
}
