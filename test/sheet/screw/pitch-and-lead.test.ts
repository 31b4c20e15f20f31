import { describe, expect, it } from 'vitest';
import { resolved } from '../../support/resolved-screw.js';

const FOUR_STARTS = { form: 'trapezoidal', major: 7.95, starts: 4 };

describe('pitch, lead and starts of a screw', () => {
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
});
