import { describe, expect, it } from 'vitest';
import { FAMILY_BASE, SPRING } from '../../support/family-sheet.js';
import { changed, strongNut as nutSheet } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

type Changes = Record<string, unknown>;
const found = (id: string, changes: Changes = {}) => findingOf(nutSheet(changes), id)!;
const message = (id: string, changes: Changes = {}) => found(id, changes).message;

const holes = (changes: Changes) => ({ holes: changes });
const duty = (changes: Changes) => ({ duty: changes });
const screw = (changes: Changes) => ({
  screw: { form: 'trapezoidal', pitch: 2, starts: 1, hand: 'right', ...changes },
});
const CARRIAGE = { count: 4, start: 45, diameter: 3.6, screw: 'M3' };
const WIDE = { flange: { diameter: 46 }, holes: { circle: 36 } };
const READ = {
  designation: 'Tr10x2',
  major: '10 ± 0 mm',
  pitch: '2 ± 0 mm',
  pitch_diameter: '9 ± 0 mm',
  minor: '7.5 ± 0 mm',
};

/** [check, sheet, what its message says], each figure by hand from the sheet. */
const SAID: readonly [string, Changes, RegExp][] = [
  ['screw-lead', {}, /^lead 2 mm over pitch 2 mm is 1, so 1 start$/],
  ['screw-lead', { screw: 'Tr8x8(P2)' }, /^lead 8 mm over pitch 2 mm is 4, so 4 starts$/],
  ['screw-lead', { screw: { designation: 'Tr10x2', lead: 3 } }, /^lead 3 mm over pitch 2 mm is 1.5; starts come in/],
  // 9.95 mm over the crests of a screw of 10 mm
  ['screw-series', screw({ major: 9.95 }), /^Tr10x2, major −0.05 mm and pitch \+0 mm off$/],
  ['screw-series', screw({ major: 9.2 }), /^no series.* nearest is Tr9x2, major \+0.2 mm/],
  ['screw-series', {}, /^readings agree with Tr10x2$/],
  // Tr10x2-7e has 8.739 to 8.929 mm, and up to 0.1 mm more without its allowance
  [
    'screw-series',
    screw({ designation: 'Tr10x2', major: 9.95, pitch_diameter: '8.6 ± 0.03 mm' }),
    /^the pitch diameter of 8.6 mm is not that of Tr10x2, 8.74 to 8.93 mm: worn, or another screw/,
  ],
  [
    'screw-series',
    screw({ designation: 'Tr10x2', major: 9.95, pitch_diameter: '8.72 ± 0.03 mm' }),
    /^readings agree with Tr10x2$/,
  ],
  [
    'screw-series',
    screw({ designation: 'Tr10x2', major: 9.95, pitch_diameter: '9.05 ± 0.03 mm' }),
    /^readings agree with Tr10x2$/,
  ],
  [
    'screw-series',
    screw({ designation: 'Tr10x2', major: 9.95, pitch_diameter: '9.07 ± 0.03 mm' }),
    /^the pitch diameter of 9.07 mm/,
  ],
  [
    'screw-series',
    screw({ designation: 'Tr8x2', major: 9 }),
    /^the readings are those of Tr9x2, not of Tr8x2: measure again, or say Tr9x2$/,
  ],

  // ISO 965 6g: 4.826 to 4.976 mm at 0.8; UNF no. 10: up to 4.826 mm at 25.4/32 = 0.794
  [
    'screw-series',
    screw({ form: 'metric-v', major: '4.88 ± 0.1 mm', pitch: '0.797 ± 0.01 mm' }),
    /^M5 or .*: the readings do not tell them apart; a pitch over more crests would$/,
  ],
  // 20.6/10 = 2.06 mm is no pitch of 2 ± 0.003 mm
  [
    'screw-series',
    screw({ major: 9.95, pitch: undefined, crests: { length: 20.6, count: 9 } }),
    /^no series has this screw/,
  ],
  [
    'screw-series',
    screw({ major: 9.95, pitch: undefined, crests: { length: 20, count: 9 } }),
    /^20 mm over 9 pitches fits no series, over 10 it is Tr10x2/,
  ],
  ['thread-backlash', {}, /is usual where weight holds one flank$/],
  ['thread-backlash', duty({ axis: 'horizontal' }), /0.1 mm is usual where the load reverses;/],
  ['thread-backlash', duty({ axis: undefined }), /as taken since duty.axis is missing/],
  ['thread-backlash', { limits: { 'thread-backlash': { max: 0.5 } } }, /up to 0.5 mm is allowed by the sheet$/],
  ['thread-backlash', { float: 0.3, holes: { fit: undefined } }, /mm of it by its float/],
  ['thread-backlash', {}, /^0.\d+ mm of lost motion; up/],
  // a full step of 2 mm / 200 is 0.01 mm
  ['drive-layer-grid', duty({ layer_heights: [0.1, 0.125] }), /^off the full-step grid: 0.125 mm \(use 0.12 or 0.13\)/],
  ['drive-layer-grid', {}, /^all heights are whole full steps$/],
  ['drive-speed', {}, /^180 rpm for 6 mm\/s; .* up to 300 rpm, assumed since duty.motor.speed is missing$/],
  ['drive-speed', duty({ motor: { speed: 600 } }), /up to 600 rpm$/],
  ['drive-speed', duty({ motor: { gear: 2 } }), /^360 rpm for 6 mm\/s/],
  // half of 0.4 N·m, and twice that behind a gear of two to one
  ['drive-torque', {}, /of 180 N·mm that may be used/],
  ['drive-torque', duty({ motor: { gear: 2 } }), /of 360 N·mm that may be used/],
  ['drive-torque', duty({ motor: { gear: 2 }, load: 110 }), /no torque|; a finer lead|N·mm$/],
  // tan of the lead angle 24/(π·7) = 1.09; 1.1/cos 15° = 1.14, and 1.09·1.14 is above 1
  ['drive-torque', screw({ major: 8, lead: 24, starts: 12 }), /a dry print may reach 1.1, then no torque raises it;/],
  ['drive-whirl', {}, /thinnest root that it may have, 7.19 mm, 6.89 mm if it is rolled$/],
  ['drive-whirl', { screw: READ }, /thinnest root that it may have, 7.5 mm$/],
  // pitch over ten, to a hundredth below
  ['print-layers', { screw: 'M8', printer: { layer: 0.2 } }, /; use printer.layer: 0.12 mm, or print a plain pilot/],
  ['print-layers', { screw: 'M5', printer: { layer: 0.1 } }, /; use printer.layer: 0.08 mm, or print a plain pilot/],
  // ISO 68-1: 0.541266 of the pitch; half of it for a trapezoid
  ['print-thread-depth', { screw: 'M5', body: { diameter: 12 } }, /^0.43 mm deep/],
  ['print-thread-depth', {}, /^1 mm deep/],
  ['print-support', holes({ joint: 'hexagon', head: 'body' }), /mm over air; let them open upwards/],
  ['print-support', { flange: { offset: 6 } }, /^the flange is printed over air/],
  ['print-support', {}, /^no pocket of the holes opens on the bed$/],
  ['hole-position', { carriage: { holes: { ...CARRIAGE, circle: 27 } } }, /^holes may be 0.17 mm off; half/],
  ['hole-position', { carriage: { holes: { ...CARRIAGE, circle: 27.2 } } }, /, 0.1 mm of it because the two patterns/],
  ['hole-clearance', holes({ head: 'none' }), /^holes keep/],
  ['hole-clearance', holes({ head: 'body' }), /^heads on the body side keep/],
  ['mount-float', holes({ fit: undefined, diameter: 3.9 }), /; tighten the screws with the axis at the end/],
  // as warm as its air, so that its flange bears wider holes
  [
    'mount-float',
    { holes: { fit: 'fine' }, duty: { feed: undefined } },
    /; make the holes wider \(holes.diameter: [\d.]+ mm\)$/,
  ],
  ['mount-float', { float: 0.45, holes: { fit: undefined } }, /^the nut floats on sleeves: .* stop it$/],
  // holes of 5.6 mm scatter by (0.05 + 0.5 %)/2, places by 0.1 and 27 mm by 0.5 %/2: of 0.3 mm 0.0935 are left at the least
  [
    'mount-float',
    { float: 0.3, holes: { fit: undefined } },
    /; more float \(float\.sideways: 0\.41 mm\), or make the holes wider \(holes\.diameter: 5\.9 mm\)$/,
  ],
  [
    'mount-float',
    { float: 0.7, holes: { fit: undefined } },
    /; less float \(float\.sideways: 0\.41 mm\), or make the holes narrower \(holes\.diameter: 5\.9 mm\)$/,
  ],
  ['thread-bending', duty({ feed: undefined }), /bears for years at 30 °C$/],
  ['thread-bending', duty({ axis: 'horizontal', feed: undefined }), /bears for 1,000 hours back and forth at 30 °C$/],
  [
    'thread-stall',
    duty({ motor: { torque: '0.2 N m' }, feed: undefined }),
    /of bending, of [\d.]+ MPa for a moment at 30 °C; stalled on a greased screw the motor pushes with \d+ N$/,
  ],
  ['thread-stall', {}, /; a crash into an end doubles it: fit end stops that stop the motor$/],
  ['wear-depth', { material: 'pla' }, /, no grit about/],
  ['wear-depth', { material: 'pla', duty: { dust: 'yes' } }, /, grit counted 10 times/],
  ['wear-depth', { material: 'pla', duty: { dust: 'no' } }, /, no grit about/],
  [
    'wear-limit',
    { material: 'pla', duty: { dust: undefined } },
    /grit would multiply it \(duty.dust\); worn through it drops the axis/,
  ],
  ['wear-limit', {}, /; nobody has measured how fast pa12 wears here;/],
  ['wear-limit', duty({ axis: 'horizontal' }), /wears here$/],
  ['wear-pv', {}, /greased once in air of 30 °C/],
  ['wear-pv', duty({ grease: 'dry' }), /MPa·m\/s dry in air of 30 °C/],
  ['wear-pv', duty({ regrease: 'yes' }), /kept greased in air of 30 °C/],
  ['wall', { body: { diameter: 13 } }, /; a body of [\d.]+ mm is the slimmest/],
  ['wall', holes({ circle: 17, head: 'none' }), /; a larger circle of holes leaves more$/],
  ['flange-bending', duty({ pull: 'onto', motor: undefined }), /pressed on its carriage/],
  ['flange-bending', duty({ pull: 'away', motor: undefined }), /pulled off its carriage/],
  ['seat-pressure', duty({ pull: 'away', motor: undefined }), /pulls the flange off its carriage/],
  ['seat-pressure', { carriage: { bore: 40 } }, /nothing of the flange lies on a carriage bored 40 mm/],
];

