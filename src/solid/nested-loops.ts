import { outlineBounds } from './convex.js';
import { type Outline, polygonArea } from './outline.js';

/** Loops nearer to one another than this count as touching, mm. */
const APART = 1e-3;

/** A loop with what is asked of it again and again. */
interface Placed {
  /** four numbers a side: where it begins and ends */
  readonly sides: Float64Array;
  readonly area: number;
  readonly box: Box;
}

type Box = readonly [x0: number, y0: number, x1: number, y1: number];

/**
 * Finds which loop lies in which, where none crosses or touches another.
 *
 * @param loops  simple polygons  [mm]
 * @returns for each loop the number of the smallest one around it, −1 where there is none; undefined where two come nearer
 *   to one another than 0.001 mm
 * @example nestedLoops([square(4), square(2)]) // [-1, 0]
 */
export function nestedLoops(loops: readonly Outline[]): number[] | undefined {
  const placed = loops.map(placedLoop);
  const around = loops.map(() => -1);
  for (let i = 0; i < placed.length; i++) {
    for (let j = 0; j < i; j++) {
      const one = placed[i]!;
      const other = placed[j]!;
      if (isApart(one.box, other.box)) continue;
      if (meet(one, other)) return undefined;
      const outer = one.area > other.area ? i : j;
      const inner = i + j - outer;
      if (!holds(placed[outer]!.sides, placed[inner]!.sides)) continue;
      const known = around[inner]!;
      if (known < 0 || placed[outer]!.area < placed[known]!.area) around[inner] = outer;
    }
  }
  return around;
}

function placedLoop(loop: Outline): Placed {
  const sides = new Float64Array(4 * loop.length);
  for (let i = 0; i < loop.length; i++) {
    const from = loop[i]!;
    const to = loop[i + 1 === loop.length ? 0 : i + 1]!;
    sides[4 * i] = from[0];
    sides[4 * i + 1] = from[1];
    sides[4 * i + 2] = to[0];
    sides[4 * i + 3] = to[1];
  }
  const { min, max } = outlineBounds(loop);
  return { sides, area: Math.abs(polygonArea(loop)), box: [...min, ...max] };
}

function isApart(a: Box, b: Box): boolean {
  return a[0] > b[2] + APART || b[0] > a[2] + APART || a[1] > b[3] + APART || b[1] > a[3] + APART;
}

function meet(one: Placed, other: Placed): boolean {
  const mine = sidesNear(one.sides, other.box);
  if (mine.length === 0) return false;
  const its = sidesNear(other.sides, one.box);
  for (let i = 0; i < mine.length; i += 4) {
    for (let j = 0; j < its.length; j += 4) if (sidesMeet(mine, i, its, j)) return true;
  }
  return false;
}

/** Those sides whose boxes come near a box. */
function sidesNear(s: Float64Array, box: Box): Float64Array {
  const near = new Float64Array(s.length);
  let count = 0;
  for (let i = 0; i < s.length; i += 4) {
    if (Math.min(s[i]!, s[i + 2]!) > box[2] + APART || Math.max(s[i]!, s[i + 2]!) < box[0] - APART) continue;
    if (Math.min(s[i + 1]!, s[i + 3]!) > box[3] + APART || Math.max(s[i + 1]!, s[i + 3]!) < box[1] - APART) continue;
    for (let k = 0; k < 4; k++) near[count++] = s[i + k]!;
  }
  return near.subarray(0, count);
}

/** Whether two sides cross, or come nearer than what counts as apart. */
function sidesMeet(a: Float64Array, i: number, b: Float64Array, j: number): boolean {
  for (let k = 0; k < 2; k++) {
    if (Math.min(a[i + k]!, a[i + k + 2]!) > Math.max(b[j + k]!, b[j + k + 2]!) + APART) return false;
    if (Math.min(b[j + k]!, b[j + k + 2]!) > Math.max(a[i + k]!, a[i + k + 2]!) + APART) return false;
  }
  if (isParted(a, i, b, j) && isParted(b, j, a, i)) return true;
  return endsNear(a, i, b, j) || endsNear(b, j, a, i);
}

/** Whether the ends of the second side lie on either side of the first. */
function isParted(a: Float64Array, i: number, b: Float64Array, j: number): boolean {
  return isLeft(a, i, b[j]!, b[j + 1]!) !== isLeft(a, i, b[j + 2]!, b[j + 3]!);
}

function isLeft(s: Float64Array, i: number, x: number, y: number): boolean {
  return (s[i + 2]! - s[i]!) * (y - s[i + 1]!) - (s[i + 3]! - s[i + 1]!) * (x - s[i]!) > 0;
}

function endsNear(a: Float64Array, i: number, b: Float64Array, j: number): boolean {
  return isNear(a[i]!, a[i + 1]!, b, j) || isNear(a[i + 2]!, a[i + 3]!, b, j);
}

function isNear(x: number, y: number, s: Float64Array, i: number): boolean {
  const u = s[i + 2]! - s[i]!;
  const v = s[i + 3]! - s[i + 1]!;
  const square = u * u + v * v;
  const along = (x - s[i]!) * u + (y - s[i + 1]!) * v;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, along / square));
  const dx = x - s[i]! - share * u;
  const dy = y - s[i + 1]! - share * v;
  return dx * dx + dy * dy < APART * APART;
}

/** Whether a loop lies around the first corner of another. */
function holds(s: Float64Array, other: Float64Array): boolean {
  const x = other[0]!;
  const y = other[1]!;
  let isIn = false;
  for (let i = 0; i < s.length; i += 4) {
    const y0 = s[i + 1]!;
    const y1 = s[i + 3]!;
    if (y0 > y !== y1 > y && x < s[i]! + ((s[i + 2]! - s[i]!) * (y - y0)) / (y1 - y0)) isIn = !isIn;
  }
  return isIn;
}
