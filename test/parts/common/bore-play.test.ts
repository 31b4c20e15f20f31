import { describe, expect, it } from 'vitest';
import { borePlay } from '../../../src/parts/common/bore-play.js';
import type { Material } from '../../../src/presets/material.js';
import type { Compensator, Printer } from '../../../src/presets/printer.js';
import { exactly, type Measured } from '../../../src/units/measured.js';

const SHRINK = { plane: { least: 0.004, likely: 0.006, most: 0.008 } };
const play = (diameter: Measured, holes: Compensator = 'file', shrink: Compensator = 'file') =>
  borePlay(
    { clearance: 0.05, shaft: { form: 'round', diameter }, bore: { form: 'round', diameter: 10 } },
    {
      material: { shrink: SHRINK } as Material,
      printer: {
        holeOffset: { at_zero: 0.1, per_mm: 0.005 },
        holeSpread: 0.04,
        compensation: { shrink, holes },
      } as Printer,
    },
  );
const triple = (least: number, likely: number, most: number) => ({
  least: expect.closeTo(least, 9),
  likely: expect.closeTo(likely, 9),
  most: expect.closeTo(most, 9),
});

describe('how a bore of 10 mm comes out, by hand', () => {
  // spread of the printer 0.04, of the shrink 0.002 · 10 = 0.02
  it('is its clearance, off by spread, shrink and the worse side of the reading', () => {
    expect(play(exactly(9.95))).toEqual(triple(0.05 - 0.06, 0.05, 0.05 + 0.06));
    expect(play({ least: 9.92, likely: 9.95, most: 9.96 })).toEqual(triple(0.05 - 0.09, 0.05, 0.05 + 0.09));
    expect(play({ least: 9.94, likely: 9.95, most: 9.98 })).toEqual(triple(0.05 - 0.09, 0.05, 0.05 + 0.09));
  });

  it('is narrower by all of what nobody compensates: 0.1 + 0.005 · 10 = 0.15 of the holes, 0.06 of the shrink', () => {
    expect(play(exactly(9.95), 'none')).toEqual(triple(-0.1 - 0.06, -0.1, -0.1 + 0.06));
    expect(play(exactly(9.95), 'slicer', 'none')).toEqual(triple(-0.01 - 0.06, -0.01, -0.01 + 0.06));
  });
});
