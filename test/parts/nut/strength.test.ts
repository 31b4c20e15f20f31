import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/judge/check.js';
import { strongNut as nutSheet } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

function found(id: string, changes: Record<string, unknown> = {}): Finding | undefined {
  return findingOf(nutSheet(changes), id);
}

const PATTERN = { count: 4, circle: '27 ± 0 mm', start: 45, diameter: 3.6, screw: 'M3' };

/** As large over its crests as its name says. */
const MEASURED = { designation: 'Tr10x2', major: '10 ± 0 mm' };

/** Running without telling its rests. */
const UNTOLD = { moving: undefined, on_time: undefined, cycle: undefined };
/** Without a feed friction warms nothing. */
const COLD = { feed: undefined };
const PETG = { preset: 'petg', shrink: undefined };
const PLA = { preset: 'pla', shrink: undefined };

/**
 * [check, what breaks it, verdict, its neighbour that passes]. The sound nut is a Tr10x2 in PA12 at 30 °C, 18 mm long: chamfers
 * 0.5 mm past the thread leave nothing of the contact's middle on 0.5 + 0.825 mm at either end, so half of 15.35/2 turns carry, 3.8375:
 * π·9·0.85·3.8375 = 92.23 mm² of flank, π·10.8·1.3022·3.8375 = 169.55 mm² of root, arm 0.825 mm.
 */
