import type { Point } from '../../part-views.js';

/** A closed loop of corners, in either sense. */
export type Loop = readonly Point[];

/** Corners nearer than this along either axis are one corner, mm. */
const TOGETHER = 1e-6;

interface Edge {
  readonly owner: number;
  readonly from: Point;
  readonly to: Point;
}

/** Where an area begins and ends across a strip: y at the strip's left and right edge. */
type Span = readonly [low: readonly [number, number], high: readonly [number, number]];

/**
 * Flat areas put together and others cut from them, such as the material of a section. Loops may touch, cross or share
 * sides. The plane is cut into strips at all corners and crossings; in each strip, areas are trapezia.
 *
 * @param added  loops, each an area of its own, joined                                     [mm]
 * @param cut    loops taken away from them                                                 [mm]
 * @returns loops of what is left, holes among them by the even-odd rule; none touches another  [mm]
 * @example flatArea([[[0, 0], [2, 0], [2, 2], [0, 2]]], [[[1, -1], [3, -1], [3, 3], [1, 3]]]) // [[[0, 0], [1, 0], [1, 2], [0, 2]]]
 */
export function flatArea(added: readonly Loop[], cut: readonly Loop[] = []): Point[][] {
  const loops = [...added, ...cut].filter((loop) => loop.length > 2);
  const count = added.filter((loop) => loop.length > 2).length;
  const edges = loops.flatMap((loop, owner) => edgesOf(loop, owner));
  const places = distinct([...loops.flat().map(([x]) => x), ...crossings(edges)]);
  const strips = places.slice(1).map((right, i) => spansIn(edges, [places[i]!, right], count));
  return chained(boundary(places, strips));
}

/** Edges that run along, each from left to right. */
function edgesOf(loop: Loop, owner: number): Edge[] {
  return sides(loop).flatMap(([a, b]): Edge[] => {
    if (Math.abs(a[0] - b[0]) <= TOGETHER) return [];
    return [a[0] < b[0] ? { owner, from: a, to: b } : { owner, from: b, to: a }];
  });
}

function sides(loop: Loop): [Point, Point][] {
  return loop.map((point, i) => [point, loop[(i + 1) % loop.length]!]);
}

/** Values in order, those that are one left out. */
function distinct(values: readonly number[]): number[] {
  const rising = [...values].sort((a, b) => a - b);
  return rising.filter((value, i) => i === 0 || value - rising[i - 1]! > TOGETHER);
}

function crossings(edges: readonly Edge[]): number[] {
  const found: number[] = [];
  const rising = [...edges].sort((a, b) => a.from[0] - b.from[0]);
  for (const [i, a] of rising.entries()) {
    for (let k = i + 1; k < rising.length && rising[k]!.from[0] < a.to[0]; k++) {
      const b = rising[k]!;
      const from = b.from[0];
      const to = Math.min(a.to[0], b.to[0]);
      const start = yAt(a, from) - yAt(b, from);
      const end = yAt(a, to) - yAt(b, to);
      if (start * end < 0) found.push(from + ((to - from) * start) / (start - end));
    }
  }
  return found;
}

function yAt({ from, to }: Edge, x: number): number {
  return from[1] + ((to[1] - from[1]) * (x - from[0])) / (to[0] - from[0]);
}

/** The areas that are left in a strip, from below. */
function spansIn(edges: readonly Edge[], [left, right]: readonly [number, number], count: number): Span[] {
  const middle = (left + right) / 2;
  const rising = edges
    .filter(({ from, to }) => from[0] < middle && to[0] > middle)
    .map((edge) => ({ edge, y: yAt(edge, middle) }))
    .sort((a, b) => a.y - b.y);
  const inside = new Set<number>();
  const spans: Span[] = [];
  let start: Edge | undefined;
  for (const { edge } of rising) {
    if (!inside.delete(edge.owner)) inside.add(edge.owner);
    const kept = inside.size > 0 && [...inside].every((owner) => owner < count);
    if (kept && !start) start = edge;
    if (!kept && start) {
      const ends = [start, edge].map((one) => [yAt(one, left), yAt(one, right)] as const);
      if (Math.max(ends[1]![0] - ends[0]![0], ends[1]![1] - ends[0]![1]) > TOGETHER) spans.push([ends[0]!, ends[1]!]);
      start = undefined;
    }
  }
  return spans;
}

/** A corner by its place and the rank of its height there. */
interface Corner {
  readonly key: string;
  readonly at: Point;
}
type Piece = readonly [from: Corner, to: Corner];

/** Directed pieces of the outline, material on their left. */
function boundary(places: readonly number[], strips: readonly (readonly Span[])[]): Piece[] {
  const heights = places.map((_, i) =>
    distinct([
      ...(strips[i - 1] ?? []).flatMap(([low, high]) => [low[1], high[1]]),
      ...(strips[i] ?? []).flatMap(([low, high]) => [low[0], high[0]]),
    ]),
  );
  const corner = (i: number, y: number): Corner => {
    const rank = heights[i]!.findLastIndex((height) => height <= y + TOGETHER / 2);
    return { key: `${i}/${rank}`, at: [places[i]!, heights[i]![rank]!] };
  };
  const lying = strips.flatMap((spans, i) =>
    spans.flatMap(([low, high]): Piece[] => [
      [corner(i, low[0]), corner(i + 1, low[1])],
      [corner(i + 1, high[1]), corner(i, high[0])],
    ]),
  );
  const standing = places.flatMap((_, i) =>
    heights[i]!.slice(1).flatMap((top, k): Piece[] => {
      const middle = (heights[i]![k]! + top) / 2;
      const isIn = (spans: readonly Span[] | undefined, side: 0 | 1) =>
        (spans ?? []).some(([low, high]) => low[side] < middle && middle < high[side]);
      const [before, after] = [isIn(strips[i - 1], 1), isIn(strips[i], 0)];
      if (before === after) return [];
      const [foot, head] = [corner(i, heights[i]![k]!), corner(i, top)];
      return [before ? [foot, head] : [head, foot]];
    }),
  );
  return [...lying, ...standing].filter(([from, to]) => from.key !== to.key);
}

/** Pieces joined end to start into loops, corners on a straight side left out. */
function chained(pieces: readonly Piece[]): Point[][] {
  const next = new Map<string, Piece[]>();
  for (const piece of pieces) next.set(piece[0].key, [...(next.get(piece[0].key) ?? []), piece]);
  const found: Point[][] = [];
  for (const first of next.keys()) {
    while ((next.get(first) ?? []).length > 0) {
      const loop: Point[] = [];
      for (let piece = next.get(first)!.pop(); piece; piece = next.get(piece[1].key)?.pop()) {
        loop.push(piece[0].at);
        if (piece[1].key === first) break;
      }
      const kept = turning(loop);
      if (kept.length > 2) found.push(kept);
    }
  }
  return found;
}

function turning(loop: readonly Point[]): Point[] {
  return loop.filter((point, i) => {
    const before = loop.at(i - 1)!;
    const after = loop[(i + 1) % loop.length]!;
    const ux = point[0] - before[0];
    const uy = point[1] - before[1];
    const vx = after[0] - point[0];
    const vy = after[1] - point[1];
    return Math.abs(ux * vy - uy * vx) > 1e-9 * Math.max(1, Math.hypot(ux, uy) * Math.hypot(vx, vy));
  });
}
