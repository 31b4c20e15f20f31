import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { FAMILY_BASE, METAL, SPRING } from '../support/family-sheet.js';
import { nutSheet } from '../support/nut-sheets.js';
import { ADAPTERS, SLEEVES } from '../support/odd-sheets.js';

const FOLDER = join(import.meta.dirname, '../../presets/sheets');
const shipped = Object.fromEntries(
  readdirSync(FOLDER)
    .filter((name) => name.endsWith('.yaml') && name !== 'demo-axis.yaml')
    .map((name) => [name, readFileSync(join(FOLDER, name), 'utf8')]),
);

const SHEETS: Readonly<Record<string, string | object>> = {
  ...shipped,
  ...SLEEVES,
  ...ADAPTERS,
  'nut that hangs': nutSheet({ mounting: 'flange-up' }),
  'nut that rests': nutSheet({ mounting: 'flange-down' }),
  'nut that rests on a flange flush with its end': nutSheet({ flange: { offset: 13 }, mounting: 'flange-down' }),
  'pair against backlash': { ...FAMILY_BASE, family: { kind: 'anti-backlash', spring: SPRING } },
  'split nut': { ...FAMILY_BASE, family: { kind: 'split' } },
  'holder that opens at the face': {
    ...FAMILY_BASE,
    flange: undefined,
    holes: undefined,
    family: { kind: 'holder', nut: METAL, pocket: 'face' },
  },
  'nut that stands by': { ...FAMILY_BASE, catch_nut: METAL },
};

function turned(sheet: string | object): { words: string; bodies: readonly boolean[] } {
  const made = design(sheet);
  const kind = kindOfDesign(KINDS, made);
  const words = kind.particulars(made).print?.face_up ?? '';
  return { words, bodies: kind.bodies(made).map(({ turnOver = false }) => turnOver) };
}

describe('bodies that are turned over on the bed', () => {
  it.each(Object.keys(SHEETS))('are those that the advice names: %s', (name) => {
    const { words, bodies } = turned(SHEETS[name]!);
    expect(bodies.includes(true)).toBe(/\(turn (the|its) file over\)/.test(words));
  });

  it('are there in these sheets', () => {
    const all = Object.values(SHEETS).map((sheet) => turned(sheet).bodies.includes(true));
    expect(new Set(all)).toEqual(new Set([true, false]));
  });

  it('asks for support and for what is not known only where it must', () => {
    const advice = (changes: object) => {
      const made = design(nutSheet({ ...changes }));
      return kindOfDesign(KINDS, made).particulars(made).print!;
    };
    expect(advice({ flange: { offset: 13 }, mounting: 'flange-down' })).toMatchObject({ support: 'none' });
    expect(advice({ mounting: 'flange-down' })).toMatchObject({ support: 'needed' });
    expect(advice({ mounting: undefined }).why).toContain('say duty.axis and mounting');
    expect(advice({ duty: { axis: 'horizontal' } }).why).not.toContain('say duty.axis');
    expect(advice({ flange: { offset: 5 }, duty: { axis: 'horizontal' } }).why).not.toContain('without support');
  });
});
