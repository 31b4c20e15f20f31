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

  it('uses a travel by its uncertainty beside a pitch that is only stated: 140.2 mm over 10 turns is 14.02 a turn', () => {
    const { screw } = resolved({
      form: 'trapezoidal',
      major: 13.9,
      pitch: 2,
      starts: 7,
      travel: { turns: 10, length: '140.2 mm' },
    });
    expect(screw.lead).toBeCloseTo(14.02, 9);
    expect(resolved({ designation: 'Tr8x2', travel: { turns: 100, length: '200.2 mm' } }).screw.lead).toBeCloseTo(
      2.002,
      9,
    );
  });

  it('lists a travel that it sets aside', () => {
    const rough = resolved({
      form: 'trapezoidal',
      major: 7.95,
      crests: { count: 20, length: '40 mm' },
      travel: { turns: 1, length: '2.03 mm' },
    });
    expect(rough.screw.lead).toBe(2);
    expect(rough.assumptions.list.find(({ field }) => field === 'screw.travel')?.why).toMatch(
      /set aside: the pitch says 2 mm/,
    );
  });

  it('keeps the pitch of a designation against a worn lead, and lists it', () => {
    const { screw, assumptions } = resolved({ designation: 'Tr8x8(P2)', travel: { turns: 50, length: '405 mm' } });
    expect(screw).toMatchObject({ lead: 8, starts: 4 });
    expect(screw.leadOverPitch).toBeCloseTo(4.05, 12);
    expect(assumptions.list.find(({ field }) => field === 'screw.travel')?.why).toMatch(
      /set aside: Tr8x8\(P2\) says 8 mm/,
    );
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

  it('refuses readings that the designation cannot have', () => {
    expect(() => resolved({ designation: 'Tr8x2', major: 7.95, pitch: 2.54 })).toThrow(
      /screw\.pitch.*2\.54 mm.*does not agree with Tr8x2, whose pitch is 2 mm/,
    );
    expect(() => resolved({ designation: 'Tr8x2', crests: { count: 10, length: '25.4 mm' } })).toThrow(/screw\.crests/);
    expect(() => resolved({ designation: 'Tr8x2', major: 9.9 })).toThrow(/screw\.major.*is 8 mm over its crests/);
    expect(resolved({ designation: 'M8', major: 7.6 }).screw.major.likely).toBe(7.6);
  });

  it('knows what a screw in hand may measure: 7e of Tr8x2 in ISO 2903 has d2 6.739 to 6.929, d 7.82 to 8', () => {
    const { inHand, pitchDiameter } = resolved({ designation: 'Tr8x2' }).screw;
    expect(pitchDiameter).toEqual({ least: 7, likely: 7, most: 7 });
    expect([inHand.pitchDiameter.least, inHand.pitchDiameter.most]).toEqual([6.739, 6.929]);
    expect([inHand.major.least, inHand.major.most]).toEqual([7.82, 8]);
    expect(inHand.level).toEqual(['major', 'pitchDiameter', 'minor', 'pitch']);
    expect(resolved({ designation: 'Tr8x2', pitch_diameter: 6.9 }).screw.inHand.pitchDiameter.most).toBeCloseTo(
      6.92,
      9,
    );
  });

  it('places the flanks by the class where only the crest was read: 7.91 of Tr8x2 is its middle', () => {
    const { inHand } = resolved({ form: 'trapezoidal', major: 7.91, pitch: 2, starts: 1 }).screw;
    // d2 6.739 to 6.929 about d 7.82 to 8
    expect(inHand.pitchDiameter.likely).toBeCloseTo(6.834 + (7.91 - 7.91), 3);
    expect(inHand.pitchDiameter.most - inHand.pitchDiameter.least).toBeCloseTo(0.19, 3);
    expect(inHand.crest.most).toBeCloseTo(0.09, 3);
  });

  it('refuses a form that contradicts the designation', () => {
    expect(() => resolved({ designation: 'Tr10x2', form: 'acme' })).toThrow(/does not agree with Tr10x2/);
    expect(resolved({ designation: 'Tr10x2', form: 'trapezoidal' }).screw.form).toBe('trapezoidal');
    expect(resolved({ designation: '1/4-20 UNC', form: 'metric-v' }).screw.form).toBe('metric-v');
  });
});
