import { describe, expect, it } from 'vitest';
import { check, design } from '../../src/index.js';
import { advise } from '../../src/pipeline/advise.js';
import { nutSheet } from '../support/nut-sheets.js';

const adviceOn = (sheet: object, id: string) => advise(sheet).checks.find((one) => one.check === id);
const verdictOf = (sheet: object, id: string) => check(design(sheet)).checks.find((one) => one.id === id)?.verdict;

describe('advice', () => {
  it('offers another class of fit where the sheet names one', () => {
    const tight = { ...nutSheet(), fit: 'close' };
    const open = advise(tight).checks.filter(({ cures }) => cures.some(({ set }) => 'fit' in set));
    expect(open.length).toBeGreaterThan(0);
    for (const { check: id, cures } of open) {
      const { set, reaches } = cures.find((one) => 'fit' in one.set)!;
      expect(verdictOf({ ...tight, ...set }, id)).toBe(reaches);
    }
  });

  it('offers another material of the list where nothing smaller does it', () => {
    const hot = nutSheet({ material: 'pla', duty: { axis: 'horizontal', load: 20, temperature: 55 } });
    expect(verdictOf(hot, 'heat')).toBe('fail');
    const [cure] = adviceOn(hot, 'heat')!.cures;
    expect(Object.keys(cure!.set)).toEqual(['material']);
    expect(verdictOf({ ...hot, ...cure!.set }, 'heat')).toBe(cure!.reaches);
    // and counts it among what it offers all together
    const { together } = advise(hot);
    expect(Object.keys(together!.set)).toContain('material');
    expect(together!.still).not.toContain('heat');
    // a material of its own has no name to change
    const own = { ...hot, material: { preset: 'pla', density: 1.2 } };
    expect(adviceOn(own, 'heat')!.cures).toEqual([]);
  });

  it('asks for a surer reading first where only its doubt keeps the check from passing', () => {
    const unsure = nutSheet({ carriage: { bore: '17.4 ± 0.3 mm', thickness: 8 } });
    const sure = nutSheet({ carriage: { bore: '17.4 ± 0.0003 mm', thickness: 8 } });
    const before = check(design(unsure)).checks.find(({ id }) => id === 'mount-bore')!;
    expect([before.verdict, before.word]).toEqual(['caution', 'perhaps']);
    expect(verdictOf(sure, 'mount-bore')).toBe('pass');
    expect(adviceOn(unsure, 'mount-bore')?.surer).toEqual(['carriage.bore']);
  });

  it('asks for none where the likely value misses the limit too', () => {
    const tight = nutSheet({ carriage: { bore: '16.5 ± 0.1 mm', thickness: 8 } });
    expect(adviceOn(tight, 'mount-bore')).not.toHaveProperty('surer');
  });
});
