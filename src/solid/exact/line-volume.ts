import { placementMatrix } from '../mesh.js';
import type { ThreadSweep } from '../thread-sweep.js';
import type { Loop, Piece, Point } from './meant-outline.js';
import type { ContourPiece, MeantLeaf, MeantShape } from './meant-shape.js';

/** What a body holds, as lines along Z find it. */
export interface LineMeasures {
  /** mm³ */
  readonly volume: number;
  /** mm */
  readonly center: readonly [number, number, number];
}

/** Stretches of a line, [from, to] in turn, rising and apart. */
type Spans = readonly number[];

/** A curve of the plan across which what a line meets may change. */
type Mark =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'circle'; readonly center: Point; readonly radius: number };

/** What lines along Z meet over one y of the plan; undefined where none meets anything. */
type Row = ((x: number) => Spans) | undefined;

/** What a line along Z over a place of the plan meets, row by row. */
interface Probe {
  readonly row: (y: number) => Row;
  readonly marks: readonly Mark[];
}

const NONE: Spans = [];

/**
 * Volume and centre of a meant shape by integrals over lines along Z. It shares nothing with a kernel, so that the two
 * check each other.
 *
 *     V = ∫∫ L(x, y) dx dy,  z̄·V = ∫∫ ∫ z dz dx dy
 *
 * with L the length of the line at (x, y) inside the shape, exact for prisms, cones, tori and helicoids. In x and y it is
 * Gauss's rule between the curves of the plan at which L may jump, each stretch mapped by a cosine, which takes the
 * roots off the ends, and halved where it bends.
 *
 * @param shape  the shape; turned bodies and threads stand upright                       [mm]
 * @param step   longest way between two lines across the plan                             [mm]
 * @returns V and the centre; within 1e-6 of V at a hundredth of the shape                 [mm³, mm]
 * @throws TypeError  a turned body or a thread lies
 * @source geometry: Cavalieri's principle, Gauss–Legendre rule
 */
export function lineVolume(shape: MeantShape, step: number): LineMeasures {
  const { marks, row } = probeOf(shape, IDENTITY, planesOf(shape, IDENTITY));
  const total = [0, 0, 0, 0];
  alongStretches(yBreaks(marks), step, (y, dy) => {
    const spans = row(y);
    if (!spans) return;
    const line: Line = (x) => lengthsOf(spans(x), x);
    const breaks = xBreaks(marks, y);
    for (let i = 1; i < breaks.length; i++) {
      const [low, high] = [breaks[i - 1]!, breaks[i]!];
      if (high - low < NOTHING) continue;
      const stretch: Stretch = { line, middle: (low + high) / 2, half: (high - low) / 2 };
      const [volume, moment, mz] = refined(stretch, 0, Math.PI, ruleOver(stretch, 0, Math.PI), DEEPEST);
      total[0]! += volume * dy;
      total[1]! += moment * dy;
      total[2]! += y * volume * dy;
      total[3]! += mz * dy;
    }
  });
  const [volume, mx, my, mz] = total as [number, number, number, number];
  return { volume, center: [mx / volume, my / volume, mz / volume] };
}

/** Length of a line inside the shape, the same times x, and its moment about z = 0, by x. */
type Line = (x: number) => Sums;
type Sums = readonly [length: number, timesX: number, moment: number];

/** A stretch of x between two marks; x = middle − half·cos φ. */
interface Stretch {
  readonly line: Line;
  readonly middle: number;
  readonly half: number;
}

function lengthsOf(spans: Spans, x: number): Sums {
  let [length, moment] = [0, 0];
  for (let i = 0; i < spans.length; i += 2) {
    const [low, high] = [spans[i]!, spans[i + 1]!];
    length += high - low;
    moment += (high * high - low * low) / 2;
  }
  return [length, length * x, moment];
}

/** Halvings of a stretch where surfaces cross, which no mark of the plan tells. */
const DEEPEST = 7;
/** How far two rules may differ, of what they find or of a millimetre's height. */
const CLOSE = 2e-6;

