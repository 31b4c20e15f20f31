import type { Curve, Outline } from '../outline.js';

export type Point = readonly [number, number];

/** A piece of a meant outline: a straight line, or an arc of a circle from one of its points to another. */
export type Piece =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
  | {
      readonly kind: 'arc';
      readonly from: Point;
      readonly to: Point;
      readonly center: Point;
      readonly radius: number;
      /** true where it runs counter-clockwise about its centre */
      readonly outwards: boolean;
    };

/** A closed outline as it is meant: a whole circle, or pieces that join end to end. */
export type Loop =
  | { readonly kind: 'circle'; readonly center: Point; readonly radius: number }
  | { readonly kind: 'pieces'; readonly pieces: readonly Piece[] };

type Arc = Extract<Curve, { kind: 'arc' }>;

/** What one piece lies on, before its ends are known. */
type Carrier =
  | { readonly kind: 'line'; readonly a: Point; readonly b: Point }
  | { readonly kind: 'tangent' }
  | { readonly kind: 'arc'; readonly arc: Arc; readonly outwards: boolean };

/** A line counts as a circle's tangent where it passes within this of it, mm. */
const TOUCHING = 1e-7;

/**
 * An outline as it is meant: sides that stand for an arc become that arc, a common tangent of two arcs touches both,
 * and corners move to where the pieces themselves meet.
 *
 * @param outline  corners and what their sides stand for          [mm]
 * @param offset   how far its sides are moved out, default 0       [mm]
 * @returns a circle, or pieces that join end to end, as the outline runs  [mm]
 * @example meantOutline(circleOutline({ radius: 5, sides: 48 })) // { kind: 'circle', center: [0, 0], radius: 5 }
 */
export function meantOutline(outline: Outline, offset = 0): Loop {
  const runs = runsOf(outline);
  const [first] = runs;
  if (runs.length === 1 && first!.carrier.kind === 'arc') {
    const { center, radius } = first!.carrier.arc;
    return { kind: 'circle', center, radius: radius + offset };
  }
  const corners = runs.map(({ start }, i) => meeting(runs, i, start));
  const plain = runs.map(({ carrier }, i) => pieceOf(carrier, corners[i]!, corners[(i + 1) % corners.length]!));
  return { kind: 'pieces', pieces: offset === 0 ? plain : movedPieces(plain, offset) };
}

interface Run {
  readonly carrier: Carrier;
  /** drawn corner at which it starts */
  readonly start: Point;
  /** the drawn side it starts with */
  readonly side: Extract<Carrier, { kind: 'line' }>;
}

/** Neighbouring sides of one arc are one run; it begins where a curve ends. */
function runsOf(outline: Outline): Run[] {
  const count = outline.length;
  const curveAt = (i: number) => outline.curves?.[i % count];
  const isSame = (i: number) => curveAt(i)?.kind === 'arc' && curveAt(i) === curveAt(i + count - 1);
  const first = outline.findIndex((_, i) => !isSame(i));
  if (first < 0) return [runAt(outline, 0)];
  const order = outline.map((_, i) => (first + i) % count);
  const runs = order.filter((i) => !isSame(i)).map((i) => runAt(outline, i));
  const isArc = (i: number) => runs.at(i % runs.length)!.carrier.kind === 'arc';
  // where a tangent was cut off on the way, what is left is a side like others
  return runs.map((run, i) =>
    run.carrier.kind === 'tangent' && !(isArc(i - 1) && isArc(i + 1)) ? { ...run, carrier: run.side } : run,
  );
}

function runAt(outline: Outline, i: number): Run {
  const [start, end] = [outline[i]!, outline[(i + 1) % outline.length]!];
  const curve = outline.curves?.[i];
  const side = { kind: 'line', a: start, b: end } as const;
  if (curve?.kind === 'arc') {
    const [p, q] = [minus(start, curve.center), minus(end, curve.center)];
    return { start, side, carrier: { kind: 'arc', arc: curve, outwards: p[0] * q[1] - p[1] * q[0] > 0 } };
  }
  if (curve?.kind === 'tangent') return { start, side, carrier: { kind: 'tangent' } };
  return { start, side, carrier: side };
}

/** Where the run before and this one meet, near the drawn corner. */
function meeting(runs: readonly Run[], i: number, drawn: Point): Point {
  const [before, here] = [runs.at(i - 1)!.carrier, runs[i]!.carrier];
  if (here.kind === 'tangent') return tangentPoints(runs, i)[0];
  if (before.kind === 'tangent') return tangentPoints(runs, (i + runs.length - 1) % runs.length)[1];
  if (before.kind === 'arc' && here.kind === 'line') return onLine(before.arc, here, drawn);
  if (before.kind === 'line' && here.kind === 'arc') return onLine(here.arc, before, drawn);
  if (before.kind === 'arc' && here.kind === 'arc') return betweenArcs(before.arc, here.arc, drawn);
  return drawn;
}

