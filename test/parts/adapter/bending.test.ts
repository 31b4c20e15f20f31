import { describe, expect, it } from 'vitest';
import { bendPlate } from '../../../src/parts/adapter/bending.js';
import type { AdapterDesign } from '../../../src/parts/adapter/dimensions.js';
import { design } from '../../../src/pipeline/design.js';
import { changed } from '../../support/nut-sheets.js';

/** A plate of 116 × 116 × 7 mm under a flange of 22 mm, its bore a little wider than the nut's body of 10.2 mm. */
const WIDE = {
  part: 'adapter',
  name: 'wide',
  nut: {
    body: 10.2,
    length: 15,
    flange: { diameter: 22, thickness: 3.5 },
    holes: { count: 4, circle: 16, start: 45, diameter: 3.5, screw: 'M3' },
  },
  carriage: { thickness: 8, holes: { count: 2, circle: 100, diameter: 4.5, screw: 'M4' } },
  plate: { thickness: 7, outline: { shape: 'rectangular', size: [116, 116] } },
  material: 'petg',
  printer: { compensation: 'file' },
  duty: { axis: 'vertical', load: 250, temperature: 25 },
};

const plate = (carriage: object) => design(changed(WIDE, { carriage })) as AdapterDesign;
const onto = (carriage: object) => bendPlate(plate(carriage), 'onto');

describe('a plate that is pressed on its carriage', () => {
  it('bends over the edge that a slot’s offset brings out from under the flange, and there alone', () => {
    // edges of a slot of 20 mm at 13 and −7 of which the one takes 7/20, 2 mm beyond the flange: 22 + 2·2 wide
    const stress = ((7 / 20) * 2 * 6) / (26 * 7 ** 2);
    for (const [along, slot, offset] of [
      [
        [0, 1],
        [70, 20],
        [0, 3],
      ],
      [
        [0, -1],
        [70, 20],
        [0, -3],
      ],
      [
        [1, 0],
        [20, 70],
        [3, 0],
      ],
      [
        [-1, 0],
        [20, 70],
        [-3, 0],
      ],
    ] as const) {
      const { held, strip } = onto({ slot, offset })!;
      expect(held).toBe('edge');
      expect(strip.along[0]).toBeCloseTo(along[0], 9);
      expect(strip.along[1]).toBeCloseTo(along[1], 9);
      expect(strip.stress).toBeCloseTo(stress, 6);
    }
  });

  it('bends alike over a square slot whichever of its sides is called x', () => {
    const told = (
      offset: readonly number[],
      size: readonly number[],
      at: readonly (readonly number[])[],
      slot: readonly number[] = [40, 40],
    ) =>
      bendPlate(
        design(
          changed(WIDE, {
            carriage: { slot, offset, holes: { count: undefined, circle: undefined, at } },
            plate: { outline: { size } },
          }),
        ) as AdapterDesign,
        'onto',
      )!;
    const corners = (x: number, y: number) => [
      [x, y],
      [-x, y],
      [-x, -y],
      [x, -y],
    ];
    // one plate, told lying and turned by 90°; one of 38 mm does not reach the sides along which it lies, 20 mm out
    for (const [off, wide, near] of [
      [0, 38, 11],
      [6, 116, 50],
    ] as const) {
      const one = told([off, 0], [116, wide], corners(50, near));
      const turned = told([0, off], [wide, 116], corners(near, 50));
      expect(one.held).toBe('edge');
      expect(turned.held).toBe('edge');
      expect(one.strip.stress).toBeCloseTo(turned.strip.stress, 9);
      expect(one.sag).toBeCloseTo(turned.sag, 9);
      // a hair off the square only one pair is the nearer; the square takes the worse of what lies under the plate
      const alone = [
        [40, 40 + 1e-6],
        [40 + 1e-6, 40],
      ].map((slot) => told([off, 0], [116, wide], corners(50, near), slot));
      const held = alone.filter((other) => other.held === 'edge');
      expect(one.sag).toBeCloseTo(Math.max(...held.map(({ sag }) => sag)), 4);
      expect(one.strip.stress).toBeCloseTo(Math.max(...held.map(({ strip }) => strip.stress)), 6);
    }
  });

  it('does not bend over a slot that is narrower than the nut, whose edges would lie in the plate’s bore', () => {
    expect(onto({ slot: [70, 8] })).toBeUndefined();
    expect(onto({ slot: [8, 70] })).toBeUndefined();
  });

  it('hangs on its screws where only one edge lies under it, the other in its bore or beside it', () => {
    // edges at 12 and 4: the bore reaches to 5.1
    expect(onto({ slot: [70, 8], offset: [0, 8] })!.held).toBe('screws');
    // edges at 60 and −10: the plate ends at 58
    expect(onto({ slot: [100, 70], offset: [0, 25] })!.held).toBe('screws');
  });
});

