import { describe, expect, it } from 'vitest';
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

describe('a load beside the line of the screws', () => {
  it('pries about the edge of the part: a lone screw 14 mm away, the edge at 20: 20 / (20 − 14)', () => {
    expect(screwShares([[14, 0]], () => 20)[0]).toBeCloseTo(10 / 3, 9);
    expect(screwShares([[0, -14]], () => 20)[0]).toBeCloseTo(10 / 3, 9);
  });

  it('is shared along the line as ever: two 15 mm aside, the edge at 22, 22/7 in all', () => {
    const even = screwShares(
      [
        [15, 9],
        [15, -9],
      ],
      () => 22,
    );
    for (const share of even) expect(share).toBeCloseTo(11 / 7, 9);
    // 10 mm one way and 20 the other: 2/3 and 1/3
    const [near, far] = screwShares(
      [
        [15, 10],
        [15, -20],
      ],
      () => 22,
    );
    expect(near).toBeCloseTo(44 / 21, 9);
    expect(far).toBeCloseTo(22 / 21, 9);
  });

  it('asks for the edge on the way from the load to the line', () => {
    const asked: number[][] = [];
    const edge = (along: readonly [number, number]) => {
      asked.push([...along]);
      return 20;
    };
    screwShares(
      [
        [3, 4],
        [3 - 8, 4 + 6],
      ],
      edge,
    );
    // the line runs along (−0.8, 0.6), square to (0.6, 0.8)
    expect(asked).toHaveLength(1);
    expect(asked[0]![0]).toBeCloseTo(0.6, 12);
    expect(asked[0]![1]).toBeCloseTo(0.8, 12);
  });

  it('is without bound where the part ends at its screws', () => {
    expect(screwShares([[14, 0]], () => 14)).toEqual([Infinity]);
    expect(screwShares([[14, 0]], () => 13)).toEqual([Infinity]);
  });

  it('counts nothing where the line runs through the load, or the screws stand around it', () => {
    const never = () => {
      throw new Error('asked for an edge');
    };
    expect(
      screwShares(
        [
          [16, 0],
          [-16, 0],
        ],
        never,
      ),
    ).toEqual([0.5, 0.5]);
    expect(screwShares([[0, 0]], never)).toEqual([1]);
    expect(
      screwShares(
        [
          [16, 0],
          [-8, 10],
          [-8, -10],
        ],
        never,
      )[0],
    ).toBeCloseTo(1 / 3, 9);
  });
});
