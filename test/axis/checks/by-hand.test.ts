import { describe, expect, it } from 'vitest';
import type { AxisDesign, AxisPart } from '../../../src/axis/axis-design.js';
import { AXIS_CHECKS } from '../../../src/axis/checks/index.js';
import type { PartFacts } from '../../../src/axis/facts.js';
import { type Known, told } from '../../../src/axis/known.js';
import type { Along } from '../../../src/axis/lengths.js';
import type { Bounds } from '../../../src/judge/check.js';
import { limitsInForce } from '../../../src/judge/limits-in-force.js';
import { finding } from '../../../src/judge/run-checks.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';
import { resolveScrew } from '../../../src/sheet/resolve-screw.js';
import { exactly, plusMinus } from '../../../src/units/measured.js';

type Some = Record<string, unknown>;

const screw = (designation: string, more: Some = {}) => ({
  ...resolveScrew({ designation }, 0.03, new Assumptions()),
  ...more,
});
const TR10 = screw('Tr10x2');
const part = (role: string, facts: PartFacts, more: Some = {}): AxisPart =>
  ({ role, facts, own: {}, sheet: {}, kind: { kind: role }, ...more }) as unknown as AxisPart;
const NUT = part('nut', { nut: { length: 18, floats: false, printed: true }, screw: TR10 });
const JOINT = part('coupling', { joint: { kind: 'flexible', motorBore: exactly(5), screwBore: exactly(10) } });
const AXIS = {
  part: 'axis',
  name: 'a',
  screw: TR10,
  sheet: {},
  parts: [NUT, JOINT],
  thrustBearing: false,
  follows: {},
  duty: {},
  drive: {},
  along: {},
};

/** What a check finds of an axis of a few plain facts. */
function found(id: string, more: Some = {}, change?: Bounds) {
  const check = AXIS_CHECKS.find((one) => one.id === id)!;
  const outcome = check.run({ ...AXIS, ...more } as unknown as AxisDesign, limitsInForce(check.limits, change));
  return outcome && finding(check, outcome, change);
}

describe('one screw through all', () => {
  it('is asked of the parts that are made for one', () => {
    expect(found('axis-screw')).toMatchObject({ word: 'yes', value: 0, message: 'nut are made for one screw' });
    const other = part('old-nut', { screw: screw('Tr10x3') });
    const row = found('axis-screw', { parts: [NUT, other, JOINT] })!;
    expect(row).toMatchObject({ word: 'no', value: 1 });
    expect(row.message).toMatch(/^axis and old-nut: .*; say the screw once, above$/);
  });

  it('is one by its flanks and roots too, beyond what both readings are uncertain by and 0.05 mm', () => {
    const axis = screw('Tr10x2', { pitchDiameter: plusMinus(8.9, 0.03), minor: plusMinus(7.6, 0.03) });
    const with_ = (more: Some) =>
      found('axis-screw', { screw: axis, parts: [part('nut', { screw: { ...axis, ...more } as typeof TR10 })] })!;
    // 8.9 − 0.03 − (8.2 + 0.03) = 0.64
    const other = with_({ pitchDiameter: plusMinus(8.2, 0.03) });
    expect(other).toMatchObject({ word: 'no', value: 1 });
    expect(other.message).toContain('nut: pitch diameter 8.9 and 8.2 mm');
    expect(with_({ minor: plusMinus(7, 0.03) }).message).toContain('nut: minor diameter 7.6 and 7 mm');
    // 0.04 and 0.06 mm beyond 0.03 on either side
    expect(with_({ pitchDiameter: plusMinus(9, 0.03) }).word).toBe('yes');
    expect(with_({ pitchDiameter: plusMinus(9.02, 0.03) }).word).toBe('no');
  });

  it('has one hand', () => {
    expect(found('axis-hand')).toMatchObject({ word: 'yes', value: 0, message: 'all are right-hand' });
    const left = part('left', { screw: screw('Tr10x2-LH') });
    expect(found('axis-hand', { parts: [NUT, left, JOINT] })).toMatchObject({
      word: 'no',
      value: 1,
      message: 'the axis is right-hand, left the other; say the hand once, above',
    });
    expect(found('axis-hand', { screw: screw('Tr10x2', { handKnown: false }) })).toMatchObject({
      word: 'not-told',
      missing: ['screw.hand'],
    });
  });
});