const CASES: readonly [string, Record<string, unknown>, 'caution' | 'fail', Record<string, unknown>][] = [
  // in motion 1 MPa at 23 °C, e^(−7/85) = 0.9209 of it at 30 °C: 84.9 N; three times that 254.8 N
  ['thread-pressure', { duty: { ...COLD, load: 86 } }, 'caution', { screw: MEASURED, duty: { ...COLD, load: 84 } }],
  ['thread-pressure', { duty: { ...COLD, load: 256 } }, 'fail', { duty: { ...COLD, load: 30 } }],
  // for years 20·0.2·e^(−7/70) = 3.619 MPa: 613.6 N; back and forth 0.2·e^(−7/85): 624.6 N
  ['thread-shear', { duty: { ...COLD, load: 616 } }, 'fail', { screw: MEASURED, duty: { ...COLD, load: 611 } }],
  [
    'thread-shear',
    { duty: { ...COLD, load: 628, axis: 'horizontal' } },
    'fail',
    { screw: MEASURED, duty: { ...COLD, load: 621, axis: 'horizontal' } },
  ],
  // 42·0.2·e^(−0.1) = 7.601 MPa over 6·0.825/(π·10.8·1.3022²·3.8375) = 0.02242: 339.0 N
  ['thread-bending', { duty: { ...COLD, load: 341 } }, 'fail', { screw: MEASURED, duty: { ...COLD, load: 337 } }],
  // nothing stands on it above 80 °C
  [
    'thread-bending',
    { duty: { ...COLD, load: 30, temperature: 81 } },
    'fail',
    { duty: { ...COLD, load: 30, temperature: 79 } },
  ],
  // 1.2·42·0.2·e^(−0.1)/2 = 4.560 MPa: 420.6 N; a horizontal axis, e^(−7/85), 428.1 N
  ['creep', { duty: { ...COLD, load: 422 } }, 'fail', { screw: MEASURED, duty: { ...COLD, load: 419 } }],
  [
    'creep',
    { duty: { ...COLD, load: 430, axis: 'horizontal' } },
    'fail',
    { screw: MEASURED, duty: { ...COLD, load: 426, axis: 'horizontal' } },
  ],
  // 1807 N a N·m on a greased screw: bending 40.5 MPa, of 42·0.5·0.9209 = 19.34 for a moment: 0.477 N·m
  [
    'thread-stall',
    { duty: { ...COLD, motor: { torque: '0.49 N m' } } },
    'fail',
    { screw: MEASURED, duty: { ...COLD, motor: { torque: '0.47 N m' } } },
  ],
  ['flange-bending', { flange: { thickness: 4 } }, 'fail', { flange: { thickness: 6 } }],
  ['end-stop', {}, 'caution', { duty: { motor: { torque: '0.06 N m' } } }],
  // rests told: 0.2·PV is judged; on and on it is all of it
  ['wear-pv', { duty: { ...UNTOLD, load: 150 } }, 'caution', { duty: { load: 150 } }],
  ['wear-pv', { duty: { load: 150, moving: undefined, on_time: 60 } }, 'fail', { duty: { load: 150 } }],
  [
    'wear-pv',
    { material: PETG, duty: { moving: undefined, on_time: 60, feed: 8 } },
    'caution',
    { material: PETG, duty: { feed: 8 } },
  ],
  ['wear-peak', { duty: { load: 150, feed: 20 } }, 'fail', { duty: { load: 30, feed: 20 } }],
  ['wear-speed', { duty: { feed: 30 } }, 'caution', { duty: { feed: 28 } }],
  ['wear-speed', { duty: { feed: 36 } }, 'fail', { duty: { feed: 28 } }],
  ['wear-heat', { material: PLA, duty: { temperature: 44.5 } }, 'fail', { material: PLA, duty: { temperature: 30 } }],
  ['wear-heat', { material: PETG, duty: { ...UNTOLD } }, 'caution', { material: PETG }],
  ['wear-depth', { material: 'pla', duty: { load: 30 } }, 'caution', { material: 'pla', duty: { load: 10 } }],
  ['wear-depth', { material: 'pla', duty: { load: 120 } }, 'fail', { material: 'pla', duty: { load: 10 } }],
  [
    'wear-depth',
    { material: 'pla', duty: { load: 10, dust: 'yes' } },
    'fail',
    { material: 'pla', duty: { load: 1, dust: 'yes' } },
  ],
  ['wear-limit', { screw: 'M5', body: { diameter: 12 } }, 'caution', {}],
  ['grease', { material: { preset: 'pc', shrink: undefined } }, 'caution', { material: 'pc', duty: { grease: 'dry' } }],
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

  it('half the turns carry, the chamfered ends not counted: 30 N / (π·9·0.85·15.35/2/2) = 0.3253 MPa', () => {
    expect(found('thread-pressure')!.value).toBeCloseTo(30 / (Math.PI * 9 * 0.85 * 3.8375), 6);
  });

  it('a tooth is rooted at the nut’s major: 6·F·a/(π·D·w²·n), a = (10.8 − (8.3 + 10)/2)/2', () => {
    const width = 2 - (1.1 - (10.8 - 9.3) * Math.tan(Math.PI / 12));
    const stress = (6 * 30 * 0.825) / (Math.PI * 10.8 * width ** 2 * 3.8375);
    expect(found('thread-bending')!.value).toBeCloseTo(stress, 6);
  });

  it('a major that may be smaller leaves less flank: 7.95 ± 0.1 of Tr8x2 on its basic pitch diameter', () => {
    const row = found('thread-pressure', { screw: { designation: 'Tr8x2', major: '7.95 ± 0.1 mm', minor: '5.5 mm' } })!;
    // nut minor 7.95 − 2 + 0.3, major 7.95 + 0.5 + 0.3
    const turns = (major: number) => (18 - 2 * (0.5 + (8.75 - (6.25 + major) / 2) / 2)) / 4;
    const at = (major: number) => 30 / (Math.PI * 7 * ((major - 6.25) / 2) * turns(major));
    expect(row.value).toBeCloseTo(at(7.95), 6);
    expect(row.most).toBeCloseTo(at(7.85), 6);
  });

  it('limits fall with heat and time', () => {
    const most = (id: string, duty: object) => found(id, { duty: { ...COLD, ...duty } })!.limit!.max!;
    for (const id of ['thread-shear', 'thread-bending', 'creep']) {
      expect(most(id, { temperature: 60 }) / most(id, { temperature: 23 })).toBeCloseTo(Math.exp(-37 / 70), 3);
      // back and forth as long as cold, then PA12 stands for years as well as it is pushed about; hot, 1,000 hours are less
      expect(most(id, { axis: 'horizontal' }) / most(id, {})).toBeCloseTo(Math.exp(7 / 70 - 7 / 85), 5);
      const hot = { axis: 'horizontal', temperature: 79 };
      expect(most(id, hot) / most(id, { temperature: 79 })).toBeCloseTo(Math.exp(56 / 70 - 56 / 85), 4);
    }
    expect(most('thread-pressure', { temperature: 60 })).toBeCloseTo(Math.exp(-37 / 85), 6);
  });

  it('teeth are judged as warm as they are after a run', () => {
    // 30 N at 85.03 mm/s and friction 0.2: 0.5102 W over 10 W/(m²·K) on 1279 mm² for 9 of 60 s: 5.98 K; the skin, 0.02766 MPa·m/s for 9 s:
    // 2·0.2·27660·√(9/π)/13585 = 1.38 K. So 37.36 °C
    const limit = (id: string) => found(id)!.limit!.max!;
    expect(limit('thread-pressure')).toBeCloseTo(Math.exp(-14.36 / 85), 3);
    expect(limit('thread-shear')).toBeCloseTo(20 * 0.2 * Math.exp(-14.36 / 70), 2);
    expect(limit('thread-bending')).toBeCloseTo(42 * 0.2 * Math.exp(-14.36 / 70), 2);
    expect(limit('creep')).toBeCloseTo(0.5 * 1.2 * 42 * 0.2 * Math.exp(-14.36 / 70), 2);
    expect(found('thread-stall')!.message).toMatch(
      /of 17\.7 MPa for a moment at 37 °C; stalled .*, and friction warms its teeth in air of 30 °C/,
    );
    // dry, friction 0.5: 2.5 times as much warmth, 48.4 °C
    expect(found('thread-pressure', { duty: { grease: 'dry' } })!.limit!.max!).toBeCloseTo(Math.exp(-25.4 / 85), 3);
  });

  it('rests that nobody tells are asked for where only teeth that never cool fail', () => {
    // 60 N: 0.65 MPa; without a rest 79.8 K and 4.1 K: e^(−91/85) = 0.34 MPa at 114 °C, in the cool 0.92
    const pressed = (duty: object) => found('thread-pressure', { duty: { load: 60, ...duty } })!;
    expect(pressed({})).toMatchObject({ word: 'yes' });
    expect(pressed(UNTOLD).missing).toEqual(['duty.on_time', 'duty.cycle']);
    expect(pressed({ on_time: undefined, cycle: undefined }).missing).toEqual(['duty.cycle']);
    expect(pressed({ moving: undefined, on_time: 60 })).toMatchObject({ word: 'but' });
    // one that never rests has nothing to tell, nor one whose feed nobody knows
    expect(pressed({ ...UNTOLD, moving: '100 %' }).word).toBe('but');
    expect(pressed({ ...UNTOLD, feed: undefined }).word).toBe('yes');
    // 3.25 MPa of 2.76 are too much in the cool too
    expect(pressed({ ...UNTOLD, load: 300 }).word).toBe('no');
    // no friction can boil what has no law: above 250 °C nothing is worked out
    expect(pressed({ ...UNTOLD, load: 2000, feed: 200 }).word).toBe('no');
  });

  it('a catch nut’s pocket carries no load', () => {
    const caught = found('thread-shear', {
      body: { diameter: 30 },
      flange: { diameter: 48 },
      holes: { circle: 39 },
      catch_nut: { across_flats: 13, height: 5.2 },
    })!;
    // 5.2 + 0.8 of 18 mm, chamfers of 1.325 mm on what is left of it
    expect(caught.value).toBeCloseTo((found('thread-shear')!.value! * 15.35) / 9.35, 5);
  });

  it('both nuts of a sprung pair are judged, the main one with its spring', () => {
    const pair = {
      body: { diameter: 30, length: 24 },
      flange: { diameter: 48 },
      holes: { circle: 39 },
      family: {
        kind: 'anti-backlash',
        spring: { inside: '24 ± 0.1 mm', outside: '27 ± 0.1 mm', free: '20 ± 0.1 mm', solid: 7, rate: 6, working: 12 },
      },
    };
    const pressure = (force: number, length: number) => force / (Math.PI * 9 * 0.85 * ((length - 2.65) / 4));
    // 6 N/mm × 8 mm = 48 N; main nut 30 + 48 N on 24 mm, follower 48 N on 11 mm
    expect(found('thread-pressure', pair)!.value).toBeCloseTo(Math.max(pressure(78, 24), pressure(48, 11)), 5);
    expect(found('thread-pressure', pair)!.message).toContain('in the follower');
    expect(found('thread-pressure', { ...pair, duty: { load: 300 } })!.message).toContain('its spring included');
  });

  it.each([
    'thread-pressure',
    'thread-shear',
    'thread-bending',
    'flange-bending',
    'creep',
    'wear-pv',
    'wear-peak',
    'wear-heat',
  ])('%s is not judged without a load', (id) => {
    expect(found(id, { duty: { load: undefined } })).toMatchObject({
      verdict: 'caution',
      word: 'not-told',
      value: null,
      message: 'not judged: duty.load is missing',
    });
  });

  it.each([
    'thread-pressure',
    'thread-shear',
    'thread-bending',
    'thread-stall',
    'creep',
    'wear-pv',
    'wear-peak',
    'wear-heat',
  ])('%s is not judged without a temperature, but fails where it fails at 23 °C', (id) => {
    const cold = { temperature: undefined, moving: undefined, on_time: 60, motor: { torque: '0.1 N m' } };
    expect(found(id, { duty: cold })).toMatchObject({ verdict: 'caution', missing: ['duty.temperature'] });
    if (id === 'wear-heat') return;
    const much = { ...cold, load: 2000, feed: 20, motor: { torque: '3 N m' } };
    expect(found(id, { duty: much })).toMatchObject({ verdict: 'fail' });
  });

  it('the stall force is not judged without its motor', () => {
    expect(found('thread-stall', { duty: { motor: undefined } })!.message).toBe('not judged: duty.motor is missing');
    expect(found('thread-stall', { duty: { motor: { torque: undefined } } })!.message).toBe(
      'not judged: duty.motor.torque is missing',
    );
  });

  it('a screw that nobody measured may be as thin over its crests as its class allows', () => {
    // ISO 2903, 4h for a pitch of 2 mm: 0.18 mm under 10, arm 0.87 mm; π·9·0.76·(18 − 2.74)/4 = 81.98 mm² of flank bear 0.9209 MPa: 75.5 N
    const word = (load: number, screw: unknown = 'Tr10x2') =>
      found('thread-pressure', { screw, duty: { ...COLD, load } })!.word;
    expect(word(75)).toBe('yes');
    expect(word(77)).toBe('perhaps');
    expect(word(84, MEASURED)).toBe('yes');
  });

  it('takes a limit of the sheet', () => {
    const row = found('thread-pressure', { limits: { 'thread-pressure': 0.2 } })!;
    expect(row.verdict).toBe('caution');
    expect(row.message).toContain('bears 0.2 MPa in motion');
  });

  it('leaves out what does not apply', () => {
    expect(found('moisture', { material: 'pla' })).toBeUndefined();
    expect(found('wear-depth')).toBeUndefined();
    expect(found('flange-bending', { flange: undefined, holes: undefined })).toBeUndefined();
    expect(found('grease')).toBeUndefined();
    expect(found('wear-dust', { duty: { dust: 'no' } })).toBeUndefined();
  });
});

