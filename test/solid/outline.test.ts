import { describe, expect, it } from 'vitest';
import { earsOutline, hullOutline } from '../../src/solid/hull-outline.js';
import {
  circleOutline,
  hexagonOutline,
  type Outline,
  polygonArea,
  rectangleOutline,
  sidesFor,
} from '../../src/solid/outline.js';
import { textOutlines } from '../../src/solid/text-outlines.js';
import { InputError } from '../../src/units/faults.js';

function bounds(outline: Outline): number[] {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

describe('sidesFor', () => {
  it('rounds the sagitta formula up to a multiple of 4, at least 12', () => {
    // r = 4: π / acos(1 − 0.0025) = π / 0.070725 = 44.42 → 48; r = 8: π / 0.0500052 = 62.8 → 64
    expect(sidesFor(4, 0.01)).toBe(48);
    expect(sidesFor(8, 0.01)).toBe(64);
    expect(sidesFor(0.005, 0.01)).toBe(12);
    expect(sidesFor(0.5, 0.05)).toBe(12);
  });

  it('keeps the chord error', () => {
    for (const radius of [0.7, 1.75, 4, 11, 30, 100]) {
      for (const error of [0.002, 0.01, 0.05]) {
        expect(radius * (1 - Math.cos(Math.PI / sidesFor(radius, error)))).toBeLessThanOrEqual(error);
      }
    }
  });
});

describe('circleOutline', () => {
  it('puts corners on the circle, or flats when circumscribed', () => {
    const inside = circleOutline({ radius: 5, sides: 48 });
    const around = circleOutline({ radius: 5, sides: 48, circumscribed: true });
    // regular polygon: n/2·R²·sin(2π/n) inscribed, n·r²·tan(π/n) circumscribed
    expect(polygonArea(inside)).toBeCloseTo(24 * 25 * Math.sin(Math.PI / 24), 10);
    expect(polygonArea(around)).toBeCloseTo(48 * 25 * Math.tan(Math.PI / 48), 10);
    expect(bounds(inside)).toEqual([-5, -5, 5, 5]);
    expect(Math.hypot((around[0]![0] + around[1]![0]) / 2, (around[0]![1] + around[1]![1]) / 2)).toBeCloseTo(5, 12);
  });

  it('turns and shifts', () => {
    expect(circleOutline({ radius: 2, sides: 4, turn: 90, center: [10, 1] })).toEqual([
      [10, 3],
      [8, 1],
      [10, -1],
      [12, 1],
    ]);
  });

  it('refuses a radius of 0 and two sides', () => {
    expect(() => circleOutline({ radius: 0, sides: 12 })).toThrow(InputError);
    expect(() => circleOutline({ radius: 1, sides: 2 })).toThrow(InputError);
  });
});

describe('rectangleOutline', () => {
  it('is sharp without a radius', () => {
    expect(rectangleOutline({ size: [4, 2] })).toEqual([
      [2, 1],
      [-2, 1],
      [-2, -1],
      [2, -1],
    ]);
  });

  it('rounds its corners and keeps its size', () => {
    const rounded = rectangleOutline({ size: [20, 10], radius: 3, sides: 64, center: [1, 2] });
    expect(bounds(rounded)).toEqual([-9, -3, 11, 7]);
    // area: 200 − (4 − polygon's π)·9; the corner polygon of 64 sides has n/2·sin(2π/n) = 3.13655 for π
    expect(polygonArea(rounded)).toBeCloseTo(200 - (4 - 32 * Math.sin(Math.PI / 32)) * 9, 9);
  });

  it('becomes a stadium at the greatest radius, no point twice', () => {
    const stadium = rectangleOutline({ size: [20, 10], radius: 5 });
    expect(new Set(stadium.map(String)).size).toBe(stadium.length);
    const disc = rectangleOutline({ size: [10, 10], radius: 5 });
    expect(new Set(disc.map(String)).size).toBe(disc.length);
    expect(disc.length).toBe(48);
  });
});

describe('hexagonOutline', () => {
  it('measures its size across flats', () => {
    const [left, bottom, right, top] = bounds(hexagonOutline({ acrossFlats: 13 })) as [number, number, number, number];
    expect(top - bottom).toBeCloseTo(13, 12);
    // across corners = 2/√3 · flats
    expect(right - left).toBeCloseTo(15.0111, 4);
  });
});

describe('hulls and offsets', () => {
  it('wraps two ears around a middle', () => {
    const ears = earsOutline({ radius: 8, earRadius: 4, spacing: 24, sides: 64 });
    expect(polygonArea(ears)).toBeGreaterThan(0);
    for (const [i, value] of [-16, -8, 16, 8].entries()) expect(bounds(ears)[i]).toBeCloseTo(value, 12);
    const turned = earsOutline({ radius: 8, earRadius: 4, spacing: 24, sides: 64, turn: 90 });
    for (const [i, value] of [-8, -16, 8, 16].entries()) expect(bounds(turned)[i]).toBeCloseTo(value, 12);
  });

  it('drops inner points', () => {
    expect(
      hullOutline([
        [
          [0, 0],
          [4, 0],
          [2, 1],
          [2, 3],
        ],
      ]),
    ).toEqual([
      [0, 0],
      [4, 0],
      [2, 3],
    ]);
  });

  it('turns at every corner, where tangents of several circles lie on one line too', () => {
    // six equal circles, three of them on each side of a triangle of 120° steps
    const at = [90, 210, 330].flatMap((angle) =>
      [7.5, 15].map(
        (reach) => [reach * Math.cos((angle * Math.PI) / 180), reach * Math.sin((angle * Math.PI) / 180)] as const,
      ),
    );
    const hull = hullOutline(at.map((center) => circleOutline({ radius: 6.34, sides: 72, center })));
    for (let i = 0; i < hull.length; i++) {
      const [a, b, c] = [hull[i]!, hull[(i + 1) % hull.length]!, hull[(i + 2) % hull.length]!];
      expect((b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0])).toBeGreaterThan(0);
    }
  });
});

