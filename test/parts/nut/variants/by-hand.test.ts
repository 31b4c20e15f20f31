import { describe, expect, it } from 'vitest';
import { limitsInForce } from '../../../../src/judge/limits-in-force.js';
import type { NutDesign } from '../../../../src/parts/nut/dimensions.js';
import { keyBending } from '../../../../src/parts/nut/variants/key-bending.js';
import type { AntiBacklash, Variant } from '../../../../src/parts/nut/variants/types.js';
import { design } from '../../../../src/pipeline/design.js';
import { workOut } from '../../../../src/pipeline/work-out.js';
import { InputError } from '../../../../src/units/faults.js';
import { FAMILY_BASE, METAL, SPRING } from '../../../support/family-sheet.js';
import { changed } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

type Changes = Record<string, unknown>;
const BASE = { ...FAMILY_BASE, duty: { axis: 'horizontal', load: 15, temperature: 25 } };
const sheet = (changes: Changes) => changed(BASE, changes);
const sprung = (spring: Changes = {}, more: Changes = {}) =>
  sheet({ family: { kind: 'anti-backlash', spring: { ...SPRING, ...spring } }, ...more });
const pair = (asked: object) => (design(asked) as NutDesign).family as AntiBacklash;
const found = (id: string, changes: Changes) => findingOf(sheet(changes), id);

