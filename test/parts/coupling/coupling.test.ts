import { describe, expect, it } from 'vitest';
import { readStl } from '../../../src/output/read-stl.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { measureMesh } from '../../../src/solid/measure.js';
import { InputError } from '../../../src/units/faults.js';
import { closedByHand, pressedByHand } from '../../support/clamp-by-hand.js';
import { BOUGHT_HUBS, couplingSheet } from '../../support/coupling-sheets.js';
import { findingOf } from '../../support/one-finding.js';
import { sharedKernel } from '../../support/shared-kernel.js';

const reportOf = (changes: Parameters<typeof couplingSheet>[0] = {}) => check(design(couplingSheet(changes)));
const rowOf = (changes: Parameters<typeof couplingSheet>[0], id: string) => findingOf(couplingSheet(changes), id);

function faultsOf(changes: Parameters<typeof couplingSheet>[0]) {
  try {
    design(couplingSheet(changes));
  } catch (error) {
    if (error instanceof InputError) return error.faults;
    throw error;
  }
  throw new Error('no fault was found');
}

describe('two shafts, a torque and a mounting', () => {
  it('give three bodies that pass every hard check', async () => {
    const { report, files } = await makePart(couplingSheet(), { kernel: sharedKernel });
    expect(report.checks.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
    expect(files.map(({ name }) => name)).toEqual([
      'plain-motor-hub.stl',
      'plain-screw-hub.stl',
      'plain-insert.stl',
      'report.json',
    ]);
    for (const { name, bytes } of files.filter(({ name }) => name.endsWith('.stl'))) {
      const { openEdges, shells, repeatedVertexFacets } = measureMesh(readStl(bytes));
      expect([name, openEdges, shells, repeatedVertexFacets]).toEqual([name, 0, 1, 0]);
    }
    expect(Object.keys(report.dimensions.finished)).toEqual(['motor_hub', 'screw_hub', 'insert']);
    expect(report.bodies.map(({ material }) => material)).toEqual(['pc', 'pc', 'tpu95a']);
  });

  it('list every default they used', () => {
    const { assumptions } = reportOf();
    const fields = assumptions.map(({ field }) => field);
    for (const field of [
      'hubs.outside_diameter',
      'motor_hub.bore_clearance',
      'retighten',
      'duty.reversing',
      'insert.pad',
      'insert.material',
      'jaws.count',
    ])
      expect(fields).toContain(field);
  });

  it('give the same bytes twice', async () => {
    const [first, second] = [
      await makePart(couplingSheet(), { kernel: sharedKernel }),
      await makePart(couplingSheet(), { kernel: sharedKernel }),
    ];
    expect(second.files).toEqual(first.files);
  });

  it('leave out the hub whose shaft is not given, and say what to measure', async () => {
    const { report, files } = await makePart(couplingSheet({ screw: undefined }), { kernel: sharedKernel });
    expect(files.map(({ name }) => name)).toEqual(['plain-motor-hub.stl', 'plain-insert.stl', 'report.json']);
    expect(report.checks.find(({ id }) => id === 'matched-half')).toMatchObject({ verdict: 'caution' });
    const jaws = { count: 3, height: 10, width: 6.4, inner: 13 };
    const measured = { screw: undefined, jaws, hubs: { outside_diameter: 29 } };
    expect(rowOf(measured, 'matched-half')).toMatchObject({ verdict: 'pass' });
    const { inner: _, ...three } = jaws;
    const row = rowOf({ ...measured, jaws: three }, 'matched-half');
    expect(row).toMatchObject({ verdict: 'caution', message: expect.stringMatching(/give jaws\.inner$/) });
  });
});

describe('an insert alone, for two bought hubs', () => {
  const bought = {
    ...BOUGHT_HUBS,
    motor: { torque: 0.4, shaft: undefined },
    duty: { temperature: 25, load: 10, upward: 0 },
    thrust_bearing: 'yes',
  };

  it('is made to their measured jaws, tried in them, and nothing else is', async () => {
    const { report, files } = await makePart(couplingSheet(bought), { kernel: sharedKernel });
    expect(files.map(({ name }) => name)).toEqual(['plain.stl', 'report.json']);
    expect(report.checks.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
    expect(report.checks.map(({ id }) => id)).toEqual(expect.arrayContaining(['solid-mate', 'solid-squeeze']));
    expect(report.bodies.map(({ material }) => material)).toEqual(['tpu95a']);
    expect(report.hardware).toEqual([]);
    expect(rowOf(bought, 'matched-half')).toMatchObject({ verdict: 'pass' });
    expect(report.assumptions.map(({ field }) => field)).not.toContain('material');
  });

  it('has lobes as wide as the gaps between the jaws, squeezed at both flanks', () => {
    // by hand: at the middle, 9.25 mm from the axis, 60° of a jaw and a lobe are 2·9.25·sin 30° = 9.25 mm across the
    // lobe; a jaw of 7 mm takes 7·cos 30° = 6.062; the rest is the gap, and 0.03 mm are squeezed at either flank
    const { insert } = design(couplingSheet(bought)).dimensions.finished;
    expect((insert as { lobe_width: number }).lobe_width).toBeCloseTo(9.25 - 6.0622 + 0.06, 3);
  });

  it('is not judged by what hangs on hubs that are not made', () => {
    const ids = reportOf(bought).checks.map(({ id }) => id);
    for (const id of ['grip-torque', 'jaw-bending', 'jaw-bare', 'wall', 'bore-runout', 'speed', 'assembly-entry'])
      expect(ids).not.toContain(id);
    expect(ids).toEqual(expect.arrayContaining(['coupling-axial', 'insert-stress', 'insert-squeeze', 'heat']));
  });

  it('asks for what nobody measured of the jaws', () => {
    const row = rowOf({ ...bought, jaws: { count: 3, height: 8 } }, 'matched-half');
    expect(row).toMatchObject({ word: 'not-told', missing: ['jaws.width', 'jaws.inner'] });
  });

  it('takes the reading of the jaws for uncertain: half of it at either flank', () => {
    const width = 9.25 - 6.0622 + 0.06;
    expect(rowOf({ ...bought, calipers: 0.1 }, 'insert-squeeze')!.uncertainty).toBeCloseTo(0.05 / width, 3);
  });

  it.each([
    [{ hubs: undefined }, 'hubs.outside_diameter', /only the insert is made/],
    [{ insert: { pad: 'disc' } }, 'insert.pad.diameter', /no shaft/],
    [{ insert: { pad: 'soft' } }, 'insert.pad', /disc, ball or none/],
  ])('refuses %j', (changes, path, allowed) => {
    const found = faultsOf({ ...bought, ...changes }).find((fault) => fault.path === path);
    expect(found?.allowed).toMatch(allowed);
  });
});

describe('bought jaws that do not fit the outside', () => {
  const half = { motor: { torque: 0.4, shaft: undefined }, hubs: { outside_diameter: 30 }, screw_hub: undefined };

  it('are told what would fit: every cure that is named was tried', () => {
    const jaws = { count: 3, height: 9, width: 6.2, inner: 11 };
    const [found] = faultsOf({ ...half, jaws });
    expect(found).toMatchObject({ path: 'jaws.inner' });
    expect(found!.allowed).not.toMatch(/larger outside/);
    const cure =
      /a larger jaws\.inner \(([\d.]+) mm\), or wider jaws \(jaws\.width ([\d.]+) mm\), or a smaller outside \(([\d.]+) mm\)/;
    const [inner, width, outside] = cure.exec(found!.allowed)!.slice(1).map(Number);
    for (const fits of [
      { jaws: { ...jaws, inner } },
      { jaws: { ...jaws, width } },
      { jaws, hubs: { outside_diameter: outside } },
    ])
      expect(() => design(couplingSheet({ ...half, ...fits }))).not.toThrow();
  });

  it('are to be narrower where they leave the lobes no width', () => {
    const jaws = { count: 3, height: 9, width: 12.5, inner: 14 };
    expect(faultsOf({ ...half, jaws })[0]!.allowed).toMatch(/narrower jaws \(jaws\.width 1[12]/);
  });
});

describe('grip', () => {
  // one M3 with washers on the 5 mm shaft: by hand from the sizes of the hub, PC at 70 °C
  const one = { screw: undefined, hubs: { outside_diameter: 30 }, motor_hub: { length: 20, clamp: { count: 1 } } };

  function byHand(kept: number) {
    // 0.5·1.2·57.5 MPa under a washer of 7 mm on a hole of 3.4 mm: 34.5·29.41 = 1014.5 N
    const preload = 0.6 * 57.5 * (Math.PI / 4) * (7 ** 2 - 3.4 ** 2);
    // bore 5.05: wall from 2.525 to 15; screw 1.7 mm of wall and half its hole beyond the bore; slit 20 − 2.4 mm long
    const [R, h, e, L] = [(2.525 + 15) / 2, 15 - 2.525, 2.525 + 1.7 + 1.7, 17.6];
    // clearance 0.05, hole ± 0.05, PC ± 0.3 % of 5.05, calipers ± 0.03
    const play = 0.05 + 0.05 + 0.003 * 5.05 + 0.03;
    const closing = closedByHand({ R, h, e, L, E: 2200, play });
    const force = kept * (0.9 * preload - closing);
    return 0.15 * 5 * force * pressedByHand({ R, h, e });
  }
  // E falls to 0.93 at 60 °C and 0.88 at 80 °C; n = 0.0296·(147 − 23)/(147 − 70)
  const [stiff, n] = [0.905, (0.0296 * 124) / 77];
  const c = (hours: number) => 0.92 * hours ** -n;

  it('of a clamp is what relaxation leaves of the preload less what closes the hub, hot', () => {
    expect(rowOf(one, 'grip-torque')!.value).toBeCloseTo(byHand(stiff * c(43_800)), 4);
  });

  it('counts a second tightening where the card asks for it', () => {
    const again = c(43_800) + (1 - c(24)) * c(43_776);
    const report = reportOf({ ...one, retighten: 'yes' });
    expect(report.checks.find(({ id }) => id === 'grip-torque')!.value).toBeCloseTo(byHand(stiff * again), 4);
    const line = /cold, after the first hot day, to the same torque/;
    expect(report.cautions.some((words) => line.test(words))).toBe(true);
    expect(reportOf(one).cautions.some((words) => line.test(words))).toBe(false);
  });

  it('says what it holds on the first day, at the end cold and hot, and tightened again', () => {
    const figures = [
      0.92 * 24 ** -0.0296,
      c(43_800),
      stiff * c(43_800),
      stiff * (c(43_800) + (1 - c(24)) * c(43_776)),
    ].map((kept) => Math.round(byHand(kept)).toLocaleString('en').replace(',', ''));
    const [first, cold, hot, again] = figures;
    expect(rowOf(one, 'grip-torque')!.message).toContain(
      `first day ${first}, at the end cold ${cold}, hot ${hot}, retightened once ${again}`,
    );
  });

  it('counts only screws that stand further from the web than the middle of the wall', () => {
    const near = rowOf({ ...one, motor_hub: { length: 14, clamp: { count: 1 } } }, 'grip-torque')!;
    expect(near).toMatchObject({ verdict: 'fail', value: 0 });
    expect(near.message).toMatch(/none of them far enough from the slit's end.*would hold \d+ N·mm, .* mm longer/);
  });

  it('never adds a flat: one way the stronger of both counts, both ways the clamp alone', () => {
    // w² = 4·0.5·4.5 = 9 mm²; 12 mm·9/12 = 9 mm³ a MPa; 0.5 mm of the flat are run out, and its end stands at the bore's
    const flat = {
      ...one,
      insert: { pad: 'none' },
      motor: { torque: 0.03, shaft: { diameter: 5, flat: 4.5, flat_length: 12.5 } },
      motor_hub: { length: 20, clamp: { count: 1 }, friction: 0.02 },
    };
    const clamp = (byHand(stiff * c(43_800)) * 0.02) / 0.15;
    expect(rowOf(flat, 'grip-torque')!.value).toBeCloseTo(clamp, 4);
    // 1.2·57.5 MPa · the lower of 0.2·u^1.5 and 0.2·u^0.75 at 70 °C
    const form = 9 * 1.2 * 57.5 * 0.2 * (77 / 124) ** 1.5;
    expect(rowOf({ ...flat, duty: { reversing: 'no' } }, 'grip-torque')!.value).toBeCloseTo(Math.max(clamp, form), 4);
    expect(form).toBeGreaterThan(clamp);
    // a set screw in place of the clamp: half of the flat's pressure under repeated reversal
    const set = { ...flat, motor_hub: { grip: 'set-screw', length: 20, clamp: undefined, friction: 0.02 } };
    expect(rowOf(set, 'grip-torque')!.value).toBeCloseTo(9 * 1.2 * 57.5 * 0.2 * (77 / 124) ** 0.75 * 0.5, 4);
  });

  it('is measured by the work where load and screw are told', () => {
    // Tr8x2 at friction 0.5: 25·3.5·(2 + π·7·0.5177)/(π·7 − 0.5177·2) = 56.1 N·mm, shock 1.5, and 1.3 × that
    const f = 0.5 / Math.cos(Math.PI / 12);
    const work = (25 * 3.5 * (2 + Math.PI * 7 * f)) / (Math.PI * 7 - f * 2);
    const row = rowOf({ duty: { load: 25, shock: 'light' } }, 'grip-torque')!;
    expect(row.limit).toEqual({ min: 450 });
    expect(row.fail_limit!.min).toBeCloseTo(1.3 * 1.5 * work, 6);
    // nobody tells of shocks: 2.2, and asked for where only that fails
    const untold = rowOf({ duty: { load: 25 } }, 'grip-torque')!;
    expect(untold.fail_limit!.min).toBeCloseTo(1.3 * 2.2 * work, 6);
    const weak = { material: 'pa12' };
    const between = rowOf({ ...weak, duty: { load: 25 } }, 'grip-torque')!;
    expect(between.missing).toEqual(['duty.shock']);
    const told = (shock: string) => rowOf({ ...weak, duty: { load: 25, shock } }, 'grip-torque')!;
    expect([told('none').word, told('heavy').word]).toEqual(['but', 'no']);
    // Tr8x8(P2) runs back: where it slips, the axis falls
    expect(rowOf({ screw: { designation: 'Tr8x8(P2)' }, duty: { load: 25 } }, 'grip-torque')!.fail_limit).toEqual({
      min: 450,
    });
    expect(
      rowOf({ screw: { designation: 'Tr8x8(P2)' }, mounting: 'horizontal', duty: { load: 5 } }, 'grip-torque')!
        .fail_limit!.min,
    ).toBeLessThan(450);
  });

  it.each([
    [
      'washers, a second tightening and a screw without grease',
      { material: 'pa12', motor: { torque: 0.3 }, motor_hub: { clamp: { washers: 'no' } }, duty: { load: 25 } },
      /washers under head and nut.* would hold \d+ N·mm/,
    ],
    [
      'larger screws with the outside they need',
      { motor: { torque: 1.8 }, hubs: { outside_diameter: 29 } },
      /(M4|M5|M6) clamp screw.* would hold .*outside of \d+(\.\d)? mm or more/,
    ],
    ['metal hubs where no clamp holds', { motor: { torque: 9 } }, /metal hubs/],
    ['a plastic that stays stiff', { material: 'pa12' }, /keeps 33 % of its stiffness so hot, PC far more/],
  ])('that fails names %s', (_, changes, words) => {
    const row = rowOf(changes, 'grip-torque')!;
    expect(row).toMatchObject({ verdict: 'fail' });
    expect(row.message).toMatch(/is not reached/);
    expect(row.message).toMatch(words);
  });

  it('makes wider pockets for washers, and lists them', () => {
    const [bare, wide] = ['no', 'yes'].map((washers) =>
      reportOf({ motor_hub: { clamp: { washers } }, screw_hub: { clamp: { washers } } }),
    );
    expect(wide!.hardware).toContainEqual({ item: 'plain washer ISO 7089', size: 'M3', count: 8 });
    expect(bare!.hardware.some(({ item }) => item.startsWith('washer'))).toBe(false);
    expect(wide!.cautions.join(' ')).toMatch(/hold the nut with a nut driver/);
    expect(wide!.cautions.join(' ')).toMatch(/pc cracks under stress: no threadlocker/);
  });

  it('takes the spread of the printer and the material that is used', () => {
    // half of 0.05 + 0.05 + 0.3 % of 8 + 0.03; half of the same with a spread of 0.12 and ± 0.5 % nylon
    expect(rowOf({}, 'bore-runout')!.most).toBeCloseTo((0.05 + 0.05 + 0.003 * 8 + 0.03) / 2, 6);
    expect(rowOf({ material: 'pa12' }, 'bore-runout')!.most).toBeCloseTo((0.05 + 0.05 + 0.005 * 8 + 0.03) / 2, 6);
  });
});

describe('the axis', () => {
  it('motor above with load fails, and names the cure', () => {
    const report = reportOf({ mounting: 'motor-above', duty: { load: 25 } });
    const row = report.checks.find(({ id }) => id === 'coupling-axial')!;
    expect([report.verdict, row.verdict]).toEqual(['fail', 'fail']);
    expect(row.message).toMatch(/thrust bearing and a collar.*rigid clamp sleeve/);
  });

  it('motor below with a pad and 25 N passes', () => {
    const report = reportOf({ duty: { load: 25, upward: 0 }, motor: { axial_limit: 40 }, insert: { pad: 'disc' } });
    for (const id of ['coupling-axial', 'motor-thrust', 'insert-thrust', 'shaft-gap'])
      expect(report.checks.find((row) => row.id === id)).toMatchObject({ id, verdict: 'pass' });
  });

  it('weighs a screw that hangs: 8 mm steel has 0.395 kg a metre', () => {
    const row = rowOf({ mounting: 'motor-above', duty: { span: 500, load: 10 } }, 'coupling-axial')!;
    expect(row.value).toBeCloseTo(10 + 0.5 * 0.395 * 9.81, 1);
    const untold = rowOf({ mounting: 'motor-above' }, 'coupling-axial')!;
    expect(untold.value).toBeCloseTo(0.125 * 7.95 * 0.39 * 9.81, 1);
    expect(untold.message).toMatch(/duty.span not being told/);
  });

  it('says that the motor limit is missing', () => {
    expect(rowOf({ duty: { load: 25 } }, 'motor-thrust')!.message).toBe('not judged: motor.axial_limit is missing');
    // Tr8x2 at friction 0.05 moves 2 mm a turn against 0.5019 mm of arm: 300 N·mm push with 598 N
    expect(rowOf({ duty: { load: 25 }, motor: { axial_limit: 60 } }, 'motor-thrust')!.message).toContain(
      'a jam, up to 598 N for a moment, is assumed',
    );
  });
});

describe('insert and jaws', () => {
  it('tells lost motion along the screw', () => {
    // 0.1 mm at each flank of a lobe that reaches 12.7 mm: asin form, 0.45° a hub and way, 1.8° from stop to stop;
    // 1.8/360·2 mm = 0.010 mm besides the wind-up
    const row = rowOf({ insert: { flank_clearance: 0.1 } }, 'lost-motion')!;
    expect(row.value).toBeGreaterThan(0.009);
    expect(row.value).toBeLessThan(0.013);
  });
});

describe('from small to large', () => {
  it.each([
    [
      '15 mm, set screws',
      {
        motor: { torque: 0.01, shaft: 3 },
        screw: undefined,
        shaft: 3,
        hubs: { outside_diameter: 15 },
        motor_hub: { grip: 'set-screw' },
        screw_hub: { grip: 'set-screw' },
        insert: { pad: 'none' },
      },
    ],
    [
      '60 mm, six jaws',
      {
        hubs: { outside_diameter: 60 },
        jaws: { count: 6 },
        mounting: 'horizontal',
        retighten: 'yes',
        motor: { shaft: { diameter: 14, flat: undefined } },
        screw: { designation: 'Tr16x4', major: 15.9 },
      },
    ],
    ['two curved jaws', { jaws: { count: 2, flank: 'curved' } }],
    ['both grips, a ball', { motor_hub: { grip: 'both', set_screw: { joint: 'insert' } }, insert: { pad: 'ball' } }],
  ])('%s', async (_, changes) => {
    const { report } = await makePart(couplingSheet(changes), { kernel: sharedKernel });
    const wrong = report.checks.filter(({ verdict }) => verdict === 'fail');
    expect(wrong.map(({ id, message }) => `${id}: ${message}`)).toEqual([]);
    expect(report.bodies).toHaveLength(3);
  });
});

describe('what cannot be', () => {
  it.each([
    [{ motor: { shaft: undefined }, screw: undefined }, 'hubs.outside_diameter', /measure their outside and jaws/],
    [{ shaft: 8 }, 'shaft', /screw or shaft, not both/],
    [{ screw: undefined, turned_end: 6 }, 'turned_end', /belongs to a screw/],
    [{ hubs: { outside_diameter: 15 } }, 'hubs.outside_diameter', /at least \d+/],
    [{ motor_hub: { length: 6 } }, 'motor_hub.length', /at least/],
    [{ hubs: { outside_diameter: 29 }, jaws: { count: 6, inner: 26 } }, 'jaws.inner', /leaves no 6 jaws/],
    [{ jaws: { count: 7 } }, 'jaws.count', /2 to 6/],
    [{ hubs: { outside_diameter: 29 }, insert: { hole: 28 } }, 'hubs.outside_diameter', /larger outside/],
    [{ insert: { hardness: 'blue' } }, 'insert.hardness', /Shore/],
    [{ insert: { center: 'solid', pad: 'ball' } }, 'insert.center', /wants a ring/],
    [
      { insert: { pad: { kind: 'disc', thickness: 25 } } },
      'insert.pad.thickness',
      /between the floors.* enters no bore/,
    ],
    [{ motor: { shaft: { diameter: 5, flat: 1 } } }, 'motor.shaft.flat', /of the diameter/],
    [{ motor: { shaft: { form: 'keyed', diameter: 5, flat: undefined } } }, 'motor.shaft.diameter', /above 6 mm/],
    [{ insert: { material: 'tpu99' } }, 'insert.material', /no material preset/],
    // Shore 85 D: 10^(0.0235·135 − 0.6403) = 341 MPa
    [{ insert: { material: 'pa12' } }, 'insert.material', /is no rubber, at 1300 MPa: .* up to 341 MPa$/],
  ])('%j', (changes, path, allowed) => {
    const faults = faultsOf(changes);
    const found = faults.find((fault) => fault.path === path);
    expect(found, JSON.stringify(faults)).toBeDefined();
    expect(found!.allowed).toMatch(allowed);
  });
});

describe('the turned end of a screw', () => {
  it('is held in place of the crests, while the screw still tells torque and weight', () => {
    const turned = {
      turned_end: { diameter: 6, length: 30 },
      mounting: 'motor-above',
      duty: { load: 25, span: 500, shock: 'none' },
    };
    const made = design(couplingSheet(turned));
    expect(made.dimensions.finished.screw_hub).toMatchObject({ bore_diameter: 6.05 });
    expect(rowOf(turned, 'crest-grip')).toBeUndefined();
    expect(rowOf(turned, 'grip-torque')!.fail_limit!.min).toBeLessThan(100);
    // 500 mm of 7.95 mm steel: 0.390 kg a metre
    expect(rowOf(turned, 'coupling-axial')!.value).toBeCloseTo(25 + 0.5 * 0.39 * 9.81, 1);
  });
});

describe('bores', () => {
  // DIN 6885-1: over 12 to 17 mm 5 × 5, t2 2.3; over 8 to 10 mm 3 × 3, t2 1.4
  it.each([
    [14, 5, 2.3],
    [10, 3, 1.4],
  ])('a keyed bore of %d mm takes the keyway of its row', (diameter, width, depth) => {
    const made = design(couplingSheet({ motor: { shaft: { form: 'keyed', diameter, flat: undefined } } }));
    expect(made.dimensions.finished.motor_hub).toMatchObject({ keyway_width: width, keyway_depth: depth });
  });

  it('inches are read', () => {
    const made = design(couplingSheet({ screw: undefined, shaft: '1/4 in' }));
    expect(made.dimensions.finished.screw_hub).toMatchObject({ bore_diameter: 6.4 });
  });
});
