import { describe, expect, it } from 'vitest';
import { axialSection } from '../../src/solid/axial-section.js';
import { facesBehind } from '../../src/solid/faces-behind.js';
import { polygonArea, rectangleOutline } from '../../src/solid/outline.js';
import { cylinder, type Shape } from '../../src/solid/recipe.js';
import type { Region } from '../../src/solid/regions.js';
import { rimsBehind } from '../../src/solid/rims-behind.js';

const areaOf = (region: Region) => region.reduce((sum, loop) => sum + polygonArea(loop), 0);
const disc = (radius: number, from: number, to: number): Shape =>
  cylinder({ radius, sides: 96, circumscribed: false, from, to });
const less = (...of: Shape[]): Shape => ({ kind: 'difference', of });
const block = (size: readonly [number, number], from: number, to: number): Shape => ({
  kind: 'prism',
  outlines: [rectangleOutline({ size })],
  from,
  to,
});

describe('the section of a recipe without the kernel', () => {
  it('of a ring is two rectangles, +Z to the left', () => {
    const ring = axialSection(less(disc(10, 0, 5), disc(4, -1, 6)), [0, 180]);
    expect(areaOf(ring)).toBeCloseTo(2 * 6 * 5, 6);
    expect(Math.min(...ring.flat().map(([x]) => x))).toBeCloseTo(-5, 6);
    expect(Math.max(...ring.flat().map(([x]) => x))).toBeCloseTo(0, 6);
  });

  it('cuts prisms along, across and askew', () => {
    const bar = block([6, 4], 0, 10);
    expect(areaOf(axialSection(bar, [0, 180]))).toBeCloseTo(60, 6);
    expect(areaOf(axialSection(bar, [90, 270]))).toBeCloseTo(40, 6);
    // lying along +X from the axis: a strip as wide as the bar, or its end face
    const lying: Shape = { kind: 'moved', tilt: 90, shape: bar };
    expect(areaOf(axialSection(lying, [0, 180]))).toBeCloseTo(60, 6);
    expect(areaOf(axialSection(lying, [90, 270]))).toBeCloseTo(24, 6);
    // leaned by 30° about +Y, the plane x = 0 passes through it askew: 4 wide, as high as it is wide over sin 30°
    const leaned: Shape = { kind: 'moved', tilt: 30, by: [0, 0, 0], shape: block([6, 4], -20, 20) };
    expect(areaOf(axialSection(leaned, [90, 270]))).toBeCloseTo((4 * 6) / 0.5, 3);
    // a plane through its corners counts once
    expect(areaOf(axialSection(block([4, 4], 0, 3), [45, 225]))).toBeCloseTo(3 * 4 * Math.SQRT2, 3);
  });

  it('keeps holes of an outline', () => {
    const frame: Shape = {
      kind: 'prism',
      outlines: [rectangleOutline({ size: [10, 10] }), rectangleOutline({ size: [4, 4] })],
      from: 0,
      to: 2,
    };
    expect(areaOf(axialSection(frame, [0, 180]))).toBeCloseTo(12, 6);
    const lying: Shape = { kind: 'moved', tilt: 90, by: [-1, 0, 0], shape: frame };
    expect(areaOf(axialSection(lying, [90, 270]))).toBeCloseTo(84, 6);
  });

  it('turns two half-planes into one', () => {
    const arm: Shape = { kind: 'moved', by: [6, 0, 0], shape: block([4, 4], 0, 5) };
    const both: Shape = { kind: 'union', of: [disc(5, 0, 5), arm, { kind: 'moved', turn: 120, shape: arm }] };
    // both arms reach 8 mm from the axis
    expect(areaOf(axialSection(both, [0, 120]))).toBeCloseTo(2 * 8 * 5, 3);
    expect(areaOf(axialSection(both, [0, 180]))).toBeCloseTo((8 + 5) * 5, 3);
  });

  it('takes what intersections and raised strokes have in common', () => {
    const strokes: Shape = {
      kind: 'strokes',
      outlines: [rectangleOutline({ size: [6, 2] }), rectangleOutline({ size: [2, 6] })],
      from: 0,
      to: 3,
    };
    expect(areaOf(axialSection(strokes, [0, 180]))).toBeCloseTo(18, 6);
    expect(areaOf(axialSection({ kind: 'intersection', of: [strokes, disc(2, 1, 9)] }, [0, 180]))).toBeCloseTo(8, 6);
  });
});

describe('rims behind a section', () => {
  const bored: Shape = less(disc(10, 0, 8), disc(4, -1, 9), disc(6, 5, 9));
  const lines = (shape: Shape) =>
    rimsBehind(axialSection(shape, [0, 180]))
      .map((ends) => ends.map((end) => end.map((value) => Math.round(value * 1000) / 1000 + 0).join()).join(' '))
      .sort();

  it('are those of holes that lie open', () => {
    // the bore's rim at its foot, at the step, and the wider one's at the top; none of the outside
    expect(lines(bored)).toEqual(['-5,-4 -5,4', '-8,-6 -8,6', '0,-4 0,4']);
  });

  it('stop at the axis where a bore is closed on one side', () => {
    const above: Shape = { kind: 'moved', by: [5, 0, 0], shape: block([10, 20], -2, 9) };
    const half = less(disc(10, 0, 5), { kind: 'intersection', of: [disc(4, -1, 6), above] });
    expect(lines(half)).toEqual(['-5,0 -5,4', '0,0 0,4']);
  });

  it('leave out the ground of a groove and what is solid, and need not stand about the axis', () => {
    const groove = less(disc(10, 0, 8), disc(4, -1, 9), disc(7, 3, 5));
    expect(lines(groove)).toEqual(['-3,-4 -3,4', '-5,-4 -5,4', '-8,-4 -8,4', '0,-4 0,4']);
    const aside: Shape = { kind: 'moved', by: [3, 0, 0], shape: bored };
    expect(lines(aside)).toEqual(['-5,-1 -5,7', '-8,-3 -8,9', '0,-1 0,7']);
    expect(lines(disc(5, 0, 4))).toEqual([]);
  });
});

describe('faces behind a section', () => {
  const faces = (shape: Shape) => facesBehind([shape], [0, 180], axialSection(shape, [0, 180]));
  const slit = (width: number): Shape => ({ kind: 'moved', by: [10, 0, 0], shape: block([20, width], -1, 11) });
  const hole: Shape = {
    kind: 'moved',
    turn: 90,
    by: [7, 0, 5],
    shape: { kind: 'moved', tilt: 90, shape: disc(1, 0, 20) },
  };

  it('are the wall of a slit, less the hole through it', () => {
    // from the bore, at the depth of the wall, to the outside
    const wide = Math.sqrt(10 ** 2 - 1 ** 2) - Math.sqrt(4 ** 2 - 1 ** 2);
    const ring = less(disc(10, 0, 10), disc(4, -1, 11), slit(1.2));
    expect(areaOf(faces(ring))).toBeCloseTo(10 * wide, 1);
    expect(areaOf(faces(less(ring, hole)))).toBeCloseTo(10 * wide - Math.PI, 1);
    expect(areaOf(faces(less(disc(10, 0, 10), disc(4, -1, 11), slit(2.4))))).toBeGreaterThan(50);
  });

  it('are no round walls that come nearer', () => {
    expect(faces(less(disc(10, 0, 10), disc(4, -1, 11)))).toEqual([]);
    expect(faces(less(disc(10, 0, 10), disc(2.5, -1, 11)))).toEqual([]);
  });
});
