import { type CheckFacts, type LimitsInForce, type Outcome, soft, valued } from '../../judge/check.js';
import { plain, worked } from '../../units/format.js';
import { difference, exactly, type Measured, scaled, shifted } from '../../units/measured.js';
import { insideSimple } from './polygon-distance.js';

type Point = readonly [number, number];

/** The opening of a carriage beside the screws that hold on to it. */
export interface CarriageOpening {
  readonly bore?: Measured | undefined;
  readonly slot?: readonly [number, number] | undefined;
  /** its middle */
  readonly offset: Point;
}

/** What stands around it. */
export interface CarriageScrews {
  readonly centres: readonly Point[];
  /** of the carriage's holes, or of the screws where these are not told */
  readonly across: Measured;
}

/** What the check of every part that is screwed on beside an opening shares. */
export const CARRIAGE_WALL = {
  group: 'mount',
  source: 'common practice',
  title: 'Carriage left beside its opening',
  unit: 'mm',
  limits: soft({ min: 1 }, { min: 0 }),
  grave: true,
} as const satisfies Partial<CheckFacts>;

/**
 * Whether the carriage has something for its screws to hold on to, beside the opening that the body goes through.
 * @returns undefined where no opening is told
 */
export function judgeCarriageWall(
  opening: CarriageOpening,
  { centres, across }: CarriageScrews,
  { pass }: LimitsInForce,
): Outcome | undefined {
  if ((!opening.bore && !opening.slot) || centres.length === 0) return undefined;
  const wall = centres
    .map((at) => difference(besideOpening(opening, at), scaled(across, 0.5)))
    .reduce((least, next) => (next.likely < least.likely ? next : least));
  const size = opening.bore
    ? `a bore of ${plain(opening.bore.likely)}`
    : `a slot of ${opening.slot!.map((side) => plain(side)).join(' × ')}`;
  const found =
    wall.likely > 0
      ? `${worked(wall.likely, 'mm')} mm between its holes and ${size} mm`
      : `its holes lie in ${size} mm, where screws hold on to nothing`;
  const cure = wall.least < (pass.min ?? 0) ? '; use holes further out, or a smaller opening' : '';
  return valued(wall, `${found}${cure}`);
}

/** From a place to the edge of the opening; negative within. */
function besideOpening({ bore, slot, offset: [u, v] }: CarriageOpening, [x, y]: Point): Measured {
  const from: Point = [x - u, y - v];
  if (bore) return shifted(scaled(bore, -0.5), Math.hypot(...from));
  const [a, b] = [slot![0] / 2, slot![1] / 2];
  const corners: Point[] = [
    [a, b],
    [-a, b],
    [-a, -b],
    [a, -b],
  ];
  return exactly(-insideSimple(corners, from));
}
