import { describe, expect, it } from 'vitest';
import {
  type Float,
  type FloatSheet,
  floatBacklash,
  floatGrip,
  floatHardware,
  floatHead,
  floatIn,
  floatOf,
  floatWords,
} from '../../../src/parts/common/float.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';
import type { FastenerSize } from '../../../src/standards/fasteners/sizes.js';
import { exactly } from '../../../src/units/measured.js';

const of = (sheet: FloatSheet, more: { screw?: FastenerSize; thickness?: number; hole?: number } = {}) =>
  floatOf(sheet, { field: 'float', screw: 'M5', thickness: 5, ...more }, new Assumptions());
const triple = (least: number, likely: number, most: number) => ({
  least: expect.closeTo(least, 9),
  likely: expect.closeTo(likely, 9),
  most: expect.closeTo(most, 9),
});

describe('on what a nut floats', () => {
  it('is a sleeve of at least 0.75 mm of wall, in whole millimetres, where the holes let it through', () => {
    // M3: 3 + 1.5 = 4.5, so 5; M5: 6.5, so 7
    expect(of({}, { screw: 'M3' })).toMatchObject({ spacer: 'sleeve', pin: 5, sideways: 0.3, length: 5.05 });
    expect(of({})).toMatchObject({ spacer: 'sleeve', pin: 7 });
    expect(of({}, { hole: 7.1 })).toMatchObject({ spacer: 'sleeve' });
    // a sleeve of 7 mm in a hole of 7 mm has no float at all
    expect(of({}, { hole: 7 })).toMatchObject({ spacer: 'bare', pin: 5, length: 5.1 });
  });

  it('is refused as a sleeve of less than half a millimetre of wall around the fine hole of its screw, 5.3 mm', () => {
    expect(of({ sleeve: 6.3 }).pin).toBe(6.3);
    expect(() => of({ sleeve: 6.2 })).toThrow(/float\.sleeve: 6\.2 mm; must be at least 6\.3 mm/);
    // that of another spacer does not matter
    expect(of({ sleeve: 4, spacer: 'bare' }).pin).toBe(5);
  });

  // ISO 7379: threads of M5, M6, M8 under shoulders of 6, 8, 10 mm
  it.each([
    ['M5', 6, 10.2],
    ['M6', 8, 13.3],
    ['M8', 10, 16.3],
  ] as const)('is a shoulder of %s of %d mm under a head of %d mm', (screw, pin, head) => {
    const float = of({ spacer: 'shoulder' }, { screw });
    expect(float.pin).toBe(pin);
    expect(floatHead(float)).toBe(head);
  });

  it.each(['M3', 'M4'] as const)('is no shoulder of %s', (screw) => {
    expect(() => of({ spacer: 'shoulder' }, { screw })).toThrow(/M5, M6 or M8/);
  });
});

describe('play along the axis', () => {
  it('of a filed sleeve is off by what calipers read, 0.03 mm, and never below none', () => {
    expect(of({ spacer: 'sleeve', along: 0.05 }).along).toEqual(triple(0.02, 0.05, 0.08));
    expect(of({ spacer: 'sleeve', along: 0.02 }).along).toEqual(triple(0, 0.02, 0.04));
  });

  it('of a bare screw, set by hand, is off by half of it', () => {
    expect(of({ spacer: 'bare', along: 0.2 }).along).toEqual(triple(0.1, 0.2, 0.3));
  });

  it('of a shoulder grows by up to 0.25 mm, half of it likely: ISO 7379 has the length at +0.25', () => {
    expect(of({ spacer: 'shoulder', along: 0.05 }).along).toEqual(triple(0.05, 0.175, 0.3));
  });
});

describe('what a float costs', () => {
  const stop = { sideways: { least: 0.2, likely: 0.3, most: 0.4 }, radius: 13.5 };

  it('is its play, and lead · 2f/(2πR) by turning, each at its own bound', () => {
    const along = { least: 0.02, likely: 0.05, most: 0.08 };
    const turn = (float: number) => (2 * 2 * float) / (2 * Math.PI * 13.5);
    expect(floatBacklash(along, stop, 2)).toEqual(triple(0.02 + turn(0.2), 0.05 + turn(0.3), 0.08 + turn(0.4)));
    // holes that are too small leave no turning, and win nothing back
    const tight = { ...stop, sideways: exactly(-0.1) };
    expect(floatBacklash(along, tight, 2)).toEqual(triple(0.02, 0.05, 0.08));
  });

  it('is told as the angle f/R: 0.3/13.5 = 1.27°', () => {
    const { along } = of({ spacer: 'bare' });
    expect(floatWords({ along, spacer: 'bare' }, stop)).toBe(
      'the nut floats on screws that are not tightened: 0.3 mm sideways each way, 0.1 mm along, ±1.27° until its screws stop it',
    );
  });

  it('is half of the room in a hole: (5.6 − 5)/2 ± 0.1/2', () => {
    expect(floatIn({ least: 5.5, likely: 5.6, most: 5.7 }, 5)).toEqual(triple(0.25, 0.3, 0.35));
  });
});

describe('what is bought for a float', () => {
  const bought = (float: Float) => floatHardware(float, 4).map(({ size }) => size);
  const shoulder = (thickness: number) => of({ spacer: 'shoulder', along: 0.05 }, { thickness });

  it('is nothing for bare screws, and sleeves to length', () => {
    expect(bought(of({ spacer: 'bare' }))).toEqual([]);
    expect(bought(of({}))).toEqual(['7 x 5.3 x 5.05 mm']);
  });

  it('is the next usual shoulder, and shims for what it is longer', () => {
    // ISO 7379: 10, 12, 16, 20 mm and on
    expect(bought(shoulder(5))).toEqual(['6 x 10 mm, thread M5', '6 mm, 4.95 mm in all']);
    expect(bought(shoulder(9.95))).toEqual(['6 x 10 mm, thread M5']);
    expect(bought(shoulder(9.96))).toEqual(['6 x 12 mm, thread M5', '6 mm, 1.99 mm in all']);
    // a hundredth is shimmed, less than half of it is not
    expect(bought(shoulder(9.94))).toEqual(['6 x 10 mm, thread M5', '6 mm, 0.01 mm in all']);
    expect(bought(shoulder(9.946))).toEqual(['6 x 10 mm, thread M5']);
    expect(bought(shoulder(49.95))).toEqual(['6 x 50 mm, thread M5']);
    expect(bought(shoulder(60))).toEqual(['6 mm, thread M5, cut to suit']);
  });

  it('holds down by a washer under a head of a cap screw, and takes it: M5 10 mm across, 1 mm thick', () => {
    expect(floatHead(of({}))).toBe(10);
    expect(floatGrip(of({}))).toBeCloseTo(6.05, 9);
    expect(floatGrip(of({ spacer: 'bare' }))).toBeCloseTo(6.1, 9);
    expect(floatGrip(shoulder(5))).toBeCloseTo(5.05, 9);
  });
});
