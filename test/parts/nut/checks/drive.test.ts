import { describe, expect, it } from 'vitest';
import { answerQuestions } from '../../../../src/output/answers/answer-questions.js';
import { check } from '../../../../src/pipeline/check.js';
import { design } from '../../../../src/pipeline/design.js';
import { FAMILY_BASE, METAL } from '../../../support/family-sheet.js';
import { nutSheet } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

type Changes = Record<string, unknown>;
const holds = (changes: Changes = {}) => findingOf(nutSheet(changes), 'drive-holding');

const WIDE = { body: { diameter: 32, length: 40 }, flange: { diameter: 52 }, holes: { circle: 42 } };
/** new grease and vibration leave 0.08 of friction, of whose angle on flanks of 15° seven tenths are safe */
const SAFE = 0.7 * Math.atan(0.08 / Math.cos(Math.PI / 12));
const taking = (max: number) => ({ limits: { 'drive-holding': { max } } });

describe('a vertical axis without power, by hand', () => {
  it.each<[string, string, number, Changes]>([
    // lead angles of 2 mm on π · 9, 3 mm on π · 22.5 and 8 mm on π · 7
    [
      'the axis may creep down when greased and shaken, at a lead of 2 mm on 10 mm: block it before work, do not rely on the screw',
      'caution',
      Math.atan(2 / (9 * Math.PI)) / SAFE,
      {},
    ],
    [
      'the axis normally holds, at a lead of 3 mm on 24 mm; do not rely on it where a fall would hurt',
      'pass',
      Math.atan(3 / (22.5 * Math.PI)) / SAFE,
      { ...WIDE, screw: 'Tr24x3' },
    ],
    [
      'the axis FALLS when the motor is off, at a lead of 8 mm on 8 mm: block it, and fit a brake, a counterweight or a finer lead',
      'caution',
      Math.atan(8 / (7 * Math.PI)) / SAFE,
      { screw: 'Tr8x8(P2)' },
    ],
    // the sheet takes more than 1.22, or less than 0.73
    [
      'the axis may creep down when greased and shaken, at a lead of 2 mm on 10 mm, 1.22 times what surely holds where the sheet takes 1.5',
      'pass',
      Math.atan(2 / (9 * Math.PI)) / SAFE,
      taking(1.5),
    ],
    [
      'the axis normally holds, at a lead of 3 mm on 24 mm, 0.73 times what surely holds where the sheet takes 0.5; a finer lead holds better',
      'caution',
      Math.atan(3 / (22.5 * Math.PI)) / SAFE,
      { ...WIDE, ...taking(0.5), screw: 'Tr24x3' },
    ],
  ])('%s', (message, verdict, value, changes) => {
    expect(holds(changes)).toMatchObject({ message, verdict, value: expect.closeTo(value, 6) });
  });

  it('is asked of a level axis never, and of one that nobody told where it would not hold', () => {
    const untold = { duty: { axis: undefined } };
    expect(holds({ duty: { axis: 'horizontal' } })).toBeUndefined();
    expect(holds(untold)!.missing).toEqual(['duty.axis']);
    expect(holds({ ...untold, ...WIDE, screw: 'Tr24x3' })).toMatchObject({ verdict: 'pass' });
  });
});

it('a screw so steep that no torque raises a load on it fails: 12 starts of 4.2 mm on π · 7.9 rise by 2.03, of 4 mm on π · 8 by 1.91', () => {
  // friction of 0.5 on flanks of 15° is 0.5176, and holds whatever rises by more than 1/0.5176 = 1.932
  const raised = (pitch: number) =>
    findingOf(nutSheet({ screw: { form: 'trapezoidal', major: 10, pitch, starts: 12 } }), 'drive-torque')!;
  expect(raised(4.2)).toMatchObject({ verdict: 'fail', value: null });
  expect(raised(4.2).message).toMatch(/^at friction 0\.5 no torque raises the load; .* take a finer lead$/);
  expect(raised(4).value).toBeGreaterThan(0);
});

