import { describe, expect, it, test } from 'vitest';
import { roofedOutline } from '../../src/parts/common/side-hole.js';
import { clipped } from '../../src/solid/convex.js';
import { earsOutline } from '../../src/solid/hull-outline.js';
import {
  circleOutline,
  hexagonOutline,
  mirroredOutline,
  type Outline,
  rectangleOutline,
  turnedOutline,
} from '../../src/solid/outline.js';

/** The sides of an outline that say they stand for an arc touch it, or have both corners on it. */
function holdsItsArcs(outline: Outline): void {
  outline.curves?.forEach((curve, i) => {
    if (curve?.kind !== 'arc') return;
    const { center, radius, circumscribed } = curve;
    const ends = [outline[i]!, outline[(i + 1) % outline.length]!].map(([x, y]) => [x - center[0], y - center[1]]);
    const [[ax, ay], [bx, by]] = ends as [[number, number], [number, number]];
    const off = Math.abs(ax * by - ay * bx) / Math.hypot(bx - ax, by - ay);
    if (circumscribed) expect(off).toBeCloseTo(radius, 6);
    else for (const end of ends) expect(Math.hypot(...end)).toBeCloseTo(radius, 6);
  });
}

function roundSides({ curves = [] }: Outline): number {
  return curves.filter((curve) => curve !== undefined && curve.kind !== 'tangent').length;
}

describe('outlines carry their arcs', () => {
  const ring = circleOutline({ radius: 5, sides: 48, circumscribed: true, center: [1, 2] });

  test.each<readonly [string, Outline, number]>([
    ['a circle', ring, 48],
    ['a hexagon', hexagonOutline({ acrossFlats: 5 }), 0],
    ['a rectangle with rounded corners', rectangleOutline({ size: [8, 6], radius: 1, sides: 48 }), 48],
    ['one as round as it is wide', rectangleOutline({ size: [8, 4], radius: 2, sides: 48 }), 48],
    ['a sharp rectangle', rectangleOutline({ size: [8, 6] }), 0],
    ['a circle with a flat', clipped(ring, [1, 0, 3]), 31],
    ['a circle turned and shifted', turnedOutline(ring, 30, [4, 4]), 48],
    ['a circle with a flat, mirrored', mirroredOutline(clipped(ring, [1, 0, 3]), ([x, y]) => [-x, y]), 31],
    ['two ears', earsOutline({ radius: 8, earRadius: 4, spacing: 24, sides: 48 }), 48],
  ])('%s', (_, outline, round) => {
    holdsItsArcs(outline);
    expect(roundSides(outline)).toBeGreaterThanOrEqual(Math.max(0, round - 4));
    expect(roundSides(outline)).toBeLessThanOrEqual(round === 0 ? 0 : round + 2);
  });

  it('a lying hole', () => {
    const outline = roofedOutline(2);
    holdsItsArcs(outline);
    // tangents every 15° from 150° below the circle to 30°: 240/15 + 1; both at 45° and 135° run on to the flat roof
    const kinds = outline.curves?.map((curve) => curve?.kind);
    expect(kinds?.filter((kind) => kind === 'arc')).toHaveLength(17);
    expect(kinds?.filter((kind) => kind === 'free')).toHaveLength(3);
    expect(outline).toHaveLength(20);
  });
});
