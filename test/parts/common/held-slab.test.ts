import { describe, expect, it } from 'vitest';
import { bendSlab, type HeldSlab, type Support } from '../../../src/parts/common/held-slab.js';
import type { Opening } from '../../../src/parts/common/slab.js';
import { circleOutline, type Outline, rectangleOutline } from '../../../src/solid/outline.js';

type Point = readonly [number, number];

const at = (angle: number, radius: number): Point => [
  radius * Math.cos((angle * Math.PI) / 180),
  radius * Math.sin((angle * Math.PI) / 180),
];
const support = (place: Point, more: Partial<Support> = {}): Support => ({
  at: place,
  head: 9,
  hole: 0,
  share: 0.5,
  ...more,
});
const through = (outline: Outline): Opening => ({ shape: { outline }, from: 0, to: 6 });

/** A band of 120 × 20 × 6 between two supports 50 mm out, loaded 11 mm from the middle by something that backs it. */
function band(openings: readonly Opening[], more: Partial<HeldSlab> = {}) {
  return bendSlab({
    slab: { outline: rectangleOutline({ size: [120, 20] }), thickness: 6, openings },
    supports: [support([50, 0]), support([-50, 0])],
    reach: () => 11,
    backed: 100,
    ...more,
  })!;
}

/** Bending of half a newton on what is left of the band, 6 mm thick. */
const stress = (arm: number, left: number, force = 0.5) => (force * arm * 6) / (left * 36);