describe('what a check of a nut says', () => {
  it.each(SAID)('%s of %j', (id, changes, words) => {
    expect(message(id, changes)).toMatch(words);
  });

  it.each([
    ['thread-clearance', 0.7, 1],
    ['thread-axial', 0.3, 1],
    // air on a side wants twice as much on the diameter
    ['thread-crest-gap', 0.6, 2],
    ['thread-root-gap', 0.6, 2],
  ])('%s wants what is missing of %d mm, %d times', (id, min, times) => {
    const { message: told, least } = found(id, { limits: { [id]: { min } } });
    const wanted = Number(/([\d.]+) mm larger gives it$/.exec(told)![1]);
    // in whole hundredths, never short of it
    expect(wanted).toBeGreaterThanOrEqual(times * (min - least!) - 1e-6);
    expect(wanted).toBeLessThan(times * (min - least!) + 0.0101);
  });

  it.each([
    // heads of a 7 mm washer and a body of 17 mm: 26.4/2 − 17/2 − 1 of fillet − 3.5
    [
      'hole-clearance',
      holes({ head: 'body', circle: 26.4 }),
      2,
      /^.*; ([\d.]+) mm are missing/,
      2 - (13.2 - 8.5 - 1 - 3.5),
    ],
    // edge (31.5 − 27)/2 = 2.25 mm; 1.5 × M3 and no less than half a washer or hole and 1.2 mm
    ['hole-edge', { flange: { diameter: 31.5 } }, undefined, /; ([\d.]+) mm more of edge/, 4.5 - 2.25],
  ])('%s tells how much is missing', (id, changes, min, words, missing) => {
    const limits = min === undefined ? {} : { limits: { [id]: { min } } };
    expect(Number(words.exec(message(id, { ...changes, ...limits }))![1])).toBeCloseTo(missing, 6);
  });

  it('a floor under a pocket grows by what the flange is thicker', () => {
    const thin = { holes: { joint: 'counterbore' }, flange: { thickness: 3.2 } };
    const more = Number(/flange ([\d.]+) mm thicker$/.exec(message('pocket-floor', thin))![1]);
    const cured = found('pocket-floor', { ...thin, flange: { thickness: 3.2 + more } });
    expect(cured.value).toBeCloseTo(8, 6);
    expect(cured.verdict).toBe('pass');
  });

  it('a wall beside a pocket grows by what the flange is wider', () => {
    const near = { holes: { joint: 'insert', circle: 30 } };
    const more = Number(/([\d.]+) mm are missing/.exec(message('pocket-wall', near))![1]);
    expect(found('pocket-wall', { ...near, flange: { diameter: 37 + 2 * more } }).verdict).toBe('pass');
  });

  it('the slimmest body that a wall names is the slimmest', () => {
    const unsure = { screw: { designation: 'Tr10x2', major: '9.9 ± 0.2 mm' }, body: { diameter: 13 } };
    const slimmest = Number(/a body of ([\d.]+) mm/.exec(message('wall', unsure))![1]);
    expect(found('wall', { ...unsure, body: { diameter: slimmest } }).verdict).toBe('pass');
    expect(found('wall', { ...unsure, body: { diameter: slimmest - 0.02 } }).verdict).not.toBe('pass');
  });

  it('the layer that an overhang names gives a clean underside, and is the largest of the nozzle that does', () => {
    // nozzles of 0.4 mm print layers of 0.08, 0.12, 0.16 and 0.2 mm on the list of presets
    const layer = Number(
      /printer\.layer: ([\d.]+) mm/.exec(message('print-overhang', { printer: { layer: 0.15 } }))![1],
    );
    expect(layer).toBe(0.08);
    expect(found('print-overhang', { printer: { layer } }).verdict).toBe('pass');
    expect(found('print-overhang', { printer: { layer: 0.12 } }).verdict).toBe('caution');
  });

  it('the distance until the play has grown is that of the depth', () => {
    const { value, message: told } = found('wear-depth', { material: 'pla' });
    // 0.1 mm of play at so much on 100 m
    expect(Number(/; (\d+) m until the play/.exec(told)![1])).toBe(Math.round((100 * 0.1) / value!));
  });
});

