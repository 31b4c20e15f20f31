import { describe, expect, it } from 'vitest';
import { compareScrews } from '../../src/drive/compare-screws.js';
import { PURPOSES } from '../../src/drive/rank-screws.js';
import { screw } from './screws.js';

const three = ['Tr8x2', 'Tr8x8(P2)', 'M5'].map(screw);
const duty = { axis: 'vertical', load: 25, layerHeights: [0.1, 0.15, 0.2] } as const;
const order = (names: readonly string[], purpose: (typeof PURPOSES)[number]) =>
  compareScrews(names.map(screw), duty, { purpose }).ranking!.map((entry) => entry.designation);

it('keeps the order given, and says what changing from the first means', () => {
  const found = compareScrews(three, duty);
  expect(found.screws.map((numbers) => numbers.designation)).toEqual(['Tr8x2', 'Tr8x8(P2)', 'M5']);
  expect(found).not.toHaveProperty('ranking');
  expect(found.changes).toMatchObject([
    { from: 'Tr8x2', to: 'Tr8x8(P2)', factor: 0.25, steps_per_mm: 400 },
    { from: 'Tr8x2', to: 'M5', factor: 2.5, steps_per_mm: 4000 },
  ]);
  expect(found.pairs.map((pair) => pair.may)).toEqual(['no', 'no']);
});

it('changes from the screw that is taken out, with the figure that the controller held', () => {
  const old = { from: screw('Tr8x8(P2)'), oldStepsPerMm: 403 };
  // 403 · 8 / 2 and 403 · 8 / 0.8
  expect(compareScrews(['Tr8x2', 'M5'].map(screw), {}, old).changes).toMatchObject([
    { from: 'Tr8x8(P2)', to: 'Tr8x2', steps_per_mm: 1612 },
    { from: 'Tr8x8(P2)', to: 'M5', steps_per_mm: 4030 },
  ]);
  expect(compareScrews([screw('Tr8x2')], {}).changes).toEqual([]);
});

it('says what levels an axis on two screws', () => {
  // 360° · 0.1 mm / lead
  expect(compareScrews(three, duty).end_difference).toMatchObject({
    difference: 0.1,
    turns: [
      { designation: 'Tr8x2', degrees: 18 },
      { designation: 'Tr8x8(P2)', degrees: 4.5 },
      { designation: 'M5', degrees: 45 },
    ],
  });
  expect(compareScrews(three, duty, { endDifference: 0.4 }).end_difference.turns[0]!.degrees).toBe(72);
});

it('takes the clearances of each nut before those of the duty', () => {
  const own = { ...screw('Tr8x2'), axialClearance: 0.2 };
  const found = compareScrews([own, screw('Tr8x2')], { axialClearance: 0.1, diametralClearance: 0 });
  expect(found.screws.map(({ play }) => play?.axial)).toEqual([0.2, 0.1]);
});

describe('ranking', () => {
  it('fine layers: the screw on whose grid all heights lie, then the others', () => {
    // 0.1, 0.15, 0.2: all on 0.01; on 0.004 all but 0.15 (37.5); on 0.04 only 0.2
    expect(order(['Tr8x8(P2)', 'M5', 'Tr8x2'], 'fine-layers')).toEqual(['Tr8x2', 'M5', 'Tr8x8(P2)']);
    const reasons = compareScrews(three, duty, { purpose: 'fine-layers' }).ranking![2]!.reasons.join('; ');
    expect(reasons).toMatch(/0\.2 mm land on full steps; layers of 0\.1, 0\.15 mm do not; .*falls/);
  });
  it('speed: the fastest lead', () => {
    expect(order(['M5', 'Tr8x2', 'Tr8x8(P2)'], 'speed')).toEqual(['Tr8x8(P2)', 'Tr8x2', 'M5']);
    expect(compareScrews(three, duty, { purpose: 'speed' }).ranking![0]!.reasons[0]).toBe(
      'feed up to 40 mm/s, set by the motor',
    );
  });
  it('holding: the rod that holds, then what may creep, then what falls', () => {
    expect(order(['Tr8x8(P2)', 'Tr8x2', 'Tr10x2', 'M5'], 'holding')).toEqual(['M5', 'Tr10x2', 'Tr8x2', 'Tr8x8(P2)']);
  });
  it('does not depend on the order of input, and equals share a place', () => {
    const names = ['Tr8x2', 'Tr8x2-LH', 'Tr8x8(P2)', 'M8', 'Acme 1/4-16'];
    for (const purpose of PURPOSES) expect(order(names, purpose)).toEqual(order(names.toReversed(), purpose));
    const places = compareScrews(['Tr8x2-LH', 'Tr8x2', 'Tr8x8(P2)'].map(screw), duty, { purpose: 'holding' }).ranking!;
    expect(places.map((entry) => entry.place)).toEqual([1, 1, 3]);
  });
});

it('refuses an empty list and an unknown purpose', () => {
  expect(() => compareScrews([], {})).toThrow(/^screws: /);
  // @ts-expect-error a script may pass any word
  expect(() => compareScrews(three, {}, { purpose: 'looks' })).toThrow(/^purpose: looks; must be one of/);
});
