import { describe, expect, it } from 'vitest';
import { writeStl } from '../../src/output/write-stl.js';
import { readBack, verify } from '../../src/pipeline/verify.js';
import type { Mesh } from '../../src/solid/mesh.js';

/** A tetrahedron by hand: one step along each axis, so its volume is 1/6. */
const positions = Float64Array.from([0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1]);
const facets = [0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3];
const whole: Mesh = { positions, triangles: Uint32Array.from(facets) };
const expected = {
  volume: 1 / 6,
  mark: 0,
  bounds: [
    [0, 0, 0],
    [1, 1, 1],
  ] as const,
};

function verdicts(mesh: Mesh, wanted: Parameters<typeof readBack>[0]['expected'] = expected) {
  const found = verify([readBack({ file: 'a.stl', bytes: writeStl(mesh), expected: wanted })]);
  return Object.fromEntries(found.map(({ id, verdict, value }) => [id, [verdict, value]]));
}

describe('verify', () => {
  it('passes a closed solid of the right size', () => {
    expect(verdicts(whole)).toEqual({
      'solid-closed': ['pass', 0],
      'solid-volume': ['pass', 0],
      'solid-bounds': ['pass', 0],
    });
  });

  it('counts open edges', () => {
    const open = { positions, triangles: Uint32Array.from(facets.slice(3)) };
    expect(verdicts(open)['solid-closed']).toEqual(['fail', 3]);
  });

  it('counts a turned facet by its three edges', () => {
    const turned = { positions, triangles: Uint32Array.from([0, 1, 2, ...facets.slice(3)]) };
    expect(verdicts(turned)['solid-closed']).toEqual(['fail', 3]);
  });

  it('finds facets with a repeated corner', () => {
    const repeated = { positions, triangles: Uint32Array.from([...facets, 1, 1, 2]) };
    expect(verdicts(repeated)['solid-closed']![0]).toBe('fail');
  });

  it('finds a facet that is too low to be kept', () => {
    // a corner 2e-6 mm off the side that it splits in two
    const split = {
      positions: Float64Array.from([...positions, 0.5, -2e-6, 0]),
      triangles: Uint32Array.from([0, 2, 4, 4, 2, 1, 0, 4, 3, 4, 1, 3, 0, 3, 2, 1, 2, 3]),
    };
    expect(verdicts(split)['solid-closed']).toEqual(['pass', 0]);
    const low = {
      positions: Float64Array.from([...positions, 0.5, -2e-6, 0]),
      triangles: Uint32Array.from([0, 2, 1, 0, 1, 4, 0, 4, 3, 4, 1, 3, 0, 3, 2, 1, 2, 3]),
    };
    expect(verdicts(low)['solid-closed']).toEqual(['fail', 1]);
  });

  it('finds a second shell', () => {
    const twice = {
      positions: Float64Array.from([...positions, ...positions.map((value) => value + 5)]),
      triangles: Uint32Array.from([...facets, ...facets.map((corner) => corner + 4)]),
    };
    expect(verdicts(twice)['solid-closed']).toEqual(['fail', 1]);
  });

  it('finds a solid turned inside out by its volume', () => {
    const inward = { positions, triangles: Uint32Array.from(facets).reverse() };
    expect(verdicts(inward)['solid-volume']![0]).toBe('fail');
  });

  it('allows 0.1 % of volume, and a raised mark on top', () => {
    const of = (volume: number, mark = 0) => verdicts(whole, { ...expected, volume, mark })['solid-volume']![0];
    expect(of((1 / 6) * 1.0009)).toBe('pass');
    expect(of((1 / 6) * 1.0011)).toBe('fail');
    expect(of(0.16)).toBe('fail');
    expect(of(0.16, 0.01)).toBe('pass');
  });

  it('allows 0.005 mm of bounds', () => {
    const of = (x: number) =>
      verdicts(whole, {
        ...expected,
        bounds: [
          [0, 0, 0],
          [x, 1, 1],
        ],
      })['solid-bounds']![0];
    expect([of(1.0049), of(1.0051), of(0.9949)]).toEqual(['pass', 'fail', 'fail']);
  });
});
