import { describe, expect, it } from 'vitest';
import type { ReachBesideSlit } from '../../../src/parts/common/bore.js';
import type { Clamp } from '../../../src/parts/common/clamp.js';
import { clampWalls, type HeldBody, heldWalls } from '../../../src/parts/common/hub-walls.js';
import { fourLines, thinnest, type Wall } from '../../../src/parts/common/walls.js';

/** Round figures: one M3 10 mm from the axis, its head's seat 6 mm below the slit, its nut's 5 mm above it. */
const CLAMP: Clamp = {
  screw: 'M3',
  offset: 10,
  heights: [6],
  hole: 3.4,
  head: 6,
  headSeat: 6,
  nut: 6,
  nutSeat: 5,
  washers: false,
  screwLength: 16,
};
/** A bore of 8 mm, a hexagon's corner beyond it. */
const REACH: ReachBesideSlit = { slit: 4, corner: 4.5 };
const sizes = (walls: readonly Wall[]) => Object.fromEntries(walls.map(({ where, size }) => [where, size]));
const clampSizes = (more: Partial<Clamp> = {}) =>
  sizes(clampWalls({ ...CLAMP, ...more }, { radius: 16, bore: REACH, slit: 1.5 }));

describe('walls beside a clamp screw, by hand', () => {
  const corner = 6 / Math.sqrt(3);

  it('are counted to bore, outline, slit and end', () => {
    const found = clampSizes();
    const wanted = {
      'clamp screw to bore': 10 - 1.7 - 4,
      'head pocket to outside': Math.sqrt(16 ** 2 - 6 ** 2) - 10 - 3,
      'nut pocket to outside': Math.sqrt(16 ** 2 - 5 ** 2) - 10 - corner,
      'head pocket to bore': Math.hypot(7, 6) - 4.5,
      'nut pocket to bore': Math.hypot(10 - corner, 5) - 4.5,
      'head seat to slit': 5.25,
      'nut seat to slit': 4.25,
      'pocket to the end': 3,
    };
    expect(found).toEqual(
      Object.fromEntries(Object.entries(wanted).map(([key, size]) => [key, expect.closeTo(size, 9)])),
    );
  });

  it('of two screws count what is between their pockets', () => {
    expect(clampSizes({ heights: [6, 14] })['between the pockets']).toBeCloseTo(8 - 6, 9);
  });

  it('with washers count the wider of both pockets, and a nut pocket that is round', () => {
    const wide = clampSizes({ washers: true, head: 7.5, nut: 8, heights: [6, 16] });
    expect(wide['pocket to the end']).toBeCloseTo(6 - 4, 9);
    expect(wide['between the pockets']).toBeCloseTo(10 - 8, 9);
    expect(wide['nut pocket to outside']).toBeCloseTo(Math.sqrt(16 ** 2 - 5 ** 2) - 10 - 4, 9);
  });

  it('of a pocket over the axis are as far as its seat, and none outside an outline that is too small', () => {
    expect(clampSizes({ offset: 2.5 })['head pocket to bore']).toBeCloseTo(6 - 4.5, 9);
    expect(clampSizes({ headSeat: 17 })['head pocket to outside']).toBeCloseTo(-13, 9);
  });
});

describe('walls of a body that holds a shaft, by hand', () => {
  const body: HeldBody = { outside: 24, bore: { form: 'round', diameter: 8 } };

  it('are one between bore and outside, and what the part adds', () => {
    expect(heldWalls(body)).toEqual([{ where: 'bore to outside', size: 8 }]);
    const web = { where: 'web', size: 2 };
    expect(heldWalls({ ...body, more: [web] })).toContainEqual(web);
  });

  it('of a clamp count from half the width of the slit, which may not be there', () => {
    const seat = (more: Partial<HeldBody>) => sizes(heldWalls({ ...body, clamp: CLAMP, ...more }))['head seat to slit'];
    expect(seat({ slit: { width: 1.5, length: 20, web: false } })).toBeCloseTo(5.25, 9);
    expect(seat({})).toBe(6);
  });

  it('of a keyed bore count to the ground of its keyway, 4 + 1.4 mm and on to its corners', () => {
    // corners of 3 mm of width: √(5.4² + 1.5²) from the axis
    const keyed: HeldBody = { outside: 24, bore: { form: 'keyed', diameter: 8, key: { width: 3, depth: 1.4 } } };
    expect(heldWalls(keyed)).toEqual([
      { where: 'bore to outside', size: expect.closeTo(12 - Math.hypot(5.4, 1.5), 9) },
    ]);
  });

  it('of a set screw count from its nut to the bore and, at its corners, to the outside', () => {
    const slot = { inner: 6, thickness: 2.6, width: 5.7 };
    const found = sizes(heldWalls({ ...body, setScrew: { slot } as HeldBody['setScrew'] & object }));
    expect(found['set screw nut to bore']).toBeCloseTo(2, 9);
    expect(found['set screw nut to outside']).toBeCloseTo(12 - Math.hypot(8.6, 2.85), 9);
    expect(found['insert to bore']).toBeUndefined();
  });

  it('of an insert count to the bore', () => {
    const bore = { inner: 5.5 };
    const found = sizes(heldWalls({ ...body, setScrew: { bore } as HeldBody['setScrew'] & object }));
    expect(found['insert to bore']).toBeCloseTo(1.5, 9);
    expect(found['set screw nut to bore']).toBeUndefined();
  });

  it('are led by the thinnest, the first of equal ones', () => {
    const wall = (where: string, size: number) => ({ where, size });
    expect(thinnest([wall('a', 3), wall('b', 2), wall('c', 2.5)]).where).toBe('b');
    expect(thinnest([wall('a', 2), wall('b', 2)]).where).toBe('a');
  });
});

it('wants four lines of a nozzle, and 1.6 mm at least', () => {
  expect([0.25, 0.4, 0.6, 0.8].map(fourLines)).toEqual([1.6, 1.6, 2.4, 3.2]);
});