/** The common tangent of the arcs on either side, on the outside of both. */
function tangentPoints(runs: readonly Run[], i: number): readonly [Point, Point] {
  const [before, after] = [runs.at(i - 1)!.carrier, runs[(i + 1) % runs.length]!.carrier];
  if (before.kind !== 'arc' || after.kind !== 'arc') throw new TypeError('a tangent must lie between two arcs');
  const [a, b] = [before.arc, after.arc];
  const [dx, dy] = minus(b.center, a.center);
  const far = Math.hypot(dx, dy);
  const along = (a.radius - b.radius) / far;
  const across = Math.sqrt(Math.max(0, 1 - along * along));
  // outwards is to the right of the way from one centre to the other
  const n: Point = [(along * dx + across * dy) / far, (along * dy - across * dx) / far];
  return [at(a.center, n, a.radius), at(b.center, n, b.radius)];
}

function onLine({ center, radius }: Arc, { a, b }: Extract<Carrier, { kind: 'line' }>, drawn: Point): Point {
  const [dx, dy] = minus(b, a);
  const length = Math.hypot(dx, dy);
  const d: Point = [dx / length, dy / length];
  const from = minus(center, a);
  const along = from[0] * d[0] + from[1] * d[1];
  const foot = at(a, d, along);
  const off = Math.hypot(...minus(center, foot));
  if (off > radius + TOUCHING) throw new TypeError(`a side passes its arc of radius ${radius} at a distance of ${off}`);
  if (off > radius - TOUCHING) return at(center, minus(foot, center), radius / off);
  const half = Math.sqrt(radius * radius - off * off);
  return nearest(drawn, at(foot, d, half), at(foot, d, -half));
}

function betweenArcs(a: Arc, b: Arc, drawn: Point): Point {
  const [dx, dy] = minus(b.center, a.center);
  const far = Math.hypot(dx, dy);
  if (far < TOUCHING) {
    const out = minus(drawn, a.center);
    return at(a.center, out, a.radius / Math.hypot(...out));
  }
  const d: Point = [dx / far, dy / far];
  const along = (far * far + a.radius * a.radius - b.radius * b.radius) / (2 * far);
  const foot = at(a.center, d, along);
  const square = a.radius * a.radius - along * along;
  if (square < TOUCHING) return foot;
  const half = Math.sqrt(square);
  const across: Point = [-d[1], d[0]];
  return nearest(drawn, at(foot, across, half), at(foot, across, -half));
}

function pieceOf(carrier: Carrier, from: Point, to: Point): Piece {
  if (carrier.kind !== 'arc') return { kind: 'line', from, to };
  const { center, radius } = carrier.arc;
  return { kind: 'arc', from, to, center, radius, outwards: carrier.outwards };
}

/** The same with every piece moved out; its corners are those of the moved pieces. */
export function movedPieces(pieces: readonly Piece[], offset: number): Piece[] {
  const moved = pieces.map((piece): Run => {
    const [a, b] = [shifted(piece, piece.from, offset), shifted(piece, piece.to, offset)];
    const side = { kind: 'line', a, b } as const;
    if (piece.kind === 'arc') {
      const radius = piece.radius + (piece.outwards ? offset : -offset);
      const arc: Arc = { kind: 'arc', center: piece.center, radius, circumscribed: false };
      return { start: a, side, carrier: { kind: 'arc', arc, outwards: piece.outwards } };
    }
    return { start: a, side, carrier: side };
  });
  const corners = moved.map(({ carrier, start }, i) => {
    const before = moved.at(i - 1)!.carrier;
    return before.kind === 'line' && carrier.kind === 'line' ? crossing(before, carrier) : meeting(moved, i, start);
  });
  return moved.map(({ carrier }, i) => pieceOf(carrier, corners[i]!, corners[(i + 1) % corners.length]!));
}

function shifted(piece: Piece, point: Point, offset: number): Point {
  if (piece.kind === 'arc') {
    const out = minus(point, piece.center);
    return at(point, out, (piece.outwards ? offset : -offset) / piece.radius);
  }
  const [dx, dy] = minus(piece.to, piece.from);
  return at(point, [dy, -dx], offset / Math.hypot(dx, dy));
}

function crossing(one: Extract<Carrier, { kind: 'line' }>, two: Extract<Carrier, { kind: 'line' }>): Point {
  const [d, e] = [minus(one.b, one.a), minus(two.b, two.a)];
  const turn = d[0] * e[1] - d[1] * e[0];
  if (Math.abs(turn) < 1e-12) return two.a;
  const [px, py] = minus(two.a, one.a);
  return at(one.a, d, (px * e[1] - py * e[0]) / turn);
}

function nearest(to: Point, a: Point, b: Point): Point {
  return Math.hypot(...minus(a, to)) <= Math.hypot(...minus(b, to)) ? a : b;
}

function minus(a: Point, b: Point): [number, number] {
  return [a[0] - b[0], a[1] - b[1]];
}

function at(from: Point, along: Point, by: number): Point {
  return [from[0] + by * along[0], from[1] + by * along[1]];
}