/** What a sheet is refused for: field and what is allowed. */
function refusal(asked: object): string {
  try {
    design(asked);
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  return '';
}

/**
 * Torque on Tr8x2 at friction 0.2: f/cos 15° = 0.20706, π·7 = 21.991;
 * F·3.5·(2 + 0.20706·21.991)/(21.991 − 0.20706·2) = 1.0630·F. At the keys, 4.4 + 0.5 + 1.5 mm out, a sixth of F,
 * and a fifth of that is friction: a spring must overcome 1.0332·F.
 */
const NEEDED = 1.0332;

describe('two nuts with a spring, by hand', () => {
  it('have keys between the thread and the spring, as wide as leaves them a wall of 1.6 mm', () => {
    const { tongue, spring, follower } = pair(sprung());
    // (16/2 − 0.4)² = 3² + 6.983²; 8.8/2 + 0.5 + 0.4: 1.683 mm are left, and 1.57 of a key of 6.5 mm
    expect(tongue).toMatchObject({ width: 6, slotDepth: 6 });
    expect(tongue.inner).toBeCloseTo(5.3, 9);
    expect(tongue.outer).toBeCloseTo(6.983, 3);
    // 20 − 1.5·1.0332·15/3 = 12.25, and 4 mm into the follower
    expect(spring.working).toBe(12.3);
    expect(tongue.height).toBeCloseTo(16.3, 9);
    // 6 of slot and two and a half pitches
    expect(follower).toBe(11);
  });

  // within 19.6/2 − 0.4: (√(9.4² − w²/4) − 5.3)·w² comes to 281.1, 282.5 and 278.8 mm³ at widths of 11, 11.5 and 12 mm
  it('have the keys that bend least where room is plenty', () => {
    const { tongue } = pair(sprung({ inside: 19.6, outside: 23 }));
    expect(tongue.width).toBe(11.5);
    expect(tongue.outer).toBeCloseTo(7.436, 3);
  });

  it.each([
    // 2·(√((5.3 + 1.6)² + 2²) + 0.4) = 15.17
    ['family.spring.inside', /at least 15\.2 mm/, sprung({ inside: 15.1 }), sprung({ inside: 15.2 })],
    // 19 and 0.4 of relief on either side
    [
      'body.diameter',
      /at least 19\.8 mm/,
      sprung({}, { body: { diameter: 19.7 } }),
      sprung({}, { body: { diameter: 19.8 } }),
    ],
    ['family.spring.solid', /at most 18\.5 mm/, sprung({ solid: 18.6 }), sprung({ solid: 18.5 })],
    ['family.spring.working', /7\.5 to 20 mm/, sprung({ working: 7.4 }), sprung({ working: 7.5 })],
    ['family.spring.working', /7\.5 to 20 mm/, sprung({ working: 20.1 }), sprung({ working: 20 })],
  ])('refuse what has no room: %s %s', (field, words, bad, good) => {
    expect(refusal(bad)).toContain(field);
    expect(refusal(bad)).toMatch(words);
    expect(refusal(good)).toBe('');
  });

  it('want a second nut of a pitch behind its slots, no longer than the first', () => {
    const follower = (length: number) => refusal(changed(sprung(), { family: { follower: length } }));
    expect(follower(7.9)).toMatch(/family\.follower.*at least 8 mm/);
    expect(follower(8)).toBe('');
    expect(follower(22)).toBe('');
    expect(follower(22.1)).toMatch(/family\.follower.*22 mm/);
  });

  it('press the spring by what the load wants, within its travel', () => {
    const working = (load: number | undefined) => pair(sprung({}, { duty: { load } })).spring.working;
    // a load of 100 N wants more than the spring has: a millimetre above solid
    expect(working(100)).toBe(8);
    // 0.1 N wants next to nothing: half a millimetre of tension
    expect(working(0.1)).toBe(19.5);
    // untold, 10 N are counted: 20 − 1.5·10/3
    expect(working(undefined)).toBe(15);
  });

  it('are judged by the spring over load and friction of the keys', () => {
    const row = findingOf(sprung({ working: 12 }), 'spring-force')!;
    expect(row.value).toBeCloseTo(24 / (15 * NEEDED), 3);
    expect(row.message).toMatch(/ N$/);
    const weak = findingOf(sprung({ working: 12 }, { duty: { load: 60 } }), 'spring-force')!;
    // 1.2·1.0332·60
    expect(weak.message).toContain('; 74.4 N are wanted');
  });

  /**
   * 18 N at 14 mm; torques at friction 0.2, 0.5 and 1.1: 1.0630, 2.2352, 4.8014 times the force, on both keys 2·6.141 mm apart;
   * 16 mm of arm to the middle of the slot on 1.683·6²/6 = 10.097 mm³, twice for the corner: 18·1.0630·16·2/(12.283·10.097) = 4.937 MPa.
   */
  it('bend the keys by what the screw turns the follower with', () => {
    const keys = (grease: string | undefined, rate = 3, more: Changes = {}) =>
      findingOf(sprung({ working: 14, rate }, { duty: { grease, ...more } }), 'key-bending')!;
    expect(keys('greased').value).toBeCloseTo(4.937, 2);
    expect(keys('dry').value).toBeCloseTo(10.381, 2);
    expect(keys('dry').most).toBeCloseTo(22.3, 1);
    expect(keys(undefined).value).toBeCloseTo(10.381, 2);
    // across the layers again and again PETG bears 0.12·22 = 2.64 MPa cold: 18·2.56/4.937 = 9.3 N
    expect(keys('greased')).toMatchObject({ verdict: 'fail', word: 'no' });
    expect(keys('greased').message).toMatch(/; 9\.3 N of spring are borne: a softer or shorter one/);
    expect(keys('greased', 1).verdict).toBe('pass');
    expect(keys('greased', 1).message).not.toContain('of spring are borne');
    expect(keys('dry').message).toContain(', grease, or');
    expect(keys('greased', 1, { temperature: undefined }).missing).toEqual(['duty.temperature']);
    expect(keys('greased', 3, { temperature: undefined }).verdict).toBe('fail');
  });

  // π·7·cos 15° = 21.24 mm: a lead of that over the friction locks, 42.5 mm at 0.5 and 19.3 mm at 1.1
  it('lock on a lead that friction does not let turn', () => {
    const keys = (lead: number, grease: string) => {
      const made = workOut(sprung({ working: 14 }, { duty: { grease } })) as NutDesign;
      return keyBending.run({ ...made, finished: { ...made.finished, lead } }, limitsInForce())!;
    };
    const LOCKS = {
      kind: 'told',
      verdict: 'fail',
      message: expect.stringMatching(/^at friction 0\.5 the screw locks/),
    };
    expect(keys(43, 'dry')).toMatchObject(LOCKS);
    expect(keys(43, 'greased')).toMatchObject({ kind: 'value' });
    expect(keys(42, 'dry')).toMatchObject({ kind: 'value' });
    expect(keys(20, 'dry')).toMatchObject({ value: { most: 1e9 } });
    expect(keys(19, 'dry')).not.toMatchObject({ value: { most: 1e9 } });
  });

  it('leave the spring a millimetre of travel', () => {
    const travel = (working: number) => findingOf(sprung({ working }), 'spring-travel')!;
    expect(travel(7.5)).toMatchObject({ value: 0.5, verdict: 'caution' });
    expect(travel(7.5).message).toMatch(/; a family\.spring\.working from 8 mm on/);
    expect(travel(8)).toMatchObject({ value: 1, verdict: 'pass', message: '8 mm in the nut, solid at 7 mm' });
  });
});

describe('checks of the family, by hand', () => {
  // Tr8x2: two turns are 4 mm
  it('want a metal nut of two turns to catch what falls', () => {
    const caught = (height: number) =>
      found('catch-nut', { catch_nut: { across_flats: 13, height }, mounting: 'flange-up' })!;
    expect(caught(3.9)).toMatchObject({ verdict: 'caution', value: null });
    expect(caught(3.9).message).toContain('3.9 mm high, 1.9 turns of its thread, and may not hold');
    expect(caught(1.5).message).toContain('1.5 mm high, 0.8 turns of its thread');
    expect(caught(4).message).toContain('bears nothing until');
  });

  it('leave play to a slit that takes it up', () => {
    expect(found('thread-axial', { family: { kind: 'clamped' } })).toBeUndefined();
    expect(found('thread-axial', { family: { kind: 'split' } })).toBeDefined();
  });

  // thread 8.8/2 = 4.4 and its lead-in 0.5; four lines 1.6; a pin's bore is 0.1 wider: 8 mm stand 4.9 + 1.6 + 4.05 = 10.55 off the axis
  it('set pins off the thread by their own radius', () => {
    const halves = (more: Changes) => sheet({ family: { kind: 'split', closed: 'ring', ...more } });
    const thick = { diameter: 8, length: 6 };
    const { pins } = (design(halves({ pins: thick })) as NutDesign).family as Variant & { kind: 'split' };
    expect(pins.offset).toBeCloseTo(10.55, 6);
    // 0.8 mm nozzle: 3.2 for 1.6
    const wide = { ...halves({ pins: { diameter: 4, length: 6 } }), printer: { nozzle: 0.8, layer: 0.2 } };
    const apart = ((design(wide) as NutDesign).family as Variant & { kind: 'split' }).pins.offset;
    expect(apart).toBeCloseTo(4.9 + 3.2 + 2.05, 6);
    // closing screws of M3 leave less beside a pin of 6 mm: 4.9 + 1.6 + 3.05
    const byScrews = {
      ...sheet({ family: { kind: 'split', pins: { diameter: 6, length: 6 } } }),
      body: { diameter: 32, length: 30 },
    };
    expect(((design(byScrews) as NutDesign).family as Variant & { kind: 'split' }).pins.offset).toBeCloseTo(9.55, 6);
    // 4.9 + 1.6 + 10.1 + 1.6 = 18.2 of 16
    expect(refusal(halves({ pins: { diameter: 10, length: 6 } }))).toMatch(
      /^family\.pins\.diameter: 10 mm; leaves no room between thread and outside, of which it needs 18\.2 mm/,
    );
  });

  it('judge pins against the thread as the outside', () => {
    const bare = { lead_in: 0, family: { kind: 'split', closed: 'ring' } };
    // 1.6 by where the pins are put, without a lead-in
    expect(found('wall', bare)!.value).toBeCloseTo(1.6, 6);
    // crests read ± 0.2: half of that may be missing
    const unsure = found('wall', { ...bare, screw: { designation: 'Tr8x2', hand: 'right', major: '7.9 ± 0.2 mm' } })!;
    expect(unsure.least).toBeCloseTo(1.5, 6);
    expect(unsure.message).toContain('beside the pins; a deeper lead_in sets them off');
    // 0.5 deep they stand 2.1 off, (32 − 8.8)/2 = 11.6 beside the body
    expect(found('wall', { family: { kind: 'split', closed: 'ring' } })!.value).toBeCloseTo(2.1, 6);
  });

  // 4.05 + 1.6 is the pin's middle, 4.05 + 1.6 on: a flange of 10 mm would let its bore out on top
  it('count only the body where a pin stands out of the flange', () => {
    const thick = {
      flange: { diameter: 52, thickness: 10 },
      family: { kind: 'split', closed: 'ring', pins: { diameter: 8, length: 12 } },
    };
    // √(16² − 14.6²) − 1.6 = 4.945; twice that less 0.5
    expect(refusal(sheet(thick))).toContain('must be at most 9.4 mm long');
    expect(refusal(sheet({ ...thick, flange: { diameter: 52, thickness: 11.4 } }))).toBe('');
  });

  it('turn holes out of the joint by half of their spacing', () => {
    const inJoint = found('split-joint', { family: { kind: 'split' }, holes: { start: 0 } })!;
    expect(inJoint.message).toMatch(/holes\.start: 45 deg, for one$/);
    // exactly what is asked is enough
    const exact = { family: { kind: 'split' }, limits: { 'split-joint': { min: inJoint.value } } };
    expect(found('split-joint', { ...exact, holes: { start: 0 } })!.message).not.toContain('holes.start');
  });

  it('widen the body by what the wall lacks, twice', () => {
    const holder = { family: { kind: 'holder', nut: METAL } };
    const row = found('nut-pocket-wall', { ...holder, limits: { 'nut-pocket-wall': { min: 10 } } })!;
    // corners of 13.2 mm across flats: 13.2/√3 = 7.621; 16 − 7.621 = 8.379
    expect(row.value).toBeCloseTo(8.379, 3);
    // 3.242, in whole hundredths and enough
    expect(row.message).toContain('make the body 3.25 mm wider');
    const exact = { ...holder, limits: { 'nut-pocket-wall': { min: row.value } } };
    expect(found('nut-pocket-wall', exact)!.message).not.toContain('wider');
  });

  it('offer a catch nut to a screw that falls alone, on an axis that stands', () => {
    // lead angles: tan 8/(π·7) = 0.364 falls at friction 0.08; M8, 1.25/(π·7.19) = 0.055 holds
    const steep = { designation: 'Tr8x8(P2)', hand: 'right' };
    const stands = { duty: { axis: 'vertical' } };
    expect(found('catch-nut', { screw: steep, ...stands })!.verdict).toBe('caution');
    expect(found('catch-nut', { screw: steep })).toBeUndefined();
    expect(found('catch-nut', { screw: steep, ...stands, family: { kind: 'holder', nut: METAL } })).toBeUndefined();
    expect(found('catch-nut', { screw: { designation: 'M8', hand: 'right' }, ...stands })).toBeUndefined();
  });

  it('let a catch nut look either way where nothing falls', () => {
    expect(found('catch-nut', { catch_nut: METAL, mounting: 'flange-down' })!.verdict).toBe('pass');
    expect(found('catch-nut', { catch_nut: METAL, mounting: undefined })!.verdict).toBe('pass');
  });

  it('ask which way a catch nut looks, and whether anything falls', () => {
    const asked = (axis: string | undefined, mounting: string | undefined) =>
      found('catch-nut', { catch_nut: METAL, duty: { axis }, mounting })!;
    expect(asked(undefined, undefined).missing).toEqual(['mounting']);
    expect(asked('vertical', undefined).missing).toEqual(['mounting']);
    expect(asked(undefined, 'flange-down').missing).toEqual(['duty.axis']);
    expect(asked('vertical', 'flange-down').word).toBe('no');
    expect(asked('vertical', 'flange-up').word).toBe('yes');
    expect(asked(undefined, 'flange-up').word).toBe('yes');
  });

  const TWIN = { body: { length: 44 }, family: { kind: 'twin', apart: 32, lever: 10 }, duty: { grease: 'greased' } };
  const twin = (id: string, changes: Changes = {}) => findingOf(sheet(changed(TWIN, changes)), id)!;

  it('lock two threads that are 32 mm apart from 32/(2 · 0.2) = 80 mm of lever on, dry from 32', () => {
    const bound = (lever: number | undefined) => twin('twin-binding', { family: { lever } });
    expect(bound(10)).toMatchObject({
      word: 'yes',
      value: 0.125,
      message: expect.stringMatching(/ lock from 80 mm on$/),
    });
    expect(bound(40).word).toBe('yes');
    expect(bound(41)).toMatchObject({
      word: 'but',
      message: expect.stringMatching(/ on; set the threads further apart/),
    });
    expect(bound(81).word).toBe('no');
    expect(bound(undefined).missing).toEqual(['family.lever']);
    expect(twin('twin-binding', { duty: { grease: 'dry' } }).value).toBeCloseTo(10 / 32, 9);
  });

  it('press each thread sideways by load · lever/distance, on 37 % of 12 mm of crests 6.3 mm across', () => {
    const pressed = twin('twin-pressure');
    // 15 · 10/32 over 0.37 · 12 · 6.3
    expect(pressed.message).toMatch(/^0\.17 MPa of pressure sideways on each thread under 15 N, of .* °C$/);
    expect(twin('twin-pressure', { duty: { load: 150 } }).value! / pressed.value!).toBeCloseTo(10, 2);
    expect(twin('twin-pressure', { limits: { 'twin-pressure': { max: 0.001 } } }).message).toMatch(
      /°C; set the threads further apart, make them longer, or guide the carriage$/,
    );
    expect(twin('twin-pressure', { family: { lever: undefined } }).missing).toEqual(['family.lever']);
  });

  it('know that a twin nut has no place for a catch nut', () => {
    const falls = { screw: { designation: 'Tr8x8(P2)' }, duty: { axis: 'vertical' } };
    expect(twin('catch-nut', falls)).toMatchObject({
      word: 'but',
      message: expect.stringMatching(/^a twin nut has no place/),
    });
    expect(found('catch-nut', falls)!.message).not.toContain('twin');
    // nobody knows whether it falls
    expect(found('catch-nut', { ...falls, duty: { axis: undefined } })!.missing).toEqual(['duty.axis']);
  });

  it('leave of the thread what the pocket does not take', () => {
    // 22 − 6.5 of nut − 0.8 of gap
    expect(found('catch-nut', { catch_nut: METAL })!.message).toContain('the printed thread, 14.7 mm of it');
    expect(found('nut-seat', { catch_nut: METAL })!.message).toContain('on a floor of 14.7 mm under 15 N');
  });

  it('shear a thin floor around a wide nut', () => {
    const wide = { family: { kind: 'holder', nut: { across_flats: 20, height: 20 } }, body: { length: 25 } };
    // 100 N on π·20·5 = 314.2 mm²: 0.318 MPa; on π/4·(20² − 8.8²) = 253 mm² it is 0.4 MPa, of far more
    const row = found('nut-seat', { ...wide, duty: { load: 100 } })!;
    expect(row.message).toMatch(/^0\.32 MPa of shear on a floor of 5 mm under 100 N/);
  });

  it('wedge by tan 15°/π of the load, shared by the screws', () => {
    expect(found('split-hold', { family: { kind: 'split' } })!.message).toContain('wedged by 4.3 % of the load');
    expect(found('split-hold', { family: { kind: 'clamped' } })!.message).toContain('wedged by 8.5 % of the load');
  });

  it('bear nothing in heat beyond the plastic, and no figure is made up', () => {
    const hot = found('nut-seat', { family: { kind: 'holder', nut: METAL }, duty: { temperature: 90 } })!;
    expect(hot).toMatchObject({ verdict: 'fail', value: null });
    expect(hot.message).toMatch(/ of 0 MPa at 90 °C/);
  });
});
