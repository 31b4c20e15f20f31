import { designationText } from '../standards/threads/designation-text.js';
import { bestWire } from '../standards/three-wire.js';
import { ROLLED_PITCH_ERROR } from '../standards/tolerances/rolled-pitch.js';
import { CALIPERS } from '../units/measured.js';
import { type Band, type Candidate, candidates } from './candidates.js';
import { flatChance, plateauDensity, startsChance } from './likelihood.js';
import { deviationOf, type ObservedLength, wiresBand } from './observations.js';
import { APART, type Ranked } from './rank.js';
import type { MeasurementKind, Readings } from './readings.js';

/** The further measurement that is expected to tell most. */
export interface NextMeasurement {
  readonly what: MeasurementKind;
  readonly why: string;
  /** expected gain, 1 bit halves the doubt between two equal candidates */
  readonly bits: number;
  /** diameter of the wires to use, for `wires` [mm] */
  readonly wire?: number;
}

/** Share of the information that counts, by the ease with which a measurement is made. */
const EASE: Readonly<Record<MeasurementKind, number>> = {
  starts: 1,
  crest: 1,
  crests: 0.95,
  major: 0.95,
  travel: 0.9,
  crest_flat: 0.8,
  minor: 0.8,
  wires: 0.7,
};

/** Points at which a density is sampled. */
const POINTS = 48;

/** Turns and pitches a person would take next. */
const TURNS = 10;
const PITCHES = 20;

interface Option {
  readonly what: MeasurementKind;
  readonly bits: number;
  readonly expects: (candidate: Candidate) => string;
  readonly differs: (a: Candidate, b: Candidate) => boolean;
  readonly wire?: number;
}

/**
 * The further measurement that would part the candidates best: the one with the largest expected information, that is
 * the doubt before it less the doubt expected after it, weighed by its ease.
 *
 *     I = Σ p_i ∫ f_i(m)·log2( f_i(m) / Σ p_j f_j(m) ) dm
 *
 * f_i is the density of the reading m if candidate i is the screw.
 *
 * @param ranked candidates with their probabilities
 * @param readings what was measured already, lengths [mm]
 * @returns the measurement, or null when none would tell more than a hundredth of a bit
 * @source derived: mutual information of a measurement and the candidates
 */
export function nextMeasurement(ranked: readonly Ranked[], readings: Readings): NextMeasurement | null {
  const doubtful = ranked.filter(({ probability }) => probability > 1e-4).slice(0, 16);
  const { cannot = [] } = readings;
  const options = optionsFor(doubtful, readings).filter(({ what }) => !cannot.includes(what));
  const best = options.reduce<Option | null>(
    (found, one) => (found === null || worth(one) > worth(found) ? one : found),
    null,
  );
  const first = ranked[0]!.candidate;
  const looksTold = readings.crest !== undefined || readings.wires !== undefined || cannot.includes('crest');
  const twin = looksTold ? undefined : twinOfOtherForm(first);
  if (twin) {
    return {
      what: 'crest',
      why: `whether the crests are flat or sharp: ${crestWords(first)} for ${nameOf(first)}, ${crestWords(twin)} for ${nameOf(twin)}, which a worn screw is taken for`,
      bits: Number((options.find(({ what }) => what === 'crest')?.bits ?? 0).toFixed(3)),
    };
  }
  if (best === null || best.bits < 0.01) return null;
  return {
    what: best.what,
    why: reasonFor(best, doubtful),
    bits: Number(best.bits.toFixed(3)),
    ...(best.wire === undefined ? {} : { wire: best.wire }),
  };
}

/** Share of the diameter within which wear brings a screw of another form. */
const NEAR = 0.03;

/** A screw of another form that shares pitch and size, so that wear alone may have made it look like this one. */
function twinOfOtherForm(one: Candidate): Candidate | undefined {
  const isSharp = ({ form }: Candidate) => form === 'metric-v';
  return candidates().find(
    (other) =>
      isSharp(other) !== isSharp(one) &&
      Math.abs(other.row.pitch / one.row.pitch - 1) < 2 * ROLLED_PITCH_ERROR &&
      Math.abs(other.row.major / one.row.major - 1) < NEAR,
  );
}

function crestWords({ form }: Candidate): string {
  return form === 'metric-v' ? 'sharp' : 'flat';
}

function nameOf({ row }: Candidate): string {
  return designationText({ ...row, hand: 'right' });
}

function worth(option: Option): number {
  return option.bits * EASE[option.what];
}