describe('a fit that a tight nut is told', () => {
  it.each([
    ['a class', { screw: READ, body: { length: 40 }, fit: 'close' }],
    ['its own figures', { screw: READ, body: { length: 80 }, fit: 'loose' }],
    ['its own figures, near to where no tooth is left', { screw: READ, body: { length: 105 }, fit: 'close' }],
    [
      'its own figures on a coarse screw',
      { screw: 'Tr16x4', ...WIDE, body: { diameter: 26, length: 150 }, fit: 'loose' },
    ],
  ])('is enough, and the next smaller is not: %s', (_, read) => {
    // nobody drives it, so that it is as warm as its air
    const tight = { ...read, duty: { feed: undefined } };
    const told = message('thread-pitch-error', tight);
    expect(told).not.toContain('keep it cool');
    const named = /fit: (\w+) is enough/.exec(told)?.[1];
    const own = /fit: \{diametral: ([\d.]+), axial: ([\d.]+)\} is enough/.exec(told);
    const verdict = (fit: unknown) => found('thread-pitch-error', { ...tight, fit }).verdict;
    const classes = ['close', 'running', 'loose'];
    if (named) {
      expect(verdict(named)).toBe('pass');
      expect(verdict(classes[classes.indexOf(named) - 1])).toBe('fail');
    } else {
      const [diametral, axial] = [Number(own![1]), Number(own![2])];
      expect(diametral).toBe(0.4);
      expect(verdict({ diametral, axial })).toBe('pass');
      expect(verdict({ diametral, axial: Math.round(100 * (axial - 0.05)) / 100 })).toBe('fail');
    }
  });

  it('is not told where no tooth would be left of it', () => {
    expect(message('thread-pitch-error', { screw: READ, body: { length: 200 }, fit: 'running' })).toMatch(
      /; a shorter nut or a larger fit.axial leaves more: no clearance is enough at this length$/,
    );
  });

  it('is owed to a pitch diameter that nobody measured, of the range that its class leaves', () => {
    const told = message('thread-pitch-error', { body: { length: 40 }, fit: 'close' });
    expect(told).toMatch(/^.*; measure the pitch diameter \(screw.pitch_diameter, or screw.wires\)/);
    // ISO 2903, Tr10x2 7e: es −71 µm, Td2 190 µm below 9 mm
    expect(told).toContain('it may be 8.739 to 8.929 mm');
  });

  it('of a crest of 9.95 mm that was read, which the class puts as far from its flanks as it is wide', () => {
    // ISO 2903, Tr10 4h: crests of 9.82 to 10 mm, so the flanks lie 0.04 mm higher, ± 0.09
    const told = message('thread-pitch-error', { ...screw({ major: 9.95 }), body: { length: 40 }, fit: 'close' });
    expect(told).toContain('it may be 8.689 to 9.059 mm');
  });
});

