import { describe, expect, it } from 'vitest';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { changed, nutSheet } from '../../support/nut-sheets.js';

const PATTERN = { count: 4, circle: 24, start: 45, diameter: 3.6, screw: 'M3' };
const ROUGH = { duty: { span: 260, ends: 'supported' }, carriage: { holes: PATTERN } };

describe.each([
  ['mount-float', { holes: { fit: 'fine' } }],
  ['mount-binding', ROUGH],
] as const)('what is told against %s', (id, changes) => {
  const sheet = nutSheet(changes);
  const made = design(sheet);
  const rowOf = (of: object) => check(design(of)).checks.find((row) => row.id === id);
  const before = check(made)
    .checks.filter(({ verdict }) => verdict === 'fail')
    .map((row) => row.id);

  it('was tried on the sheet and leads there, and nothing else is told', () => {
    const row = rowOf(sheet)!;
    expect(row.verdict).not.toBe('pass');
    const told = (made.remedies ?? []).filter((one) => one.check === id);
    expect(row.message).toMatch(told.length > 0 ? /holes\.diameter: [\d.]+ mm/ : /no wider hole or bore alone/);
    for (const { set, words } of told) {
      expect(row.message).toContain(words);
      const after = Object.entries(set).reduce<object>((one, [path, value]) => {
        const [section = '', field = ''] = path.split('.');
        return changed(one as Parameters<typeof changed>[0], { [section]: { [field]: value } });
      }, sheet);
      expect(rowOf(after)?.verdict, words).toBe('pass');
      const fails = check(design(after))
        .checks.filter(({ verdict }) => verdict === 'fail')
        .map((one) => one.id);
      expect(fails.filter((one) => !before.includes(one))).toEqual([]);
    }
  });
});

describe('a nut whose holes are fine', () => {
  it('is told how wide to make them', () => {
    const told = design(nutSheet({ holes: { fit: 'fine' } })).remedies ?? [];
    expect(told.filter(({ check: of }) => of === 'mount-float')).toHaveLength(1);
  });
});
