import { describe, expect, it } from 'vitest';
import { endsOf, halved, panelOver, ruled, type Sums } from '../../../../src/solid/exact/lines/kronrod.js';

const of =
  (value: (x: number) => number) =>
  (x: number): Sums => [value(x), 0, 0, 0];

describe("Kronrod's rule over a panel", () => {
  it.each([0, 1, 5, 8, 11])('is exact for powers up to 11, as 7 nodes about 3 are: x^%i from 1 to 3', (power) => {
    const wanted = (3 ** (power + 1) - 1) / (power + 1);
    expect(
      ruled(
        panelOver(1, 3, false),
        of((x) => x ** power),
      ).sums[0] / wanted,
    ).toBeCloseTo(1, 12);
  });

  it("tells how far Gauss's of three is off: nothing up to x^5, of x^6 on −1 to 1 2/7 − 6/25", () => {
    const panel = panelOver(-1, 1, false);
    expect(
      ruled(
        panel,
        of((x) => x ** 5 + x ** 4),
      ).off,
    ).toBeCloseTo(0, 14);
    expect(
      ruled(
        panel,
        of((x) => x ** 6),
      ).off,
    ).toBeCloseTo(2 / 7 - 6 / 25, 12);
  });

  it('finds half a disc where both ends are roots: π·r²/2', () => {
    const { sums } = ruled(
      panelOver(-2, 4, true),
      of((x) => Math.sqrt(9 - (x - 1) ** 2)),
    );
    expect(sums[0]).toBeCloseTo((Math.PI * 9) / 2, 5);
  });

  it.each([false, true])('halves a panel where both halves meet (root: %s)', (isRoot) => {
    const panel = panelOver(2, 6, isRoot);
    const ends = halved(panel).flatMap((half) => [...endsOf(half)]);
    for (const [i, wanted] of [2, 4, 4, 6].entries()) expect(ends[i]).toBeCloseTo(wanted, 12);
    const whole = ruled(
      panel,
      of((x) => x),
    ).sums[0];
    expect(
      halved(panel).reduce(
        (sum, half) =>
          sum +
          ruled(
            half,
            of((x) => x),
          ).sums[0],
        0,
      ),
    ).toBeCloseTo(whole, 5);
  });
});
