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
