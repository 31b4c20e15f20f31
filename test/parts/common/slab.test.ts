import { beforeAll, describe, expect, it } from 'vitest';
import { sectionOf } from '../../../src/mechanics/flange/section.js';
import type { AdapterDesign } from '../../../src/parts/adapter/dimensions.js';
import { slabOf } from '../../../src/parts/adapter/slab.js';
import { bendSlab } from '../../../src/parts/common/held-slab.js';
import { endsOn, materialAt } from '../../../src/parts/common/slab.js';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { flangeSlab } from '../../../src/parts/nut/flange-slab.js';
import { design } from '../../../src/pipeline/design.js';
import { model } from '../../../src/pipeline/model.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import type { Mesh } from '../../../src/solid/mesh.js';
import { circleOutline, rectangleOutline } from '../../../src/solid/outline.js';
import { sharedKernel } from '../../support/shared-kernel.js';
import { uprightCut } from '../../support/upright-cut.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const EVERYWHERE = [[-500, 500]] as const;
const plain = { material: 'petg', printer: { layer: 0.2, compensation: 'none' } } as const;
const nut = {
  body: 10.2,
  length: 15,
  flange: { diameter: 22, thickness: 3.5 },
  holes: { count: 4, circle: 16, diameter: 3.5, screw: 'M3' },
};
const far = { bore: 10.8, thickness: 8, holes: { count: 2, circle: 100, diameter: 4.5, screw: 'M4' } };

const PLATES = {
  'a band between two far screws': { nut, carriage: far, plate: { thickness: 7, relief: 0 } },
  'a round plate with a recess, counterbores and a cut-out': {
    nut: { ...nut, stands: 'away' },
    carriage: { ...far, holes: { count: 3, circle: 60, diameter: 4.5, screw: 'M4' }, joint: 'counterbore' },
    plate: {
      thickness: 9,
      relief: 0,
      outline: { shape: 'round', diameter: 80 },
      cutouts: [{ at: [20, 20], size: [8, 14], turn: 20 }],
    },
    register: { nut: 'recess', depth: 1.5 },
  },
  'a rectangle with flats, nut pockets and blind inserts': {
    nut: { ...nut, joint: 'hexagon' },
    carriage: { ...far, holes: { rectangle: [60, 24], diameter: 4.5, screw: 'M4' }, joint: 'insert' },
    plate: {
      thickness: 14,
      relief: 0,
      outline: { shape: 'rectangular', size: [90, 48] },
      flats: [{ angle: 30, distance: 30 }],
    },
  },
} as const;

const DIRECTIONS = [0, 17, 45, 90, 123, 200, 270].map(
  (angle) => [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)] as const,
);
const DISTANCES = [0.013, 4.117, 8.031, 11.017, 15.23, 21.41];

async function meshOf(made: Parameters<typeof model>[0]): Promise<Mesh> {
  return (await model(made, { kernel }))[0]!;
}

describe('sections against the solid', () => {
  it.each(Object.entries(PLATES))('%s bends with what is there', async (_, sheet) => {
    const made = design({ part: 'adapter', name: 'cut', ...plain, ...sheet }) as AdapterDesign;
    const slab = slabOf(made.layout.plate);
    const mesh = await meshOf(made);
    for (const along of DIRECTIONS) {
      for (const distance of DISTANCES) {
        const cut = uprightCut(mesh, along, distance);
        const section = sectionOf(materialAt(slab, { along, distance }, EVERYWHERE));
        if (cut.area < 1) continue;
        expect(section.area / cut.area - 1).toBeLessThan(0.01);
        expect(section.modulus / cut.modulus - 1).toBeLessThan(0.01);
        // pockets for nuts count as round ones over their corners
        expect(section.modulus / cut.modulus).toBeGreaterThan(0.93);
      }
    }
  });

  it('a relief on the bed costs the section less than one in a hundred', async () => {
    const sheet = { ...PLATES['a band between two far screws'], plate: { thickness: 7 } };
    const made = design({ part: 'adapter', name: 'cut', ...plain, ...sheet }) as AdapterDesign;
    const cut = uprightCut(await meshOf(made), [1, 0], 11.017);
    const line = { along: [1, 0], distance: 11.017 } as const;
    const { modulus } = sectionOf(materialAt(slabOf(made.layout.plate), line, EVERYWHERE));
    expect(Math.abs(modulus / cut.modulus - 1)).toBeLessThan(0.015);
  });

  it.each([
    {
      flange: { shape: 'rectangular', size: [46, 14.5], thickness: 3.6 },
      holes: { count: 2, circle: 32, screw: 'M4' },
    },
    {
      flange: { shape: 'two-ear', size: [48, 17], ear: 11, thickness: 4 },
      holes: { count: 2, circle: 34, screw: 'M4' },
    },
    {
      flange: { diameter: 40, flats: 20, thickness: 7 },
      holes: { count: 2, circle: 28, screw: 'M4', joint: 'counterbore', head: 'flange' },
    },
  ])('a flange %j bends with what is there', async ({ flange, holes }) => {
    const made = design({
      part: 'nut',
      name: 'cut',
      screw: 'Tr8x2',
      body: { diameter: 14, length: 15 },
      flange,
      holes,
      fillet: 0,
      relief: 0,
      ...plain,
    }) as NutDesign;
    const slab = flangeSlab(made)!;
    const mesh = await meshOf(made);
    for (const distance of [7.013, 9.5, 13.03, 16.21]) {
      const cut = uprightCut(mesh, [1, 0], distance);
      const section = sectionOf(materialAt(slab, { along: [1, 0], distance }, EVERYWHERE));
      expect(Math.abs(section.area / cut.area - 1)).toBeLessThan(0.01);
      expect(Math.abs(section.modulus / cut.modulus - 1)).toBeLessThan(0.01);
    }
  });
});

