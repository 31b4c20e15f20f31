import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../src/units/quantity.js';
import { type Dimension, UNITS, unitChoices } from '../../src/units/unit-table.js';

function value(input: unknown, dimension: Dimension): number {
  const read = parseQuantity(input, dimension);
  if (!read.ok) throw new Error(read.allowed);
  expect(read.quantity.half).toBeUndefined();
  return read.quantity.value;
}

function allowed(input: unknown, dimension: Dimension): string {
  const read = parseQuantity(input, dimension);
  if (read.ok) throw new Error(`${String(input)} was read as ${read.quantity.value}`);
  return read.allowed;
}

// Exact by definition: 1 in = 25.4 mm and 1 lb = 0.45359237 kg (international yard and pound agreement, 1959),
// standard gravity 9.80665 m/s² (third general conference on weights and measures, 1901), so 1 kgf = 9.80665 N and
// 1 lbf = 0.45359237 × 9.80665 = 4.4482216152605 N; 1 ozf = 1/16 lbf. Water freezes at 0 °C = 32 °F, boils at 100 °C = 212 °F.
const LBF = 0.45359237 * 9.80665;

describe('parseQuantity', () => {
  it.each<[string, Dimension, number]>([
    ['12 mm', 'length', 12],
    ['12mm', 'length', 12],
    ['1.2 cm', 'length', 12],
    ['0.012 m', 'length', 12],
    ['20 µm', 'length', 0.02],
    ['20 μm', 'length', 0.02],
    ['20 um', 'length', 0.02],
    ['0.5 in', 'length', 12.7],
    ['0.5 inch', 'length', 12.7],
    ['2 inches', 'length', 50.8],
    ['1/2"', 'length', 12.7],
    ['5/16 in', 'length', 7.9375],
    ['1 1/4 in', 'length', 31.75],
    ['-1 1/4 in', 'length', -31.75],
    ['1 ft', 'length', 304.8],
    ['.5 mm', 'length', 0.5],
    ['5. mm', 'length', 5],
    ['+5 mm', 'length', 5],
    ['-5 mm', 'length', -5],
    ['−5 mm', 'length', -5],
    ['1e1 mm', 'length', 10],
    ['2.5E-1 mm', 'length', 0.25],
    ['  7.95   mm  ', 'length', 7.95],
    ['7.95\u00a0mm', 'length', 7.95],
    ['15 deg', 'angle', 15],
    ['15°', 'angle', 15],
    [`${Math.PI} rad`, 'angle', 180],
    ['25 N', 'force', 25],
    ['0.4 kN', 'force', 400],
    ['20 kgf', 'force', 196.133],
    ['500 gf', 'force', 4.903325],
    ['10 lbf', 'force', 10 * LBF],
    ['16 ozf', 'force', LBF],
    ['0.4 N m', 'torque', 400],
    ['0.4 N·m', 'torque', 400],
    ['0.4 Nm', 'torque', 400],
    ['0.4 N-m', 'torque', 400],
    ['40 N cm', 'torque', 400],
    ['400 N mm', 'torque', 400],
    ['4 kgf cm', 'torque', 392.266],
    ['1 kgf m', 'torque', 9806.65],
    ['60 ozf in', 'torque', (60 / 16) * LBF * 25.4],
    ['2 lbf in', 'torque', 2 * LBF * 25.4],
    ['1 lbf ft', 'torque', LBF * 304.8],
    ['10 mm/s', 'speed', 10],
    ['600 mm/min', 'speed', 10],
    ['0.01 m/s', 'speed', 10],
    ['1 in/s', 'speed', 25.4],
    ['60 in/min', 'speed', 25.4],
    ['0.8 %', 'ratio', 0.008],
    ['100%', 'ratio', 1],
    ['25 C', 'temperature', 25],
    ['25 °C', 'temperature', 25],
    ['-10 C', 'temperature', -10],
    ['77 F', 'temperature', 25],
    ['302 °F', 'temperature', 150],
    ['-40 degF', 'temperature', -40],
    ['15 K', 'temperature-difference', 15],
    ['15 °C', 'temperature-difference', 15],
    ['27 F', 'temperature-difference', 15],
    ['2 GPa', 'stress', 2000],
    ['500 kPa', 'stress', 0.5],
    ['3 N/mm2', 'stress', 3],
    ['0.1 MPa m/s', 'pressure-velocity', 0.1],
    ['24 V', 'voltage', 24],
    ['1500 mA', 'current', 1.5],
    ['3 mH', 'inductance', 3],
    ['500 µH', 'inductance', 0.5],
  ])('reads %s', (text, dimension, expected) => {
    expect(value(text, dimension)).toBeCloseTo(expected, 9);
  });

  it('takes a bare number in the dimension’s usual unit', () => {
    expect(value(12, 'length')).toBe(12);
    expect(value(0.4, 'torque')).toBe(400);
    expect(value(25, 'temperature')).toBe(25);
    expect(value(0.1, 'ratio')).toBe(0.1);
    expect(value(0.02, 'pressure-velocity')).toBe(0.02);
  });

  it.each<[string, Dimension, number, number]>([
    ['7.95 ± 0.02 mm', 'length', 7.95, 0.02],
    ['7.95±0.02mm', 'length', 7.95, 0.02],
    ['7.95 +/- 0.02 mm', 'length', 7.95, 0.02],
    ['7.95 +- 0.02 mm', 'length', 7.95, 0.02],
    ['7.95 mm ± 0.02 mm', 'length', 7.95, 0.02],
    ['7.95 mm ± 0.02', 'length', 7.95, 0.02],
    ['7.95 mm ± 20 µm', 'length', 7.95, 0.02],
    ['5/16 ± 1/1000 in', 'length', 7.9375, 0.0254],
    ['77 ± 9 F', 'temperature', 25, 5],
    ['77 F ± 5 C', 'temperature', 25, 5],
    ['1.1 ± 0.5 %', 'ratio', 0.011, 0.005],
    ['-0.1 ± 0 %', 'ratio', -0.001, 0],
  ])('reads the half-width of %s', (text, dimension, expected, half) => {
    const read = parseQuantity(text, dimension);
    if (!read.ok) throw new Error(read.allowed);
    expect(read.quantity.value).toBeCloseTo(expected, 12);
    expect(read.quantity.half).toBeCloseTo(half, 12);
  });

  it.each<[unknown, Dimension, RegExp]>([
    ['8', 'length', /^needs a unit: mm, cm, m, µm, in, ft$/],
    ['8 ± 0.1', 'length', /^needs a unit/],
    ['0.8', 'ratio', /^needs a unit: %$/],
    ['8 N', 'length', /^unit must be one of mm/],
    ['8 mm', 'torque', /^unit must be one of N m, N cm, N mm, kgf cm/],
    ['8 mm ± 1 %', 'length', /^unit must be one of mm/],
    ['8 mm mm', 'length', /^unit must be one of/],
    ['8 constructor', 'length', /^unit must be one of/],
    ['8 __proto__', 'length', /^unit must be one of/],
    ['20 kg', 'force', /^unit must be one of N, kN, kgf/],
    ['77 f', 'temperature', /did you mean 77 F\?$/],
    ['298 K', 'temperature', /^unit must be one of C, F$/],
    ['7,95 mm', 'length', /point, not a comma/],
    ['7,95', 'length', /point, not a comma/],
    ['-,5 mm', 'length', /point, not a comma/],
    ['7.95 ± 0,02 mm', 'length', /point, not a comma/],
    ['7.95 ± -0.02 mm', 'length', /± must be 0 or above/],
    ['7.95 ± 0.02 ± 0.01 mm', 'length', /finite number/],
    ['7.95 ± mm', 'length', /finite number/],
    ['± 0.02 mm', 'length', /finite number/],
    ['1/0 in', 'length', /finite number/],
    ['0/0 in', 'length', /finite number/],
    ['1e999 mm', 'length', /finite number/],
    ['1 ± 1e999 mm', 'length', /finite number/],
    ['mm', 'length', /12 mm or 0.5 in/],
    ['', 'length', /finite number/],
    ['NaN mm', 'length', /finite number/],
    ['8 mm\n9 mm', 'length', /unit must be/],
    [`8${' '.repeat(200)}mm`, 'length', /finite number/],
    [Number.NaN, 'length', /finite number/],
    [Number.POSITIVE_INFINITY, 'length', /finite number/],
    [Number.MAX_VALUE, 'torque', /finite number/],
    [true, 'length', /finite number/],
    [null, 'length', /finite number/],
    [undefined, 'length', /finite number/],
    [[8], 'length', /finite number/],
    [{ value: 8 }, 'length', /finite number/],
    [8n, 'length', /finite number/],
    ['x', 'temperature', /25 C or 77 F$/],
    ['x', 'force', /1 N$/],
  ])('refuses %s', (input, dimension, message) => {
    expect(allowed(input, dimension)).toMatch(message);
  });

  it('takes every spelling that it offers', () => {
    for (const dimension of Object.keys(UNITS) as Dimension[]) {
      for (const unit of unitChoices(dimension).split(', '))
        expect(Number.isFinite(value(`1 ${unit}`, dimension))).toBe(true);
    }
  });

  it('never throws, and never gives a number that is not finite', () => {
    const dimension = fc.constantFrom(...(Object.keys(UNITS) as Dimension[]));
    const piece = fc.constantFrom(
      '1',
      '7.95',
      ' ',
      '±',
      '+/-',
      '-',
      '/',
      '.',
      ',',
      'e',
      'mm',
      '%',
      'N',
      '·',
      '1/2',
      '0',
    );
    const pieces = fc.array(piece, { maxLength: 12 }).map((parts) => parts.join(''));
    const input = fc.oneof(pieces, fc.string(), fc.string({ unit: 'binary' }), fc.double(), fc.anything());
    fc.assert(
      fc.property(input, dimension, (typed, wanted) => {
        const read = parseQuantity(typed, wanted);
        if (!read.ok) return read.allowed.length > 0;
        return Number.isFinite(read.quantity.value) && (read.quantity.half ?? 0) >= 0;
      }),
      { numRuns: 2000 },
    );
  });

  it('reads back what it is given, in any unit of length', () => {
    const units = fc.constantFrom(...Object.entries(UNITS.length.factors));
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), units, (number, [unit, factor]) => {
        expect(Math.abs(value(`${number} ${unit}`, 'length') - number * factor)).toBeLessThanOrEqual(2e-7);
      }),
    );
  });

  // 8/25.4 = 0.314960629… and 1.5/25.4 = 0.059055118…, as calculators give them
  it('takes the dust of a conversion off a length', () => {
    expect(value('0.31496063 in', 'length')).toBe(8);
    expect(value('0.059055118 in', 'length')).toBe(1.5);
    expect(value('5/16 in', 'length')).toBe(7.9375);
    expect(value('1/128 in', 'length')).toBe(0.1984375);
    expect(value('8.000000002 mm', 'length')).toBe(8.000000002);
  });
});
