import type { Assumptions } from '../../sheet/assumptions.js';
import { measured, stated } from '../../sheet/measured-field.js';
import type { HolesSheet, PatternSheet } from '../../sheet/sections/holes.js';
import { cosd, sind } from '../../solid/angles.js';
import { socketCapScrew } from '../../standards/fasteners/cap-screw.js';
import { clearanceHole } from '../../standards/fasteners/clearance-hole.js';
import { FASTENER_SIZES, type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { plain } from '../../units/format.js';
import { exactly, type Measured } from '../../units/measured.js';

/** Where the holes of a pattern stand. */
export interface HolePlaces {
  /** centres, hole 1 first, counter-clockwise */
  readonly centres: readonly (readonly [number, number])[];
  /** given by its distances along X and Y */
  readonly isRectangle?: boolean;
}

/** Where holes stand and what goes through them, finished sizes. */
export interface HolePattern extends HolePlaces {
  /** across the pattern: circle diameter, or diagonal of the rectangle, or twice the farthest hole's distance from the middle */
  readonly spacing: Measured;
  readonly diameter: Measured;
  readonly screw?: FastenerSize;
  /** nobody named a screw, and the hole is no usual one of the largest that passes: a smaller one may be meant */
  readonly screwUnsure: boolean;
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
  const { spacing, ...places } = placesOf(sheet, field, assumptions, read);
  const diameter = sheet.diameter ? read(sheet.diameter) : exactly(fromScrew(sheet, field, assumptions));
  const screw = sheet.screw ?? largestThrough(diameter.likely);
  if (!sheet.screw && screw)
    assumptions.note(`${field}.screw`, screw, `largest screw that passes a hole of ${plain(diameter.likely)} mm`);
  return {
    ...places,
    spacing,
    diameter,
    ...(screw ? { screw } : {}),
    screwUnsure: !sheet.screw && !(screw && diameter.likely <= clearanceHole(screw, 'coarse') + 1e-9),
    screwDiameter: screw ? fastenerThread(screw).diameter : 0,
  };
}

function placesOf(
  sheet: PatternSheet,
  field: string,
  assumptions: Assumptions,
  read: Read,
): HolePlaces & Pick<HolePattern, 'spacing'> {
  const { start = 0, rectangle, at } = sheet;
  if (rectangle) {
    const centres = corners(rectangle, start);
    return { centres, isRectangle: true, spacing: read({ value: Math.hypot(...rectangle) }) };
  }
  if (at) {
    const centres = at.map((point) => turned(point, start));
    return { centres, spacing: read({ value: 2 * reach(centres) }) };
  }
  if (sheet.start === undefined) assumptions.note(`${field}.start`, 0, 'hole 1 on +X');
  return { centres: around(sheet.circle!.value, sheet.count!, start), spacing: read(sheet.circle!) };
}

/** Distance of the farthest hole from the middle of all. */
function reach(centres: readonly (readonly [number, number])[]): number {
  const middle = (axis: 0 | 1) => centres.reduce((sum, centre) => sum + centre[axis], 0) / centres.length;
  const [x, y] = [middle(0), middle(1)];
  return Math.max(...centres.map((centre) => Math.hypot(centre[0] - x, centre[1] - y)));
}

function fromScrew(sheet: PatternSheet, field: string, assumptions: Assumptions): number {
  const series = assumptions.or(sheet.fit, `${field}.fit`, 'medium', 'clearance holes of ISO 273');
  return clearanceHole(sheet.screw!, series);
}

/**
 * Distances along X and Y of the holes of a rectangle, its sides along the axes: of a square only where it was given as
 * one; undefined for other patterns, which are stated by their circle.
 */
export function rectangleOf({
  centres,
  isRectangle = false,
}: HolePlaces): { readonly along_x: number; readonly along_y: number } | undefined {
  const [x, y] = [Math.abs(centres[0]?.[0] ?? 0), Math.abs(centres[0]?.[1] ?? 0)];
  const isCorner = ([u, v]: readonly [number, number]) =>
    Math.abs(Math.abs(u) - x) < 1e-6 && Math.abs(Math.abs(v) - y) < 1e-6;
  const stands = centres.length === 4 && centres.every(isCorner) && x > 1e-6 && y > 1e-6;
  return stands && (isRectangle || Math.abs(x - y) > 1e-6) ? { along_x: 2 * x, along_y: 2 * y } : undefined;
}

function around(circle: number, count: number, start: number): [number, number][] {
  return Array.from({ length: count }, (_, i) => polar(circle / 2, start + (360 * i) / count));
}

function corners([x, y]: readonly [number, number], start: number): [number, number][] {
  const signs = [
    [1, 1],
    [-1, 1],
    [-1, -1],
    [1, -1],
  ] as const;
  return signs.map(([sx, sy]) => turned([(sx * x) / 2, (sy * y) / 2], start));
}

/** A point turned about the axis, exact at 90° steps. */
export function turned([x, y]: readonly [number, number], degrees: number): [number, number] {
  const [c, s] = [cosd(degrees), sind(degrees)];
  return [x * c - y * s, x * s + y * c];
}

/** A point by distance and angle, exact at 90° steps. */
export function polar(radius: number, degrees: number): [number, number] {
  return [radius * cosd(degrees), radius * sind(degrees)];
}

/** The largest screw that passes a hole; none where its head passes too. */
function largestThrough(diameter: number): FastenerSize | undefined {
  const largest = FASTENER_SIZES.filter((size) => clearanceHole(size, 'fine') <= diameter + 1e-9).at(-1);
  return largest && socketCapScrew(largest).headDiameter > diameter ? largest : undefined;
}
