import { measureMesh } from '../../solid/measure.js';
import { type Body, type Placement, place } from '../../solid/mesh.js';
import { weld } from '../../solid/weld.js';
import { onBed } from '../on-bed.js';
import type { BodyRow } from '../report.js';

/** Room between the bodies and the planes x = 0 and y = 0, mm. */
const MARGIN = 8;
/** Share of its volume that a body may gain or lose by being rounded where it lies. */
const SAME = 1e-5;

/**
 * Bodies as they are printed: each turned the way up that it is printed, standing on z = 0 beside the others, all
 * coordinates positive. They are moved in their corners and rounded to float32 once there, so that items of a model need
 * no transform; each is measured again.
 *
 * @param bodies as modelled, float32  [mm]
 * @param rows   the same in the report: their bounds, and which way up they are printed
 * @returns the bodies on the bed
 * @throws Error a body is not whole where it lies: our own fault
 */
export function layBodies(bodies: readonly Body[], rows: readonly BodyRow[]): Body[] {
  const placements = onBed(rows);
  const moved = bodies.map((body, i) => place(body, placements[i]!));
  const low = [0, 1].map((axis) =>
    moved.reduce((least, { positions }) => Math.min(least, lowest(positions, axis)), Infinity),
  );
  return bodies.map((body, i) => {
    const { by = [0, 0, 0], ...turned } = placements[i]!;
    const placement: Placement = { ...turned, by: [by[0] + MARGIN - low[0]!, by[1] + MARGIN - low[1]!, by[2]] };
    return whole({ ...weld(place(body, placement)), name: body.name, material: body.material }, rows[i]!);
  });
}

function lowest(positions: Float64Array, axis: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = axis; i < positions.length; i += 3) least = Math.min(least, positions[i]!);
  return least;
}

function whole(body: Body, { volume }: BodyRow): Body {
  const found = measureMesh(body);
  const isWhole = found.openEdges === 0 && found.repeatedVertexFacets === 0 && found.shells === 1;
  if (!isWhole || Math.abs(found.volume - volume) > SAME * volume || found.bounds[0].some((least) => least < 0))
    throw new Error(
      `${body.name} is not whole as it lies on the bed: ${found.openEdges} open edges, ${found.volume} mm³`,
    );
  return body;
}