describe('bores against their shafts', () => {
  const sheet = (diameter?: number, preset?: string) => ({
    sheet: {
      motor: { ...(preset ? { preset } : {}), ...(diameter ? { shaft: { diameter: { value: diameter } } } : {}) },
    },
  });
  const joined = (motorBore: number | undefined, screwBore: number | undefined, own: Some = {}) => [
    part(
      'coupling',
      {
        joint: {
          kind: 'flexible',
          ...(motorBore === undefined ? {} : { motorBore: exactly(motorBore) }),
          ...(screwBore === undefined ? {} : { screwBore: exactly(screwBore) }),
        },
      },
      { sheet: own },
    ),
  ];

  it('are off by the worse of both', () => {
    expect(found('axis-bores', sheet(5))).toMatchObject({
      word: 'yes',
      value: 0,
      message: '5 mm for the motor, 10 mm for the screw',
    });
    expect(found('axis-bores', { ...sheet(5), parts: joined(5.12, 10) })!.value).toBeCloseTo(0.12, 9);
    expect(found('axis-bores', { ...sheet(5.12), parts: joined(5, 10) })!.value).toBeCloseTo(0.12, 9);
    expect(found('axis-bores', { ...sheet(5), parts: joined(5.02, 10.07) })!.value).toBeCloseTo(0.07, 9);
  });

  it('may be narrower than the crests by 0.1 mm, and by as much as a turned end is', () => {
    expect(found('axis-bores', { ...sheet(5), parts: joined(5, 9.9) })!.value).toBe(0);
    expect(found('axis-bores', { ...sheet(5), parts: joined(5, 9.85) })!.value).toBeCloseTo(0.15, 9);
    const turned = found('axis-bores', { ...sheet(5), parts: joined(5, 8, { turned_end: 8 }) })!;
    expect(turned).toMatchObject({ word: 'yes', value: 0 });
    expect(turned.message).toMatch(/8 mm for the screw, its end turned down to 8 mm$/);
    // an end that is turned to more than the crests is none
    expect(found('axis-bores', { ...sheet(5), parts: joined(5, 10.3, { turned_end: 10.3 }) })!.value).toBeCloseTo(
      0.3,
      9,
    );
  });

  it('of one end alone are told of that', () => {
    const one = found('axis-bores', { ...sheet(5), parts: joined(5.1, undefined) })!;
    expect(one.value).toBeCloseTo(0.1, 9);
    expect(one.message).toBe('5.1 mm for the motor');
  });

  it('want the shaft of the motor, or the frame that has one', () => {
    expect(found('axis-bores', sheet())).toMatchObject({ word: 'not-told', missing: ['motor.shaft'] });
    expect(found('axis-bores', { sheet: {} })).toMatchObject({ word: 'not-told', missing: ['motor.shaft'] });
    expect(found('axis-bores', sheet(undefined, 'frame-17'))).toMatchObject({ word: 'yes', value: 0 });
    expect(found('axis-bores', { ...sheet(5), parts: joined(undefined, 10) })).toMatchObject({ word: 'not-told' });
    expect(found('axis-bores', { ...sheet(5), parts: [NUT] })).toBeUndefined();
  });
});

