import { beforeAll, describe, expect, it } from 'vitest';
import { isCoupon } from '../../../src/parts/coupon/index.js';
import { printTime } from '../../../src/parts/coupon/print-time.js';
import { couponBodies } from '../../../src/parts/coupon/solid.js';
import { markStyle } from '../../../src/parts/coupon/strip.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { newResults } from '../../../src/pipeline/new-results.js';
import { readYaml } from '../../../src/sheet/read-yaml.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { InputError } from '../../../src/units/faults.js';
import { facetsOf } from '../../support/axial-cut.js';
import { sharedKernel } from '../../support/shared-kernel.js';

const SHEET = {
  part: 'coupon',
  name: 'c',
  screw: 'Tr8x2',
  material: 'pa12',
  printer: { nozzle: 0.4, layer: 0.12, compensation: 'file' },
};
const ALL = { ...SHEET, purposes: ['scale', 'bores', 'thread', 'pockets'] };

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

function coupon(sheet: object) {
  const made = design(sheet);
  if (!isCoupon(made)) throw new Error('not a coupon');
  return made;
}

function findings(sheet: object) {
  return new Map(check(design(sheet)).checks.map((one) => [one.id, one]));
}

describe('the usual coupon', () => {
  it('is four closed solids of the worked-out volume when all purposes are asked for', async () => {
    const { report, files } = await makePart(ALL, { kernel });
    expect(report.checks.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
    expect(report.bodies.map(({ file }) => file)).toEqual([
      'c-scale.stl',
      'c-bores.stl',
      'c-thread.stl',
      'c-pockets.stl',
    ]);
    expect(report.bodies.every(({ closed }) => closed)).toBe(true);
    expect(report.print?.support).toBe('none');
    expect(files.length).toBeGreaterThanOrEqual(5);
  });

  it.each(['pla', 'petg', 'abs', 'pa12', 'pa6', 'pc'])('of %s is lighter than 15 g', (material) => {
    expect(findings({ ...SHEET, material }).get('coupon-mass')).toMatchObject({ verdict: 'pass' });
  });

  it('takes about an hour', () => {
    expect(findings(SHEET).get('coupon-time')!.value).toBeLessThan(75);
    // 2160 mm³ at 0.45 × 0.12 mm and 50 mm/s: 800 s
    expect(printTime(2160, { lineWidth: 0.45, layer: 0.12 }).minutes).toBeCloseTo(800 / 60, 9);
  });

  it('lies apart on the bed', () => {
    const bounds = couponBodies(coupon(ALL)).map(({ expected }) => expected().bounds);
    bounds.slice(1).forEach(([least], i) => {
      expect(least[1]).toBeGreaterThan(bounds[i]![1][1] + 1);
    });
  });

  it('has marks of two lines, 0.6 mm high', () => {
    for (const line of [0.28, 0.45, 0.68, 0.9]) {
      const { stroke, rise, height } = markStyle(line);
      expect(stroke).toBeCloseTo(2 * line, 9);
      expect(rise).toBeGreaterThanOrEqual(0.6);
      expect(height / stroke).toBeGreaterThanOrEqual(5 - 1e-9);
    }
  });

  it.each([[{ nozzle: 0.25, layer: 0.1 }], [{ nozzle: 0.6, layer: 0.2 }], [{ nozzle: 0.8, layer: 0.3 }]])(
    'is closed, with room for its marks, on %j',
    async (printer) => {
      const { report } = await makePart({ ...SHEET, purposes: ['scale', 'bores'], printer }, { kernel });
      expect(report.checks.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
    },
  );
});

describe('the checks', () => {
  it('weigh plates, columns and marks', () => {
    const sheet = { ...SHEET, material: 'pc' };
    const mm3 = couponBodies(coupon(sheet)).map(({ expected }) => expected().volume + expected().mark);
    const volume = mm3.reduce((sum, one) => sum + one, 0);
    const { value, message } = findings(sheet).get('coupon-mass')!;
    // polycarbonate: 1.2 g/cm³
    expect(value).toBeCloseTo((1.2 * volume) / 1000, 5);
    expect(message).toBe(`${Math.round(volume / 100) / 10} cm³ of pc`);
  });

  it('count the layers that a mark is raised by', () => {
    const marks = (nozzle: number, layer: number) =>
      findings({ ...SHEET, printer: { ...SHEET.printer, nozzle, layer } }).get('coupon-marks')!;
    // 0.6 mm: two layers of 0.3, less than two of 0.32, not one of 0.64
    expect(marks(0.4, 0.3)).toMatchObject({ verdict: 'pass', value: 2 });
    expect(marks(0.5, 0.32)).toMatchObject({ verdict: 'caution', value: 1.875 });
    expect(marks(0.8, 0.64)).toMatchObject({ verdict: 'caution', value: 0.9375 });
    // a nozzle of 0.5 mm lays lines of 0.5625, rounded as the sheet is, and strokes of two of them
    expect(marks(0.5, 0.3).message).toMatch(/^raised 0.6 mm, strokes [\d.]+ mm wide, letters [\d.]+ mm high$/);
    expect(marks(0.5, 0.32).message).toMatch(/ high; go over them with a pen, or print thinner layers$/);
  });

  it('say how well a reading tells the shrink, and how many bores are missing', () => {
    const found = findings({ ...SHEET, bores: [6], scale: { span: 60, height: 30 } });
    // readings of ± 0.03 mm: 0.03 / 60 = 0.05 %, 0.03 / 30 = 0.1 %
    expect(found.get('coupon-span')!.message).toBe('one reading tells the shrink to 0.05 %');
    expect(found.get('coupon-height')!.message).toMatch(/^one reading tells the shrink to 0.1 %; .*scale.height/);
    expect(found.get('coupon-diameters')!.message).toMatch(/; 3 more in bores$/);
  });

  it('are silent on what is not asked for', () => {
    const ids = (purposes: string) => [...findings({ ...SHEET, purposes }).keys()];
    const wanted = { scale: ['coupon-span', 'coupon-height'], bores: ['coupon-diameters'] };
    const thread = ['print-layers', 'print-thread-depth'];
    expect(ids('scale')).toEqual(expect.arrayContaining(wanted.scale));
    expect(ids('bores')).toEqual(expect.arrayContaining(wanted.bores));
    expect(ids('thread')).toEqual(expect.arrayContaining(thread));
    for (const other of [...wanted.bores, ...thread]) expect(ids('scale')).not.toContain(other);
    for (const other of [...wanted.scale, ...thread]) expect(ids('bores')).not.toContain(other);
  });

  it.each([
    [{ shrink: 'file', holes: 'file' }, 'pass'],
    [{ shrink: 'slicer', holes: 'file' }, 'caution'],
    [{ shrink: 'file', holes: 'slicer' }, 'caution'],
  ])('ask for a slicer that corrects neither: %j', (compensation, verdict) => {
    const sheet = { ...SHEET, printer: { ...SHEET.printer, compensation } };
    expect(findings(sheet).get('shrink-applied-once')).toMatchObject({ verdict });
  });
});

describe('the file', () => {
  it('holds bores and posts as they are marked, not compensated', async () => {
    const { files } = await makePart({ ...SHEET, purposes: 'bores', bores: [6] }, { kernel });
    const corners = facetsOf(files.find(({ name }) => name === 'c.stl')!.bytes);
    const upper: [number, number][] = [];
    for (let i = 0; i < corners.length; i += 3) {
      if (Math.abs(corners[i + 2]! - 4.5) < 1e-6) upper.push([corners[i]!, corners[i + 1]!]);
    }
    // the ring's bore is the narrowest circle of corners at the top of station 1, the post the widest of station 2
    const xs = upper.map(([x]) => x).sort((a, b) => a - b);
    const gaps = xs.slice(1).map((x, i) => ({ gap: x - xs[i]!, middle: (x + xs[i]!) / 2 }));
    const apart = gaps.filter(({ gap }) => gap > 0.5);
    const { middle } = apart.at(-1)!;
    const right = upper.filter(([x]) => x > middle);
    const span = (points: readonly [number, number][], axis: 0 | 1) =>
      Math.max(...points.map((one) => one[axis])) - Math.min(...points.map((one) => one[axis]));
    expect(span(right, 0)).toBeCloseTo(6, 4);
    const left = upper.filter(([x]) => x <= middle);
    const center = [0, 1].map((axis) => {
      const values = left.map((one) => one[axis as 0 | 1]);
      return (Math.min(...values) + Math.max(...values)) / 2;
    });
    const inner = Math.min(...left.map(([x, y]) => Math.hypot(x - center[0]!, y - center[1]!)));
    // corners of a bore lie outside its circle by at most the chord error
    expect(2 * inner).toBeGreaterThan(6);
    expect(2 * inner).toBeLessThan(6.02);
  });

  it('holds blocks where the features say they are', () => {
    const { features } = coupon({ ...SHEET, scale: { span: 60, height: 0 } });
    const sizes = Object.fromEntries(features.reads.map(({ mark, modelled }) => [mark, modelled]));
    // middles 30 and 60 mm from the corner block's, blocks of 5 mm
    expect(sizes).toMatchObject({ 'X1 over': 35, 'X1 between': 25, 'X2 over': 65, 'X2 between': 55 });
    expect(features.reads.some(({ kind }) => kind === 'height')).toBe(false);
  });
});

describe('the ladder of threads', () => {
  it('steps both clearances around the middle', () => {
    const { features } = coupon({ ...SHEET, thread: { steps: 7, step: 0.05, axial_step: 0.02 } });
    expect(features.threads.map(({ diametral }) => diametral)).toEqual([0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45]);
    expect(features.threads[0]!.axial).toBeCloseTo(0.04, 9);
    expect(features.threads[6]!.axial).toBeCloseTo(0.16, 9);
  });

  it.each(['Tr10x2-LH', 'Tr8x8(P2)', 'M8', 'Acme 3/8-10'])('is closed for %s', async (screw) => {
    const sheet = { ...SHEET, screw, purposes: 'thread', thread: { steps: 3 } };
    const { report } = await makePart(sheet, { kernel });
    expect(report.checks.filter(({ id, verdict }) => id.startsWith('solid-') && verdict === 'fail')).toEqual([]);
  });
});

describe('the sheet of a coupon', () => {
  it.each([
    [{ screw: undefined, purposes: ['thread'] }, 'screw'],
    [{ purposes: ['sizes'] }, 'purposes'],
    [{ scale: { span: 30 } }, 'scale.span'],
    [{ scale: { height: 4 } }, 'scale.height'],
    [{ pockets: { shaft: 5, flat: 5 }, purposes: 'pockets' }, 'pockets.flat'],
    [{ material: { density: 1.1 } }, 'material'],
  ])('refuses %j', (changes, path) => {
    try {
      design({ ...SHEET, ...changes });
      expect.unreachable();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      expect(error.faults[0]!.path).toContain(path);
    }
  });

  it('is warned of too few diameters, a short span, no height', () => {
    const found = findings({ ...SHEET, bores: [6, 8], scale: { height: 0 } });
    expect(found.get('coupon-diameters')).toMatchObject({ verdict: 'caution', value: 2 });
    expect(found.get('coupon-height')).toMatchObject({
      verdict: 'caution',
      value: null,
      message: expect.stringMatching(/^the steps are left out: .*: give scale\.height$/),
    });
  });
});

describe('newResults', () => {
  it('has a blank line for each marked feature, and reads back', () => {
    const text = newResults(ALL);
    const { value } = readYaml(text);
    const { features } = coupon(ALL);
    const { readings, tried } = value as { readings: object; tried: object };
    expect(Object.keys(readings)).toEqual(features.reads.map(({ mark }) => mark));
    expect(Object.keys(tried)).toEqual([...features.threads, ...features.pockets].map(({ mark }) => mark));
  });

  it('is for coupons alone', () => {
    const nut = { part: 'nut', name: 'n', screw: 'Tr8x2', body: { diameter: 14, length: 15 } };
    expect(() => newResults(nut)).toThrow(/must be coupon/);
  });
});
