import { designationText } from '../standards/threads/designation-text.js';
import { howMany } from '../units/format.js';
import type { Candidate } from './candidates.js';
import { observationsOf } from './observations.js';
import { FAR_OFF, misfit, rank } from './rank.js';
import type { Readings } from './readings.js';

/** A mistake that a person seems to have made, and what was meant. */
export interface Repair {
  readonly says: string;
  /** the screw that the readings belong to once it is mended */
  readonly designation: string;
  /** the readings that change */
  readonly change: Change;
}

type Change = Partial<Pick<Readings, 'major' | 'crests' | 'travel' | 'starts'>>;

/** A mistake a person may have made, and the readings that it would change. */
interface Slip {
  readonly change: Change;
  readonly tell: (found: Candidate) => string;
  /** further condition on the candidate found */
  readonly holds?: (found: Candidate) => boolean;
}

const INCH = 25.4;

/** A slip must bring the readings this close, in standard deviations. */
const CLOSE = 2.5;

/**
 * Names the slips that would explain readings which fit no screw: a crest or a turn miscounted, the crests of one start
 * taken for all, inches typed for millimetres or the reverse, a radius for a diameter.
 *
 * @param readings lengths [mm]
 * @returns a repair a slip, each in one sentence; none where the readings fit a screw as they are
 * @source common-practice: slips met at the bench
 */
export function slipsIn(readings: Readings): Repair[] {
  if (fitted(readings) !== undefined) return [];
  const told = new Map<string, Repair>();
  for (const { change, tell, holds } of slipsOf(readings)) {
    const found = fitted({ ...readings, ...change }, CLOSE);
    if (found === undefined || holds?.(found) === false || told.has(tell(found))) continue;
    const designation = designationText({ ...found.row, hand: readings.hand ?? 'right' });
    told.set(tell(found), { says: tell(found), designation, change: tidy(change) });
  }
  return [...told.values()];
}

/** As a person would type it: a hundred-thousandth of a millimetre is nothing. */
function tidy({ major, crests, travel, ...rest }: Change): Change {
  const length = (value: number) => Number(value.toFixed(5));
  return {
    ...rest,
    ...(major && { major: major.map(length) }),
    ...(crests && { crests: { ...crests, length: length(crests.length) } }),
    ...(travel && { travel: { ...travel, length: length(travel.length) } }),
  };
}

/** The most likely candidate if it fits. */
function fitted(readings: Readings, within = FAR_OFF): Candidate | undefined {
  const observations = observationsOf(readings);
  const first = rank(observations, readings)[0]!.candidate;
  return misfit(first, observations) <= within ? first : undefined;
}

function slipsOf(readings: Readings): Slip[] {
  return [...crestSlips(readings), ...turnSlips(readings), ...unitSlips(readings), ...radiusSlips(readings)];
}

function crestSlips(readings: Readings): Slip[] {
  const { crests } = readings;
  if (crests === undefined) return [];
  const { count, length } = crests;
  const miscounts = [count - 1, count + 1]
    .filter((other) => other > 0)
    .map(
      (other): Slip => ({
        change: { crests: { count: other, length } },
        tell: ({ row }) =>
          `crests: ${length} mm over ${count} pitches fits no series, over ${other} it is ${row.designation}: ` +
          'count pitches from one edge to the same edge, not crests',
      }),
    );
  const leads = [2, 3, 4, 5, 6, 8].map(
    (starts): Slip => ({
      change: { starts, crests: { count: count * starts, length } },
      tell: ({ row }) =>
        `crests: ${(length / count).toFixed(2)} mm looks like the lead of ${row.designation}, not its pitch ` +
        `${short(row.pitch)} mm: count every crest, not those of one start`,
      holds: ({ row }) => row.starts === starts,
    }),
  );
  return [...miscounts, ...leads];
}

function turnSlips(readings: Readings): Slip[] {
  const { travel } = readings;
  if (travel === undefined) return [];
  return [travel.turns - 1, travel.turns + 1]
    .filter((turns) => turns > 0)
    .map((turns) => ({
      change: { travel: { ...travel, turns } },
      tell: ({ row }) =>
        `travel: ${travel.length} mm in ${howMany(travel.turns, 'turn')} fits no screw, in ${turns} it is ${row.designation}: ` +
        'count the turns again',
    }));
}

function scaledMajor(readings: Readings, factor: number): Change {
  return readings.major === undefined ? {} : { major: readings.major.map((value) => value * factor) };
}

function scaledCrests(readings: Readings, factor: number): Change {
  const { crests } = readings;
  return crests === undefined ? {} : { crests: { ...crests, length: crests.length * factor } };
}

function scaledTravel(readings: Readings, factor: number): Change {
  const { travel } = readings;
  return travel === undefined ? {} : { travel: { ...travel, length: travel.length * factor } };
}

/** Inches typed as millimetres leave a length 25.4 times too small; the reverse, too large. */
function unitSlips(readings: Readings): Slip[] {
  return [INCH, 1 / INCH].flatMap((factor) => {
    const change = {
      major: scaledMajor(readings, factor),
      crests: scaledCrests(readings, factor),
      travel: scaledTravel(readings, factor),
    };
    const told = Object.entries(change).filter(([, part]) => Object.keys(part).length > 0);
    const units = factor > 1 ? 'inches typed as millimetres' : 'millimetres taken for inches and multiplied by 25.4';
    const slip = (names: string, change: Change): Slip => ({
      change,
      tell: ({ row }) => `${names}: looks like ${units}; read so it is ${row.designation}`,
    });
    const single = told.map(([name, part]) => slip(name, part));
    if (told.length < 2) return single;
    const names = told.map(([name]) => name).join(' and ');
    return [...single, slip(names, Object.assign({}, ...told.map(([, part]) => part)))];
  });
}

function radiusSlips(readings: Readings): Slip[] {
  if (readings.major === undefined || readings.crests === undefined) return [];
  return [
    {
      change: scaledMajor(readings, 2),
      tell: ({ row }) => `major: twice the reading would be ${row.designation}: give the diameter, not the radius`,
    },
  ];
}

function short(value: number): string {
  return String(Number(value.toFixed(3)));
}
