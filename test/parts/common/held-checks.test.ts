import { describe, expect, it } from 'vitest';
import type { Limits } from '../../../src/judge/check.js';
import { limitsInForce } from '../../../src/judge/limits-in-force.js';
import { heat, shrinkAppliedOnce } from '../../../src/parts/common/checks.js';
import type { HeldView } from '../../../src/parts/common/held.js';
import { heldChecks } from '../../../src/parts/common/held-checks.js';
import { axialResidual, holeResidual, planeResidual } from '../../../src/parts/common/residual.js';
import type { SleeveDesign } from '../../../src/parts/sleeve/dimensions.js';
import { heldIn } from '../../../src/parts/sleeve/held-in.js';
import { design } from '../../../src/pipeline/design.js';
import { couplingSheet } from '../../support/coupling-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';
import { CLAMP } from '../../support/sleeve-sheets.js';

type Changes = Record<string, unknown>;
const sleeve = (id: string, changes: Changes = {}) => findingOf(changed(CLAMP, changes), id);
const coupling = (id: string, changes: Changes = {}) => findingOf(couplingSheet(changes), id);
const SCREWED = { motor_hub: { grip: 'set-screw', clamp: undefined }, screw: undefined };

describe('what moves a check of a held shaft', () => {
  it('is told by the fields of its own body, each once', () => {
    const checks = heldChecks(() => undefined, { outside: 'outside_diameter', holds: ['motor_end', 'screw_end'] });
    const moves = (id: string) => checks.find((one) => one.id === id)!.moves.split(', ');
    expect(moves('clamp-pressure')).toEqual([
      'motor_end.tightening',
      'screw_end.tightening',
      'motor_end.clamp.washers',
      'screw_end.clamp.washers',
      'material',
      'outside_diameter',
      'motor_end',
      'screw_end',
    ]);
    expect(moves('closing-strain')).toEqual([
      'motor_end.bore_clearance',
      'screw_end.bore_clearance',
      'outside_diameter',
      'material',
      'motor_end',
      'screw_end',
    ]);
  });
});