function refined(stretch: Stretch, from: number, to: number, coarse: Sums, depth: number): Sums {
  const middle = (from + to) / 2;
  const [low, high] = [ruleOver(stretch, from, middle), ruleOver(stretch, middle, to)];
  const fine = added(low, high);
  const width = stretch.half * (Math.cos(from) - Math.cos(to));
  if (depth === 0 || Math.abs(fine[0] - coarse[0]) <= CLOSE * Math.max(fine[0], width)) return fine;
  return added(refined(stretch, from, middle, low, depth - 1), refined(stretch, middle, to, high, depth - 1));
}

function added(a: Sums, b: Sums): Sums {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

function ruleOver({ line, middle, half }: Stretch, from: number, to: number): Sums {
  let [length, timesX, moment] = [0, 0, 0];
  for (const [node, weight] of GAUSS) {
    const phi = (from + to + (to - from) * node) / 2;
    const dx = (half * Math.sin(phi) * weight * (to - from)) / 2;
    const [l, lx, lz] = line(middle - half * Math.cos(phi));
    length += l * dx;
    timesX += lx * dx;
    moment += lz * dx;
  }
  return [length, timesX, moment];
}

/** Nodes and weights of Gauss's rule with four points on −1 to 1. */
const GAUSS = [
  [-0.8611363115940526, 0.34785484513745385],
  [-0.33998104358485626, 0.6521451548625461],
  [0.33998104358485626, 0.6521451548625461],
  [0.8611363115940526, 0.34785484513745385],
] as const;
const GAUSS_TWO = [
  [-0.5773502691896257, 1],
  [0.5773502691896257, 1],
] as const;
/** Stretches below this are left out, mm. */
const NOTHING = 1e-9;

/** A place where what lines find may change; round where it may do so as a root does. */
interface Break {
  readonly at: number;
  readonly isRound: boolean;
}

/** Places and weights over all stretches between breaks, mapped alike where an end is round, in panels of four. */
function alongStretches(breaks: readonly Break[], step: number, visit: (at: number, weight: number) => void): void {
  for (let i = 1; i < breaks.length; i++) {
    const [low, high] = [breaks[i - 1]!, breaks[i]!];
    const width = high.at - low.at;
    const middle = (low.at + high.at) / 2;
    if (width < step && !low.isRound && !high.isRound) {
      for (const [node, weight] of width < step / 4 ? GAUSS_TWO : GAUSS)
        visit(middle + (width * node) / 2, (width * weight) / 2);
      continue;
    }
    // one panel alone is 1e-5 off on a constant
    const panels = Math.max(2, Math.ceil(width / (4 * step)));
    for (let panel = 0; panel < panels; panel++) {
      for (const [node, weight] of GAUSS) {
        const phi = (Math.PI * (panel + (1 + node) / 2)) / panels;
        visit(middle - (width / 2) * Math.cos(phi), (width * Math.sin(phi) * weight * Math.PI) / (4 * panels));
      }
    }
  }
}

function yBreaks(marks: readonly Mark[]): Break[] {
  const all = marks.flatMap((mark): Break[] =>
    mark.kind === 'line'
      ? [mark.from[1], mark.to[1]].map((at) => ({ at, isRound: false }))
      : [-1, 1].map((side) => ({ at: mark.center[1] + side * mark.radius, isRound: true })),
  );
  const distinct: Break[] = [];
  for (const { at, isRound } of all.sort((a, b) => a.at - b.at)) {
    const last = distinct.at(-1);
    if (last && at - last.at < NOTHING)
      distinct[distinct.length - 1] = { at: last.at, isRound: isRound || last.isRound };
    else distinct.push({ at, isRound });
  }
  return distinct;
}

function xBreaks(marks: readonly Mark[], y: number): number[] {
  const found: number[] = [];
  for (const mark of marks) {
    if (mark.kind === 'circle') {
      const square = mark.radius ** 2 - (y - mark.center[1]) ** 2;
      if (square <= 0) continue;
      const half = Math.sqrt(square);
      found.push(mark.center[0] - half, mark.center[0] + half);
      continue;
    }
    const [[x0, y0], [x1, y1]] = [mark.from, mark.to];
    if (y0 > y !== y1 > y) found.push(x0 + ((y - y0) / (y1 - y0)) * (x1 - x0));
  }
  return sorted(found);
}

function sorted(values: number[]): number[] {
  return values.sort((a, b) => a - b);
}

/** Row by row, as of a placement. */
type Matrix = readonly number[];
const IDENTITY: Matrix = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0];