describe('rubbing', () => {
  // 6 mm/s × √((π·9/2)² + 1) = 6 × 14.172 = 85.03 mm/s, over half the flank 0.3253 MPa
  const running = ((30 / (Math.PI * 9 * 0.85 * 3.8375)) * 6 * Math.hypot((Math.PI * 9) / 2, 1)) / 1000;
  // barrel ⌀17/⌀9.3 × 18 of PA12: 2864 mm³, 2.89 g × 1600 J/(kg·K) over 10 W/(m²·K) on 1279 mm²
  const ring = (Math.PI / 4) * (17 ** 2 - 9.3 ** 2);
  const time = (ring * 18 * 1.01e-6 * 1600) / ((10 * (Math.PI * 17 * 18 + 2 * ring)) / 1e6);

  it('PV is judged over half the flank while it runs, and its rests count where on-time and cycle are told', () => {
    expect(found('wear-pv', { duty: UNTOLD })!.value).toBeCloseTo(running, 6);
    expect(found('wear-pv', { duty: { ...UNTOLD, load: 150 } })!.message).toContain('duty.on_time and duty.cycle');
    expect(found('wear-pv')!.value).toBeCloseTo(0.15 * running, 6);
    // a share of the time in motion alone tells nothing of how long it runs in one go
    expect(found('wear-pv', { duty: { on_time: undefined, cycle: undefined } })!.value).toBeCloseTo(running, 6);
    expect(found('wear-pv', { duty: { on_time: undefined } })!.value).toBeCloseTo(0.15 * running, 6);
    expect(found('wear-peak')!.value).toBeCloseTo(running, 6);
    // what never rests fails by what runs; where nobody tells of rests it is a caution
    const always = found('wear-pv', { duty: { ...UNTOLD, moving: '100 %', load: 150 } })!;
    expect(always).toMatchObject({ word: 'no', value: expect.closeTo(5 * running, 5) });
    expect(found('wear-pv', { duty: { ...UNTOLD, load: 150 } })!.word).toBe('but');
  });

  it('a cycle that is long beside the nut’s own time, which is shown, is not averaged', () => {
    const slow = found('wear-pv', { duty: { on_time: 900, cycle: 6000 } })!;
    const share = (1 - Math.exp(-900 / time)) / (1 - Math.exp(-6000 / time));
    expect(slow.value).toBeCloseTo(share * running, 5);
    expect(share).toBeGreaterThan(0.8);
    expect(slow.message).toContain(`own time of ${time.toFixed(0)} s`);
  });

  it('grease put on once counts 1.3, kept up 2, and warm air takes its share', () => {
    const most = (duty: object) => found('wear-pv', { duty })!.limit!.max!;
    expect(most({ grease: 'dry', temperature: 23 })).toBeCloseTo(0.1, 9);
    expect(most({ temperature: 23 })).toBeCloseTo(0.13, 9);
    expect(most({ regrease: 'yes', temperature: 23 })).toBeCloseTo(0.2, 9);
    expect(most({ temperature: 51.5 })).toBeCloseTo(0.065, 9);
    expect(found('wear-peak')!.limit!.max! / most({})).toBeCloseTo(3, 9);
  });

  // the contact's middle lies (8.5 − (6 + 8)/2)/2 = 0.75 mm inside the nut's major: chamfers take 1.25 mm at either end
  it('PLA on Tr8x2, 15 mm between its chamfers, 60 N at 10 mm/s: 0.0803 MPa·m/s on half the flank fails, dry and greased', () => {
    const sheet = { screw: 'Tr8x2', body: { length: 17.5 }, material: PLA, fit: { diametral: 0, axial: 0.1 } };
    for (const grease of ['dry', 'greased']) {
      const rows = { ...sheet, duty: { load: 60, feed: 10, grease, temperature: 23 } };
      expect(found('wear-peak', rows)!.value).toBeCloseTo(0.0803, 4);
      expect(found('wear-peak', rows)!.verdict).toBe('fail');
    }
  });

  it('662 mm/s of sliding passes with no plastic', () => {
    // Tr8x2: 11.04 mm a mm, 60 mm/s of feed
    for (const material of ['pa12', 'pom', 'pc', 'petg']) {
      const row = found('wear-speed', { screw: 'Tr8x2', material, duty: { feed: 60 } })!;
      expect(row.value).toBeCloseTo(662.4, 0);
      expect(row.verdict).toBe('fail');
    }
  });

  it('the skin is warmer than the air by 2·f·PV·√(t/π)/(e_s + e_p), 9 s here, and the nut at most by its own warmth', () => {
    const row = found('wear-heat')!;
    expect(found('thread-bending')!.message).toMatch(/to which friction warms its teeth in air of 30 °C/);
    expect(found('thread-bending', { duty: { feed: 0.01 } })!.message).not.toContain('friction warms');
    expect(row.message).not.toContain('dry print');
    const skin = (2 * 0.2 * running * 1e6 * Math.sqrt(9 / Math.PI)) / 13_585;
    expect(row.value).toBeCloseTo(30 + skin, 4);
    // friction 0.2 × 30 N × 85.03 mm/s = 0.51 W, 15 % of the time
    const perWatt = 1e6 / (10 * (Math.PI * 17 * 18 + 2 * ring));
    expect(row.most! - row.value!).toBeCloseTo(
      0.15 * 0.2 * 30 * 6 * Math.hypot((Math.PI * 9) / 2, 1) * 1e-3 * perWatt,
      3,
    );
    // dry it rubs at 0.5
    const dry = found('wear-heat', { duty: { grease: 'dry' } })!;
    expect(dry.value! - 30).toBeCloseTo(2.5 * skin, 4);
    // and a dry print may reach 1.1
    expect((dry.most! - 30) / (row.most! - 30)).toBeCloseTo(5.5, 4);
    expect(dry.message).toContain('may reach 1.1');
    // longer runs are judged by 20 s
    const long = found('wear-heat', { duty: UNTOLD })!.value! - 30;
    expect(long / skin).toBeCloseTo(Math.sqrt(20 / 9), 4);
  });

  it('a nut is worn out at a quarter of its tooth: (2 − 1.1)/4; a vertical axis is told that it drops', () => {
    expect(found('wear-limit')!.value).toBeCloseTo(0.225, 9);
    expect(found('wear-limit')!.message).toContain('drops the axis');
    expect(found('wear-limit', { duty: { axis: 'horizontal' } })!.message).not.toContain('drops');
  });

  it('grit is told, and counted tenfold', () => {
    expect(found('wear-dust', { duty: { dust: 'yes' } })!.verdict).toBe('caution');
    const depth = (dust?: string) => found('wear-depth', { material: 'pla', duty: { dust } })!;
    expect(depth('yes').value! / depth('no').value!).toBeCloseTo(10, 3);
    expect(depth().message).toContain('duty.dust');
  });
});