describe('the weakest cut of a band', () => {
  const window = (...corners: Point[]) => [through(corners), through(corners.map(([x, y]) => [-x, -y] as const))];

  it('lies at the near end, the middle or the far end of a window', () => {
    const near = window([20, -8], [40, 0], [20, 8]);
    const middle = window([20, 0], [30, -8], [40, 0], [30, 8]);
    const far = window([40, -8], [40, 8], [20, 0]);
    expect(band(near).strip.stress).toBeCloseTo(stress(30, 4), 4);
    expect(band(middle).strip.stress).toBeCloseTo(stress(20, 4), 4);
    expect(band(far).strip.stress).toBeCloseTo(stress(10, 4), 4);
  });

  it('counts twice where a sharp corner in plan lies in its strip, on either side of it, and once where it lies elsewhere', () => {
    const slab = (corners: readonly Point[], width = 20) => ({
      outline: rectangleOutline({ size: [120, width] }),
      thickness: 6,
      openings: [],
      corners,
    });
    // no window: 20 mm are left all along; by a corner at 20 mm half a newton turns them over 30 mm, twice; at the load, 11 mm, over 39 mm, once
    const met = band([], { slab: slab([[20, 8]]) }).strip;
    expect(met.corner).toBe(2);
    expect(met.distance).toBeCloseTo(20, 4);
    expect(met.stress).toBeCloseTo(2 * stress(30, 20), 4);
    expect(band([], { slab: slab([[-20, -8]]) }).strip.stress).toBeCloseTo(2 * stress(30, 20), 4);
    // its strip is 9 + 2·30 mm wide there: 34.5 mm to either side
    const wide = (y: number) => band([], { slab: slab([[20, y]], 100) }).strip;
    expect([wide(34).corner, wide(-34).corner, wide(35).corner, wide(-35).corner]).toEqual([2, 2, 1, 1]);
    // right under the load, or under the head, nothing is cut
    expect(band([], { slab: slab([[5, 0]]) }).strip).toMatchObject({ corner: 1, distance: 11 });
    expect(band([], { slab: slab([[49, 0]]) }).strip).toMatchObject({ corner: 1, distance: 11 });
  });

  it('counts a sharp corner on the narrow side of it, nearer or further out', () => {
    const stepped = (inner: number, outer: number) => {
      const half = [
        [-60, outer],
        [-20, outer],
        [-20, inner],
        [20, inner],
        [20, outer],
        [60, outer],
      ] as const;
      const outline: Point[] = [...half, ...half.map(([x, y]) => [-x, -y] as const)].reverse();
      return band([], { slab: { outline, thickness: 6, openings: [], corners: [[20, 5]] } }).strip;
    };
    // 10 mm are left on the narrow side of 20 mm, where half a newton turns them over 30 mm, twice
    for (const one of [stepped(10, 5), stepped(5, 10)]) {
      expect(one.corner).toBe(2);
      expect(one.stress).toBeCloseTo(2 * stress(30, 10), 4);
    }
  });

  it('is turned back by what a ring pulls beyond it', () => {
    // around 11 mm: beyond 5 mm (√(11² − 5²) − 5·acos(5/11))/π = 1.370 N·mm of one newton come in, beyond its middle 11/π
    const ring = (corners: readonly Point[]) =>
      bendSlab({
        slab: { outline: rectangleOutline({ size: [120, 20] }), thickness: 6, openings: [], corners },
        supports: [support([50, 0]), support([-50, 0])],
        reach: () => 11,
      })!.strip;
    expect(ring([]).stress).toBeCloseTo(((0.5 * 50 - 11 / Math.PI) * 6) / (20 * 36), 6);
    expect(ring([[5, 8]]).stress).toBeCloseTo((2 * (0.5 * 45 - 1.37) * 6) / (20 * 36), 4);
  });

  it('is the floor of a pocket at its rim, with its notch, where the load comes in within it', () => {
    const pocket = { at: [0, 0] as const, radius: 12, from: 4, to: 6, notch: 2 };
    const open = { shape: { at: [0, 0] as const, radius: 12 }, from: 4, to: 6 };
    const { strip } = band([open], { pockets: [pocket] });
    // half a newton over 38 mm on 20 × 4 mm, twice
    expect(strip.stress).toBeCloseTo((2 * 0.5 * 38 * 6) / (20 * 16), 6);
    expect(strip.floor).toEqual({ thickness: 4, notch: 2 });
    expect(strip).toMatchObject({ distance: 12, arm: 38 });
    // one whose middle stands aside
    const aside = band([], { pockets: [{ ...pocket, at: [2, 0], from: 0, to: 3, notch: 1.5 }] }).strip;
    expect(aside.stress).toBeCloseTo((1.5 * 0.5 * 36 * 6) / (20 * 9), 6);
    expect(aside.floor).toEqual({ thickness: 3, notch: 1.5 });
  });

  it('is as wide at the rim of a pocket as its load has spread there, of what backs it', () => {
    const pocket = { at: [0, 0] as const, radius: 20, from: 3, to: 6, notch: 9 };
    const area = (spread: number | undefined, backed: number | undefined) =>
      bendSlab({
        slab: { outline: rectangleOutline({ size: [120, 120] }), thickness: 6, openings: [] },
        supports: [support([50, 0]), support([-50, 0])],
        reach: () => 5,
        ...(backed === undefined ? {} : { backed }),
        pockets: [{ ...pocket, ...(spread === undefined ? {} : { spread }) }],
      })!.strip.section.area;
    expect(area(30, 10)).toBeGreaterThan(area(undefined, 10) + 1);
    expect(area(10, 10)).toBeCloseTo(area(undefined, 10), 9);
    expect(area(30, undefined)).toBeCloseTo(area(undefined, undefined), 9);
  });

  it('is not the floor of a pocket that what pulls covers, nor one whose rim the heads hold', () => {
    const none = band([]).strip;
    const gone = { from: 1, to: 6, notch: 2, at: [0, 0] as const };
    expect(band([], { pockets: [{ ...gone, radius: 10.9 }] }).strip).toEqual(none);
    expect(band([], { pockets: [{ ...gone, radius: 45.6 }] }).strip).toEqual(none);
    for (const radius of [11, 45.5]) expect(band([], { pockets: [{ ...gone, radius }] }).strip.floor).toBeDefined();
  });

  it('and so it does across', () => {
    const turned = [
      through(
        [
          [8, 20],
          [0, 40],
          [-8, 20],
        ].map(([x, y]) => [x!, y!] as const),
      ),
    ];
    const bent = bendSlab({
      slab: { outline: rectangleOutline({ size: [20, 120] }), thickness: 6, openings: turned },
      supports: [support([0, 50]), support([0, -50])],
      reach: () => 11,
      backed: 100,
    })!;
    expect(bent.strip.stress).toBeCloseTo(stress(30, 4), 4);
    expect(bent.strip.along[1]).toBeCloseTo(1, 9);
  });

  it('is found within 2 % beside a round hole, wherever that lies on the way to the head', () => {
    for (const middle of [35, 40, 44]) {
      const hole = { shape: { at: [middle, 0], radius: 8 }, from: 0, to: 6 } as const;
      // brute force over every cut from the load to the head, by hand
      const worst = Math.max(
        ...Array.from({ length: 3451 }, (_, i) => 11 + i / 100).map((cut) => {
          const off = Math.abs(cut - middle);
          const gone = off < 8 ? 2 * Math.sqrt(64 - off * off) : 0;
          // the head of 9 spreads by 45° to no more than the band's 20
          return stress(50 - cut, Math.min(20, 9 + 2 * (50 - cut)) - gone);
        }),
      );
      // of 0.5 N on a band of 20 × 6 through the middle of a hole of 16 mm, 10 mm from the screws 0.5·10·6/(4·36); beside it more
      if (middle === 40) expect([stress(10, 4), worst]).toEqual([0.208, 0.224].map((one) => expect.closeTo(one, 3)));
      const found = band([hole]).strip.stress;
      expect(found).toBeLessThanOrEqual(worst + 1e-9);
      expect(found).toBeGreaterThan(0.98 * worst);
    }
  });

  it('does not lie under the head, nor in the hole of its screw', () => {
    const beside = stress(39, 20);
    // the head covers from 45.5
    expect(band([{ shape: { at: [52.5, 0], radius: 6.9 }, from: 0, to: 6 }]).strip.stress).toBeCloseTo(beside, 9);
    // a hole of 20 mm, wider than the head: what is left of its ring shears
    const hole = { shape: { at: [50, 0], radius: 9.9 }, from: 0, to: 6 } as const;
    const supports = [support([50, 0], { hole: 20 }), support([-50, 0])];
    expect(band([hole], { supports }).strip.stress).toBeCloseTo(beside, 9);
    expect(band([hole], { supports }).sag).toBeLessThan(Infinity);
    // where holes take all of it, all of it shears
    expect(band([], { supports: [support([50, 0], { hole: 100 })] })).toBeUndefined();
  });

  it('may lie right before the head, as long as the hole of its screw does not reach there', () => {
    const narrow: Outline = [
      [-60, -10],
      [48.5, -10],
      [48.5, -0.005],
      [60, -0.005],
      [60, 0.005],
      [48.5, 0.005],
      [48.5, 10],
      [-60, 10],
    ];
    const held = (hole: number) =>
      band([], {
        slab: { outline: narrow, thickness: 6, openings: [] },
        supports: [support([50, 0], { head: 2, hole })],
      }).strip.stress;
    // 0.01 mm is left 1 mm before the screw
    expect(held(0)).toBeCloseTo(stress(1, 0.01), 4);
    expect(held(1.9)).toBeCloseTo(stress(1, 0.01), 4);
    expect(held(2.1)).toBeCloseTo(stress(39, 20), 4);
  });
});