function probeOf(shape: MeantShape, at: Matrix, planes: readonly number[]): Probe {
  switch (shape.kind) {
    case 'moved':
      return probeOf(shape.shape, product(at, placementMatrix(shape)), planes);
    case 'union':
    case 'difference':
    case 'intersection': {
      const parts = shape.of.map((part) => probeOf(part, at, planes));
      const keep = KEEP[shape.kind];
      return {
        marks: parts.flatMap(({ marks }) => marks),
        row: (y) => {
          const rows = parts.map(({ row }) => row(y));
          if (!rows.some((one) => one)) return undefined;
          return (x) =>
            combined(
              rows.map((one) => one?.(x) ?? NONE),
              keep,
            );
        },
      };
    }
    case 'extrusion':
      return Math.abs(at[10]!) > 0.5 ? standing(shape, at, planes) : lying(shape, at);
    default:
      return standing(shape, at, planes);
  }
}

/** Heights at which a shape has flat faces, or edges all around. */
function planesOf(shape: MeantShape, at: Matrix): number[] {
  if (shape.kind === 'moved') return planesOf(shape.shape, product(at, placementMatrix(shape)));
  if ('of' in shape) return [...new Set(shape.of.flatMap((part) => planesOf(part, at)))];
  if (Math.abs(at[10]!) < 0.5) return [];
  const own =
    'contour' in shape
      ? shape.contour.flatMap(({ from, to }) => [from[1], to[1]])
      : shape.kind === 'thread'
        ? [shape.thread.from, shape.thread.to]
        : [shape.from, shape.to];
  return own.map((z) => at[10]! * z + at[11]!);
}

/** Radii or offsets of a contour at its own corners and at heights. */
function reachesAt(contour: readonly ContourPiece[], heights: readonly number[]): number[] {
  const all = contour.flatMap(({ from, to, center }) => {
    const between = heights.filter((z) => z > from[1] && z < to[1]);
    const reach = (z: number) => {
      if (!center) return from[0] + ((z - from[1]) / (to[1] - from[1])) * (to[0] - from[0]);
      const radius = Math.hypot(from[0] - center[0], from[1] - center[1]);
      const half = Math.sqrt(Math.max(0, radius ** 2 - (z - center[1]) ** 2));
      return center[0] + Math.sign((from[0] + to[0]) / 2 - center[0]) * half;
    };
    return [from[0], to[0], ...between.map(reach)];
  });
  return [...new Set(all)];
}

type Keep = (inside: readonly boolean[]) => boolean;
const KEEP: Record<'union' | 'difference' | 'intersection', Keep> = {
  union: (inside) => inside.includes(true),
  difference: ([first, ...others]) => first === true && !others.includes(true),
  intersection: (inside) => !inside.includes(false),
};

/** Stretches where the rule holds, over all ends in turn. */
function combined(all: readonly Spans[], keep: Keep): Spans {
  if (all.every((spans) => spans.length === 0)) return NONE;
  const ends = all.flatMap((spans, part) => spans.map((z) => ({ z, part })));
  ends.sort((a, b) => a.z - b.z);
  const inside = all.map(() => false);
  const kept: number[] = [];
  let was = false;
  for (const { z, part } of ends) {
    inside[part] = !inside[part];
    const is = keep(inside);
    if (is !== was) kept.push(z);
    was = is;
  }
  return kept;
}

/** A leaf whose own axis is the line's, upwards or downwards. */
function standing(leaf: MeantLeaf, at: Matrix, planes: readonly number[]): Probe {
  if (Math.abs(Math.abs(at[10]!) - 1) > 1e-9) throw new TypeError(`a lying ${leaf.kind} cannot be measured by lines`);
  const heights = planes.map((z) => at[10]! * (z - at[11]!));
  const own = ownProbe(leaf, heights);
  const [xx, xy, x0, yx, yy, y0] = [at[0]!, at[1]!, at[3]!, at[4]!, at[5]!, at[7]!];
  const [up, z0] = [Math.sign(at[10]!), at[11]!];
  const out = ([x, y]: Point): Point => [xx * x + xy * y + x0, yx * x + yy * y + y0];
  const marks = own.marks.map(
    (mark): Mark =>
      mark.kind === 'line'
        ? { kind: 'line', from: out(mark.from), to: out(mark.to) }
        : { kind: 'circle', center: out(mark.center), radius: mark.radius },
  );
  const reach = reachOfMarks(marks);
  const placed = (spans: Spans): Spans =>
    up > 0 ? (z0 === 0 ? spans : spans.map((z) => z + z0)) : spans.map((z) => z0 - z).reverse();
  return {
    marks,
    row: (y) => {
      if (y < reach.least || y > reach.most) return undefined;
      const dy = y - y0;
      // an own axis along the plan's keeps its rows
      if (xy === 0 && yx === 0) {
        const row = own.row(yy * dy);
        return row && ((x) => placed(row(xx * (x - x0))));
      }
      return (x) => placed(own.at(xx * (x - x0) + yx * dy, xy * (x - x0) + yy * dy));
    },
  };
}

