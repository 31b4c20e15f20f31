import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/fit/check.js';
import { check, design } from '../../../src/index.js';
import { nutSheet } from '../../support/nut-sheets.js';

function found(id: string, changes: Record<string, unknown> = {}): Finding | undefined {
  return check(design(nutSheet(changes))).checks.find((row) => row.id === id);
}

const PATTERN = { count: 4, circle: '27 ± 0 mm', start: 45, diameter: 3.6, screw: 'M3' };

/** [check, what breaks it, verdict, its neighbour that passes]. */
const CASES: readonly [string, Record<string, unknown>, 'caution' | 'fail', Record<string, unknown>][] = [
  // area of all turns: π·9·0.85·18/2 = 216.3 mm², half of them carry; PA12 bears 1 MPa
  ['thread-pressure', { duty: { load: 110 } }, 'caution', { duty: { load: 107 } }],
  ['thread-pressure', { duty: { load: 330 } }, 'fail', { duty: { load: 30 } }],
  // root π·10.8·1.3022 = 44.18 mm² a turn, 4.5 of them; 20/3 MPa: 1325 N
  ['thread-shear', { duty: { load: 1400 } }, 'fail', { duty: { load: 1300 } }],
  ['thread-bending', { duty: { load: 1100 } }, 'caution', { duty: { load: 900 } }],
  ['flange-bending', { flange: { thickness: 2 }, duty: { load: 120 } }, 'caution', { duty: { load: 120 } }],
  ['creep', { duty: { load: 300, temperature: 60 } }, 'caution', { duty: { load: 300, temperature: 25 } }],
  ['wear-pv', { duty: { load: 300, feed: 30, moving: '100 %' } }, 'fail', { duty: { load: 100 } }],
  [
    'wear-pv',
    { material: { preset: 'petg', shrink: undefined }, duty: { feed: 20, moving: '100 %', grease: 'dry' } },
    'caution',
    {},
  ],
  ['wear-depth', { material: 'pla', duty: { load: 60 } }, 'caution', { material: 'pla', duty: { load: 20 } }],
  ['moisture', { material: 'pa6', body: { length: 24 } }, 'caution', {}],
  [
    'moisture',
    { material: { moisture_growth: '3 %' } },
    'caution',
    { material: { moisture_growth: '0.1 %' }, carriage: { bore: 20 } },
  ],
  [
    'mount-binding',
    { carriage: { holes: { ...PATTERN, circle: 24 } }, duty: { span: 100, ends: 'fixed-fixed' } },
    'fail',
    { carriage: { holes: PATTERN } },
  ],
  [
    'mount-binding',
    { carriage: { bore: 17.02 }, duty: { span: 200, ends: 'supported' } },
    'caution',
    { carriage: { bore: 17.6 } },
  ],
];

describe('strength and life', () => {
  it.each(CASES)('%s notices %j as a %s, and lets its neighbour pass', (id, broken, verdict, neighbour) => {
    expect(found(id, broken)?.verdict).toBe(verdict);
    expect(found(id, neighbour)?.verdict).toBe('pass');
  });

  it('half the turns carry: 30 N / (π·9·0.85·18/2/2) = 0.2774 MPa', () => {
    expect(found('thread-pressure')!.value).toBeCloseTo(30 / (Math.PI * 9 * 0.85 * 4.5), 6);
  });

  it('PV takes all turns and the time in motion: 0.1387 MPa × 85.0 mm/s × 0.15', () => {
    // 6 mm/s × √((π·9/2)² + 1) = 6 × 14.172 = 85.03 mm/s
    const sliding = 6 * Math.hypot((Math.PI * 9) / 2, 1);
    expect(found('wear-pv')!.value).toBeCloseTo(((30 / (Math.PI * 9 * 0.85 * 9)) * sliding * 0.15) / 1000, 6);
  });

  it.each(['thread-pressure', 'thread-shear', 'thread-bending', 'flange-bending', 'creep', 'wear-pv'])(
    '%s is not judged without a load',
    (id) => {
      expect(found(id, { duty: { load: undefined } })).toMatchObject({
        verdict: 'caution',
        value: null,
        message: 'not judged: duty.load is missing',
      });
    },
  );

  it('takes a limit of the sheet', () => {
    expect(found('thread-pressure', { limits: { 'thread-pressure': 0.2 } })?.verdict).toBe('caution');
  });

  it('leaves out what does not apply', () => {
    expect(found('moisture', { material: 'pla' })).toBeUndefined();
    expect(found('wear-depth')).toBeUndefined();
    expect(found('flange-bending', { flange: undefined, holes: undefined })).toBeUndefined();
    expect(found('creep', { duty: { axis: 'horizontal' } })).toBeUndefined();
  });
});
