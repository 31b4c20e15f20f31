import { circleOutline, type Outline, sidesFor } from '../../../solid/outline.js';
import { pocketOutline } from '../../common/cut.js';
import { type SizeWay, spreadOf } from '../../common/drawn/spread.js';
import type { Pocket } from '../../common/joints.js';
import { type PrintSizes, printSizes, TRUE_SIZES } from '../../common/print-sizes.js';
import type { Point, SizeChoice } from '../../part-views.js';
import type { NutDesign, NutSizes } from '../dimensions.js';
import { bodyOutline, flangeOutline } from '../plan.js';
import { boreOf, pocketOf } from '../pockets.js';
import { endsOf } from '../solid.js';

/** A hole as it stands: its outline, its pocket's, and their heights. */
export interface HoleInSight {
  readonly at: Point;
  readonly diameter: number;
  readonly outline: Outline;
  readonly ends: readonly [number, number];
  readonly sunk?: {
    readonly pocket: Pocket;
    readonly side: 'body' | 'flange';
    readonly outline: Outline;
    readonly ends: readonly [number, number];
  };
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
  readonly spread: (size: number, way: SizeWay) => { spread?: number };
}

/** A nut at the sizes of one choice. */
export function inSight(design: NutDesign, choice: SizeChoice): NutInSight {
  const sizes = design[choice];
  const print = choice === 'finished' ? TRUE_SIZES : printSizes(design.material, design.printer);
  const { chordError } = design.printer;
  return {
    design,
    sizes,
    print,
    ...endsOf(sizes),
    body: bodyOutline(sizes.body, chordError),
    plate: sizes.flange && flangeOutline(sizes.flange, chordError),
    holes: holesOf(design, sizes, print),
    spread: spreadOf(design, choice),
  };
}

function holesOf({ holes, printer }: NutDesign, sizes: NutSizes, { inside, along }: PrintSizes): HoleInSight[] {
  if (!holes || !sizes.holes) return [];
  const { chordError } = printer;
  const diameter = inside(boreOf(holes));
  const { bottom, top } = endsOf(sizes);
  const [from, to] = sizes.flange ? [0, sizes.flange.thickness] : [bottom, top];
  const sunk = pocketOf(holes);
  return sizes.holes.centres.map((at): HoleInSight => {
    const round = { radius: diameter / 2, sides: sidesFor(diameter / 2, chordError), circumscribed: true };
    const hole = { at, diameter, outline: circleOutline({ ...round, center: at }), ends: [from, to] as const };
    if (!sunk) return hole;
    const depth = along(sunk.pocket.depth);
    const outline = pocketOutline(sunk.pocket, { center: at, turn: 30, chordError, inside });
    const ends = sunk.side === 'flange' ? ([from, from + depth] as const) : ([to - depth, to] as const);
    return { ...hole, sunk: { ...sunk, outline, ends } };
  });
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
