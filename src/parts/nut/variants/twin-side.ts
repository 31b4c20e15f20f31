import { CREST_SHARE } from '../../common/hold-figures.js';
import type { NutDesign } from '../nut-design.js';

/** What a load beside the screw presses either thread of a twin nut sideways with, one each way. */
export interface SideForce {
  /** N, on either thread */
  readonly force: number;
  /** MPa */
  readonly pressure: number;
}

/**
 * The couple that holds a lever between two threads.
 *
 *     S = F·l/a   p = S/(0.37·L·⌀minor)   l = lever, a = distance of the threads, L = length of each
 *
 * @returns S [N] and p [MPa]; undefined of other nuts, and where nobody told the lever
 */
export function sideOf(
  { family, finished }: Pick<NutDesign, 'family' | 'finished'>,
  load: number,
): SideForce | undefined {
  if (family?.kind !== 'twin' || family.lever === undefined) return undefined;
  const force = (load * family.lever) / family.apart;
  return { force, pressure: force / (CREST_SHARE * family.each * finished.thread.minor) };
}
