import { describe, expect, it } from 'vitest';
import { GUIDED, LOCATED } from '../../support/end-holder-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

type Tree = Readonly<Record<string, unknown>>;
const rating = (changes: Tree = {}, base: Tree = LOCATED) => findingOf(changed(base, changes), 'bearing-rating');
const WEAK = { torque: '0.02 N m' };

describe('a deep-groove bearing that carries the screw along its axis', () => {
  // 608: C0 = 13.24·6·3.5² = 973.14 N for the least balls, a quarter of it for good, half of it in a jam
  it('bears a quarter of C0 for good', () => {
    const { value, message, verdict } = rating({ duty: { load: 300 } })!;
    expect(verdict).toBe('fail');
    expect(value! / (300 / 243.285)).toBeCloseTo(1, 3);
    expect(message).toMatch(
      /^300 N for good of 243 N; a thrust bearing with a collar at the motor end .*, a larger bearing, or less load/,
    );
    expect(rating({ duty: { load: 243, motor: WEAK } })!.verdict).toBe('pass');
  });

  it('carries the weight of a screw that does not lie besides', () => {
    // π/4·7.85²·500 mm of steel are 1.86 N
    const stands = { mounting: 'motor-above', duty: { load: 242, motor: WEAK } };
    expect(rating(stands)!.value! / (243.86 / 243.285)).toBeCloseTo(1, 3);
    expect(rating(stands)!.verdict).toBe('fail');
    expect(rating({ ...stands, mounting: 'horizontal' })!.verdict).toBe('pass');
  });

  it('asks how long a standing screw is where 125 diameters of it are too heavy, and 100 mm are not', () => {
    // 7.85 mm of steel: 3.66 N and 0.37 N on 241 of 243.3 N
    const untold = { mounting: 'motor-above', duty: { load: 241, span: undefined, motor: WEAK } };
    expect(rating(untold)!.message).toBe('not judged: duty.span is missing');
    expect(rating({ ...untold, mounting: 'horizontal' })!.verdict).toBe('pass');
  });

  it('bears half of C0 when the axis jams', () => {
    // 0.4 N·m push with 2·400/(7·tan(λ + ρ')), tan λ = 2/(7π), tan ρ' = 0.05/cos 15°: 797.05 N
    const jam = rating({ duty: { motor: { torque: '0.4 N m' } } })!;
    expect(jam.value! / (797.05 / 486.57)).toBeCloseTo(1, 2);
    expect(jam.message).toMatch(/ of 487 N when the axis jams; /);
    // fails whatever the load may be
    expect(rating({ duty: { load: undefined, motor: { torque: '0.4 N m' } } })!.verdict).toBe('fail');
  });

  it('of the smallest series bears less than the plastic around it', () => {
    // 688: 14.8·8·2² = 473.6 N
    const small = { bearing: { designation: '688', width: 5 }, duty: { load: 200, motor: WEAK } };
    expect(rating(small)!.value! / (200 / 118.4)).toBeCloseTo(1, 3);
  });

  it('of the series 62 wears out before it is dented', () => {
    // 6204: 55·7^(2/3)·6.75^1.8/1.2 = 5215.8 N, over 100^(1/3) 1123.7 N; half of 4460.4 N stand
    const large = { screw: { designation: 'Tr20x4', major: 19.9 }, bearing: '6204' };
    const { value, message } = rating({ ...large, holes: { rectangle: [60, 60] }, duty: { load: 1200 } })!;
    expect(value! / (1200 / 1123.7)).toBeCloseTo(1, 3);
    expect(message).toMatch(/^1200 N of the 1124 N with which it lasts 100 million turns; /);
  });

  it('is open without load or motor, and not asked of a bearing that only guides', () => {
    expect(rating()!.message).toBe('not judged: duty.motor.torque is missing');
    expect(rating({ duty: { load: undefined, motor: WEAK } })!.message).toBe('not judged: duty.load is missing');
    expect(rating({}, GUIDED)).toBeUndefined();
  });
});
