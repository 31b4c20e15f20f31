import { describe, expect, it } from 'vitest';
import { boundsText, figuresOf } from '../../src/output/figures.js';

const found = (value: number, limit: { min?: number; max?: number }, unit = 'mm', uncertainty = 0) =>
  figuresOf({ value, limit, unit, uncertainty });

describe('a value beside its limit', () => {
  it('has no more decimals than it needs', () => {
    expect(found(0.4851, { min: 0.15 }, 'mm', 0.1203)).toEqual({ value: '0.49 ± 0.12 mm', limit: { min: '0.15' } });
    expect(found(0.127, { min: 0 }, 'mm', 0.0891).value).toBe('0.13 ± 0.09 mm');
    expect(found(0.5, { min: 0 }, 'mm', 0.0012).value).toBe('0.5 ± 0.0012 mm');
    expect(found(0.1049, { max: 0.5 }, '°').value).toBe('0.1°');
    expect(found(15.0893, { max: 21.6589 }, 'MPa')).toEqual({ value: '15.1 MPa', limit: { max: '21.7' } });
  });

  it('is told apart from a limit that it misses, and from one that it keeps, by little', () => {
    expect(found(0.1496, { min: 0.15 }).value).toBe('0.1496 mm');
    expect(found(0.1504, { min: 0.15 }).value).toBe('0.1504 mm');
    expect(found(0.15, { min: 0.15 }).value).toBe('0.15 mm');
    expect(found(21.68, { max: 21.6589 }, 'MPa')).toEqual({ value: '21.68 MPa', limit: { max: '21.66' } });
  });

  it('has a ± whose ends lie on the side of the limit on which they are', () => {
    expect(found(0.2, { min: 0.1 }, 'mm', 0.1008).value).toBe('0.2 ± 0.101 mm');
    expect(found(0.2, { min: 0.1 }, 'mm', 0.0996).value).toBe('0.2 ± 0.1 mm');
    expect(found(0.4, { max: 0.5 }, 'mm', 0.10004).value).toBe('0.4 ± 0.10004 mm');
    expect(found(0.4, { max: 0.5 }, 'mm', 0.1).value).toBe('0.4 ± 0.1 mm');
  });

  it('is told by its two ends where it may be off to one side alone', () => {
    const warm = (least: number, most: number, max = 80) =>
      figuresOf({ value: 31.38, least, most, uncertainty: most - 31.38, unit: '°C', limit: { max } });
    expect(warm(31.38, 303.2)).toEqual({ value: '31.4 to 303.2 °C', limit: { max: '80' } });
    expect(warm(31.38, 80.02).value).toBe('31.38 to 80.02 °C');
    expect(warm(31.38, 31.39).value).toBe('31.4 °C');
    // as far to either side, or nearly
    expect(warm(30.38, 36.88).value).toBe('31.4 ± 5.5 °C');
    expect(warm(30.9, 36.88).value).toBe('30.9 to 36.9 °C');
  });

  it('keeps the limits of a list as they stand there, and rounds those that are worked out like their values', () => {
    expect(found(-0.03, { min: -0.15, max: 0.104 }, 'mm', 0.102)).toEqual({
      value: '-0.03 ± 0.1 mm',
      limit: { min: '-0.15', max: '0.1' },
    });
    expect(found(12.3, { max: 12.25 }, 'N').limit.max).toBe('12.25');
    expect(found(0.102, { max: 0.104 })).toEqual({ value: '0.102 mm', limit: { max: '0.104' } });
    expect(found(0.0125, { max: 0.002 })).toEqual({ value: '0.013 mm', limit: { max: '0.002' } });
  });

  it('may be without either', () => {
    expect(figuresOf({ value: null, limit: null, unit: 'mm', uncertainty: 0 })).toEqual({ value: '', limit: {} });
    expect(boundsText({})).toBe('');
    expect(boundsText({ min: '0.15' })).toBe('≥ 0.15');
  });
});
