import { describe, expect, it } from 'vitest';
import { roundShaft } from '../../../src/parts/common/bore.js';
import { judgeBesideJoint, otherWay } from '../../../src/parts/common/both-ways.js';
import { exactly } from '../../../src/units/measured.js';

const carried = { thrustBearing: true, locatingHolder: false };
// steel of 8 mm, 300 mm long: 50.27 mm² · 300 mm · 7.85e-6 kg/mm³ · 9.81 = 1.161 N
const screw = roundShaft(exactly(8));
const upright = { ...carried, mounting: 'motor-above', screw, load: 40, span: 300 } as const;
const level = { ...carried, mounting: 'horizontal' } as const;

describe('what pushes a screw off its thrust bearing', () => {
  it('is what the work lifts it by, less what weighs on it', () => {
    expect(otherWay({ ...upright, upward: 150 })!.force).toBeCloseTo(150 - 40 - 1.161, 2);
    expect(otherWay({ ...upright, upward: 41.2 })!.force).toBeCloseTo(0.039, 2);
    expect(otherWay({ ...upright, upward: 41.1 })).toBeUndefined();
    const { span: _, ...endless } = upright;
    expect(otherWay({ ...endless, upward: 40 })).toBeUndefined();
    expect(otherWay({ ...upright, mounting: 'motor-below', upward: 42 })!.words).toMatch(/42 N of which 41\.2 N weigh/);
  });

  it('counts nothing for what nobody tells', () => {
    const { span: _, ...endless } = upright;
    const { load: __, ...light } = upright;
    const { mounting: ___, ...unplaced } = upright;
    expect(otherWay({ ...endless, upward: 41 })!.force).toBeCloseTo(1, 9);
    expect(otherWay({ ...light, upward: 3 })!.force).toBeCloseTo(3 - 1.161, 2);
    expect(otherWay(upright)).toBeUndefined();
    expect(otherWay({ ...unplaced, upward: 500 })).toBeUndefined();
    expect(otherWay({ ...light, upward: 1 })).toBeUndefined();
  });

  it('is the load of a level screw, known or not', () => {
    expect(otherWay({ ...level, load: 25 })).toMatchObject({ force: 25 });
    expect(otherWay(level)).toStrictEqual({ words: 'a level screw pushes both ways' });
  });
});

describe('a joint beside a thrust bearing', () => {
  it('asks what lifts the screw, unless two collars hold it', () => {
    expect(judgeBesideJoint({ axial: upright })).toMatchObject({ kind: 'not-judged', missing: ['duty.upward'] });
    expect(judgeBesideJoint({ axial: upright, isPaired: true })).toBeUndefined();
    const { mounting: _, ...unplaced } = { ...upright, upward: 0 };
    expect(judgeBesideJoint({ axial: unplaced })).toMatchObject({ kind: 'not-judged', missing: ['mounting'] });
    expect(judgeBesideJoint({ axial: unplaced, isPaired: true })).toBeUndefined();
    expect(judgeBesideJoint({ axial: { ...upright, upward: 0 } })).toBeUndefined();
  });

  it('asks for a second collar, and fails without one', () => {
    const axial = { ...upright, upward: 150 };
    expect(judgeBesideJoint({ axial })).toMatchObject({ kind: 'not-judged', missing: ['pair'] });
    expect(judgeBesideJoint({ axial, isPaired: false })).toMatchObject({ verdict: 'fail' });
    expect(judgeBesideJoint({ axial, isPaired: true })).toMatchObject({ verdict: 'pass' });
  });

  it('lets what else carries carry, and a second collar first', () => {
    const axial = { ...upright, upward: 150 };
    const motor = () => 'the motor';
    expect(judgeBesideJoint({ axial, isPaired: false }, motor)).toMatchObject({
      verdict: 'pass',
      message: 'the motor',
    });
    expect(judgeBesideJoint({ axial, isPaired: true }, motor)).not.toMatchObject({ message: 'the motor' });
    expect(judgeBesideJoint({ axial, isPaired: false }, () => undefined)).toMatchObject({ verdict: 'fail' });
  });

  it('says nothing without a thrust bearing, or beside a holder that locates the screw', () => {
    const axial = { ...upright, upward: 150 };
    expect(judgeBesideJoint({ axial: { ...axial, thrustBearing: false } })).toBeUndefined();
    expect(judgeBesideJoint({ axial: { ...axial, locatingHolder: true } })).toBeUndefined();
  });
});
