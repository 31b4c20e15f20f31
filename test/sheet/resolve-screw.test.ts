import { describe, expect, it } from 'vitest';
import { Assumptions } from '../../src/sheet/assumptions.js';
import { resolveScrew } from '../../src/sheet/resolve-screw.js';
import { screwSection } from '../../src/sheet/sections/screw.js';

/** Calipers of ± 0.02 mm. */
const resolved = (sheet: object) => {
  const assumptions = new Assumptions();
  return { screw: resolveScrew(screwSection.parse(sheet), 0.02, assumptions), assumptions };
};
const FOUR_STARTS = { form: 'trapezoidal', major: 7.95, starts: 4 };

describe('resolveScrew', () => {
  it('takes a lead that is given for surer than the pitch times the starts', () => {
    const { screw } = resolved({ form: 'trapezoidal', major: 7.95, pitch: '2.02 mm', lead: '8 mm' });
    expect(screw).toMatchObject({ starts: 4, lead: 8, pitchRead: 2.02 });
    expect(screw.pitch.likely).toBe(2);
    expect(screw.leadOverPitch).toBeCloseTo(8 / 2.02, 12);
  });

  it('takes travel over many turns for surer than a few crests, and many crests for surer than one turn', () => {
    const few = { count: 5, length: '10.1 mm' };
    const far = resolved({ ...FOUR_STARTS, crests: few, travel: { turns: 50, length: '400 mm' } }).screw;
    expect(far.lead).toBe(8);
    const near = resolved({
      ...FOUR_STARTS,
      crests: { count: 40, length: '80 mm' },
      travel: { turns: 1, length: '8.1 mm' },
    }).screw;
    expect(near.lead).toBe(8);
  });

  it('keeps the pitch of a designation against a worn lead', () => {
    const { screw } = resolved({ designation: 'Tr8x8(P2)', travel: { turns: 50, length: '405 mm' } });
    expect(screw).toMatchObject({ lead: 8, starts: 4 });
    expect(screw.leadOverPitch).toBeCloseTo(4.05, 12);
  });

  it('leaves pitch and lead apart where they disagree, for the check to tell', () => {
    const { screw } = resolved({ designation: 'Tr10x2', lead: '3 mm' });
    expect(screw.leadOverPitch).toBe(1.5);
    expect(screw.pitch.likely).toBe(2);
  });

  it('spells a screw with other starts than its designation by its whole name, and says so', () => {
    const { screw, assumptions } = resolved({ designation: 'Tr8x2', starts: 4 });
    expect(screw).toMatchObject({ designation: 'Tr8x8(P2)', lead: 8 });
    expect(assumptions.list.find(({ field }) => field === 'screw.designation')?.why).toContain('Tr8x2 with 4 starts');
    expect(resolved({ designation: 'Tr8x8(P2)', starts: 4 }).screw.designation).toBe('Tr8x8(P2)');
  });

  it('refuses a form that contradicts the designation', () => {
    expect(() => resolved({ designation: 'Tr10x2', form: 'acme' })).toThrow(/does not agree with Tr10x2/);
    expect(resolved({ designation: 'Tr10x2', form: 'trapezoidal' }).screw.form).toBe('trapezoidal');
    expect(resolved({ designation: '1/4-20 UNC', form: 'metric-v' }).screw.form).toBe('metric-v');
  });
});
