import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { designNut } from '../../../src/parts/nut/dimensions.js';
import { nutMate } from '../../../src/parts/nut/mate.js';
import { nutSchema } from '../../../src/parts/nut/sheet.js';
import { nutBodies } from '../../../src/parts/nut/variants/bodies.js';
import { asFinished } from '../../../src/parts/nut/variants/mate.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { NO_COMMON_VOLUME } from '../../../src/solid/mate.js';
import type { Shape } from '../../../src/solid/recipe.js';
import { InputError } from '../../../src/units/faults.js';
import { FAMILY_BASE, METAL, SPRING } from '../../support/family-sheet.js';
import { findingOf } from '../../support/one-finding.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { soundOrRefused } from '../../support/sound-or-refused.js';
import { randomFamily } from './random-family.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const BASE = {
  ...FAMILY_BASE,
  duty: { axis: 'horizontal', load: 15, temperature: 25, grease: 'greased', moving: '10 %', feed: 5 },
};

const nutDesign = (sheet: object): NutDesign => designNut(nutSchema.parse(sheet), SHIPPED);
const finding = findingOf;
/** Each body fused once, to be tried in many poses. */
const fusedBodies = (made: NutDesign): Shape[] =>
  nutBodies(made).map(({ recipe }) => ({ kind: 'mesh', mesh: kernel.fuse(recipe.shape) }));
const still = { by: [0, 0, 0] as const, turn: 0 };

