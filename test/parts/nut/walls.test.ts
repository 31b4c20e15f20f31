import { expect, it } from 'vitest';
import { edgeDistance, outsideBody } from '../../../src/parts/nut/edges.js';
import { besideBore, holesApart, holesToBore, holesToEdge } from '../../../src/parts/nut/walls.js';

type Sizes = Parameters<typeof edgeDistance>[0];
const round = (across: number, flats?: number): Sizes['body'] => ({
  shape: 'round',
  across,
  ...(flats === undefined ? {} : { flats }),
});
const flange = (shape: 'round' | 'square', size: number, flats?: number) =>
  ({ shape, size: [size, size], thickness: 5, ...(flats === undefined ? {} : { flats }) }) as unknown as NonNullable<
    Sizes['flange']
  >;

// half of what is narrowest, less the bore of 5 mm
it('the wall beside the bore ends at the nearest outside', () => {
  expect(besideBore({ body: round(17) }, 5)).toBe(3.5);
  expect(besideBore({ body: round(17, 15), flange: flange('round', 37) }, 5)).toBe(2.5);
  expect(besideBore({ body: round(17, 15), flange: flange('round', 37, 14) }, 5)).toBe(2);
});

it('walls beside holes are those of the hole that stands nearest', () => {
  // 8 − 2 − 5; 18.5 − 15 − 2; 10 − 4 and 8 − 4 between three of them
  const centres = [
    [0, 10],
    [8, 0],
    [0, 15],
  ] as const;
  expect(holesToBore(centres, 2, 5)).toBe(1);
  expect(holesToEdge({ body: round(17), flange: flange('round', 37) }, centres, 2)).toBe(1.5);
  expect(holesApart(centres, 2)).toBe(1);
  expect(
    holesApart(
      [
        [3, 1],
        [9, 1],
      ],
      2,
    ),
  ).toBe(2);
  expect(holesApart([[0, 10]], 2)).toBe(Number.POSITIVE_INFINITY);
});

it('a place lies inside the flange, or the body where there is none', () => {
  expect(edgeDistance({ body: round(17), flange: flange('round', 37, 30) }, [0, 10])).toBe(5);
  expect(edgeDistance({ body: round(17), flange: flange('round', 37, 30) }, [0, -10])).toBe(5);
  expect(edgeDistance({ body: round(17), flange: flange('round', 37, 30) }, [10, 0])).toBe(8.5);
  expect(edgeDistance({ body: round(17), flange: flange('square', 37) }, [10, 9])).toBeCloseTo(8.5, 9);
  expect(edgeDistance({ body: round(40) }, [12, 0])).toBe(8);
  expect(edgeDistance({ body: round(40, 30) }, [0, 12])).toBe(3);
  expect(outsideBody(round(40, 30), [25, 0])).toBe(5);
  expect(outsideBody(round(40, 30), [0, -16])).toBe(1);
  expect(outsideBody({ shape: 'square', across: 40 }, [25, 15])).toBeCloseTo(5, 9);
});
