import { describe, expect, it } from 'vitest';
import { lineVolume } from '../../../src/solid/exact/line-volume.js';
import { type MeantShape, meantShape } from '../../../src/solid/exact/meant-shape.js';
import { circleOutline } from '../../../src/solid/outline.js';
import { cylinder, type Shape } from '../../../src/solid/recipe.js';
import { SMALL_THREAD } from '../../support/small-thread.js';

type Corner = readonly [number, number];

const by = (shape: Shape) => lineVolume(meantShape(shape, { threads: 'exact', join: (outlines) => outlines }));

const rod = (radius: number, from: number, to: number): Shape =>
  cylinder({ radius, sides: 48, circumscribed: false, from, to });

describe('volume and centre by lines', () => {
  it('of a cone and of a ring, by the textbook', () => {
    const cone: Shape = {
      kind: 'lathe',
      sides: 48,
      circumscribed: true,
      contour: [
        [6, 0],
        [0, 9],
      ],
    };
    const { volume, center } = by(cone);
    expect(volume / (Math.PI * 36 * 3)).toBeCloseTo(1, 6);
    expect(center[2]).toBeCloseTo(9 / 4, 5);
    const ring: Shape = { kind: 'difference', of: [rod(8, 0, 5), rod(3, -1, 6)] };
    expect(by(ring).volume / (Math.PI * 55 * 5)).toBeCloseTo(1, 6);
  });

  it('of a rod with a pocket at its side and a cone in its end, which take off what each takes off alone', () => {
    const cone = (from: Corner, to: Corner): MeantShape => ({ kind: 'revolution', contour: [{ from, to }] });
    const chamfered: Corner[] = [
      [16.685, 0],
      [17.265, 0.58],
      [17.265, 12.82],
      [16.685, 13.4],
    ];
    const body: MeantShape = {
      kind: 'revolution',
      contour: chamfered.slice(1).map((to, i) => ({ from: chamfered[i]!, to })),
    };
    // a lying teardrop of radius 3.09, cut off at 1 mm under its tip, from the middle on beside the cone
    const [s, cut] = [3.09 / Math.SQRT2, 3.09];
    const top = Math.SQRT2 * 3.09 - cut;
    const pieces = [
      { kind: 'line', from: [-6.7 - s, -7.302 + s], to: [-6.7 - cut, -7.302 + top] },
      { kind: 'line', from: [-6.7 - cut, -7.302 + top], to: [-6.7 - cut, -7.302 - top] },
      { kind: 'line', from: [-6.7 - cut, -7.302 - top], to: [-6.7 - s, -7.302 - s] },
      {
        kind: 'arc',
        from: [-6.7 - s, -7.302 - s],
        to: [-6.7 - s, -7.302 + s],
        center: [-6.7, -7.302],
        radius: 3.09,
        outwards: true,
      },
    ] as const;
    const prism: MeantShape = {
      kind: 'extrusion',
      regions: [{ outer: { kind: 'pieces', pieces }, holes: [] }],
      from: -300,
      to: -3.65,
    };
    const pocket: MeantShape = { kind: 'moved', tilt: 90, turn: 90, shape: prism };
    const end = cone([4.902, -1], [2.28125, 1.62075]);
    const volume = (...cutters: MeantShape[]) => lineVolume({ kind: 'difference', of: [body, ...cutters] }).volume;
    const together = volume() - volume(pocket) + (volume() - volume(end));
    expect((volume() - volume(pocket, end)) / together).toBeCloseTo(1, 4);
  });

  it('of two crossed cylinders of one radius: 16·r³/3', () => {
    const lying: Shape = {
      kind: 'moved',
      tilt: 90,
      turn: 30,
      shape: { kind: 'prism', outlines: [circleOutline({ radius: 3, sides: 48 })], from: -10, to: 10 },
    };
    const both: Shape = { kind: 'intersection', of: [rod(3, -10, 10), lying] };
    expect(by(both).volume / (16 * 9)).toBeCloseTo(1, 4);
  });

  it('of a fillet: a rounded foot is (1 − π/4) of its square, at the place of its centroid', () => {
    const foot: Shape = {
      kind: 'loft',
      outline: circleOutline({ radius: 10, sides: 64 }),
      levels: [
        [-1, 2],
        [0, 2],
        [2, 0],
        [6, 0],
      ],
      rounds: [{ from: 1, to: 2, arc: { begins: [0, 2], center: [2, 2] } }],
    };
    // Pappus: the corner left of a square of side f by its quarter circle, its centroid (10 − 3π)/(12 − 3π)·f from
    // the corner's own sides
    const f = 2;
    const area = (1 - Math.PI / 4) * f * f;
    const centroid = ((10 - 3 * Math.PI) / (12 - 3 * Math.PI)) * f;
    const wanted = Math.PI * 144 + Math.PI * 100 * 6 + 2 * Math.PI * (10 + centroid) * area;
    expect(by(foot).volume / wanted).toBeCloseTo(1, 6);
  });

  it('of a thread over whole pitches: π times the mean of r²', () => {
    // flat of 0.8 at 5, flat of 0.6 at 4, two flanks of 0.3 with the mean square (25 + 20 + 16)/3
    const mean = (0.8 * 25 + 0.6 * 16 + (0.6 * 61) / 3) / 2;
    const { volume, center } = by({ kind: 'thread', thread: SMALL_THREAD });
    expect(volume / (Math.PI * mean * 8)).toBeCloseTo(1, 6);
    expect(center[2]).toBeCloseTo(4, 4);
  });

  it('refuses a cone that lies', () => {
    const lying: Shape = { kind: 'moved', tilt: 90, shape: rod(3, 0, 5) };
    expect(() => by(lying)).toThrow('a lying revolution cannot be measured by lines');
  });
});