describe('what a part says of its neighbours', () => {
  const said = (kind: string, own: Some, more: Some = {}) =>
    found('axis-told', { parts: [part('p', {}, { own, kind: { kind } })], ...more })!;
  const follows = {
    thrust_bearing: 'yes',
    coupling: 'disc',
    nut: 'rigid',
    duty: { span: '280 mm', speed: 180, ends: 'fixed-free' },
  };

  it('must be what is there', () => {
    expect(said('end-holder', { coupling: 'disc' }, { follows })).toMatchObject({
      word: 'yes',
      value: 0,
      message: 'none',
    });
    const other = said('end-holder', { coupling: 'rigid', nut: 'floating' }, { follows });
    expect(other).toMatchObject({ word: 'no', value: 2 });
    expect(other.message).toMatch(
      /^p says coupling: rigid where it is disc; p says nut: .*; leave it out, and it follows/,
    );
  });

  it('counts what the axis says against its own collar', () => {
    const parts = [NUT, part('ring', { collar: true })];
    expect(found('axis-told', { parts, sheet: { thrust_bearing: 'no' }, follows })).toMatchObject({
      word: 'no',
      value: 1,
      message: 'the axis says thrust_bearing: no where ring sits on one; leave it out, and it follows from the axis',
    });
    expect(found('axis-told', { parts, sheet: { thrust_bearing: 'yes' }, follows })!.value).toBe(0);
    expect(found('axis-told', { parts: [NUT], sheet: { thrust_bearing: 'no' }, follows })!.value).toBe(0);
  });

  it('is none of theirs where another kind has a field of that name for itself', () => {
    expect(
      said(
        'nut',
        { coupling: 'rigid', nut: 'floating', mounting: 'flange-up' },
        { follows, sheet: { mounting: 'horizontal' } },
      ).value,
    ).toBe(0);
    expect(said('coupling', { mounting: 'motor-below' }, { follows, sheet: { mounting: 'horizontal' } })).toMatchObject(
      { value: 1 },
    );
    expect(said('coupling', { thrust_bearing: 'no', locating_holder: 'no' }, { follows })).toMatchObject({ value: 1 });
  });

  it('counts of its duty what the whole axis does', () => {
    expect(said('nut', { duty: { ends: 'fixed-fixed', speed: 200 } }, { follows })).toMatchObject({ value: 2 });
    // a temperature is a part's own, and so is a load of which the axis tells nothing
    expect(said('nut', { duty: { temperature: '80 C', load: 5 } }, { follows }).value).toBe(0);
    // a feed is read before it is compared: 10 mm/s is 10
    expect(said('nut', { duty: { feed: '10 mm/s' } }, { sheet: { duty: { feed: 10 } } }).value).toBe(0);
    expect(said('nut', { duty: { feed: 2 } }, { sheet: { duty: { feed: 10 } } }).message).toMatch(
      /^p says duty\.feed: 2 where it is 10; /,
    );
    expect(said('nut', { duty: { axis: 'vertical' } }, { sheet: { mounting: 'horizontal' } })).toMatchObject({
      value: 1,
    });
    expect(said('nut', { duty: { axis: 'horizontal' } }, { sheet: { mounting: 'horizontal' } }).value).toBe(0);
    expect(said('nut', { duty: { axis: 'vertical' } }, { sheet: { mounting: 'motor-below' } }).value).toBe(0);
    expect(said('nut', { duty: { axis: 'horizontal' } }, { sheet: { mounting: 'motor-above' } }).value).toBe(1);
    expect(said('nut', { duty: { axis: 'horizontal' } }).value).toBe(0);
  });

  it('may be a greater force than the axis has, and a smaller one in a nut alone, which may share it with another', () => {
    const sheet = { duty: { load: 200, upward: 50 } };
    const light = { duty: { load: '5 N', upward: 0 } };
    const joint = said('coupling', light, { sheet });
    expect(joint).toMatchObject({ word: 'no', value: 2 });
    expect(joint.message).toMatch(
      /^p says duty\.load: 5 where it is 200; p says duty\.upward: 0 where it is 50; leave/,
    );
    expect(said('coupling', { duty: { load: 200, upward: '60 N' } }, { sheet }).value).toBe(0);
    expect(said('coupling', light, { sheet: { duty: {} } }).value).toBe(0);
    const half = part('left', { nut: { floats: false, printed: true } }, { own: { duty: { load: 100 } } });
    expect(found('axis-told', { parts: [half, { ...half, role: 'right' }], sheet, follows })!.value).toBe(0);
    expect(found('axis-told', { parts: [half, JOINT], sheet, follows })!.value).toBe(1);
    expect(found('axis-told', { parts: [half], sheet, follows })!.message).toMatch(/^left says duty\.load: 100 where/);
    expect(found('axis-told', { parts: [JOINT], sheet, follows })!.value).toBe(0);
    const short = part('left', half.facts, { own: { duty: { span: '100 mm' } } });
    expect(found('axis-told', { parts: [short], sheet, follows })!.message).toMatch(/^left says duty\.span: 100 where/);
    // together they bear what the axis tells, each that tells nothing the whole
    const nuts = (...loads: (number | undefined)[]) =>
      loads.map((load, i) => part(`n${i}`, { nut: { floats: false, printed: true } }, { own: { duty: { load } } }));
    const shared = (...loads: (number | undefined)[]) => found('axis-told', { parts: nuts(...loads), sheet, follows })!;
    expect(shared(120, 80).value).toBe(0);
    expect(shared(5, undefined).value).toBe(0);
    expect(shared(120, 75).message).toMatch(/^n0, n1 together say duty\.load: 195 where it is 200; /);
    // of 280 mm free by the lengths: 267 mm are those less a twentieth, 266 mm less than that
    const span = (told: string) => said('end-holder', { duty: { span: told } }, { follows }).value;
    expect([span('300 mm'), span('267 mm'), span('266 mm')]).toEqual([0, 0, 1]);
    expect(said('nut', { duty: { span: 300 } }, { follows, sheet: { duty: { span: 400 } } }).value).toBe(1);
    const work = { sheet: { duty: { shock: 'heavy', reversing: 'yes', moving: 0.5 } } };
    expect(said('coupling', { duty: { shock: 'none', reversing: 'no' } }, work).value).toBe(2);
    expect(said('nut', { duty: { moving: '10 %' } }, work).value).toBe(1);
    // 1 kgf is 9.81 N
    expect(said('collar', { duty: { load: '1 kgf' } }, { sheet: { duty: { load: 9.8 } } }).value).toBe(0);
    expect(said('collar', { duty: { load: '1 kgf' } }, { sheet: { duty: { load: 9.9 } } }).value).toBe(1);
  });

  it('binds the axis to its mounting, its holder and its feed', () => {
    const axis = (sheet: Some, parts: AxisPart[] = [NUT, JOINT]) => found('axis-told', { parts, sheet, follows })!;
    const level = axis({ mounting: 'motor-below', duty: { axis: 'horizontal' } });
    expect(level).toMatchObject({ word: 'no', value: 1 });
    expect(level.message).toMatch(
      /^the axis says duty\.axis: horizontal where mounting: motor-below is vertical; leave/,
    );
    expect(axis({ mounting: 'motor-above', duty: { axis: 'vertical' } }).value).toBe(0);
    expect(axis({ mounting: 'horizontal', duty: { axis: 'vertical' } }).value).toBe(1);
    expect(axis({ duty: { axis: 'vertical' } }).value).toBe(0);
    // a guard ring leads nothing, a bearing clamps nothing; of an end that no part holds the sheet alone knows
    const holder = (role: 'free' | 'guiding' | 'locating') =>
      part('ring', { holder: { role, thickness: 5, nutGap: 5 } });
    for (const ends of ['supported', 'fixed-supported', 'fixed-fixed'])
      expect(axis({ duty: { ends } }, [holder('free')]), ends).toMatchObject({
        value: 1,
        message: `the axis says duty.ends: ${ends} where ring leaves fixed-free at best; leave it out, and it follows from the axis`,
      });
    expect(axis({ duty: { ends: 'fixed-free' } }, [holder('free')]).value).toBe(0);
    expect(axis({ duty: { ends: 'fixed-supported' } }, [holder('free'), holder('guiding')]).value).toBe(0);
    expect(axis({ duty: { ends: 'fixed-fixed' } }, [holder('guiding')]).message).toContain('fixed-supported at best');
    expect(axis({ duty: { ends: 'fixed-fixed' } }, [holder('locating')]).value).toBe(1);
    expect(axis({ duty: { ends: 'fixed-supported' } }, [holder('guiding')]).value).toBe(0);
    expect(axis({ duty: { ends: 'fixed-fixed' } }).value).toBe(0);
    // 180 rpm by its feed; 172 are those rounded by less than a twentieth, 171 by more
    expect(axis({ duty: { speed: 171 } }).message).toMatch(
      /^the axis says duty\.speed: 171 where its feed gives 180; /,
    );
    expect(axis({ duty: { speed: 172 } }).value).toBe(0);
    expect(axis({ duty: { speed: 400 } }).value).toBe(0);
  });

  it('counts its motor, in its section or in its duty, in millimetres or inches', () => {
    const sheet = { motor: { steps: 200, torque: 450 } };
    expect(said('nut', { duty: { motor: { steps: 400 } } }, { sheet })).toMatchObject({ value: 1 });
    expect(said('coupling', { motor: { torque: '0.45 N m' } }, { sheet }).value).toBe(0);
    expect(said('coupling', { motor: { torque: '0.5 N m' } }, { sheet })).toMatchObject({ value: 1 });
    expect(said('nut', { duty: { motor: { gear: 2 } } }, { sheet }).value).toBe(0);
    const shaft = { motor: { shaft: { diameter: { value: 5 }, length: 25.4 } } };
    const own = (diameter: string, length: number) => ({ motor: { shaft: { diameter, length } } });
    const short = (length: number) => said('coupling', { motor: { shaft: { length } } }, { sheet: shaft });
    expect(short(20)).toMatchObject({ value: 1 });
    expect(short(20).message).toContain('motor.shaft.length: 20 where it is 25.4');
    expect(short(25.4).value).toBe(0);
    // a reading is told by its field, not by the parts that it was read into
    expect(said('coupling', own('6 mm', 25.4), { sheet: shaft }).message).toMatch(
      /^p says motor\.shaft\.diameter: 6 where it is 5; leave it out/,
    );
    // nor is its ±
    const sure = { motor: { shaft: { diameter: { value: 5, half: 0.05 }, length: 25.4 } } };
    expect(said('coupling', own('5 ± 0.02 mm', 25.4), { sheet: sure }).message).toMatch(
      /^p says motor\.shaft\.diameter: ± 0\.02 where it is ± 0\.05; leave it out/,
    );
    expect(said('coupling', own('5 ± 0.05 mm', 25.4), { sheet: sure }).value).toBe(0);
    expect(said('coupling', own('5 mm', 25.4), { sheet: sure }).value).toBe(0);
    expect(said('coupling', own('5 mm', 1), { sheet: shaft, units: 'inch' }).message).not.toContain('length');
    expect(said('coupling', own('5 mm', 1), { sheet: shaft }).message).toContain(
      'motor.shaft.length: 1 where it is 25.4',
    );
  });
});