function reachOfMarks(marks: readonly Mark[]): { readonly least: number; readonly most: number } {
  const ys = yBreaks(marks).map(({ at }) => at);
  return { least: ys[0] ?? 0, most: ys.at(-1) ?? 0 };
}

/** A leaf about its own axis, place by place and row by row. */
interface OwnProbe {
  readonly at: (x: number, y: number) => Spans;
  readonly row: (y: number) => Row;
  readonly marks: readonly Mark[];
}

function ownProbe(leaf: MeantLeaf, heights: readonly number[]): OwnProbe {
  switch (leaf.kind) {
    case 'extrusion': {
      const loops = leaf.regions.flatMap(({ outer, holes }) => [outer, ...holes]);
      const both: Spans = [leaf.from, leaf.to];
      const row = (y: number): Row => {
        const ends = sorted(loops.flatMap((loop) => crossings(loop, 0, y, 1, 0)));
        return ends.length === 0 ? undefined : (x) => (ends.filter((end) => end > x).length % 2 === 1 ? both : NONE);
      };
      return { marks: loops.flatMap(marksOf), row, at: (x, y) => row(y)?.(x) ?? NONE };
    }
    case 'revolution':
      return pointwise(reachesAt(leaf.contour, heights).map(circleMark), (x, y) =>
        upTo(leaf.contour, Math.hypot(x, y)),
      );
    case 'loft': {
      const reach = reachOf(leaf);
      return pointwise(loftMarks(leaf, reachesAt(leaf.contour, heights)), (x, y) => upTo(leaf.contour, reach(x, y)));
    }
    case 'thread':
      return pointwise(
        leaf.thread.ridge.map(([, radius]) => circleMark(radius)),
        (x, y) => threadSpans(leaf.thread, x, y),
      );
  }
}

function pointwise(marks: readonly Mark[], at: OwnProbe['at']): OwnProbe {
  return { marks, at, row: (y) => (x) => at(x, y) };
}

function circleMark(radius: number): Mark {
  return { kind: 'circle', center: [0, 0], radius };
}

function marksOf(loop: Loop): Mark[] {
  if (loop.kind === 'circle') return [loop];
  return loop.pieces.flatMap((piece): Mark[] => [
    { kind: 'line', from: piece.from, to: piece.to },
    ...(piece.kind === 'arc' ? [{ kind: 'circle', center: piece.center, radius: piece.radius } as const] : []),
  ]);
}

/** Heights at which a contour that rises along its outside reaches past a radius or an offset. */
function upTo(contour: readonly ContourPiece[], reach: number): Spans {
  const ends: number[] = [];
  const [first, last] = [contour[0]!, contour.at(-1)!];
  if (first.from[0] > reach) ends.push(first.from[1]);
  for (const { from, to, center } of contour) {
    if (from[0] > reach === to[0] > reach) continue;
    if (!center) {
      ends.push(from[1] + ((reach - from[0]) / (to[0] - from[0])) * (to[1] - from[1]));
      continue;
    }
    const radius = Math.hypot(from[0] - center[0], from[1] - center[1]);
    const half = Math.sqrt(Math.max(0, radius ** 2 - (reach - center[0]) ** 2));
    const isUnder = (from[1] + to[1]) / 2 < center[1];
    ends.push(center[1] + (isUnder ? -half : half));
  }
  if (last.to[0] > reach) ends.push(last.to[1]);
  return ends.sort((a, b) => a - b);
}

type MeantLoft = Extract<MeantLeaf, { kind: 'loft' }>;