function optionsFor(ranked: readonly Ranked[], readings: Readings): Option[] {
  const uncertainty = readings.uncertainty ?? CALIPERS;
  const options: Option[] = [];
  const length = (
    what: MeasurementKind,
    kind: ObservedLength,
    bandOf: (one: Candidate) => Band,
    count = 1,
    wire?: number,
  ) => {
    const deviation = (one: Candidate) => deviationOf(kind, uncertainty, count, one.lead);
    options.push({
      what,
      bits: lengthInformation(ranked, bandOf, deviation),
      expects: (one) => `${bandOf(one).nominal.toFixed(2)} mm`,
      differs: (a, b) => liesApart(bandOf(a), bandOf(b), 2 * (deviation(a) + deviation(b))),
      ...(wire === undefined ? {} : { wire }),
    });
  };
  if (readings.starts === undefined) options.push(startsOption(ranked));
  if (readings.crest === undefined) options.push(crestOption(ranked));
  if (readings.travel === undefined) length('travel', 'lead', (one) => one.leadBand, TURNS);
  if ((readings.crests?.count ?? 0) < PITCHES) length('crests', 'pitch', (one) => one.pitch, PITCHES);
  if (readings.major === undefined || readings.major.length === 0) length('major', 'major', (one) => one.major, 3);
  if (readings.minor === undefined) length('minor', 'minor', (one) => one.minor);
  if (readings.crestFlat === undefined) length('crest_flat', 'crest_flat', (one) => one.crestFlat);
  if (readings.wires === undefined) {
    const { form, row } = ranked[0]!.candidate;
    const wire = Number(bestWire({ form, pitch: row.pitch }).toFixed(2));
    length('wires', 'wires', wiresBand(wire), 1, wire);
  }
  return options;
}

function startsOption(ranked: readonly Ranked[]): Option {
  const counts = [...new Set(ranked.map(({ candidate }) => candidate.row.starts))];
  return {
    what: 'starts',
    bits: answerInformation(ranked, counts, (count, one) => startsChance(count, one.row.starts)),
    expects: (one) => `${one.row.starts}`,
    differs: (a, b) => a.row.starts !== b.row.starts,
  };
}

function crestOption(ranked: readonly Ranked[]): Option {
  return {
    what: 'crest',
    bits: answerInformation(ranked, ['flat', 'sharp'], (answer, one) =>
      answer === 'flat' ? flatChance(one) : 1 - flatChance(one),
    ),
    expects: (one) => (one.form === 'metric-v' ? 'sharp' : 'flat'),
    differs: (a, b) => (a.form === 'metric-v') !== (b.form === 'metric-v'),
  };
}

function answerInformation<Answer>(
  ranked: readonly Ranked[],
  answers: readonly Answer[],
  chance: (answer: Answer, candidate: Candidate) => number,
): number {
  let bits = 0;
  for (const answer of answers) {
    const each = ranked.map(({ candidate }) => chance(answer, candidate));
    const all = ranked.reduce((sum, { probability }, i) => sum + probability * each[i]!, 0);
    ranked.forEach(({ probability }, i) => {
      if (each[i]! > 0) bits += probability * each[i]! * Math.log2(each[i]! / all);
    });
  }
  return Math.max(0, bits);
}

/** Midpoint rule over each candidate's own reach, where its density is not nothing. */
function lengthInformation(
  ranked: readonly Ranked[],
  bandOf: (candidate: Candidate) => Band,
  deviationFor: (candidate: Candidate) => number,
): number {
  const parts = ranked.map(({ candidate, probability }) => ({
    probability,
    band: bandOf(candidate),
    deviation: deviationFor(candidate),
  }));
  let bits = 0;
  for (const { probability, band, deviation } of parts) {
    const from = band.least - 4 * deviation;
    const step = (band.most - band.least + 8 * deviation) / POINTS;
    for (let i = 0; i < POINTS; i += 1) {
      const at = from + (i + 0.5) * step;
      const own = plateauDensity(at, deviation, band);
      const all = parts.reduce((sum, one) => sum + one.probability * plateauDensity(at, one.deviation, one.band), 0);
      bits += probability * own * step * Math.log2(own / all);
    }
  }
  return Math.max(0, bits);
}

function liesApart(a: Band, b: Band, reach: number): boolean {
  return a.least > b.most + reach || b.least > a.most + reach;
}

const WORDS: Readonly<Record<MeasurementKind, string>> = {
  starts: 'the threads that begin at the end of the screw',
  crest: 'whether the crests are flat or sharp',
  travel: `the travel of a nut in ${TURNS} turns, per turn`,
  crests: `the length over ${PITCHES} pitches, per pitch`,
  major: 'the major diameter',
  crest_flat: 'the width of a crest',
  minor: 'the diameter over the root',
  wires: 'the size over three wires',
};

/** Expectations told apart in one sentence. */
const MOST_TOLD = 4;

function reasonFor(option: Option, ranked: readonly Ranked[]): string {
  const first = ranked[0]!;
  const wire = option.wire === undefined ? '' : ` of ${option.wire} mm`;
  if (ranked.length === 1) return `${WORDS[option.what]}${wire} would confirm it`;
  const told = toldApart(option, ranked, first.probability / APART);
  const others = told.length > 1 ? told : [first.candidate, ranked[1]!.candidate];
  const name = (one: Candidate) => designationText({ ...one.row, hand: 'right' });
  return `${WORDS[option.what]}${wire}: ${others.map((one) => `${option.expects(one)} for ${name(one)}`).join(', ')}`;
}

/** The candidates in doubt that the measurement tells from each other, likeliest first; else the next that it would. */
function toldApart(option: Option, ranked: readonly Ranked[], doubt: number): readonly Candidate[] {
  const told: Candidate[] = [];
  for (const { candidate, probability } of ranked) {
    const inDoubt = probability > doubt || told.length < 2;
    const differs = told.every((other) => option.differs(other, candidate));
    if (inDoubt && differs && told.length < MOST_TOLD) told.push(candidate);
  }
  return told;
}
