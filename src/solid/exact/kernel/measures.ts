import type { OcShape, Session } from './session.js';
import { subshapes } from './subshapes.js';

/** What is measured of a body. */
export interface ExactMeasures {
  readonly solids: number;
  readonly freeEdges: number;
  /** whether the kernel's own analysis finds nothing */
  readonly isSound: boolean;
  readonly volume: number;
  readonly area: number;
  readonly center: readonly [number, number, number];
  readonly bounds: readonly [readonly [number, number, number], readonly [number, number, number]];
}

export function measured(session: Session, shape: OcShape): ExactMeasures {
  const { oc, keep } = session;
  const props = keep(new oc.GProp_GProps());
  oc.BRepGProp.VolumeProperties(shape, props, 1e-7, true, false);
  const surface = keep(new oc.GProp_GProps());
  oc.BRepGProp.SurfaceProperties(shape, surface, false, false);
  const box = keep(new oc.Bnd_Box());
  oc.BRepBndLib.AddOptimal(shape, box, false, false);
  const center = keep(props.CentreOfMass());
  return {
    solids: subshapes(session, shape, 'solid').length,
    freeEdges: freeEdges(session, shape),
    isSound: keep(new oc.BRepCheck_Analyzer(shape, true, false, false)).IsValid(),
    volume: props.Mass(),
    area: surface.Mass(),
    center: [center.X(), center.Y(), center.Z()],
    bounds: [
      [box.GetXMin(), box.GetYMin(), box.GetZMin()],
      [box.GetXMax(), box.GetYMax(), box.GetZMax()],
    ],
  };
}

/** Edges that do not lie on two faces, or twice on one; those without length aside. */
function freeEdges(session: Session, shape: OcShape): number {
  const { oc, keep } = session;
  const known = new Map<string, { readonly edge: OcShape; uses: number }[]>();
  for (const face of subshapes(session, shape, 'face')) {
    for (const edge of subshapes(session, face, 'edge')) {
      if (oc.BRep_Tool.Degenerated(keep(oc.TopoDS.Edge(edge)))) continue;
      const place = middleOfEnds(session, edge);
      const near = known.get(place) ?? [];
      known.set(place, near);
      const same = near.find((one) => one.edge.IsSame(edge));
      if (same) same.uses += 1;
      else near.push({ edge, uses: 1 });
    }
  }
  return [...known.values()].flat().filter(({ uses }) => uses !== 2).length;
}

/** The same for an edge whichever way it runs: only edges of one place are compared. */
function middleOfEnds(session: Session, edge: OcShape): string {
  const { oc, keep } = session;
  const sum = [0, 0, 0];
  for (const vertex of subshapes(session, edge, 'vertex')) {
    const point = keep(oc.BRep_Tool.Pnt(keep(oc.TopoDS.Vertex(vertex))));
    sum[0] += point.X();
    sum[1] += point.Y();
    sum[2] += point.Z();
  }
  return sum.map((value) => Math.round(value * 1e6)).join();
}
