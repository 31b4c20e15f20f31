import { describe, expect, it } from 'vitest';
import { type PrintSizes, TRUE_SIZES } from '../../../src/parts/common/print-sizes.js';
import { lessChords, wallInFile } from '../../../src/parts/common/wall-in-file.js';

const wall = { where: 'wall', size: 2 };
const size = (sizes: Partial<PrintSizes>, chord = 0.01) => wallInFile(wall, { ...TRUE_SIZES, ...sizes }, chord).size;

describe('a wall of 2 mm in the file', () => {
  it('loses three chords, of 0.01 mm each', () => {
    expect(lessChords(wall, 0.01)).toEqual({ where: 'wall', size: expect.closeTo(1.97, 12) });
    expect(wallInFile(wall, TRUE_SIZES, 0.01)).toEqual({ where: 'wall', size: expect.closeTo(1.97, 12) });
  });

  it('loses what openings are enlarged by, at either end of the diameters, and gains nothing from narrower ones', () => {
    // 0.1 + 0.002 · 100 = 0.3 mm; 0.4 − 0.002 · 1 = 0.398 mm
    expect(size({ inside: (d) => d + 0.1 + 0.002 * d })).toBeCloseTo(2 - 0.3 - 0.03, 9);
    expect(size({ inside: (d) => d + 0.4 - 0.002 * d })).toBeCloseTo(2 - 0.398 - 0.03, 9);
    expect(size({ inside: (d) => d - 0.1 })).toBeCloseTo(1.97, 9);
  });

  it('loses half of what outsides are made smaller by on the diameter, and gains nothing from larger ones', () => {
    expect(size({ outside: (d) => d - 0.1 })).toBeCloseTo(2 - 0.05 - 0.03, 9);
    expect(size({ outside: (d) => d + 0.1 })).toBeCloseTo(1.97, 9);
    expect(size({ inside: (d) => d + 0.2, outside: (d) => d - 0.1 })).toBeCloseTo(2 - 0.2 - 0.05 - 0.03, 9);
  });

  it('is scaled with the part, across and along, of which the lesser counts: what lies along has no chords', () => {
    const across = (d: number) => 1.1 * d;
    expect(size({ across, inside: across, outside: across, along: (d) => 1.2 * d })).toBeCloseTo(2.2 - 0.03, 9);
    expect(size({ across, inside: across, outside: across })).toBeCloseTo(2, 9);
  });
});
