import type { MeantExtrusion, Region } from '../meant-shape.js';
import { levelFace } from './faces.js';
import type { OcShape, Session } from './session.js';
import { steady } from './steady.js';
import { loopWire } from './wires.js';

/** A prism for each region. */
export function extrusion(session: Session, { regions, from, to }: MeantExtrusion): OcShape {
  const up = [0, 0, steady(to) - steady(from)] as const;
  return compound(
    session,
    regions.map((region) => drawnAlong(session, regionFace(session, region, from), up)),
  );
}

/** What a face passes over on a straight way. */
export function drawnAlong(
  { oc, keep }: Session,
  face: OcShape,
  way: readonly [x: number, y: number, z: number],
): OcShape {
  return keep(keep(new oc.BRepPrimAPI_MakePrism(face, keep(new oc.gp_Vec(...way)), false, true)).Shape());
}

function regionFace(session: Session, { outer, holes }: Region, z: number): OcShape {
  const { oc, keep } = session;
  const inner = holes.map((hole) => oc.TopoDS.Wire(keep(loopWire(session, hole, z).Reversed())));
  return levelFace(session, z, loopWire(session, outer, z), inner);
}

/** Shapes side by side as one. */
function compound({ oc, keep }: Session, shapes: readonly OcShape[]): OcShape {
  if (shapes.length === 1) return shapes[0];
  const builder = keep(new oc.TopoDS_Builder());
  const whole = keep(new oc.TopoDS_Compound());
  builder.MakeCompound(whole);
  for (const shape of shapes) builder.Add(whole, shape);
  return whole;
}
