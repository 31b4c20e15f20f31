import { fault } from '../../units/faults.js';
import { toMicrometre } from '../rounding.js';
import { vSizes } from '../threads/metric-v.js';
import { METRIC_PAIR_ROWS, METRIC_PITCH_ROWS, METRIC_RANGES, type MetricPitchRow } from './iso-965-table.js';
import { limits, sharpRoot, type ThreadLimits } from './limits.js';
import { preferredNumber } from './preferred-numbers.js';

/** Size of a metric V thread. */
export interface MetricThread {
  /** nominal major diameter [mm] */
  readonly major: number;
  /** distance of neighbouring crests [mm] */
  readonly pitch: number;
}

const SCREW_CLASS = /^([3-9])([efgh])(?:([468])([efgh]))?$/;
const NUT_CLASS = /^([4-8])([GH])(?:([4-8])([GH]))?$/;

function pitchRow(pitch: number): MetricPitchRow {
  const row = METRIC_PITCH_ROWS.get(pitch);
  if (row !== undefined) return row;
  if (!(pitch >= 0.2 && pitch <= 8))
    throw fault('designation', `pitch ${pitch} mm`, 'ISO 965-1 has no tolerances for it; 0.2 to 8 mm');
  const nutMinor = pitch < 1 ? 433 * pitch - 190 * pitch ** 1.22 : 230 * pitch ** 0.7;
  return {
    e: -Math.round(preferredNumber(50 + 11 * pitch)),
    f: -Math.round(preferredNumber(30 + 11 * pitch)),
    g: -preferredNumber(15 + 11 * pitch),
    screwMajor: preferredNumber(180 * pitch ** (2 / 3) - 3.15 / Math.sqrt(pitch)),
    nutMinor: preferredNumber(nutMinor),
  };
}

/** [Td2, TD2] of grade 6 [µm]. */
function pairRow(major: number, pitch: number): readonly [number, number] {
  const range = METRIC_RANGES.find(([over, to]) => major > over && major <= to);
  if (range === undefined) {
    throw fault('designation', `${major} mm`, 'ISO 965-1 has no range for this diameter here; above 1.4, up to 90 mm');
  }
  const row = METRIC_PAIR_ROWS.find(([over, p]) => over === range[0] && p === pitch);
  if (row !== undefined) return [row[2], row[3]];
  const screw = 90 * pitch ** 0.4 * Math.sqrt(range[0] * range[1]) ** 0.1;
  return [preferredNumber(screw), preferredNumber(1.32 * screw)];
}

/** A tolerance of grade 6 [µm] in another grade [mm]: a grade is four steps of R40. */
function graded(grade6: number, grade: number): number {
  return preferredNumber(grade6, 4 * (grade - 6)) / 1000;
}

/** Fundamental deviation of a screw [mm], 0 or below. */
function deviation(position: string, { e, f, g }: MetricPitchRow, pitch: number): number {
  if (position === 'h') return 0;
  const es = { e, f, g }[position];
  if (es === undefined)
    throw fault('tolerance', position, `ISO 965-1 has no position ${position} for pitch ${pitch} mm`);
  return es / 1000;
}

/**
 * Limits of size of a metric V screw.
 *
 *     major: d + es − Td … d + es
 *     pitch diameter: d2 + es − Td2 … d2 + es
 *     minor: pitch diameter limits − 0.577350·P      (root of radius H/6)
 *
 * The standard limits the contour of the root rather than d3; the minor given is that of a root of radius H/6 which
 * follows the flanks. Basic sizes are rounded to 1 µm first, as the tables do. Grades 3 to 9 are grade 6 moved by four
 * steps of R40 a grade; a pair that is not in the table follows Td2(6) = 90·P^0.4·d^0.1 µm.
 *
 * @param thread major and pitch [mm]
 * @param tolerance such as 6g, 6h, 4h, 6e, 8g, or 5g6g (pitch diameter, then crest)
 * @returns limits of size                                     [mm]
 * @throws InputError the class is none of these, or the standard has no range for the size
 * @validity diameter above 1.4 to 90 mm; the crest of a screw has grades 4, 6, 8: others take the even one nearest 6
 * @source iso-965-1: 6g of M3 to M5 confirmed
 * @source memory: other sizes and grades
 * @example metricScrewLimits({ major: 8, pitch: 1.25 }, '6g').pitchDiameter // [7.042, 7.160]
 */
export function metricScrewLimits(thread: MetricThread, tolerance: string): ThreadLimits {
  const parts = SCREW_CLASS.exec(tolerance);
  if (parts === null || (parts[4] !== undefined && parts[4] !== parts[2])) {
    throw fault('tolerance', tolerance, 'must be a screw class such as 6g, 6h, 4h, 6e, 8g, 5g6g');
  }
  const row = pitchRow(thread.pitch);
  const [flank] = pairRow(thread.major, thread.pitch);
  const es = deviation(parts[2]!, row, thread.pitch);
  const grade = Number(parts[1]);
  const crest = Number(parts[3] ?? crestGrade(grade));
  const d2 = toMicrometre(vSizes(thread).pitchDiameter) + es;
  const least = d2 - graded(flank, grade);
  const root = thread.pitch / Math.sqrt(3);
  return {
    major: limits(thread.major + es - graded(row.screwMajor, crest), thread.major + es),
    pitchDiameter: limits(least, d2),
    minor: limits(toMicrometre(least - root), toMicrometre(d2 - root)),
  };
}

function crestGrade(grade: number): number {
  if (grade <= 4) return 4;
  return grade <= 7 ? 6 : 8;
}

/**
 * Limits of size of a metric V nut.
 *
 *     minor: D1 + EI … D1 + EI + TD1     pitch diameter: D2 + EI … D2 + EI + TD2     major: from D + EI
 *
 * The standard gives the major no upper limit; here it is where the flanks would meet, see `sharpRoot`.
 *
 * @param thread major and pitch [mm]
 * @param tolerance 4H to 8H, 4G to 8G, or two grades such as 5H6H (pitch diameter, then crest)
 * @returns limits of size                                     [mm]
 * @throws InputError the class is none of these, or the standard has no range for the size
 * @validity diameter above 1.4 to 90 mm
 * @source iso-965-1: TD2 of M3 to M5 confirmed
 * @source memory: TD1, other sizes and grades
 * @example metricNutLimits({ major: 8, pitch: 1.25 }, '6H').minor // [6.647, 6.912]
 */
export function metricNutLimits(thread: MetricThread, tolerance: string): ThreadLimits {
  const parts = NUT_CLASS.exec(tolerance);
  if (parts === null || (parts[4] !== undefined && parts[4] !== parts[2])) {
    throw fault('tolerance', tolerance, 'must be a nut class such as 6H, 5H, 7H, 6G, 5H6H');
  }
  const { g, nutMinor } = pitchRow(thread.pitch);
  const [, flank] = pairRow(thread.major, thread.pitch);
  const grade = Number(parts[1]);
  const crest = Number(parts[3] ?? grade);
  const ei = parts[2] === 'G' ? -g / 1000 : 0;
  const sizes = vSizes(thread);
  const d1 = toMicrometre(sizes.nutMinor) + ei;
  const d2 = toMicrometre(sizes.pitchDiameter) + ei;
  const most = d2 + graded(flank, grade);
  return {
    major: limits(thread.major + ei, sharpRoot({ pitchDiameter: most, pitch: thread.pitch, flankAngle: 30 })),
    pitchDiameter: limits(d2, most),
    minor: limits(d1, d1 + graded(nutMinor, crest)),
  };
}
