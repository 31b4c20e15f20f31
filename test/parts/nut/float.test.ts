import { describe, expect, it } from 'vitest';
import { floatFinding, floatPins } from '../../../src/parts/common/float-mate.js';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { stopOf } from '../../../src/parts/nut/float.js';
import { nutBodies } from '../../../src/parts/nut/variants/bodies.js';
import { advise } from '../../../src/pipeline/advise.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { workOut } from '../../../src/pipeline/work-out.js';
import type { Shape } from '../../../src/solid/recipe.js';
import { InputError } from '../../../src/units/faults.js';
import { nutSheet } from '../../support/nut-sheets.js';
import { sharedKernel } from '../../support/shared-kernel.js';

const CARRIAGE = { thickness: 6, holes: { count: 4, circle: 27, start: 45, diameter: 3.4, screw: 'M3' } };
const FLOATING = { float: 0.3, holes: { fit: undefined, joint: 'through' }, carriage: CARRIAGE };
const reportOf = (changes = {}) => check(design(nutSheet({ ...FLOATING, ...changes })));
const row = (changes: object, id: string) => reportOf(changes).checks.find((one) => one.id === id)!;
const faultOf = (changes: object) => {
  try {
    design(nutSheet({ ...FLOATING, ...changes }));
  } catch (error) {
    if (error instanceof InputError) return error.faults[0]!;
    throw error;
  }
  throw new Error('no fault was found');
};

