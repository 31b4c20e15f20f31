import { beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { sharedKernel } from '../../support/shared-kernel.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const NUT = {
  part: 'nut',
  name: 'marked',
  screw: 'Tr8x2',
  body: { diameter: 14, length: 15 },
  flange: { diameter: 80, thickness: 5 },
  holes: { count: 2, circle: 26, start: 0, screw: 'M3', diameter: 4 },
  material: 'petg',
  printer: { compensation: 'none', chord_error: 0.05 },
};
const FORTY = 'axis z left 2031 spare nut of rack 7 no 9';

async function volumeOf(mark: unknown) {
  const { report } = await makePart({ ...NUT, ...(mark ? { mark } : {}) }, { kernel });
  expect(report.verdict).not.toBe('fail');
  return report.bodies[0]!;
}

describe('a mark', () => {
  it('of up to 40 characters is raised, on several lines where it is long', async () => {
    expect(FORTY.replace(/ 9$/, '')).toHaveLength(39);
    const [plain, raised] = [await volumeOf(undefined), await volumeOf(FORTY.slice(0, 40))];
    expect(raised.volume).toBeGreaterThan(plain.volume + 10);
    expect(raised.closed).toBe(true);
  });

  it('is cut as deep as it says, and takes what it takes', async () => {
    const [plain, raised, engraved] = [
      await volumeOf(undefined),
      await volumeOf('I'),
      await volumeOf({ text: 'I', style: 'engraved' }),
    ];
    // the same single stroke: 0.6 mm high or 0.4 mm deep
    expect((raised.volume - plain.volume) / (plain.volume - engraved.volume)).toBeCloseTo(0.6 / 0.4, 2);
  });

  it('stands on members of the family too', async () => {
    const { report } = await makePart(
      {
        ...NUT,
        body: { diameter: 34, length: 24 },
        holes: { ...NUT.holes, circle: 48 },
        family: { kind: 'clamped' },
        mark: 'K 2',
      },
      { kernel },
    );
    expect(report.verdict).not.toBe('fail');
  });

  it.each([
    [
      'on a small flange',
      { flange: { diameter: 24, thickness: 5 }, holes: undefined, mark: 'A LONG NAME' },
      /needs .* × .* mm .*the flange leaves 3\.\d mm beside the body/,
    ],
    ['without a flange', { flange: undefined, holes: undefined, mark: 'A' }, /this nut has none/],
    [
      'where the carriage lies on it',
      { carriage: { bore: 14.4 }, mark: 'A' },
      /between flange and carriage; use .*engraved/,
    ],
    ['on a flange that is as high as the body', { body: { diameter: 14, length: 5.2 }, mark: 'A' }, /over the body/],
    ['of 41 characters', { mark: 'x'.repeat(41) }, /at most 40 characters/],
    ['of spaces', { mark: '  ' }, /more than spaces/],
    [
      'on a split nut',
      {
        body: { diameter: 34, length: 24 },
        holes: { ...NUT.holes, circle: 48, start: 90 },
        family: { kind: 'split' },
        mark: 'A',
      },
      /split nut/,
    ],
  ])('is refused %s', (_, changes, told) => {
    expect(() => design({ ...NUT, ...changes })).toThrow(told);
  });

  it('may be engraved where the carriage lies on it', () => {
    const sheet = { ...NUT, carriage: { bore: 14.4 }, mark: { text: 'A', style: 'engraved' } };
    expect(check(design(sheet)).checks.length).toBeGreaterThan(5);
  });
});
