import { describe, expect, it } from 'vitest';
import { boreReach, roundReach } from '../../../src/parts/common/bore.js';
import {
  type Clamp,
  clampHeights,
  fitClamp,
  leastClampRadius,
  nutPocketReach,
} from '../../../src/parts/common/clamp.js';
import { freeSlit, pressingForce, ringFor, ringOf } from '../../../src/parts/common/clamp-ring.js';

const BORE = { form: 'round', diameter: 8 } as const;
const bothWays = [false, true];

describe('a clamp with washers', () => {
  it('stands in wider pockets that leave room for the washer, and for a nut driver', () => {
    const [bare, wide] = bothWays.map(
      (washers) => fitClamp({ radius: 20, bore: roundReach(4), slit: 1.5 }, 'M3', washers)!,
    );
    // M3: washer 7, head 5.68 knurled, nut 6.01 over its corners
    expect(bare).toMatchObject({ washers: false, head: 6.18, nut: 5.7 });
    expect(wide!.head).toBeCloseTo(7.5, 9);
    expect(wide!.nut).toBeCloseTo(8.01, 9);
    expect(nutPocketReach(bare!)).toBeCloseTo(5.7 / Math.sqrt(3), 9);
    expect(nutPocketReach(wide!)).toBeCloseTo(4.005, 9);
  });

  it.each(bothWays)('keeps head, nut and screw end under the outline, washers %s', (washers) => {
    const under = washers ? 0.5 : 0;
    for (let radius = leastClampRadius(roundReach(4), 'M3', washers); radius < 25; radius += 0.5) {
      const clamp = fitClamp({ radius, bore: roundReach(4), slit: 1.5 }, 'M3', washers)!;
      const { offset, headSeat, nutSeat, screwLength } = clamp;
      expect(Math.hypot(offset + 5.68 / 2, headSeat + under + 3)).toBeLessThanOrEqual(radius - 0.3 + 0.05);
      expect(Math.hypot(offset + 1.7, screwLength - under - headSeat)).toBeLessThanOrEqual(radius - 0.3 + 0.05);
      // the screw reaches through the nut
      expect(screwLength - under - headSeat).toBeGreaterThanOrEqual(nutSeat + under + 2.4 - 1e-9);
      expect(Math.min(headSeat, nutSeat)).toBeGreaterThanOrEqual(0.75 + 2);
    }
  });

  it.each(bothWays)('leaves a wall to the corner of a hexagonal bore, washers %s', (washers) => {
    const bore = boreReach({ form: 'hexagon', diameter: 18.48, across: 16 });
    for (let radius = leastClampRadius(bore, 'M3', washers); radius < 25; radius += 0.5) {
      const clamp = fitClamp({ radius, bore, slit: 1.5 }, 'M3', washers)!;
      // the corner beside the slit stands at 8 mm and 8·tan 30° = 4.62 mm
      const toCorner = (half: number, seat: number) =>
        Math.hypot(Math.max(0, clamp.offset - half - 8), Math.max(0, seat - 4.62));
      expect(toCorner(clamp.head / 2, clamp.headSeat)).toBeGreaterThan(1.6);
      expect(toCorner(nutPocketReach(clamp), clamp.nutSeat)).toBeGreaterThan(1.6);
    }
  });

  it('needs a larger outside and a longer hub', () => {
    expect(leastClampRadius(roundReach(4), 'M3', true)).toBeGreaterThan(leastClampRadius(roundReach(4), 'M3', false));
    expect(clampHeights('M3', 2, true).length).toBeGreaterThan(clampHeights('M3', 2, false).length);
    const heights = clampHeights('M3', 2, true).heights;
    // pockets of 8.01 mm with a wall of 1.6 mm and more between them
    expect(heights[1]! - heights[0]! - 8.01).toBeGreaterThanOrEqual(1.6);
  });
});