describe('a nut that floats', () => {
  it('has holes that leave its sleeves the float, each way', () => {
    // an M3 in a sleeve of 5 mm, and twice 0.3
    expect(reportOf().dimensions.finished.hole_diameter).toBeCloseTo(5.6, 9);
    expect(row({ float: 0.45 }, 'mount-float')).toMatchObject({
      word: 'yes',
      message: expect.stringMatching(/^the nut floats on sleeves/),
    });
    expect(row({}, 'mount-float').value).toBeCloseTo(0.3, 9);
  });

  it('stands on sleeves that are longer than its flange by the play, and says so', () => {
    const { hardware, cautions } = reportOf();
    expect(hardware).toContainEqual({ item: 'sleeve, steel or brass', size: '5 x 3.2 x 5.05 mm', count: 4 });
    expect(cautions.join()).toMatch(/The nut floats: .* file these to 5\.05 mm.*Nothing tight may clamp the flange/);
  });

  it('loses along the axis its play, and lead · 2f / (2πR) by turning', () => {
    const fixed = check(design(nutSheet({ carriage: CARRIAGE })));
    const tight = fixed.checks.find(({ id }) => id === 'thread-backlash')!.value!;
    const lost = 0.05 + (2 * 2 * 0.3) / (2 * Math.PI * 13.5);
    expect(row({}, 'thread-backlash').value! - tight).toBeCloseTo(lost, 6);
    expect(reportOf().fit!.backlash.likely - fixed.fit!.backlash.likely).toBeCloseTo(lost, 6);
    expect(reportOf().drive!.play!.axial - fixed.drive!.play!.axial).toBeCloseTo(lost, 5);
  });

  it('turns as far as the screw lets it that stands farthest out', () => {
    const at = [
      [12, 0],
      [-12, 0],
      [0, 13.5],
      [0, -13.5],
    ];
    const own = { ...FLOATING.holes, circle: undefined, count: undefined, start: undefined, at };
    const { float, holes, material, printer } = workOut(
      nutSheet({ ...FLOATING, holes: own, carriage: undefined }),
    ) as NutDesign;
    expect(stopOf({ float: float!, holes: holes!, material, printer }).radius).toBe(13.5);
  });

  it('holds its load on the rings under its washers, not by a clamp', () => {
    expect(reportOf().checks.map(({ id }) => id)).not.toContain('bolt-clamp');
    // 30 N on four washers of 7 mm around holes of 5.65 mm at most
    const ring = (Math.PI / 4) * (7 ** 2 - 5.65 ** 2);
    const at = row({ material: { shrink: { plane: '0 %' } }, duty: { motor: undefined } }, 'float-pull');
    expect(at.value!).toBeGreaterThan(0.97 * (7.5 / ring));
    expect(at.value!).toBeLessThan(1.06 * (7.5 / ring));
  });

  it('is told from room to align, which a nut has whose screws are tightened', () => {
    const tight = check(design(nutSheet({ carriage: CARRIAGE }))).checks.find(({ id }) => id === 'mount-float')!;
    expect(tight.message).toMatch(/^room to align, no float/);
  });

  it.each([
    ['shoulder', 'M5', /shoulder screw ISO 7379/, 6],
    ['bare', 'M3', /socket cap/, 3],
  ])('floats on %s screws of %s', (spacer, screw, item, pin) => {
    const flange = { diameter: 44 };
    const changes = {
      float: { sideways: 0.3, spacer },
      flange,
      holes: { fit: undefined, joint: 'through', screw, circle: 32 },
      carriage: undefined,
    };
    expect(reportOf(changes).dimensions.finished.hole_diameter).toBeCloseTo(pin + 0.6, 9);
    expect(reportOf(changes).hardware[0]!.item).toMatch(item);
  });

  it.each([
    [
      'sleeves of 5 mm in holes of 6 mm',
      6,
      { item: 'sleeve, steel or brass', size: '5 x 3.2 x 5.05 mm', count: 4 },
      0.5,
    ],
    ['bare screws of 3 mm in holes of 4 mm', 4, undefined, 0.5],
  ])('takes %s as they are', (_, diameter, sleeve, room) => {
    const { dimensions, hardware } = reportOf({ holes: { fit: undefined, diameter } });
    expect(dimensions.finished.hole_diameter).toBe(diameter);
    expect(hardware.find(({ item }) => item.startsWith('sleeve'))).toEqual(sleeve);
    expect(row({ holes: { fit: undefined, diameter } }, 'mount-float').value).toBeCloseTo(room, 5);
  });

  it('stands without a flange on sleeves of its length and the play, 18 + 0.05 mm, two at the least', () => {
    const bare = {
      flange: undefined,
      body: { diameter: 40 },
      holes: { fit: undefined, count: 2 },
      carriage: undefined,
    };
    expect(reportOf(bare).hardware).toContainEqual({
      item: 'sleeve, steel or brass',
      size: '5 x 3.2 x 18.05 mm',
      count: 2,
    });
  });

  it('counts what a shoulder may be longer than it says', () => {
    const changes = {
      float: { spacer: 'shoulder' },
      holes: { fit: undefined, screw: 'M5', circle: 32 },
      flange: { diameter: 46 },
      carriage: undefined,
    };
    expect(row(changes, 'thread-backlash').uncertainty).toBeGreaterThan(0.125);
  });

  it('is moved through its float on the solid and stopped beyond it; larger holes would be noticed', async () => {
    const kernel = await sharedKernel;
    const { report } = await makePart(nutSheet(FLOATING), { kernel });
    expect(report.checks.find(({ id }) => id === 'solid-float')).toMatchObject({ verdict: 'pass' });
    const made = design(nutSheet(FLOATING)) as NutDesign;
    const trial = {
      still: nutBodies(made, 'finished').map(
        ({ recipe }): Shape => ({ kind: 'mesh', mesh: kernel.fuse(recipe.shape) }),
      ),
      moving: floatPins(made.holes!.centres, { pin: 5, from: -9, to: 27 }),
      radius: 13.5,
    };
    expect(floatFinding({ ...trial, free: 0.3, stop: 0.3 }, kernel).verdict).toBe('pass');
    expect(floatFinding({ ...trial, free: 0.4, stop: 0.4 }, kernel).verdict).toBe('fail');
    expect(floatFinding({ ...trial, free: 0.15, stop: 0.15 }, kernel).verdict).toBe('fail');
  });

  it.each([
    [{ holes: { fit: undefined, joint: 'insert' } }, 'holes.joint', /through/],
    [{ holes: { fit: undefined, count: 1 }, carriage: undefined }, 'holes.count', /2 or more/],
    [{ holes: { fit: undefined, screw: undefined, diameter: 4 } }, 'holes.screw', /is missing/],
    [{ holes: undefined, carriage: undefined }, 'holes.screw', /is missing/],
    [{ float: { spacer: 'shoulder' } }, 'float.spacer', /M5, M6 or M8/],
    [{ float: { sleeve: 4 } }, 'float.sleeve', /at least 4\.2 mm/],
  ])('refuses %j', (changes, path, allowed) => {
    expect(faultOf(changes)).toMatchObject({ path, allowed: expect.stringMatching(allowed) });
  });
});

describe('cures of a nut that floats', () => {
  const curesOf = (changes: object, id: string) =>
    advise(nutSheet({ ...FLOATING, ...changes })).checks.find((one) => one.check === id)?.cures ?? [];

  // sleeves of 5 mm in holes of 5.3 mm leave 0.15 mm each way, where 0.2 are wanted: at most 5.3 − 0.4, at least 5 + 0.4
  it('take thinner sleeves or wider holes', () => {
    const sets = curesOf({ holes: { fit: undefined, joint: 'through', diameter: 5.3 } }, 'mount-float').map(
      ({ set }) => set,
    );
    const of = (field: string) => sets.find((set) => Object.keys(set).join() === field)?.[field];
    expect(of('float.sleeve')).toBeLessThanOrEqual(4.9);
    expect(of('holes.diameter')).toBeGreaterThanOrEqual(5.4);
  });

  it('keep the float sideways that was told short when its play along is changed', () => {
    const along = curesOf(
      { duty: { axis: 'vertical' }, limits: { 'thread-backlash': { max: 0.27 } } },
      'thread-backlash',
    ).find(({ set }) => 'float.along' in set);
    expect(along?.lines[0]).toMatch(/^float: \{sideways: 0\.3, along: 0\.\d+\}$/);
  });
});
