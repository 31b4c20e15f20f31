import { boreOf, type Pocket, pocketRadius } from '../common/joints.js';
import { type PrintSizes, printSizes } from '../common/print-sizes.js';
import { roofLayers } from '../common/roof.js';
import { lessChords } from '../common/wall-in-file.js';
import { thinnest, type Wall } from '../common/walls.js';
import type { NutDesign } from './dimensions.js';
import { jointOf, pocketOf } from './pockets.js';
import { pocketFloor, pocketRoof } from './print-advice.js';
import { variantWalls } from './variants/least-wall.js';
import { widestBore } from './variants/twin.js';
import { besideBore, holesApart, holesToBore, holesToEdge } from './walls.js';

/** The thinnest wall of a nut by arithmetic as its polygons stand in the file. */
export function leastWallInFile(design: NutDesign): Wall {
  return lessChords(leastNutWall(design), design.printer.chordError);
}

/** The thinnest wall of a nut by arithmetic at the sizes of the file, its family's own counted. */
function leastNutWall(design: NutDesign): Wall {
  const { printed, printer, material, family } = design;
  const print = printSizes(material, printer);
  const bore = family?.kind === 'holder' ? print.inside(family.bore) / 2 : widestBore(printed, family);
  const centres = printed.holes?.centres ?? [];
  const opening = openingInFile(design, print);
  return thinnest([
    { where: 'bore to outside', size: besideBore(printed, bore) },
    { where: 'length', size: printed.length },
    ...(printed.flange ? [{ where: 'flange', size: printed.flange.thickness }] : []),
    ...(centres.length > 0
      ? [
          { where: 'holes to bore', size: holesToBore(centres, opening, bore) },
          { where: 'holes to edge', size: holesToEdge(printed, centres, opening) },
          { where: 'between holes', size: holesApart(centres, opening) },
        ]
      : []),
    ...floorOf(design),
    ...variantWalls(design, { centres, opening }, print),
  ]);
}

/** Radius of the widest place of a hole. */
function openingInFile({ holes }: NutDesign, { inside }: PrintSizes): number {
  if (!holes) return 0;
  const bore = inside(boreOf(jointOf(holes))) / 2;
  const sunk = pocketOf(holes);
  return sunk ? Math.max(bore, pocketRadius(inFile(sunk.pocket, inside))) : bore;
}

function inFile(pocket: Pocket, inside: PrintSizes['inside']): Pocket {
  return pocket.kind === 'round'
    ? { ...pocket, diameter: inside(pocket.diameter) }
    : { ...pocket, acrossFlats: inside(pocket.acrossFlats) };
}

/** What is left under a pocket, its roof aside. */
function floorOf(design: NutDesign): Wall[] {
  const floor = pocketFloor(design);
  const roof = pocketRoof(design);
  if (floor === undefined) return [];
  return [{ where: 'floor of a pocket', size: floor - (roof ? roofLayers(roof) * roof.layer : 0) }];
}
