import type { Sizes } from '../../src/parts/part-kind.js';
import type { HoleRow } from '../../src/parts/part-views.js';
import { cylindersIn, type StepPlace } from './step-file.js';

/** How far a size of a STEP file may be off the report's, mm. */
const CLOSE = 1e-6;

/** Sizes that state the diameter of a turned face; a thread is none. */
const IS_DIAMETER = /^(?!thread_)(?:.*_)?(?:diameter|bore|pilot_hole)$/;

/** Diameters of a report by name; those of a group as `group.name`. A hexagon's is the one over its corners: left out. */
export function diametersOf(sizes: Sizes, group = ''): [name: string, value: number][] {
  return Object.entries(sizes).flatMap(([name, value]) => {
    if (typeof value === 'object') return diametersOf(value, `${name}.`);
    const isHexagon = name === 'bore_diameter' && isAcrossCorners(value, sizes.bore_across_flat);
    return IS_DIAMETER.test(name) && !isHexagon ? [[group + name, value] as [string, number]] : [];
  });
}

/** Clearance is the same over corners and over flats, so the two are not quite a hexagon's. */
function isAcrossCorners(diameter: number, flats: Sizes[string] | undefined): boolean {
  return typeof flats === 'number' && Math.abs((diameter * Math.cos(Math.PI / 6)) / flats - 1) < 2e-3;
}

/** Diameters that no cylinder of a STEP file has. */
export function withoutCylinder(step: string, diameters: readonly [name: string, value: number][]): string[] {
  const radii = cylindersIn(step).map(({ radius }) => radius);
  return diameters
    .filter(([, value]) => !radii.some((radius) => Math.abs(2 * radius - value) < 2 * CLOSE))
    .map(([name, value]) => `${name} ${value}`);
}

/** Rows of a hole table that no cylinder of a STEP file stands at, by its place and its diameter; a slot by both its ends. */
export function holesMissing(step: string, holes: readonly HoleRow[]): string[] {
  const cylinders = cylindersIn(step);
  return holes
    .filter(({ at, height, diameter }) => {
      const near = cylinders.filter(({ radius }) => Math.abs(2 * radius - diameter) < 2 * CLOSE);
      const ends = near.flatMap((one) => near.map((other) => between(one, other)));
      return !ends.some((place) => awayFrom(place, [at[0], at[1], height]) < CLOSE);
    })
    .map(
      ({ label, at, height, diameter }) => `${label} ⌀${diameter} at ${at}${height === undefined ? '' : `, ${height}`}`,
    );
}

function between(one: StepPlace, other: StepPlace): StepPlace {
  return { at: one.at.map((value, i) => (value + other.at[i]!) / 2), axis: one.axis };
}

/** Distance of a point from an axis; in plan, from one that stands, where the point has no height. */
function awayFrom({ at, axis }: StepPlace, [x, y, z]: readonly [number, number, number | undefined]): number {
  const from = [x - at[0]!, y - at[1]!, z === undefined ? 0 : z - at[2]!];
  if (z === undefined)
    return Math.abs(Math.abs(axis[2]!) - 1) < CLOSE ? Math.hypot(from[0]!, from[1]!) : Number.POSITIVE_INFINITY;
  const along = from[0]! * axis[0]! + from[1]! * axis[1]! + from[2]! * axis[2]!;
  return Math.hypot(...from.map((value, i) => value - along * axis[i]!));
}