describe('directions in which a slab bends', () => {
  const round = circleOutline({ radius: 40, sides: 360 });
  /** all through, square to a direction and 8 to 9 mm out */
  const slot = (angle: number) => {
    const [[ux, uy], [sx, sy]] = [at(angle, 1), at(angle + 90, 1)];
    const corner = (out: number, side: number) => [out * ux + side * sx, out * uy + side * sy] as const;
    return through([corner(8, -60), corner(9, -60), corner(9, 60), corner(8, 60)]);
  };
  const bent = (angles: readonly number[], slotAt: number) =>
    bendSlab({
      slab: { outline: round, thickness: 6, openings: [slot(slotAt)] },
      supports: angles.map((angle) => support(at(angle, 30), { share: 1 / angles.length })),
      reach: () => 5,
      backed: 10,
    })!.strip;

  it.each([20, 140, 260])('are those of its screws: %d°', (angle) => {
    expect(bent([260, 20, 140], angle)).toMatchObject({ stress: Infinity });
  });

  it.each([80, 200, 320])('those half way between: %d°', (angle) => {
    const { stress: most, along } = bent([140, 260, 20], angle);
    expect(most).toBe(Infinity);
    expect(along[0]).toBeCloseTo(at(angle, 1)[0], 6);
    expect(along[1]).toBeCloseTo(at(angle, 1)[1], 6);
  });

  it.each([0, 90, 180, 270])('and both axes: %d°', (angle) => {
    expect(bent([20, 140, 260], angle).stress).toBe(Infinity);
  });

  it('in whatever order its screws are told', () => {
    // weak half way between the second and the fourth
    for (const order of [
      [20, 80, 140, 260],
      [20, 140, 80, 260],
      [80, 260, 140, 20],
      [140, 20, 260, 80],
    ])
      expect(bent(order, 320).stress).toBe(Infinity);
  });

  it('and no others', () => {
    expect(bent([20, 140, 260], 50).stress).toBeLessThan(Infinity);
  });
});

