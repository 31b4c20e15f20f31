import { movedPieces, type Piece, type Point } from '../meant-outline.js';
import type { ContourPiece, MeantLoft } from '../meant-shape.js';
import { joined } from './booleans.js';
import { drawnAlong } from './extrusion.js';
import { contourFace } from './faces.js';
import { facingOut } from './facing-out.js';
import { revolution } from './revolution.js';
import type { OcShape, Session } from './session.js';
import { piecesWire, pointAt } from './wires.js';

/** Straight sides that a circle's arcs do not touch, or that a fillet runs along, are cut off one by one. */
export function loft(session: Session, meant: MeantLoft): OcShape {
  const { outline, contour, circle } = meant;
  const isRounded = contour.some(({ center }) => center !== undefined);
  if (!circle && !isRounded) return ruled(session, meant);
  const far =
    4 * Math.max(...outline.map(({ from }) => Math.hypot(...from)), ...contour.map(({ from }) => Math.abs(from[0])));
  const walls = outline.flatMap((piece) => (piece.kind === 'line' ? [wall(session, piece, contour, far)] : []));
  const round = circle ? revolution(session, movedOut(contour, circle)) : walls.shift();
  return walls.reduce((left, one) => joined(session, 'intersection', left, [one]), round);
}

/** Offsets from a circle as radii. */
function movedOut(contour: readonly ContourPiece[], radius: number): ContourPiece[] {
  const out = ([offset, z]: Point): Point => [offset + radius, z];
  return contour.map(({ from, to, center }) => ({
    from: out(from),
    to: out(to),
    ...(center ? { center: out(center) } : {}),
  }));
}

/** All that lies inside one side of a loft: its contour across the side, drawn along it. */
function wall(session: Session, { from, to }: Piece, contour: readonly ContourPiece[], far: number): OcShape {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const at = ([offset, z]: Point): OcShape =>
    pointAt(session, [from[0] + offset * uy - far * ux, from[1] - offset * ux - far * uy], z);
  const face = contourFace(session, contour, -2 * far, at);
  return facingOut(session, drawnAlong(session, face, [2 * far * ux, 2 * far * uy, 0]));
}

/** Levels joined by planes and cones, step by step. */
function ruled(session: Session, { outline, contour }: MeantLoft): OcShape {
  const { oc, keep } = session;
  const make = keep(new oc.BRepOffsetAPI_ThruSections(true, true, 1e-9));
  make.CheckCompatibility(false);
  for (const [offset, z] of [contour[0]!.from, ...contour.map(({ to }) => to)])
    make.AddWire(piecesWire(session, movedPieces(outline, offset), z));
  make.Build(keep(new oc.Message_ProgressRange()));
  return facingOut(session, keep(make.Shape()));
}
