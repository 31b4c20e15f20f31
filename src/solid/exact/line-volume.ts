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

/**
 * A curve of the plan across which what a line meets may change. Where `isRoot`, it may do so as a root does: beside a
 * fillet or a lying cylinder.
 */
type Mark =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point; readonly isRoot?: boolean }
  | { readonly kind: 'circle'; readonly center: Point; readonly radius: number; readonly isRoot?: boolean };

/** What lines along Z meet over one y of the plan, from one x to another. */
interface Row {
  readonly from: number;
  readonly to: number;
  readonly at: (x: number) => Spans;
}

/** What a line along Z over a place of the plan meets, row by row; undefined where none meets anything. */
interface Probe {
  readonly row: (y: number) => Row | undefined;
  readonly marks: readonly Mark[];
}

const NONE: Spans = [];

/**
 * Volume and centre of a meant shape by integrals over lines along Z. It shares nothing with a kernel, so that the two
 * check each other.
 *
 *     V = ∫∫ L(x, y) dx dy,  z̄·V = ∫∫ ∫ z dz dx dy
 *
 * with L the length of the line at (x, y) inside the shape, exact for prisms, cones, tori and helicoids. In x and y it
 * is Kronrod's rule between the curves of the plan at which L may jump, a stretch that ends in a root mapped by a
 * cosine. In x each stretch is halved where the rule and Gauss's within it differ; in y always the one where they
 * differ most, until the differences together are small enough.
 *
 * @param shape   the shape; turned bodies and threads stand upright                      [mm]
 * @param within  what the differences in y may come to, of V, default 3e-6                [-]
 * @returns V and the centre                                                               [mm³, mm]
 * @throws TypeError  a turned body or a thread lies
 * @source geometry: Cavalieri's principle, Gauss–Kronrod rule of 3 and 7 points
 */
export function lineVolume(shape: MeantShape, within = 3e-6): LineMeasures {
  const { marks, row } = probeOf(shape, IDENTITY, planesOf(shape, IDENTITY));
  const at = (y: number): Sums => {
    const found = row(y);
    return found ? rowSums(found, y, xBreaks(marks, y)) : ZERO;
  };
  const panels = panelsBetween(yBreaks(marks)).map((panel) => ruled(panel, at));
  for (let left = MOST_PANELS; left > 0; left--) {
    const off = panels.reduce((sum, { off }) => sum + off, 0);
    if (off <= within * panels.reduce((sum, { sums }) => sum + sums[0], 0)) break;
    const worst = panels.reduce((most, { off }, i) => (off > panels[most]!.off ? i : most), 0);
    const [{ panel }] = panels.splice(worst, 1) as [Ruled];
    const middle = (panel.from + panel.to) / 2;
    panels.push(ruled({ ...panel, to: middle }, at), ruled({ ...panel, from: middle }, at));
  }
  const [volume, mx, my, mz] = panels.reduce<Sums>((sum, { sums }) => added(sum, sums, 1), ZERO);
  return { volume, center: [mx / volume, my / volume, mz / volume] };
}

/** Length inside the shape, and its moments about x, y and z = 0. */
type Sums = readonly [length: number, x: number, y: number, z: number];
const ZERO: Sums = [0, 0, 0, 0];
/** Halvings in y, at most. */
const MOST_PANELS = 4000;

/** A stretch of y or x: as it is, or as middle − half·cos φ where an end of it is a root. */
interface Panel {
  readonly middle: number;
  readonly half: number;
  readonly isRoot: boolean;
  /** within −1 to 1, or φ within 0 to π */
  readonly from: number;
  readonly to: number;
}

function panelOver(low: number, high: number, isRoot: boolean): Panel {
  const [from, to] = isRoot ? [0, Math.PI] : [-1, 1];
  return { middle: (low + high) / 2, half: (high - low) / 2, isRoot, from, to };
}

/** Place and weight of a node of the rule, −1 to 1. */
function place({ middle, half, isRoot, from, to }: Panel, node: number): readonly [at: number, weight: number] {
  const u = (from + to + (to - from) * node) / 2;
  const share = (half * (to - from)) / 2;
  return isRoot ? [middle - half * Math.cos(u), share * Math.sin(u)] : [middle + half * u, share];
}

/** What the rule finds over a panel, and how far the lesser rule within it is off. */
interface Ruled {
  readonly panel: Panel;
  readonly sums: Sums;
  readonly off: number;
}

function ruled(panel: Panel, of: (at: number) => Sums, known: readonly Sums[] = []): Ruled {
  let sums = ZERO;
  let lesser = 0;
  for (const [i, [node, fine, coarse]] of NODES.entries()) {
    const [at, weight] = place(panel, node);
    const found = known[i] ?? of(at);
    sums = added(sums, found, fine * weight);
    lesser += coarse * weight * found[0];
  }
  return { panel, sums, off: Math.abs(sums[0] - lesser) };
}

