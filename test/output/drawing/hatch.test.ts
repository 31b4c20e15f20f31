import { expect, it } from 'vitest';
import { hatchInk } from '../../../src/output/drawing/hatch.js';
import type { Point } from '../../../src/parts/part-views.js';

const square = (low: number, high: number): Point[] => [
  [low, low],
  [high, low],
  [high, high],
  [low, high],
];
const lengthOf = (ink: ReturnType<typeof hatchInk>) =>
  ink.reduce((sum, one) => {
    const [a, b] =
      one.kind === 'line'
        ? (one.points as [Point, Point])
        : ([
            [0, 0],
            [0, 0],
          ] as [Point, Point]);
    return sum + Math.hypot(a[0] - b[0], a[1] - b[1]);
  }, 0);

it('hatches a region evenly at 45°, holes left out', () => {
  // lines of a region as far apart as d are together as long as its area over d
  const plain = hatchInk([square(0, 20)], 1);
  expect(lengthOf(plain)).toBeCloseTo(400 / 2, -1);
  const holed = hatchInk([square(0, 20), square(5, 15).reverse()], 1);
  expect(lengthOf(holed) / (300 / 1.732)).toBeCloseTo(1, 1);
  for (const one of plain) {
    const [a, b] = (one.kind === 'line' ? one.points : []) as [Point, Point];
    // up to the right: y runs downwards
    expect((b[1] - a[1]) / (b[0] - a[0])).toBeCloseTo(-1, 9);
  }
});

it('turns the other way for a second body, and is never closer than 1.5 mm', () => {
  const small = hatchInk([square(0, 4)], -1);
  expect(small.length).toBeLessThanOrEqual(Math.ceil((4 * Math.SQRT2) / 1.5));
  for (const one of small) {
    const [a, b] = (one.kind === 'line' ? one.points : []) as [Point, Point];
    expect((b[1] - a[1]) / (b[0] - a[0])).toBeCloseTo(1, 9);
  }
});
