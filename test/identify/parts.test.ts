import { describe, expect, it } from 'vitest';
import { candidates } from '../../src/identify/candidates.js';
import { HOW_TO_MEASURE } from '../../src/identify/guide.js';
import { plateauDensity, sigmasOutside } from '../../src/identify/likelihood.js';
import { nearestSeries } from '../../src/identify/nearest-series.js';
import { exactly, plusMinus } from '../../src/units/measured.js';

describe('plateauDensity', () => {
  // Hand: level 1/(0.18 + 0.015·2.50663) = 1/0.2176 = 4.5956 inside; one σ outside times exp(−1/2)
  it('is level inside and normal outside', () => {
    const band = { nominal: 8, least: 7.82, most: 8 };
    expect(plateauDensity(7.82, 0.015, band)).toBeCloseTo(4.5956, 4);
    expect(plateauDensity(8, 0.015, band)).toBeCloseTo(4.5956, 4);
    expect(plateauDensity(8.015, 0.015, band)).toBeCloseTo(4.5956 * Math.exp(-0.5), 4);
    expect(sigmasOutside(7.79, 0.015, band)).toBeCloseTo(-2, 9);
  });

  it('integrates to one', () => {
    const band = { nominal: 2, least: 1.9, most: 2 };
    let area = 0;
    for (let x = 1; x < 3; x += 1e-4) area += plateauDensity(x, 0.03, band) * 1e-4;
    expect(area).toBeCloseTo(1, 4);
  });
});

describe('candidates()', () => {
  it('have ordered, finite bands', () => {
    for (const one of candidates()) {
      for (const band of [one.major, one.pitchDiameter, one.minor, one.crestFlat, one.pitch, one.leadBand]) {
        expect(band.least).toBeLessThan(band.most);
        expect(Number.isFinite(band.least + band.most + band.nominal)).toBe(true);
      }
      // made under size, never over
      expect(one.major.most).toBeLessThanOrEqual(one.row.major + 1e-9);
    }
  });
});

describe('nearestSeries', () => {
  it('gives the two nearest rows', () => {
    const [first, second] = nearestSeries({
      form: 'trapezoidal',
      major: plusMinus(7.95, 0.02),
      pitch: plusMinus(2.005, 0.005),
    });
    expect(first.row.designation).toBe('Tr8x2');
    expect(first.majorResidual).toBeCloseTo(-0.05, 9);
    expect(first.pitchResidual).toBeCloseTo(0.005, 9);
    // pitch 0.003 beyond the 0.1 % band, σ 0.0025
    expect(first.sigma).toBeCloseTo(1.2, 6);
    expect(second.sigma).toBeGreaterThan(3);
  });

  it('names two rows that both fit', () => {
    const [first, second] = nearestSeries({
      form: 'metric-v',
      major: plusMinus(4.82, 0.05),
      pitch: plusMinus(0.8, 0.02),
    });
    expect([first.row.designation, second.row.designation].sort()).toEqual(['#10-32 UNF', 'M5']);
    expect(second.sigma).toBeLessThan(2);
  });

  it('works on exact sizes', () => {
    const [first] = nearestSeries({ form: 'acme', major: exactly(9.525), pitch: exactly(2.54) });
    expect(first).toMatchObject({ row: { designation: 'Acme 3/8-10' }, sigma: 0 });
  });
});

describe('HOW_TO_MEASURE', () => {
  it('fits 80 columns and one screen or two', () => {
    const lines = HOW_TO_MEASURE.split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(lines.length).toBeLessThan(80);
    for (const option of [
      '--major',
      '--crests',
      '--travel',
      '--starts',
      '--minor',
      '--wires',
      '--hand',
      '--uncertainty',
    ]) {
      expect(HOW_TO_MEASURE).toContain(option);
    }
  });
});