/** How far out the sides must be moved to reach a place. */
function reachOf({ outline, circle }: MeantLoft): (x: number, y: number) => number {
  const sides = outline.map((piece) => {
    const [dx, dy] = [piece.to[0] - piece.from[0], piece.to[1] - piece.from[1]];
    const length = Math.hypot(dx, dy);
    return { piece, a: dy / length, b: -dx / length };
  });
  return (x, y) => {
    let most = circle
      ? Math.hypot(x - circle.center[0], y - circle.center[1]) - circle.radius
      : Number.NEGATIVE_INFINITY;
    for (const { piece, a, b } of sides) {
      if (piece.kind === 'line') most = Math.max(most, a * (x - piece.from[0]) + b * (y - piece.from[1]));
      else if (!circle && inSector(piece, x, y))
        most = Math.max(most, Math.hypot(x - piece.center[0], y - piece.center[1]) - piece.radius);
    }
    return most;
  };
}

function inSector({ from, to, center }: Extract<Piece, { kind: 'arc' }>, x: number, y: number): boolean {
  const [dx, dy] = [x - center[0], y - center[1]];
  const after = (from[0] - center[0]) * dy - (from[1] - center[1]) * dx >= 0;
  const before = dx * (to[1] - center[1]) - dy * (to[0] - center[0]) >= 0;
  const turn = (from[0] - center[0]) * (to[1] - center[1]) - (from[1] - center[1]) * (to[0] - center[0]);
  return turn >= 0 ? after && before : after || before;
}

/** The outline at every level of its contour, each side carried on to the corners of the widest. */
function loftMarks({ outline, circle }: MeantLoft, offsets: readonly number[]): Mark[] {
  const most = Math.max(0, ...offsets);
  return offsets.flatMap((offset) =>
    outline.flatMap((piece): Mark[] => {
      if (piece.kind === 'arc') {
        const { center, radius } = circle ?? piece;
        return [{ kind: 'circle', center, radius: radius + offset }];
      }
      const [dx, dy] = [piece.to[0] - piece.from[0], piece.to[1] - piece.from[1]];
      const length = Math.hypot(dx, dy);
      const [ux, uy] = [dx / length, dy / length];
      const [along, out] = [2 * (most - Math.min(0, ...offsets)), offset];
      const end = ([x, y]: Point, by: number): Point => [x + out * uy + by * ux, y - out * ux + by * uy];
      return [{ kind: 'line', from: end(piece.from, -along), to: end(piece.to, along) }];
    }),
  );
}

/** Heights at which the metal of a swept thread stands over a place. */
function threadSpans({ ridge, pitch, starts, hand, from, to }: ThreadSweep, x: number, y: number): Spans {
  const radius = Math.hypot(x, y);
  const turn = (hand === 'left' ? -1 : 1) * Math.atan2(y, x);
  const lift = (pitch * starts * turn) / (2 * Math.PI);
  const own: number[] = [];
  for (const [i, [z, r]] of ridge.entries()) {
    const [next, nextR] = ridge[i + 1] ?? [ridge[0]![0] + pitch, ridge[0]![1]];
    if (r > radius !== nextR > radius) own.push(z + ((radius - r) / (nextR - r)) * (next - z));
  }
  if (own.length === 0) return ridge[0]![1] > radius ? [from, to] : NONE;
  const isInside = ridge[0]![1] > radius;
  const low = Math.floor((from - lift) / pitch) - 1;
  const high = Math.ceil((to - lift) / pitch) + 1;
  const ends: number[] = isInside ? [low * pitch + lift + ridge[0]![0]] : [];
  for (let k = low; k < high; k++) for (const z of own) ends.push(k * pitch + z + lift);
  if (ends.length % 2 === 1) ends.push(high * pitch + lift + ridge[0]![0]);
  const spans: number[] = [];
  for (let i = 0; i < ends.length; i += 2) {
    const [a, b] = [Math.max(from, ends[i]!), Math.min(to, ends[i + 1]!)];
    if (b > a) spans.push(a, b);
  }
  return spans;
}

