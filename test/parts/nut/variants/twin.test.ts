import { beforeAll, describe, expect, it } from 'vitest';
import type { NutDesign } from '../../../../src/parts/nut/dimensions.js';
import { nutMate } from '../../../../src/parts/nut/mate.js';
import { nutBodies } from '../../../../src/parts/nut/variants/bodies.js';
import { asFinished } from '../../../../src/parts/nut/variants/mate.js';
import { check } from '../../../../src/pipeline/check.js';
import { design } from '../../../../src/pipeline/design.js';
import { makePart } from '../../../../src/pipeline/make.js';
import type { Kernel } from '../../../../src/solid/kernel.js';
import { NO_COMMON_VOLUME } from '../../../../src/solid/mate.js';
import { InputError } from '../../../../src/units/faults.js';
import { FAMILY_BASE } from '../../../support/family-sheet.js';
import { changed } from '../../../support/nut-sheets.js';
import { sharedKernel } from '../../../support/shared-kernel.js';

type Tree = { readonly [key: string]: unknown };
const TWIN: Tree = {
  ...FAMILY_BASE,
  body: { ...FAMILY_BASE.body, length: 44 },
  family: { kind: 'twin', apart: 32, lever: 10 },
  duty: { axis: 'horizontal', load: 15, temperature: 25, grease: 'greased', moving: '10 %', feed: 5 },
};
const made = (changes: Tree = {}) => design(changed(TWIN, changes)) as NutDesign;
const rowOf = (id: string, changes: Tree = {}, base = TWIN) =>
  check(design(changed(base, changes))).checks.find((row) => row.id === id)!;

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

/** What a long screw at its largest has in common with the nut when it stands so high. */
function commonAt(nut: NutDesign, heights: readonly number[]): number[] {
  const [body] = nutBodies(asFinished(nut));
  const { screw } = nutMate(nut);
  const bar = { kind: 'thread' as const, thread: { ...screw, from: -4, to: nut.finished.length + 4 } };
  const poses = heights.map((z) => ({ by: [0, 0, z] as const, turn: 0 }));
  return kernel.commonVolumes(body!.recipe.shape, bar, poses);
}

describe('room for two threads, by hand', () => {
  const allowed = (apart: number, length = 44) => {
    try {
      made({ body: { length }, family: { apart } });
      return '';
    } catch (error) {
      return (error as InputError).faults.map(({ allowed: words }) => words).join();
    }
  };

  it('leaves each thread two turns of 2 mm: 44 − 4', () => {
    expect(allowed(40)).toBe('');
    expect(allowed(40.1)).toMatch(/^must be at most 40 mm in a body of 44 mm, to leave each thread 2 turns$/);
  });

  it('leaves a millimetre of wide bore between both cones of (8.8 − 6.3)/2 + 0.5 mm: (44 + 3.5 + 1)/2', () => {
    expect(allowed(24.25)).toBe('');
    expect(allowed(24.2)).toMatch(/^must be at least 24\.25 mm in a body of 44 mm, or one long nut does the same$/);
  });

  it('has its thinnest wall beside the wide bore: 16 − 4.4 − 0.3 mm', () => {
    expect(rowOf('wall').value).toBeCloseTo(11.3, 9);
    expect(rowOf('wall', { family: undefined }).value).toBeCloseTo(11.6, 9);
  });
});

describe('a sheet that says part: twin-nut', () => {
  const { kind: _, ...family } = TWIN.family as Tree;
  const named: Tree = { ...TWIN, part: 'twin-nut', family };

  it('is judged and drawn as the nut that has two threads', async () => {
    const [own, long] = await Promise.all(
      [named, TWIN].map((sheet) => makePart(sheet, { kernel, formats: ['drawing'] })),
    );
    expect(own!.report.part).toBe('twin-nut');
    expect({ ...own!.report, part: 'nut' }).toEqual(long!.report);
    expect(own!.files.map(({ name }) => name)).toEqual(long!.files.map(({ name }) => name));
  });

  it.each([
    [{ family: { apart: undefined } }, 'family.apart'],
    [{ family: { kind: 'split' } }, 'family.kind'],
    [{ family: { apart: 41 } }, 'family.apart'],
    [{ catch_nut: { across_flats: 17, height: 8 } }, 'catch_nut'],
  ] as const)('is refused %j at its field', (changes, path) => {
    expect(() => design(changed(named, changes))).toThrow(
      expect.objectContaining({ faults: [expect.objectContaining({ path })] }),
    );
  });
});

