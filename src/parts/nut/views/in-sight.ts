import type { Outline } from '../../../solid/outline.js';
import type { BodyRecipe } from '../../../solid/recipe.js';
import { type SizeWay, spreadOf } from '../../common/drawn/spread.js';
import { type PrintSizes, printSizes, TRUE_SIZES } from '../../common/print-sizes.js';
import type { Point, SizeChoice } from '../../part-views.js';
import type { NutDesign, NutSizes } from '../dimensions.js';
import { bodyOutline, flangeOutline } from '../plan.js';
import { endsOf } from '../solid.js';
import { nutBodies } from '../variants/bodies.js';

/** Features of a nut whose edges matter where they are hidden, too. */
export const HIDDEN = ['pocket', 'clamp', 'pin'] as const;

/** A hole as it stands, and its heights. */
export interface HoleInSight {
  readonly at: Point;
  readonly diameter: number;
  readonly ends: readonly [number, number];
}

/** A nut at the sizes of one choice, with what several views ask of it. */
export interface NutInSight {
  readonly design: NutDesign;
  readonly sizes: NutSizes;
  readonly print: PrintSizes;
  readonly bottom: number;
  readonly top: number;
  readonly body: Outline;
  readonly plate: Outline | undefined;
  readonly holes: readonly HoleInSight[];
  readonly bodies: () => readonly BodyRecipe[];
  readonly spread: (size: number, way: SizeWay) => { spread?: number };
}

/** A nut at the sizes of one choice. */
export function inSight(design: NutDesign, choice: SizeChoice): NutInSight {
  const sizes = design[choice];
  const print = choice === 'finished' ? TRUE_SIZES : printSizes(design.material, design.printer);
  const { chordError } = design.printer;
  let bodies: readonly BodyRecipe[] | undefined;
  return {
    design,
    sizes,
    print,
    ...endsOf(sizes),
    body: bodyOutline(sizes.body, chordError),
    plate: sizes.flange && flangeOutline(sizes.flange, chordError),
    holes: holesOf(design, sizes),
    bodies: () => {
      bodies ??= nutBodies(design, choice).map(({ recipe }) => recipe);
      return bodies;
    },
    spread: spreadOf(design, choice),
  };
}

function holesOf({ holes }: NutDesign, sizes: NutSizes): HoleInSight[] {
  if (!holes || !sizes.holes) return [];
  const { diameter } = sizes.holes;
  const { bottom, top } = endsOf(sizes);
  const ends = sizes.flange ? ([0, sizes.flange.thickness] as const) : ([bottom, top] as const);
  return sizes.holes.centres.map((at): HoleInSight => ({ at, diameter, ends }));
}

/** Direction of a point from the axis, degrees. */
export function directionOf([x, y]: Point): number {
  return (Math.atan2(y, x) * 180) / Math.PI;
}

/** Direction of the hole nearest to a wanted one; the wanted one where there is no hole. */
export function nearestHole({ holes }: NutInSight, wanted: number, most = 180): number {
  const away = (degrees: number) => Math.abs(((degrees - wanted + 540) % 360) - 180);
  const found = holes.map(({ at }) => directionOf(at)).filter((degrees) => away(degrees) <= most + 1e-9);
  return found.length === 0 ? wanted : found.reduce((best, one) => (away(one) < away(best) - 1e-9 ? one : best));
}
