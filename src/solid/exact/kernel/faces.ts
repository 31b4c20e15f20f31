import type { Point } from '../meant-outline.js';
import type { ContourPiece } from '../meant-shape.js';
import type { OcShape, Session } from './session.js';
import { arcEdge, edgeOf, pointAt, wireOf } from './wires.js';

/** A flat face at a height, within a wire and outside of others that run the other way. */
export function levelFace(session: Session, z: number, outer: OcShape, holes: readonly OcShape[] = []): OcShape {
  const { oc, keep } = session;
  const plane = keep(new oc.gp_Pln(pointAt(session, [0, 0], z), keep(new oc.gp_Dir(0, 0, 1))));
  const make = keep(new oc.BRepBuilderAPI_MakeFace(plane, outer, true));
  for (const hole of holes) make.Add(hole);
  return keep(make.Face());
}

/**
 * The upright face between a contour and a straight line beside the axis.
 *
 * @param contour  pieces of [reach, z] that rise along the outside      [mm]
 * @param inner    reach of the line                                     [mm]
 * @param at       the point in space that a reach and a height stand for
 */
export function contourFace(
  session: Session,
  contour: readonly ContourPiece[],
  inner: number,
  at: (place: Point) => OcShape,
): OcShape {
  const { oc, keep } = session;
  const [first, last] = [contour[0]!.from, contour.at(-1)!.to];
  const edges = contour.map(({ from, to, center }) =>
    center ? arcEdge(session, at(from), at(middleOf(from, to, center)), at(to)) : edgeOf(session, at(from), at(to)),
  );
  const corners: Point[] = [last, [inner, last[1]], [inner, first[1]], first];
  for (let i = 1; i < corners.length; i++) {
    const [a, b] = [corners[i - 1]!, corners[i]!];
    if (Math.hypot(a[0] - b[0], a[1] - b[1]) > 1e-9) edges.push(edgeOf(session, at(a), at(b)));
  }
  return keep(keep(new oc.BRepBuilderAPI_MakeFace(wireOf(session, edges), true)).Face());
}

/** The middle of an arc of less than half a turn. */
function middleOf(from: Point, to: Point, center: Point): Point {
  const middle: Point = [(from[0] + to[0]) / 2 - center[0], (from[1] + to[1]) / 2 - center[1]];
  const radius = Math.hypot(from[0] - center[0], from[1] - center[1]);
  const share = radius / Math.hypot(...middle);
  return [center[0] + share * middle[0], center[1] + share * middle[1]];
}
