import type { FastenerSize } from '../../standards/fasteners/sizes.js';

/** Clamp screws of one shaft. */
export interface ClampScrews {
  readonly screw: FastenerSize;
  readonly count: number;
  /** under head and nut */
  readonly washers: boolean;
}
