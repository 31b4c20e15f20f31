import { beforeAll, describe, expect, it } from 'vitest';
import { clampForce, clampLeft } from '../../../src/parts/common/bolting.js';
import { holeCut } from '../../../src/parts/common/cut.js';
import { pocketOf } from '../../../src/parts/common/joints.js';
import { steppedRoof } from '../../../src/parts/common/roof.js';
import { design } from '../../../src/pipeline/design.js';
import { makePart } from '../../../src/pipeline/make.js';
import { resolveMaterial } from '../../../src/presets/resolve-material.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { circleOutline, polygonArea, rectangleOutline } from '../../../src/solid/outline.js';
import { sharedKernel } from '../../support/shared-kernel.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const POCKET = { kind: 'round', diameter: 9.5, depth: 4 } as const;
const hole = (roof?: { kind: 'membrane' | 'steps'; layer: number }, side: 'low' | 'high' = 'low') => ({
  center: [3, -2] as const,
  from: 0,
  to: 8,
  bore: 4.5,
  pocket: { pocket: POCKET, side, depth: 4, ...(roof ? { roof } : {}) },
});
const cut = (...of: Parameters<typeof hole>) => holeCut(hole(...of), (size) => size, 0.02);
const slab = { kind: 'prism', outlines: [rectangleOutline({ size: [40, 40] })], from: 0, to: 8 } as const;
const taken = (one: ReturnType<typeof cut>) =>
  40 * 40 * 8 - kernel.volume({ kind: 'difference', of: [slab, one.shape] });

describe('a roof over a pocket', () => {
  it.each(['low', 'high'] as const)('takes what was worked out, the pocket opening %s', (side) => {
    for (const kind of ['membrane', 'steps'] as const) {
      const roofed = cut({ kind, layer: 0.2 }, side);
      expect(taken(roofed)).toBeCloseTo(roofed.volume, 2);
    }
  });

  it('is one layer of the hole where it is a membrane: 0.2 mm of π·4.5²/4', () => {
    const left = cut().volume - cut({ kind: 'membrane', layer: 0.2 }).volume;
    expect(left / (0.2 * Math.PI * 2.25 ** 2)).toBeGreaterThan(1);
    expect(left / (0.2 * Math.PI * 2.25 ** 2)).toBeLessThan(1.02);
  });

  it('leads in steps from a strip over a square to an octagon, each around the whole hole', () => {
    const [strip, square, octagon] = steppedRoof(circleOutline({ radius: 4.75, sides: 96 }), [0, 0], 2.25);
    // openings stand 0.05 mm off pocket and hole: a disc of 4.7 less two segments beyond 2.3, 2·(h·√(R² − h²) + R²·asin(h/R))
    const wanted = 2 * (2.3 * Math.sqrt(4.7 ** 2 - 2.3 ** 2) + 4.7 ** 2 * Math.asin(2.3 / 4.7));
    expect(polygonArea(strip!) / wanted).toBeCloseTo(1, 2);
    expect(polygonArea(square!)).toBeCloseTo(4.6 ** 2, 6);
    // a regular octagon of 4.6 across its sides: 2·(√2 − 1)·4.6²
    expect(polygonArea(octagon!)).toBeCloseTo(2 * (Math.SQRT2 - 1) * 4.6 ** 2, 6);
  });

  it('is left out where the floor is hardly thicker', () => {
    const thin = { ...hole({ kind: 'steps', layer: 0.2 }), to: 4.7 };
    expect(holeCut(thin, (size) => size, 0.02).volume).toBeCloseTo(
      holeCut({ ...hole(), to: 4.7 }, (size) => size, 0.02).volume,
      9,
    );
  });
});

const NUT = {
  part: 'nut',
  name: 'roofed',
  screw: 'Tr8x2',
  body: { diameter: 16, length: 20 },
  flange: { diameter: 48, thickness: 8 },
  holes: { count: 4, circle: 32, screw: 'M4', joint: 'counterbore', head: 'flange' },
  material: 'petg',
  printer: { compensation: 'file', chord_error: 0.05, bridging: 'membrane' },
};

describe('bridging', () => {
  it.each(['membrane', 'steps'])(
    'by %s leaves no ceiling over air, and puts a washer under each head',
    async (bridging) => {
      const { report } = await makePart({ ...NUT, printer: { ...NUT.printer, bridging } }, { kernel });
      const found = (id: string) => report.checks.find((one) => one.id === id);
      expect(report.verdict).not.toBe('fail');
      expect(found('measured-overhang')).toMatchObject({ verdict: 'pass', value: 0 });
      expect(found('print-support')).toMatchObject({ verdict: 'pass', value: 0 });
      expect(report.print?.support).toBe('none');
      expect(report.hardware).toContainEqual({ item: 'plain washer ISO 7089', size: 'M4', count: 4 });
      expect(report.cautions.join(' ')).toMatch(bridging === 'membrane' ? /drill it through/ : /roofed in steps/);
    },
  );

  it('makes no difference where the pockets open upwards, washers aside', () => {
    const sheet = (bridging: string) => ({
      ...NUT,
      holes: { ...NUT.holes, head: 'body' },
      printer: { ...NUT.printer, bridging },
    });
    expect(design(sheet('none')).dimensions).toEqual(design(sheet('membrane')).dimensions);
  });

  it('widens a counterbore for the washer: M4, 9 mm and 0.5 mm of room, 0.8 mm deeper', () => {
    const plain = pocketOf({ joint: 'counterbore', screw: 'M4', diameter: 4.5 })!;
    expect(pocketOf({ joint: 'counterbore', screw: 'M4', diameter: 4.5, roof: 'membrane' })).toEqual({
      kind: 'round',
      diameter: 9.5,
      depth: plain.depth + 0.8,
    });
  });

  it('lets the joint bed in more: 0.75 of the force is left for 0.9', () => {
    const material = resolveMaterial({ preset: 'petg' }, SHIPPED, new Assumptions());
    const joint = { joint: 'hexagon', screw: 'M4', diameter: 4.5 } as const;
    const [bare, bridged] = [clampForce(joint, 8, material)!, clampForce({ ...joint, roof: 'steps' }, 8, material)!];
    const left = (clamp: typeof bare) => clampLeft(clamp, material, 23);
    expect(left(bridged) / left(bare)).toBeCloseTo(0.75 / 0.9, 9);
  });

  it('is one of three words', () => {
    expect(() => design({ ...NUT, printer: { bridging: 'paper' } })).toThrow(
      /printer\.bridging.*membrane, steps, none/,
    );
  });
});