describe('hullOutline', () => {
  it('runs round all points, through some of them, and turns the same way at every corner', () => {
    let seed = 5;
    const next = () => {
      seed = (seed * 16807) % 2147483647;
      return 20 * (seed / 2147483647) - 10;
    };
    for (let round = 0; round < 40; round++) {
      const points = Array.from({ length: 3 + 4 * round }, (): [number, number] => [next(), next()]);
      const hull = hullOutline([points]);
      for (const [i, [x, y]] of hull.entries()) {
        const [u, v] = hull[(i + 1) % hull.length]!;
        expect(points.some((point) => point[0] === x && point[1] === y)).toBe(true);
        for (const [p, q] of points) expect((u - x) * (q - y) - (v - y) * (p - x)).toBeGreaterThan(-1e-9);
      }
    }
  });
});

describe('textOutlines', () => {
  it('gives counter-clockwise strokes within the stated height, centred', () => {
    const outlines = textOutlines({ text: 'TR 8-2', height: 4, stroke: 0.8 });
    for (const outline of outlines) expect(polygonArea(outline)).toBeGreaterThan(0.5);
    const [left, bottom, right, top] = bounds(outlines.flat()) as [number, number, number, number];
    expect(top - bottom).toBeCloseTo(4, 6);
    expect(top + bottom).toBeCloseTo(0, 6);
    expect(left + right).toBeCloseTo(0, 6);
  });

  it('is empty for spaces and refuses what it cannot write', () => {
    expect(textOutlines({ text: '  ', height: 4, stroke: 0.8 })).toEqual([]);
    expect(() => textOutlines({ text: 'ø', height: 4, stroke: 0.8 })).toThrow(InputError);
  });
});
