import { type Fault, InputError, shown } from '../units/faults.js';
import { CALIPERS } from '../units/measured.js';

/** What a person can measure on a screw, all of it optional but something. Lengths [mm]. */
export interface Readings {
  /** over the crests, one or several readings */
  readonly major?: readonly number[];
  /** length over a number of pitches, same edge to same edge */
  readonly crests?: { readonly count: number; readonly length: number };
  /** travel of a nut over a number of whole turns */
  readonly travel?: { readonly turns: number; readonly length: number };
  /** threads counted at the end of the screw */
  readonly starts?: number;
  /** over the root */
  readonly minor?: number;
  /** bore of the nut that ran on it: the drill shank that goes in, and the next that does not; alike where it was measured */
  readonly nutBore?: { readonly goes: number; readonly stops: number };
  /** width of a crest along the axis */
  readonly crestFlat?: number;
  /** measured over three wires of one diameter */
  readonly wires?: { readonly wire: number; readonly over: number };
  /** what the crests look like */
  readonly crest?: 'flat' | 'sharp' | 'round';
  readonly hand?: 'right' | 'left';
  /** of every length: worst-case half-width, taken as two standard deviations; `CALIPERS` unless given */
  readonly uncertainty?: number;
  /** what cannot be measured, such as the travel of a nut that is lost: it is not asked for */
  readonly cannot?: readonly MeasurementKind[];
  /** of single readings that have their own; likewise half-widths */
  readonly uncertainties?: Readonly<Partial<Record<LengthReading, number>>>;
}

/** What can be measured or looked at on a screw and its nut. */
export type MeasurementKind = 'starts' | 'crest' | 'travel' | 'crests' | 'major' | 'crest_flat' | 'minor' | 'wires';

/** The readings that are lengths. */
export type LengthReading = 'major' | 'crests' | 'travel' | 'minor' | 'nutBore' | 'crestFlat' | 'wires';

/**
 * The uncertainty of one of the readings: its own, else that of all, else a caliper's.
 *
 * @param readings lengths [mm]
 * @param what which reading
 * @returns worst-case half-width                              [mm]
 * @source common-practice: calipers in a steady hand
 * @example uncertaintyOf({ uncertainty: 0.05, uncertainties: { wires: 0.004 } }, 'wires') // 0.004
 */
export function uncertaintyOf(readings: Readings, what: LengthReading): number {
  return readings.uncertainties?.[what] ?? readings.uncertainty ?? CALIPERS;
}

/**
 * Throws one error with every mistake of the readings: nothing measured, a length that is none, a count that is no
 * whole number, a root larger than the crests.
 *
 * @param readings lengths [mm]
 * @throws InputError with one fault a mistake
 * @source derived: limits of what a number can mean here
 */
export function requireReadings(readings: Readings): void {
  const faults: Fault[] = [];
  const add = (path: string, value: unknown, allowed: string) => faults.push({ path, value: shown(value), allowed });
  const length = (path: string, value: number | undefined) => {
    if (value !== undefined && !(value > 0 && value <= 10_000))
      add(path, value, 'must be above 0 mm, at most 10000 mm');
  };
  const whole = (path: string, value: number | undefined, most: number) => {
    if (value === undefined || (Number.isInteger(value) && value >= 1 && value <= most)) return;
    add(path, value, `must be a whole number from 1 to ${most}`);
  };
  readings.major?.forEach((value) => {
    length('major', value);
  });
  if (readings.major !== undefined && Math.max(...readings.major) > 2 * Math.min(...readings.major)) {
    add('major', readings.major.join(', '), 'must be readings of one diameter; a decimal is written with a point');
  }
  whole('crests.count', readings.crests?.count, 1000);
  length('crests.length', readings.crests?.length);
  if (readings.travel !== undefined && !(readings.travel.turns > 0 && readings.travel.turns <= 1000)) {
    add('travel.turns', readings.travel.turns, 'must be above 0, at most 1000');
  }
  length('travel.length', readings.travel?.length);
  whole('starts', readings.starts, 12);
  length('minor', readings.minor);
  length('nut_bore.goes', readings.nutBore?.goes);
  length('nut_bore.stops', readings.nutBore?.stops);
  if (readings.nutBore && readings.nutBore.stops < readings.nutBore.goes)
    add('nut_bore.stops', readings.nutBore.stops, 'must not be below the shank that goes in');
  length('crest_flat', readings.crestFlat);
  length('wires.wire', readings.wires?.wire);
  length('wires.over', readings.wires?.over);
  if (readings.wires && readings.wires.over <= 2 * readings.wires.wire) {
    add(
      'wires.over',
      readings.wires.over,
      `must be above two wires of ${readings.wires.wire} mm: it is measured over them`,
    );
  }
  const half = (path: string, value: number | undefined) => {
    if (value !== undefined && !(value > 0 && value <= 5)) add(path, value, 'must be above 0, at most 5 mm');
  };
  half('uncertainty', readings.uncertainty);
  for (const [what, value] of Object.entries(readings.uncertainties ?? {})) half(`uncertainties.${what}`, value);
  if (isEmpty(readings)) add('', '', 'needs at least one of major, crests, travel, minor, wires, nut_bore');
  if (readings.minor !== undefined && readings.major?.some((major) => readings.minor! >= major)) {
    add('minor', readings.minor, 'must be below the major diameter');
  }
  if (faults.length > 0) throw new InputError(faults);
}

function isEmpty(readings: Readings): boolean {
  const { major, crests, travel, minor, wires, nutBore, crest } = readings;
  return !major?.length && !crests && !travel && minor === undefined && !wires && !nutBore && crest !== 'round';
}
