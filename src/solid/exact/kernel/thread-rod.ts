import type { ThreadSweep } from '../../thread-sweep.js';
import type { Point } from '../meant-outline.js';
import { levelFace } from './faces.js';
import { facingOut } from './facing-out.js';
import { type Helicoid, helicoidSurface } from './helicoid.js';
import type { OcShape, Session } from './session.js';
import { subshapes } from './subshapes.js';
import { edgeOf, wireOf } from './wires.js';

/**
 * A threaded rod: one face for each flank, crest and root over its whole length, and two flat ends.
 * @throws Error its faces do not close
 */
export function threadRod(session: Session, thread: ThreadSweep): OcShape {
  const { oc, keep } = session;
  const { hand, from, to } = thread;
  const sewing = keep(new oc.BRepBuilderAPI_Sewing(1e-5, true, true, true, false));
  const ends: [OcShape[], OcShape[]] = [[], []];
  for (const strip of stripsOf(thread)) {
    const { face, low, high } = stripFace(session, strip, hand === 'left' ? -1 : 1);
    sewing.Add(face);
    ends[0].push(low);
    ends[1].push(high);
  }
  for (const [i, edges] of ends.entries()) sewing.Add(levelFace(session, i === 0 ? from : to, wireOf(session, edges)));
  sewing.Perform(keep(new oc.Message_ProgressRange()));
  if (sewing.NbFreeEdges() > 0) throw new Error(`a thread leaves ${sewing.NbFreeEdges()} open edges`);
  const [shell] = subshapes(session, keep(sewing.SewedShape()), 'shell');
  const solid = keep(keep(new oc.ShapeFix_Solid()).SolidFromShell(oc.TopoDS.Shell(shell)));
  return facingOut(session, solid);
}

/** A face of a thread, between both ends of the rod. */
interface Strip extends Helicoid {
  /** angles at which its two helices meet the lower and the upper end */
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
}

/** All faces share one net of knots, so that neighbours share their edges to the last digit. */
function stripsOf({ ridge, pitch, starts, from, to }: ThreadSweep): Strip[] {
  const lead = pitch * starts;
  const at = (k: number): Point => {
    const [z, r] = ridge[k % ridge.length]!;
    return [r, z + pitch * Math.floor(k / ridge.length)];
  };
  const count = starts * ridge.length;
  const angles = [angleAt(from, at(count)[1], lead), angleAt(to, at(0)[1], lead)] as const;
  return Array.from({ length: count }, (_, i) => {
    const [[r0, z0], [r1, z1]] = [at(i), at(i + 1)];
    const meets = (end: number) => [angleAt(end, z0, lead), angleAt(end, z1, lead)] as const;
    return { radii: [r0, r1], z0: [z0, z1], lead, low: meets(from), high: meets(to), angles };
  });
}

/** Where a helix that starts at a height reaches another, radians. */
function angleAt(end: number, z: number, lead: number): number {
  return ((end - z) * 2 * Math.PI) / lead;
}

function stripFace(session: Session, strip: Strip, side: 1 | -1) {
  const { oc, keep } = session;
  const { low, high } = strip;
  const surface = helicoidSurface(session, strip, side);
  const line = (a: Point, b: Point): OcShape => {
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const way = keep(new oc.gp_Dir2d((b[0] - a[0]) / length, (b[1] - a[1]) / length));
    const curve = keep(new oc.Geom2d_Line(keep(new oc.gp_Pnt2d(...a)), way));
    const edge = edgeOf(session, curve, surface, 0, length);
    oc.BRepLib.BuildCurves3d(edge, 1e-7, oc.GeomAbs_Shape.GeomAbs_C1, 14, 1000);
    return edge;
  };
  const corners: Point[] = [
    [low[0], 0],
    [high[0], 0],
    [high[1], 1],
    [low[1], 1],
  ];
  const edges = corners.map((corner, i) => line(corner, corners[(i + 1) % 4]!));
  const make = keep(new oc.BRepBuilderAPI_MakeFace(surface, wireOf(session, edges), true));
  return { face: keep(make.Face()), low: edges[3], high: edges[1] };
}
