import { describe, expect, it } from 'vitest';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';
import { BUSH, CLAMP } from '../../support/sleeve-sheets.js';

const finding = findingOf;
const clamp = (changes: Record<string, unknown>) => changed(CLAMP, changes);

describe('a sleeve worked by hand', () => {
  it('carries the screw at the motor end, once, and not beside a holder that does', () => {
    const places = (changes: Record<string, unknown>) => finding(clamp(changes), 'locating-bearings')!;
    expect(places({})).toMatchObject({ value: 1, message: "the motor's own bearing, through the rigid sleeve" });
    expect(places({ thrust_bearing: 'yes' }).message).toMatch(
      /^the thrust bearing at the motor end \(.*tighten the sleeve\)$/,
    );
    const two = places({ locating_holder: 'yes' });
    expect(two).toMatchObject({ word: 'no', value: 2 });
    expect(two.message).toMatch(/^the holder at its other end .* and the motor's own bearing, .*: keep one$/);
    expect(finding(BUSH, 'locating-bearings')).toBeUndefined();
  });

  it('is not balanced, and a bush turns with what it stands in', () => {
    expect(finding(clamp({ duty: { speed: 1600 } }), 'speed')!.message).toBe(
      '1600 rpm; screws on one side are not balanced: above 1500 rpm it may shake; turn slower, or use a balanced metal sleeve',
    );
    expect(finding(clamp({ duty: { speed: 1400 } }), 'speed')!.message).toMatch(/it may shake$/);
    expect(finding(clamp({}), 'speed')).toBeUndefined();
    expect(finding(changed(BUSH, { duty: { speed: 3000 } }), 'speed')).toBeUndefined();
  });

  it('holds twice the load and the screw that hangs on it', () => {
    // π/4·8²·300 mm³ of steel, 7.85 g/cm³, 9.81 N/kg: 1.16 N; 2·(10 + 1.16) = 22.3 N
    const hung = finding(clamp({ mounting: 'motor-above', duty: { load: 10, upward: 0, span: 300 } }), 'axial-grip')!;
    expect(hung.limit!.min).toBeCloseTo(22.32, 1);
    expect(hung.message).toContain('22 N are asked: 2 × 10 N and 1.2 N of its own weight (300 mm of it)');
    // lifted with 30 N, more than weighs on it: twice that
    const lifted = finding(
      clamp({ mounting: 'motor-below', duty: { load: 10, span: 300, upward: 30 } }),
      'axial-grip',
    )!;
    expect(lifted.limit!.min).toBe(60);
    expect(lifted.message).toContain('2 × 30 N with which the work lifts it');
  });

  it('hands what the work lifts with to the motor', () => {
    const lifted = clamp({
      mounting: 'motor-below',
      motor: { axial_limit: 60 },
      duty: { load: 20, span: 250, upward: 90 },
    });
    expect(finding(lifted, 'motor-thrust')).toMatchObject({ word: 'no', value: 90 });
  });

  it('presses its bore by what its screws pull, over the length and the diameter that they press on', () => {
    const pressed = (more: Record<string, unknown>) => finding(clamp(more), 'bore-pressure')!;
    const one = pressed({});
    expect(one.message).toMatch(/MPa on the bore of the motor end$/);
    // a shaft of 5 mm is pressed more than one of 8 mm, and nearly twice as much on half of its length
    const short = pressed({ motor: { shaft: { length: 24 / 2 } }, length: 48 });
    expect(short.value! / pressed({ length: 48 }).value!).toBeGreaterThan(1.5);
    expect(pressed({ motor: { shaft: { length: undefined } } })).toMatchObject({ missing: ['motor.shaft.length'] });
    const tight = pressed({ limits: { 'bore-pressure': { max: one.value! / 2 } } });
    expect(tight.message).toMatch(/ MPa: it sinks in; use a smaller motor_end.tightening, or a shaft that reaches/);
    const bare = clamp({
      shaft: undefined,
      screw: { designation: 'Tr8x2', major: 7.95 },
      motor: { shaft: { length: 24 } },
    });
    expect(finding(bare, 'bore-pressure')!.message).toMatch(/of the motor end$/);
  });

  it('presses it nearly twice as much with two screws, and its crests as others tell', () => {
    const strong = { motor: { shaft: { length: 40 } }, length: 70 };
    const by = (count: number) =>
      finding(clamp({ ...strong, motor_end: { clamp: { screw: 'M3', count, washers: 'yes' } } }), 'bore-pressure')!;
    expect(by(2).value! / by(1).value!).toBeGreaterThan(1.5);
    // thin crests beside a thick motor's shaft
    const thick = {
      motor: { shaft: { diameter: 14, flat: undefined, flat_length: undefined, length: 40 } },
      length: 70,
    };
    const screwed = clamp({ ...thick, shaft: undefined, screw: { designation: 'Tr8x2', major: 7.95 } });
    expect(finding(screwed, 'bore-pressure')!.message).toMatch(/of the motor end$/);
    expect(finding(BUSH, 'bore-pressure')).toBeUndefined();
  });

  it('of a level screw holds the load alone, or nothing', () => {
    const level = finding(clamp({ duty: { load: 10 } }), 'axial-grip')!;
    expect(level.limit).toEqual({ min: 20 });
    expect(level.message).toMatch(/2 × 10 N$/);
    expect(finding(clamp({ duty: { load: 0 } }), 'axial-grip')!.message).toMatch(/2 × no load$/);
    const hung = finding(clamp({ mounting: 'motor-above', duty: { load: 0, upward: 0, span: 300 } }), 'axial-grip')!;
    expect(hung.message).toMatch(/2 × 1\.2 N of its own weight/);
  });

  it('asks for the heat of both ends before it holds', () => {
    const untold = clamp({ duty: { load: 10, temperature: undefined } });
    expect(finding(untold, 'axial-grip')!.missing).toEqual(['duty.temperature']);
    // what slips cold slips hot: nothing is asked
    const slips = finding(clamp({ duty: { load: 900, temperature: undefined } }), 'axial-grip')!;
    expect(slips.word).toBe('no');
    expect(slips.message).toMatch(/; use (more or )?larger screws or a thrust bearing/);
  });

  it('is as strong as the weaker of its ends', () => {
    const pull = (changes: Record<string, unknown> = {}) =>
      finding(clamp({ duty: { load: 10 }, ...changes }), 'axial-grip')!.value!;
    const bare = { clamp: { washers: 'no' } };
    expect(pull({ screw_end: bare })).toBeLessThan(0.7 * pull());
    expect(pull({ motor_end: bare })).toBeLessThan(0.7 * pull());
  });

  it('asks for the screw only where it slips at its thinnest and holds as it is likely', () => {
    const greasy = { screw_end: { degreased: undefined } };
    const pulls = (load: number) =>
      finding(clamp({ ...greasy, shaft: undefined, screw: 'Tr8x2', duty: { load } }), 'axial-grip')!;
    expect(pulls(10)).toMatchObject({ word: 'but' });
    expect(pulls(80)).toMatchObject({ word: 'not-told', missing: ['screw.major'] });
    expect(pulls(100)).toMatchObject({ word: 'no' });
    // of a screw that was measured nothing is asked
    const measured = { ...greasy, shaft: undefined, screw: { designation: 'Tr8x2', major: 7.95 }, duty: { load: 80 } };
    expect(finding(clamp(measured), 'axial-grip')).toMatchObject({ word: 'but' });
  });

  it('slips along when the axis jams: the motor pulls on the screw and turns it', () => {
    // Tr8x2 at friction 0.05, µ/cos 15° = 0.0518: 3.5·(2 + 0.0518·π·7)/(π·7 − 0.0518·2) = 0.5019 mm, so 250 N·mm pull with 498.1 N;
    // a level load of 10 N takes 22.3 N·mm in work, at friction 0.5. On crests of 7.95 mm: √(498.1² + (2/7.95)²·(250² − 22.3²)) = 502.1 N
    const screw = {
      shaft: undefined,
      screw: { designation: 'Tr8x2', major: 7.95 },
      screw_end: { degreased: undefined },
      motor_end: { clamp: { count: 2 } },
      duty: { load: 10 },
    };
    const found = finding(clamp(screw), 'axial-grip')!;
    expect(found.fail_limit).toEqual({ min: 20 });
    expect(found.limit!.min).toBeCloseTo(502.1, 1);
    expect(found.message).toMatch(/; it slips when the axis jams, under 502 N; use .* or a thrust bearing/);
    // a bearing carries it instead
    expect(finding(clamp({ ...screw, thrust_bearing: 'yes' }), 'axial-grip')).toMatchObject({ word: 'yes' });
  });

  it('slips first in a jam where the thinner shaft is, though the other end holds less for good', () => {
    const pull = (motor: number, end: number, changes: Record<string, unknown> = {}) =>
      finding(
        clamp({
          shaft: undefined,
          screw: { designation: 'Tr8x8(P2)', major: '8 ± 0 mm' },
          duty: { load: 10 },
          ...{ motor_end: { friction: motor }, screw_end: { friction: end } },
          ...changes,
        }),
        'axial-grip',
      )!;
    // each end alone, beside one that holds more
    const [thin, thick] = [pull(0.14, 0.3).value!, pull(0.3, 0.085).value!];
    expect(thick).toBeLessThan(thin);
    // 3.5·(8 + 0.0518·π·7)/(π·7 − 0.0518·8) = 1.4825 mm: 168.6 N along, and 38 of 250 N·mm in work: on 5 mm
    // √(168.6² + (2/5)²·(250² − 38²)) = 195.5 N, on 8 mm 179.6 N
    expect(thick / 179.6).toBeGreaterThan(thin / 195.5);
    const jammed = pull(0.14, 0.085);
    expect(jammed).toMatchObject({ word: 'but', value: thin });
    expect(jammed.limit!.min).toBeCloseTo(195.5, 1);
    // 2 × 100 N are more than it holds for good
    const lifted = { mounting: 'motor-below', duty: { load: 10, span: 300, upward: 100 } };
    expect(pull(0.14, 0.085, lifted)).toMatchObject({ word: 'no', value: thick });
  });

  it('asks whether shafts are washed where what hangs on their friction hangs on that', () => {
    // the screw count stays: 250 N·mm of a motor ask for it
    const held = (load: number, ends: readonly [string | undefined, string | undefined]) => {
      const [motor, screw] = ends.map((degreased) => ({ clamp: { screw: 'M3', count: 2 }, degreased }));
      return finding(clamp({ motor_end: motor, screw_end: screw, duty: { load } }), 'axial-grip')!;
    };
    const [washed, greasy] = [held(10, ['yes', 'yes']).value!, held(10, ['no', 'no']).value!];
    expect(greasy).toBeLessThan(washed / 2);
    // twice the load lies between them
    const between = (washed + greasy) / 4;
    expect(held(between, ['no', 'yes']).word).toBe('no');
    expect(held(between, [undefined, 'yes'])).toMatchObject({ word: 'not-told', missing: ['motor_end.degreased'] });
    expect(held(between, ['yes', undefined])).toMatchObject({ word: 'not-told', missing: ['screw_end.degreased'] });
    expect(held(between, [undefined, undefined]).missing).toEqual(['motor_end.degreased', 'screw_end.degreased']);
    // of two screws and one, twice a load between these hangs on that with one
    const uneven = (load: number, ends: readonly [number, number]) =>
      finding(
        clamp({
          motor_end: { clamp: { screw: 'M3', count: ends[0] }, degreased: undefined },
          screw_end: { clamp: { screw: 'M3', count: ends[1] }, degreased: undefined },
          duty: { load },
        }),
        'axial-grip',
      )!;
    expect(uneven(greasy / 2.1, [1, 2]).missing).toEqual(['motor_end.degreased']);
    expect(uneven(greasy / 2.1, [2, 1]).missing).toEqual(['screw_end.degreased']);
    // and where both are below it nothing hangs on that
    expect(held(greasy / 2.1, [undefined, undefined]).word).toBe(held(greasy / 2.1, ['yes', 'yes']).word);
  });

  it('hands on what pushes it beside a thrust bearing as far as the weaker of its clamps holds twice that', () => {
    const clamps = (motor: number, end: number) => ({
      motor_end: { clamp: { screw: 'M3', count: motor } },
      screw_end: { clamp: { screw: 'M3', count: end } },
    });
    const pull = (motor: number, end: number) =>
      finding(clamp({ ...clamps(motor, end), duty: { load: 10 } }), 'axial-grip')!.value!;
    const [weak, strong] = [pull(1, 2), pull(2, 2)];
    expect(weak).toBeLessThan(strong - 20);
    const pushed = (force: number, motor: number, end: number) =>
      finding(
        clamp({
          ...clamps(motor, end),
          mounting: 'motor-above',
          thrust_bearing: 'yes',
          pair: 'no',
          motor: { axial_limit: 900 },
          // 300 mm of the shaft weigh 1.2 N
          duty: { load: 20, span: 300, upward: 21.2 + force },
        }),
        'both-ways',
      )!.verdict;
    const between = (weak + strong) / 4;
    expect(pushed(between, 2, 2)).toBe('pass');
    expect(pushed(between, 1, 2)).toBe('fail');
    expect(pushed(between, 2, 1)).toBe('fail');
    expect(pushed(weak / 2.1, 1, 2)).toBe('pass');
  });

  it('tells what a sheet asks of it in place of twice its load', () => {
    const asked = clamp({ duty: { load: 10 }, limits: { 'axial-grip': { min: 400 } } });
    expect(finding(asked, 'axial-grip')!.message).toMatch(/ 400 N are asked by the sheet/);
  });

  it('lets what hangs on it fall where it slips around, since friction then points around', () => {
    const hung = { mounting: 'motor-above', outside_diameter: 40, duty: { load: 10, span: 300 } };
    const screw = { shaft: undefined, screw: { designation: 'Tr8x2', major: 7.95 } };
    const grip = (changes: Record<string, unknown>) =>
      finding(clamp({ ...hung, ...screw, ...changes }), 'grip-torque')!;
    // 1.5 × 250 N·mm
    expect(grip({}).fail_limit).toEqual({ min: 375 });
    expect(grip({ mounting: undefined }).fail_limit).toEqual({ min: 375 });
    // 1.3 × 22.3 N·mm in work where it lies, stands, or is carried
    for (const safe of [{ mounting: 'horizontal' }, { mounting: 'motor-below' }, { locating_holder: 'yes' }])
      expect(grip(safe).fail_limit!.min).toBeCloseTo(29, 0);
  });

  it('asks for shocks where what it holds in work hangs on them', () => {
    // 1.3 × 22.3 N·mm in work, or 1.3 × 2.2 × 22.3 = 63.9 of heavy shock
    const screw = {
      shaft: undefined,
      screw: { designation: 'Tr8x2', major: 7.95 },
      screw_end: { degreased: undefined },
    };
    const of = (load: number, shock: string | undefined) =>
      finding(clamp({ ...screw, duty: { load, shock } }), 'grip-torque')!;
    expect(of(10, undefined).fail_limit!.min).toBeCloseTo(63.9, 0);
    expect(of(10, 'none').fail_limit!.min).toBeCloseTo(29, 0);
    // nylon holds three times that and no more: enough for 30 N evenly, and too little when they strike
    const nylon = (shock: string | undefined) =>
      finding(clamp({ ...screw, material: 'pa12', duty: { load: 30, shock } }), 'grip-torque')!;
    expect(nylon(undefined).missing).toEqual(['duty.shock']);
    expect([nylon('none').word, nylon('heavy').word]).toEqual(['but', 'no']);
  });

  it('leaves the pull to a bearing that carries it', () => {
    const carried = finding(clamp({ thrust_bearing: 'yes', duty: { load: 900 } }), 'axial-grip')!;
    expect(carried.limit).toEqual({ min: 0 });
    expect(carried.message).toBe('a thrust bearing carries the screw along its axis');
  });

  it('keeps 20 °C below where PC softens, 125 °C', () => {
    const at = (temperature: number) => finding(clamp({ motor: { temperature }, duty: { temperature: 30 } }), 'heat')!;
    expect(at(55)).toMatchObject({ value: 70, word: 'yes' });
    expect(at(105)).toMatchObject({ value: 20, word: 'yes' });
    expect(at(106)).toMatchObject({ value: 19, word: 'no' });
    expect(at(106).message).toContain('softens later');
    expect(at(105).message).not.toContain('softens later');
    // PLA on 55 °C: 52 − 55, whatever the room
    expect(finding(clamp({ material: 'pla', duty: undefined }), 'heat')).toMatchObject({ word: 'no', value: -3 });
  });

  it('counts the wall of a bush in lines of its nozzle, and asks it of a bush alone', () => {
    const wall = finding({ ...BUSH, printer: { nozzle: 0.4, line_width: 0.5, layer: 0.2 } }, 'bush-wall')!;
    expect(wall.limit).toEqual({ min: 1 });
    expect(wall.fail_limit).toEqual({ min: 0.5 });
    expect(wall.message).toContain(` ${(wall.value! / 0.5).toFixed(1)} lines`);
    // 0.6 mm in two lines: 0.3 mm each, which a nozzle of 0.25 lays (0.281 mm) and one of 0.4 does not
    expect(finding({ ...BUSH, bore: 6.4 }, 'bush-wall')!.message).toBe(
      '0.6 mm, 1.3 lines; use printer.nozzle: 0.25 mm, or drill the bore out for a thicker bush',
    );
    const wide = { nozzle: 0.8, layer: 0.2 };
    expect(finding({ ...BUSH, bore: 6.4, printer: wide }, 'bush-wall')!.message).toContain('printer.nozzle: 0.25 mm');
    const ids = (sheet: object) => check(design(sheet)).checks.map(({ id }) => id);
    expect(ids(CLAMP)).not.toContain('bush-wall');
    expect(ids(CLAMP)).not.toContain('bore-runout');
    for (const id of ['axial-grip', 'motor-thrust', 'over-constraint', 'grip-torque'])
      expect(ids(BUSH)).not.toContain(id);
  });

  it('lets a bush stand off by half of both plays, as surely as printer and plastic let it', () => {
    // 8 − 7.9 and 5.1 − 5; 0.05 mm of the printer, 0.01 of the reading, and what is uncertain of the shrink of 7.9 mm (± 0.5 %)
    const off = (compensation: unknown) =>
      finding({ ...BUSH, shaft: '5 ± 0.01 mm', material: 'pa12', printer: { compensation } }, 'bore-runout')!;
    const spread = (0.05 + 0.01 + 0.005 * 7.9) / 2;
    const found = off('file');
    expect(found.value).toBeCloseTo(0.1, 6);
    expect(found.most).toBeCloseTo(0.1 + spread, 5);
    // nobody takes 1.1 % of shrink out: the outside is 0.0869 smaller, the bore 0.0561
    const shrunk = off({ shrink: 'none', holes: 'file' });
    expect(shrunk.value).toBeCloseTo((0.1 + 0.0869 + 0.1 - 0.0561) / 2, 6);
    expect(shrunk.most).toBeCloseTo((0.1 + 0.0869 + 0.1 - 0.0561) / 2 + spread, 5);
    // nor the 0.15 mm of the printer's holes: the bore is tight, and the outside is as loose
    expect(off('none').value).toBeCloseTo((0.1 + 0.0869) / 2, 6);
    // an outside of 29.9 mm that grows by 1 % is tight in turn, and the bore wider by 0.051
    const grown = finding(
      {
        ...BUSH,
        bore: 30,
        material: { preset: 'pa12', shrink: { plane: '-1 %' } },
        printer: { compensation: { shrink: 'none', holes: 'file' } },
      },
      'bore-runout',
    )!;
    expect(grown.value).toBeCloseTo((0.1 + 0.051) / 2, 6);
  });
});
