/** Kinds of quantity a user may type. */
export type Dimension =
  | 'length'
  | 'angle'
  | 'force'
  | 'torque'
  | 'speed'
  | 'time'
  | 'ratio'
  | 'temperature'
  | 'temperature-difference'
  | 'stress'
  | 'pressure-velocity'
  | 'voltage'
  | 'current'
  | 'inductance';

interface Units {
  /** the unit of the values inside the program */
  readonly base: string;
  /** the unit that a bare number in a sheet is taken to have */
  readonly bare: string;
  /** spelling → how many base units one of it is; exact by definition of the unit */
  readonly factors: Readonly<Record<string, number>>;
  /** spelling → what it reads where the base unit reads 0, for scales that do not start together */
  readonly zeros?: Readonly<Record<string, number>>;
}

const INCH = 25.4;
const POUND_FORCE = 4.4482216152605;
const KILOGRAM_FORCE = 9.80665;
const FAHRENHEIT = 5 / 9;
const FREEZING = 32;

/**
 * Units that are understood, spelt without blanks, dots, hyphens or signs of multiplication.
 * @source iso-80000 and the international yard and pound agreement: 1 in = 25.4 mm, 1 lbf = 4.4482216152605 N, 1 kgf = 9.80665 N;
 * 1 °F = 5/9 K, 32 °F = 0 °C
 */
export const UNITS: Readonly<Record<Dimension, Units>> = {
  length: {
    base: 'mm',
    bare: 'mm',
    factors: {
      mm: 1,
      cm: 10,
      m: 1000,
      µm: 0.001,
      um: 0.001,
      in: INCH,
      inch: INCH,
      inches: INCH,
      '"': INCH,
      '″': INCH,
      ft: 12 * INCH,
    },
  },
  angle: { base: 'deg', bare: 'deg', factors: { deg: 1, '°': 1, rad: 180 / Math.PI } },
  force: {
    base: 'N',
    bare: 'N',
    factors: {
      N: 1,
      kN: 1000,
      kgf: KILOGRAM_FORCE,
      gf: KILOGRAM_FORCE / 1000,
      lbf: POUND_FORCE,
      ozf: POUND_FORCE / 16,
    },
  },
  torque: {
    base: 'N·mm',
    bare: 'N m',
    factors: {
      Nm: 1000,
      Ncm: 10,
      Nmm: 1,
      kgfcm: KILOGRAM_FORCE * 10,
      kgfm: KILOGRAM_FORCE * 1000,
      ozfin: (POUND_FORCE / 16) * INCH,
      lbfin: POUND_FORCE * INCH,
      lbfft: POUND_FORCE * INCH * 12,
    },
  },
  speed: {
    base: 'mm/s',
    bare: 'mm/s',
    factors: { 'mm/s': 1, 'mm/min': 1 / 60, 'm/s': 1000, 'm/min': 1000 / 60, 'in/s': INCH, 'in/min': INCH / 60 },
  },
  time: { base: 's', bare: 's', factors: { s: 1, min: 60, h: 3600, ms: 0.001 } },
  ratio: { base: '', bare: '', factors: { '%': 0.01 } },
  temperature: {
    base: '°C',
    bare: 'C',
    factors: { C: 1, '°C': 1, degC: 1, F: FAHRENHEIT, '°F': FAHRENHEIT, degF: FAHRENHEIT },
    zeros: { F: FREEZING, '°F': FREEZING, degF: FREEZING },
  },
  'temperature-difference': {
    base: 'K',
    bare: 'K',
    factors: { K: 1, C: 1, '°C': 1, degC: 1, F: FAHRENHEIT, '°F': FAHRENHEIT, degF: FAHRENHEIT },
  },
  stress: { base: 'MPa', bare: 'MPa', factors: { MPa: 1, kPa: 0.001, GPa: 1000, 'N/mm2': 1, 'N/mm²': 1 } },
  'pressure-velocity': { base: 'MPa·m/s', bare: 'MPa m/s', factors: { 'MPam/s': 1 } },
  voltage: { base: 'V', bare: 'V', factors: { V: 1, mV: 0.001 } },
  current: { base: 'A', bare: 'A', factors: { A: 1, mA: 0.001 } },
  inductance: { base: 'mH', bare: 'mH', factors: { mH: 1, H: 1000, µH: 0.001, uH: 0.001 } },
};

/** Folds the ways in which people write one unit (`N·m`, `N m`, `N*m`, `N-m`, Greek mu) into the table's spelling. */
export function foldUnit(unit: string): string {
  return unit.replaceAll('μ', 'µ').replace(/[\s·⋅*.-]/g, '');
}

/** The spellings to offer when a unit is not known: `mm, cm, m, µm, in`. */
export function unitChoices(dimension: Dimension): string {
  const odd = new Set(['um', 'inch', 'inches', '"', '″', 'uH', 'degC', '°C', 'degF', '°F', '°', 'N/mm²']);
  const spaced: Record<string, string> = {
    Nm: 'N m',
    Ncm: 'N cm',
    Nmm: 'N mm',
    kgfcm: 'kgf cm',
    kgfm: 'kgf m',
    ozfin: 'ozf in',
    lbfin: 'lbf in',
    lbfft: 'lbf ft',
    'MPam/s': 'MPa m/s',
  };
  return Object.keys(UNITS[dimension].factors)
    .filter((unit) => !odd.has(unit))
    .map((unit) => spaced[unit] ?? unit)
    .join(', ');
}
