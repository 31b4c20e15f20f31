import { describe, expect, it } from 'vitest';
import { readStl } from '../../../src/output/read-stl.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { measureMesh } from '../../../src/solid/measure.js';
import { InputError } from '../../../src/units/faults.js';
import { couplingSheet } from '../../support/coupling-sheets.js';

const reportOf = (changes: Parameters<typeof couplingSheet>[0] = {}) => check(design(couplingSheet(changes)));
const rowOf = (changes: Parameters<typeof couplingSheet>[0], id: string) =>
  reportOf(changes).checks.find((row) => row.id === id);

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
    const { report, files } = await makePart(couplingSheet());
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
    expect(report.bodies.map(({ material }) => material)).toEqual(['pa12', 'pa12', 'tpu95a']);
  });

  it('list every default they used', () => {
    const { assumptions } = reportOf();
    const fields = assumptions.map(({ field }) => field);
    for (const field of ['hubs.outside_diameter', 'motor_hub.clamp', 'insert.pad', 'insert.material', 'jaws.count'])
      expect(fields).toContain(field);
  });

  it('give the same bytes twice', async () => {
    const [first, second] = [await makePart(couplingSheet()), await makePart(couplingSheet())];
    expect(second.files).toEqual(first.files);
  });

  it('leave out the hub whose shaft is not given, and say what to measure', async () => {
    const { report, files } = await makePart(couplingSheet({ screw: undefined }));
    expect(files.map(({ name }) => name)).toEqual(['plain-motor-hub.stl', 'plain-insert.stl', 'report.json']);
    expect(report.checks.find(({ id }) => id === 'matched-half')).toMatchObject({ verdict: 'caution' });
    const measured = { screw: undefined, jaws: { count: 3, height: 10, width: 5.9 } };
    expect(rowOf(measured, 'matched-half')).toMatchObject({ verdict: 'pass' });
  });
});

describe('grip', () => {
  // by hand: M3 head 5.5 on a hole of 3.4: π/4·(5.5² − 3.4²) = 14.68 mm²; PA12 bears 2/3·40 MPa: 391 N a screw;
  // 0.5·2·0.15·391·8 = 470 N·mm on an 8 mm screw
  it('is clamp friction with half the force lost to creep', () => {
    expect(rowOf({}, 'grip-torque')!.value).toBeCloseTo(469.7, 0);
    expect(rowOf({ screw_hub: { clamp: { screw: 'M3', count: 1 } } }, 'grip-torque')!.value).toBeCloseTo(234.9, 0);
  });

  it('counts a flat: p·L·w²/12 besides the clamp', () => {
    // w² = 4·0.5·4.5 = 9 mm²; 26.67 MPa·12 mm·9/12 = 240 N·mm; one M3 on 5 mm: 0.5·0.15·391·5 = 147 N·mm
    const changes = {
      screw: undefined,
      motor: { shaft: { diameter: 5, flat: 4.5, flat_length: 12 } },
      motor_hub: { clamp: { count: 1, screw: 'M3' } },
    };
    expect(rowOf(changes, 'grip-torque')!.value).toBeCloseTo(387, 0);
  });

  it.each([
    [
      'names larger screws and the outside they need',
      { motor: { torque: 0.45 }, hubs: { outside_diameter: 27 } },
      /M4 clamp screw.* would hold/,
    ],
    [
      'names an outside that is larger',
      { motor: { torque: 0.55 }, hubs: { outside_diameter: 26 } },
      /outside of \d+(\.\d)? mm or more/,
    ],
    ['names metal hubs where no clamp holds', { motor: { torque: 3 } }, /metal hubs/],
  ])('%s', (_, changes, words) => {
    const row = rowOf(changes, 'grip-torque')!;
    expect(row).toMatchObject({ verdict: 'fail' });
    expect(row.message).toMatch(/cannot be reached/);
    expect(row.message).toMatch(words);
  });

  it('warns of a set screw by itself', () => {
    expect(rowOf({ screw_hub: { grip: 'set-screw' } }, 'set-screw')).toMatchObject({ verdict: 'caution' });
    expect(rowOf({}, 'set-screw')).toBeUndefined();
  });

  it('warns of a screw that is pulled into the plastic', () => {
    // 0.6 N·m: 600/(0.2·3) = 1000 N on 14.68 mm², 68 MPa, above 1.5 × 40
    expect(rowOf({ motor_hub: { tightening: 0.6 } }, 'clamp-pressure')).toMatchObject({ verdict: 'fail' });
    expect(rowOf({ motor_hub: { tightening: 0.2 } }, 'clamp-pressure')).toMatchObject({ verdict: 'pass' });
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
    const report = reportOf({ duty: { load: 25 }, motor: { axial_limit: 40 }, insert: { pad: 'disc' } });
    for (const id of ['coupling-axial', 'motor-thrust', 'insert-thrust', 'shaft-gap'])
      expect(report.checks.find((row) => row.id === id)).toMatchObject({ id, verdict: 'pass' });
  });

  it.each([
    ['a hanging screw without a load', { mounting: 'motor-above' }, 'coupling-axial', 'caution'],
    [
      'a screw that hangs by its own weight',
      { mounting: 'motor-above', duty: { load: 0 } },
      'coupling-axial',
      'caution',
    ],
    ['a pulled screw lying down', { mounting: 'horizontal', duty: { load: 25 } }, 'coupling-axial', 'fail'],
    [
      'a thrust bearing',
      { mounting: 'motor-above', duty: { load: 25 }, thrust_bearing: 'yes' },
      'coupling-axial',
      'pass',
    ],
    ['an axial limit that is not known', { duty: { load: 25 } }, 'motor-thrust', 'caution'],
    ['a motor that carries less', { duty: { load: 25 }, motor: { axial_limit: 10 } }, 'motor-thrust', 'fail'],
    ['a soft pad, which creeps', { duty: { load: 25 }, insert: { pad: 'soft' } }, 'insert-thrust', 'caution'],
    ['weight on the lobes', { duty: { load: 2000 }, insert: { pad: 'none' } }, 'insert-thrust', 'fail'],
  ])('%s', (_, changes, id, verdict) => {
    expect(rowOf(changes, id)).toMatchObject({ verdict });
  });

  it('says that the motor limit is missing', () => {
    expect(rowOf({ duty: { load: 25 } }, 'motor-thrust')!.message).toBe('not judged: motor.axial_limit is missing');
  });
});

