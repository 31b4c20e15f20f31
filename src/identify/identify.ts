import type { SourceKey } from '../standards/sources.js';
import { designationText } from '../standards/threads/designation-text.js';
import type { ThreadForm } from '../standards/threads/form.js';
import type { SeriesName } from '../standards/threads/series-row.js';
import type { Candidate } from './candidates.js';
import { contradictionsIn } from './contradictions.js';
import { sigmasOutside } from './likelihood.js';
import { type MeasuredScrew, measuredScrew, screwBlock } from './measured-screw.js';
import { type NextMeasurement, nextMeasurement } from './next-measurement.js';
import { type Observation, type ObservedLength, observationsOf } from './observations.js';
import { APART, FAR_OFF, misfit, type Ranked, rank } from './rank.js';
import { type Readings, requireReadings } from './readings.js';
import { type Repair, slipsIn } from './slips.js';

/** How far one reading lies from a candidate. */
export interface Residual {
  readonly what: ObservedLength;
  /** reading less nominal size [mm] */
  readonly mm: number;
  /** distance outside the range of the standard, in standard deviations of the reading; 0 inside it */
  readonly sigma: number;
}

/** One screw that the readings may belong to. Lengths [mm]. */
export interface IdentifiedScrew {
  readonly designation: string;
  readonly series: SeriesName;
  readonly form: ThreadForm;
  readonly major: number;
  readonly pitch: number;
  readonly lead: number;
  readonly starts: number;
  readonly hand: 'right' | 'left';
  readonly probability: number;
  readonly residuals: readonly Residual[];
  readonly source: SourceKey;
}

/** What the readings say. */
export interface Identification {
  /** most likely first; probabilities sum to one */
  readonly candidates: readonly IdentifiedScrew[];
  /** the first candidate agrees with the readings; otherwise the screw is none of the series */
  readonly fits: boolean;
  /** the first candidate fits and stands alone */
  readonly separable: boolean;
  /** designations that cannot be told from the first one by these readings; none where no series fits */
  readonly twins: readonly string[];
  /** the further measurement that would tell most; null when none would tell anything, or no series fits */
  readonly nextMeasurement: NextMeasurement | null;
  readonly contradictions: readonly string[];
  /** slips that would explain readings which fit no screw: what to change, and what they are then */
  readonly repairs: readonly Repair[];
  /** the screw as measured */
  readonly screw: MeasuredScrew;
  /** a `screw:` block for a part sheet: the designation and what was measured, or the odd screw alone */
  readonly block: string;
}

/**
 * Names the screw that readings belong to.
 *
 * Each screw of each series is given the likelihood of the readings: level across the range its standard allows, falling
 * off outside as a normal error of the readings; a screw is made under size, and an oversize reading within its error
 * keeps its likelihood. The answer does not depend on the order of the readings.
 *
 * @param readings what was measured, lengths [mm], at least one of major, crests, travel, minor, wires
 * @returns candidates, what tells them apart, contradictions, and the screw as measured
 * @throws InputError a reading is no length or count, or nothing was read
 * @source iso-2904: trapezoidal series
 * @source asme-b1.5: Acme series
 * @source iso-261: metric V series
 * @source asme-b1.1: unified series
 * @example identify({ major: [7.92, 7.94, 7.91], crests: { count: 10, length: 20.02 }, starts: 4 }).candidates[0].designation // 'Tr8x8(P2)'
 */
export function identify(readings: Readings): Identification {
  requireReadings(readings);
  const observations = observationsOf(readings);
  const ranked = rank(observations, readings);
  const first = ranked[0]!;
  const hand = readings.hand ?? 'right';
  const isBall = readings.crest === 'round';
  const fits = !isBall && misfit(first.candidate, observations) <= FAR_OFF;
  const twins = fits ? ranked.slice(1).filter(({ probability }) => probability * APART > first.probability) : [];
  const separable = fits && twins.length === 0;
  const oneProfile = twins.every(({ candidate }) => isOneProfile(candidate, first.candidate));
  const isNamed = separable || (fits && readings.starts !== undefined && oneProfile);
  const repairs = isBall ? [] : slipsIn(readings);
  const screw = measuredScrew(readings, observations, { best: first.candidate, fits });
  const candidates = ranked.map((one) => identifiedScrew(one, observations, hand));
  return {
    candidates,
    fits,
    separable,
    twins: twins.map(({ candidate }) => designationText({ ...candidate.row, hand })),
    nextMeasurement: isBall ? null : fits ? nextMeasurement(ranked, readings) : oddNext(readings),
    contradictions: isBall ? [BALL_SCREW] : contradictionsIn(readings, observations, first.candidate, repairs),
    repairs,
    screw,
    block: isBall ? '' : screwBlock(screw, readings, isNamed ? candidates[0]! : undefined),
  };
}

/** Whether two screws differ in nothing but their starts. */
function isOneProfile(a: Candidate, b: Candidate): boolean {
  return a.form === b.form && a.row.major === b.row.major && a.row.pitch === b.row.pitch;
}

const BALL_SCREW =
  'crest: round grooves are those of a ball screw: its nut runs on balls, and a printed nut is wrong for it; ' +
  'get the ball nut of its maker, or change screw and nut together';

/** What would make an odd screw surer: its form by the crests, then its flanks. */
function oddNext(readings: Readings): NextMeasurement | null {
  const { cannot = [] } = readings;
  if (readings.crest === undefined && !cannot.includes('crest'))
    return { what: 'crest', why: 'whether the crests are flat or sharp tells the form of an odd screw', bits: 1 };
  if (cannot.includes('wires')) return null;
  if (readings.wires === undefined && readings.major !== undefined && readings.crests !== undefined) {
    const wire = Number((0.52 * (readings.crests.length / readings.crests.count)).toFixed(2));
    return { what: 'wires', why: 'the size over three wires tells the flanks of an odd screw', bits: 1, wire };
  }
  return null;
}

function identifiedScrew(
  ranked: Ranked,
  observations: readonly Observation[],
  hand: 'right' | 'left',
): IdentifiedScrew {
  const { candidate, probability } = ranked;
  const { row, form, lead } = candidate;
  return {
    designation: designationText({ ...row, hand }),
    series: row.series,
    form,
    major: row.major,
    pitch: row.pitch,
    lead: Number(lead.toFixed(9)),
    starts: row.starts,
    hand,
    probability,
    residuals: observations.map(({ what, value, deviation, bandOf }) => ({
      what,
      mm: Number((value - bandOf(candidate).nominal).toFixed(6)),
      sigma: Number(sigmasOutside(value, deviation, bandOf(candidate)).toFixed(4)),
    })),
    source: row.source,
  };
}
