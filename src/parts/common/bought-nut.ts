import type * as z from 'zod';
import { type Holding, holding } from '../../mechanics/power-screw/holding.js';
import { map, quantity, reading, word } from '../../sheet/fields.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { hexagonOutline, type Outline, rectangleOutline } from '../../solid/outline.js';
import { plain } from '../../units/format.js';

/** Room across the flats of a bought nut, on the diameter. @source common-practice */
const NUT_ROOM = 0.2;

/** How far a nut that stands by keeps off the working one, mm. @source common-practice */
export const CATCH_GAP = { usual: 0.8, limits: { min: 0.5, max: 1 } };

/** Turns of thread that a metal nut wants, to take a load square. @source common-practice */
const LEAST_TURNS = 2;

/** Why a metal nut is too thin to catch what falls on it; undefined where it is not. */
export function thinCatch(height: number, pitch: number): string | undefined {
  return thinNut(height, pitch, { holds: 'what falls on it', field: 'catch_nut.height' });
}

/** Why a metal nut is too thin for what it must hold; undefined where it is not. */
export function thinNut(
  height: number,
  pitch: number,
  { holds, field }: { readonly holds: string; readonly field: string },
): string | undefined {
  const turns = height / pitch;
  return turns < LEAST_TURNS
    ? `the metal nut is ${plain(height, 1)} mm high, ${plain(turns, 1)} turns of its thread, and may not hold ${holds}; take one of ${LEAST_TURNS} turns or more (${field})`
    : undefined;
}

const measured = {
  shape: word(['hexagon', 'square']).optional(),
  across_flats: reading('length', { above: 0, most: 100 }),
  height: reading('length', { above: 0, most: 100 }),
};

/** A bought metal nut of the screw's thread. */
export const boughtNutSection = map(measured);

/** One that stands by until the working nut fails. */
export const catchNutSection = map({
  ...measured,
  gap: quantity('length', { least: 0.2, most: 5 }, 'to the working nut').optional(),
});
export type BoughtNutSheet = z.output<typeof boughtNutSection>;
export type CatchNutSheet = z.output<typeof catchNutSection>;

/** A pocket for a bought nut, finished sizes. */
export interface NutPocket {
  readonly shape: 'hexagon' | 'square';
  readonly acrossFlats: number;
  readonly depth: number;
  /** the nut that goes in */
  readonly nut: { readonly acrossFlats: number; readonly height: number };
}

/** The pocket of a measured nut, deeper than it by so much. */
export function nutPocket({ shape = 'hexagon', across_flats, height }: BoughtNutSheet, extra = 0): NutPocket {
  return {
    shape,
    acrossFlats: across_flats.value + NUT_ROOM,
    depth: height.value + extra,
    nut: { acrossFlats: across_flats.value, height: height.value },
  };
}

/** Radius of a pocket over its corners. */
export function nutPocketReach({ shape, acrossFlats }: Pick<NutPocket, 'shape' | 'acrossFlats'>): number {
  return shape === 'hexagon' ? acrossFlats / Math.sqrt(3) : acrossFlats / Math.SQRT2;
}

/** Outline of a bought nut, or of its pocket, a corner or a flat on +X. */
export function nutPocketOutline({ shape }: Pick<NutPocket, 'shape'>, acrossFlats: number): Outline {
  return shape === 'hexagon' ? hexagonOutline({ acrossFlats }) : rectangleOutline({ size: [acrossFlats, acrossFlats] });
}

/** Whether a screw keeps its load without power. */
export function screwHolding({ lead, major, pitchDiameter, flankAngle }: Screw): Holding {
  return holding({ lead, major: major.likely, pitchDiameter: pitchDiameter.likely, flankAngle });
}

/** Said wherever the screw does not surely hold its load. */
export const CATCH_OFFER =
  'The screw may not hold its load without power: a catch nut (catch_nut), a metal one 0.5 to 1 mm off the working nut, takes over the day that one fails.';

/** The same as what a check found. */
export const CATCH_FINDING =
  'none, and the screw may not hold its load without power; a metal one (catch_nut) 0.5 to 1 mm off the working nut takes over the day that one fails';
