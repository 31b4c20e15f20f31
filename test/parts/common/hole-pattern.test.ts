import { describe, expect, it } from 'vitest';
import { ownPattern } from '../../../src/parts/common/hole-pattern.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';

const centresOf = (sheet: Parameters<typeof ownPattern>[0]) =>
  ownPattern(sheet, 'holes', new Assumptions()).centres.map((at) => at.map((one) => Number(one.toFixed(3)) + 0));
const length = (value: number) => ({ value });

describe('where holes stand', () => {
  // bolt circle of frame 23, 2.625 in = 66.675 mm: 33.3375 · cos 45°
  it('on the circle of a motor frame, from 45° on', () => {
    expect(centresOf({ count: 4, circle: length(66.675), start: 45, screw: 'M5' })).toEqual([
      [23.573, 23.573],
      [-23.573, 23.573],
      [-23.573, -23.573],
      [23.573, -23.573],
    ]);
  });

  it('three on a circle of 16 mm from 90° on', () => {
    expect(centresOf({ count: 3, circle: length(16), start: 90, screw: 'M3' })).toEqual([
      [0, 8],
      [-6.928, -4],
      [6.928, -4],
    ]);
  });

  it('on a square of 31 mm: a circle of 31·√2 = 43.841 mm, turned by 45° on its axes', () => {
    const { spacing, centres } = ownPattern(
      { rectangle: [31, 31], start: 45, screw: 'M3' },
      'holes',
      new Assumptions(),
    );
    expect(spacing.likely).toBeCloseTo(43.841, 3);
    expect(Math.hypot(...centres[0]!)).toBeCloseTo(21.92, 2);
    expect(centres[0]![0]).toBeCloseTo(0, 9);
  });
});
