import { circleOutline, type Outline, sidesFor } from '../../../solid/outline.js';
import type { Shape } from '../../../solid/recipe.js';
import { angleOf } from '../../common/drawn/hole-circle.js';
import { type SizeWay, spreadOf } from '../../common/drawn/spread.js';
import { boreOf } from '../../common/joints.js';
import { type PrintSizes, printSizes, TRUE_SIZES } from '../../common/print-sizes.js';
import type { Point, SizeChoice } from '../../part-views.js';
import type { AdapterDesign } from '../dimensions.js';
import { isConvex, type PatternHoles, type PlateSizes, plateOutline } from '../plan.js';
import { bedFace } from '../print-advice.js';
import { adapterBody } from '../solid.js';

/** How finely arcs are drawn [mm]. */
const CHORD = 0.005;

/** A plate at the sizes of one choice, with what several views ask of it. */
export interface PlateInSight {
  readonly design: AdapterDesign;
  readonly choice: SizeChoice;
  readonly plate: PlateSizes;
  /** its body as it is drawn; views that show it share it, so that it is built once */
  readonly shape: Shape;
  readonly print: PrintSizes;
  readonly outline: Outline;
  readonly top: number;
  /** chamfer of the edge that lies on the bed; 0 where there is none */
  readonly relief: number;
  readonly bed: 'carriage' | 'outside';
  /** directions of the two halves of the section, upper one first [degrees] */
  readonly cut: readonly [number, number];
  readonly spread: (size: number, way: SizeWay) => { spread?: number };
}

/** A plate at the sizes of one choice. */
export function inSight(design: AdapterDesign, choice: SizeChoice): PlateInSight {
  const { plate } = design.layout;
  const print = choice === 'finished' ? TRUE_SIZES : printSizes(design.material, design.printer);
  const outline = plateOutline(plate, print, CHORD);
  return {
    design,
    choice,
    plate,
    shape: adapterBody(design, choice).recipe.shape,
    print,
    outline,
    top: print.along(plate.thickness),
    relief: isConvex(outline) ? plate.relief : 0,
    bed: bedFace(plate),
    cut: directionsOf(plate),
    spread: spreadOf(design, choice),
  };
}

/** Through a hole of the nut, or a key, on one side, and one of the carriage on the other. */
function directionsOf({ nutHoles, keys, carriageHoles }: PlateSizes): readonly [number, number] {
  const first = nutHoles?.centres[0] ?? keys[0]?.center;
  const angles = carriageHoles.centres.map(angleOf);
  const upper = first ? angleOf(first) : angles[0]!;
  const lower = angles.reduce((best, one) => (apart(one, upper) > apart(best, upper) + 1e-9 ? one : best));
  return [upper, lower];
}

/** Angle between two directions, 0 to 180 degrees. */
function apart(a: number, b: number): number {
  return Math.abs(((((a - b) % 360) + 540) % 360) - 180);
}

/** A point of the plan at these sizes. */
export function placed([x, y]: Point, { across }: PrintSizes): Point {
  return [across(x), across(y)];
}

/** A circle as an outline fine enough to be cut. */
export function disc(diameter: number, center: Point): Outline {
  const radius = diameter / 2;
  return circleOutline({ radius, sides: sidesFor(radius, CHORD), center });
}

/** Both patterns, that of the nut first where there is one. */
export function patternsOf({ nutHoles, carriageHoles }: PlateSizes): readonly (readonly ['N' | 'C', PatternHoles])[] {
  return [...(nutHoles ? [['N', nutHoles] as const] : []), ['C', carriageHoles] as const];
}

/** Diameter of a pattern's holes as it is stated. */
export function holeDiameter({ hole }: PatternHoles, { inside }: PrintSizes): number {
  return inside(boreOf(hole));
}

/** Where a blind hole runs; the whole of the plate where it goes through. */
export function spanOf({ from, to, opens, blind }: PatternHoles, { along }: PrintSizes): readonly [number, number] {
  const [low, high] = [along(from), along(to)];
  if (blind === undefined) return [low, high];
  return opens === 'low' ? [low, Math.min(high, low + along(blind))] : [Math.max(low, high - along(blind)), high];
}
