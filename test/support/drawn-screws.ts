import type { Readings } from '../../src/identify/readings.js';
import { ALL_SERIES } from '../../src/standards/threads/series.js';
import { screwLimits } from '../../src/standards/tolerances/thread-limits.js';
import { chance } from './simulated-printer.js';

/** A screw from a drawer and what a person wrote down about it. */
export interface Drawn {
  readonly name: string;
  readonly worn: boolean;
  readonly readings: Readings;
}

const CLASSES = { trapezoidal: ['7e', '8e'], acme: ['2G', '4G'], 'metric-v': ['6g', '6h'], unified: ['2A', '3A'] };

/**
 * Screws of all series, each row as often as another, made anywhere within one of the two classes of its trade; one in ten has crests worn by up
 * to 0.3 mm. They are read with calipers of ± 0.03 mm, half of whose variance all readings of a screw share, in
 * hundredths: the crests one to three times, ten pitches; and by turns the starts, the look of the crests, the travel
 * of a nut. One count in fifty is wrong, one flat crest in fifty looks sharp, a sharp one looks flat three times in a
 * hundred, and one time in four where it is coarse.
 */
export function drawnScrews(count: number, seed: number): Drawn[] {
  const { between, uniform, normal } = chance(seed);
  for (let i = 0; i < 20; i += 1) uniform();
  const pick = <T>(of: readonly T[]) => of[Math.floor(between(0, of.length))]!;
  return Array.from({ length: count }, () => {
    const row = pick(ALL_SERIES);
    const limits = screwLimits({ ...row, tolerance: pick(CLASSES[row.series]) });
    const worn = uniform() < 0.1;
    const major = between(...limits.major) - (worn ? between(0, 0.3) : 0);
    const pitch = row.pitch * (1 + between(-0.001, 0.001));
    const common = normal();
    const read = (length: number) => Math.round(100 * (length + 0.015 * Math.SQRT1_2 * (common + normal()))) / 100;
    const flat = row.series === 'trapezoidal' || row.series === 'acme' ? 0.98 : row.pitch < 3 ? 0.03 : 0.25;
    const turns = 10 * (1 + 0.001 * normal());
    return {
      name: row.designation,
      worn,
      readings: {
        major: Array.from({ length: 1 + Math.floor(between(0, 3)) }, () => read(major)),
        crests: { count: 10, length: read(10 * pitch) },
        ...(uniform() < 0.7 ? { starts: uniform() < 0.98 ? row.starts : pick([1, 2, 3, 4, 5, 6]) } : {}),
        ...(uniform() < 0.5 ? { crest: uniform() < flat ? ('flat' as const) : ('sharp' as const) } : {}),
        ...(uniform() < 0.2 ? { travel: { turns: 10, length: read(turns * pitch * row.starts) } } : {}),
      },
    };
  });
}

/** Readings that somebody may bring: of screws of no series, of slips, in any choice, of some of which little was read. */
export function oddReadings(count: number, seed: number): Readings[] {
  const { between, uniform } = chance(seed);
  for (let i = 0; i < 20; i += 1) uniform();
  const mm = (low: number, high: number) => Math.round(100 * between(low, high)) / 100;
  return Array.from({ length: count }, () => {
    const major = mm(3, 60);
    const pitch = between(0.25, Math.min(16, major / 2.5));
    const some = () => uniform() < 0.5;
    const readings: Readings = {
      ...(some() ? { major: [major, Math.max(3, major + mm(-0.2, 0.2))] } : {}),
      ...(some() ? { crests: { count: 10, length: mm(10 * pitch, 10 * pitch) } } : {}),
      ...(some() ? { travel: { turns: 10, length: mm(10, 300) } } : {}),
      ...(some() ? { starts: 1 + Math.floor(between(0, 5)) } : {}),
      ...(some() ? { crest: (['flat', 'sharp', 'round'] as const)[Math.floor(between(0, 3))]! } : {}),
      ...(some() ? { minor: Math.round(100 * (major - 1.2 * pitch)) / 100 } : {}),
      ...(some() ? { nutBore: { goes: major - pitch, stops: major - pitch + 0.3 } } : {}),
      ...(some() ? { hand: 'left' as const } : {}),
    };
    const isRead = readings.major ?? readings.crests ?? readings.travel ?? readings.minor ?? readings.nutBore;
    return isRead === undefined ? { ...readings, major: [major] } : readings;
  });
}
