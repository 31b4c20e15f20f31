import { describe, expect, it } from 'vitest';
import { requireFacetBudget, threadFacets } from '../../../src/parts/common/facet-budget.js';
import { nutCutter } from '../../../src/parts/common/thread-shape.js';
import { design } from '../../../src/pipeline/design.js';
import { sweepThread } from '../../../src/solid/thread-sweep.js';

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
    expect(() => requireFacetBudget(steep)).toThrow(/use 0\.0\d+ mm or a shorter part/);
  });
});