it('a plate that hangs on one side alone spans twice its arm', () => {
  // both screws 50 mm out; those of the nut, on which it hangs, 8·cos 45° mm
  const at = [
    [50, 12],
    [50, -12],
  ];
  const { strip, span } = bendPlate(plate({ holes: { count: undefined, circle: undefined, at } }), 'away')!;
  expect(strip.arm).toBeCloseTo(50 - 8 / Math.SQRT2, 2);
  expect(span).toBeCloseTo(100 - 16 / Math.SQRT2, 2);
});

it('a plate that hangs on both sides spans from screw to screw: 100 mm, more than twice its arm', () => {
  expect(bendPlate(plate({}), 'away')!.span).toBeCloseTo(100, 6);
});

it('the flange of a floating nut backs nothing: a wider one leaves its plate as it bends', () => {
  const under = (kind: string, diameter: number) => {
    const nut = { ...WIDE.nut, flange: { diameter, thickness: 3.5 } };
    return bendPlate(design(changed(WIDE, { kind, nut })) as AdapterDesign, 'onto')!;
  };
  expect(under('floating', 26)).toEqual(under('floating', 22));
  // that of a joined one does
  expect(under('joined', 26).strip.arm).toBeCloseTo(under('joined', 22).strip.arm - 2, 6);
});

describe('a round plate of 72 × 5 mm', () => {
  const round = (count: number, more: object = {}) =>
    bendPlate(
      design(
        changed(WIDE, {
          carriage: { holes: { count, circle: 60 } },
          plate: { thickness: 5, outline: { shape: 'round', diameter: 72, size: undefined } },
          ...more,
        }),
      ) as AdapterDesign,
      'away',
    )!;
  const BLANK = { kind: 'blank', nut: undefined };
  const blank = (count: number) =>
    round(count, {
      ...BLANK,
      plate: { bore: 11, thickness: 5, outline: { shape: 'round', diameter: 72, size: undefined } },
    });

  it('turns inside out around its bore where three screws or more hold it all round, and none do on one line', () => {
    // a loose ring from 11 to 72 mm, pulled 24.5 mm inside of its screws: 6·24.5/2π / (5²·5.5·ln(36/5.5))
    const stress = (6 * 24.5) / (2 * Math.PI) / (25 * 5.5 * Math.log(36 / 5.5));
    for (const count of [3, 4]) {
      expect(blank(count).held).toBe('ring');
      expect(blank(count).strip.stress).toBeCloseTo(stress, 4);
    }
    expect(blank(2).held).toBe('screws');
  });

  it('is backed by the flange of a nut that is screwed tight', () => {
    // eight screws share the load so far that a ring would bend more
    for (const count of [4, 8]) expect(round(count).held).toBe('screws');
  });
});

describe('a recess that the load may come in through', () => {
  // three screws 8 mm from the axis, the first on the x axis, and a recess of 26.2 mm, 5 mm deep, for the carriage's ring
  const sunk = (offset: readonly number[], start: number, holes: object = {}) =>
    bendPlate(
      design(
        changed(WIDE, {
          nut: { holes: { count: 3, start, ...holes } },
          carriage: { spigot: 26, offset, holes: { count: 2, circle: 100 } },
          register: { carriage: 'recess', depth: 5 },
          clocking: 0,
        }),
      ) as AdapterDesign,
      'away',
    )!.strip.floor;

  it('counts where all of the screws that draw the plate stand in it', () => {
    // its middle 6 mm out: the other two are hypot(4 + 6, 6.93) = 12.2 mm from there, within 13.1; 8 mm out 13.9
    expect(sunk([6, 0], 0)).toBeDefined();
    expect(sunk([0, 6], 90)).toBeDefined();
    expect(sunk([8, 0], 0)).toBeUndefined();
    expect(sunk([0, 8], 90)).toBeUndefined();
  });

  it('is the step of a blank plate, whatever screws it has', () => {
    const stepped = {
      bore: 11,
      thickness: 5,
      outline: { shape: 'round', diameter: 72, size: undefined },
      step: { diameter: 30, depth: 2 },
    };
    const made = design(
      changed(WIDE, { kind: 'blank', nut: undefined, plate: stepped, carriage: { holes: { circle: 60 } } }),
    );
    expect(bendPlate(made as AdapterDesign, 'away')!.strip.floor).toMatchObject({ thickness: 3 });
  });

  it('is the one that the flange lies in, where it presses on its floor', () => {
    const made = design(changed(WIDE, { register: { nut: 'recess', depth: 3 } })) as AdapterDesign;
    expect(bendPlate(made, 'onto')!.strip.floor).toMatchObject({ thickness: 4 });
  });
});

it('a nut draws its plate as wide as its outermost screws reach', () => {
  const area = (at: readonly (readonly number[])[]) =>
    bendPlate(
      design(
        changed(WIDE, { nut: { holes: { count: undefined, circle: undefined, start: undefined, at } }, clocking: 0 }),
      ) as AdapterDesign,
      'away',
    )!.strip.section.area;
  const [right, left] = [
    [5, 0],
    [-5, 0],
  ];
  expect(area([right, left, [0, 9]])).toBeGreaterThan(area([right, left]) + 20);
});
