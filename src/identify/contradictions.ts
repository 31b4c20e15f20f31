import { pitchDiameterOverWires } from '../standards/three-wire.js';
import { howMany } from '../units/format.js';
import type { Candidate } from './candidates.js';
import { sigmasOutside } from './likelihood.js';
import { CORE, type Observation } from './observations.js';
import { FAR_OFF, misfit } from './rank.js';
import { type Readings, uncertaintyOf } from './readings.js';
import type { Repair } from './slips.js';

/** Standard deviations from which a reading is said to disagree. */
const DISAGREES = 3;

/**
 * What does not go together: readings among themselves, and readings with the most likely screw.
 *
 * @param readings lengths [mm]
 * @param observations the same, made comparable [mm]
 * @param best the most likely screw
 * @param slips what would explain readings that fit no screw
 * @returns one sentence a contradiction, in a fixed order
 * @source common-practice: what readings tell when they disagree
 */
export function contradictionsIn(
  readings: Readings,
  observations: readonly Observation[],
  best: Candidate,
  slips: readonly Repair[],
): string[] {
  const fits = misfit(best, observations) <= FAR_OFF;
  return [
    ...majorSpread(readings),
    // a slip that explains the readings is the better word
    ...(slips.length === 0 ? impossibleThread(readings, observations) : []),
    ...leadOverPitch(observations),
    ...countedStarts(readings, observations, fits ? best : undefined),
    ...slips.map(({ says }) => says),
    ...(fits ? crestLook(readings, best) : []),
    ...wornCrests(observations, best),
    ...thinFlanks(readings, observations, best),
    ...offSize(observations, best),
  ];
}

function mm(value: number, decimals = 2): string {
  return `${value.toFixed(decimals)} mm`;
}

function majorSpread(readings: Readings): string[] {
  const { major } = readings;
  if (major === undefined || major.length < 2) return [];
  const uncertainty = uncertaintyOf(readings, 'major');
  const spread = Math.max(...major) - Math.min(...major);
  // Two readings of one length differ by at most twice its worst-case half-width.
  if (spread <= 2 * uncertainty) return [];
  return [`major: the readings differ by ${mm(spread)}, more than ± ${uncertainty} mm explains: worn, bent or misread`];
}

/** Finest and coarsest pitch of a thread that a part is made for [mm]. */
const PITCHES = { finest: 0.25, coarsest: 16 } as const;

/** Share of the major that the groove of the coarsest thread takes on the diameter. */
const DEEPEST = 0.75;

/** Least depth of a groove on the diameter, in pitches: that of a V to its pitch diameter. */
const SHALLOWEST = 0.65;

/** Sizes that no thread has, whatever its series: a pitch without a core inside, a groove without flanks. */
function impossibleThread(readings: Readings, observations: readonly Observation[]): string[] {
  const [major, read, lead] = (['major', 'pitch', 'lead'] as const).map((what) => observed(observations, what)?.value);
  const { starts, minor } = readings;
  const pitch = read ?? (lead === undefined || starts === undefined ? undefined : lead / starts);
  if (pitch === undefined) return [];
  if (pitch < PITCHES.finest || pitch > PITCHES.coarsest || (major !== undefined && pitch > DEEPEST * major)) {
    const over = major === undefined ? '' : ` on a major of ${mm(major)}`;
    const [what, again] =
      read === undefined
        ? ['travel', 'count the turns and the starts again']
        : ['crests', 'count every crest along the screw, not those of one start'];
    if (pitch < PITCHES.finest)
      return [
        `${what}: a pitch of ${mm(pitch, 3)}${over} is finer than threads are: count again, and look at the unit`,
      ];
    return [`${what}: a pitch of ${mm(pitch, 3)}${over} is coarser than threads are: ${again}`];
  }
  if (major === undefined || minor === undefined || major - minor >= SHALLOWEST * pitch) return [];
  return [
    `minor: ${mm(minor)} is ${mm(major - minor)} below the crests, and a pitch of ${mm(pitch, 3)} is cut about ` +
      `${mm(pitch)} deep: the blades ride on the flanks; leave the minor out, or measure it with points`,
  ];
}

function observed(observations: readonly Observation[], what: Observation['what']): Observation | undefined {
  return observations.find((one) => one.what === what);
}

/** The number of pitches in a turn, and how far from whole it may be. */
function ratioOf(observations: readonly Observation[]): { ratio: number; whole: number; agrees: boolean } | undefined {
  const [lead, pitch] = [observed(observations, 'lead'), observed(observations, 'pitch')];
  if (lead === undefined || pitch === undefined) return undefined;
  const ratio = lead.value / pitch.value;
  const whole = Math.max(1, Math.round(ratio));
  const doubt = ratio * Math.hypot(lead.deviation / lead.value, pitch.deviation / pitch.value);
  return { ratio, whole, agrees: Math.abs(ratio - whole) <= Math.max(0.03 * whole, DISAGREES * doubt) };
}

