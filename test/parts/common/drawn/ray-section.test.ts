import { describe, expect, it } from 'vitest';
import { alongRay, type Piece, raySection } from '../../../../src/parts/common/drawn/ray-section.js';
import { rectangleOutline } from '../../../../src/solid/outline.js';

const square = (size: number, center: readonly [number, number] = [0, 0]) =>
  rectangleOutline({ size: [size, size], center });

describe('alongRay', () => {
  it('starts at the axis where that lies inside', () => {
    expect(alongRay(square(4), 0)).toEqual([[0, 2]]);
    expect(alongRay(square(4), 45)[0]![1]).toBeCloseTo(2 * Math.SQRT2, 12);
  });

  it('meets what stands off the axis only in its direction', () => {
    expect(alongRay(square(2, [5, 0]), 0)).toEqual([[4, 6]]);
    expect(alongRay(square(2, [5, 0]), 180)).toEqual([]);
  });

  it('passes in and out of an outline with a notch', () => {
    const notched = [
      [-5, -5],
      [5, -5],
      [5, 5],
      [3, 5],
      [3, -2],
      [1, -2],
      [1, 5],
      [-5, 5],
    ] as const;
    expect(alongRay(notched, 0)).toEqual([
      [0, 1],
      [3, 5],
    ]);
  });
});

describe('raySection', () => {
  const plate: Piece = { adds: true, outline: square(20), from: 0, to: 4 };
  const area = (pieces: readonly Piece[]) =>
    raySection(pieces, 0).regions.reduce((sum, [a, b, c, d]) => {
      return sum + ((c![0] - a![0]) * (b![1] - a![1] + (c![1] - d![1]))) / 2;
    }, 0);

  it('leaves a plate less its bore and a blind pocket', () => {
    const bore: Piece = { adds: false, outline: square(4), from: 0, to: 4 };
    const pocket: Piece = { adds: false, outline: square(2, [6, 0]), from: 3, to: 4 };
    // 10 × 4 of plate, less 2 × 4 of bore and 2 × 1 of pocket
    expect(area([plate, bore, pocket])).toBeCloseTo(30, 9);
  });

  it('counts what overlaps once', () => {
    const bore: Piece = { adds: false, outline: square(4), from: 0, to: 4 };
    const sink: Piece = { adds: false, outline: square(8), from: 2, to: 4 };
    expect(area([plate, plate, bore, sink])).toBeCloseTo(40 - 8 - 4, 9);
  });

  it('follows walls that lean', () => {
    const cone: Piece = { adds: true, outline: (z) => square(20 - 2 * z), from: 0, to: 4 };
    // half widths of 10 and 6
    expect(area([cone])).toBeCloseTo(32, 4);
  });

  it('draws the edges of a pocket across it, and no line inside solid material', () => {
    const pocket: Piece = { adds: false, outline: square(2, [6, 0]), from: 3, to: 4 };
    const { lines } = raySection([plate, pocket], 0);
    const upright = lines.filter(([a, b]) => a[0] === b[0] && a[0] === 3);
    expect(upright.every(([a, b]) => a[1] >= 5 && b[1] <= 7)).toBe(true);
    expect(upright.length).toBeGreaterThan(0);
  });
});