it('an axis is complete with a nut and a coupling', () => {
  expect(found('axis-parts')).toMatchObject({ word: 'yes', message: 'nut, coupling' });
  expect(found('axis-parts', { parts: [NUT] })!.message).toMatch(/^without a coupling .* nobody looks/);
  expect(found('axis-parts', { parts: [JOINT] })!.message).toMatch(/^without a nut .* nobody looks/);
  expect(found('axis-parts', { parts: [] })!.message).toMatch(/^without a nut .* and a coupling .* nobody looks/);
});

it('an axis has one part at a place that one finds room at', () => {
  const crowded = (...parts: AxisPart[]) => found('axis-parts', { parts: [NUT, JOINT, ...parts] })!;
  const holder = (name: string, role: 'free' | 'guiding' | 'locating') =>
    part(name, { holder: { role, thickness: 5, nutGap: 5 } });
  expect(crowded(part('sleeve', { joint: { kind: 'rigid' } }))).toMatchObject({
    word: 'no',
    message:
      'coupling and sleeve stand between motor and screw, where one has room; leave out all but one, or make them two axes',
  });
  expect(crowded(part('a', { plate: 8 }), part('b', { plate: 6 })).message).toMatch(/^a and b stand under the motor, /);
  expect(crowded(holder('a', 'free'), holder('b', 'free')).message).toMatch(/^a and b stand around the end /);
  expect(crowded(holder('a', 'guiding'), holder('b', 'locating')).message).toMatch(/^a and b stand at the end /);
  // a guard ring may stand beside a bearing; two collars hold both ways, and two nuts share a load
  const many = [holder('a', 'guiding'), holder('b', 'free'), part('c', { collar: true }), part('d', { collar: true })];
  expect(crowded(...many, part('nut-2', NUT.facts)).word).toBe('yes');
});

