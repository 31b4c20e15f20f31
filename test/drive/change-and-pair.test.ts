import { describe, expect, it } from 'vitest';
import { screwsOfOneAxisMayDiffer } from '../../src/drive/axis-pair.js';
import { controllerChange } from '../../src/drive/controller-change.js';
import { gridHeights } from '../../src/drive/layers.js';
import { endDifference } from '../../src/drive/turn.js';
import { screw } from './screws.js';

describe('controller change (common practice: new = old · old lead / new lead)', () => {
  it('lead 8 to 2: 400 become 1600; forgotten, 100 mm become 25', () => {
    const change = controllerChange({ oldLead: 8, newLead: 2, oldStepsPerMm: 400 });
    expect(change).toMatchObject({ factor: 4, steps_per_mm: 1600, if_forgotten: 0.25 });
    expect(change.words).toBe('Set 1600 steps per mm instead of 400; forgotten, 100 mm become 25 mm.');
  });
  it('gives the factor alone when the old figure is not known', () => {
    const change = controllerChange({ oldLead: 2, newLead: 8 });
    expect(change).not.toHaveProperty('steps_per_mm');
    expect(change.words).toMatch(/^Multiply the steps per mm by 0\.25; forgotten, 100 mm become 400 mm/);
  });
  it('says when nothing changes, and refuses a lead of 0', () => {
    expect(controllerChange({ oldLead: 2, newLead: 2, oldStepsPerMm: 1600 }).words).toMatch(/no change/);
    expect(() => controllerChange({ oldLead: 0, newLead: 2 })).toThrow(/^oldLead: /);
    expect(() => controllerChange({ oldLead: 2, newLead: 2, oldStepsPerMm: -1 })).toThrow(/^oldStepsPerMm: /);
  });
});

describe('turning at the coupling', () => {
  it('0.1 mm is 4.5° at lead 8 and 18° at lead 2 (360·0.1/l)', () => {
    expect(endDifference({ difference: 0.1, lead: 8 })).toBeCloseTo(4.5, 12);
    expect(endDifference({ difference: 0.1, lead: 2 })).toBeCloseTo(18, 12);
    expect(endDifference({ difference: -0.1, lead: 2 })).toBeCloseTo(-18, 12);
  });
  it('refuses values outside their ranges', () => {
    expect(() => endDifference({ difference: Number.NaN, lead: 2 })).toThrow(/^difference: /);
    expect(() => endDifference({ difference: 0.1, lead: 0 })).toThrow(/^lead: /);
  });
});

describe('two screws on one axis', () => {
  it('alike: yes', () => {
    expect(screwsOfOneAxisMayDiffer(screw('Tr8x2'), screw('Tr8x2')).may).toBe('yes');
  });
  it('another lead: no, with the drift', () => {
    const verdict = screwsOfOneAxisMayDiffer(screw('Tr8x2'), screw('Tr8x8(P2)'));
    expect(verdict.may).toBe('no');
    expect(verdict.reasons[0]).toMatch(/part by 75 mm every 100 mm/);
  });
  it('nearly the same lead, 1.5875 and 1.6: no', () => {
    const near = { ...screw('Acme 1/4-16'), lead: 1.6, pitch: 1.6 };
    expect(screwsOfOneAxisMayDiffer(screw('Acme 1/4-16'), near).reasons[0]).toMatch(/0\.78 mm every 100 mm/);
  });
  it('another hand, thread, holding or clearance: with care, and why', () => {
    const care = (a: string, b: string) => screwsOfOneAxisMayDiffer(screw(a), screw(b));
    expect(care('Tr8x2', 'Tr8x2-LH')).toMatchObject({
      may: 'with-care',
      reasons: [expect.stringMatching(/left-hand/)],
    });
    expect(care('Tr8x2', 'Tr10x2').reasons.join(' ')).toMatch(/nut of its own/);
    // lead 6: falls on 8 mm (above d/2), may creep on 16 mm
    expect(care('Tr8x6(P2)', 'Tr16x6(P2)').reasons.join(' ')).toMatch(/drops at one end/);
    const a = { ...screw('Tr8x2'), diametralClearance: 0.3 };
    expect(screwsOfOneAxisMayDiffer(a, { ...a, diametralClearance: 0.35 }).may).toBe('yes');
    expect(screwsOfOneAxisMayDiffer(a, { ...a, diametralClearance: 0.36 }).reasons.join(' ')).toMatch(/0\.06 mm/);
  });
});

describe('heights on the grid', () => {
  it('lead 8: 0.12, 0.16, 0.20, 0.24, 0.28 among them (common practice)', () => {
    expect(gridHeights(0.04)).toEqual([0.08, 0.12, 0.16, 0.2, 0.24, 0.28, 0.32]);
  });
  it('an inch thread gets multiples of its own step', () => {
    for (const height of gridHeights(0.0079375)) {
      expect(height / 0.0079375).toBeCloseTo(Math.round(height / 0.0079375), 6);
    }
    expect(gridHeights(0.0079375).length).toBeGreaterThanOrEqual(6);
  });
  it('a step above 0.32 leaves none', () => {
    expect(gridHeights(0.5)).toEqual([]);
  });
});
