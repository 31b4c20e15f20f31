import type { Printer } from '../../presets/printer.js';
import { roofLayers } from '../common/roof.js';
import { thinnest, type Wall } from '../common/walls.js';
import type { AdapterDesign } from './dimensions.js';
import { thinnestNeck } from './necks.js';
import { type PatternHoles, rimThickness } from './plan.js';
import { bedFace, opensOnBed } from './print-advice.js';

/**
 * The thinnest wall of a plate by arithmetic, finished size: what `clocking` finds beside its openings, the necks of its
 * plan, and every thickness and floor.
 */
export function thinnestByArithmetic({ layout, printer }: Pick<AdapterDesign, 'layout' | 'printer'>): Wall {
  const { plate, ligament } = layout;
  const { thickness, outerStep, innerStep, catchPocket, rim, bore, keys } = plate;
  const sunk = Math.max(outerStep?.depth ?? 0, catchPocket?.depth ?? 0);
  const bed = bedFace(plate);
  return thinnest([
    { where: ligament.what, size: ligament.gap },
    { where: 'neck of the outline', size: thinnestNeck(plate) },
    { where: 'thickness', size: thickness - sunk - (innerStep?.depth ?? 0) },
    ...[plate.nutHoles, plate.carriageHoles].flatMap((holes) =>
      holes ? floorsOf(holes, roofOf(holes, bed, printer)) : [],
    ),
    ...(rim ? [{ where: 'rim', size: Math.min(rimThickness(rim, bore), rim.height) }] : []),
    ...keys.map((key) => ({ where: 'key', size: Math.min(...key.size, key.height) })),
  ]);
}

/** Height of the roof that closes a pocket on the bed. */
function roofOf(holes: PatternHoles, bed: ReturnType<typeof bedFace>, { layer }: Printer): number {
  const { roof } = holes;
  return roof && opensOnBed(holes, bed) ? roofLayers({ kind: roof, layer }) * layer : 0;
}

/** What is left under a pocket, its roof aside, and behind a blind hole. */
function floorsOf({ from, to, pocket, blind }: PatternHoles, roof: number): Wall[] {
  return [
    ...(pocket ? [{ where: 'floor of a pocket', size: to - from - pocket.depth - roof }] : []),
    ...(blind === undefined ? [] : [{ where: 'behind a blind hole', size: to - from - blind }]),
  ];
}
