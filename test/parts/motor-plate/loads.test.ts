import { describe, expect, it } from 'vitest';
import { bendPlate } from '../../../src/parts/motor-plate/bending.js';
import type { MotorPlateDesign } from '../../../src/parts/motor-plate/dimensions.js';
import { goesIntoPlate, loaded, thrustOf, untoldLoads } from '../../../src/parts/motor-plate/loads.js';
import { design } from '../../../src/pipeline/design.js';
import { BELTED, LOADED, MOTOR_PLATES, MOUNTED } from '../../support/motor-plate-sheets.js';
import { changed } from '../../support/nut-sheets.js';

type Tree = { readonly [key: string]: unknown };
const made = (sheet: Tree, changes: Tree = {}) => design(changed(sheet, changes)) as MotorPlateDesign;
const untold = (sheet: Tree, changes: Tree) => untoldLoads(made(sheet, changes));

describe('what is not told of the loads of a plate', () => {
  const LIES = { ...MOUNTED, mounting: 'horizontal' };

  it('is nothing of a whole sheet', () => {
    for (const sheet of [MOUNTED, LOADED, BELTED, LIES]) expect(untold(sheet, {})).toEqual([]);
  });

  it('is the load only where it goes into the motor', () => {
    expect(untold(LOADED, { duty: undefined })).toEqual(['duty.load']);
    expect(untold(MOUNTED, { duty: undefined })).toEqual([]);
    expect(untold(BELTED, { duty: undefined })).toEqual([]);
  });

  it('is what a thrust bearing stands in, where there is one and nobody tells', () => {
    const bare = { duty: undefined, bearing_on: undefined };
    expect(untold(LOADED, bare)).toEqual(['duty.load']);
    expect(untold(MOUNTED, bare)).toEqual(['bearing_on', 'duty.load']);
    expect(untold(MOUNTED, { duty: undefined, bearing_on: 'plate' })).toEqual(['duty.load']);
    // nothing goes into the plate of a belt, or where a holder carries
    expect(goesIntoPlate({ ...made(MOUNTED, { bearing_on: undefined }), drive: 'belt' })).toBe(false);
    expect(goesIntoPlate(made(LOADED, { locating_holder: 'yes', bearing_on: undefined }))).toBe(false);
  });

  it('is the weight, and how long a motor is that lies', () => {
    expect(untold(LIES, { motor: { weight: undefined } })).toEqual(['motor.weight']);
    expect(untold(LIES, { motor: { length: undefined } })).toEqual(['motor.length']);
    expect(untold(MOUNTED, { motor: { length: undefined } })).toEqual([]);
    expect(untold(LIES, { motor: { weight: undefined, length: undefined } })).toEqual(['motor.weight']);
    expect(untold(MOUNTED, { mounting: undefined })).toEqual(['mounting']);
  });

  it('is the pull of a belt, and how far out it pulls', () => {
    expect(untold(BELTED, { belt_pull: undefined })).toEqual(['belt_pull']);
    expect(untold(BELTED, { motor: { shaft: { length: undefined } } })).toEqual(['motor.shaft.length']);
    expect(untold(MOUNTED, { motor: { shaft: { length: undefined } } })).toEqual([]);
  });
});

describe('what acts on a plate, by hand', () => {
  it('is load and weight along a shaft that stands', () => {
    expect(thrustOf(made(LOADED))).toMatchObject({ along: 23, across: 0, moment: 0, pulls: [] });
    expect(thrustOf(made(MOUNTED))).toMatchObject({ along: 3, across: 0, words: 'the motor hangs on the plate' });
  });

  it('is the screw besides, where it stands on the motor or hangs from it', () => {
    // 500 mm of 8 mm steel, 0.395 kg a metre
    const screw = { screw: { designation: 'Tr8x2', major: '8 mm' }, duty: { load: 20, span: 500 } };
    const bar = 0.5 * 0.395 * 9.80665;
    expect(thrustOf(made(LOADED, screw)).along).toBeCloseTo(23 + bar, 2);
    expect(thrustOf(made(LOADED, { ...screw, mounting: 'horizontal' })).along).toBe(20);
    expect(thrustOf(made(MOUNTED, screw)).along).toBe(3);
  });

  it('is no motor that nobody weighed', () => {
    const light = { mounting: 'horizontal', motor: { weight: undefined } };
    expect(thrustOf(made(MOUNTED, light))).toMatchObject({ across: 0, pulls: [] });
  });

  it('is a moment by the lever of the screws, or of the plate’s edge where that is longer', () => {
    // motor's screws at 69.58/2 mm from the axis, a plate of 130 × 110 mm or so: a quarter of that is less
    const large = made(MOTOR_PLATES['largest motor'] as Tree);
    expect(Math.max(large.finished.length, large.finished.width) / 4).toBeLessThan(34.79);
    expect(bendPlate(large).perMoment).toBeCloseTo(1 / 34.79, 4);
    // screws at 15.5 mm: the plate leans on its shorter side
    const common = made(MOUNTED);
    const { length, width } = common.finished;
    expect(bendPlate(common).perMoment).toBeCloseTo(4 / Math.min(length, width), 6);
  });

  it('is weight across a shaft that lies, at half of its motor, and the belt at the end of the shaft', () => {
    // 3 N · 40/2; and 20 N · 24
    expect(thrustOf(made(MOUNTED, { mounting: 'horizontal' }))).toMatchObject({ along: 0, across: 3, moment: 60 });
    expect(thrustOf(made(BELTED))).toMatchObject({
      along: 0,
      across: 23,
      moment: 540,
      pulls: ['a belt of 20 N', 'a motor of 3 N'],
    });
    const standing = thrustOf(made(BELTED, { mounting: 'motor-below' }));
    expect(standing).toMatchObject({ along: 3, across: 20, moment: 480, pulls: ['a belt of 20 N'] });
  });

  it('stalls only what its load goes into', () => {
    const stalls = (sheet: Tree) => loaded(made(sheet, { screw: 'Tr8x2' })).screw !== undefined;
    expect(stalls(LOADED)).toBe(true);
    expect(stalls(MOUNTED)).toBe(false);
    expect(stalls(BELTED)).toBe(false);
  });

  it('is no load where anything of it is not told', () => {
    expect(loaded(made(LOADED)).duty.load).toBeCloseTo(23, 9);
    expect(loaded(made(LOADED, { motor: { weight: undefined } })).duty.load).toBeUndefined();
  });
});
