import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clipped, common, insideBy, rimAround } from '../../src/solid/convex.js';
import { loftConvex, loftVolume, movedSides } from '../../src/solid/convex-loft.js';
import { measureMesh } from '../../src/solid/measure.js';
import { circleOutline, hexagonOutline, type Outline, polygonArea, rectangleOutline } from '../../src/solid/outline.js';

const square = rectangleOutline({ size: [10, 10] });

describe('convex outlines', () => {
  it('clip by a half-plane', () => {
    // 10 × 10 square, the part right of x = 3 taken off: 8 × 10
    expect(polygonArea(clipped(square, [1, 0, 3]))).toBeCloseTo(80, 12);
    expect(clipped(square, [1, 0, -6])).toEqual([]);
  });

  it('share what both cover', () => {
    // hand: squares of 10 and 4 about centres 6 apart along x share 1 × 4
    const other = rectangleOutline({ size: [4, 4], center: [6, 0] });
    expect(polygonArea(common(square, other))).toBeCloseTo(4, 12);
  });

  it('measure distances to sides', () => {
    expect(insideBy(square, [3, 0])).toBeCloseTo(2, 12);
    expect(insideBy(square, [8, 0])).toBeCloseTo(-3, 12);
    expect(rimAround(rectangleOutline({ size: [4, 6] }), square)).toBeCloseTo(2, 12);
  });
});

describe('moved sides', () => {
  it('grow and shrink a square by its half-width', () => {
    expect(polygonArea(movedSides(square, 1))).toBeCloseTo(144, 12);
    expect(polygonArea(movedSides(square, -1))).toBeCloseTo(64, 12);
  });

  it('let a short side vanish and keep the others in place', () => {
    // a 10 square with a corner cut by a side of length √2·1: moved in by 4 that side is gone, a 2 square is left
    const cut: Outline = clipped(square, [Math.SQRT1_2, Math.SQRT1_2, (5 + 4) * Math.SQRT1_2]);
    expect(cut.length).toBe(5);
    const inner = movedSides(cut, -4);
    expect(inner.length).toBe(5);
    expect(polygonArea(inner)).toBeCloseTo(4, 9);
  });

  it('refuse to move in past the middle', () => {
    expect(() => movedSides(square, -5.1)).toThrow('leaves nothing');
  });
});

describe('a loft', () => {
  it('has the volume of a chamfered cube', () => {
    // hand: 10 × 10 × 8 plus a frustum of height 1 from 10² to 8²: (100 + 64 + 80)/3
    const levels = [
      [0, -1],
      [1, 0],
      [9, 0],
    ] as const;
    expect(loftVolume(square, levels)).toBeCloseTo(800 + 244 / 3, 9);
    const measured = measureMesh(loftConvex(square, levels));
    expect(measured).toMatchObject({ openEdges: 0, repeatedVertexFacets: 0, shells: 1 });
    expect(measured.volume).toBeCloseTo(800 + 244 / 3, 3);
  });

  it('is closed and weighs what the sections say for round, hexagonal and flattened outlines', () => {
    const outlines = fc.oneof(
      fc.integer({ min: 3, max: 30 }).map((n) => circleOutline({ radius: 8, sides: 4 * n })),
      fc.constant(hexagonOutline({ acrossFlats: 14 })),
      fc
        .double({ min: 5, max: 15, noNaN: true })
        .map((flat) => clipped(clipped(circleOutline({ radius: 8, sides: 96 }), [0, 1, flat / 2]), [0, -1, flat / 2])),
    );
    fc.assert(
      fc.property(
        outlines,
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        (outline, inset, height) => {
          const levels = [
            [0, -inset],
            [inset, 0],
            [inset + height, 0],
            [inset + height + 1, 0.5],
          ] as const;
          const measured = measureMesh(loftConvex(outline, levels));
          expect(measured.openEdges).toBe(0);
          expect(measured.shells).toBe(1);
          expect(measured.volume / loftVolume(outline, levels)).toBeCloseTo(1, 5);
        },
      ),
      { numRuns: 60 },
    );
  });
});