describe('what a held shaft is not told', () => {
  const untold = { motor_hub: { degreased: undefined } };

  it('is whether it is free of grease, asked for of that bore alone', () => {
    // M3 with washers on 5 mm: what holds at friction 0.15 does not at a third of it
    expect(coupling('grip-torque', untold)).toMatchObject({ word: 'not-told', missing: ['motor_hub.degreased'] });
    expect(coupling('grip-torque')!.word).not.toBe('not-told');
    expect(coupling('grip-torque', { motor_hub: { degreased: 'no' } })!.verdict).toBe('fail');
    const light = { ...untold, motor: { torque: 0.01 } };
    expect(coupling('grip-torque', light)!.word).toBe('yes');
  });

  it('is asked of each bore for itself', () => {
    // grease leaves a third of the grip, friction 0.05 for 0.15: too little on 5 mm first, which hold less than 8; what is told stands
    const asked = (torque: number, motor?: 'yes', screw?: 'yes') =>
      sleeve('grip-torque', { motor: { torque }, motor_end: { degreased: motor }, screw_end: { degreased: screw } })!;
    expect(asked(0.15, undefined, undefined).missing).toEqual(['motor_end.degreased']);
    expect(asked(0.15, 'yes', undefined).word).toBe('yes');
    expect(asked(0.3, undefined, 'yes').missing).toEqual(['motor_end.degreased']);
    expect(asked(0.3, 'yes', undefined).missing).toEqual(['screw_end.degreased']);
    expect(asked(0.3, undefined, undefined).missing).toEqual(['motor_end.degreased', 'screw_end.degreased']);
  });

  it('is asked by every check of what is held that it changes', () => {
    const made = design(changed(CLAMP, { motor: { torque: 0.3 }, motor_end: { degreased: undefined } }));
    const grip = heldChecks((view: HeldView) => view, { outside: 'outside', holds: ['motor_end'] }).find(
      ({ id }) => id === 'grip-torque',
    )!;
    const view = heldIn(made as SleeveDesign)!;
    expect(grip.run(view, limitsInForce(grip.limits))).toMatchObject({
      kind: 'not-judged',
      missing: ['motor_end.degreased'],
    });
  });

  const TWO = { clamp: { screw: 'M3', count: 2, washers: 'yes' } };
  const reaching = (torque: number, length?: number) =>
    sleeve('grip-torque', {
      motor: { torque, shaft: { diameter: 8, flat: undefined, flat_length: undefined, length } },
      shaft: { diameter: 5, length: 30 },
      motor_end: TWO,
      screw_end: TWO,
    })!;

  it('is how far its shaft reaches in, where a grip on one and a half diameters of that shaft is too weak', () => {
    // 12 mm of 8 lie under the first M3 alone; the other shaft, 5 mm, keeps both of its own
    expect(reaching(0.5).word).toBe('yes');
    expect(reaching(0.6)).toMatchObject({ word: 'not-told', missing: ['motor.shaft.length'] });
    expect(reaching(0.6, 30).word).toBe('yes');
    expect(reaching(0.6, 12).word).toBe('but');
  });

  it('is how far it reaches in for every check of a grip', () => {
    const made = design(changed(CLAMP, { motor: { shaft: { length: undefined } } }));
    const grip = heldChecks((view: HeldView) => view, { outside: 'outside', holds: [] }).find(
      ({ id }) => id === 'grip-torque',
    )!;
    const view = heldIn(made as SleeveDesign)!;
    for (const held of [view.held, view.held.slice(0, 1)])
      expect(grip.run({ ...view, held }, limitsInForce(grip.limits))).toMatchObject({
        kind: 'not-judged',
        missing: ['motor.shaft.length'],
      });
  });

  it('is how far it reaches in, unless its bore is short already', () => {
    const level = { mounting: 'horizontal', motor: { shaft: { length: undefined } } };
    expect(coupling('shaft-engagement', level)).toMatchObject({ word: 'not-told', missing: ['motor.shaft.length'] });
    const short = { ...level, limits: { 'shaft-engagement': { min: 9 } } };
    expect(coupling('shaft-engagement', short)!.word).toBe('no');
  });
});

describe('a shaft in its bore, by hand', () => {
  it('reaches in by so many of its diameters', () => {
    // 5 mm and 7 mm long: 1.4 diameters, where one and a half are wanted
    const short = coupling('shaft-engagement', { mounting: 'horizontal', motor: { shaft: { length: 7 } } })!;
    expect(short.value).toBeCloseTo(1.4, 6);
    expect(short.message).toMatch(/^7 mm in the motor hub; the shaft must reach further in/);
    const good = sleeve('shaft-engagement')!;
    expect(good.value).toBeGreaterThanOrEqual(1.5);
    expect(good.message).toMatch(/ mm in the (motor|screw) end$/);
  });

  it('stands aside by half of the play', () => {
    const asked = (bore_clearance: number) => coupling('bore-runout', { motor_hub: { bore_clearance } })!;
    // 0.1 mm more of clearance is 0.05 mm more to one side
    expect(asked(0.3).value! - asked(0.2).value!).toBeCloseTo(0.05, 6);
    expect(asked(0.3).message).toMatch(/; a smaller motor_hub.bore_clearance keeps it in the middle$/);
    expect(asked(0.05).message).toMatch(/mm at most$/);
    // a bore that is tight at its likeliest stands nowhere aside
    expect(asked(-0.1).value).toBeGreaterThanOrEqual(0);
  });

  it('is turned by a key of half the screw: ISO 4762, 2.5 mm for M3', () => {
    expect(sleeve('tool-access')!.message).toBe('straight in from the side with a key of 2.5 mm for M3');
    expect(coupling('tool-access', SCREWED)).toBeUndefined();
    expect(coupling('head-inside', SCREWED)).toBeUndefined();
  });

  it('keeps heads inside a wide outline', () => {
    const inside = sleeve('head-inside', { outside_diameter: 40 })!;
    expect(inside.message).toMatch(/^they keep [\d.]+ mm inside it, so that it catches nothing when it turns$/);
    expect(inside.verdict).toBe('pass');
  });
});

