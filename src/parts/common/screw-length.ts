import { socketCapScrew } from '../../standards/fasteners/cap-screw.js';
import type { FastenerSize } from '../../standards/fasteners/sizes.js';

/** The shortest usual cap screw of at least this length under the head, or undefined where none is long enough. */
export function nextCapScrewLength(size: FastenerSize, least: number): number | undefined {
  return socketCapScrew(size).lengths.find((length) => length >= least - 1e-9);
}