describe('a motor that never raises its load', () => {
  // T = F·dm/2·(tan λ + µ')/(1 − tan λ·µ'), 80 N on 9 mm, tan λ = 2/9π = 0.07074
  //   µ = 0.08: µ' = 0.08282, T = 360·0.15356/0.99414 = 55.6 N·mm;  µ = 0.2: µ' = 0.20706, T = 360·0.27780/0.98535 = 101.5
  const raised = (torque: string, grease: string) =>
    findingOf(nutSheet({ duty: { load: 80, grease, motor: { torque } } }), 'drive-torque')!;

  it.each([
    ['greased', '0.0555 N m', 'fail'],
    ['greased', '0.0557 N m', 'caution'],
    ['dry', '0.1014 N m', 'fail'],
    ['dry', '0.1016 N m', 'caution'],
  ])('%s, %s: %s', (grease, torque, verdict) => {
    expect(raised(torque, grease).verdict).toBe(verdict);
  });

  it('says what it takes, and what the motor has', () => {
    expect(raised('0.04 N m', 'greased').message).toContain(
      'even at friction 0.08 it takes 56 N·mm, and the motor stalls at 40; a finer lead, a stronger motor, a gear or less load',
    );
  });
});

describe('a bought nut in a holder', () => {
  // T = F·dm/2·(tan λ + µ')/(1 − tan λ·µ'), 25 N on 7 mm, tan λ = 2/7π = 0.09095, µ = 0.2: µ' = 0.20706
  // 87.5 · 0.29801 / 0.98117 = 26.58 N·mm; a print is judged at 0.5
  const raised = (grease: string, torque: string) =>
    findingOf(
      {
        ...FAMILY_BASE,
        family: { kind: 'holder', nut: METAL },
        duty: { axis: 'vertical', load: 25, temperature: 25, grease, motor: { torque } },
      },
      'drive-torque',
    )!;

  it.each(['greased', 'dry'])('rubs as metal does: %s, 26.6 N·mm at friction 0.2', (grease) => {
    const { value, most, message, verdict } = raised(grease, '0.06 N m') as { value: number; most: number } & Record<
      'message' | 'verdict',
      string
    >;
    expect(value).toBeCloseTo(26.58, 1);
    expect(most).toBeCloseTo(26.58, 1);
    expect(verdict).toBe('pass');
    expect(message).toBe('27 N·mm at friction 0.2 of 30 N·mm that may be used; as of a metal nut');
  });

  it('fails where the motor stalls: dry above all of its torque, greased above what 0.08 takes', () => {
    expect(raised('dry', '0.0265 N m').verdict).toBe('fail');
    expect(raised('dry', '0.0267 N m').verdict).toBe('caution');
    // µ' = 0.08282: 87.5 · 0.17377 / 0.99247 = 15.32
    expect(raised('greased', '0.0152 N m').verdict).toBe('fail');
    expect(raised('greased', '0.0154 N m').verdict).toBe('caution');
  });
});

it('an axis that falls is told before layers that are off the grid', () => {
  const sheet = nutSheet({ screw: 'Tr8x8(P2)', duty: { layer_heights: [0.1] } });
  const { checks } = check(design(sheet));
  const rows = answerQuestions([{ id: 'axis', title: 'The axis?' }], checks);
  expect(rows[0]!.check).toBe('drive-holding');
  expect(checks.find(({ id }) => id === 'drive-layer-grid')!.verdict).toBe('caution');
});

it('a screw sags where it lies, and not where it stands', () => {
  const row = (axis: string) => findingOf(nutSheet({ duty: { axis, span: 500, ends: 'fixed-free' } }), 'drive-sag');
  expect(row('horizontal')!.word).toBe('but');
  expect(row('vertical')).toBeUndefined();
});
