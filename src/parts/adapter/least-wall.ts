import { thinnest, type Wall } from '../common/walls.js';
import { cutoutsApart } from './cutouts.js';
import type { AdapterDesign } from './dimensions.js';
import { cutoutOutline, insideEdge, type PatternHoles, rimThickness } from './plan.js';

/**
 * The thinnest wall of a plate by arithmetic, finished size: what `clocking` finds beside its openings, and every
 * thickness and floor. Undefined for a free polygon, whose own necks no check knows, and where a cut-out breaks through
 * the edge, whose horns run out to nothing.
 */
export function thinnestByArithmetic({ layout, printer }: AdapterDesign): Wall | undefined {
  const { plate, ligament } = layout;
  if (plate.outline.shape === 'polygon') return undefined;
  const { thickness, outerStep, innerStep, catchPocket, rim, bore, keys, cutouts } = plate;
  const sunk = Math.max(outerStep?.depth ?? 0, catchPocket?.depth ?? 0);
  const edge = insideEdge(plate);
  const within = cutouts.map((cutout) => Math.min(...cutoutOutline(cutout).map(edge)));
  if (within.some((gap) => gap <= 0)) return undefined;
  const layers = printer.bridging === 'none' ? 0 : 4 * printer.layer;
  return thinnest([
    { where: ligament.what, size: ligament.gap },
    { where: 'thickness', size: thickness - sunk - (innerStep?.depth ?? 0) },
    ...[plate.nutHoles, plate.carriageHoles].flatMap((holes) => (holes ? floorsOf(holes, layers) : [])),
    ...(rim ? [{ where: 'rim', size: Math.min(rimThickness(rim, bore), rim.height) }] : []),
    ...keys.map((key) => ({ where: 'key', size: Math.min(...key.size, key.height) })),
    ...within.map((size) => ({ where: 'cut-out and edge', size })),
    ...(cutouts.length > 1 ? [{ where: 'cut-outs', size: cutoutsApart(plate) }] : []),
  ]);
}

/** What is left under a pocket, its roof aside, and behind a blind hole. */
function floorsOf({ from, to, pocket, blind }: PatternHoles, roof: number): Wall[] {
  return [
    ...(pocket ? [{ where: 'floor of a pocket', size: to - from - pocket.depth - roof }] : []),
    ...(blind === undefined ? [] : [{ where: 'behind a blind hole', size: to - from - blind }]),
  ];
}
