import type { Loop, Piece, Point } from '../meant-outline.js';
import type { OcShape, Session } from './session.js';
import { steady } from './steady.js';

export function pointAt({ oc, keep }: Session, [x, y]: Point, z: number): OcShape {
  return keep(new oc.gp_Pnt(steady(x), steady(y), steady(z)));
}

/** An edge of what the kernel makes one from: two points, a curve, or a curve on a surface with its ends. */
export function edgeOf({ oc, keep }: Session, ...of: readonly OcShape[]): OcShape {
  return keep(keep(new oc.BRepBuilderAPI_MakeEdge(...of)).Edge());
}

/** An arc of a circle through three points. */
export function arcEdge(session: Session, from: OcShape, through: OcShape, to: OcShape): OcShape {
  const { oc, keep } = session;
  const arc = keep(new oc.GC_MakeArcOfCircle(from, through, to));
  return edgeOf(session, keep(arc.Value()));
}

/** @throws Error the edges do not join end to end */
export function wireOf({ oc, keep }: Session, edges: readonly OcShape[]): OcShape {
  const make = keep(new oc.BRepBuilderAPI_MakeWire());
  for (const edge of edges) make.Add(edge);
  if (!make.IsDone()) throw new Error('an outline does not close');
  return keep(make.Wire());
}

/** An outline at a height. */
export function loopWire(session: Session, loop: Loop, z: number): OcShape {
  return loop.kind === 'circle'
    ? wireOf(session, [edgeOf(session, circleAt(session, loop, z))])
    : piecesWire(session, loop.pieces, z);
}

function circleAt(session: Session, { center, radius }: Extract<Loop, { kind: 'circle' }>, z: number): OcShape {
  const { oc, keep } = session;
  const axes = keep(
    new oc.gp_Ax2(pointAt(session, center, z), keep(new oc.gp_Dir(0, 0, 1)), keep(new oc.gp_Dir(1, 0, 0))),
  );
  return keep(new oc.gp_Circ(axes, steady(radius)));
}

/** Pieces that join end to end, at a height. */
export function piecesWire(session: Session, pieces: readonly Piece[], z: number): OcShape {
  const edges = pieces.map((piece) => {
    const [from, to] = [pointAt(session, piece.from, z), pointAt(session, piece.to, z)];
    if (piece.kind === 'line') return edgeOf(session, from, to);
    return arcEdge(session, from, pointAt(session, middleOf(piece), z), to);
  });
  return wireOf(session, edges);
}

/** The middle of an arc between two of its points. */
function middleOf({ from, to, center, radius, outwards }: Extract<Piece, { kind: 'arc' }>): Point {
  const angle = (point: Point) => Math.atan2(point[1] - center[1], point[0] - center[0]);
  const [a, b] = [angle(from), angle(to)];
  const whole = 2 * Math.PI;
  const sweep = outwards ? (b - a + 2 * whole) % whole : -((a - b + 2 * whole) % whole);
  return [center[0] + radius * Math.cos(a + sweep / 2), center[1] + radius * Math.sin(a + sweep / 2)];
}
