import { describe, expect, it } from 'vitest';
import { flatEnd } from '../../src/solid/flat-end.js';
import { circleOutline, polygonArea } from '../../src/solid/outline.js';

describe('a flat end', () => {
  it.each([3, 4, 5, 6, 7, 48, 75, 96, 97])('covers a ring of %d corners once, upwards', (sides) => {
    const outline = circleOutline({ radius: 5, sides });
    const facets = flatEnd(outline.map((_, i) => i));
    const areas = facets.map((facet) => polygonArea(facet.map((corner) => outline[corner]!)));
    // n − 2 facets that all turn the same way and make up the area can neither overlap nor leave anything out
    expect(facets).toHaveLength(sides - 2);
    expect(Math.min(...areas)).toBeGreaterThan(0);
    expect(areas.reduce((sum, area) => sum + area, 0)).toBeCloseTo(polygonArea(outline), 9);
  });

  it('holds each side of the ring once, and each other edge twice, to and fro', () => {
    const sides = 23;
    const facets = flatEnd(Array.from({ length: sides }, (_, i) => i));
    const edges = facets.flatMap(([a, b, c]) => [`${a} ${b}`, `${b} ${c}`, `${c} ${a}`]);
    const alone = edges.filter((edge) => !edges.includes(edge.split(' ').reverse().join(' ')));
    expect(new Set(edges).size).toBe(edges.length);
    expect(alone.sort()).toEqual(Array.from({ length: sides }, (_, i) => `${i} ${(i + 1) % sides}`).sort());
  });

  it('leaves large facets in the middle: a bore of two thirds of the radius meets four', () => {
    const outline = circleOutline({ radius: 3, sides: 96 });
    const met = flatEnd(outline.map((_, i) => i)).filter((facet) =>
      facet.some((corner, k) => {
        const [[ax, ay], [bx, by]] = [outline[corner]!, outline[facet[(k + 1) % 3]!]!];
        return Math.hypot((ax + bx) / 2, (ay + by) / 2) < 2;
      }),
    );
    expect(met.length).toBeLessThanOrEqual(4);
  });
});
