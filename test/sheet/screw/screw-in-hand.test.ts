import { describe, expect, it } from 'vitest';
import { resolved } from '../../support/resolved-screw.js';

describe('a screw in hand', () => {
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
});
