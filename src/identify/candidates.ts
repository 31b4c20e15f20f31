import { FLANK_ANGLES, type ThreadForm } from '../standards/threads/form.js';
import { ALL_SERIES } from '../standards/threads/series.js';
import type { SeriesName, SeriesRow } from '../standards/threads/series-row.js';
import { threadSizes } from '../standards/threads/sizes.js';
import type { ThreadLimits } from '../standards/tolerances/limits.js';
import { ROLLED_PITCH_ERROR } from '../standards/tolerances/rolled-pitch.js';
import { nutLimits, screwLimits } from '../standards/tolerances/thread-limits.js';
import { once, onceFor } from '../units/once.js';

/** The nominal size and the range a sound screw may have [mm]. */
export interface Band {
  readonly nominal: number;
  readonly least: number;
  readonly most: number;
}

/** A screw of a series with the ranges its standard allows. */
export interface Candidate {
  readonly row: SeriesRow;
  readonly form: ThreadForm;
  /** one flank [deg] */
  readonly flankAngle: number;
  /** travel of one turn [mm] */
  readonly lead: number;
  readonly major: Band;
  readonly pitchDiameter: Band;
  readonly minor: Band;
  readonly crestFlat: Band;
  /** bore of its nut */
  readonly nutMinor: Band;
  readonly pitch: Band;
  readonly leadBand: Band;
}

/** Share of a pitch by which a rolled root may be deeper than a cut one: 0.15, ISO 2904. */
const ROLLED_ROOT = 0.15;

/** The usual class and the coarser one met in trade; unified and metric screws also without allowance. */
const CLASSES: Readonly<Record<SeriesName, readonly string[]>> = {
  trapezoidal: ['7e', '8e'],
  acme: ['2G', '4G'],
  'metric-v': ['6g', '6h'],
  unified: ['2A', '3A'],
};

function span(nominal: number, limits: readonly (readonly [number, number])[]): Band {
  return { nominal, least: Math.min(...limits.map(([a]) => a)), most: Math.max(...limits.map(([, b]) => b)) };
}

/** The crest left between two flanks: half a pitch at the pitch diameter, less what the flanks take above it. */
function crestBand(row: SeriesRow, major: Band, d2: Band, flankAngle: number): Band {
  const tan = Math.tan((flankAngle * Math.PI) / 180);
  const flat = (over: number, at: number) => Math.max(0, row.pitch / 2 - (over - at) * tan);
  return {
    nominal: flat(major.nominal, d2.nominal),
    least: flat(major.most, d2.least),
    most: flat(major.least, d2.most),
  };
}

function around(nominal: number): Band {
  return { nominal, least: nominal * (1 - ROLLED_PITCH_ERROR), most: nominal * (1 + ROLLED_PITCH_ERROR) };
}

/** A screw of a series with the ranges its standard allows. */
export const candidate = onceFor((row: SeriesRow): Candidate => {
  const form = row.series === 'unified' ? 'metric-v' : row.series;
  const flankAngle = FLANK_ANGLES[form];
  const sizes = threadSizes({ form, major: row.major, pitch: row.pitch });
  const limits = CLASSES[row.series].map((tolerance): ThreadLimits => screwLimits({ ...row, tolerance }));
  const major = span(
    row.major,
    limits.map((one) => one.major),
  );
  const pitchDiameter = span(
    sizes.pitchDiameter,
    limits.map((one) => one.pitchDiameter),
  );
  const root = span(
    sizes.screwMinor,
    limits.map((one) => one.minor),
  );
  const lead = row.pitch * row.starts;
  return {
    row,
    form,
    flankAngle,
    lead,
    major,
    pitchDiameter,
    minor: { ...root, least: root.least - ROLLED_ROOT * row.pitch },
    crestFlat: crestBand(row, major, pitchDiameter, flankAngle),
    nutMinor: span(sizes.nutMinor, [nutLimits({ designation: row.designation }).minor]),
    pitch: around(row.pitch),
    leadBand: around(lead),
  };
});

/** Every screw of every series with its ranges. */
export const candidates = once((): readonly Candidate[] => ALL_SERIES.map(candidate));