describe('the ring that a clamp closes', () => {
  const body = { outside: 28, bore: BORE, offset: 7.4, heights: [6, 15], hole: 3.4, reach: 30 };

  it('has its wall from the bore to the outside', () => {
    const ring = ringOf({ ...body, slit: { length: 30, web: false } });
    expect(ring).toEqual({ radius: 9, thickness: 10, offset: 7.4, length: 30, counted: 2 });
    const hexagon = ringOf({
      ...body,
      bore: { form: 'hexagon', diameter: 9.24, across: 8 },
      slit: { length: 30, web: false },
    });
    expect(hexagon).toMatchObject({ radius: 9, thickness: 10 });
  });

  it('of two halves is slit through, and pressed by the screws on both sides', () => {
    const halves = ringOf({ ...body, slit: { length: 30, web: false, through: true } });
    expect(halves).toStrictEqual({ radius: 9, thickness: 10, offset: 7.4, length: 30, counted: 2, halves: true });
    expect(pressingForce(halves, 500)).toBe(1000);
    // a slit ring turns about its back: 500·(7.4 + 9)/9
    const slit = ringOf({ ...body, slit: { length: 30, web: false } });
    expect(slit).not.toHaveProperty('halves');
    expect(pressingForce(slit, 500)).toBeCloseTo((500 * 16.4) / 9, 6);
    const screws = { screw: 'M3', count: 2, washers: true } as const;
    expect(ringFor({ bore: BORE, web: false, halves: true, length: 10 }, screws).halves).toBe(true);
    expect(ringFor({ bore: BORE, web: false, length: 10 }, screws)).not.toHaveProperty('halves');
  });

  it('is not closed by a screw nearer to a web than the middle of its wall', () => {
    const counted = (length: number) => ringOf({ ...body, slit: { length, web: true } }).counted;
    expect([counted(24), counted(23.9), counted(15), counted(14.9)]).toEqual([2, 1, 1, 0]);
  });

  it('is not closed on its shaft by a screw that stands beyond the end of it, not even by half', () => {
    // holes of 3.4 mm at 6 and 15 mm end at 7.7 and 16.7 mm
    const counted = (reach: number) => ringOf({ ...body, reach, slit: { length: 30, web: false } }).counted;
    expect([counted(16.7), counted(16.6), counted(7.7), counted(7.6)]).toEqual([2, 1, 1, 0]);
    const screws = { screw: 'M3', count: 2, washers: true } as const;
    const [first, second] = clampHeights('M3', 2, true).heights.map((height) => height + 1.7);
    const tried = (reach?: number) => ringFor({ bore: BORE, web: false, length: 10, reach }, screws).counted;
    expect([tried(), tried(second), tried(second! - 0.1), tried(first), tried(first! - 0.1)]).toEqual([2, 2, 1, 1, 0]);
  });

  it('is long enough for all its screws where they are yet to be placed', () => {
    const screws = { screw: 'M3', count: 2, washers: true } as const;
    const heights = clampHeights('M3', 2, true).heights;
    expect(freeSlit(14, BORE, screws)).toBeCloseTo(heights[1]! + 9, 9);
    expect(freeSlit(14, BORE, { ...screws, count: 1 })).toBeCloseTo(heights[0]! + 9, 9);
    const ring = ringFor({ bore: BORE, outer: 20, web: true, length: 10 }, screws);
    expect(ring).toMatchObject({ radius: 12, thickness: 16, counted: 2, length: heights[1]! + 12 });
    expect(ring.offset).toBeCloseTo(4 + 1.7 + 1.7, 9);
    expect(ringFor({ bore: BORE, web: false, length: 10 }, screws)).toMatchObject({
      length: 10,
      radius: (4 + leastClampRadius(roundReach(4), 'M3', true)) / 2,
    });
  });
});

describe('a clamp of each size', () => {
  it.each(['M2', 'M2.5', 'M3', 'M4', 'M5', 'M6'] as const)('%s fits from its least radius on', (screw) => {
    for (const washers of bothWays) {
      const least = leastClampRadius(roundReach(5), screw, washers);
      const fits = (radius: number): Omit<Clamp, 'heights'> | undefined =>
        fitClamp({ radius, bore: roundReach(5), slit: 1.5 }, screw, washers);
      expect(fits(least)).toBeDefined();
      expect(fits(least - 0.5)).toBeUndefined();
    }
  });
});