function added(a: Sums, b: Sums, weight: number): Sums {
  return [a[0] + weight * b[0], a[1] + weight * b[1], a[2] + weight * b[2], a[3] + weight * b[3]];
}

/** Nodes of Gauss's rule of three on −1 to 1 and of Kronrod's that holds it, with the weights of the latter and the former. */
const NODES = [
  [-0.7745966692414834, 0.2684880898683334, 5 / 9],
  [0, 0.4509165386584741, 8 / 9],
  [0.7745966692414834, 0.2684880898683334, 5 / 9],
  [-0.9604912687080202, 0.1046562260264673, 0],
  [-0.4342437493468026, 0.4013974147759622, 0],
  [0.4342437493468026, 0.4013974147759622, 0],
  [0.9604912687080202, 0.1046562260264673, 0],
] as const;

/** Halvings of a stretch of x where surfaces cross, which no mark of the plan tells. */
const DEEPEST = 7;
/** How far two rules may differ, of what they find or of a millimetre's height. */
const CLOSE = 2e-6;
/** Stretches below this are left out, mm. */
const NOTHING = 1e-9;

/** A row's sums, stretch by stretch between breaks. */
function rowSums({ from, to, at }: Row, y: number, breaks: readonly Break[]): Sums {
  const line = (x: number) => lineSums(at(x), x, y);
  let total = ZERO;
  for (let i = 1; i < breaks.length; i++) {
    const [low, high] = [breaks[i - 1]!, breaks[i]!];
    if (high.at - low.at < NOTHING || high.at <= from || low.at >= to) continue;
    total = added(total, refined(panelOver(low.at, high.at, low.isRoot || high.isRoot), line, DEEPEST), 1);
  }
  return total;
}

function lineSums(spans: Spans, x: number, y: number): Sums {
  let [length, moment] = [0, 0];
  for (let i = 0; i < spans.length; i += 2) {
    const [low, high] = [spans[i]!, spans[i + 1]!];
    length += high - low;
    moment += (high * high - low * low) / 2;
  }
  return [length, length * x, length * y, moment];
}

function refined(panel: Panel, line: (x: number) => Sums, depth: number): Sums {
  const [[low], [high]] = [place(panel, -1), place(panel, 1)];
  const [first, second, third] = [0, 1, 2].map((i) => line(place(panel, NODES[i]![0])[0])) as [Sums, Sums, Sums];
  // between flat faces a line finds the same everywhere
  if (isSame(first, second) && isSame(second, third))
    return added(ZERO, [second[0], (second[0] * (low + high)) / 2, second[2], second[3]], high - low);
  const { sums, off } = ruled(panel, line, [first, second, third]);
  if (depth === 0 || off <= CLOSE * Math.max(sums[0], high - low)) return sums;
  const middle = (panel.from + panel.to) / 2;
  return added(
    refined({ ...panel, to: middle }, line, depth - 1),
    refined({ ...panel, from: middle }, line, depth - 1),
    1,
  );
}

function isSame(a: Sums, b: Sums): boolean {
  return Math.abs(a[0] - b[0]) < NOTHING && Math.abs(a[3] - b[3]) < NOTHING;
}

/** A place where what lines find may change; a root where it may do so as one does. */
interface Break {
  readonly at: number;
  readonly isRoot: boolean;
}

function panelsBetween(breaks: readonly Break[]): Panel[] {
  return breaks.slice(1).map((high, i) => panelOver(breaks[i]!.at, high.at, breaks[i]!.isRoot || high.isRoot));
}

/** Over y the width of every circle grows as a root. */
function yBreaks(marks: readonly Mark[]): Break[] {
  return distinct(
    marks.flatMap((mark): Break[] =>
      mark.kind === 'line'
        ? [mark.from[1], mark.to[1]].map((at) => ({ at, isRoot: mark.isRoot === true }))
        : [-1, 1].map((side) => ({ at: mark.center[1] + side * mark.radius, isRoot: true })),
    ),
  );
}

function distinct(all: Break[]): Break[] {
  const found: Break[] = [];
  for (const { at, isRoot } of all.sort((a, b) => a.at - b.at)) {
    const last = found.at(-1);
    if (last && at - last.at < NOTHING) found[found.length - 1] = { at: last.at, isRoot: isRoot || last.isRoot };
    else found.push({ at, isRoot });
  }
  return found;
}

