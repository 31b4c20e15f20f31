import { type Fault, fault, InputError, shown } from '../../units/faults.js';
import { type Designation, parseDesignation } from '../threads/designation.js';
import type { SeriesName } from '../threads/series-row.js';
import { unifiedNutLimits, unifiedScrewLimits } from './asme-b1-1.js';
import { acmeNutLimits, acmeScrewLimits } from './asme-b1-5.js';
import { metricNutLimits, metricScrewLimits } from './iso-965.js';
import { trapezoidalNutLimits, trapezoidalScrewLimits } from './iso-2903.js';
import type { ThreadLimits } from './limits.js';

/** What limits are asked for. */
export interface LimitsQuery {
  /** a designation as text or parsed */
  readonly designation: string | Designation;
  /** tolerance class; by default the one in the designation, else `DEFAULT_CLASSES` */
  readonly tolerance?: string;
}

/** The class taken where none is given: screw, nut. */
export const DEFAULT_CLASSES: Readonly<Record<SeriesName, readonly [screw: string, nut: string]>> = {
  trapezoidal: ['7e', '7H'],
  acme: ['2G', '2G'],
  'metric-v': ['6g', '6H'],
  unified: ['2A', '2B'],
};

/** The standard that limits a family of threads. */
export type LimitsSource = 'ISO 2903' | 'ASME B1.5' | 'ISO 965-1' | 'ASME B1.1';

const SOURCE_OF: Readonly<Record<SeriesName, LimitsSource>> = {
  trapezoidal: 'ISO 2903',
  acme: 'ASME B1.5',
  'metric-v': 'ISO 965-1',
  unified: 'ASME B1.1',
};

/** The standard whose classes limit a thread of that series. @internal */
export function limitsSource({ series }: Pick<Designation, 'series'>): LimitsSource {
  return SOURCE_OF[series];
}

type LimitsOf = (thread: Designation, tolerance: string) => ThreadLimits;

const SCREWS: Readonly<Record<SeriesName, LimitsOf>> = {
  trapezoidal: trapezoidalScrewLimits,
  acme: acmeScrewLimits,
  'metric-v': metricScrewLimits,
  unified: unifiedScrewLimits,
};

const NUTS: Readonly<Record<SeriesName, LimitsOf>> = {
  trapezoidal: trapezoidalNutLimits,
  acme: acmeNutLimits,
  'metric-v': metricNutLimits,
  unified: unifiedNutLimits,
};

/**
 * Limits of size of a screw: ISO 2903, ISO 965-1, ASME B1.5 or ASME B1.1 by the family of the thread.
 *
 * @param query.designation such as Tr8x2, or a parsed one; lengths [mm]
 * @param query.tolerance   7e, 8e, 8c, 9c; 6g and its like; 2G, 3G, 4G; 2A; default 7e, 6g, 2G, 2A
 * @returns least and most of major, pitch diameter and minor  [mm]
 * @throws InputError designation or class is wrong, or the standard has no range for the size
 * @source iso-2903: trapezoidal
 * @source iso-965-1: metric V
 * @source asme-b1.5: Acme
 * @source asme-b1.1: unified
 * @example screwLimits({ designation: 'Tr8x2', tolerance: '7e' }).major // [7.82, 8]
 */
export function screwLimits(query: LimitsQuery): ThreadLimits {
  const thread = threadOf(query.designation);
  return SCREWS[thread.series](thread, classOf(query, thread, 0));
}

/**
 * Limits of size of a nut. Only the Acme standard gives the nut major an upper limit; elsewhere it is the diameter
 * where the flanks of the groove would meet, so that every limit is a number.
 *
 * @param query.designation such as Tr8x2, or a parsed one; lengths [mm]
 * @param query.tolerance   7H, 8H, 9H; 6H and its like; 2G, 3G, 4G; 2B; default 7H, 6H, 2G, 2B
 * @returns least and most of major, pitch diameter and minor  [mm]
 * @throws InputError designation or class is wrong, or the standard has no range for the size
 * @source iso-2903: trapezoidal
 * @source iso-965-1: metric V
 * @source asme-b1.5: Acme
 * @source asme-b1.1: unified
 * @example nutLimits({ designation: 'Tr8x2', tolerance: '7H' }).pitchDiameter // [7, 7.25]
 */
export function nutLimits(query: LimitsQuery): ThreadLimits {
  const thread = threadOf(query.designation);
  return NUTS[thread.series](thread, classOf(query, thread, 1));
}

function threadOf(designation: string | Designation): Designation {
  if (typeof designation === 'object' && designation !== null) return designation;
  if (typeof designation !== 'string') throw fault('designation', shown(designation), 'must be text such as Tr8x2');
  try {
    return parseDesignation(designation);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.faults.map((one): Fault => ({ ...one, path: 'designation' })));
  }
}

/** The class asked for, else the one in the designation that belongs to a screw or a nut, else the default. */
function classOf(query: LimitsQuery, thread: Designation, side: 0 | 1): string {
  if (query.tolerance !== undefined) return query.tolerance;
  const isNut = thread.series === 'unified' ? /B$/ : /^\dG$|^\d[A-H](?:\d[A-H])?$/;
  const given = (thread.tolerance ?? '').split('/').find((one) => {
    if (one === '') return false;
    return thread.series === 'acme' || isNut.test(one) === (side === 1);
  });
  return given ?? DEFAULT_CLASSES[thread.series][side];
}