describe('members of the nut family', () => {
  it.each([
    ['split, closed by screws', { family: { kind: 'split' } }, 2],
    ['split, closed by a ring', { family: { kind: 'split', closed: 'ring' } }, 2],
    ['clamped', { family: { kind: 'clamped' } }, 1],
    // keys in PETG bear some 6 N of spring: 1.5 · 1.033 · 4 N
    ['anti-backlash', { family: { kind: 'anti-backlash', spring: SPRING }, duty: { ...BASE.duty, load: 4 } }, 2],
    ['holder of a hexagon nut', { family: { kind: 'holder', nut: METAL } }, 1],
    [
      'holder of a square nut',
      { family: { kind: 'holder', nut: { ...METAL, shape: 'square' } }, flange: undefined, holes: undefined },
      1,
    ],
    ['with a nut that stands by', { catch_nut: METAL }, 1],
  ])('%s: closed, mating, printing without support', async (_, extra, count) => {
    const { report } = await makePart({ ...BASE, ...extra }, { kernel });
    expect(
      report.checks.filter(({ verdict }) => verdict === 'fail').map(({ id, message }) => `${id}: ${message}`),
    ).toEqual([]);
    expect(report.bodies).toHaveLength(count);
    expect(report.bodies.every(({ closed }) => closed)).toBe(true);
    expect(report.print!.support).toBe('none');
    expect(report.hardware.length).toBeGreaterThan(0);
  });

  it('splits a nut into halves that together are the nut, with the screw in it like in a whole one', () => {
    const made = asFinished(nutDesign({ ...BASE, family: { kind: 'split', closed: 'ring' }, holes: undefined }));
    const [a, b] = fusedBodies(made);
    const { screw, play } = nutMate(made);
    const bar = { kind: 'thread' as const, thread: { ...screw, from: -5, to: 27 } };
    const push = 0.45 * play;
    const poses = [still, { by: [0, 0, push] as const, turn: 0 }, { by: [0, 0, -push] as const, turn: 0 }];
    const both = { kind: 'union' as const, of: [a!, b!] };
    expect(Math.max(...kernel.commonVolumes(both, bar, poses))).toBeLessThan(NO_COMMON_VOLUME);
    // pushed past its play the screw bites into both halves
    const past = [{ by: [0, 0, play / 2 + 0.05] as const, turn: 0 }];
    for (const half of [a!, b!]) expect(kernel.commonVolumes(half, bar, past)[0]).toBeGreaterThan(0.01);
    expect(kernel.commonVolumes(a!, b!, [still])[0]).toBeLessThan(NO_COMMON_VOLUME);
    expect(kernel.volume(both)).toBeCloseTo(kernel.volume(a!) + kernel.volume(b!), 2);
  });

  it('keeps both nuts on their flanks, so that the screw has no play either way', () => {
    const made = asFinished(
      nutDesign({ ...BASE, family: { kind: 'anti-backlash', spring: SPRING }, holes: undefined }),
    );
    const [main, follower] = fusedBodies(made);
    const { fit, screw, finished } = made;
    // the real play of this screw: c·tan(15°) + a
    const play = fit.diametral * Math.tan((screw.flankAngle * Math.PI) / 180) + fit.axial;
    const { screw: sweep } = nutMate(made);
    const likely = { ...sweep, from: -5, to: 60 };
    const bar = { kind: 'thread' as const, thread: likely };
    // the spring pushes the main nut down and the follower up, each by half of the play
    const spread = {
      kind: 'union' as const,
      of: [
        { kind: 'moved' as const, by: [0, 0, -play / 2] as const, shape: main! },
        { kind: 'moved' as const, by: [0, 0, play / 2] as const, shape: follower! },
      ],
    };
    const [down, up] = kernel.commonVolumes(spread, bar, [
      { by: [0, 0, -0.02], turn: 0 },
      { by: [0, 0, 0.02], turn: 0 },
    ]);
    expect(down).toBeGreaterThan(0.01);
    expect(up).toBeGreaterThan(0.01);
    // with the nuts pressed together the play is back
    const loose = { kind: 'union' as const, of: [main!, follower!] };
    const free = 0.4 * play;
    expect(
      Math.max(
        ...kernel.commonVolumes(loose, bar, [
          { by: [0, 0, -free], turn: 0 },
          { by: [0, 0, free], turn: 0 },
        ]),
      ),
    ).toBeLessThan(NO_COMMON_VOLUME);
    expect(finished.length).toBeGreaterThanOrEqual(made.family!.kind === 'anti-backlash' ? made.family!.follower : 0);
  });

  it('judges the plastic under a metal nut: its circle less the bore, for good and for a sudden load', () => {
    const holder = (duty: object) => ({
      ...BASE,
      family: { kind: 'holder', nut: METAL },
      duty: { ...BASE.duty, ...duty },
    });
    // π/4·(13² − 8.8²) = 71.91 mm²; PETG at 25 °C back and forth 1.2·44·0.2·(45/47)^0.75 = 10.22 MPa; twice the load for a
    // moment, of half the strength, is less
    const share = 700 / ((Math.PI / 4) * (13 ** 2 - 8.8 ** 2)) / (10.56 * (45 / 47) ** 0.75);
    expect(finding(holder({ load: 700 }), 'nut-seat')).toMatchObject({ verdict: 'pass' });
    expect(finding(holder({ load: 700 }), 'nut-seat')!.value).toBeCloseTo(share, 5);
    // the holder's bore clears the screw by as much whatever its thread: so of M8, whose own thread is cut to 8.5 mm
    expect(finding({ ...holder({ load: 700 }), screw: 'M8' }, 'nut-seat')!.value).toBeCloseTo(share, 5);
    expect(finding(holder({ load: 740 }), 'nut-seat')!.verdict).toBe('fail');
    // standing for years PETG bears 1.2·44·0.2·φ, φ (20/47)^1.5 at 50 °C, less than a sudden load takes
    const warm = finding(holder({ load: 200, axis: 'vertical', temperature: 50 }), 'nut-seat')!;
    expect(warm.value).toBeCloseTo(200 / 71.91 / (10.56 * (20 / 47) ** 1.5), 3);
    expect(finding(holder({ load: undefined }), 'nut-seat')!.word).toBe('not-told');
    expect(finding(holder({ temperature: undefined }), 'nut-seat')!.word).toBe('not-told');
    expect(finding(holder({ load: 2000, temperature: undefined }), 'nut-seat')!.verdict).toBe('fail');
    expect(finding({ ...BASE, catch_nut: METAL }, 'nut-seat')!.verdict).toBe('pass');
    expect(finding(BASE, 'nut-seat')).toBeUndefined();
    expect(finding(holder({}), 'thread-bending')).toBeUndefined();
  });

  it('holds a metal nut by its pocket one way only', () => {
    const held = (changes: object, family: object = {}) =>
      finding({ ...BASE, ...changes, family: { kind: 'holder', nut: METAL, ...family } }, 'nut-held')!;
    const upright = (changes: object) => ({ duty: { ...BASE.duty, axis: 'vertical' }, ...changes });
    const away = { stands: 'away', holes: { ...BASE.holes, head: 'body' } };
    // flange up, its body hangs down with the open end: the load comes down on the nut, whatever the carriage; flange down it lifts off
    expect(held(upright({ mounting: 'flange-up', stands: 'through' })).word).toBe('yes');
    expect(held(upright({ mounting: 'flange-down', carriage: { bore: '33 mm' } }))).toMatchObject({
      word: 'no',
      message: expect.stringContaining('turn'),
    });
    expect(held(upright({ mounting: 'flange-up', ...away })).word).toBe('yes');
    expect(held(upright({ mounting: 'flange-down', ...away })).word).toBe('no');
    expect(held(upright({}))).toMatchObject({ word: 'not-told', missing: ['mounting'] });
    expect(held(upright({ mounting: 'flange-up' }))).toMatchObject({ word: 'not-told', missing: ['stands'] });
    expect(held({ duty: { ...BASE.duty, axis: undefined } })).toMatchObject({
      word: 'not-told',
      missing: ['duty.axis'],
    });
    // a level axis pushes both ways
    expect(held({ mounting: 'flange-up' })).toMatchObject({ word: 'but', message: expect.stringContaining('glue') });
    // a pocket that the carriage closes holds it both ways where its 13 mm do not go through the bore
    const bare = { flange: undefined, holes: undefined };
    expect(held({ ...bare, carriage: { bore: '9 ± 0 mm' } }).word).toBe('yes');
    expect(held({ ...bare, carriage: { bore: '13 ± 0 mm' } }).word).toBe('no');
    expect(held(bare)).toMatchObject({ word: 'not-told', missing: ['carriage.bore'] });
    expect(finding(BASE, 'nut-held')).toBeUndefined();
  });

  it('judges heads, body and end of travel of a holder too', () => {
    const holder = (changes: object) => ({ ...BASE, ...changes, family: { kind: 'holder', nut: METAL } });
    // washers of M4 are 9 mm across
    expect(finding(holder({ holes: { ...BASE.holes, diameter: 9 } }), 'head-seat')!.verdict).toBe('fail');
    // ⌀32 less the bore, 0.8 mm wider than the screw, bears 15 N, twice that beside a fillet that is small to its wall; four
    // washers of 9 mm, 5 mm beside the body, spread on 19 mm each of π·32/4, 10.8 mm from the middle of a wall around 10.2 mm
    const pull = finding(holder({}), 'barrel-pull')!;
    const turned = 1 + (2.2 * ((Math.PI * 8) / 19) * Math.sqrt(10.8 * 10.2)) / 5;
    expect(pull.value! / ((2 * 15 * turned) / ((Math.PI / 4) * (32 ** 2 - 8.8 ** 2)))).toBeCloseTo(1, 2);
    // Tr8x2 greased at 0.05: 2 N·m push with 3985 N; twice that on π/4·(13² − 8.8²) mm² of seat, PETG bears half of 1.2·44 MPa
    // times (45/47)^0.75 for a moment; the flange, 5 mm thick, bears less
    const row = finding(holder({ duty: { ...BASE.duty, motor: { torque: '2 N m' } } }), 'end-stop')!;
    expect(row.value!).toBeGreaterThanOrEqual((2 * 3985) / 71.91 / (26.4 * (45 / 47) ** 0.75) - 0.01);
    const strong = { preset: 'petg', tensile_across: '300 MPa' };
    const thick = {
      material: strong,
      flange: { ...BASE.flange, thickness: 14 },
      duty: { ...BASE.duty, motor: { torque: '2 N m' } },
    };
    const seat = finding(holder(thick), 'end-stop')!;
    expect(seat.value! / ((2 * 3985) / 71.91 / (26.4 * (45 / 47) ** 0.75))).toBeCloseTo(1, 2);
    expect(seat.message).toContain('the plastic under the nut may break');
  });

  it('tells of a holder what grease does to its plastic, and what it prints over air', () => {
    const holder = (changes: object) => ({ ...BASE, ...changes, family: { kind: 'holder', nut: METAL } });
    expect(finding(holder({ material: 'pc' }), 'grease')).toMatchObject({ verdict: 'caution' });
    expect(finding(holder({}), 'grease')).toBeUndefined();
    expect(finding(holder({}), 'print-support')).toMatchObject({ value: 0, word: 'yes' });
    for (const id of ['print-layers', 'print-thread-depth', 'print-overhang'])
      expect(finding(holder({}), id)).toBeUndefined();
  });

  it('judges the plastic under the screws that hold halves or slit closed against the wedge of the thread', () => {
    const split = (duty: object, family: object = { kind: 'split' }) => ({
      ...BASE,
      family,
      duty: { ...BASE.duty, ...duty },
    });
    // F·tan 15°/π on two M3 heads, π/4·(5.5² − 3.4²) = 14.68 mm²; PETG back and forth 1.2·44·0.2·(45/47)^0.75
    const allowed = 10.56 * (45 / 47) ** 0.75;
    const share = (load: number, screws: number) =>
      (load * Math.tan(Math.PI / 12)) / Math.PI / screws / 14.68 / allowed;
    expect(finding(split({ load: 900 }), 'split-hold')!.value).toBeCloseTo(share(900, 2), 3);
    expect(finding(split({ load: 900 }, { kind: 'clamped' }), 'split-hold')!.value).toBeCloseTo(share(900, 1), 3);
    expect(finding(split({ load: 900 }), 'split-hold')!.verdict).toBe('pass');
    expect(finding(split({ load: 1000, axis: 'vertical', temperature: 51 }), 'split-hold')!.verdict).toBe('fail');
    expect(finding(split({ load: undefined }), 'split-hold')!.word).toBe('not-told');
    expect(finding(split({ temperature: undefined }), 'split-hold')!.word).toBe('not-told');
    // a ring that nobody described is no pass: F·tan 15°/π of 15 N wedge it, 1.28 N
    const ringed = finding(split({}, { kind: 'split', closed: 'ring' }), 'split-hold')!;
    expect(ringed.word).toBe('but');
    expect(ringed.message).toMatch(/wedges the halves apart with 1\.28 N under 15 N/);
    expect(finding(split({ load: undefined }, { kind: 'split', closed: 'ring' }), 'split-hold')!.word).toBe('not-told');
    expect(finding(BASE, 'split-hold')).toBeUndefined();
  });

  it('judges the spring by the load and the friction of the keys', () => {
    const sheet = { ...BASE, family: { kind: 'anti-backlash', spring: { ...SPRING, working: 12 } } };
    const { value, message } = finding(sheet, 'spring-force')!;
    // 3 N/mm · (20 − 12) mm = 24 N
    expect(message).toContain('24 N at 12 mm');
    expect(value).toBeGreaterThan(1.2);
    expect(finding({ ...sheet, duty: { ...BASE.duty, load: 60 } }, 'spring-force')!.verdict).toBe('fail');
    expect(finding(sheet, 'thread-backlash')).toBeUndefined();
    // neither nut jams: its pitch error at the stated spread leaves play over the longer one's whole length
    expect(finding(sheet, 'thread-pitch-error')!.verdict).not.toBe('fail');
  });

  it('does not judge a thread that a holder does not have', () => {
    const report = check(design({ ...BASE, family: { kind: 'holder', nut: METAL } }));
    expect(report.checks.filter(({ id }) => id.startsWith('thread-') || id.startsWith('print-layers'))).toEqual([]);
    expect(report.dimensions.finished).not.toHaveProperty('thread_major');
    expect(report.dimensions.finished).toMatchObject({ pocket_across_flats: 13.2, pocket_depth: 6.5 });
  });

  it('offers a nut that stands by where the screw does not hold, and refuses one that would catch nothing', () => {
    const vertical = {
      ...BASE,
      screw: { designation: 'Tr8x8(P2)', hand: 'right' },
      duty: { ...BASE.duty, axis: 'vertical' },
    };
    expect(finding(vertical, 'catch-nut')!.verdict).toBe('caution');
    expect(check(design(vertical)).cautions.join()).toContain('catch_nut');
    expect(finding({ ...vertical, catch_nut: METAL, mounting: 'flange-up' }, 'catch-nut')!.verdict).toBe('pass');
    expect(finding({ ...vertical, catch_nut: METAL, mounting: 'flange-down' }, 'catch-nut')!.verdict).toBe('fail');
  });

  it('fails holes in the joint of the halves', () => {
    const sheet = { ...BASE, family: { kind: 'split' }, holes: { ...BASE.holes, start: 0 } };
    expect(finding(sheet, 'split-joint')!.verdict).toBe('fail');
  });

  it.each([
    ['body.diameter', { body: { diameter: 18, length: 22 }, family: { kind: 'split' } }],
    ['body.diameter', { body: { diameter: 18, length: 22 }, family: { kind: 'clamped' } }],
    ['body.length', { body: { diameter: 32, length: 9 }, family: { kind: 'clamped' } }],
    ['family.spring.inside', { family: { kind: 'anti-backlash', spring: { ...SPRING, inside: 12 } } }],
    ['family.nut', { family: { kind: 'holder' } }],
    ['family.pocket', { family: { kind: 'holder', nut: METAL, pocket: 'face' } }],
    ['flange.offset', { flange: { ...BASE.flange, offset: 2 }, family: { kind: 'split' } }],
    ['body', { body: { diameter: 15, length: 22 }, catch_nut: METAL, holes: undefined }],
  ])('refuses what has no room: %s', (path, extra) => {
    let thrown: unknown;
    try {
      design({ ...BASE, ...extra });
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(InputError);
    expect((thrown as InputError).faults.map((fault) => fault.path)).toContain(path);
  });

  it('is sound at random, or refused with the reason', async () => {
    await fc.assert(
      fc.asyncProperty(randomFamily, async (sheet) => {
        await soundOrRefused(sheet, kernel);
      }),
      { numRuns: 6, seed: 11 },
    );
  });
});