function xBreaks(marks: readonly Mark[], y: number): Break[] {
  const found: Break[] = [];
  for (const mark of marks) {
    const isRoot = mark.isRoot === true;
    if (mark.kind === 'circle') {
      const square = mark.radius ** 2 - (y - mark.center[1]) ** 2;
      if (square <= 0) continue;
      const half = Math.sqrt(square);
      found.push({ at: mark.center[0] - half, isRoot }, { at: mark.center[0] + half, isRoot });
      continue;
    }
    const [[x0, y0], [x1, y1]] = [mark.from, mark.to];
    if (y0 > y !== y1 > y) found.push({ at: x0 + ((y - y0) / (y1 - y0)) * (x1 - x0), isRoot });
  }
  return distinct(found);
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
      const { kind } = shape;
      return {
        marks: parts.flatMap(({ marks }) => marks),
        row: (y) =>
          joinedRow(
            kind,
            parts.map(({ row }) => row(y)),
          ),
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

type Joining = 'union' | 'difference' | 'intersection';
type Keep = (inFirst: boolean, inSecond: boolean) => boolean;
const KEEP: Record<Joining, Keep> = {
  union: (first, second) => first || second,
  difference: (first, second) => first && !second,
  intersection: (first, second) => first && second,
};

/** Rows of several parts as one; what a row does not reach is not asked. */
function joinedRow(kind: Joining, rows: readonly (Row | undefined)[]): Row | undefined {
  const found = rows.flatMap((row) => (row ? [row] : []));
  const [first] = rows;
  if (kind === 'union' ? found.length === 0 : !first) return undefined;
  if (kind === 'intersection' && found.length < rows.length) return undefined;
  if (found.length === 1) return found[0];
  const keep = KEEP[kind];
  const [start, ...others] = found as [Row, ...Row[]];
  const reached = (row: Row, x: number) => (x < row.from || x > row.to ? NONE : row.at(x));
  return {
    from: kind === 'union' ? Math.min(...found.map(({ from }) => from)) : start.from,
    to: kind === 'union' ? Math.max(...found.map(({ to }) => to)) : start.to,
    at: (x) => {
      let spans = reached(start, x);
      for (const row of others) {
        if (spans.length === 0 && kind !== 'union') return NONE;
        spans = combined(spans, reached(row, x), keep);
      }
      return spans;
    },
  };
}

/** Stretches where the rule holds, over the ends of both in turn. */
function combined(a: Spans, b: Spans, keep: Keep): Spans {
  if (b.length === 0) return keep(true, false) ? a : NONE;
  const kept: number[] = [];
  let [i, j, was] = [0, 0, false];
  while (i < a.length || j < b.length) {
    const z = j === b.length || a[i]! <= b[j]! ? a[i]! : b[j]!;
    while (a[i] === z) i += 1;
    while (b[j] === z) j += 1;
    const is = keep(i % 2 === 1, j % 2 === 1);
    if (is !== was) kept.push(z);
    was = is;
  }
  return kept;
}

/** A leaf whose own axis is the line's, upwards or downwards. */
function standing(leaf: MeantLeaf, at: Matrix, planes: readonly number[]): Probe {
  if (Math.abs(Math.abs(at[10]!) - 1) > 1e-9) throw new TypeError(`a lying ${leaf.kind} cannot be measured by lines`);
  const [up, z0] = [Math.sign(at[10]!), at[11]!];
  const placed = (spans: Spans): Spans =>
    up > 0 ? (z0 === 0 ? spans : spans.map((z) => z + z0)) : spans.map((z) => z0 - z).reverse();
  if (leaf.kind === 'extrusion') {
    const loops = leaf.regions.flatMap(({ outer, holes }) => [outer, ...holes]);
    return upright(
      loops.map((loop) => placedLoop(loop, at)),
      placed([leaf.from, leaf.to]),
    );
  }
  const own = ownProbe(
    leaf,
    planes.map((z) => up * (z - z0)),
  );
  const [xx, xy, x0, yx, yy, y0] = [at[0]!, at[1]!, at[3]!, at[4]!, at[5]!, at[7]!];
  const marks = own.marks.map((mark) => placedMark(mark, at));
  const [across, along] = [extent(marks, 0), extent(marks, 1)];
  return {
    marks,
    row: (y) => {
      if (y < along.least || y > along.most) return undefined;
      const dy = y - y0;
      const spans = (x: number) => placed(own.at(xx * (x - x0) + yx * dy, xy * (x - x0) + yy * dy));
      return { from: across.least, to: across.most, at: spans };
    },
  };
}

/** A prism that stands: the same stretch wherever a line is inside. */
function upright(loops: readonly Loop[], both: Spans): Probe {
  return {
    marks: loops.flatMap(marksOf),
    row: (y) => {
      const ends = sorted(loops.flatMap((loop) => crossings(loop, 0, y, 1, 0)));
      if (ends.length === 0) return undefined;
      const isInside = (x: number) => {
        let after = ends.length;
        while (after > 0 && ends[after - 1]! > x) after -= 1;
        return (ends.length - after) % 2 === 1;
      };
      return { from: ends[0]!, to: ends.at(-1)!, at: (x) => (isInside(x) ? both : NONE) };
    },
  };
}

function placedPoint([x, y]: Point, at: Matrix): Point {
  return [at[0]! * x + at[1]! * y + at[3]!, at[4]! * x + at[5]! * y + at[7]!];
}

function placedMark(mark: Mark, at: Matrix): Mark {
  return mark.kind === 'line'
    ? { ...mark, from: placedPoint(mark.from, at), to: placedPoint(mark.to, at) }
    : { ...mark, center: placedPoint(mark.center, at) };
}

/** A loop where its prism stands; seen from below it runs the other way. */
function placedLoop(loop: Loop, at: Matrix): Loop {
  if (loop.kind === 'circle') return { ...loop, center: placedPoint(loop.center, at) };
  const isTurned = at[10]! < 0;
  const pieces = loop.pieces.map((piece): Piece => {
    const ends = { from: placedPoint(piece.from, at), to: placedPoint(piece.to, at) };
    if (piece.kind === 'line') return { ...piece, ...ends };
    return { ...piece, ...ends, center: placedPoint(piece.center, at), outwards: piece.outwards !== isTurned };
  });
  return { kind: 'pieces', pieces };
}

/** How far marks reach along x or y. */
function extent(marks: readonly Mark[], axis: 0 | 1): { readonly least: number; readonly most: number } {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const mark of marks) {
    const ends =
      mark.kind === 'line'
        ? [mark.from[axis], mark.to[axis]]
        : [mark.center[axis] - mark.radius, mark.center[axis] + mark.radius];
    least = Math.min(least, ...ends);
    most = Math.max(most, ...ends);
  }
  return { least, most };
}

/** A leaf about its own axis, place by place. */
interface OwnProbe {
  readonly at: (x: number, y: number) => Spans;
  readonly marks: readonly Mark[];
}

function ownProbe(leaf: Exclude<MeantLeaf, { kind: 'extrusion' }>, heights: readonly number[]): OwnProbe {
  switch (leaf.kind) {
    case 'revolution': {
      const { contour } = leaf;
      const isRoot = isFilleted(contour);
      return {
        marks: reachesAt(contour, heights).map((radius) => ({ ...circleMark(radius), isRoot })),
        at: (x, y) => upTo(contour, Math.hypot(x, y)),
      };
    }
    case 'loft': {
      const reach = reachOf(leaf);
      const isRoot = isFilleted(leaf.contour);
      const marks = loftMarks(leaf, reachesAt(leaf.contour, heights)).map((mark) => ({ ...mark, isRoot }));
      return { marks, at: (x, y) => upTo(leaf.contour, reach(x, y)) };
    }
    case 'thread':
      return {
        marks: leaf.thread.ridge.map(([, radius]) => circleMark(radius)),
        at: (x, y) => threadSpans(leaf.thread, x, y),
      };
  }
}

function isFilleted(contour: readonly ContourPiece[]): boolean {
  return contour.some(({ center }) => center !== undefined);
}

function circleMark(radius: number): Extract<Mark, { kind: 'circle' }> {
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
    let most = circle ? Math.hypot(x, y) - circle : Number.NEGATIVE_INFINITY;
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
function loftMarks({ outline }: MeantLoft, offsets: readonly number[]): Mark[] {
  const most = Math.max(0, ...offsets);
  return offsets.flatMap((offset) =>
    outline.flatMap((piece): Mark[] => {
      if (piece.kind === 'arc') {
        const { center, radius } = piece;
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
  const isRound = loops.some((loop) => loop.kind === 'circle' || loop.pieces.some(({ kind }) => kind === 'arc'));
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
    (s): Mark => ({ kind: 'line', isRoot: isRound, from: plan(-uy * s, ux * s, from), to: plan(-uy * s, ux * s, to) }),
  );
  const marks = [...ends, ...sides];
  const [reachX, reachY] = [extent(marks, 0), extent(marks, 1)];
  return {
    marks,
    row: (y) => {
      if (y < reachY.least || y > reachY.most) return undefined;
      const spans = (x: number) => {
        const c = own(x, y, 0, 2);
        if (c <= from || c >= to) return NONE;
        return sorted(loops.flatMap((loop) => crossings(loop, own(x, y, 0, 0), own(x, y, 0, 1), ux, uy)));
      };
      return { from: reachX.least, to: reachX.most, at: spans };
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