describe('lengths along the screw', () => {
  const missing = (...fields: string[]): Known => ({ missing: fields });
  const along = (more: Partial<Along>): Some => ({
    along: { nearGap: 5, farGap: 12, travel: 200, room: told(plusMinus(220, 1), ''), ...more },
  });

  // 220 ± 1 less 5 and 12: 203 ± 1
  it.each([
    [200, 'yes'],
    [202, 'yes'],
    [202.5, 'perhaps'],
    [203, 'perhaps'],
    [204.5, 'but'],
    [222, 'no'],
  ])('leave 203 ± 1 mm for %d mm of travel: %s', (travel, word) => {
    const row = found('axis-travel', along({ travel }))!;
    expect(row).toMatchObject({ word, least: 202, value: 203, most: 204, limit: { min: travel } });
    expect(row.fail_limit!.min).toBeCloseTo(travel - 17, 9);
    expect(row.message).toMatch(
      new RegExp(
        `^203 mm after 5 mm of room at the motor and 12 mm at the far end; ${Math.round(travel)} mm are wanted${travel > 202 ? '; a shorter nut' : '$'}`,
      ),
    );
  });

  it('want what the sheet asks in place of the travel', () => {
    const asked = (min: number) => found('axis-travel', along({ travel: 200 }), { min })!.message;
    expect(asked(150)).toMatch(/; 150 mm are wanted$/);
    expect(asked(210)).toMatch(/; 210 mm are wanted; a shorter nut/);
  });

  it('are not judged where something is missing, but for what no length could cure', () => {
    expect(found('axis-travel', along({ travel: undefined as unknown as number }))).toMatchObject({
      missing: ['lengths.travel'],
    });
    const untold = { room: missing('lengths.moving') };
    expect(found('axis-travel', along(untold))).toMatchObject({ missing: ['lengths.moving'] });
    // what moves is at least the nut of 18 mm: 300 − 50 − 18 = 232, less 17
    const nut = { ...untold, far: told(300, ''), near: told(50, ''), nutLength: 18 };
    expect(found('axis-travel', along({ ...nut, travel: 231 }))).toMatchObject({ missing: ['lengths.moving'] });
    expect(found('axis-travel', along({ ...nut, travel: 233 }))).toMatchObject({ word: 'no', value: 215 });
  });

  // beginning at 28, the holder ending at 335, a pitch of 2 to 4 beyond it
  const held = (more: Partial<Along>): Some => ({
    parts: [part('holder', { holder: { role: 'free', thickness: 5, nutGap: 5 } })],
    along: {
      stand: { least: 2, most: 4 },
      screwStart: told(28, ''),
      holderEnd: told(plusMinus(335, 0.5), ''),
      nearGap: 5,
      ...more,
    },
  });

  it('ask for a screw that ends a pitch or two beyond its holder: 335.5 + 2 − 28 = 309.5, so 310 to 311', () => {
    const row = found('axis-screw-length', held({}))!;
    expect(row).toMatchObject({ word: 'yes', value: 310 });
    expect(row.message).toBe(
      'order or cut 310 to 311 mm, which ends a pitch or two beyond the holder; measure again before it is cut',
    );
    const even = found('axis-screw-length', held({ holderEnd: told(335, ''), stand: { least: 2, most: 2.5 } }))!;
    expect(even).toMatchObject({ value: 309 });
    expect(even.message).toMatch(/^order or cut 309 mm, which/);
    expect(found('axis-screw-length', held({ holderEnd: missing('lengths.far_face') }))).toMatchObject({
      missing: ['lengths.far_face'],
    });
  });

  // 309 are needed, and half a millimetre of the reading of the frame counts with that of the screw
  it.each([
    [310, 0.1, 'yes', '310 mm reach 3 mm beyond the holder'],
    [309.4, 0.1, 'perhaps', '309.4 mm reach 2.4 mm beyond the holder; a longer screw, or less travel'],
    [
      308.9,
      0,
      'perhaps',
      '308.9 mm, 0.1 mm less than what reaches a pitch beyond the holder; a longer screw, or less travel',
    ],
    [
      306.9,
      0,
      'no',
      '306.9 mm, 2.1 mm less than what reaches a pitch beyond the holder; a longer screw, or less travel',
    ],
  ])('judge a screw of %d ± %d mm in its holder: %s', (length, half, word, message) => {
    const row = found('axis-screw-length', held({ screw: plusMinus(length, half) }))!;
    expect(row.message).toBe(message);
    expect(row).toMatchObject({ limit: { min: 309 }, fail_limit: { min: 307 } });
    expect(row.least).toBeCloseTo(length - half - 0.5, 9);
    expect(word === 'perhaps' ? ['perhaps', 'but'] : [word]).toContain(row.word);
  });

  it('let a free screw carry the nut to the end of its travel and 5 mm on: 52 + 20 + 200 + 10 − 28 = 254', () => {
    const free = (more: Partial<Along>): Some => ({
      parts: [],
      along: {
        stand: { least: 2, most: 4 },
        screwStart: told(28, ''),
        near: told(52, ''),
        moving: told(20, ''),
        travel: 200,
        nearGap: 5,
        ...more,
      },
    });
    expect(found('axis-screw-length', free({}))).toMatchObject({
      value: 254,
      message: 'order or cut 254 to 256 mm; measure again before it is cut',
    });
    expect(found('axis-screw-length', free({ screw: exactly(255) }))!.message).toBe(
      '255 mm reach 6 mm beyond the nut at the end of its travel',
    );
    const short = found('axis-screw-length', free({ screw: exactly(250) }))!;
    expect(short).toMatchObject({ word: 'but', fail_limit: { min: 249 } });
    expect(short.message).toMatch(/^250 mm, 4 mm less than what reaches 5 mm beyond the nut; a longer screw/);
    expect(found('axis-screw-length', free({ travel: undefined as unknown as number }))).toMatchObject({
      missing: ['lengths.travel'],
    });
  });

  it('leave shaft outside of the coupling', () => {
    const room = (value: Known, more: Some = {}) => found('axis-shaft-room', { along: { shaftRoom: value }, ...more });
    expect(room(told(1, ''))).toMatchObject({ word: 'yes', message: '1 mm of shaft stay outside the coupling' });
    expect(room(told(plusMinus(1, 0.1), ''))!.message).toMatch(/; a shorter hub/);
    expect(room(missing('motor.shaft.length'))).toMatchObject({ missing: ['motor.shaft.length'] });
    expect(room(told(1, ''), { parts: [NUT] })).toBeUndefined();
  });

  it('are the span that is told, to 5 %', () => {
    const span = (given: number | undefined, value: Known = told(280, '')) =>
      found('axis-span', { along: { span: value }, sheet: given === undefined ? {} : { duty: { span: given } } });
    expect(span(280)).toMatchObject({ word: 'yes', value: 1, message: '280 mm by the lengths, 280 mm told' });
    expect(span(250)).toMatchObject({ word: 'but', value: 1.12 });
    expect(span(250)!.message).toMatch(/; the longer is judged: leave duty.span out/);
    expect(span(undefined)).toBeUndefined();
    expect(span(280, missing('lengths.clear'))).toBeUndefined();
    expect(found('axis-span', { along: { span: told(280, '') } })).toBeUndefined();
  });
});

