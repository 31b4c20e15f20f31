import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Designation, parseDesignation } from '../../../src/standards/threads/designation.js';
import { ALL_SERIES } from '../../../src/standards/threads/series.js';
import { InputError } from '../../../src/units/faults.js';

describe('parseDesignation', () => {
  it.each([
    ['Tr8x2', 'Tr8x2'],
    ['Tr 8 x 2', 'Tr8x2'],
    ['Tr8×2', 'Tr8x2'],
    ['tr8X2', 'Tr8x2'],
    ['Tr8x8(P2)', 'Tr8x8(P2)'],
    ['Tr 8 x 8 (P 2)', 'Tr8x8(P2)'],
    ['Tr 40 x 14 P7', 'Tr40x14(P7)'],
    ['Tr 40x14P7', 'Tr40x14(P7)'],
    ['Tr 60 x 18 (P9) LH', 'Tr60x18(P9)-LH'],
    ['Tr10x2-LH', 'Tr10x2-LH'],
    ['Tr10x2 LH', 'Tr10x2-LH'],
    ['Tr40x7LH', 'Tr40x7-LH'],
    ['Tr8x1,5', 'Tr8x1.5'],
    ['Tr 40x7 - 7e', 'Tr40x7'],
    ['Acme 3/8-10', 'Acme 3/8-10'],
    ['ACME 3/8 - 10', 'Acme 3/8-10'],
    ['3/8-10 Acme', 'Acme 3/8-10'],
    ['Acme 1/2-10-2start', 'Acme 1/2-10-2start'],
    ['Acme 1/2-10 2 starts', 'Acme 1/2-10-2start'],
    ['Acme 3/8-10-LH', 'Acme 3/8-10-LH'],
    ['Acme 1-5', 'Acme 1-5'],
    ['Acme 1 1/4-5', 'Acme 1 1/4-5'],
    ['Acme 1-1/4-5', 'Acme 1 1/4-5'],
    ['Acme 0.5-10', 'Acme 1/2-10'],
    ['Acme 2-4-2G', 'Acme 2-4'],
    ['M8', 'M8'],
    ['m8', 'M8'],
    ['M8x1.25', 'M8'],
    ['M8x1', 'M8x1'],
    ['M8x1.25-LH', 'M8-LH'],
    ['M8x1-6g', 'M8x1'],
    ['M16xPh3P1.5', 'M16x3(P1.5)'],
    ['1/4-20 UNC', '1/4-20 UNC'],
    ['UNC 1/4-20', '1/4-20 UNC'],
    ['5/16-18', '5/16-18 UNC'],
    ['5/16-24', '5/16-24 UNF'],
    ['#10-24', '#10-24 UNC'],
    ['2-4.5', '2-4.5 UNC'],
    ['1/4-20 UNC-LH', '1/4-20 UNC-LH'],
    ['1/4-40', '1/4-40 UN'],
  ])('reads %s as %s', (text, expected) => {
    expect(parseDesignation(text).text).toBe(expected);
  });

  // ISO 2904 and formulas, reference rows by derivation: d2 7, d3 5.5
  it('gives the sizes of Tr8x8(P2)', () => {
    expect(parseDesignation('Tr8x8(P2)')).toEqual({
      text: 'Tr8x8(P2)',
      series: 'trapezoidal',
      form: 'trapezoidal',
      flankAngle: 15,
      major: 8,
      pitch: 2,
      lead: 8,
      starts: 4,
      hand: 'right',
      pitchDiameter: 7,
      minor: 5.5,
    });
  });

  // ASME B1.5 formulas: E 0.325 in, screw minor 0.255 in
  it('gives the sizes of Acme 3/8-10', () => {
    const acme = parseDesignation('Acme 3/8-10-2start-LH');
    expect(acme).toMatchObject({ form: 'acme', flankAngle: 14.5, major: 9.525, pitch: 2.54, lead: 5.08, hand: 'left' });
    expect(acme.pitchDiameter).toBeCloseTo(0.325 * 25.4, 9);
    expect(acme.minor).toBeCloseTo(0.255 * 25.4, 9);
  });

  // ISO 724: M8 d2 7.188, d3 6.466 (confirmed)
  it('gives the sizes of M8', () => {
    const m8 = parseDesignation('M8');
    expect(m8).toMatchObject({ form: 'metric-v', pitch: 1.25, lead: 1.25, starts: 1 });
    expect(m8.pitchDiameter).toBeCloseTo(7.188, 3);
    expect(m8.minor).toBeCloseTo(6.466, 3);
  });

  it.each([
    ['Tr 40x7 - 7e', '7e'],
    ['Tr40x7-LH-7H/7e', '7H/7e'],
    ['M8x1-6g', '6g'],
    ['M8-6H', '6H'],
    ['Acme 1/2-10-2g', '2G'],
    ['1/4-20 UNC-2A', '2A'],
  ])('keeps the class of %s', (text, tolerance) => {
    expect(parseDesignation(text).tolerance).toBe(tolerance);
  });

  it.each([
    ['', /Tr8x2/],
    ['Tr', /Tr8x2/],
    ['Tr8', /Tr8x2/],
    ['screw', /Tr8x2/],
    ['Tr8x7(P2)', /whole multiple/],
    ['Tr8x8(P0)', /whole multiple/],
    ['Tr8x8', /if 8 mm is the lead/],
    ['Tr8x4', /if 4 mm is the lead/],
    ['Tr8x0', /at least 0.2/],
    ['Tr80x2', /3 to 60 mm/],
    ['M2', /3 to 60 mm/],
    ['M9', /M3, M3.5, M4, M5/],
    ['M8x', /not understood/],
    ['M8-9Q', /"9Q" is not understood/],
    ['Tr8x2-LH-LH', /"LH" is not understood/],
    ['Tr8x2 7e 8e', /"8e" is not understood/],
    ['Acme 1/0-10', /3 to 60/],
    ['Acme 3/8-0', /1 to 100/],
    ['1/4-28 UNC', /must be 1\/4-28 UNF/],
    ['Acme 1/2-10-20start', /starts must be/],
    ['Tr8x2(P2', /not understood/],
  ])('refuses %s', (text, message) => {
    expect(() => parseDesignation(text)).toThrow(message);
    try {
      parseDesignation(text);
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect((error as InputError).faults[0]?.path).toBe('');
    }
  });

  it('throws nothing but input errors', () => {
    const piece = fc.constantFrom(
      'Tr',
      'M',
      'Acme ',
      'x',
      '8',
      '1/2',
      '-',
      '10',
      '(P2)',
      'LH',
      ' ',
      '.',
      '#',
      '7e',
      '0',
      '2start',
    );
    const text = fc.oneof(
      fc.string(),
      fc.string({ unit: 'binary' }),
      fc.array(piece).map((pieces) => pieces.join('')),
    );
    fc.assert(
      fc.property(text, (value) => {
        try {
          const read = parseDesignation(value);
          expect(Object.values(read).some((v) => Number.isNaN(v))).toBe(false);
          const again = parseDesignation(written(read));
          expect(again).toEqual(read);
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('reads back every screw of every series, left hand and class too', () => {
    for (const row of ALL_SERIES) {
      const read = parseDesignation(row.designation);
      expect(read.text).toBe(row.designation);
      expect(read.series).toBe(row.series);
      expect([read.major, read.pitch, read.starts]).toEqual([row.major, row.pitch, row.starts]);
      const left = parseDesignation(`${row.designation}-LH`);
      expect(left.hand).toBe('left');
      expect(parseDesignation(written(left))).toEqual(left);
    }
  });
});

/** As a designation is written with its class. */
function written({ text, tolerance }: Designation): string {
  return tolerance === undefined ? text : `${text} - ${tolerance}`;
}