describe('screws that bend a strip together', () => {
  /** On a slab of 120 × 140, loaded 40 mm out, screws 50 mm out: an arm of 10 spreads each head by 10 to both sides. */
  const beside = (supports: readonly Support[]) =>
    bendSlab({
      slab: { outline: rectangleOutline({ size: [120, 140] }), thickness: 6, openings: [] },
      supports,
      reach: ([x]) => (x > 0.9999 ? 40 : 1000),
      backed: 1000,
    })!.strip;

  it('are those whose spreads meet: heads of 6 at ± 8 bend 42 mm', () => {
    const two = [support([50, 8], { head: 6 }), support([50, -8], { head: 6 })];
    expect(beside(two)).toMatchObject({ share: 1, arm: 10 });
    expect(beside(two).stress).toBeCloseTo(stress(10, 42, 1), 9);
  });

  it('else each bends its own: heads of 6 at ± 30, the one that carries 0.7', () => {
    for (const [left, right] of [
      [0.7, 0.3],
      [0.3, 0.7],
    ]) {
      const strip = beside([
        support([50, 30], { head: 6, share: left! }),
        support([50, -30], { head: 6, share: right! }),
      ]);
      expect(strip.share).toBe(0.7);
      expect(strip.stress).toBeCloseTo(stress(10, 26, 0.7), 9);
    }
  });

  it('whichever is told first: three apart, of which the middle one carries most', () => {
    const three = [[25, 0.2] as const, [0, 0.6] as const, [-25, 0.2] as const];
    for (const order of [
      [0, 1, 2],
      [1, 2, 0],
      [0, 2, 1],
      [2, 0, 1],
    ]) {
      const strip = beside(order.map((i) => support([50, three[i]![0]], { head: 4, share: three[i]![1] })));
      expect(strip.share).toBe(0.6);
      expect(strip.stress).toBeCloseTo(stress(10, 24, 0.6), 9);
    }
  });

  it('a wide one joins those that do not meet each other: −30 to 30, −8 to 18 and 22 to 48', () => {
    const third = (y: number, head: number) => support([50, y], { head, share: 1 / 3 });
    const strip = beside([third(35, 6), third(5, 6), third(0, 40)]);
    expect(strip.share).toBeCloseTo(1, 9);
    expect(strip.stress).toBeCloseTo(stress(10, 78, 1), 9);
  });

  it('leave out a screw that carries nothing, in the width that each may take too', () => {
    // four screws at radius 16 around a body of 22: 17.28 mm each, 1,000 N·mm on 800 N, as worked in common practice
    const four = [0, 90, 180, 270].map((angle) => support(at(angle, 16), { head: 8, share: 0.25 }));
    const flange = (supports: readonly Support[]) =>
      bendSlab({
        slab: { outline: circleOutline({ radius: 22, sides: 400 }), thickness: 6, openings: [] },
        supports,
        reach: () => 11,
        backed: 22,
      })!;
    const idle = support(at(30, 19), { head: 8, share: 0 });
    expect(800 * flange(four).strip.stress).toBeCloseTo(9.65, 2);
    expect(flange([...four, idle])).toEqual(flange(four));
  });
});

describe('a screw whose foot on an oblique cut lies beside the slab', () => {
  const corners: Point[] = [
    [60, 25],
    [-60, 25],
    [-60, -25],
    [60, -25],
  ];
  const bent = (size: readonly [number, number]) =>
    bendSlab({
      slab: { outline: rectangleOutline({ size }), thickness: 8, openings: [] },
      supports: corners.map((place) => support(place, { share: 0.25 })),
      reach: () => 11,
      backed: 22,
    })!;

  // towards (60, 25) the foot of (60, −25) is 46.2 mm aside, where the edge lies 40.3 mm aside: half of its strip at least is there
  it('bends the half of its strip that lies on the near side of the edge', () => {
    const wide = bent([400, 400]);
    expect(bent([136, 66]).strip.stress).toBeLessThanOrEqual(2 * wide.strip.stress + 1e-9);
    expect(bent([136, 66]).strip.stress).toBeGreaterThanOrEqual(wide.strip.stress - 1e-9);
    expect(bent([136, 66]).sag).toBeLessThan(Infinity);
  });
});

