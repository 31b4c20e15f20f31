import { describe, expect, it } from 'vitest';
import { loopCrossings, type Way } from '../../../../src/solid/exact/lines/crossings.js';
import type { Loop } from '../../../../src/solid/exact/meant-outline.js';

const level = (y: number): Way => ({ from: [0, y], along: [1, 0] });
const sorted = (loop: Loop, way: Way) => loopCrossings(loop, way).sort((a, b) => a - b);

const CIRCLE: Loop = { kind: 'circle', center: [1, 0], radius: 5 };
/** The right half of a disc of 5 mm: an arc up and a side down. */
const half = (outwards: boolean): Loop => {
  const [low, high] = [
    [0, -5],
    [0, 5],
  ] as const;
  const arc = { kind: 'arc', center: [0, 0], radius: 5, outwards } as const;
  return {
    kind: 'pieces',
    pieces: outwards
      ? [
          { ...arc, from: low, to: high },
          { kind: 'line', from: high, to: low },
        ]
      : [
          { ...arc, from: high, to: low },
          { kind: 'line', from: low, to: high },
        ],
  };
};
const SQUARE: Loop = {
  kind: 'pieces',
  pieces: [
    { kind: 'line', from: [0, -1], to: [1, 0] },
    { kind: 'line', from: [1, 0], to: [0, 1] },
    { kind: 'line', from: [0, 1], to: [-1, 0] },
    { kind: 'line', from: [-1, 0], to: [0, -1] },
  ],
};

describe('where a line crosses an outline', () => {
  it('a circle of 5 three above its centre: four to either side', () => {
    expect(sorted(CIRCLE, level(3))).toEqual([-3, 5]);
    expect(sorted(CIRCLE, level(5))).toEqual([]);
    expect(sorted(CIRCLE, level(6))).toEqual([]);
  });

  it.each([true, false])('half a disc, whichever way its arc runs (outwards: %s)', (outwards) => {
    expect(sorted(half(outwards), level(3))).toEqual([0, 4]);
    expect(sorted(half(outwards), { from: [3, 0], along: [0, 1] })).toEqual([-4, 4]);
    expect(sorted(half(outwards), { from: [-1, 0], along: [0, 1] })).toEqual([]);
  });

  it('counts from its point, along its own direction', () => {
    const [found] = [sorted(SQUARE, { from: [-2, -2], along: [Math.SQRT1_2, Math.SQRT1_2] })];
    // the diagonal enters at (−½, −½) and leaves at (½, ½)
    expect(found).toHaveLength(2);
    expect(found[0]).toBeCloseTo(1.5 * Math.SQRT2, 12);
    expect(found[1]).toBeCloseTo(2.5 * Math.SQRT2, 12);
  });

  it('is inside and outside in turn through corners too', () => {
    expect(sorted(SQUARE, level(0))).toEqual([-1, 1]);
    expect(sorted(SQUARE, level(1)).length % 2).toBe(0);
  });
});
