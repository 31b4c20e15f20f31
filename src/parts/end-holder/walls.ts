import { thinnest, type Wall } from '../common/walls.js';
import { edgeDistance } from './layout.js';
import { type HolderPlan, isLipped, mouthRadius, openRadius, shoulderHeight, wallRadius } from './plan.js';

/** Plastic between the middle and the nearest edge or hole, finished size. */
export function wallAround(plan: HolderPlan): number {
  const radius = wallRadius(plan);
  return Math.min(toEdge(plan, radius), toHoles(plan, radius));
}

/** The thinnest wall of a holder and its cover by arithmetic. Sizes of one kind. */
export function thinnestWall(plan: HolderPlan): Wall {
  const { holes, cover, pocket } = plan;
  const radius = holes.diameter / 2;
  const open = openRadius(plan);
  const floor = shoulderHeight(plan);
  const apart = holes.centres.flatMap(([x, y], i) =>
    holes.centres.slice(0, i).map(([u, v]) => Math.hypot(x - u, y - v) - 2 * radius),
  );
  return thinnest([
    { where: 'middle and edge', size: toEdge(plan, open) },
    { where: 'middle and hole', size: toHoles(plan, open) },
    { where: 'hole and edge', size: Math.min(...holes.centres.map((at) => edgeDistance(plan, at))) - radius },
    { where: 'thickness', size: floor ?? plan.thickness },
    ...apart.map((size) => ({ where: 'holes', size })),
    ...(cover ? [{ where: 'plate over the bearing', size: cover.thickness }] : []),
    ...(cover ? [{ where: 'opening of the plate and hole', size: toHoles(plan, cover.bore / 2) }] : []),
    ...(isLipped(pocket)
      ? [{ where: 'ring of the lip', size: pocket.diameter / 2 + pocket.lip.ring - mouthRadius(pocket) }]
      : []),
  ]);
}

function toEdge({ length, width }: HolderPlan, radius: number): number {
  return Math.min(length, width) / 2 - radius;
}

function toHoles({ holes }: HolderPlan, radius: number): number {
  return Math.min(...holes.centres.map((at) => Math.hypot(...at))) - holes.diameter / 2 - radius;
}