/** What a check finds of shafts as they are held, of which the rest is not looked at. */
function told(id: string, held: readonly object[], max?: number, nozzle = 0.4) {
  const check = heldChecks((view: HeldView) => view, { outside: 'outside', holds: [] }).find((one) => one.id === id)!;
  const limits = max === undefined ? check.limits : { pass: { max } };
  const view = {
    held,
    printer: { nozzle, holeOffset: { at_zero: 0, per_mm: 0 }, holeSpread: 0.06, compensation: {} },
    material: { shrink: { plane: { least: 0, likely: 0, most: 0 } } },
  };
  return check.run(view as never, limitsInForce(limits)) as {
    value: { likely: number; most: number };
    message: string;
    limits?: Limits;
  };
}

describe('shafts that are held, piece by piece', () => {
  const shaft = (diameter: number) => ({ diameter: { least: diameter, likely: diameter, most: diameter } });
  const in8 = (name: string, engagement: number) => ({ name, engagement, shaft: shaft(8) });
  // ISO 4762 M3: head 5.68 mm knurled, 3 mm high; ISO 7089: 7 mm wide, 0.5 mm thick; ISO 4032: 6.01 mm over corners
  const clamp = {
    screw: 'M3',
    offset: 7,
    hole: 3.4,
    head: 6.2,
    headSeat: 4,
    nutSeat: 3,
    nut: 5.7,
    washers: false,
    screwLength: 10,
  };
  const at = (outside: number, more: object = {}) => ({ outside, clamp: { ...clamp, ...more } });

  it('the thinnest wall of all is told: four lines of the nozzle, and never less than 1.6 mm', () => {
    const end = (name: string, diameter: number) => ({ name, outside: 20, bore: { form: 'round', diameter } });
    const walls = (nozzle: number) => told('wall', [end('motor end', 10), end('screw end', 16)], undefined, nozzle);
    expect(walls(0.4)).toMatchObject({ value: { likely: 2 }, message: '2 mm: screw end, bore to outside' });
    expect(walls(0.8).message).toMatch(/; a larger outside gives it room$/);
    expect([0.25, 0.4, 0.8].map((nozzle) => walls(nozzle).limits)).toEqual(
      [1.6, 1.6, 3.2].map((min) => ({ pass: { min: expect.closeTo(min, 9) }, fail: { min: 1.6 } })),
    );
  });

  it('the shorter one is told', () => {
    const long = in8('motor end', 20);
    const short = in8('screw end', 8);
    for (const held of [
      [long, short],
      [short, long],
    ]) {
      const found = told('shaft-engagement', held);
      expect(found.value.likely).toBe(1);
      expect(found.message).toMatch(/^8 mm in the screw end; /);
    }
    // one and a half diameters are enough, and nothing is left to do
    expect(told('shaft-engagement', [in8('screw end', 12)]).message).toBe('12 mm in the screw end');
  });

  it('the looser one is told, and a tight one stands nowhere aside', () => {
    const bore = (clearance: number) => ({ ...in8('end', 20), clearance, bore: { diameter: 8 } });
    for (const clearances of [
      [0.02, 0.1],
      [0.1, 0.02],
    ]) {
      // half of 0.1 ± 0.06
      const { value } = told('bore-runout', clearances.map(bore));
      expect(value.likely).toBeCloseTo(0.05, 9);
      expect(value.most).toBeCloseTo(0.08, 9);
    }
    expect(told('bore-runout', [bore(0.02)]).value).toMatchObject({ least: 0 });
    expect(told('bore-runout', [bore(0.1)], 0.08).message).toMatch(/at most$/);
    expect(told('bore-runout', [bore(0.1)], 0.07).message).toMatch(/; a smaller \w+.bore_clearance/);
  });

  it('a key finds the head, and a nut driver the nut, of the tightest of them', () => {
    const room = (...clamps: object[]) =>
      told(
        'tool-access',
        clamps.map((more) => at(40, more)),
      ).value.likely;
    expect(room({})).toBeCloseTo(6.2 - 5.68, 9);
    expect(room({}, { head: 7 })).toBeCloseTo(6.2 - 5.68, 9);
    // on washers: 9 − 7 beside the head, 8 − 7 beside the nut's washer
    expect(room({ washers: true, head: 9, nut: 8 })).toBeCloseTo(1, 9);
    expect(room({ washers: true, head: 7.5, nut: 8.5 })).toBeCloseTo(0.5, 9);
  });

  it('corners of heads stand under the outline: √((7 + 2.84)² + (4 + 3)²) = 12.08', () => {
    const room = (...held: object[]) => told('head-inside', held);
    expect(room(at(30)).value.likely).toBeCloseTo(15 - Math.hypot(9.84, 7), 9);
    // half a millimetre of washer lifts it
    expect(room(at(30, { washers: true })).value.likely).toBeCloseTo(15 - Math.hypot(9.84, 7.5), 9);
    // a screw of 20 reaches 16 (15.5 on a washer) past the slit, beside a hole of 3.4: √(8.7² + 16²)
    expect(room(at(40, { screwLength: 20 })).value.likely).toBeCloseTo(20 - Math.hypot(8.7, 16), 9);
    expect(room(at(40, { screwLength: 20, washers: true })).value.likely).toBeCloseTo(20 - Math.hypot(8.7, 15.5), 9);
    // 12 − 12.08
    expect(room(at(60), at(24)).message).toMatch(/^they stand out of it by 0.08 mm and catch .*; a larger outside/);
    expect(room(at(2 * Math.hypot(9.84, 7))).message).toMatch(/^they keep 0 mm inside it, [^;]*$/);
    expect(told('head-inside', [{ outside: 20 }])).toBeUndefined();
  });

  it('bridges are slits, flats of nuts, and the tops of pockets that close at 45°', () => {
    const widest = (...held: object[]) => told('print-bridge', held);
    // a round pocket of 6.2 is flat over √2 − 1 of that; a nut of 5.7 over its flat, 5.7/√3
    expect(widest(at(40)).value.likely).toBeCloseTo(5.7 / Math.sqrt(3), 9);
    expect(widest(at(40, { head: 9 })).value.likely).toBeCloseTo(9 * (Math.SQRT2 - 1), 9);
    expect(widest(at(40, { washers: true, nut: 8.5 })).value.likely).toBeCloseTo(8.5 * (Math.SQRT2 - 1), 9);
    expect(widest({ slit: { width: 1.5 } }).value.likely).toBe(1.5);
    expect(widest({ setScrew: { slot: { thickness: 2.6 } }, slit: { width: 1.5 } }).value.likely).toBe(2.6);
    expect(widest({ setScrew: {} })).toBeUndefined();
    expect(widest({ slit: { width: 10 } }).message).toMatch(/close at 45°$/);
    expect(widest({ slit: { width: 11 } }).message).toMatch(/; smaller clamp or set screws, or support under it$/);
  });
});

