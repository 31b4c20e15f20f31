import type { Point } from '../meant-outline.js';
import type { ContourPiece } from '../meant-shape.js';
import { contourFace } from './faces.js';
import { facingOut } from './facing-out.js';
import type { OcShape, Session } from './session.js';
import { pointAt } from './wires.js';

/** All that lies inside a contour of [radius, z], turned about the axis. */
export function revolution(session: Session, contour: readonly ContourPiece[]): OcShape {
  const { oc, keep } = session;
  const face = contourFace(session, contour, 0, ([radius, z]: Point) => pointAt(session, [radius, 0], z));
  const axis = keep(new oc.gp_Ax1(pointAt(session, [0, 0], 0), keep(new oc.gp_Dir(0, 0, 1))));
  return facingOut(session, keep(keep(new oc.BRepPrimAPI_MakeRevol(face, axis, false)).Shape()));
}
