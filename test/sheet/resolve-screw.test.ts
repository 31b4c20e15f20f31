import { describe, expect, it } from 'vitest';
import { resolved } from '../support/resolved-screw.js';

describe('a screw that is resolved', () => {
  it('has the flank angle of its form, and is free where the sheet says another', () => {
    const measured = { form: 'trapezoidal', major: 8, pitch: 2 };
    expect(resolved(measured).screw).toMatchObject({ form: 'trapezoidal', flankAngle: 15 });
    expect(resolved({ ...measured, form: 'acme' }).screw).toMatchObject({ form: 'acme', flankAngle: 14.5 });
    expect(resolved({ ...measured, flank_angle: 15 }).screw.form).toBe('trapezoidal');
    expect(resolved({ ...measured, flank_angle: 20 }).screw).toMatchObject({ form: 'free', flankAngle: 20 });
  });

  it('is right-hand where nobody says, and knows that nobody did', () => {
    const measured = { form: 'trapezoidal', major: 8, pitch: 2 };
    expect(resolved(measured).screw).toMatchObject({ hand: 'right', handKnown: false });
    expect(resolved({ ...measured, hand: 'left' }).screw).toMatchObject({ hand: 'left', handKnown: true });
    expect(resolved({ designation: 'Tr10x2-LH' }).screw).toMatchObject({ hand: 'left', handKnown: true });
  });

  it('lists the class that stands for what was not read, and not where its flanks were', () => {
    const fields = (sheet: object) => resolved(sheet).assumptions.list.map(({ field }) => field);
    expect(fields({ designation: 'Tr8x2' })).toContain('screw.tolerance');
    expect(fields({ designation: 'Tr8x2', pitch_diameter: 6.9 })).not.toContain('screw.tolerance');
  });
});
