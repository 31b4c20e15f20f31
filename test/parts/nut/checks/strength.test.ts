import { describe, expect, it } from 'vitest';
import { strongNut as nutSheet } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

const stalled = (changes: Record<string, unknown>) => findingOf(nutSheet(changes), 'thread-stall')!;

describe('teeth at the stall force, by hand', () => {
  it('are led by shear where the plastic is weak in it', () => {
    // Tr10x2 greased at 0.05: f/cos 15° = 0.05176, lead angle by 2/(π·9) = 0.07074; 360/(4.5·0.1225/(1 − 0.00366)) = 650.7 N
    const row = stalled({ material: { preset: 'petg', shear: '2 MPa' }, duty: { temperature: 23, feed: undefined } });
    // nut's major 10.8, tooth 1.302 mm wide there, half of (18 − 2·(0.5 + 0.825))/2 = 7.675 turns; half of 2 MPa for a moment
    expect(row.value! / (650.7 / (Math.PI * 10.8 * 1.302 * 7.675 * 0.5))).toBeCloseTo(1, 2);
    expect(row.message).toMatch(/MPa of shear, of 1 MPa for a moment at 23 °C/);
  });

  it.each([
    ['greased', 'greased'],
    ['dry', 'dry'],
    [undefined, 'greased'],
  ])('are pushed on a screw that is told %s as on a %s one', (grease, words) => {
    expect(stalled({ duty: { grease } }).message).toMatch(new RegExp(`; stalled on a ${words} screw `));
  });

  it('bear nothing where nothing may stand on the plastic, and no figure is made up', () => {
    expect(stalled({ material: 'pla', duty: { temperature: 60, feed: undefined } })).toMatchObject({
      verdict: 'fail',
      value: null,
      message: expect.stringMatching(/of 0 MPa for a moment at 60 °C; stalled .* N; a longer nut/),
    });
  });
});
