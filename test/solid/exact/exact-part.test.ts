import { describe, expect, it } from 'vitest';
import type { BuiltBodies, ExactKernel } from '../../../src/solid/exact/exact-kernel.js';
import { exactPart } from '../../../src/solid/exact/exact-part.js';
import { meantShape } from '../../../src/solid/exact/meant-shape.js';
import { circleOutline } from '../../../src/solid/outline.js';
import { cylinder, type Shape } from '../../../src/solid/recipe.js';
import { exactKernel, HAS_EXACT, NEEDS_EXACT } from '../../support/exact-kernel.js';
import { cylindersIn, placesIn } from '../../support/step-file.js';

const meant = (shape: Shape) => meantShape(shape, { threads: 'exact', join: (outlines) => outlines });

const SIDE_HOLE: Shape = {
  kind: 'moved',
  tilt: 90,
  shape: { kind: 'prism', outlines: [circleOutline({ radius: 1, sides: 24, center: [-3, 0] })], from: 0, to: 10 },
};
const DISC: Shape = {
  kind: 'difference',
  of: [cylinder({ radius: 8, sides: 64, circumscribed: false, from: 0, to: 6 }), SIDE_HOLE],
};
/** A left-hand groove of two starts that a ring is cut with. */
const THREAD: Shape = {
  kind: 'thread',
  thread: {
    ridge: [
      [0.6, 5],
      [1.8, 4],
      [2.2, 4],
      [3.4, 5],
    ],
    pitch: 4,
    starts: 2,
    hand: 'left',
    columns: 48,
    from: -1,
    to: 7,
    airSide: 'inside',
    circumscribed: true,
  },
};

/** Radii of the cylinders in a file. */
const radiiIn = (step: string) => new Set(cylindersIn(step).map(({ radius }) => radius));

const about = { file: 'ring.step', product: 'ring', description: 'ring', writer: 'test' };

describe(`an exact part${NEEDS_EXACT}`, () => {
  it.skipIf(!HAS_EXACT)('keeps its gate and states its sizes; the same bytes from another kernel', async () => {
    const request = { ...about, bodies: [{ name: 'disc', shape: meant(DISC) }] };
    const { step, measures } = exactPart(await exactKernel(), request);
    expect(measures[0]).toMatchObject({ solids: 1, freeEdges: 0, isSound: true });
    expect(radiiIn(step)).toEqual(new Set([8, 1]));
    expect(step).toContain('AP242');
    expect(step).toMatch(/SI_UNIT\(\.MILLI\.,\.METRE\.\)/);
    expect(exactPart(await exactKernel(), request).step).toBe(step);
  });

  it.skipIf(!HAS_EXACT)('cuts a thread as helicoids', async () => {
    const shape = meant({ kind: 'difference', of: [DISC, THREAD] });
    const { step } = exactPart(await exactKernel(), { ...about, bodies: [{ name: 'ring', shape }] });
    // flank, root, flank and crest of either start, less what the side hole takes of none
    expect(step.match(/B_SPLINE_SURFACE_WITH_KNOTS/g)?.length).toBeGreaterThanOrEqual(6);
    expect(radiiIn(step)).toEqual(new Set([8, 1]));
  });

  it.skipIf(!HAS_EXACT)('is an assembly of its bodies where there are several, each in its place', async () => {
    const ring = () => meant(cylinder({ radius: 8, sides: 64, circumscribed: false, from: 0, to: 6 }));
    const bodies = [
      { name: 'ring-0', shape: ring() },
      { name: 'ring-1', shape: ring(), place: { by: [0, 1.5, 20] as const, tilt: 180 } },
    ];
    const { step } = exactPart(await exactKernel(), { ...about, bodies });
    expect([...step.matchAll(/= PRODUCT\(\s*'([^']*)'/g)].map(([, name]) => name)).toEqual([
      'ring',
      'ring-0',
      'ring-1',
    ]);
    expect(step.match(/NEXT_ASSEMBLY_USAGE_OCCURRENCE\(/g)).toHaveLength(2);
    const [still, turned] = placesIn(step);
    expect(still).toEqual({ at: [0, 0, 0], axis: [0, 0, 1] });
    expect(turned).toEqual({ at: [0, 1.5, 20], axis: [0, 0, -1] });
  });
});

describe('the gate of an exact body', () => {
  const sound = { solids: 1, freeEdges: 0, isSound: true, area: 1, center: [0, 0, 0], bounds: [[], []] };
  const shape = meant(cylinder({ radius: 5, sides: 48, circumscribed: false, from: 0, to: 4 }));
  const kernelOf = (measures: object, back: object = measures): ExactKernel => ({
    within: (bodies, work) =>
      work({
        bodies: bodies.map(({ name }) => ({ name, measures: { ...sound, ...measures } })),
        write: () => 'HEADER;\nFILE_SCHEMA',
        readBack: () => bodies.map(() => ({ ...sound, ...back })),
      } as unknown as BuiltBodies),
  });
  const request = { ...about, bodies: [{ name: 'disc', shape }] };
  const volume = Math.PI * 100;

  it('lets a body through that keeps it', () => {
    expect(() => exactPart(kernelOf({ volume: volume * (1 + 9e-6) }), request)).not.toThrow();
  });

  it.each([
    ['free edges', { volume, freeEdges: 2 }, {}, 'disc: 1 solids with 2 free edges'],
    ['two solids', { volume, solids: 2 }, {}, 'disc: 2 solids'],
    ['a volume that is off', { volume: volume * (1 + 1.2e-5) }, {}, 'disc: its volume is 1.2e-5 of itself off'],
    ['a file that gives back less', { volume }, { volume: volume * 0.999 }, 'disc as it was read back: its volume'],
    ['a file that gives back an open body', { volume }, { volume, freeEdges: 1 }, 'disc as it was read back: 1 solids'],
  ])('refuses %s, by name', (_, measures, back, message) => {
    expect(() => exactPart(kernelOf(measures, { ...measures, ...back }), request)).toThrow(message);
  });
});
