import type { FastenerSize } from '../../standards/fasteners/sizes.js';
import { plain } from '../../units/format.js';
import type { HardwareRow } from '../part-kind.js';

/** What a list of what to buy calls a washer: under one name the counts of all parts add up. */
export const WASHER = 'plain washer ISO 7089';

/**
 * Cap screws to buy.
 * @param length under the head, mm; undefined where it cannot be told
 * @param untold field of the sheet that would tell it
 */
export function capScrews(
  screw: FastenerSize,
  length: number | undefined,
  count: number,
  untold?: string,
): HardwareRow {
  const item = 'socket cap screw ISO 4762';
  if (length !== undefined) return { item, size: `${screw}x${plain(length)}`, count };
  return { item, size: screw, count, ...(untold === undefined ? {} : { untold }) };
}