describe('a level screw beside its nut', () => {
  const sag = (changes: Changes) => findingOf(nutSheet({ duty: { ends: 'fixed-free', ...changes } }), 'drive-sag');

  // 40 · 10 mm
  it('is judged where it lies, and asked for where nobody tells and it would sag', () => {
    expect(sag({ axis: 'horizontal', span: 410 })!.word).toBe('but');
    expect(sag({ axis: 'horizontal', span: 390 })!.word).toBe('yes');
    expect(sag({ axis: undefined, span: 410 })!.missing).toEqual(['duty.axis']);
    expect(sag({ axis: undefined, span: undefined })!.missing).toEqual(['duty.axis']);
    expect(sag({ axis: undefined, span: 390 })).toBeUndefined();
    expect(sag({ axis: 'vertical', span: 410 })).toBeUndefined();
  });
});

it('a clamped nut takes out of its play what its slit gives, and says so', () => {
  const play = (family: object | undefined) =>
    findingOf({ ...FAMILY_BASE, ...(family ? { family } : {}) }, 'thread-backlash')!;
  expect(play({ kind: 'clamped' }).value).toBeLessThan(play(undefined).value!);
  expect(play({ kind: 'clamped' }).message).toContain(' mm less with its slit closed as far as it goes');
  expect(play(undefined).message).not.toContain('slit');
});