describe('heat and compensation', () => {
  const judged = (duty: object, min?: number) =>
    heat.run({ duty, material: { name: 'abs', softening: 95 } as never }, limitsInForce({ pass: { min: min ?? 20 } }))!;

  it('keep a reserve below where the plastic softens', () => {
    expect(judged({})).toMatchObject({ missing: ['duty.temperature'] });
    expect(judged({ temperature: 75 })).toMatchObject({ value: { likely: 20 } });
    expect(judged({ temperature: 75 })!.message).toBe('abs softens at 95 °C, 75 °C around it');
    expect(judged({ temperature: 76 })!.message).toMatch(/; use a material that softens later/);
  });

  it('tell who takes shrink out', () => {
    const told = (compensationKnown: boolean) =>
      shrinkAppliedOnce.run(
        { printer: { compensation: { shrink: 'file', holes: 'slicer' }, compensationKnown } as never },
        limitsInForce(),
      )!;
    expect(told(true)).toMatchObject({ verdict: 'pass' });
    expect(told(true).message).toBe('shrink is taken out by this file, hole offset by the slicer');
    expect(told(false)).toMatchObject({ verdict: 'caution' });
  });

  it('leave shrink and hole offset where nobody compensates', () => {
    const material = { shrink: { plane: { least: 0.004, likely: 0.006, most: 0.009 } } } as never;
    const printer = (who: 'file' | 'none') =>
      ({ compensation: { shrink: who, holes: who }, holeOffset: 0.2, holeSpread: 0.05 }) as never;
    // 0.006·50 less, ± 0.003·50
    const left = planeResidual({ printer: printer('none'), material }, 50);
    expect(left.likely).toBeCloseTo(-0.3, 9);
    expect(left.most - left.likely).toBeCloseTo(0.15, 9);
    expect(planeResidual({ printer: printer('file'), material }, 50).likely).toBeCloseTo(0, 9);
    const hole = holeResidual({ printer: printer('none'), material }, 50);
    expect(hole.likely).toBeCloseTo(-0.3 - 0.2, 9);
    expect(hole.most - hole.likely).toBeCloseTo(0.15 + 0.05, 9);
    expect(holeResidual({ printer: printer('file'), material }, 50).likely).toBeCloseTo(0, 9);
  });
});