describe('how far a slab sags', () => {
  // I = 20·6³/12 = 360 mm⁴, A = 120 mm², G = E/2.7
  const bends = (to: number, from: number, width = 20) => (0.5 * (to ** 3 - from ** 3)) / (3 * width * 18);
  const shears = (length: number, width = 20) => (1.2 * 0.5 * length * 2.7) / (width * 6);
  const leans = (to: number, from: number, width = 20) => (0.5 * (to ** 2 - from ** 2)) / (2 * width * 18);
  const wide = (x: number) => support([x, 0], { head: 20 });

  it('is that of its longer arm, 39 mm, by bending and shear', () => {
    for (const supports of [
      [wide(50), wide(-20)],
      [wide(-20), wide(50)],
    ]) {
      const { sag, lean } = band([], { supports });
      expect(sag).toBeCloseTo(bends(39, 0) + shears(39), 2);
      expect(lean).toBeCloseTo((leans(39, 0) * 180) / Math.PI, 2);
    }
  });

  it('counts what a window takes on the way: 10 of 20 mm from 20 to 32.4', () => {
    const window = through(rectangleOutline({ size: [12.4, 10] }).map(([x, y]) => [x + 26.2, y] as const));
    const supports = [wide(50), wide(-20)];
    const { sag, lean } = band([window], { supports, reach: () => 10 });
    const byHand = bends(40, 30) + bends(30, 17.6, 10) + bends(17.6, 0) + shears(10) + shears(12.4, 10) + shears(17.6);
    expect(sag / byHand).toBeCloseTo(1, 2);
    const leanByHand = leans(40, 30) + leans(30, 17.6, 10) + leans(17.6, 0);
    expect(lean / ((leanByHand * 180) / Math.PI)).toBeCloseTo(1, 2);
  });

  it('ends at the middle of the screws on its way: what is cut out beyond it counts nothing', () => {
    const supports = [wide(20), wide(50)];
    const window = through(rectangleOutline({ size: [3, 10] }).map(([x, y]) => [x + 37.5, y] as const));
    // a whole newton on 35 − 11 mm
    const byHand = 2 * (bends(24, 0) + shears(24));
    expect(band([], { supports }).sag / byHand).toBeCloseTo(1, 2);
    expect(band([window], { supports })).toMatchObject({
      sag: expect.closeTo(band([], { supports }).sag, 9),
      lean: expect.closeTo(band([], { supports }).lean, 9),
    });
  });

  it('has no bound where nothing is left', () => {
    const cut = through(rectangleOutline({ size: [4, 60] }).map(([x, y]) => [x + 25, y] as const));
    expect(band([cut])).toMatchObject({ sag: Infinity, lean: Infinity });
  });
});

describe('a disc that is held by screws around it and pulled in its middle', () => {
  /** Sag of a disc of E 2000, its screws at radius 25. */
  const sag = (count: number, thickness: number, force: number) =>
    (bendSlab({
      slab: { outline: circleOutline({ radius: 28, sides: 180 }), thickness, openings: [] },
      supports: Array.from({ length: count }, (_, i) => support(at((360 * i) / count, 25), { share: 1 / count })),
      reach: () => 0,
    })!.sag *
      force) /
    2000;

  // plate theory, by hand: clamped all round w = F·a²/(16·π·D), D = E·t³/(12·(1 − ν²)), ν 0.38; its edge free to lean 2.45 times that
  it.each([
    [6, 100, 0.0296],
    [6, 300, 0.0887],
    [8, 300, 0.0374],
  ])('%d mm thick, %d N: sags more than the %d mm of one that is clamped all round', (thickness, force, clamped) => {
    const stiffness = (2000 * thickness ** 3) / (12 * (1 - 0.38 ** 2));
    expect((force * 25 ** 2) / (16 * Math.PI * stiffness)).toBeCloseTo(clamped, 4);
    for (const count of [3, 4, 6, 12, 24]) expect(sag(count, thickness, force)).toBeGreaterThan(1.4 * clamped);
    // four screws let it lean between them
    expect(sag(4, thickness, force)).toBeGreaterThan(2.45 * clamped);
  });
});
