import { describe, expect, it } from 'vitest';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';
import { KEYS, PLAIN } from './verdict-cases.js';

type Changes = Record<string, unknown>;
const HELD = changed(changed(PLAIN, KEYS), { screw: 'Tr8x2', duty: { motor: { torque: '0.06 N m' } } });
const keyed = (changes: Changes = {}) => findingOf(changed(HELD, changes), 'key-bending')!;

/**
 * Two keys of 8 × 3 mm, 3 mm high under a flange of 3.5 mm: the flat meets their ends 4 mm from the axis, T/8 N on each, at half their
 * height 1.5 mm · T/8 on 8·3²/6 = 12 mm³, twice for the corner: T/32 MPa of T N·mm. PETG at 25 °C, ((70 − 25)/(70 − 23))^0.75 = 0.9679 of
 * 22 MPa across the layers: half of it for a moment, 0.12 again and again.
 */
describe('keys that hold a nut, by hand', () => {
  it('bear a jam with all that the motor has', () => {
    const jam = keyed({ duty: { motor: { torque: '0.3 N m' } } });
    expect(jam.value).toBeCloseTo(300 / 32, 6);
    expect(jam.limit!.max).toBeCloseTo(0.5 * 22 * 0.9679, 2);
    expect(jam.verdict).toBe('pass');
    const strong = keyed({ duty: { motor: { torque: '0.4 N m' } } });
    expect(strong.value).toBeCloseTo(12.5, 6);
    expect(strong).toMatchObject({ verdict: 'fail', word: 'no' });
    expect(strong.message).toContain('pushed with 50 N by 400 N·mm of the motor in a jam, for a moment');
    expect(strong.message).toContain('; use hold: screws, less motor current, or a stronger material');
  });

  it('count the gear of the motor', () => {
    expect(keyed({ duty: { motor: { torque: '0.1 N m', gear: 3 } } }).value).toBeCloseTo(300 / 32, 6);
  });

  // tan λ = 2/(7π) = 0.0909, 0.2/cos 15° = 0.2071: T = F·3.5·0.2980/0.9812 = 1.063·F; the range of the class makes d2 a little less than 7
  it('bear the work again and again', () => {
    const work = keyed({ duty: { load: 100, motor: { torque: '0.2 N m' } } });
    expect(work.value! / (106.3 / 32)).toBeCloseTo(1, 1);
    expect(work.limit!.max).toBeCloseTo(0.12 * 22 * 0.9679, 2);
    expect(work.verdict).toBe('fail');
    expect(work.message).toMatch(
      /by the \d+ N·mm that raise its load, again and again; .*; use hold: screws, less load/,
    );
    // no more than the motor has
    expect(keyed({ duty: { load: 100, motor: { torque: '0.09 N m' } } }).value).toBeCloseTo(90 / 32, 6);
    expect(keyed({ duty: { load: 20, motor: { torque: '0.06 N m' } } }).verdict).toBe('pass');
  });

  it('ask for what turns the nut, unless what is told breaks them', () => {
    for (const [path, changes] of [
      ['duty.motor.torque', { duty: { motor: undefined } }],
      ['screw', { screw: undefined }],
      ['duty.load', { duty: { load: undefined } }],
      ['duty.temperature', { duty: { temperature: undefined } }],
    ] as const)
      expect(keyed(changes), path).toMatchObject({ word: 'not-told', missing: [path] });
    expect(keyed({ screw: undefined, duty: { motor: { torque: '2 N m' } } }).word).toBe('no');
    expect(keyed({ duty: { load: 400, motor: undefined } }).word).toBe('no');
    const nothing = keyed({ screw: undefined, duty: { motor: undefined } });
    expect(nothing.missing).toEqual(['duty.motor.torque', 'screw']);
  });

  it('are none where screws hold the nut', () => {
    expect(findingOf(PLAIN, 'key-bending')).toBeUndefined();
  });
});
