import type { Remedy } from '../../judge/advice.js';
import type { LimitsInForce } from '../../judge/check.js';
import { rounded } from '../../units/format.js';
import { planeResidual } from '../common/residual.js';
import { LEAST_WALL } from '../common/walls.js';
import { boreRoom, enteringBore, widest } from './bore.js';
import type { NutDesign } from './nut-design.js';

const MOUNT_BORE = 'mount-bore';

/** Of a printed body in a printed bore, on the diameter, mm. @source common-practice */
const PLATE_PLAY = 0.5;

/** Ways to let a nut onto a carriage whose bore its body does not enter, the least trouble first. */
export function boreRemedies(design: NutDesign, { pass }: LimitsInForce): readonly Remedy[] {
  const least = pass.min ?? 0;
  return [
    ...slimBody(design, least),
    ...wideBore(design, least),
    ...turned(design),
    ...thickFlange(design),
    ...between(design, least),
  ];
}

/** A slimmer body, where the wall beside the thread allows it. */
function slimBody(design: NutDesign, least: number): Remedy[] {
  const { finished, screw, carriage } = design;
  const { across, shape } = finished.body;
  if (enteringBore(design).what === 'screw') return [];
  const factor = widest(design) / across;
  const lost = planeResidual(design, widest(design)).most;
  const slim = tenths((carriage.bore!.least - least - lost) / factor, Math.floor);
  const wall = (slim - finished.thread.major - (screw.major.most - screw.major.least)) / 2;
  const field = { round: 'diameter', square: 'across_flats', hexagon: 'across_flats' }[shape];
  return wall < LEAST_WALL ? [] : [{ check: MOUNT_BORE, say: 'slim the body', set: { [`body.${field}`]: slim } }];
}

function wideBore(design: NutDesign, least: number): Remedy[] {
  const { bore } = design.carriage;
  const missing = least - boreRoom(design, bore!).least;
  return [
    {
      check: MOUNT_BORE,
      say: 'bore the carriage out',
      set: { 'carriage.bore': tenths(bore!.likely + missing, Math.ceil) },
    },
  ];
}

/** The flange on the other face of the carriage, the nut turned over or moved, so that its body stands away. */
function turned(design: NutDesign): Remedy[] {
  const { finished, stands, mounting, holes } = design;
  if (!finished.flange || stands === 'away') return [];
  const other = mounting === 'flange-up' ? 'flange-down' : 'flange-up';
  const heads = holes?.head === 'flange' ? { 'holes.head': 'body' } : {};
  return [
    {
      check: MOUNT_BORE,
      say: 'turn the nut over, its body away from the carriage',
      set: { stands: 'away', ...(mounting === undefined ? {} : { mounting: other }), ...heads },
    },
  ];
}

/** A flange as thick as the nut is long carries the whole thread. */
function thickFlange({ finished: { flange, length } }: NutDesign): Remedy[] {
  if (!flange || flange.offset > 0 || flange.thickness >= length) return [];
  return [{ check: MOUNT_BORE, say: 'let a thick flange carry the thread', set: { 'flange.thickness': length } }];
}

/** A printed plate between flange and carriage, so thick that the body ends in it. */
function between(design: NutDesign, least: number): Remedy[] {
  const { name, finished, carriage, holes, stands } = design;
  const { flange, length } = finished;
  if (carriage.bore!.least < design.screw.major.most + least) return [];
  if (!flange || flange.offset > 0 || stands === 'away' || !holes?.screw || flange.shape === 'two-ear') return [];
  const thickness = Math.ceil(2 * (length - flange.thickness)) / 2;
  if (thickness <= 0) return [];
  const [wide, high] = flange.size;
  const sizes = flange.shape === 'round' ? { diameter: mm(wide) } : { size: [mm(wide), mm(high)] };
  const { centres, diameter, screw } = holes;
  const theirs = carriage.holes ?? holes;
  const placed = (at: readonly (readonly [number, number])[]) => at.map(([x, y]) => [mm(x), mm(y)]);
  const another = {
    part: 'adapter',
    name: `${name}-plate`.slice(0, 64),
    nut: {
      body: mm(widest(design)),
      length: mm(length),
      flange: { shape: flange.shape, ...sizes, thickness: mm(flange.thickness) },
      holes: { at: placed(centres), diameter: mm(diameter.likely), screw },
    },
    carriage: {
      bore: mm(carriage.bore!.likely),
      ...(carriage.thickness ? { thickness: mm(carriage.thickness.likely) } : {}),
      holes: {
        at: placed(theirs.centres),
        diameter: mm(theirs.diameter.likely),
        ...(theirs.screw ? { screw: theirs.screw } : {}),
      },
    },
    plate: { thickness: mm(thickness), bore: mm(widest(design) + PLATE_PLAY) },
  };
  return [
    {
      check: MOUNT_BORE,
      say: 'print a plate between, in which the body ends',
      set: { part: 'adapter', 'plate.thickness': thickness },
      another,
    },
  ];
}

function tenths(value: number, round: (value: number) => number): number {
  return rounded(round(10 * value - (round === Math.ceil ? 1e-9 : -1e-9)) / 10);
}

function mm(value: number): string {
  return `${rounded(value)} mm`;
}