function leadOverPitch(observations: readonly Observation[]): string[] {
  const found = ratioOf(observations);
  if (found === undefined || found.agrees) return [];
  const [lead, pitch] = [observed(observations, 'lead')!, observed(observations, 'pitch')!];
  return [
    `travel: ${mm(lead.value, 3)} a turn is ${found.ratio.toFixed(2)} times the pitch ${mm(pitch.value, 3)}; ` +
      'it must be a whole multiple: count turns and crests again',
  ];
}

function countedStarts(
  readings: Readings,
  observations: readonly Observation[],
  best: Candidate | undefined,
): string[] {
  const { starts } = readings;
  if (starts === undefined) return [];
  const found = ratioOf(observations);
  if (found?.agrees && found.whole !== starts) {
    return [`starts: ${starts} counted, but a turn travels ${howMany(found.whole, 'pitch', 'pitches')}`];
  }
  if (found !== undefined || best === undefined || best.row.starts === starts) return [];
  return [`starts: ${starts} counted, but ${best.row.designation} has ${best.row.starts}`];
}

function crestLook(readings: Readings, best: Candidate): string[] {
  const { crest } = readings;
  const sharp = best.form === 'metric-v';
  if (crest === undefined || sharp === (crest === 'sharp')) return [];
  const usual = sharp ? 'a V thread has sharp crests' : 'its crests are flat';
  return [`crest: seen as ${crest}, but the sizes are those of ${best.row.designation}, and ${usual}`];
}

function outside(observation: Observation | undefined, best: Candidate): number {
  if (observation === undefined) return 0;
  return sigmasOutside(observation.value, observation.deviation, observation.bandOf(best));
}

/** Share of the diameter that wear or a careless maker takes off the crests at most. */
const WORN_CREST = 0.06;

/** Pitch fine, crests too small: wear, or a screw of no series. */
function wornCrests(observations: readonly Observation[], best: Candidate): string[] {
  const major = observed(observations, 'major');
  const others = observations.filter(({ what }) => CORE.has(what) && what !== 'major');
  if (major === undefined || others.length === 0 || outside(major, best) >= -FAR_OFF) return [];
  if (misfit(best, others) > DISAGREES) return [];
  const missing = best.major.least - major.value;
  if (missing > WORN_CREST * best.major.nominal) return [];
  return [
    `major: ${mm(major.value, 3)} is ${mm(missing, 3)} below the least of ${best.row.designation}, though the pitch ` +
      'fits: worn crests, or an odd screw',
  ];
}

/** Major fine, flanks thin: wear, or a tooth made narrow. */
function thinFlanks(readings: Readings, observations: readonly Observation[], best: Candidate): string[] {
  const core = misfit(best, observations);
  if (core > DISAGREES) return [];
  const { row, pitchDiameter } = best;
  const told: string[] = [];
  const wires = outside(observed(observations, 'wires'), best);
  if (readings.wires !== undefined && Math.abs(wires) > DISAGREES) {
    const { wire, over } = readings.wires;
    const d2 = diameterOver(best, wire, over);
    const [side, limit] = wires < 0 ? ['below the least', pitchDiameter.least] : ['above the most', pitchDiameter.most];
    const cause = wires < 0 ? 'the flanks are worn or were cut thin' : 'check the diameter of the wires';
    told.push(`wires: the pitch diameter ${d2} is ${side} of ${row.designation}, ${mm(limit, 3)}: ${cause}`);
  }
  const flat = observed(observations, 'crest_flat');
  if (outside(flat, best) < -DISAGREES) {
    told.push(
      `crest_flat: ${mm(flat!.value)} is narrower than ${row.designation} allows, ${mm(best.crestFlat.least)}: ` +
        'worn flanks, or another form',
    );
  }
  if (outside(flat, best) > DISAGREES) {
    told.push(`crest_flat: ${mm(flat!.value)} is wider than ${row.designation} allows, ${mm(best.crestFlat.most)}`);
  }
  const minor = observed(observations, 'minor');
  if (Math.abs(outside(minor, best)) > DISAGREES) {
    told.push(
      `minor: ${mm(minor!.value)} is outside ${mm(best.minor.least)} to ${mm(best.minor.most)} of ${row.designation}: ` +
        'blades may ride on the flanks',
    );
  }
  return told;
}

function diameterOver(best: Candidate, wire: number, over: number): string {
  const { flankAngle, row, lead } = best;
  try {
    return mm(pitchDiameterOverWires({ flankAngle, pitch: row.pitch, lead, wire, over }), 3);
  } catch {
    return '(too small to work out)';
  }
}

/** Core sizes that are off, but not by so much that the screw is none of the series. */
function offSize(observations: readonly Observation[], best: Candidate): string[] {
  if (misfit(best, observations) > FAR_OFF) return [];
  return observations
    .filter((one) => CORE.has(one.what) && Math.abs(outside(one, best)) > DISAGREES)
    .map((one) => {
      const band = one.bandOf(best);
      const way = one.value > band.most ? 'above' : 'below';
      const limit = one.value > band.most ? band.most : band.least;
      return `${one.what}: ${mm(one.value, 3)} is ${way} the ${mm(limit, 3)} of ${best.row.designation} by more than its error`;
    });
}
