import { describe, expect, it } from 'vitest';
import { creepModulus } from '../../../src/mechanics/strength/stiffness.js';
import { clampForce, clampLeft } from '../../../src/parts/common/bolting.js';
import { bendPlate } from '../../../src/parts/motor-plate/bending.js';
import type { MotorPlateDesign } from '../../../src/parts/motor-plate/dimensions.js';
import { hasUsualScrew, motorScrewLength } from '../../../src/parts/motor-plate/motor-screw.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { InputError } from '../../../src/units/faults.js';
import { ADAPTED, BELTED, LOADED, MOTOR_PLATES, MOUNTED } from '../../support/motor-plate-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';

type Tree = { readonly [key: string]: unknown };
const made = (sheet: Tree) => design(sheet) as MotorPlateDesign;
const rowOf = (sheet: Tree, id: string) => check(design(sheet)).checks.find((row) => row.id === id)!;
const sizesOf = (sheet: Tree) => design(sheet).dimensions.finished as Readonly<Record<string, number>>;

describe('a motor plate', () => {
  it.each([...Object.entries(MOTOR_PLATES), ['start sheet', startSheet('motor-plate')]] as const)(
    'of the kind %s comes out closed, sized right and mating',
    async (_, sheet) => {
      const { report } = await makePart(sheet, {
        kernel: sharedKernel,
        accept: check(design(sheet))
          .checks.filter(({ verdict }) => verdict === 'fail')
          .map(({ id }) => ({ check: id, reason: 'tried for its solid alone' })),
      });
      const solid = report.checks.filter(({ id }) => id.startsWith('solid-'));
      expect(solid.length).toBeGreaterThan(3);
      expect(solid.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
      for (const { closed } of report.bodies) expect(closed).toBe(true);
    },
  );

  // NEMA ICS 16: bolt circles 1.725, 2.625, 3.875 in; pilots 22, 22, 22, 38.1, 73.0 mm
  it.each([
    ['frame-11', undefined, 22],
    ['frame-14', undefined, 22],
    ['frame-17', 1.725, 22],
    ['frame-23', 2.625, 38.1],
    ['frame-34', 3.875, 73.0],
  ])('has the square and the pilot of %s', (frame, circle, pilot) => {
    const sizes = sizesOf({
      ...MOUNTED,
      motor: frame,
      machine: { holes: { rectangle: [130, 130], screw: 'M5' }, face: 'motor' },
    });
    if (circle) expect(sizes.motor_square! * Math.SQRT2).toBeCloseTo(25.4 * circle, 1);
    // by hand: 2.625·25.4/√2 = 47.146, 3.875·25.4/√2 = 69.597
    const square = { 'frame-11': 23, 'frame-14': 26, 'frame-17': 31, 'frame-23': 47.146, 'frame-34': 69.597 }[frame];
    expect(Math.abs(sizes.motor_square! - square!)).toBeLessThan(0.01);
    // a pilot that locates has 0.3 mm of play
    expect(sizes.pilot_hole! - 0.3).toBeCloseTo(pilot, 1);
  });

  // common practice for M3 in holes 4.5 mm deep: plate and washer + 3 to + 4; a shop has 6, 8, 10, 12
  it.each([
    [4, true, 8],
    [6, true, 10],
    [8, true, 12],
    [5.5, false, 10],
  ])('takes M3 by length: %d mm, sunk %s, M3x%d', (grip, sunk, length) => {
    const thread = { screw: 'M3', depth: 4.5, grip, sunk } as const;
    expect(hasUsualScrew(thread)).toBe(true);
    expect(motorScrewLength(thread)).toBe(length);
  });
  it('finds no usual screw for 5 mm and a washer, and makes the plate 5.5', () => {
    expect(hasUsualScrew({ screw: 'M3', depth: 4.5, grip: 5, sunk: false })).toBe(false);
    const small = { ...MOUNTED, motor: { ...MOUNTED.motor, square: 26 } };
    expect(sizesOf(changed(small, { motor: { square: 23 } })).thickness).toBe(5.5);
  });

  it('says how far to turn a pattern whose holes meet those of the motor', () => {
    // squares of 26 and 31 mm: corners 3.54 mm apart, where half a pocket, half an insert and 0.4 mm want more
    const meeting = changed(ADAPTED, {
      motor: { square: 26 },
      machine: { holes: { rectangle: [31, 31], screw: 'M3' } },
    });
    expect(() => design(meeting)).toThrow(/further apart; turned by 45° they stand apart: machine\.holes\.start/);
    const turned = changed(meeting, { machine: { holes: { start: 45 } } });
    expect(rowOf(turned, 'wall').verdict).toBe('pass');
  });

  it('asks for no more thread than a shallow hole has room for, and says that it has less than is wanted', () => {
    const { limit, message } = rowOf(changed(MOUNTED, { motor: { thread_depth: 3 } }), 'screw-engagement');
    expect(limit).toEqual({ min: 3 });
    expect(message).toMatch(/its holes are shallow/);
  });

  // shaft of the table 0.812 in = 20.62 mm, less a plate of 6 mm
  it('leaves the shaft less the plate', () => {
    const row = rowOf(changed(MOUNTED, { motor: { shaft: { length: 20.62 } }, hub_depth: 10 }), 'shaft-left');
    expect(row.value).toBeCloseTo(14.62 - 10, 9);
  });

  // 0.45 N·m on a square of 31: 450/(4·21.92) = 5.13 N a screw, against 0.15 of what it clamps with in the end, less 3/4 N of motor
  it('holds torque by friction', () => {
    const sheet = changed(MOUNTED, { motor: { torque: '0.45 N m' } });
    const { joints, material, duty } = made(sheet);
    const left = clampLeft(clampForce(joints.motor, 6, material)!, material, duty.temperature!);
    expect(rowOf(sheet, 'slip').value).toBeCloseTo((0.15 * (left - 0.75)) / 5.132, 2);
  });

  it('is as warm as the face of its motor, and 80 °C where nobody measured it', () => {
    expect(rowOf(MOUNTED, 'heat').value).toBe(65 - 42);
    expect(rowOf(changed(MOUNTED, { motor: { temperature: undefined } }), 'heat').value).toBe(65 - 80);
    const pc = { ...changed(MOUNTED, { motor: { temperature: undefined } }), material: 'pc' };
    expect(rowOf(pc, 'heat')).toMatchObject({ word: 'yes', value: 125 - 80 });
    expect(design(pc).assumptions).toContainEqual(
      expect.objectContaining({ field: 'motor.temperature', value: 80, why: expect.stringMatching(/50 to 80 °C/) }),
    );
    expect(rowOf(changed(MOUNTED, { duty: { temperature: 50 } }), 'heat').value).toBe(65 - 50);
  });

  // ASA softens at 88 °C: a face of 68 °C at most, and where nobody tells of it, cases run at 50 to 80 °C
  it('asks how warm an untold motor gets where the verdict hangs on it', () => {
    const untold = (changes: Tree = {}) =>
      changed({ ...MOUNTED, material: 'asa' }, { motor: { temperature: undefined }, ...changes });
    expect(rowOf(untold(), 'heat')).toMatchObject({ word: 'not-told', missing: ['motor.temperature'] });
    expect(rowOf(untold({ limits: { heat: { min: 8 } } }), 'heat').word).toBe('yes');
    // a room of 80 °C makes it no cooler than the motor's case could
    expect(rowOf(untold({ duty: { temperature: 80 } }), 'heat')).toMatchObject({ word: 'no', value: 88 - 80 });
  });

  // deflection temperature 20 K above the face: PLA no more than 39, PETG 52, ABS 70, PC 118
  it.each([
    ['pla', 39],
    ['petg', 52],
    ['abs', 70],
    ['asa', 75],
    ['pc', 118],
  ])('of %s is no kinder than common practice', (material, most) => {
    expect(rowOf({ ...changed(MOUNTED, { motor: { temperature: most + 1 } }), material }, 'heat').verdict).toBe('fail');
  });

  describe('bending, by hand', () => {
    // two bolts on ±40, motor holes on ±15.5, plate 50 wide and 6 thick: half the load on an arm of 24.5 mm
    const row = {
      ...LOADED,
      machine: {
        holes: {
          at: [
            [40, 0],
            [-40, 0],
          ],
          screw: 'M4',
        },
        face: 'motor',
      },
      plate: { length: 96, width: 50, thickness: 6 },
    };
    const force = 20 + 3;
    // bolts share half the girth of the motor's square, and two of its holes are in the way
    const across = (Math.PI * 31) / 2 - 2 * 3.4;

    it('is that of a strip from the motor to each bolt', () => {
      const stress = ((force / 2) * 24.5) / ((across * 6 ** 2) / 6);
      expect(rowOf(row, 'plate-bending').value! / stress).toBeCloseTo(1, 2);
    });

    it('is that of what sunk heads leave: 3 mm deep, 6.18 mm wide', () => {
      const machine = { holes: row.machine.holes, face: 'outer', opening: 38.1, joint: 'insert', thickness: 6 };
      const sunk = { ...row, machine };
      expect(made(sunk).finished.motor.sunk).toEqual({ diameter: 6.18, depth: 3 });
      // below the heads the holes of 3.4 mm are in the way, beside them the heads
      const [below, beside] = [across, across + 2 * 3.4 - 2 * 6.18];
      const middle = (below * 1.5 + beside * 4.5) / (below + beside);
      const inertia =
        ((below + beside) * 3 ** 3) / 12 + 3 * below * (middle - 1.5) ** 2 + 3 * beside * (4.5 - middle) ** 2;
      const stress = ((force / 2) * 24.5) / (inertia / (6 - middle));
      expect(rowOf(sunk, 'plate-bending').value! / stress).toBeCloseTo(1, 3);
    });

    it('leans as a strip does whose plastic has crept', () => {
      const { material } = made(row);
      const modulus = creepModulus(material, { hours: 5 * 8760, temperature: 42 });
      const lean = (inertia: number) => (((force / 2) * 24.5 ** 2) / (2 * modulus * inertia)) * (180 / Math.PI);
      const slope = rowOf(row, 'plate-slope').value!;
      expect(slope).toBeGreaterThan(lean((50 * 6 ** 3) / 12));
      // near the bolts the load has not spread over the whole plate yet
      expect(slope).toBeLessThan(1.2 * lean((across * 6 ** 3) / 12));
    });

    it('takes a motor that lies as a moment of half its length', () => {
      const lies = changed(row, { thrust_bearing: 'yes', mounting: 'horizontal' });
      // 3 N · 20 mm: across the row of bolts it leans on its edge, a quarter of 50 mm from the axis on the mean
      const thrust = 60 / 12.5;
      const stress = ((thrust / 2) * 24.5) / ((across * 6 ** 2) / 6);
      expect(rowOf(lies, 'plate-bending').value! / stress).toBeCloseTo(1, 2);
    });

    it('keeps the load of a screw that a bearing carries out of the motor', () => {
      const carried = changed(row, { thrust_bearing: 'yes' });
      expect(rowOf(carried, 'plate-bending').value! / rowOf(row, 'plate-bending').value!).toBeCloseTo(3 / 23, 6);
      expect(rowOf(carried, 'motor-thrust')).toBeUndefined();
    });
  });

  it('carries what stands on a thrust bearing in it: load and jam, but for the screws of the motor', () => {
    const screw = { screw: 'Tr8x2', duty: { load: 20, span: 300 } };
    const through = changed(LOADED, screw);
    const beside = changed(through, { thrust_bearing: 'yes' });
    const on = changed(beside, { bearing_on: 'plate' });
    for (const id of ['plate-bending', 'plate-slope', 'bolt-clamp', 'motor-stall'])
      expect(rowOf(on, id).value, id).toBe(rowOf(through, id).value);
    expect(rowOf(on, 'plate-bending').message).toMatch(/^the load stands on a thrust bearing in the plate: /);
    // the motor's screws carry its 3 N alone: no part of the load, no jam
    expect(rowOf(on, 'bolt-clamp-motor').value).toBe(rowOf(beside, 'bolt-clamp-motor').value);
    expect(rowOf(on, 'motor-thrust')).toBeUndefined();
  });

  it('tips about its edge on bolts in a line beside the shaft', () => {
    const at = [
      [34, 26],
      [34, -26],
    ];
    const holes = { rectangle: undefined, at, screw: 'M4' };
    const sheet = changed(LOADED, { machine: { holes }, plate: { thickness: 12 } });
    const worked = made(sheet);
    const { length, middle } = worked.finished;
    const edge = middle[0] + length / 2;
    // F·e/(e − 34) on two of them
    const clamp = clampForce(worked.joints.machine, 12, worked.material)!;
    const left = clampLeft(clamp, worked.material, worked.duty.temperature!);
    expect(rowOf(sheet, 'bolt-clamp').value).toBeCloseTo(left / ((23 * edge) / (edge - 34) / 2), 6);
    // beside them the motor that lies turns it by as much as where its screws end, 15.5 mm out
    expect(bendPlate(worked).perMoment).toBeCloseTo(1 / 15.5, 6);
  });

  it('takes a moment by how far screws stand from their own middle', () => {
    const at = [30, 40].flatMap((x) => [
      [x, 26],
      [x, -26],
    ]);
    const worked = made(changed(LOADED, { machine: { holes: { rectangle: undefined, at, screw: 'M4' } } }));
    // 5 mm to either side of x = 35, or half of what the plate has beyond that
    const { length, middle } = worked.finished;
    expect(bendPlate(worked).perMoment).toBeCloseTo(1 / Math.max(5, (middle[0] + length / 2 - 35) / 2), 6);
  });

  it('has its shaft come out through its pilot', () => {
    const motor = (pilot: number) => ({ ...MOUNTED, motor: { ...MOUNTED.motor, pilot } });
    expect(() => made(motor(5))).toThrow(/motor\.pilot.*must be above the 5 mm of its shaft/);
    expect(() => made(motor(6))).not.toThrow();
  });

  it('takes a moment by how far screws stand from the axis, where their own middle is further off', () => {
    // x = −20, −20 and 80: 40 from the axis on the mean, 44.4 from their middle at 13.3; y = ±70 and a motor of 90 mm are further off
    const at = [
      [-20, 70],
      [-20, -70],
      [80, 0],
    ];
    const motor = { square: 90, pilot: 70, body: 110 };
    const worked = made(changed(LOADED, { motor, machine: { holes: { rectangle: undefined, at, screw: 'M4' } } }));
    expect(bendPlate(worked).perMoment).toBeCloseTo(1 / 40, 6);
  });

  it('asks which bearing stands in it, and whether its hole lets that through', () => {
    const on = (changes: object) => rowOf(changed(MOUNTED, { bearing_on: 'plate', ...changes }), 'bearing-seat');
    // 22.3 mm around the pilot: (17 − 22.3)/2 of a row between 10 and 24 mm
    expect(on({ bearing: '51100' })).toMatchObject({ word: 'no', value: -2.65 });
    expect(on({ bearing: '51204' })).toMatchObject({ word: 'yes', value: 3.85 });
    expect(on({}).missing).toEqual(['bearing']);
    expect(on({ bearing_on: undefined }).missing).toEqual(['bearing_on']);
    expect(on({ bearing_on: 'machine' })).toBeUndefined();
    expect(on({ thrust_bearing: 'no' })).toBeUndefined();
    expect(rowOf(changed(BELTED, { bearing_on: 'plate', thrust_bearing: 'yes' }), 'bearing-seat')).toBeUndefined();
    expect(() => made({ ...MOUNTED, bearing: { bore: 8, outside: 16 } })).toThrow(/bearing.height: is missing/);
  });

  it('asks what the bearing stands in only where the verdict hangs on it', () => {
    const untold = (changes: object) =>
      changed(MOUNTED, { bearing_on: undefined, screw: 'Tr8x2', duty: { load: 20, span: 300 }, ...changes });
    // the jam of 0.4 N·m breaks the plate, that of 0.02 N·m does not
    expect(rowOf(untold({}), 'plate-bending')).toMatchObject({ word: 'not-told', missing: ['bearing_on'] });
    const weak = untold({ motor: { ...MOUNTED.motor, torque: '0.02 N m' } });
    expect(rowOf(weak, 'plate-bending')).toMatchObject({ word: 'yes' });
    // without the load or the screw nobody knows what it would carry
    expect(rowOf({ ...weak, duty: {} }, 'plate-bending').missing).toEqual(['bearing_on', 'duty.load']);
    expect(rowOf(untold({ screw: undefined }), 'motor-stall').missing).toEqual(['bearing_on', 'screw']);
  });

  it('stands the force of a stalled motor for a moment', () => {
    // 0.4 N·m on Tr8x2 with friction 0.05: far above the load
    const stalled = changed(LOADED, { screw: 'Tr8x2' });
    expect(rowOf(stalled, 'plate-bending').message).toMatch(/the motor stalled/);
    expect(rowOf(stalled, 'plate-bending').value).toBeGreaterThan(10 * rowOf(LOADED, 'plate-bending').value!);
    // 1.9926 N for a N·mm by hand
    expect(rowOf(stalled, 'motor-stall').value).toBeCloseTo(797.06, 1);
    expect(rowOf(LOADED, 'motor-stall').missing).toEqual(['screw']);
    expect(rowOf(changed(LOADED, { motor: { torque: undefined } }), 'motor-stall').missing).toEqual([
      'screw',
      'motor.torque',
    ]);
    expect(rowOf(changed(LOADED, { thrust_bearing: 'yes' }), 'motor-stall')).toBeUndefined();
  });

  it('judges the stronger of two torques that are told of one motor', () => {
    const both = (torque: string) => changed(LOADED, { screw: 'Tr8x2', duty: { motor: { torque } } });
    // 2 N·m beside 0.4 N·m: five times 797.06 N
    expect(rowOf(both('2 N m'), 'motor-stall').value).toBeCloseTo(3985.3, 0);
    expect(rowOf(both('0.1 N m'), 'motor-stall').value).toBeCloseTo(797.06, 1);
  });

  it.each([
    [LOADED, { mounting: undefined }, 'mounting'],
    [LOADED, { motor: { weight: undefined } }, 'motor.weight'],
    [LOADED, { duty: undefined }, 'duty.load'],
    [ADAPTED, { motor: { length: undefined } }, 'motor.length'],
    [BELTED, { belt_pull: undefined }, 'belt_pull'],
    [BELTED, { motor: { shaft: { length: undefined } } }, 'motor.shaft.length'],
  ] as const)('judges no bending without what loads it (case %#)', (sheet, changes, field) => {
    const { word, message } = rowOf(changed(sheet, changes), 'plate-bending');
    expect(word).toBe('not-told');
    expect(message).toContain(field);
  });

  // by hand, PETG of 44 MPa at 42 °C: 26.4 MPa on a washer of 10 mm over a slot of 58 mm² are 542 N; years leave
  // 0.9 · 0.88·43,800^(−0.0439·47/28) · 0.878 of it, 171 N; four of them at 0.15 on 46.1 mm against 400 + 23·46.1 N·mm
  it('slips where its slots hold least', () => {
    const fresh = 26.4 * ((Math.PI / 4) * 100 - 5.8 * 10);
    const left = 0.9 * 0.88 * 43_800 ** ((-0.0439 * 47) / 28) * 0.878 * fresh;
    const radius = Math.hypot(35, 30);
    const held = 4 * left * 0.15 * radius;
    expect(held / (400 + 20 * radius)).toBeCloseTo(3.59, 2);
    expect(rowOf(BELTED, 'slip').value).toBeCloseTo(held / (400 + 23 * radius), 2);
    expect(rowOf(BELTED, 'slip').value).toBeCloseTo(3.25, 2);
  });

  it('sinks heads that the machine would lie on', () => {
    expect(sizesOf(ADAPTED)).toMatchObject({ head_pocket_depth: 3 });
    expect(sizesOf(changed(ADAPTED, { machine: { opening: 60 } })).head_pocket_depth).toBeUndefined();
    expect(sizesOf(MOUNTED).head_pocket_depth).toBeUndefined();
  });

  it('takes the holes of a machine that was made for another frame', () => {
    const named = sizesOf({ ...ADAPTED, machine: { preset: 'frame-23', face: 'outer', joint: 'insert' } });
    expect(named).toMatchObject({ holes_along_x: 47.14, holes_along_y: 47.14, hole_diameter: 5.6 });
  });

  it.each([
    [MOUNTED, ['4 socket cap screw ISO 4762 M3x10', '4 plain washer ISO 7089 M3']],
    // 6 + 6 + two washers of 0.8 + 3.2 of nut + 1.05 = 17.85
    [MOUNTED, ['4 socket cap screw ISO 4762 M4x20', '8 plain washer ISO 7089 M4', '4 hexagon nut ISO 4032 M4']],
    // sunk 3 mm in a plate of 8: 5 + 3 to 5 + 4
    [ADAPTED, ['4 socket cap screw ISO 4762 M3x8', '4 heat-set insert M4']],
    // 6 of machine, 0.8 of washer, 4 to 8 of insert
    [ADAPTED, ['4 socket cap screw ISO 4762 M4x12']],
  ] as const)('lists what to buy by length (case %#)', async (sheet, rows) => {
    const { report } = await makePart(sheet, { kernel: sharedKernel });
    const words = report.hardware.map(({ item, size, count }) => `${count} ${item} ${size}`);
    expect(words).toEqual(expect.arrayContaining([...rows]));
  });

  it('reads inches', () => {
    const inches = changed(MOUNTED, { motor: { square: '1.22 in', pilot: '0.866 in' } });
    expect(sizesOf(inches).motor_square).toBeCloseTo(30.988, 9);
  });

  it.each([
    [{ ...MOUNTED, motor: 'frame-18' }, 'motor'],
    [changed(MOUNTED, { motor: { thread_depth: undefined } }), 'motor.thread_depth'],
    [changed(MOUNTED, { machine: { face: undefined } }), 'machine.face'],
    [{ ...ADAPTED, slots: { along: 'x', by: 3 } }, 'slots'],
    [changed(ADAPTED, { machine: { bare: 'tapped' } }), 'machine.joint'],
    [changed(ADAPTED, { machine: { holes: { screw: undefined, diameter: 4.5 } } }), 'machine.holes.screw'],
    [{ ...BELTED, coupling: 'rigid' }, 'coupling'],
    [{ ...MOUNTED, belt_pull: 20 }, 'belt_pull'],
    [{ ...MOUNTED, plate: { length: 55 } }, 'plate'],
    [changed(ADAPTED, { plate: { thickness: 3.5 } }), 'plate.thickness'],
    [changed(MOUNTED, { machine: { holes: { rectangle: [32, 32] } } }), 'machine.holes'],
    [changed(MOUNTED, { motor: { pilot: 42 } }), 'motor'],
  ])('refuses %j at its field', (sheet, path) => {
    try {
      design(sheet);
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect((error as InputError).faults.map((fault) => fault.path)).toContain(path);
      return;
    }
    throw new Error('no fault was found');
  });
});
