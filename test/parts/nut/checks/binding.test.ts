import { describe, expect, it } from 'vitest';
import { changed, nutSheet } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

const READ = {
  designation: 'Tr10x2',
  major: '10 ± 0 mm',
  pitch: '2 ± 0 mm',
  pitch_diameter: '9 ± 0 mm',
  minor: '7.5 ± 0 mm',
};
const binding = (circle: string, changes: Record<string, unknown> = {}) =>
  findingOf(
    changed(
      nutSheet({
        screw: READ,
        material: { preset: 'pa12', shrink: { plane: '0 ± 0 %' } },
        holes: { circle: '27 ± 0 mm' },
        carriage: { holes: { count: 4, circle, start: 45, diameter: '3.6 ± 0 mm', screw: 'M3' } },
        duty: { span: 260, ends: 'supported' },
      }),
      changes,
    ),
    'mount-binding',
  )!;

describe('a nut whose pattern misses that of its carriage', () => {
  it('bends the screw by what it misses: 48·E·I/L³ · (1.5 − 0.6 ± 0.025 ± 0.1) mm', () => {
    // circles of 27 and 24 mm miss by 1.5 mm; M3 in two holes of 3.6 mm moves by 0.6; holes scatter by 0.05 mm, places by 0.1
    const stiffness = (48 * 207000 * Math.PI * 7.5 ** 4) / 64 / 260 ** 3;
    const row = binding('24 ± 0 mm');
    expect(row.least).toBeCloseTo(stiffness * 0.775, 6);
    expect(row.value).toBeCloseTo(stiffness * 0.9, 6);
    expect(row.most).toBeCloseTo(stiffness * 1.025, 6);
    expect(row.message).toMatch(/^the screw may be 1\.02 mm aside/);
  });

  it('leaves it alone where it moves further than that: 0.6 − 0.025 − 0.1 mm are left', () => {
    const row = binding('27 ± 0 mm');
    expect([row.least, row.value, row.most]).toEqual([0, 0, 0]);
    expect(row.message).toBe('the nut floats 0.6 mm and finds the screw');
  });

  it('wants span and ends only where it bends the screw', () => {
    for (const field of ['span', 'ends']) {
      const untold = { duty: { [field]: undefined } };
      expect(binding('24 ± 0 mm', untold)).toMatchObject({ word: 'not-told', missing: [`duty.${field}`] });
      expect(binding('27 ± 0 mm', untold)).toMatchObject({ verdict: 'pass', most: 0 });
    }
  });

  it('counts half of the greatest shrink of its circle: 27 · 1.2 % / 2 = 0.162 mm', () => {
    // the hole shrinks too: half of 0.036 ± 0.0072 mm; 1.5 − 0.582 + 0.025 + 0.0036 + 0.1 + 0.162
    const row = binding('24 ± 0 mm', {
      material: { shrink: { plane: '1 ± 0.2 %' } },
      printer: { compensation: { shrink: 'none', holes: 'file' } },
    });
    expect(row.message).toMatch(/^the screw may be 1\.21 mm aside/);
  });
});
