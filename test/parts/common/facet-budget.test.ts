import { describe, expect, it } from 'vitest';
import { requireFacetBudget, threadFacets } from '../../../src/parts/common/facet-budget.js';
import { nutCutter } from '../../../src/parts/common/thread-shape.js';
import { design } from '../../../src/pipeline/design.js';
import { kindOfDesign } from '../../../src/pipeline/find-kind.js';
import { KINDS } from '../../../src/pipeline/kinds.js';
import { sweepThread } from '../../../src/solid/thread-sweep.js';
import { couplingSheet } from '../../support/coupling-sheets.js';
import { ADAPTERS, SLEEVES } from '../../support/odd-sheets.js';
import { facetsOf } from '../../support/recipe-facets.js';

const thread = { major: 8.3, pitchDiameter: 7.3, minor: 6.3, pitch: 2, flankSlope: 0.268, grooveWidth: 1.1 };
const nut = { screw: 'Tr8x2', body: { diameter: 20, length: 100 }, part: 'nut', name: 'n', material: 'petg' };

describe('facets of a thread', () => {
  it('are foreseen within a tenth of what is swept', () => {
    const threads = { thread, lead: 2, length: 100, chordError: 0.002 };
    const columns = threadFacets(threads) / (8 * 50);
    const swept = sweepThread(nutCutter(thread, { starts: 1, hand: 'right', columns, from: 0, to: 100 }));
    expect(swept.triangles.length / 3 / threadFacets(threads)).toBeGreaterThan(0.95);
    expect(swept.triangles.length / 3 / threadFacets(threads)).toBeLessThan(1.1);
  });

  it('are refused above two million, with a chord error that is coarse enough', () => {
    const sheet = (pitch: number, length: number) => ({
      ...nut,
      screw: { form: 'trapezoidal', major: 60, pitch, starts: 1, hand: 'right', pitch_diameter: 60 - 0.5 * pitch },
      body: { diameter: 90, length },
      fit: { diametral: 0.02, axial: 0.02 },
      printer: { compensation: 'file', chord_error: 0.001 },
    });
    // π/acos(1 − 0.001/30.4) → 388 columns and 600 pitches of 8 facets: 1.86 million
    expect(() => design(sheet(0.5, 300))).not.toThrow();
    expect(() => design(sheet(0.4, 300))).toThrow(/printer\.chord_error: 0\.001 mm.*about 2\.3 million facets/);
    expect(() =>
      requireFacetBudget({ thread: { ...thread, pitch: 0.25 }, lead: 0.25, length: 300, chordError: 0.001 }),
    ).not.toThrow();
    const many = { thread: { major: 60, minor: 59.5, pitch: 0.25 }, lead: 0.25, length: 300, chordError: 0.001 };
    expect(() => requireFacetBudget(many)).toThrow(
      /chord_error.*0\.001 mm.*about 3\.7 million facets, of at most 2 million: use 0\.005 mm or a shorter part/,
    );
    expect(() => requireFacetBudget({ ...many, chordError: 0.005 })).not.toThrow();
  });

  it('are refused where no sweep takes so many columns', () => {
    const steep = { thread: { major: 12, minor: 4, pitch: 16 }, lead: 192, length: 50, chordError: 0.001 };
    expect(() => requireFacetBudget(steep)).toThrow(
      /\d{5} columns around, of at most 10000: use 0\.0\d+ mm or a shorter part/,
    );
  });
});

/** A fine thread of two million facets and more at the finest chord error. */
const FINE = { form: 'trapezoidal', major: 60, pitch: 0.25, starts: 1, hand: 'right', pitch_diameter: 59.875 };
const finest = { compensation: 'file', chord_error: 0.001 };

const THREADED: Readonly<Record<string, object>> = {
  nut: { body: { diameter: 90, length: 300 }, fit: { diametral: 0.02, axial: 0.02 } },
  collar: {
    bore: 'thread',
    mounting: 'motor-above',
    length: 100,
    outside_diameter: 120,
    fit: { diametral: 0.02, axial: 0.02 },
    // no collar has room for two million facets; a fast thread may want too many columns
    screw: { form: 'trapezoidal', major: 60, pitch: 16, starts: 12, hand: 'right', pitch_diameter: 52 },
  },
};

describe('the budget of facets', () => {
  it.each(Object.entries(THREADED))('is asked of a %s', (part, more) => {
    const sheet = (chord_error: number) => ({
      part,
      name: 'n',
      screw: FINE,
      material: 'petg',
      ...more,
      printer: { ...finest, chord_error },
    });
    expect(() => design(sheet(0.001))).toThrow(
      /printer\.chord_error: 0\.001 mm; gives the thread (about .* million facets|\d+ columns around)/,
    );
    expect(() => design(sheet(0.1))).not.toThrow(/gives the thread/);
  });

  const frame = { thickness: 6 };
  const PLAIN: Readonly<Record<string, object>> = {
    ...ADAPTERS,
    ...SLEEVES,
    'a plate of 400 mm with many holes': {
      ...ADAPTERS['blank polygon with cut-outs'],
      carriage: { thickness: 6, holes: { count: 24, circle: 300, screw: 'M6' }, joint: 'counterbore' },
      plate: { bore: 300, outline: { shape: 'round', diameter: 400 } },
    },
    'a wide coupling': couplingSheet({ hubs: { outside_diameter: 80 }, jaws: { count: 6, fillet: 1, bevel: 1 } }),
    'a wide end holder': {
      part: 'end-holder',
      name: 'wide',
      role: 'guiding',
      screw: 'Tr24x5',
      turned_end: 20,
      bearing: 6004,
      held_by: 'plate',
      holes: { count: 12, circle: 200, screw: 'M8' },
      frame,
      mounting: 'horizontal',
      coupling: 'flexible',
      thrust_bearing: 'yes',
      nut: 'floating',
      material: 'petg',
    },
  };

  it.each(Object.keys(PLAIN))('is never near without a thread, however fine the arcs: %s', (name) => {
    const sheet = PLAIN[name] as { readonly printer?: object };
    const made = design({ ...sheet, printer: { ...sheet.printer, ...finest } });
    const facets = kindOfDesign(KINDS, made)
      .bodies(made)
      .reduce((sum, { recipe }) => sum + facetsOf(recipe.shape), 0);
    expect(facets).toBeGreaterThan(500);
    expect(facets).toBeLessThan(100_000);
  });
});