describe('what carries the screw', () => {
  const carried = (kind: string | undefined, more: Some = {}, ...holders: string[]) =>
    found('axis-locating', {
      parts: [
        ...(kind === undefined ? [] : [part('coupling', { joint: { kind } } as PartFacts)]),
        ...holders.map((role) => part(role, { holder: { role, thickness: 5, nutGap: 5 } } as PartFacts)),
      ],
      ...more,
    })!;
  const below = { sheet: { mounting: 'motor-below' } };

  it('is one place and no more', () => {
    expect(carried('disc', below)).toMatchObject({ word: 'yes', value: 1 });
    expect(carried('rigid')).toMatchObject({ word: 'yes', value: 1 });
    expect(carried('flexible', {}, 'locating')).toMatchObject({ word: 'yes', value: 1, message: 'locating' });
    expect(carried('flexible', { thrustBearing: true })).toMatchObject({ word: 'yes', value: 1 });
    const none = carried('flexible', {}, 'free', 'guiding');
    expect(none).toMatchObject({ word: 'no', value: 0 });
    expect(none.message).toMatch(/^none; nothing keeps it: a collar/);
    const two = carried('disc', { ...below, thrustBearing: true });
    expect(two).toMatchObject({ word: 'no', value: 2 });
    expect(two.message).toMatch(/keep one \(parts.coupling.insert.pad: none, where the disc is the other\)$/);
    expect(carried('rigid', { thrustBearing: true })).toMatchObject({ word: 'yes', value: 1 });
    expect(carried('rigid', {}, 'locating').message).toMatch(/keep one$/);
  });

  it('hangs on the coupling, and on where the motor is where it is a disc', () => {
    expect(carried(undefined)).toMatchObject({ missing: ['parts.coupling'] });
    expect(carried('disc')).toMatchObject({ missing: ['mounting'] });
    expect(carried('flexible')).toMatchObject({ word: 'no' });
  });
});