describe('a twin nut', () => {
  it.each([
    ['one helix', { family: { apart: 32 } }],
    ['threads at no whole number of pitches', { family: { apart: 31.37 } }],
    ['four starts', { screw: 'Tr10x8(P2)', family: { apart: 30.3 } }],
    ['a left hand', { screw: 'Tr10x2-LH', family: { apart: 31 } }],
    ['one thread set off', { fit: 'loose', family: { shift: 0.1 } }],
    [
      'a square body with holes through it',
      {
        body: { shape: 'square', diameter: undefined, across_flats: 40 },
        flange: undefined,
        holes: {
          count: undefined,
          circle: undefined,
          at: [
            [14, 8],
            [-14, 8],
          ],
        },
      },
    ],
  ] as const)('with %s comes out closed, sized right, and on its screw', async (_, changes) => {
    const { report } = await makePart(changed(TWIN, changes), { kernel });
    const solid = report.checks.filter(({ id }) => id.startsWith('solid-'));
    expect(solid.map(({ id }) => id)).toContain('solid-assembly');
    expect(solid.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
    expect(report.bodies.map(({ closed }) => closed)).toEqual([true]);
    expect(report.print!.support).toBe('none');
  });

  it('stops the screw with both threads together, and not before their play is used', () => {
    const nut = made();
    const half = nutMate(nut).play / 2;
    const [middle, free, past] = commonAt(nut, [0, 0.9 * half, half + 0.08]);
    expect(middle).toBeLessThan(NO_COMMON_VOLUME);
    expect(free).toBeLessThan(NO_COMMON_VOLUME);
    expect(past).toBeGreaterThan(0.1);
  });

  it('gives a thread that is set off as much less play, on one side', () => {
    const nut = made({ family: { shift: 0.1 } });
    const half = nutMate(nut).play / 2;
    const [down, up, past] = commonAt(nut, [-0.9 * half + 0.1, 0.9 * half, 0.05 - half]);
    expect(down).toBeLessThan(NO_COMMON_VOLUME);
    expect(up).toBeLessThan(NO_COMMON_VOLUME);
    // where a nut on one helix would still let the screw go, the upper thread already stops it
    expect(past).toBeGreaterThan(0.01);
    expect(rowOf('thread-backlash').value! - rowOf('thread-backlash', { family: { shift: 0.1 } }).value!).toBeCloseTo(
      0.1,
      5,
    );
    expect(rowOf('thread-pitch-error', { family: { shift: 0.3 } }).verdict).toBe('fail');
  });

  it('has teeth as a nut of one of its threads has, and drifts over its whole length', () => {
    const alone = { ...TWIN, body: { ...FAMILY_BASE.body, length: 12 }, family: undefined };
    // a nut of 12 mm loses 0.5 + 0.825 mm to the chamfer at either end, a thread of the pair at its outer end alone
    const ratio = (12 - 1.325) / (12 - 2 * 1.325);
    expect(ratio * rowOf('thread-pressure').value!).toBeCloseTo(rowOf('thread-pressure', {}, alone).value!, 5);
    const long = { ...TWIN, family: undefined };
    // without a feed neither rubs, by two threads or by one
    const still = { duty: { feed: undefined } };
    const drifted = rowOf('thread-pitch-error', still);
    expect(drifted.value).toBeCloseTo(rowOf('thread-pitch-error', still, long).value!, 9);
  });

  it('locks where the load acts too far beside the screw', () => {
    // a pair of side forces F·e/s, each with friction µ on its side: 2·µ·F·e/s = F at e = s/(2·µ)
    expect(rowOf('twin-binding').value).toBeCloseTo(10 / (32 / (2 * 0.2)), 6);
    expect(rowOf('twin-binding', { duty: { grease: 'dry' } }).value).toBeCloseTo(10 / 32, 6);
    // at 1.1, which dry prints have reached, from 32/2.2 = 14.5 mm on: 10 of them are more than half
    const dry = rowOf('twin-binding', { duty: { grease: 'dry' } });
    expect(dry).toMatchObject({ word: 'perhaps', most: expect.closeTo(22 / 32, 6) });
    expect(dry.message).toContain('a dry print may reach 1.1, then from 15 mm on');
    expect(rowOf('twin-binding').message).not.toContain('1.1');
    expect(rowOf('twin-binding', { family: { lever: 81 } }).verdict).toBe('fail');
  });

  it('presses its threads sideways by the moment over their distance', () => {
    const nut = made();
    // 15 N · 10 mm / 32 mm on 0.37 of 12 mm of crests
    const stress = (15 * 10) / 32 / (0.37 * 12 * nut.finished.thread.minor);
    expect(rowOf('twin-pressure').message).toContain(`${stress.toFixed(2)} MPa of pressure sideways`);
  });

  it.each([
    [{ family: { apart: 41 } }, 'family.apart'],
    [{ family: { apart: 20 } }, 'family.apart'],
    [{ family: { apart: undefined } }, 'family.apart'],
    [{ family: { screw: 'M3' } }, 'family.screw'],
    [{ family: { kind: 'clamped' } }, 'family.apart'],
    [{ catch_nut: { across_flats: 17, height: 8 } }, 'catch_nut'],
  ] as const)('refuses %j at its field', (changes, path) => {
    expect.assertions(1);
    try {
      made(changes);
    } catch (error) {
      expect(error instanceof InputError ? error.faults.map((fault) => fault.path) : error).toContain(path);
    }
  });
});
