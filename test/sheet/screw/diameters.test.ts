import { describe, expect, it } from 'vitest';
import { resolved } from '../../support/resolved-screw.js';

const WIRE = 1.04;

describe('diameters of a screw', () => {
  // ISO 2904: d3 of Tr8x2; ISO 724: d3 and d2 of M8; ASME B1.5, h + allowance: 3/8-10 and 1/4-16
  it.each([
    ['trapezoidal', 8, 2, 5.5],
    ['metric-v', 8, 1.25, 6.466],
    ['acme', 9.525, 2.54, 25.4 * (0.375 - 0.1 - 0.02)],
    ['acme', 6.35, 1.5875, 25.4 * (0.25 - 0.0625 - 0.01)],
  ])('the root of a measured %s of %f by its form', (form, major, pitch, wanted) => {
    const { screw, assumptions } = resolved({ form, major, pitch });
    expect(screw.minor.likely).toBeCloseTo(wanted, 3);
    expect(assumptions.list.find(({ field }) => field === 'screw.minor')?.why).toBe('from the form');
  });

  it.each([
    ['trapezoidal', 8, 2, 7],
    ['metric-v', 8, 1.25, 7.188],
  ])('flanks of a measured %s from its crest, in doubt', (form, major, pitch, wanted) => {
    const { pitchDiameter } = resolved({ form, major, pitch }).screw;
    expect(pitchDiameter.likely).toBeCloseTo(wanted, 3);
    expect(pitchDiameter.most - pitchDiameter.least).toBeGreaterThan(0.3);
  });

  it('those of a name are its basic sizes; a reading stands for its own alone', () => {
    const named = resolved({ designation: 'Tr8x2' }).screw;
    expect([named.major.likely, named.pitchDiameter.likely, named.minor.likely]).toEqual([8, 7, 5.5]);
    const worn = resolved({ designation: 'Tr8x2', major: 7.8 }).screw;
    expect([worn.major.likely, worn.pitchDiameter.likely]).toEqual([7.8, 7]);
    expect(worn.minor.likely).toBeCloseTo(5.3, 9);
  });

  it('flanks over wires: M = d2 + w·(1 + 1/sin 15°) − P/(2·tan 15°), a little thicker where the lead is steep', () => {
    const over = 7 + WIRE * (1 + 1 / Math.sin(Math.PI / 12)) - 2 / (2 * Math.tan(Math.PI / 12));
    const sheet = { form: 'trapezoidal', major: 7.95, pitch: 2, starts: 1, wires: { wire: WIRE, over } };
    const { likely, least } = resolved(sheet).screw.pitchDiameter;
    // the lead's own share is below 0.02 mm here
    expect(Math.abs(likely - 7)).toBeLessThan(0.02);
    expect(likely - least).toBeCloseTo(0.02, 9);
  });

  it('the thinnest root is the reading where there is one, and thinner than the basic size where there is none', () => {
    const read = resolved({ designation: 'Tr8x2', minor: 5.4 }).screw.leastRoot;
    for (const root of [read.cut, read.rolled]) expect(root).toBeCloseTo(5.38, 9);
    const { cut, rolled } = resolved({ designation: 'Tr8x2' }).screw.leastRoot;
    expect(cut).toBeLessThan(5.5);
    expect(rolled).toBeLessThanOrEqual(5.5);
  });
});