describe('heat at the motor', () => {
  const plastic = (name: string, softening: number) => ({ name, softening }) as PartFacts['material'] & object;
  const parts = [
    part('sleeve', { isAtMotor: true, material: plastic('pc', 120) }),
    part('plate', { isAtMotor: true, material: plastic('petg', 65) }),
    part('nut', { material: plastic('pla', 52) }),
  ];

  it('is that of the plastic that softens first of those that touch it', () => {
    const row = found('axis-heat', { parts, sheet: { motor: { temperature: 40 } } })!;
    expect(row).toMatchObject({ word: 'yes', value: 25 });
    expect(row.message).toBe("plate of petg softens at 65 °C, the motor's shaft and face get 40 °C");
    expect(found('axis-heat', { parts: [...parts].reverse(), sheet: { motor: { temperature: 40 } } })!.value).toBe(25);
    expect(found('axis-heat', { parts, sheet: { motor: { temperature: 60 } } })!.message).toMatch(
      /; a material that softens later/,
    );
  });

  it('is asked for, and of nothing that is not there', () => {
    const of = (name: string, softening: number) =>
      found('axis-heat', { parts: [part('plate', { isAtMotor: true, material: plastic(name, softening) })] });
    // cases run at 50 to 80 °C, 20 K are kept: below 70 it fails on any motor, from 100 on it passes on any
    expect(of('petg', 65)).toMatchObject({ word: 'no', value: 65 - 80 });
    expect(of('asa', 75)).toMatchObject({ word: 'not-told', missing: ['motor.temperature'] });
    expect(of('pc', 120)).toMatchObject({ word: 'yes', value: 120 - 80 });
    // what is told is not asked for
    const told = { parts: [part('plate', { isAtMotor: true, material: plastic('asa', 75) })] };
    expect(found('axis-heat', { ...told, sheet: { motor: { temperature: 80 } } })).toMatchObject({
      word: 'no',
      value: -5,
    });
    expect(found('axis-heat', { parts: [NUT] })).toBeUndefined();
    expect(found('axis-heat', { parts: [part('plate', { isAtMotor: true })] })).toBeUndefined();
  });
});