/** A prism that lies: a line crosses its outlines between its ends. */
function lying({ regions, from, to }: Extract<MeantLeaf, { kind: 'extrusion' }>, at: Matrix): Probe {
  if (Math.abs(at[10]!) > 1e-9) throw new TypeError('a leaning prism cannot be measured by lines');
  const loops = regions.flatMap(({ outer, holes }) => [outer, ...holes]);
  // own coordinates of a line along Z: own = Mᵀ·(p − p0), of which the first two move with z
  const [ux, uy] = [at[8]!, at[9]!];
  const own = (x: number, y: number, z: number, i: 0 | 1 | 2) =>
    at[i]! * (x - at[3]!) + at[4 + i]! * (y - at[7]!) + at[8 + i]! * (z - at[11]!);
  const plan = (a: number, b: number, c: number): Point => [
    at[0]! * a + at[1]! * b + at[2]! * c + at[3]!,
    at[4]! * a + at[5]! * b + at[6]! * c + at[7]!,
  ];
  const corners = loops.flatMap((loop) =>
    loop.kind === 'circle'
      ? silhouettes(loop.center, loop.radius, ux, uy)
      : loop.pieces.flatMap((piece) => edgesOf(piece, ux, uy)),
  );
  const across = corners.map(([a, b]) => a * -uy + b * ux);
  const [least, most] = [Math.min(...across), Math.max(...across)];
  const ends = [from, to].map(
    (c): Mark => ({
      kind: 'line',
      from: plan(-uy * least, ux * least, c),
      to: plan(-uy * most, ux * most, c),
    }),
  );
  const sides = across.map(
    (s): Mark => ({ kind: 'line', from: plan(-uy * s, ux * s, from), to: plan(-uy * s, ux * s, to) }),
  );
  const marks = [...ends, ...sides];
  const reach = reachOfMarks(marks);
  return {
    marks,
    row: (y) =>
      y < reach.least || y > reach.most
        ? undefined
        : (x) => {
            const c = own(x, y, 0, 2);
            if (c <= from || c >= to) return NONE;
            return sorted(loops.flatMap((loop) => crossings(loop, own(x, y, 0, 0), own(x, y, 0, 1), ux, uy)));
          },
  };
}

/** Places of a circle where its own tangent runs along a direction. */
function silhouettes([a, b]: Point, radius: number, ux: number, uy: number): Point[] {
  return [
    [a - radius * uy, b + radius * ux],
    [a + radius * uy, b - radius * ux],
  ];
}

function edgesOf(piece: Piece, ux: number, uy: number): Point[] {
  return piece.kind === 'line' ? [piece.from] : [piece.from, ...silhouettes(piece.center, piece.radius, ux, uy)];
}

/** How far along a direction from a point a loop is crossed. */
function crossings(loop: Loop, a: number, b: number, ux: number, uy: number): number[] {
  if (loop.kind === 'circle') return circleCrossings(loop.center, loop.radius, a, b, ux, uy);
  return loop.pieces.flatMap((piece) => {
    const side = ([p, q]: Point) => (p - a) * -uy + (q - b) * ux;
    const [s0, s1] = [side(piece.from), side(piece.to)];
    const found: number[] = [];
    if (piece.kind === 'line') {
      if (s0 > 0 !== s1 > 0) {
        const share = s0 / (s0 - s1);
        const [p, q] = [0, 1].map((i) => piece.from[i]! + share * (piece.to[i]! - piece.from[i]!)) as [number, number];
        found.push((p - a) * ux + (q - b) * uy);
      }
      return found;
    }
    return circleCrossings(piece.center, piece.radius, a, b, ux, uy).filter((t) =>
      inSector(piece.outwards ? piece : { ...piece, from: piece.to, to: piece.from }, a + t * ux, b + t * uy),
    );
  });
}

function circleCrossings([p, q]: Point, radius: number, a: number, b: number, ux: number, uy: number): number[] {
  const off = (p - a) * -uy + (q - b) * ux;
  const square = radius * radius - off * off;
  if (square <= 0) return [];
  const [middle, half] = [(p - a) * ux + (q - b) * uy, Math.sqrt(square)];
  return [middle - half, middle + half];
}

/** The matrix of a move inside another. */
function product(a: Matrix, b: Matrix): Matrix {
  const row = (i: number) =>
    [0, 1, 2, 3].map((j) => {
      const own = j === 3 ? a[4 * i + 3]! : 0;
      return a[4 * i]! * b[j]! + a[4 * i + 1]! * b[4 + j]! + a[4 * i + 2]! * b[8 + j]! + own;
    });
  return [...row(0), ...row(1), ...row(2)];
}
