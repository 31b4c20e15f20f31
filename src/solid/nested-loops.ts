import { outlineBounds } from './convex.js';
import { type Outline, polygonArea } from './outline.js';

/** Loops nearer to one another than this count as touching, mm. */
const APART = 1e-3;

interface Placed {
  readonly loop: Outline;
  readonly area: number;
  readonly box: Box;
}

type Box = readonly [x0: number, y0: number, x1: number, y1: number];
type Point = readonly [number, number];
type Side = readonly [x0: number, y0: number, x1: number, y1: number];

/**
 * Finds which loop lies in which, where none crosses or touches another.
 *
 * @param loops  simple polygons  [mm]
 * @returns for each loop the number of the smallest one around it, −1 where there is none; undefined where two come nearer
 *   to one another than 0.001 mm
 * @example nestedLoops([square(4), square(2)]) // [-1, 0]
 */
export function nestedLoops(loops: readonly Outline[]): number[] | undefined {
  const placed = loops.map((loop): Placed => {
    const { min, max } = outlineBounds(loop);
    return { loop, area: Math.abs(polygonArea(loop)), box: [...min, ...max] };
  });
  const around = loops.map(() => -1);
  for (let i = 0; i < placed.length; i++) {
    for (let j = 0; j < i; j++) {
      const [one, other] = [placed[i]!, placed[j]!];
      if (!overlap(one.box, other.box)) continue;
      if (meet(one, other)) return undefined;
      const [outer, inner] = one.area > other.area ? [i, j] : [j, i];
      if (!holds(placed[outer]!.loop, placed[inner]!.loop[0]!)) continue;
      const known = around[inner]!;
      if (known < 0 || placed[outer]!.area < placed[known]!.area) around[inner] = outer;
    }
  }
  return around;
}

/** Whether two boxes come nearer than what counts as apart. */
function overlap([a0, b0, a1, b1]: Box, [c0, d0, c1, d1]: Box): boolean {
  return a0 < c1 + APART && c0 < a1 + APART && b0 < d1 + APART && d0 < b1 + APART;
}

function meet(one: Placed, other: Placed): boolean {
  const mine = sidesWithin(one.loop, other.box);
  if (mine.length === 0) return false;
  const its = sidesWithin(other.loop, one.box);
  return mine.some((a) => its.some((b) => overlap(boxOf(a), boxOf(b)) && distance(a, b) < APART));
}

function sidesWithin(loop: Outline, box: Box): Side[] {
  const sides: Side[] = [];
  for (let i = 0; i < loop.length; i++) {
    const side: Side = [...loop[i]!, ...loop[(i + 1) % loop.length]!];
    if (overlap(boxOf(side), box)) sides.push(side);
  }
  return sides;
}

function boxOf([x0, y0, x1, y1]: Side): Box {
  return [Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1)];
}

/** Least distance of two sides, 0 where they cross. */
function distance(a: Side, b: Side): number {
  const [a0, a1]: Point[] = [
    [a[0], a[1]],
    [a[2], a[3]],
  ];
  const [b0, b1]: Point[] = [
    [b[0], b[1]],
    [b[2], b[3]],
  ];
  const crosses = leftOf(a, b0!) !== leftOf(a, b1!) && leftOf(b, a0!) !== leftOf(b, a1!);
  return crosses ? 0 : Math.min(toSide(a0!, b), toSide(a1!, b), toSide(b0!, a), toSide(b1!, a));
}

function leftOf([x0, y0, x1, y1]: Side, [x, y]: Point): boolean {
  return (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0) > 0;
}

function toSide([x, y]: Point, [x0, y0, x1, y1]: Side): number {
  const [u, v] = [x1 - x0, y1 - y0];
  const square = u * u + v * v;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - x0) * u + (y - y0) * v) / square));
  return Math.hypot(x - x0 - share * u, y - y0 - share * v);
}

/** Whether a point lies in a polygon. */
function holds(loop: Outline, [x, y]: Point): boolean {
  let isIn = false;
  for (let i = 0, j = loop.length - 1; i < loop.length; j = i++) {
    const [x0, y0] = loop[i]!;
    const [x1, y1] = loop[j]!;
    if (y0 > y !== y1 > y && x < x0 + ((x1 - x0) * (y - y0)) / (y1 - y0)) isIn = !isIn;
  }
  return isIn;
}
