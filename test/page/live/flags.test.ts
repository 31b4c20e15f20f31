import { describe, expect, it } from 'vitest';
import { frame } from '../../../page/live/state/flags.js';
import type { SizeMark, Stroke } from '../../../src/parts/part-views.js';

const STROKES: readonly Stroke[] = [
  {
    kind: 'path',
    line: 'outline',
    points: [
      [0, -10],
      [20, 10],
    ],
  },
  { kind: 'circle', line: 'thin', center: [10, 0], radius: 12 },
];
const size = (name: string, side: SizeMark['side'], from: [number, number], to: [number, number]): SizeMark => ({
  name,
  value: 1,
  side,
  from,
  to,
});
const SIZES = [
  size('long', 'above', [0, 10], [20, 10]),
  size('short', 'above', [0, 10], [5, 10]),
  size('wide', 'left', [0, -10], [0, 10]),
  size('hole', 'leader', [10, 0], [12, 0]),
];

describe('frame', () => {
  it.each([
    [1000, 440],
    [366, 440],
  ])('keeps the picture and every flag inside a box of %d × %d', (width, height) => {
    const { toBox, flags, scale } = frame({ strokes: STROKES, sizes: SIZES }, { width, height });
    expect(scale).toBeGreaterThan(0);
    // the circle reaches from −2 to 22 across and −12 to 12 along
    for (const [x, y] of [toBox([-2, -12]), toBox([22, 12]), ...flags.flatMap(({ line, at }) => [...line, at])]) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(height);
    }
  });

  it('keeps the shape: a millimetre is as long across as along, y upwards', () => {
    const { toBox, scale } = frame({ strokes: STROKES, sizes: SIZES }, { width: 800, height: 440 });
    const [a, b, c] = [toBox([0, 0]), toBox([3, 0]), toBox([0, 4])];
    expect(b[0] - a[0]).toBeCloseTo(3 * scale, 9);
    expect(a[1] - c[1]).toBeCloseTo(4 * scale, 9);
  });

  it('stacks the shorter size nearer to the part, and gives a leader no flag', () => {
    const { flags } = frame({ strokes: STROKES, sizes: SIZES }, { width: 800, height: 440 });
    const at = (name: string) => flags.find((flag) => flag.size.name === name)!.at;
    expect(flags.map((flag) => flag.size.name).sort()).toEqual(['long', 'short', 'wide']);
    expect(at('short')[1]).toBeGreaterThan(at('long')[1]);
  });
});