describe('a twin nut whose threads are set off too far', () => {
  const twin = (shift: number, more: Changes = {}) => ({
    ...FAMILY_BASE,
    screw: READ,
    body: { diameter: 32, length: 40 },
    fit: { diametral: 0.4, axial: 0.3 },
    family: { kind: 'twin', apart: 30, shift },
    duty: { axis: 'horizontal', load: 10, temperature: 25, grease: 'greased' },
    ...more,
  });

  it.each(['thread-axial', 'thread-pitch-error', 'thread-running-in'])(
    'is told by %s how much less is enough',
    (id) => {
      const told = findingOf(twin(0.3), id)!;
      expect(told.word).not.toBe('yes');
      const less = Number(/a family.shift ([\d.]+) mm smaller/.exec(told.message)![1]);
      expect(findingOf(twin(0.3 - less), id)!.word).toBe('yes');
      expect(findingOf(twin(0.3 - less + 0.02), id)!.word).not.toBe('yes');
    },
  );

  // 0.4 · tan 15° = 0.107 mm
  it('is told what the threads take of the play', () => {
    expect(findingOf(twin(0.3), 'thread-axial')!.message).toMatch(
      /the diameter gives only 0.11 mm, and family.shift takes 0.3 mm; /,
    );
    expect(findingOf(twin(0), 'thread-axial')!.message).not.toContain('family.shift');
  });

  it('is told of a larger fit where no less shift is enough', () => {
    const tight = twin(0.05, { fit: { diametral: 0.1, axial: 0 } });
    expect(findingOf(tight, 'thread-axial')!.message).toMatch(/a fit.axial [\d.]+ mm larger gives it$/);
  });
});

