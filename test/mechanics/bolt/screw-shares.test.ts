import { expect, it } from 'vitest';
import { screwShares } from '../../../src/mechanics/bolt/screw-shares.js';

it('shares evenly where the load passes through the middle', () => {
  for (const share of screwShares([
    [16, 0],
    [0, 16],
    [-16, 0],
    [0, -16],
  ]))
    expect(share).toBeCloseTo(0.25, 12);
});

it('is the lever of two screws: 10 and 30 mm away, 3/4 and 1/4', () => {
  const [near, far] = screwShares([
    [10, 0],
    [-30, 0],
  ]);
  expect(near).toBeCloseTo(0.75, 12);
  expect(far).toBeCloseTo(0.25, 12);
});

it('tips a rectangle: load 5 mm off the middle of 40 × 20', () => {
  // hand: 1/4 ± 5·20/(4·20²) = 0.25 ± 0.0625
  const shares = screwShares(
    [
      [25, 10],
      [-15, 10],
      [-15, -10],
      [25, -10],
    ].map(([x, y]) => [x! - 10, y!] as const),
  );
  // middle at −5 from the load, so the screws on +X take more
  expect(shares.map((share) => Number(share.toFixed(4)))).toEqual([0.3125, 0.1875, 0.1875, 0.3125]);
});

it('leaves out screws that would be pushed, and takes a lone screw for all', () => {
  // lever: the load 10 mm beyond the nearer of two screws 20 mm apart: 1.5 and −0.5
  expect(
    screwShares([
      [10, 0],
      [30, 0],
    ]),
  ).toEqual([1.5, 0]);
  expect(screwShares([[7, 3]])).toEqual([1]);
});

it('is the balance of moments where three screws leave no choice', () => {
  // hand: areas of the triangles between the load and two screws: 34, 70 and 48 of 152
  const shares = screwShares([
    [9, 1],
    [-3, 5],
    [-2, -8],
  ]);
  [34 / 152, 70 / 152, 48 / 152].forEach((share, i) => {
    expect(shares[i]).toBeCloseTo(share, 12);
  });
});

it('is the lever along a slanted line, whether the load is on it or beside it', () => {
  // 10 mm one way and 20 mm the other along (0.6, 0.8)
  for (const beside of [0, 5]) {
    const [near, far] = screwShares([
      [6 - 0.8 * beside, 8 + 0.6 * beside],
      [-12 - 0.8 * beside, -16 + 0.6 * beside],
    ]);
    expect(near).toBeCloseTo(2 / 3, 9);
    expect(far).toBeCloseTo(1 / 3, 9);
  }
});

it('does not hang on the unit of length: the same three screws, and the same slanted line, far smaller and larger', () => {
  const [along, aside] = [Math.cos(0.8), Math.sin(0.8)];
  for (const unit of [1e-4, 1e4]) {
    const triangle = screwShares([
      [9 * unit, unit],
      [-3 * unit, 5 * unit],
      [-2 * unit, -8 * unit],
    ]);
    [34 / 152, 70 / 152, 48 / 152].forEach((share, i) => {
      expect(triangle[i]).toBeCloseTo(share, 9);
    });
    // 10 one way and 20 the other along the line, the load 5 beside it
    const [near, far] = screwShares(
      [10, -20].map((at) => [(at * along - 5 * aside) * unit, (at * aside + 5 * along) * unit] as const),
    );
    expect(near).toBeCloseTo(2 / 3, 9);
    expect(far).toBeCloseTo(1 / 3, 9);
  }
});
