import { measureOverWires } from '../standards/three-wire.js';
import type { Band, Candidate } from './candidates.js';
import { type Readings, uncertaintyOf } from './readings.js';

/** The lengths that can be compared with a candidate. */
export type ObservedLength = 'major' | 'pitch' | 'lead' | 'minor' | 'nut_bore' | 'crest_flat' | 'wires';

/** One measured length, its standard deviation, and what a candidate lets it be [mm]. */
export interface Observation {
  readonly what: ObservedLength;
  readonly value: number;
  readonly deviation: number;
  readonly bandOf: (candidate: Candidate) => Band;
}

/** Lengths that a screw of a series must keep; the others tell wear as well. */
export const CORE: ReadonlySet<ObservedLength> = new Set(['major', 'pitch', 'lead']);

/** A turn counted by a mark on the nut is good to a hundredth of a turn. */
const TURN_ERROR = 0.01;

/** Roots and crest flats are read with twice the error of a plain diameter. */
const AWKWARD = 2;

/**
 * What the wires measure over a candidate, for the range of its pitch diameter; a ground screw may reach the basic size.
 *
 * @param wire diameter of the wires [mm]
 * @returns band by candidate        [mm]
 * @internal
 */
export function wiresBand(wire: number): (candidate: Candidate) => Band {
  return ({ flankAngle, row, lead, pitchDiameter }) => {
    const over = (diameter: number) =>
      measureOverWires({ flankAngle, pitch: row.pitch, lead, wire, pitchDiameter: diameter });
    const { nominal, least, most } = pitchDiameter;
    return { nominal: over(nominal), least: over(least), most: over(Math.max(nominal, most)) };
  };
}

/**
 * Standard deviation of a reading of one kind, the uncertainty being two of them. Half of a caliper's variance is
 * common to all its readings, so several readings of a diameter help only by the other half.
 *
 * @param what kind of reading
 * @param uncertainty of a single length, half-width         [mm]
 * @param count readings of the major, pitches or turns      [-]
 * @param lead travel of one turn, for the error of the turns [mm]
 * @returns standard deviation of the diameter, pitch or lead [mm]
 * @source derived: a length over n pitches is divided by n
 * @example deviationOf('pitch', 0.03, 10) // 0.0015 mm
 */
export function deviationOf(what: ObservedLength, uncertainty: number, count = 1, lead = 0): number {
  const single = uncertainty / 2;
  if (what === 'major') return single * Math.sqrt((1 + 1 / count) / 2);
  if (what === 'pitch') return single / count;
  if (what === 'lead') return Math.hypot(single, TURN_ERROR * lead) / count;
  return what === 'wires' ? single : AWKWARD * single;
}

/**
 * The readings as comparable lengths: means, pitch and lead per turn, each with its standard deviation.
 *
 * @param readings lengths [mm]
 * @returns one observation for each kind of length that was read
 * @source derived: mean of the majors, length over count
 */
export function observationsOf(readings: Readings): Observation[] {
  const found: Observation[] = [];
  const add = (what: ObservedLength, value: number, deviation: number, bandOf: (candidate: Candidate) => Band) =>
    found.push({ what, value, deviation, bandOf });
  const { major, crests, travel, minor, nutBore, crestFlat, wires } = readings;
  if (major !== undefined && major.length > 0) {
    add(
      'major',
      meanOf(major),
      deviationOf('major', uncertaintyOf(readings, 'major'), major.length),
      (one) => one.major,
    );
  }
  if (crests !== undefined) {
    add(
      'pitch',
      crests.length / crests.count,
      deviationOf('pitch', uncertaintyOf(readings, 'crests'), crests.count),
      (one) => one.pitch,
    );
  }
  if (travel !== undefined) {
    const lead = travel.length / travel.turns;
    add(
      'lead',
      lead,
      deviationOf('lead', uncertaintyOf(readings, 'travel'), travel.turns, lead),
      (one) => one.leadBand,
    );
  }
  if (minor !== undefined)
    add('minor', minor, deviationOf('minor', uncertaintyOf(readings, 'minor')), (one) => one.minor);
  if (nutBore !== undefined) {
    const { goes, stops } = nutBore;
    add(
      'nut_bore',
      (goes + stops) / 2,
      boreDeviation(nutBore, uncertaintyOf(readings, 'nutBore')),
      (one) => one.nutMinor,
    );
  }
  if (crestFlat !== undefined) {
    add(
      'crest_flat',
      crestFlat,
      deviationOf('crest_flat', uncertaintyOf(readings, 'crestFlat')),
      (one) => one.crestFlat,
    );
  }
  if (wires !== undefined)
    add('wires', wires.over, deviationOf('wires', uncertaintyOf(readings, 'wires')), wiresBand(wires.wire));
  return found;
}

/** A bore lies anywhere between the shank that goes and the one that does not. */
function boreDeviation({ goes, stops }: NonNullable<Readings['nutBore']>, uncertainty: number): number {
  return Math.hypot((stops - goes) / Math.sqrt(12), uncertainty / 2);
}

/** The mean, summed from the smallest up so that the order of reading cannot show. */
function meanOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.reduce((sum, value) => sum + value, 0) / sorted.length;
}