describe('insert and jaws', () => {
  it.each([
    [
      'a small insert at a large torque',
      { motor: { torque: 2.5 }, hubs: { outside_diameter: 28 } },
      'insert-stress',
      'fail',
    ],
    [
      'heavy shock',
      { motor: { torque: 1 }, hubs: { outside_diameter: 28 }, duty: { shock: 'heavy', starts: 1200 } },
      'insert-stress-peak',
      'fail',
    ],
    [
      'lobes squeezed hard',
      { insert: { flank_clearance: -0.3 }, misalignment: { parallel: 1.5 } },
      'insert-squeeze',
      'caution',
    ],
    ['hubs out of line', { misalignment: { parallel: 0.6 } }, 'misalignment', 'fail'],
    ['lobes with room', { insert: { flank_clearance: 0.2 } }, 'coupling-play', 'caution'],
    ['a hub on a hot shaft', { motor: { temperature: 80 } }, 'heat', 'fail'],
    ['a PLA hub on a motor', { material: 'pla' }, 'heat', 'fail'],
    ['a fast shaft', { duty: { speed: 2400 } }, 'speed', 'caution'],
    [
      'a shaft that ends short',
      { motor: { shaft: { diameter: 5, flat: 4.5, length: 9 } } },
      'shaft-engagement',
      'fail',
    ],
    ['a loose bore', { motor_hub: { bore_clearance: 0.3 } }, 'bore-runout', 'caution'],
    ['jaws pushed onto the floor', { misalignment: { axial: 1.2 } }, 'assembly-room', 'fail'],
    ['sharp tips', { jaws: { bevel: 0 }, insert: { flank_clearance: -0.1 } }, 'assembly-entry', 'caution'],
    ['nobody said who scales', {}, 'shrink-applied-once', 'caution'],
  ])('%s: %s', (_, changes, id, verdict) => {
    expect(rowOf(changes, id)).toMatchObject({ id, verdict });
  });

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
    ['80 mm, six jaws', { hubs: { outside_diameter: 80 }, jaws: { count: 6 }, mounting: 'horizontal' }],
    ['two curved jaws', { jaws: { count: 2, flank: 'curved' } }],
    ['both grips, a ball', { motor_hub: { grip: 'both', set_screw: { joint: 'insert' } }, insert: { pad: 'ball' } }],
  ])('%s', async (_, changes) => {
    const { report } = await makePart(couplingSheet(changes));
    const wrong = report.checks.filter(({ verdict }) => verdict === 'fail');
    expect(wrong.map(({ id, message }) => `${id}: ${message}`)).toEqual([]);
    expect(report.bodies).toHaveLength(3);
  });
});

describe('what cannot be', () => {
  it.each([
    [{ motor: { shaft: undefined }, screw: undefined }, 'motor.shaft', /hub without a bore/],
    [{ shaft: 8 }, 'shaft', /screw or shaft, not both/],
    [{ hubs: { outside_diameter: 15 } }, 'hubs.outside_diameter', /at least \d+/],
    [{ motor_hub: { length: 6 } }, 'motor_hub.length', /at least/],
    [{ hubs: { outside_diameter: 27 }, jaws: { count: 6, inner: 24 } }, 'jaws.inner', /leaves no 6 jaws/],
    [{ jaws: { count: 7 } }, 'jaws.count', /2 to 6/],
    [{ hubs: { outside_diameter: 27 }, insert: { hole: 26 } }, 'hubs.outside_diameter', /larger outside/],
    [{ insert: { hardness: 'blue' } }, 'insert.hardness', /Shore/],
    [{ insert: { center: 'solid', pad: 'ball' } }, 'insert.center', /wants a ring/],
    [{ motor: { shaft: { diameter: 5, flat: 1 } } }, 'motor.shaft.flat', /of the diameter/],
    [{ motor: { shaft: { form: 'keyed', diameter: 5, flat: undefined } } }, 'motor.shaft.diameter', /above 6 mm/],
    [{ insert: { material: 'tpu99' } }, 'insert.material', /no material preset/],
  ])('%j', (changes, path, allowed) => {
    const faults = faultsOf(changes);
    const found = faults.find((fault) => fault.path === path);
    expect(found, JSON.stringify(faults)).toBeDefined();
    expect(found!.allowed).toMatch(allowed);
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

  it('a frame gives the customary shaft, listed as an assumption', () => {
    // frame 17: 5 mm with a flat at 4.5 mm
    const made = design(couplingSheet({ motor: { shaft: undefined, frame: 17 } }));
    expect(made.dimensions.finished.motor_hub).toMatchObject({ bore_diameter: 5.1 });
    expect(made.assumptions.find(({ field }) => field === 'motor.shaft')!.value).toBe('5 mm, flat at 4.5 mm');
  });

  it('inches are read', () => {
    const made = design(couplingSheet({ screw: undefined, shaft: '1/4 in' }));
    expect(made.dimensions.finished.screw_hub).toMatchObject({ bore_diameter: 6.45 });
  });
});
