import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { nutSchema } from '../../src/parts/nut/sheet.js';
import { type Design, design } from '../../src/pipeline/design.js';
import { exactRequest } from '../../src/pipeline/exact-request.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { LEAST_ROUND, sidesFor } from '../../src/solid/outline.js';
import type { Loft, Shape } from '../../src/solid/recipe.js';
import { InputError } from '../../src/units/faults.js';
import * as sensible from '../support/sensible-sheets/index.js';
import { sharedKernel } from '../support/shared-kernel.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

/** The coarsest and the finest circles that a sheet may ask for. */
const CHORDS = [0.001, 0.1];
const SHAPES = nutSchema.shape.body.shape.shape.unwrap().options;

const nutOf = (body: object, chord: number, more: object = {}) =>
  design({
    part: 'nut',
    name: 'any',
    screw: 'Tr8x2',
    body: { ...body, length: 20 },
    fit: 'running',
    material: 'pla',
    printer: { nozzle: 0.4, layer: 0.1, chord_error: chord },
    ...more,
  });
const flanged = {
  flange: { shape: 'round', diameter: 50, thickness: 5 },
  holes: { count: 4, circle: 40, screw: 'M3' },
};

const requestOf = (made: Design, threads: 'exact' | 'plain' = 'exact') =>
  exactRequest(made, { kind: kindOfDesign(KINDS, made), kernel }, { sizes: 'finished', threads });

/** Every leaf of a recipe. */
function leaves(shape: Shape): Shape[] {
  if ('of' in shape) return shape.of.flatMap(leaves);
  return 'shape' in shape ? leaves(shape.shape) : [shape];
}

const leavesOf = (made: Design) =>
  (['finished', 'printed'] as const).flatMap((sizes) =>
    kindOfDesign(KINDS, made)
      .bodies(made, sizes)
      .flatMap(({ recipe }) => leaves(recipe.shape)),
  );

type Sheet = { readonly printer: object };

/** A random sheet with the coarsest circles; none where it cannot be a part at all. */
function coarse(given: Sheet): Design[] {
  try {
    return [design({ ...given, printer: { ...given.printer, chord_error: CHORDS[1] } })];
  } catch (error) {
    if (error instanceof InputError) return [];
    throw error;
  }
}

describe('the exact bodies of a sheet', () => {
  it('are described as having plain threads where they would have threads at all', () => {
    const sleeve = design(fc.sample(sensible.sensibleSleeve, { numRuns: 1, seed: 1 })[0]!);
    expect(requestOf(nutOf({ shape: 'round', diameter: 24 }, 0.1), 'plain').description).toContain('left as the bore');
    expect(requestOf(nutOf({ shape: 'round', diameter: 24 }, 0.1)).description).not.toContain('left as the bore');
    expect(requestOf(sleeve, 'plain').description).not.toContain('left as the bore');
  });

  const bodies = SHAPES.flatMap((shape) =>
    [{}, { flats: 20 }].map((flats) => ({
      shape,
      ...(shape === 'round' ? { diameter: 24 } : { width: 24 }),
      ...flats,
    })),
  );

  it.each(bodies.flatMap((body) => CHORDS.map((chord) => [body, chord] as const)))(
    'stand for a fillet around every body: %o at %s mm',
    (body, chord) => {
      const made = nutOf(body, chord, { ...flanged, fillet: 1 });
      const filleted = leavesOf(made).filter(
        (leaf): leaf is Loft => leaf.kind === 'loft' && (leaf.rounds ?? []).some(({ arc }) => arc !== undefined),
      );
      expect(filleted).not.toHaveLength(0);
      expect(() => requestOf(made)).not.toThrow();
    },
  );

  it('stand for edges that are broken by nothing', () => {
    const made = nutOf({ diameter: 24 }, 0.02, { relief: 0 });
    const [body] = requestOf(made).bodies;
    expect(JSON.stringify(body)).toContain('"contour":[{"from":[12,0],"to":[12,20]}]');
  });

  it('have circles of no fewer sides than a circle has, whatever a sheet asks for', () => {
    const radius = fc.double({ min: 1e-3, max: 400, noNaN: true });
    const chord = fc.double({ min: CHORDS[0]!, max: CHORDS[1]!, noNaN: true });
    fc.assert(fc.property(radius, chord, (r, e) => sidesFor(r, e) >= LEAST_ROUND));
  });

  it.each(Object.entries(sensible).filter(([name]) => name !== 'sensibleAxis'))(
    'are there for random sheets of a kind, as coarse as may be (%s)',
    (_, sheets) => {
      const made = fc.sample(sheets as fc.Arbitrary<Sheet>, 12).flatMap(coarse);
      for (const one of made) {
        const lathes = leavesOf(one).flatMap((leaf) => (leaf.kind === 'lathe' ? [leaf.sides] : []));
        expect(lathes.filter((sides) => sides < LEAST_ROUND)).toEqual([]);
        expect(requestOf(one).bodies).not.toHaveLength(0);
      }
      expect(made.length).toBeGreaterThan(2);
    },
  );
});
