import { outlineBounds } from '../../../solid/convex.js';
import type { SizeWay } from '../../common/drawn/spread.js';
import { polar } from '../../common/hole-pattern.js';
import type { Point, SizeMark } from '../../part-views.js';
import type { PatternHoles, Step } from '../plan.js';
import { angleOf, circleThrough, holeDiameter, type PlateInSight, placed } from './in-sight.js';

type Stated = Pick<SizeMark, 'name' | 'value' | 'spread'>;

/** A size under its name in the report. */
function stated({ design, choice, spread }: PlateInSight, name: string, way: SizeWay): Stated {
  const value = design.dimensions[choice][name];
  if (typeof value !== 'number') throw new Error(`a plate has no size ${name}`);
  return { name, value, ...spread(value, way) };
}

/**
 * Heights and the diameters about the axis.
 * @param reach how far the section reaches above and below the axis [mm]
 */
export function sideSizes(sight: PlateInSight, [upper, lower]: readonly [number, number]): SizeMark[] {
  const { plate, print, top, design } = sight;
  const { outerStep, innerStep, rim } = plate;
  const along = (name: string, from: number, to: number, side: 'above' | 'below'): SizeMark => {
    const y = side === 'above' ? upper : -lower;
    return { ...stated(sight, name, 'along'), from: [-from, y], to: [-to, y], side };
  };
  const across = (name: string, z: number, side: 'left' | 'right', way: SizeWay = 'inside'): SizeMark => {
    const one = stated(sight, name, way);
    return { ...one, sign: '⌀', from: [-z, -one.value / 2], to: [-z, one.value / 2], side };
  };
  const seat = print.along(design.seatHeight);
  const low = rim ? -print.along(rim.height) : 0;
  return [
    along('thickness', 0, top, 'below'),
    ...(design.nut && Math.abs(seat - top) > 1e-9 && seat > 0 ? [along('height_change', 0, seat, 'above')] : []),
    across('bore', innerStep || rim ? top : 0, innerStep || rim ? 'left' : 'right'),
    ...(outerStep ? [along('recess_depth', top - print.along(outerStep.depth), top, 'above')] : []),
    ...(outerStep && isCentred(outerStep) ? [across('recess_diameter', top, 'left')] : []),
    ...(innerStep ? [along('carriage_recess_depth', 0, print.along(innerStep.depth), 'below')] : []),
    ...(innerStep && isCentred(innerStep) ? [across('carriage_recess_diameter', 0, 'right')] : []),
    ...(rim ? [along('rim_height', low, 0, 'below')] : []),
    ...(rim && isCentred(rim) ? [across('rim_diameter', low, 'right', 'outside')] : []),
  ];
}

function isCentred({ center: [x, y] }: Pick<Step, 'center'>): boolean {
  return x === 0 && y === 0;
}

/** Outline and holes; on the face to the carriage those of the carriage, where it is drawn. */
export function endSizes(sight: PlateInSight, face: 'high' | 'low', hasBoth: boolean): SizeMark[] {
  const { plate } = sight;
  const isHigh = face === 'high';
  return [
    ...(isHigh ? outlineSizes(sight) : aside(sight)),
    ...(isHigh && plate.nutHoles ? holeSizes(sight, 'nut', plate.nutHoles, 'high') : []),
    ...(isHigh !== hasBoth ? holeSizes(sight, 'carriage', plate.carriageHoles, face) : []),
  ];
}

function outlineSizes(sight: PlateInSight): SizeMark[] {
  const { min, max } = outlineBounds(sight.outline);
  return [
    { ...stated(sight, 'outline_length', 'outside'), from: min, to: [max[0], min[1]], side: 'below' },
    { ...stated(sight, 'outline_width', 'outside'), from: min, to: [min[0], max[1]], side: 'left' },
  ];
}

/** Sinks and rings that stand off the axis, seen from −Z. */
function aside(sight: PlateInSight): SizeMark[] {
  const { innerStep, rim } = sight.plate;
  const round = (name: string, center: Point, way: SizeWay): SizeMark => {
    const one = stated(sight, name, way);
    const [x, y] = placed(center, sight.print);
    const [dx, dy] = polar(one.value / 2, -50);
    return { ...one, sign: '⌀', from: [-x, y], to: [dx - x, y + dy], side: 'leader' };
  };
  return [
    ...(innerStep && !isCentred(innerStep) ? [round('carriage_recess_diameter', innerStep.center, 'inside')] : []),
    ...(rim && !isCentred(rim) ? [round('rim_diameter', rim.center, 'outside')] : []),
  ];
}

/** Diameter of a pattern's holes, and of their circle where they stand on one about the axis. */
function holeSizes(
  sight: PlateInSight,
  name: 'nut' | 'carriage',
  holes: PatternHoles,
  face: 'high' | 'low',
): SizeMark[] {
  const { print } = sight;
  const [way, up] = [face === 'low' ? -1 : 1, name === 'nut' ? -1 : 1];
  const seen = holes.centres.map((centre): Point => {
    const [x, y] = placed(centre, print);
    return [way * x, y];
  });
  // the nut's leaders go to the foot of the view, the carriage's to its head
  const at = seen.reduce((best, one) => (one[0] + up * one[1] > best[0] + up * best[1] + 1e-6 ? one : best));
  const angle = angleOf(at);
  const [dx, dy] = polar(holeDiameter(holes, print) / 2, up * 45);
  const circle = circleThrough(holes.centres);
  const count = holes.centres.length;
  return [
    {
      ...stated(sight, `${name}_hole_diameter`, 'inside'),
      sign: count > 1 ? `${count} × ⌀` : '⌀',
      from: at,
      to: [at[0] + dx, at[1] + dy],
      side: 'leader',
    },
    ...(circle && count > 1
      ? [
          {
            ...stated(sight, `${name}_hole_circle`, 'outside'),
            sign: '⌀',
            after: 'circle',
            from: [0, 0] as const,
            to: polar(print.across(circle), angle - 15 * up),
            side: 'leader' as const,
          },
        ]
      : []),
  ];
}