describe('screws and heads of a nut by hand', () => {
  // pattern on 27 mm, body 17 mm, fillet 1 mm; holes of 3.6 mm, M3 with washers of 7 mm
  it.each([
    [{ holes: { head: 'none' } }, 13.5 - 8.5 - 1 - 1.8],
    [{ holes: { head: 'none' }, fillet: 0 }, 13.5 - 8.5 - 1.8],
    [{ holes: { head: 'body' } }, 13.5 - 8.5 - 1 - 3.5],
    [{ holes: { head: 'body' }, fillet: 0 }, 13.5 - 8.5 - 3.5],
    [{ holes: { head: 'flange' } }, 13.5 - 8.5 - 1 - 1.8],
  ])('gap to the body of %j', (changes, gap) => {
    expect(found('hole-clearance', changes).value).toBeCloseTo(gap, 9);
  });

  it.each([
    ['square', 17 * Math.SQRT2],
    ['hexagon', (2 * 17) / Math.sqrt(3)],
    ['round', 17],
  ])('a %s body in a bore stands over its corners', (shape, across) => {
    const body = shape === 'round' ? { shape } : { shape, diameter: undefined, across_flats: 17 };
    expect(found('mount-bore', { body, carriage: { bore: 30 } }).value).toBeCloseTo(30 - across, 6);
  });

  it('screws that the nut holds leave it no float', () => {
    for (const joint of ['insert', 'tapped'])
      expect(findingOf(nutSheet(holes({ joint })), 'mount-float')).toBeUndefined();
    expect(findingOf(nutSheet(holes({ joint: 'hexagon' })), 'mount-float')).toBeDefined();
  });

  it('heads of a floating nut are its washers, nearer by its float', () => {
    // washer of 7 mm: 13.5 − 8.5 − 1 − 3.5 − 0.3
    const floats = { float: 0.3, holes: { fit: undefined, head: 'body' } };
    expect(found('hole-clearance', floats).value).toBeCloseTo(0.2, 9);
    // stall force over four rings of washers around holes of 5 mm sleeves and 0.3 mm to either side
    const { value, message: told } = found('float-pull', { float: 0.3, holes: { fit: undefined } });
    const force = Number(/under (\d+) N/.exec(told)![1]);
    const across = 5 + 0.6 + found('float-pull', { float: 0.3, holes: { fit: undefined } }).uncertainty;
    expect(value! * 4 * (Math.PI / 4) * (49 - across ** 2)).toBeGreaterThan(0.9 * force);
  });
});

describe('what a drive is not told', () => {
  it.each([
    ['drive-whirl', { span: undefined }, ['duty.span']],
    ['drive-whirl', { feed: undefined }, ['duty.feed']],
    ['drive-whirl', { ends: undefined }, ['duty.ends']],
    ['drive-column', { load: undefined }, ['duty.load']],
    ['drive-column', { span: undefined, load: 200 }, ['duty.span']],
    ['drive-column', { ends: undefined }, ['duty.ends']],
    ['drive-torque', { load: undefined }, ['duty.load']],
    ['drive-torque', { motor: undefined }, ['duty.motor']],
    ['drive-torque', { motor: { torque: undefined } }, ['duty.motor.torque']],
    ['thread-stall', { motor: undefined }, ['duty.motor']],
    ['thread-stall', { motor: { torque: undefined } }, ['duty.motor.torque']],
  ])('%s without %j', (id, untold, missing) => {
    expect(found(id, duty(untold))).toMatchObject({ word: 'not-told', missing });
  });

  it.each([
    ['drive-whirl', { span: undefined, feed: undefined }],
    ['drive-column', { span: undefined, load: 5 }],
    ['drive-speed', { feed: undefined }],
  ])('%s is no question without %j', (id, untold) => {
    expect(findingOf(nutSheet(duty(untold)), id)).toBeUndefined();
  });
});

