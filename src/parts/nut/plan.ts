import { clipped, type HalfPlane } from '../../solid/convex.js';
import { earsOutline } from '../../solid/hull-outline.js';
import { circleOutline, hexagonOutline, type Outline, rectangleOutline, sidesFor } from '../../solid/outline.js';

/** Sizes of a body seen along the axis, all of one kind: finished or printed. */
export interface BodyPlan {
  readonly shape: 'round' | 'square' | 'hexagon';
  /** diameter, or across flats */
  readonly across: number;
  readonly flats?: number;
}

/** Sizes of a flange seen along the axis, all of one kind: finished or printed. */
export interface FlangePlan {
  readonly shape: 'round' | 'square' | 'rectangular' | 'two-ear';
  /** along X and Y; both the diameter for a round one */
  readonly size: readonly [number, number];
  readonly corner: number;
  readonly ear: number;
  readonly flats?: number;
}

/** A drawn outside follows its arc to within the chord error and never leaves it; corners stand on both axes. */
export function bodyOutline(body: BodyPlan, chordError: number): Outline {
  return withFlats(plainBody(body, chordError), body.flats);
}

function plainBody({ shape, across }: BodyPlan, chordError: number): Outline {
  if (shape === 'square') return rectangleOutline({ size: [across, across] });
  if (shape === 'hexagon') return hexagonOutline({ acrossFlats: across });
  return round(across, chordError);
}

/** Outline of a flange, flats cut. */
export function flangeOutline(flange: FlangePlan, chordError: number): Outline {
  return withFlats(plainFlange(flange, chordError), flange.flats);
}

function plainFlange({ shape, size, corner, ear }: FlangePlan, chordError: number): Outline {
  if (shape === 'round') return round(size[0], chordError);
  if (shape === 'two-ear') return twoEar(size, ear, chordError);
  const sides = corner > 0 ? sidesFor(corner, chordError) : 4;
  return rectangleOutline({ size, radius: corner, sides });
}

function round(diameter: number, chordError: number): Outline {
  return circleOutline({ radius: diameter / 2, sides: sidesFor(diameter / 2, chordError) });
}

function twoEar([over, across]: readonly [number, number], ear: number, chordError: number): Outline {
  const sides = sidesFor(Math.max(across, ear) / 2, chordError);
  return earsOutline({ radius: across / 2, earRadius: ear / 2, spacing: over - ear, sides });
}

function withFlats(outline: Outline, flats: number | undefined): Outline {
  if (flats === undefined) return outline;
  const sides: HalfPlane[] = [
    [0, 1, flats / 2],
    [0, -1, flats / 2],
  ];
  return sides.reduce<Outline>(clipped, outline);
}

/** Radial wall between the thread's major diameter and the outside of the body. */
export function wallBeside(body: BodyPlan, thread: { readonly major: number }): number {
  return (Math.min(body.across, body.flats ?? Infinity) - thread.major) / 2;
}
