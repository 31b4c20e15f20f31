import fc from 'fast-check';
import { solveClocking } from '../../src/parts/adapter/clocking.js';
import { type Disc, discToDisc } from '../../src/parts/adapter/turn-terms.js';

/** Equal discs in a circle. */
export const ring = (count: number, circle: number, start: number, radius: number): Disc[] =>
  Array.from({ length: count }, (_, i) => {
    const angle = ((start + (360 * i) / count) * Math.PI) / 180;
    return { at: [(circle / 2) * Math.cos(angle), (circle / 2) * Math.sin(angle)] as const, radius };
  });

/** Every moving disc against every still one. */
export const pairs = (moving: readonly Disc[], still: readonly Disc[]) =>
  moving.flatMap((one) => still.map((other) => discToDisc(one, other)));

/** Least wall by trying every twentieth of a degree, then every thousandth about the best one, on plain coordinates. */
export function bruteForce(moving: readonly Disc[], still: readonly Disc[], box?: readonly [number, number]): number {
  const wallAt = (degrees: number, enough: number) => {
    const angle = (degrees * Math.PI) / 180;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    let wall = Infinity;
    for (const { at, radius } of moving) {
      const [x, y] = [c * at[0] - s * at[1], s * at[0] + c * at[1]];
      for (const other of still) {
        const [dx, dy] = [x - other.at[0], y - other.at[1]];
        wall = Math.min(wall, Math.sqrt(dx * dx + dy * dy) - radius - other.radius);
      }
      if (box) wall = Math.min(wall, box[0] / 2 - Math.abs(x) - radius, box[1] / 2 - Math.abs(y) - radius);
      if (wall <= enough) break;
    }
    return wall;
  };
  let best = { degrees: 0, wall: -Infinity };
  const consider = (degrees: number) => {
    const wall = wallAt(degrees, best.wall);
    if (wall > best.wall) best = { degrees, wall };
  };
  for (let i = 0; i < 7200; i++) consider(i / 20);
  const { degrees } = best;
  for (let i = -50; i <= 50; i++) consider(degrees + i / 1000);
  return best.wall;
}

const circlePattern = fc
  .record({
    count: fc.integer({ min: 1, max: 8 }),
    circle: fc.double({ min: 12, max: 50, noNaN: true }),
    start: fc.double({ min: 0, max: 360, noNaN: true }),
    radius: fc.double({ min: 1, max: 5, noNaN: true }),
  })
  .map(({ count, circle, start, radius }) => ring(count, circle, start, radius));
const freePattern = fc.array(
  fc.record({
    at: fc.tuple(fc.double({ min: -25, max: 25, noNaN: true }), fc.double({ min: -25, max: 25, noNaN: true })),
    radius: fc.double({ min: 1, max: 5, noNaN: true }),
  }),
  { minLength: 1, maxLength: 6 },
);
/** A pattern of holes. */
export const pattern = fc.oneof(circlePattern, freePattern);

/** By how much the wall of the solver is less than that of brute force at worst, over random pairs of patterns, mm. */
export function worstClocking(runs: number): number {
  const random = fc.sample(fc.tuple(pattern, pattern), { numRuns: runs, seed: 20_261 });
  return Math.max(
    ...random.map(([moving, still]) => {
      const { wall } = solveClocking({ walls: pairs(moving, still), room: [] });
      return bruteForce(moving, still) - wall;
    }),
  );
}
