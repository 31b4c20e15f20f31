import { hexNut } from '../../standards/fasteners/nuts.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { washer } from '../../standards/fasteners/washer.js';
import { floatGrip, floatHardware } from '../common/float.js';
import { capScrews, WASHER } from '../common/hardware-names.js';
import { holdsThread } from '../common/joints.js';
import { nextCapScrewLength, screwLengthWithin } from '../common/screw-length.js';
import type { HardwareRow } from '../part-kind.js';
import type { AdapterDesign } from './dimensions.js';
import type { PatternHoles } from './plan.js';
import type { Side } from './sides.js';

/** The screws of one pattern. */
export interface Screws {
  readonly size: FastenerSize;
  readonly count: number;
  /** under the head, mm; undefined where it cannot be worked out or no usual one fits */
  readonly length?: number;
  /** lengths that would do, mm */
  readonly range?: readonly [least: number, most: number];
  /** a reading that is missing to work it out */
  readonly missing?: string;
}

/** Screws that hold the nut to the plate; undefined where no listed screw passes, or none is needed. */
export function nutScrews({ nut, spacers, layout: { plate } }: AdapterDesign): Screws | undefined {
  if (!nut || !plate.nutHoles) return undefined;
  const beyond = spacers ? floatGrip(spacers) : nut.flangeThickness;
  return screwsOf(nut, plate.nutHoles, beyond, 'nut.flange.thickness');
}

/** Screws that hold the plate to the carriage. */
export function carriageScrews({ carriage, layout: { plate } }: AdapterDesign): Screws | undefined {
  return screwsOf(carriage, plate.carriageHoles, carriage.thickness?.likely, 'carriage.thickness');
}

function screwsOf(side: Side, holes: PatternHoles, beyond: number | undefined, field: string): Screws | undefined {
  const { screw } = holes.hole;
  if (screw === undefined) return undefined;
  const about = { size: screw, count: holes.centres.length };
  const range = lengthsFor(side, holes, screw, beyond);
  if (!range) return { ...about, missing: field };
  const shortest = nextCapScrewLength(screw, range[0]);
  const kept = shortest !== undefined && shortest <= range[1] + 1e-9 ? shortest : undefined;
  const longest = holes.hole.joint === 'hexagon' ? screwLengthWithin(screw, ...range) : kept;
  return longest === undefined ? { ...about, range } : { ...about, range, length: longest };
}

/** Least and most length under the head. `beyond` is what the screw passes besides the plate. */
function lengthsFor(
  { tapped }: Side,
  { hole, from, to, pocket, blind }: PatternHoles,
  screw: FastenerSize,
  beyond: number | undefined,
): readonly [number, number] | undefined {
  const { diameter, pitch } = fastenerThread(screw);
  const depth = to - from;
  const nut = hexNut(screw).height;
  const ring = washer(screw).thickness;
  const held = Math.min(depth, blind ?? Infinity);
  const sunk = pocket?.depth ?? 0;
  const end = nut + ring + 1.5 * pitch;
  if (holdsThread(hole.joint))
    return beyond === undefined ? undefined : [beyond + Math.min(1.5 * diameter, held), beyond + held];
  if (hole.joint === 'hexagon')
    return beyond === undefined ? undefined : [beyond + depth - sunk + nut + pitch, beyond + depth];
  const grip = hole.joint === 'through' ? depth + ring : depth - sunk + (hole.roof ? ring : 0);
  if (tapped) return [grip + Math.min(diameter, beyond ?? diameter), grip + (beyond ?? 2 * diameter)];
  return beyond === undefined ? undefined : [grip + beyond + end, Infinity];
}

/** Screws, nuts, washers and inserts to buy. */
export function adapterHardware(design: AdapterDesign): HardwareRow[] {
  const rows = [
    ...nutRows(design),
    ...carriageRows(design),
    ...(design.catchNut && design.screw
      ? [{ item: 'catch nut, metal', size: design.screw.designation ?? 'as the screw', count: 1 }]
      : []),
  ];
  const merged: HardwareRow[] = [];
  for (const row of rows) {
    const same = merged.findIndex(({ item, size }) => item === row.item && size === row.size);
    if (same < 0) merged.push(row);
    else merged[same] = { ...row, count: merged[same]!.count + row.count };
  }
  return merged;
}

/** Screws of the nut; where it floats, with what they stand in, and a washer under each head that holds it down. */
export function nutRows(design: AdapterDesign): HardwareRow[] {
  const { spacers, nut } = design;
  if (!nut) return [];
  const rows = rowsFor(nutScrews(design), nut, isRoofed(design));
  if (!spacers) return rows;
  const count = nut.pattern.centres.length;
  const [, ...others] = rows;
  if (spacers.spacer === 'shoulder') return [...floatHardware(spacers, count), ...others];
  const washers = rows.some(({ item }) => item.startsWith('plain washer'));
  const under = { item: WASHER, size: spacers.screw, count };
  return [...rows, ...floatHardware(spacers, count), ...(washers ? [] : [under])];
}

/** Screws of the plate, and what goes with them. */
export function carriageRows(design: AdapterDesign): HardwareRow[] {
  return rowsFor(carriageScrews(design), design.carriage, isRoofed(design));
}

function isRoofed({ printer }: AdapterDesign): boolean {
  return printer.bridging !== 'none';
}

function rowsFor(screws: Screws | undefined, { joint, tapped, pattern }: Side, roofed: boolean): HardwareRow[] {
  if (!screws) return [];
  const { size, count, length, missing } = screws;
  const screw = capScrews(size, length, count, missing);
  const nuts = { item: 'hexagon nut ISO 4032', size, count };
  const falls = pattern.diameter.likely >= washer(size).outside;
  const washers = (each: number): HardwareRow[] =>
    each === 0 || falls ? [] : [{ item: WASHER, size, count: each * count }];
  if (joint === 'insert') return [screw, { item: 'heat-set insert', size, count }];
  if (joint === 'tapped') return [screw];
  if (joint === 'hexagon') return [screw, nuts];
  const head = joint === 'through' || roofed ? 1 : 0;
  if (tapped) return [screw, ...washers(head)];
  return [screw, nuts, ...washers(head + 1)];
}
