import type { Outline } from './outline.js';

/** Twice the area that a facet has at least, mm². */
const LEAST = 1e-8;
/** A whole turn in what stands for an angle. */
const TURN = 4;

/**
 * The flat ring between two loops, by going round both at once: a facet from the loop whose next corner comes first.
 * All facets face upwards, and they bound nothing but the ring, so none lies on another.
 *
 * @param outer  counter-clockwise                                        [mm]
 * @param inner  counter-clockwise, within the other                      [mm]
 * @returns facets over the corners of both, the inner ones counted on from the outer ones; undefined where a loop turns back
 *   as seen from the middle of the inner one, or a facet would turn over
 * @example flatRing(square(4), square(2)).length // 8
 */
export function flatRing(outer: Outline, inner: Outline): [number, number, number][] | undefined {
  const middle = middleOf(inner);
  const [outside, inside] = [anglesOf(outer, middle), anglesOf(inner, middle)];
  if (!outside || !inside) return undefined;
  const facets: [number, number, number][] = [];
  let [i, j] = [0, 0];
  while (i < outer.length || j < inner.length) {
    const [o, n] = [cornerAt(outside, i), cornerAt(inside, j)];
    const isOuter = j === inner.length || (i < outer.length && angleAt(outside, i + 1) <= angleAt(inside, j + 1));
    const next = isOuter ? cornerAt(outside, ++i) : cornerAt(inside, ++j);
    if (!leans(outer[o]!, (isOuter ? outer : inner)[next]!, inner[n]!)) return undefined;
    facets.push([o, isOuter ? next : outer.length + next, outer.length + n]);
  }
  return facets;
}

interface Angles {
  /** a corner each, rising from the least on */
  readonly angles: readonly number[];
  /** the corner with the least angle */
  readonly first: number;
}

function cornerAt({ angles, first }: Angles, i: number): number {
  return (first + i) % angles.length;
}

function angleAt({ angles, first }: Angles, i: number): number {
  return angles[(first + i) % angles.length]! + (i >= angles.length ? TURN : 0);
}

/** Angles of corners about a place, if they rise all the way round. */
function anglesOf(loop: Outline, [x0, y0]: readonly [number, number]): Angles | undefined {
  const angles = loop.map(([x, y]) => angleOf(x - x0, y - y0));
  let first = 0;
  for (let i = 1; i < angles.length; i++) if (angles[i]! < angles[first]!) first = i;
  const rises = angles.every(
    (_, i) => i === 0 || angles[(first + i) % angles.length]! > angles[(first + i - 1) % angles.length]!,
  );
  return rises ? { angles, first } : undefined;
}

/**
 * Rises with the angle, −2 to 2, by sums and a quotient alone: engines differ in the last bit of an arc tangent, which here
 * would choose another facet where two corners are in line.
 */
function angleOf(x: number, y: number): number {
  const size = 1 - x / (Math.abs(x) + Math.abs(y));
  return y < 0 ? -size : size;
}

function middleOf(loop: Outline): [number, number] {
  const sum = loop.reduce(([u, v], [x, y]): [number, number] => [u + x, v + y], [0, 0] as [number, number]);
  return [sum[0] / loop.length, sum[1] / loop.length];
}

function leans(a: readonly [number, number], b: readonly [number, number], c: readonly [number, number]): boolean {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > LEAST;
}
