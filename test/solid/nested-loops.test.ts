import { describe, expect, it } from 'vitest';
import { nestedLoops } from '../../src/solid/nested-loops.js';
import { circleOutline, hexagonOutline, rectangleOutline } from '../../src/solid/outline.js';

const square = (side: number, center: readonly [number, number] = [0, 0]) =>
  rectangleOutline({ size: [side, side], center });

describe('nestedLoops', () => {
  it('names the smallest loop around each, in whatever order they come', () => {
    expect(nestedLoops([square(1), square(6), square(3), square(0.5, [2, 2])])).toEqual([2, -1, 1, 1]);
  });

  it('tells a ring around a place from one beside it, though their boxes overlap', () => {
    const bar = [
      [0, 0],
      [9, 0],
      [9, 9],
      [8, 9],
      [8, 1],
      [0, 1],
    ] as const;
    expect(nestedLoops([bar, square(2, [4, 5])])).toEqual([-1, -1]);
    const ring = circleOutline({ radius: 5, sides: 64 });
    expect(nestedLoops([ring, hexagonOutline({ acrossFlats: 8.4 })])).toEqual([-1, 0]);
  });

  it.each([
    ['cross', square(4), square(4, [1, 1])],
    [
      'cross though no corner lies in the other',
      rectangleOutline({ size: [6, 1] }),
      rectangleOutline({ size: [1, 6] }),
    ],
    ['share a corner', square(4), square(2, [3, 3])],
    ['share a side', square(4), square(2, [3, 0])],
    ['are the same', square(4), square(4)],
    ['come near within', square(4), square(2, [0.9995, 0])],
    ['come near from beside', square(4), square(2, [3.0005, 0])],
  ])('finds nothing where two %s', (_, one, other) => {
    expect(nestedLoops([one, other])).toBeUndefined();
    expect(nestedLoops([other, one])).toBeUndefined();
  });

  it('lets loops stand two micrometres apart', () => {
    expect(nestedLoops([square(4), square(2, [0.998, 0])])).toEqual([-1, 0]);
    expect(nestedLoops([square(4), square(2, [3.002, 0])])).toEqual([-1, -1]);
  });
});