describe('a spring between two nuts', () => {
  it('is lifted with the load, and drags behind it', () => {
    const sheet = changed(FAMILY_BASE, {
      duty: { axis: 'horizontal', load: 15, grease: 'greased', motor: { torque: '0.4 N m' } },
      family: { kind: 'anti-backlash', spring: SPRING },
    });
    const spring = Number(/^([\d.]+) N at/.exec(findingOf(sheet, 'spring-force')!.message)![1]);
    // Tr8x2 at friction 0.5: raised by F·d2/2·(tan λ + µ')/(1 − µ' tan λ), lowered by the same with the signs turned
    const [tan, friction] = [2 / (Math.PI * 7), 0.5 / Math.cos(Math.PI / 12)];
    const raise = (15 + spring) * 3.5 * ((tan + friction) / (1 - friction * tan));
    const lower = spring * 3.5 * ((friction - tan) / (1 + friction * tan));
    expect(findingOf(sheet, 'drive-torque')!.value! / (raise + lower)).toBeCloseTo(1, 2);
  });
});

describe('cures that are figures', () => {
  it('name a fit that is enough, and none that is more than enough', () => {
    const tight = (fit: unknown) => found('thread-pitch-error', { body: { length: 60 }, screw: READ, fit });
    const text = tight({ diametral: 0.3, axial: 0.05 }).message;
    const [, diametral, axial] = /fit: \{diametral: ([\d.]+), axial: ([\d.]+)\} is enough/.exec(text)!;
    expect(Number(diametral)).toBeGreaterThanOrEqual(0.4);
    const axially = (less: number) => ({ diametral: Number(diametral), axial: Number(axial) - less });
    expect(tight(axially(0)).verdict).toBe('pass');
    expect(tight(axially(0.05)).verdict).not.toBe('pass');
  });

  it('or a class that is enough', () => {
    const text = (fit: unknown) => message('thread-pitch-error', { body: { length: 30 }, screw: READ, fit });
    expect(text({ diametral: 0.2, axial: 0.02 })).toMatch(/; .*fit: (running|loose) is enough/);
    const named = /fit: (\w+) is enough/.exec(text({ diametral: 0.2, axial: 0.02 }))![1]!;
    expect(found('thread-pitch-error', { body: { length: 30 }, screw: READ, fit: named }).verdict).toBe('pass');
  });

  it('name the sizes between which an unmeasured pitch diameter lies: ISO 2903, Tr12x3 in 7e, 10.191 to 10.415 mm', () => {
    const text = message('thread-pitch-error', {
      screw: { designation: 'Tr12x3', major: 11.95 },
      body: { length: 40, diameter: 24 },
      flange: { diameter: 48 },
      holes: { circle: 36 },
    });
    expect(text).toContain('unmeasured it may be 10.191 to 10.415 mm');
  });

  it('count the rests: 20 s of every 120 s of a nut that takes minutes to warm are 17 %', () => {
    const rests = { moving: undefined, on_time: 20, cycle: 120 };
    const asked = (material: string) => found('wear-pv', { material, duty: rests });
    expect(asked('pa12').message).toContain('running 20 s of every 120 s: 17 % of that');
    // published of nylon: an end; of PETG derived from others: three times as much is
    expect(asked('pa12').fail_limit).toEqual(asked('pa12').limit);
    expect(asked('petg').fail_limit!.max! / asked('petg').limit!.max!).toBeCloseTo(3, 4);
  });

  it('see a crest too many and one too few: 20 mm are 10 pitches of Tr8x2, 30 mm 10 of Tr12x3', () => {
    const counted = (major: number, count: number, length: number) =>
      message('screw-series', {
        screw: { form: 'trapezoidal', major, crests: { count, length }, starts: 1, hand: 'right' },
        body: { diameter: 24 },
        flange: { diameter: 48 },
        holes: { circle: 36 },
      });
    expect(counted(7.95, 9, 20)).toContain('over 9 pitches fits no series, over 10 it is Tr8x2');
    expect(counted(11.95, 11, 30)).toContain('over 11 pitches fits no series, over 10 it is Tr12x3');
  });
});
