import { describe, expect, it } from 'vitest';
import type { CollarDesign } from '../../../src/parts/collar/dimensions.js';
import { boreEnd } from '../../../src/parts/collar/plan.js';
import { design } from '../../../src/pipeline/design.js';
import { HALVES } from '../../support/collar-sheets.js';
import { couplingSheet } from '../../support/coupling-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';
import { CLAMP } from '../../support/sleeve-sheets.js';

type Changes = Record<string, unknown>;
const sleeve = (id: string, changes: Changes = {}) => findingOf(changed(CLAMP, changes), id);
const coupling = (id: string, changes: Changes = {}) => findingOf(couplingSheet(changes), id);
const ROUND = { motor: { shaft: { flat: undefined, flat_length: undefined } } };
const SCREWED = { motor_hub: { grip: 'set-screw', clamp: undefined } };
const COOL = { duty: { temperature: undefined } };
const would = (message: string) => Number(/would hold (\d+) N·mm/.exec(message)![1]);

describe('the torque of a grip, in words', () => {
  it("tells what is asked, 1.5 × the motor's, and all that holds", () => {
    // PC, 57.5 MPa: 0.5·1.2·57.5 under washers of 7 mm over a hole of 3.4, π/4·(7² − 3.4²) = 29.41 mm²: 1014 N
    expect(sleeve('grip-torque')!.message).toMatch(
      /^more than 375 N·mm, 1\.5 × the motor's; the motor end holds \d+ N·mm by its clamp after five years at 55 °C and friction 0\.15 \(1 × M3 with washers at 1014 N: first day \d+, at the end cold \d+, hot \d+, retightened once \d+; flat by itself \d+\)$/,
    );
  });

  it('names no flat of a round shaft, and no clamp where a set screw holds', () => {
    expect(sleeve('grip-torque', ROUND)!.message).toMatch(/retightened once \d+\)$/);
    expect(coupling('grip-torque', SCREWED)!.message).toMatch(
      /by its set screw after .* \(flat by itself \d+; set screw \d+\); /,
    );
  });

  it('is that of the weaker grip', () => {
    const greasy = coupling('grip-torque', {
      motor: { torque: 1 },
      screw_hub: { degreased: 'no' },
      duty: { load: 20, shock: 'none' },
    })!;
    expect(greasy.verdict).toBe('caution');
    // Tr8x2, 20 N, friction 0.5: 20·3.5·0.6384 = 44.7 N·mm
    expect(greasy.message).toMatch(
      /^slips when jammed, below 1500 N·mm, 1\.5 × the motor's; in work up to 45 N·mm \(20 N on the screw at friction 0\.5, a dry print may reach 1\.1\); the motor hub with \d+ N·mm too; the screw hub holds /,
    );
    expect(would(greasy.message)).toBeGreaterThanOrEqual(1500);
  });

  it('fails by what slips in work, or by what lets the axis fall', () => {
    const slips = coupling('grip-torque', { ...SCREWED, motor: { torque: 0.6 } })!;
    expect(slips.message).toMatch(/^slips, since 780 N·mm, 1\.3 × the greatest in work/);
    expect(would(slips.message)).toBeGreaterThanOrEqual(780);
    const falls = coupling('grip-torque', { ...SCREWED, screw: { designation: 'Tr8x8(P2)' } })!;
    expect(falls.message).toMatch(/^slips, and the axis falls: 450 N·mm, 1\.5 × the motor's, is not reached/);
  });

  it('counts a screw that nobody measured by its thinnest, and asks nothing where that holds', () => {
    expect(coupling('grip-torque', { screw: { major: undefined } })!.verdict).toBe('pass');
  });

  it('asks for the room, and for a screw that slips at its thinnest, unless it slips anyhow', () => {
    expect(sleeve('grip-torque', COOL)!.missing).toEqual(['duty.temperature']);
    expect(sleeve('grip-torque', { ...COOL, motor: { torque: 0.9 } })!.word).toBe('no');
    // a bore for crests of 8 mm closes further on those of 7.82 that the class allows, and holds less
    const unread = {
      shaft: undefined,
      screw: 'Tr8x2',
      screw_end: { friction: 0.04, clamp: { count: 1 } },
      motor_end: { clamp: { count: 2 } },
    };
    const easy = sleeve('grip-torque', { ...unread, motor: { torque: 0.05 } })!;
    expect(easy).toMatchObject({ word: 'yes', message: expect.stringContaining('the screw end holds') });
    const close = { motor: { torque: (0.999 * easy.value!) / 1.3e3 } };
    expect(sleeve('grip-torque', { ...unread, ...close })!.missing).toEqual(['screw.major']);
    expect(sleeve('grip-torque', { ...unread, motor: { torque: (1.001 * easy.value!) / 1.3e3 } })!.word).toBe('no');
    const read = { ...unread, screw: { designation: 'Tr8x2', major: '8 ± 0 mm' } };
    expect(sleeve('grip-torque', { ...read, ...close })!.word).toBe('but');
  });

  it('says where nothing of this plastic holds, and what heat takes from it', () => {
    const soft = sleeve('grip-torque', { material: 'pla' })!.message;
    expect(soft).toMatch(/; no clamp of pla up to two M6 holds it/);
    const share = Number(/; pla keeps (\d+) % of its stiffness so hot, PC far more$/.exec(soft)![1]);
    expect(share).toBeLessThan(60);
    // two M6 on a shaft of 24 mm: the second ends at 25.6 mm, beyond it
    const strong = (length: number) => sleeve('grip-torque', { motor: { torque: 2, shaft: { length } } })!.message;
    expect(strong(24)).toMatch(/; no clamp of pc up to two M6 holds it/);
    expect(strong(40)).not.toMatch(/stiffness|no clamp/);
    // a jam alone lets it slip: what heat takes is told, that nothing holds is not
    const jam = {
      hubs: { outside_diameter: 32 },
      motor: { torque: 20 },
      duty: { load: 5 },
      screw: { designation: 'Tr8x2', major: 7.95 },
    };
    const jammed = coupling('grip-torque', jam)!;
    expect(jammed.verdict).toBe('caution');
    expect(jammed.message).not.toMatch(/no clamp|would hold|undefined/);
  });

  it('counts no screw beyond the end of a shaft, and asks for its length where that decides', () => {
    // M3 with washers in a pocket of 8.01 mm end at 7.6 mm, and 9.71 mm further in, at 17.3 mm
    const held = (length?: number) =>
      coupling('grip-torque', {
        motor: { shaft: { length } },
        mounting: 'horizontal',
        duty: { load: 20, shock: 'none' },
      })!;
    const [whole, half] = [held(40), held(12)];
    expect(half.message).toMatch(/, one of them over the shaft, which reaches in 12 mm: first day/);
    // one of two screws, of whose force the slit takes as much as before
    expect(half.value!).toBeLessThan(0.5 * whole.value!);
    expect(whole.message).not.toMatch(/over the shaft/);
    expect(held(7).message).toMatch(/, none of them over the shaft, which reaches in 7 mm: /);
    expect(held()).toMatchObject({ word: 'not-told', missing: ['motor.shaft.length'] });
  });

  it('tells how many screws are too near to the web', () => {
    const near = { length: 14, clamp: { screw: 'M3', count: 1, washers: 'no' } };
    const short = coupling('grip-torque', { motor_hub: near })!;
    expect(short.value).toBe(0);
    expect(short.message).toMatch(/1 × M3 at \d+ N, none of them far enough from the slit's end to close it: first/);
    const words = [20, 22, 24, 26, 30, 40].map(
      (length) =>
        coupling('grip-torque', { motor_hub: { length, clamp: { screw: 'M3', count: 2, washers: 'no' } } })!.message,
    );
    expect(words.filter((one) => one.includes(', one of them far enough')).length).toBeGreaterThan(0);
    expect(words.at(-1)).not.toContain('far enough');
    expect(short.message).toMatch(/ would hold \d+ N·mm.*, [\d.]+ mm longer$/);
  });
});

describe('the pressure of a flat, by hand', () => {
  const worn = (torque: number, changes: Changes = {}) =>
    sleeve(
      'flat-pressure',
      changed({ motor: { torque, shaft: { flat_length: 10.5 } }, motor_end: { friction: 0.02 } }, changes),
    );

  it('grows along half of the flat in work', () => {
    // half the chord √(2.5² − 2²) = 1.5 mm: 10·1.5²/3 = 7.5 N·mm for a MPa; 20 N·mm press 2.667 MPa
    const row = worn(20e-3, { duty: { reversing: 'no' } })!;
    expect(row.value).toBeCloseTo(20 / 7.5, 4);
    expect(row.message).toMatch(/^2\.7 MPa in work in the motor end, which bears [\d.]+ MPa$/);
    expect(worn(20e-3, { duty: { reversing: 'no', temperature: undefined } })!.missing).toEqual(['duty.temperature']);
    // work that crushes it is no caution
    expect(row.limit).toEqual(row.fail_limit);
    const small = { clamp: { count: 1, washers: 'no' } };
    const crushed = worn(0.25, { motor_end: small, duty: { reversing: 'no' } })!;
    expect(crushed).toMatchObject({ word: 'no', limit: row.limit });
    expect(crushed.message).toMatch(/; a clamp that holds by itself, a longer hub or less heat spares it$/);
  });

  it('is that of the motor where the clamp slips in a jam', () => {
    const row = worn(2)!;
    expect(row.value).toBeCloseTo(2000 / 7.5, 3);
    expect(row).toMatchObject({ verdict: 'fail', limit: { max: expect.any(Number) } });
    expect(row.fail_limit).toEqual(row.limit);
    expect(row.message).toMatch(
      /when the clamp slips in a jam in the motor end.*; a longer hub or less heat spares it; no clamp of pc/,
    );
    // what holds all that the motor gives is named
    const spared = sleeve('flat-pressure', { motor: { torque: 1.1 } })!.message;
    expect(spared).toMatch(/ would hold \d+ N·mm.*: that spares it, as a longer hub or less heat does$/);
    expect(would(spared)).toBeGreaterThanOrEqual(1100);
    // cold it is crushed as well: nothing is asked
    expect(worn(2, COOL)).toMatchObject({ word: 'no', value: row.value });
    // a limit that a sheet sets is the one that is told
    expect(worn(2, { limits: { 'flat-pressure': { max: 300 } } })!.message).toMatch(/, which bears 300 MPa$/);
  });

  it('is that of the worse end', () => {
    // 4 mm with a flat of 3.6: half the chord √(2² − 1.6²) = 1.2 mm, 15·1.2²/3 = 7.2 N·mm for a MPa
    const thin = { motor: { torque: 2 }, shaft: { diameter: 4, flat: 3.6, flat_length: 15.5 } };
    const row = sleeve('flat-pressure', thin)!;
    expect(row.value).toBeCloseTo(2000 / 7.2, 3);
    expect(row.message).toContain('in the screw end');
    // both slip: 2000/7.5 at the motor, 2000/7.2 at the screw
    const both = worn(2, { shaft: { diameter: 4, flat: 3.6, flat_length: 15.5 }, screw_end: { friction: 0.02 } })!;
    expect(both.value).toBeCloseTo(2000 / 7.2, 3);
    expect(both.message).toContain('in the screw end');
    // a deeper flat of 3.5 on 4 mm: half the chord √(2² − 1.5²), 15·1.75/3 = 8.75 N·mm for a MPa, less than the motor's
    const deep = worn(2, { shaft: { diameter: 4, flat: 3.5, flat_length: 15.5 }, screw_end: { friction: 0.02 } })!;
    expect(deep.value).toBeCloseTo(2000 / 7.5, 3);
    expect(deep.message).toContain('in the motor end');
  });

  it('is asked of nothing round', () => {
    expect(sleeve('flat-pressure', ROUND)).toBeUndefined();
    expect(sleeve('flat-pressure')!.message).toBe('none: friction holds more than the motor gives');
  });
});

describe('the pressure of a clamped bore, by hand', () => {
  it('is the press of the screws over what is held of the shaft', () => {
    expect(sleeve('bore-pressure', ROUND)!.word).toBe('yes');
    // one screw over it presses a shaft of 9 mm as hard as one of 10, on less of it
    const held = (length: number, more: Changes = {}) =>
      sleeve('bore-pressure', changed(changed(ROUND, { motor: { shaft: { length } } }), more))!;
    expect(held(9).value).toBeCloseTo((10 / 9) * held(10).value!, 3);
    // M3 with washers on pc: 0.9 · 1014 N, by (e + R)/R = (5.91 + 8.5)/8.5 = 1.695: 1547 N on 10 · 5 mm
    expect(held(10).value).toBeCloseTo(30.9, 0);
    const strong = held(9, { motor_end: { clamp: { screw: 'M4' } } });
    expect(strong).toMatchObject({ word: 'but', limit: { max: 34.5 }, fail_limit: null });
    expect(strong.message).toMatch(/^[\d.]+ MPa on the bore of the motor end of 34\.5 MPa: it sinks in; use a smaller/);
    const untold = sleeve('bore-pressure', { motor: { shaft: { length: undefined } } });
    expect(untold).toMatchObject({ word: 'not-told', missing: ['motor.shaft.length'] });
  });
});

describe('the pressure under clamp screws, by hand', () => {
  it('is that of the harder tightened one over the ring of its washer', () => {
    // 300 and 500 N·mm: 500/(0.2·3) = 833 N on π/4·(7² − 3.4²) = 29.405 mm²
    const row = coupling('clamp-pressure', { motor_hub: { tightening: 0.5 }, screw_hub: { tightening: 0.3 } })!;
    expect(row.value).toBeCloseTo(500 / 0.6 / 29.405, 3);
    expect(row.message).toBe('28.3 MPa of 34.5 MPa');
    expect(coupling('clamp-pressure', { motor_hub: { tightening: 1 } })!.message).toMatch(
      /; it sinks in: tighten less, or use washers$/,
    );
    expect(coupling('clamp-pressure')).toBeUndefined();
  });
});

describe('the strain of a hub that closes', () => {
  it('is told in per cent of what the plastic takes', () => {
    const { value, message } = sleeve('closing-strain')!;
    const [, strain, takes] = /^([\d.]+) % in the motor end.*; pc takes ([\d.]+) %$/.exec(message)!;
    // 0.8 % crazes PC in years
    expect(Number(takes)).toBeCloseTo(0.8, 6);
    expect(Number(strain)).toBeCloseTo(0.8 * value!, 2);
  });

  it('is that of the hub that closes further, and hangs on a screw that nobody measured', () => {
    const loose = sleeve('closing-strain', { screw_end: { bore_clearance: 0.3 } })!;
    expect(loose).toMatchObject({ word: 'no', message: expect.stringContaining('% in the screw end') });
    expect(sleeve('closing-strain', { motor_end: { bore_clearance: 0.3 } })!.message).toContain('% in the motor end');
    expect(coupling('closing-strain')!.word).toBe('yes');
    expect(coupling('closing-strain', { screw: { major: undefined } })!.missing).toEqual(['screw.major']);
    expect(coupling('closing-strain', { screw: { major: undefined }, material: 'pla' })!.word).toBe('no');
  });

  it('is cured by less clearance where it is too much, and asked of no hub without a slit', () => {
    expect(sleeve('closing-strain', { material: 'pla' })!.message).toMatch(
      /; use a smaller motor_end.bore_clearance, a thinner wall or a tougher plastic$/,
    );
    expect(coupling('closing-strain', { ...SCREWED, screw: undefined })).toBeUndefined();
  });
});

describe('a hub on the crests of a screw', () => {
  it('has grease on it unless it is washed, and is no shaft', () => {
    const screw = {
      shaft: undefined,
      screw: { designation: 'Tr8x2', major: 7.95 },
      screw_end: { degreased: undefined },
    };
    expect(sleeve('crest-grip', screw)!.message).toMatch(
      /^the crests are 37 % of the bore, [\d.]+ MPa on them, and grease leaves a friction of 0\.05: wash it off and say screw_end\.degreased: yes; /,
    );
    expect(sleeve('crest-grip', { ...screw, screw_end: { degreased: 'yes' } })!.message).not.toContain('grease');
    expect(sleeve('crest-grip')).toBeUndefined();
  });

  it('presses on 37 % of the bore with what is left of its screws: two halves of PC, an M3 of 1014 N on either side', () => {
    const sheet = changed(HALVES, {
      shaft: undefined,
      screw: { designation: 'Tr10x2', major: '9.9 ± 0 mm' },
      hold: { degreased: 'yes', clamp: { screw: 'M3', count: 1 } },
    });
    const row = findingOf(sheet, 'crest-grip')!;
    const length = boreEnd((design(sheet) as CollarDesign).finished);
    // 0.5·1.2·57.5 MPa under washers of 7 mm over holes of 3.4; a tenth beds in
    const preload = 34.5 * (Math.PI / 4) * (7 ** 2 - 3.4 ** 2);
    expect(row.value).toBeCloseTo((2 * 0.9 * preload) / (0.37 * length * 9.9), 4);
    expect(row.limit).toEqual({ max: expect.closeTo(34.5, 6) });
    expect(row).toMatchObject({
      word: 'but',
      message: expect.stringMatching(/ MPa on them of 34\.5 MPa: they sink in; a turned end/),
    });
    const borne = findingOf(changed(sheet, { limits: { 'crest-grip': { max: 50 } } }), 'crest-grip')!;
    expect(borne).toMatchObject({ word: 'yes', message: expect.stringMatching(/ MPa on them$/) });
    const two = changed(sheet, { hold: { clamp: { count: 2 } } });
    const longer = boreEnd((design(two) as CollarDesign).finished);
    expect(findingOf(two, 'crest-grip')!.value).toBeCloseTo((4 * 0.9 * preload) / (0.37 * longer * 9.9), 4);
  });
});
