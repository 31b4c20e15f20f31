import { describe, expect, it } from 'vitest';
import { SOURCES } from '../../../src/standards/sources.js';
import { acmeClearance, acmeSizes } from '../../../src/standards/threads/acme.js';
import { vSizes } from '../../../src/standards/threads/metric-v.js';
import { ALL_SERIES } from '../../../src/standards/threads/series.js';
import { trapezoidalClearance, trapezoidalSizes } from '../../../src/standards/threads/trapezoidal.js';

describe('series', () => {
  it('holds every designation once, with a known source', () => {
    expect(new Set(ALL_SERIES.map((row) => row.designation)).size).toBe(ALL_SERIES.length);
    for (const row of ALL_SERIES) expect(SOURCES).toHaveProperty([row.source]);
  });

  it('flags plan and common practice apart', () => {
    const source = (name: string) => ALL_SERIES.find((row) => row.designation === name)?.source;
    expect(source('Tr8x1.5')).toBe('iso-2902');
    expect(source('Tr8x2')).toBe('common-practice');
    expect(source('Acme 3/8-12')).toBe('asme-b1.5');
    expect(source('Acme 3/8-10')).toBe('common-practice');
  });
});

describe('trapezoidalSizes', () => {
  // ISO 2904 / DIN 103. Rows marked CONFIRMED were read on published pages; 'formula' rows by the standard's formulas.
  it.each([
    ['CONFIRMED', 8, 1.5, 0.15, 7.25, 8.3, 6.2, 6.5],
    ['formula', 9, 2, 0.25, 8, 9.5, 6.5, 7],
    ['CONFIRMED', 10, 2, 0.25, 9, 10.5, 7.5, 8],
    ['formula', 10, 3, 0.25, 8.5, 10.5, 6.5, 7],
    ['CONFIRMED', 12, 2, 0.25, 11, 12.5, 9.5, 10],
    ['CONFIRMED', 12, 3, 0.25, 10.5, 12.5, 8.5, 9],
    ['CONFIRMED', 14, 3, 0.25, 12.5, 14.5, 10.5, 11],
    ['CONFIRMED', 16, 4, 0.25, 14, 16.5, 11.5, 12],
    ['CONFIRMED', 18, 4, 0.25, 16, 18.5, 13.5, 14],
    ['CONFIRMED', 20, 4, 0.25, 18, 20.5, 15.5, 16],
    ['CONFIRMED', 22, 5, 0.25, 19.5, 22.5, 16.5, 17],
    ['CONFIRMED', 24, 5, 0.25, 21.5, 24.5, 18.5, 19],
    ['CONFIRMED', 28, 5, 0.25, 25.5, 28.5, 22.5, 23],
    ['CONFIRMED', 30, 6, 0.5, 27, 31, 23, 24],
    ['CONFIRMED', 32, 6, 0.5, 29, 33, 25, 26],
    ['CONFIRMED', 36, 6, 0.5, 33, 37, 29, 30],
    ['formula', 40, 7, 0.5, 36.5, 41, 32, 33],
  ])('%s Tr %d x %d', (_status, major, pitch, clearance, d2, d4, d3, d1) => {
    const sizes = trapezoidalSizes({ major, pitch });
    expect(trapezoidalClearance(pitch)).toBe(clearance);
    expect(sizes).toMatchObject({
      pitchDiameter: d2,
      nutMajor: d4,
      screwMinor: d3,
      nutMinor: d1,
      engagement: pitch / 2,
    });
    expect(sizes.crestFlat).toBeCloseTo(0.366025 * pitch, 5);
  });

  it('steps its clearance between the pitches of the standard', () => {
    expect([1, 1.75, 1.76, 5.5, 5.51, 13, 13.1].map(trapezoidalClearance)).toEqual([
      0.15, 0.15, 0.25, 0.25, 0.5, 0.5, 1,
    ]);
  });

  it('refuses sizes that are none', () => {
    expect(() => trapezoidalSizes({ major: 0, pitch: 2 })).toThrow(/major/);
    expect(() => trapezoidalSizes({ major: 8, pitch: Number.NaN })).toThrow(/pitch/);
  });
});

describe('acmeSizes', () => {
  // ASME B1.5, inches: [major, tpi, E, nut minor, screw minor, nut major (memory)]; formulas CONFIRMED on five threads
  it.each([
    [1 / 4, 16, 0.21875, 0.1875, 0.1775, 0.26],
    [5 / 16, 14, 0.2768, 0.2411, 0.2311, 0.3225],
    [3 / 8, 10, 0.325, 0.275, 0.255, 0.395],
    [1 / 2, 10, 0.45, 0.4, 0.38, 0.52],
    [5 / 8, 8, 0.5625, 0.5, 0.48, 0.645],
    [1, 5, 0.9, 0.8, 0.78, 1.02],
  ])('%d-%d', (inches, tpi, e, nutMinor, screwMinor, nutMajor) => {
    const sizes = acmeSizes({ major: inches * 25.4, pitch: 25.4 / tpi });
    const tolerance = 0.00005 * 25.4 + 1e-9;
    expect(Math.abs(sizes.pitchDiameter - e * 25.4)).toBeLessThan(tolerance);
    expect(Math.abs(sizes.nutMinor - nutMinor * 25.4)).toBeLessThan(tolerance);
    expect(Math.abs(sizes.screwMinor - screwMinor * 25.4)).toBeLessThan(tolerance);
    expect(Math.abs(sizes.nutMajor - nutMajor * 25.4)).toBeLessThan(tolerance);
    // P/2 and 0.3707·P
    expect(sizes.engagement).toBeCloseTo(12.7 / tpi, 5);
    expect(sizes.crestFlat).toBeCloseTo(9.41578 / tpi, 5);
  });

  it('takes 0.020 in from 10 threads an inch on', () => {
    expect(acmeClearance(25.4 / 10)).toBeCloseTo(0.508, 9);
    expect(acmeClearance(25.4 / 12)).toBeCloseTo(0.254, 9);
  });
});

describe('vSizes', () => {
  // ISO 724, CONFIRMED: [size, P, d2, D1, d3]
  it.each([
    [3, 0.5, 2.675, 2.459, 2.387],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: d3 of M4
    [4, 0.7, 3.545, 3.242, 3.141],
    [5, 0.8, 4.48, 4.134, 4.019],
    [6, 1, 5.35, 4.917, 4.773],
    [8, 1.25, 7.188, 6.647, 6.466],
    [10, 1.5, 9.026, 8.376, 8.16],
    [12, 1.75, 10.863, 10.106, 9.853],
  ])('M%d', (major, pitch, d2, d1, d3) => {
    const sizes = vSizes({ major, pitch });
    expect(sizes.pitchDiameter).toBeCloseTo(d2, 3);
    expect(sizes.nutMinor).toBeCloseTo(d1, 3);
    expect(sizes.screwMinor).toBeCloseTo(d3, 3);
    // H1 and the crest of the basic profile
    expect(sizes.engagement).toBeCloseTo(0.541266 * pitch, 5);
    expect(sizes.crestFlat).toBeCloseTo(0.125 * pitch, 5);
  });
});
