import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rayCaster } from '../../src/solid/ray-caster.js';

const number = fc.double({ min: -5, max: 5, noNaN: true });
const soup = fc.array(fc.array(number, { minLength: 9, maxLength: 9 }), { minLength: 1, maxLength: 60 });

/** Distance at which a line meets a triangle, by solving for its three unknowns with determinants. */
function distanceTo(corners: readonly number[], [x, y, z, dx, dy, dz]: readonly number[]): number {
  const [a, b, c] = [corners.slice(0, 3), corners.slice(3, 6), corners.slice(6, 9)] as [number[], number[], number[]];
  const column = (p: number[], q: readonly number[]) => p.map((value, i) => value - q[i]!);
  const [u, v, w] = [column(b, a), column(c, a), [-dx!, -dy!, -dz!]];
  const right = [x! - a[0]!, y! - a[1]!, z! - a[2]!];
  const det = (p: number[], q: number[], r: number[]) =>
    p[0]! * (q[1]! * r[2]! - q[2]! * r[1]!) -
    q[0]! * (p[1]! * r[2]! - p[2]! * r[1]!) +
    r[0]! * (p[1]! * q[2]! - p[2]! * q[1]!);
  const whole = det(u, v, w);
  if (Math.abs(whole) < 1e-9) return Infinity;
  const [s, t, distance] = [det(right, v, w) / whole, det(u, right, w) / whole, det(u, v, right) / whole];
  return s >= 0 && t >= 0 && s + t <= 1 && distance > 0 ? distance : Infinity;
}

describe('rays', () => {
  it('meet the facet that each facet asked one by one says', () => {
    fc.assert(
      fc.property(soup, fc.array(number, { minLength: 6, maxLength: 6 }), (facets, ray) => {
        fc.pre(Math.hypot(ray[3]!, ray[4]!, ray[5]!) > 0.1);
        const positions = Float64Array.from(facets.flat());
        const triangles = Uint32Array.from({ length: 3 * facets.length }, (_, i) => i);
        const wanted = Math.min(...facets.map((corners) => distanceTo(corners, ray)));
        const hit = rayCaster({ positions, triangles }).first(
          ray as [number, number, number, number, number, number],
          0,
        );
        if (wanted === Infinity) expect(hit?.distance ?? Infinity).toBeGreaterThan(0);
        else expect(hit!.distance).toBeCloseTo(wanted, 5);
      }),
      { numRuns: 300, seed: 4 },
    );
  });

  it('along an axis meet facets whose boxes are flat', () => {
    const square = {
      positions: Float64Array.from([0, 0, 1, 2, 0, 1, 2, 2, 1, 0, 2, 1]),
      triangles: Uint32Array.from([0, 1, 2, 0, 2, 3]),
    };
    expect(rayCaster(square).first([0.5, 0.5, 0, 0, 0, 1], 0)?.distance).toBe(1);
    // through the diagonal that both facets share
    expect(rayCaster(square).first([1, 1, 0, 0, 0, 1], 0)?.distance).toBe(1);
    expect(rayCaster(square).first([1, 1, 0, 0, 0, 1], 0, 0.9)).toBeUndefined();
    expect(rayCaster(square).first([3, 1, 0, 0, 0, 1], 0)).toBeUndefined();
  });
});
