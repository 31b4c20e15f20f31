import { describe, expect, it } from 'vitest';
import {
  boreOf,
  headRadius,
  type JointHole,
  openingRadius,
  pocketOf,
  seatDiameter,
  seatName,
  threadReach,
  washerRadius,
} from '../../../src/parts/common/joints.js';
import { insideRounded, insideSimple, isSimple } from '../../../src/parts/common/polygon-distance.js';
import { nextCapScrewLength, screwLengthWithin } from '../../../src/parts/common/screw-length.js';

const hole = (joint: JointHole['joint']): JointHole => ({ joint, screw: 'M4', diameter: 4.5 });

describe('joints', () => {
  it('take heads, nuts and washers from the standards', () => {
    // ISO 4762 M4: head 7.22 mm knurled, 4 mm high; 0.5 mm of room
    expect(pocketOf(hole('counterbore'))).toEqual({ kind: 'round', diameter: 7.72, depth: 4 });
    // ISO 4032 M4: 7 mm across flats, 3.2 mm high; 0.2 mm of room
    expect(pocketOf(hole('hexagon'))).toEqual({ kind: 'hexagon', acrossFlats: 7.2, depth: 3.2 });
    for (const joint of ['through', 'insert', 'tapped'] as const) expect(pocketOf(hole(joint))).toBeUndefined();
    // corners of 7.2 mm flats: 7.2/√3
    expect(openingRadius(hole('hexagon'))).toBeCloseTo(4.1569, 4);
    // ISO 7089 M4: 9 mm; ISO 4762: 7 mm plain
    expect(washerRadius(hole('through'))).toBe(4.5);
    expect(headRadius(hole('through'))).toBe(3.5);
    // ISO 273 hole as given; insert bore of published charts 5.6 mm; tap drill 4 − 0.7 mm
    expect([boreOf(hole('through')), boreOf(hole('insert')), boreOf(hole('tapped'))]).toEqual([4.5, 5.6, 3.3]);
  });

  it('bear by what lies on the plastic', () => {
    const seats = (['through', 'counterbore', 'hexagon', 'insert', 'tapped'] as const).map((one) => [
      seatName(hole(one)),
      seatDiameter(hole(one)),
    ]);
    // washer 9 mm, head 7 mm, nut 7 mm across flats; an insert and a thread have the width of their bores
    expect(seats).toEqual([
      ['washer', 9],
      ['head', 7],
      ['nut', 7],
      ['head', 5.6],
      ['head', 3.3],
    ]);
    const roofed = { ...hole('counterbore'), roof: 'membrane' } as const;
    expect([seatName(roofed), seatDiameter(roofed)]).toEqual(['washer', 9]);
    // a washer of 9 × 0.8 goes in with the head of 4
    expect(pocketOf(roofed)).toEqual({ kind: 'round', diameter: 9.5, depth: 4.8 });
    expect(seatDiameter({ ...hole('hexagon'), roof: 'membrane' })).toBe(7);
    expect(threadReach('M4')).toBe(8);
  });

  it('are plain holes where no listed screw passes', () => {
    for (const joint of ['through', 'counterbore', 'hexagon', 'insert', 'tapped'] as const) {
      const plain = { joint, diameter: 20 };
      expect(pocketOf(plain)).toBeUndefined();
      expect([boreOf(plain), openingRadius(plain)]).toEqual([20, 10]);
      expect([headRadius(plain), washerRadius(plain), seatDiameter(plain)]).toEqual([0, 0, 0]);
    }
    // a sunk head wants its pocket's room
    expect(headRadius(hole('counterbore'))).toBe(3.86);
  });

  it('choose usual screw lengths', () => {
    expect(nextCapScrewLength('M3', 12.1)).toBe(16);
    expect(screwLengthWithin('M3', 9, 13.9)).toBe(12);
    expect(screwLengthWithin('M3', 12.5, 15.5)).toBeUndefined();
  });
});

describe('distances to polygons', () => {
  const notched = [
    [0, 0],
    [10, 0],
    [10, 10],
    [5, 5],
    [0, 10],
  ] as const;

  it('are positive inside and negative outside, inward corners included', () => {
    expect(insideSimple(notched, [5, 2])).toBe(2);
    expect(insideSimple(notched, [5, 7])).toBeCloseTo(-Math.SQRT2, 9);
    expect(insideRounded([20, 10], 2, [0, 0])).toBe(5);
    // corner centre at (8, 3): the diagonal point (10, 5) is √8 − 2 outside
    expect(insideRounded([20, 10], 2, [10, 5])).toBeCloseTo(2 - Math.sqrt(8), 9);
  });

  it('know a polygon that crosses itself', () => {
    expect(isSimple(notched)).toBe(true);
    expect(
      isSimple([
        [0, 0],
        [9, 9],
        [9, 0],
        [0, 9],
      ]),
    ).toBe(false);
  });
});
