import { describe, expect, it } from 'vitest';
import { check, design } from '../../../src/index.js';
import { changed, nutSheet } from '../../support/nut-sheets.js';

/** Every change that a message prints as `field: number mm`, by itself. */
function cures(message: string): [string, number][] {
  return [...message.matchAll(/\(((?:\w+\.)+\w+): ([\d.]+) mm\)/g)].map(([, path, value]) => [path!, Number(value)]);
}

function withField(sheet: Record<string, unknown>, path: string, value: number): Record<string, unknown> {
  const [section, field] = path.split('.') as [string, string];
  return changed(sheet, { [section]: { [field]: value } });
}

describe('a body that does not enter its carriage', () => {
  it.each([
    ['too wide by a little', { carriage: { bore: 16.9 } }, ['body.diameter', 'carriage.bore', 'flange.thickness']],
    ['with no wall to spare', { carriage: { bore: 13 } }, ['carriage.bore', 'flange.thickness']],
    ['in a bore that the screw just passes', { carriage: { bore: 10.02 } }, ['carriage.bore']],
  ] as const)('%s is told ways that were worked out, and each of them lets it in', (_, changes, named) => {
    const sheet = nutSheet(changes);
    const failing = (of: Record<string, unknown>) =>
      check(design(of))
        .checks.filter(({ verdict }) => verdict === 'fail')
        .map(({ id }) => id);
    const before = failing(sheet);
    const found = check(design(sheet)).checks.find(({ id }) => id === 'mount-bore')!;
    expect(found.verdict).toBe('fail');
    const told = cures(found.message);
    expect(told.map(([path]) => path)).toEqual(named);
    for (const [path, value] of told) {
      const after = withField(sheet, path, value);
      const row = check(design(after)).checks.find(({ id }) => id === 'mount-bore');
      expect(row === undefined || row.verdict === 'pass', `${path}: ${value}`).toBe(true);
      expect(
        failing(after).filter((id) => !before.includes(id)),
        `${path}: ${value}`,
      ).toEqual([]);
    }
  });
});
