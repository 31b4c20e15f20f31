import type { Assumptions } from '../../sheet/assumptions.js';
import { measured, stated } from '../../sheet/measured-field.js';
import type { HolesSheet, PatternSheet } from '../../sheet/sections/holes.js';
import { cosd, sind } from '../../solid/angles.js';
import { clearanceHole } from '../../standards/fasteners/clearance-hole.js';
import { FASTENER_SIZES, type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { plain } from '../../units/format.js';
import { exactly, type Measured } from '../../units/measured.js';

/** Where holes stand and what goes through them, finished sizes. */
export interface HolePattern {
  /** centres, hole 1 first, counter-clockwise */
  readonly centres: readonly (readonly [number, number])[];
  /** across the pattern: circle diameter, or diagonal of the rectangle */
  readonly spacing: Measured;
  readonly diameter: Measured;
  readonly screw?: FastenerSize;
  /** nominal diameter of the screw; 0 where no listed screw passes */
  readonly screwDiameter: number;
}

/**
 * The pattern of a part's own holes: sizes are what is wanted, uncertain only where the sheet says so.
 * @param field where it stands in the sheet, for the list of assumptions
 */
export function ownPattern(sheet: HolesSheet | PatternSheet, field: string, assumptions: Assumptions): HolePattern {
  return pattern(sheet, field, assumptions, (reading) => stated(reading));
}

/** The pattern of a thing that was measured with an instrument of this half-width. */
export function measuredPattern(
  sheet: PatternSheet,
  field: string,
  assumptions: Assumptions,
  instrument: number,
): HolePattern {
  return pattern(sheet, field, assumptions, (reading) => measured(reading, instrument));
}

type Read = (reading: { readonly value: number; readonly half?: number }) => Measured;

function pattern(sheet: PatternSheet, field: string, assumptions: Assumptions, read: Read): HolePattern {
  const start =
    sheet.start ?? (sheet.rectangle ? 0 : assumptions.or<number>(undefined, `${field}.start`, 0, 'hole 1 on +X'));
  const centres = sheet.rectangle ? corners(sheet.rectangle, start) : around(sheet.circle!.value, sheet.count!, start);
  const spacing = sheet.rectangle ? exactly(Math.hypot(...sheet.rectangle)) : read(sheet.circle!);
  const diameter = sheet.diameter ? read(sheet.diameter) : exactly(fromScrew(sheet, field, assumptions));
  const screw = sheet.screw ?? largestThrough(diameter.likely);
  if (!sheet.screw && screw)
    assumptions.note(`${field}.screw`, screw, `largest screw that passes a hole of ${plain(diameter.likely)} mm`);
  return {
    centres,
    spacing,
    diameter,
    ...(screw ? { screw } : {}),
    screwDiameter: screw ? fastenerThread(screw).diameter : 0,
  };
}

function fromScrew(sheet: PatternSheet, field: string, assumptions: Assumptions): number {
  const series = assumptions.or(sheet.fit, `${field}.fit`, 'medium', 'clearance holes of ISO 273');
  return clearanceHole(sheet.screw!, series);
}

function around(circle: number, count: number, start: number): [number, number][] {
  return Array.from({ length: count }, (_, i) => polar(circle / 2, start + (360 * i) / count));
}

function corners([x, y]: readonly [number, number], start: number): [number, number][] {
  const turn = ([px, py]: readonly [number, number]): [number, number] => [
    px * cosd(start) - py * sind(start),
    px * sind(start) + py * cosd(start),
  ];
  return [turn([x / 2, y / 2]), turn([-x / 2, y / 2]), turn([-x / 2, -y / 2]), turn([x / 2, -y / 2])];
}

/** A point by distance and angle, exact at 90° steps. */
export function polar(radius: number, degrees: number): [number, number] {
  return [radius * cosd(degrees), radius * sind(degrees)];
}

function largestThrough(diameter: number): FastenerSize | undefined {
  return FASTENER_SIZES.filter((size) => clearanceHole(size, 'fine') <= diameter + 1e-9).at(-1);
}
