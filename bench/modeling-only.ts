import modeling from '@jscad/modeling';
import { nutCutter } from '../src/parts/common/thread-shape.js';
import type { NutDesign } from '../src/parts/nut/dimensions.js';
import { endsOf } from '../src/parts/nut/solid.js';
import { measureMesh } from '../src/solid/measure.js';

const { booleans, extrusions, geometries, primitives, transforms } = modeling;
const COLUMNS = 96;

/** The same nut by the modelling library's own extrusion and booleans, for comparison; gives its open edges. */
export function modellingOnlyNut({ printed, screw }: NutDesign): {
  readonly openEdges: number;
  readonly facets: number;
} {
  const { bottom, top } = endsOf(printed);
  const flange = printed.flange!;
  const body = primitives.cylinder({
    radius: printed.body.across / 2,
    height: top,
    center: [0, 0, top / 2],
    segments: COLUMNS,
  });
  const plate = primitives.cylinder({
    radius: flange.size[0] / 2,
    height: flange.thickness,
    center: [0, 0, flange.thickness / 2],
    segments: COLUMNS,
  });
  const holes = printed.holes!.centres.map(([x, y]) =>
    primitives.cylinder({
      radius: printed.holes!.diameter / 2,
      height: 3 * flange.thickness,
      center: [x, y, flange.thickness / 2],
      segments: 32,
    }),
  );
  const run = { starts: screw.starts, hand: screw.hand, columns: COLUMNS, from: bottom - 1, to: top + 1 };
  const cutter = sliced(nutCutter(printed.thread, run));
  const nut = booleans.subtract(booleans.union(body, plate), cutter, ...holes);
  const corners: number[] = [];
  for (const { vertices } of geometries.geom3.toPolygons(nut)) {
    for (let i = 2; i < vertices.length; i++)
      for (const corner of [vertices[0]!, vertices[i - 1]!, vertices[i]!]) corners.push(...corner);
  }
  const triangles = Uint32Array.from({ length: corners.length / 3 }, (_, i) => i);
  const { openEdges, facets } = measureMesh({ positions: Float64Array.from(corners, Math.fround), triangles });
  return { openEdges, facets };
}

/** The cutter as slices turned on top of each other: the transverse section of the thread, 24 slices a pitch. */
function sliced(thread: ReturnType<typeof nutCutter>) {
  const { ridge, pitch, starts, from, to } = thread;
  const section = Array.from({ length: COLUMNS }, (_, i): [number, number] => {
    const angle = (2 * Math.PI * i) / COLUMNS;
    const radius = radiusAt(ridge, pitch, -(pitch * starts * i) / COLUMNS);
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
  const height = to - from;
  const cutter = extrusions.extrudeLinear(
    { height, twistAngle: (2 * Math.PI * height) / (pitch * starts), twistSteps: Math.ceil((24 * height) / pitch) },
    primitives.polygon({ points: section }),
  );
  return transforms.translate([0, 0, from], cutter);
}

function radiusAt(ridge: readonly (readonly [number, number])[], pitch: number, z: number): number {
  const at = ((z % pitch) + pitch) % pitch;
  const closed = [...ridge, [ridge[0]![0] + pitch, ridge[0]![1]] as const];
  const shifted = at < closed[0]![0] ? at + pitch : at;
  const i = closed.findIndex(([end]) => end > shifted);
  const [[z0, r0], [z1, r1]] = [closed[i - 1]!, closed[i]!];
  return r0 + ((r1 - r0) * (shifted - z0)) / (z1 - z0);
}