// PC shrinks by 0.65 % in the plane, and holes come out 0.15 mm narrow: 5.05 · 0.9935 − 0.15 = 4.87 of 5, 8.05 · 0.9935 − 0.15 = 7.85 of 8
describe('the bore as a shaft goes in', () => {
  const raw = { printer: { compensation: 'none' } };

  it('comes out as wide as it was wanted where somebody compensates', () => {
    expect(sleeve('bore-entry')).toMatchObject({ word: 'yes', value: 0.05 });
    expect(sleeve('bore-entry')!.message).toMatch(/^the bore of the (motor|screw) end comes out [58]\.05 mm wide$/);
  });

  it('is the narrowest of all that are held, less what nobody compensates', () => {
    const { value, message } = sleeve('bore-entry', raw)!;
    const { shrink } = (design(changed(CLAMP, raw)) as SleeveDesign).material;
    expect(value).toBeCloseTo(0.05 - shrink.plane.likely * 8.05 - 0.15, 4);
    expect(message).toMatch(
      /^the bore of the screw end comes out 7\.8\d mm wide; let slicer or file compensate \(printer\.compensation\), or more screw_end\.bore_clearance$/,
    );
    const wide = sleeve('bore-entry', changed(raw, { screw_end: { bore_clearance: 0.2 } }))!;
    expect(wide.message).toMatch(/motor_end\.bore_clearance$/);
    expect(wide.value).toBeCloseTo(0.05 - shrink.plane.likely * 5.05 - 0.15, 4);
  });

  it('needs no more than to be as wide as its shaft', () => {
    const close = { motor_end: { bore_clearance: 0 }, screw_end: { bore_clearance: 0 } };
    expect(sleeve('bore-entry', close)).toMatchObject({ word: 'yes', value: 0 });
    expect(sleeve('bore-entry', close)!.message).not.toMatch(/compensate/);
  });
});

it('leaves a length as the spread of its shrink, or all of it where nobody compensates', () => {
  const { material, printer } = design(changed(CLAMP, {})) as SleeveDesign;
  const axial = { least: 0.002, likely: 0.003, most: 0.005 };
  const of = (shrink: 'file' | 'none') =>
    axialResidual(
      {
        material: { ...material, shrink: { ...material.shrink, axial } },
        printer: { ...printer, compensation: { ...printer.compensation, shrink } },
      },
      50,
    );
  // 50 mm by 0.2 % to either side, about −0.15 mm
  expect(of('file').most).toBeCloseTo(0.1, 9);
  expect(of('file').likely).toBe(0);
  expect(of('none').likely).toBeCloseTo(-0.15, 9);
  expect(of('none').least).toBeCloseTo(-0.25, 9);
});
