import { describe, expect, it } from 'vitest';
import { resolved } from '../../support/resolved-screw.js';

describe('a sheet that contradicts itself', () => {
  it('refuses readings that the designation cannot have', () => {
    expect(() => resolved({ designation: 'Tr8x2', major: 7.95, pitch: 2.54 })).toThrow(
      /screw\.pitch.*2\.54 mm.*does not agree with Tr8x2, whose pitch is 2 mm/,
    );
    expect(() => resolved({ designation: 'Tr8x2', crests: { count: 10, length: '25.4 mm' } })).toThrow(/screw\.crests/);
    expect(() => resolved({ designation: 'Tr8x2', major: 9.9 })).toThrow(/screw\.major.*is 8 mm over its crests/);
    expect(resolved({ designation: 'M8', major: 7.6 }).screw.major.likely).toBe(7.6);
  });

  it('refuses a form that contradicts the designation', () => {
    expect(() => resolved({ designation: 'Tr10x2', form: 'acme' })).toThrow(/does not agree with Tr10x2/);
    expect(resolved({ designation: 'Tr10x2', form: 'trapezoidal' }).screw.form).toBe('trapezoidal');
    expect(resolved({ designation: '1/4-20 UNC', form: 'metric-v' }).screw.form).toBe('metric-v');
  });

  it.each([
    [
      'starts and travel',
      { form: 'trapezoidal', major: 8, pitch: 2, starts: 2, travel: { turns: 10, length: '80 mm' } },
      /screw\.travel: 8 mm a turn; .*starts 2 × pitch 2 mm = 4 mm/,
    ],
    ['starts and lead', { designation: 'Tr8x2', starts: 2, lead: '8 mm' }, /screw\.lead: 8 mm a turn; /],
    ['hand and name', { designation: 'Tr10x2-LH', hand: 'right' }, /screw\.hand: right; .*which is left-hand/],
    [
      'a pitch that leaves no core',
      { form: 'trapezoidal', major: 5, pitch: 5 },
      /screw\.pitch: is too coarse for a major diameter of 5 mm/,
    ],
    [
      'a minor diameter past the major',
      { designation: 'Tr8x2', minor: 8.5 },
      /screw\.minor: 8\.5 mm; must be below .*8 mm/,
    ],
    [
      'a crest below the flanks',
      { designation: 'Tr8x2', major: 7, minor: 5 },
      /screw\.major: 7 mm; must be above the pitch diameter, 7 mm/,
    ],
    [
      'flanks past the crest',
      { designation: 'Tr8x2', pitch_diameter: 8.1 },
      /screw\.pitch_diameter: 8\.1 mm; must lie between minor 5\.5 mm and major 8 mm/,
    ],
    [
      'wires past the crest',
      { designation: 'Tr8x2', wires: { wire: 1, over: 12 } },
      /screw\.wires: .*must lie between/,
    ],
  ])('refuses %s', (_, sheet, message) => {
    expect(() => resolved(sheet)).toThrow(message);
  });

  // ISO 2903: Tr 9x2-7e has 7.739 to 7.929 mm, so Tr8x2 6.739 to 6.929; 0.1 + 0.042·2 = 0.184 mm: three times below, once above
  it('refuses flanks that neither class, wear nor reading explain', () => {
    const flanks = (read: string | number) => resolved({ designation: 'Tr8x2', major: 7.95, pitch_diameter: read });
    expect(() => flanks('5.8 mm')).toThrow(
      /screw\.pitch_diameter: 5\.8 mm; does not agree with Tr8x2, whose pitch diameter is 6\.74 to 6\.929 mm/,
    );
    expect(() => flanks('6.15 ± 0.03 mm')).toThrow(/screw\.pitch_diameter/);
    expect(flanks('6.17 ± 0.03 mm').screw.pitchDiameter.likely).toBe(6.17);
    expect(flanks('7.13 ± 0.03 mm').screw.pitchDiameter.likely).toBe(7.13);
    expect(() => flanks('7.15 ± 0.03 mm')).toThrow(/screw\.pitch_diameter/);
    // a screw without a name is what it reads
    expect(resolved({ form: 'trapezoidal', major: 7.95, pitch: 2, pitch_diameter: 6 }).screw.pitchDiameter.likely).toBe(
      6,
    );
  });

  it('tells all that a name contradicts at once', () => {
    const all = /screw\.pitch: 4 mm[\s\S]*screw\.major: 12 mm[\s\S]*screw\.form: acme/;
    expect(() => resolved({ designation: 'Tr8x2', pitch: 4, major: 12, form: 'acme' })).toThrow(all);
  });
});