describe('how it runs', () => {
  const motor = { steps: 200, microsteps: 16 };

  it('is set in steps, and turns round with the hand', () => {
    const set = (more: Some = {}) => found('axis-steps', { duty: { motor }, drive: { steps_per_mm: 1600 }, ...more })!;
    expect(set()).toMatchObject({ word: 'yes', value: 1600 });
    expect(set().message).toMatch(/^1600 steps per mm at a lead of 2 mm, right-hand; if the screw that is taken out/);
    expect(set({ old: { screw: screw('Tr10x2-LH'), stepsPerMm: 1600 } }).message).toMatch(/direction/);
    expect(set({ old: { screw: screw('Tr10x2'), stepsPerMm: 1600 } }).message).not.toMatch(/direction|; [A-Z]|\.$/);
    expect(set({ duty: {} })).toMatchObject({ missing: ['motor.steps', 'motor.microsteps'] });
    expect(set({ duty: { motor: { steps: 200 } } })).toMatchObject({ missing: ['motor.microsteps'] });
    expect(set({ duty: { motor: { microsteps: 16 } } })).toMatchObject({ missing: ['motor.steps'] });
  });

  it('knows by the old figure whether motor and screw are as told: 1600 · 2/8 = 400', () => {
    const old = (stepsPerMm: number | undefined, more: Some = {}) =>
      found('axis-old-steps', {
        duty: { motor },
        drive: { steps_per_mm: 1600 },
        old: { screw: screw('Tr8x8(P2)'), stepsPerMm },
        ...more,
      });
    expect(old(400)).toMatchObject({ word: 'yes', value: 1, message: '400 of 400 steps per mm' });
    expect(old(200)).toMatchObject({ word: 'but', value: 0.5 });
    expect(old(200)!.message).toMatch(/; steps, microsteps or gear/);
    expect(old(800)!.message).toMatch(/; steps, microsteps or gear/);
    expect(old(undefined)).toBeUndefined();
    expect(old(400, { old: { stepsPerMm: 400 } })).toBeUndefined();
    expect(old(400, { old: undefined })).toBeUndefined();
    expect(old(400, { duty: { motor: { steps: 200 } } })).toBeUndefined();
    expect(old(400, { duty: { motor: { microsteps: 16 } } })).toBeUndefined();
    expect(old(400, { duty: {} })).toBeUndefined();
  });

  it('feeds no faster than what sets its limit', () => {
    const drive = { feed_limit: { value: 10, set_by: 'motor' } };
    const fed = (feed: number | undefined, span?: number, change?: Bounds) =>
      found('axis-feed', { duty: { feed, span }, drive }, change);
    expect(fed(10, 280)).toMatchObject({ word: 'yes', message: '10 mm/s are set by what the motor is useful for' });
    expect(fed(11, 280)).toMatchObject({ word: 'but', value: 11 });
    expect(fed(11, 280)!.message).toMatch(/; feed slower, or take a coarser lead$/);
    // whirl may set less where the span is not told, never more
    expect(fed(10)).toMatchObject({ missing: ['duty.span'] });
    expect(fed(11)).toMatchObject({ word: 'but' });
    expect(fed(undefined)).toMatchObject({ missing: ['duty.feed'] });
    expect(fed(11, 280, { max: 12 })!.message).toBe('12 mm/s are set by the sheet');
  });

  it('raises a bought nut by half of what the motor gives, at friction 0.5', () => {
    const bought = [part('plate', {}), part('nut', { nut: { length: 18, floats: false, printed: false } })];
    const duty = { load: 30, motor: { torque: 400 } };
    const raised = (more: Some = {}) =>
      found('axis-torque', {
        parts: bought,
        duty,
        drive: { motor_share: { low: 0.1, nominal: 0.2, high: 0.45 } },
        ...more,
      })!;
    expect(raised()).toMatchObject({ word: 'yes', least: 0.1, value: 0.45, most: 0.45 });
    expect(raised().message).toBe('20 % at friction 0.2, 45 % at 0.5');
    const much = raised({ drive: { motor_share: { low: 0.1, nominal: 0.2, high: 0.6 } } });
    expect(much).toMatchObject({ word: 'but' });
    expect(much.message).toMatch(/; a finer lead, a stronger motor/);
    expect(raised({ drive: {} })).toMatchObject({ word: 'no' });
    expect(raised({ duty: { load: 30 } })).toMatchObject({ missing: ['motor.torque'] });
    expect(raised({ duty: { motor: { torque: 400 } } })).toMatchObject({ missing: ['duty.load'] });
    expect(found('axis-torque', { duty })).toBeUndefined();
    expect(raised({ parts: [] })).toMatchObject({ word: 'yes' });
  });

  it('asks for the span before it says that it does not buckle', () => {
    expect(found('axis-column', { duty: { load: 5, ends: 'fixed-free' } })).toMatchObject({ missing: ['duty.span'] });
    // Tr10x2 at 100 mm, one end free: far above 5 N
    expect(found('axis-column', { duty: { load: 5, ends: 'fixed-free', span: 100 } })).toMatchObject({ word: 'yes' });
  });
});