const round = (radius: number) => () => radius;
const screws = (places: readonly (readonly [number, number])[], head: number) =>
  places.map((at) => ({ at, head, hole: 0, share: 1 / places.length }));

describe('ends of a slab on a cut', () => {
  const slab = { outline: rectangleOutline({ size: [40, 20] }) };

  it('lie on its outline, a quarter turn from the way that is cut', () => {
    // x = 5: from y = −10 to 10; y = 4, where y runs to the left: from x = 20 to −20
    expect(endsOn(slab, { along: [1, 0], distance: 5 })).toEqual([-10, 10]);
    expect(endsOn(slab, { along: [0, 1], distance: 4 })).toEqual([-20, 20]);
    // 0.6·x + 0.8·y = 12 meets x = 20 at y = 0 and y = 10 at x = 6.67: −0.8·x + 0.6·y
    const [from, to] = endsOn(slab, { along: [0.6, 0.8], distance: 12 })!;
    expect(from).toBeCloseTo(-16, 9);
    expect(to).toBeCloseTo(6 - 0.8 * (4 / 0.6), 9);
  });

  it('are none where it lies beside the cut', () => {
    expect(endsOn(slab, { along: [1, 0], distance: 21 })).toBeUndefined();
  });
});

describe('held slabs', () => {
  it('take a narrow flange across the chord beside the body: 150 N on 46 × 14.5 × 3.6, 21.6 MPa', () => {
    // hand: 75·9·6/(14.5·3.6²)
    const bent = bendSlab({
      slab: { outline: rectangleOutline({ size: [46, 14.5] }), thickness: 3.6, openings: [] },
      supports: screws(
        [
          [16, 0],
          [-16, 0],
        ],
        7,
      ),
      reach: round(7),
      backed: 14,
    })!;
    expect(150 * bent.strip.stress).toBeCloseTo((75 * 9 * 6) / (14.5 * 3.6 ** 2), 6);
    expect(bent.strip).toMatchObject({ arm: 9, share: 0.5, distance: 7 });
  });

  it('take a strip of a round flange: 9.65 MPa, four screws at radius 16, body 22, 800 N, 6 thick', () => {
    const bent = bendSlab({
      slab: { outline: circleOutline({ radius: 22, sides: 400 }), thickness: 6, openings: [] },
      supports: screws(
        [
          [16, 0],
          [0, 16],
          [-16, 0],
          [0, -16],
        ],
        8,
      ),
      reach: round(11),
      backed: 22,
    })!;
    expect(800 * bent.strip.stress).toBeCloseTo(9.65, 2);
  });

  it('find a waist on the way, where the arm is shorter but little is left', () => {
    const slab = {
      outline: rectangleOutline({ size: [120, 20] }),
      thickness: 6,
      openings: [{ shape: { at: [30, 0], radius: 8 } as const, from: 0, to: 6 }],
    };
    const bent = bendSlab({
      slab,
      supports: screws(
        [
          [50, 0],
          [-50, 0],
        ],
        9,
      ),
      reach: round(11),
      backed: 22,
    })!;
    // hand: 4 mm left at 30: 10·6/(4·36) per newton, against 19.5·6/(20·36) at the flange; a little nearer it is a little more
    expect(bent.strip.stress / ((10 * 6) / (4 * 36))).toBeGreaterThan(0.999);
    expect(bent.strip.stress / ((10 * 6) / (4 * 36))).toBeLessThan(1.02);
  });

  it('bend in the middle too where nothing stiff backs them', () => {
    const slab = {
      outline: rectangleOutline({ size: [120, 20] }),
      thickness: 6,
      openings: [{ shape: { at: [0, 0], radius: 6 } as const, from: 0, to: 6 }],
    };
    const bent = bendSlab({
      slab,
      supports: screws(
        [
          [50, 0],
          [-50, 0],
        ],
        9,
      ),
      reach: round(4),
    })!;
    // hand: 0.5·50 N·mm of the support, less 0.5·(2·4/π) of half the ring that pulls, on 8 × 6 mm
    expect(bent.strip.stress).toBeCloseTo(((0.5 * 50 - 4 / Math.PI) * 6) / (8 * 36), 6);
  });

  it('bend without bound where nothing is left, and not at all under the flange', () => {
    const cut = { outline: rectangleOutline({ size: [4, 60] }).map(([x, y]) => [x + 25, y] as const) };
    const slab = {
      outline: rectangleOutline({ size: [120, 20] }),
      thickness: 6,
      openings: [{ shape: cut, from: 0, to: 6 }],
    };
    const far = {
      slab,
      supports: screws(
        [
          [50, 0],
          [-50, 0],
        ],
        9,
      ),
      backed: 22,
    };
    expect(bendSlab({ ...far, reach: round(11) })!.strip.stress).toBe(Infinity);
    expect(bendSlab({ ...far, reach: round(55) })).toBeUndefined();
  });

  it('sag as a cantilever with shear', () => {
    // by hand, E = 1 MPa, width 20 everywhere: 0.5·39³/(3·360) + 1.2·0.5·39·2.7/120
    const bent = bendSlab({
      slab: { outline: rectangleOutline({ size: [120, 20] }), thickness: 6, openings: [] },
      supports: screws(
        [
          [50, 0],
          [-50, 0],
        ],
        20,
      ),
      reach: round(11),
      backed: 100,
    })!;
    expect(bent.sag).toBeCloseTo((0.5 * 39 ** 3) / (3 * 360) + (1.2 * 0.5 * 39 * 2.7) / 120, 2);
  });
});
