import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatRing } from '../../src/solid/flat-ring.js';
import { circleOutline, hexagonOutline, type Outline, polygonArea, rectangleOutline } from '../../src/solid/outline.js';

function areas(outer: Outline, inner: Outline): number[] {
  const corners = [...outer, ...inner];
  return flatRing(outer, inner)!.map((facet) => polygonArea(facet.map((corner) => corners[corner]!)));
}

/** Sides that one facet has on its left and no other on its right, with their corners in order. */
function rims(facets: readonly (readonly number[])[]): Set<string> {
  const open = new Set<string>();
  for (const facet of facets) {
    for (const [i, from] of facet.entries()) {
      const to = facet[(i + 1) % 3]!;
      if (!open.delete(`${to} ${from}`)) open.add(`${from} ${to}`);
    }
  }
  return open;
}

describe('flatRing', () => {
  it('covers what is between two loops once, with a facet a corner', () => {
    const round = fc.record({
      sides: fc.integer({ min: 3, max: 60 }),
      turn: fc.double({ min: 0, max: 360, noNaN: true }),
      x: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    });
    fc.assert(
      fc.property(round, round, (a, b) => {
        const outer = circleOutline({ radius: 6, sides: Math.max(24, a.sides), turn: a.turn, center: [a.x, 1] });
        const inner = circleOutline({ radius: 4, sides: b.sides, turn: b.turn, center: [b.x, 1] });
        const facets = flatRing(outer, inner)!;
        expect(facets).toHaveLength(outer.length + inner.length);
        const covered = areas(outer, inner);
        expect(Math.min(...covered)).toBeGreaterThan(0);
        expect(covered.reduce((sum, area) => sum + area, 0)).toBeCloseTo(polygonArea(outer) - polygonArea(inner), 9);
        const n = outer.length;
        expect(rims(facets)).toEqual(
          new Set([
            ...outer.map((_, i) => `${i} ${(i + 1) % n}`),
            ...inner.map((_, i) => `${n + ((i + 1) % inner.length)} ${n + i}`),
          ]),
        );
      }),
    );
  });

  it('goes round a square in a hexagon', () => {
    expect(areas(hexagonOutline({ acrossFlats: 10 }), rectangleOutline({ size: [2, 2] }))).toHaveLength(10);
  });

  it('gives nothing where a loop turns back, or the inner one hides behind its own corner', () => {
    const star: Outline = [
      [5, 0],
      [0.1, 0.2],
      [0.2, 0.1],
      [0, 5],
      [-5, -5],
    ];
    expect(flatRing(circleOutline({ radius: 9, sides: 12 }), star)).toBeUndefined();
    const far = rectangleOutline({ size: [1, 1], center: [50, 0] });
    expect(flatRing(rectangleOutline({ size: [4, 4] }), far)).toBeUndefined();
  });
});
