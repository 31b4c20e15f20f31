import { expect, it } from 'vitest';
import { leverShares, mostShare } from '../../../src/mechanics/bolt/lever-shares.js';
import { screwShares } from '../../../src/mechanics/bolt/screw-shares.js';

const SQUARE = [
  [17, 17],
  [-17, 17],
  [-17, -17],
  [17, -17],
] as const;
const PAIR = [
  [0, 20],
  [0, -20],
] as const;

it('is that of the pattern where the load acts on the axis', () => {
  expect(leverShares(SQUARE, 0)).toEqual([screwShares(SQUARE)]);
  expect(leverShares(PAIR, 0, () => 25)).toEqual([screwShares(PAIR, () => 25)]);
});

// towards a screw, 17·√2 = 24.04 mm out: 1/4 + 24.04·40/(2·24.04²) = 0.25 + 20/24.04
it('is most for the screw that the load acts beside', () => {
  expect(mostShare(SQUARE, 40)).toBeCloseTo(0.25 + 20 / (17 * Math.SQRT2), 9);
  for (const shares of leverShares(SQUARE, 40)) expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
});

// 34 mm along +X: 1/4 ± 17·34/(4·17²); 34 mm along +Y likewise
it('goes all round the axis', () => {
  const rows = leverShares(SQUARE, 34);
  const has = (wanted: readonly number[]) =>
    rows.some((row) => row.every((share, i) => Math.abs(share - wanted[i]!) < 1e-9));
  expect(has([0.75, 0, 0, 0.75])).toBe(true);
  expect(has([0.75, 0.75, 0, 0])).toBe(true);
  expect(has([0, 0.75, 0.75, 0])).toBe(true);
  expect(has([0, 0, 0.75, 0.75])).toBe(true);
});

// 10 mm at 45°: along the line 1/2 + 20·7.071/(2·20²) = 0.6768, across it the flange tips about its edge: (25 + 7.071)/25 = 1.2828
it('tips two screws about the edge on the other side', () => {
  expect(mostShare(PAIR, 10, () => 25)).toBeCloseTo(0.6768 * 1.2828, 3);
});

it('wants no lever below 0', () => {
  expect(() => leverShares(PAIR, -1)).toThrow(/lever/);
});

// 6 mm along +Y of three screws about their middle, Σy² = 600: 1/3 + y·6/600
it('counts a load on its own side', () => {
  const three = [
    [20, 10],
    [-20, 10],
    [0, -20],
  ] as const;
  const quarter = leverShares(three, 6)[6]!;
  expect(quarter[0]).toBeCloseTo(1 / 3 + 0.1, 9);
  expect(quarter[1]).toBeCloseTo(1 / 3 + 0.1, 9);
  expect(quarter[2]).toBeCloseTo(1 / 3 - 0.2, 9);
});

// the same line of two, along X: across it the edge lies 25 mm off, along it 40 mm
it('tips about the edge that lies on its way', () => {
  const along = [
    [20, 0],
    [-20, 0],
  ] as const;
  expect(mostShare(along, 10, ([, v]) => (Math.abs(v) > 0.5 ? 25 : 40))).toBeCloseTo(0.6768 * 1.2828, 3);
  // a line at 45°, the load 10 mm along +X: 1/2 + 19.80·7.071/(2·19.80²) = 0.6786
  const diagonal = [
    [14, 14],
    [-14, -14],
  ] as const;
  expect(Math.max(...leverShares(diagonal, 10, () => 25)[0]!)).toBeCloseTo(0.6786 * 1.2828, 3);
});
