import type { Outline } from '../../../solid/outline.js';
import { rayReach } from '../../common/drawn/along-ray.js';
import { extremes } from '../../common/drawn/extremes.js';
import { angleOf, circleThrough } from '../../common/drawn/hole-circle.js';
import type { SizeWay } from '../../common/drawn/spread.js';
import { polar, rectangleOf } from '../../common/hole-pattern.js';
import type { Point, SizeMark } from '../../part-views.js';
import type { PatternHoles, Step } from '../plan.js';
import { disc, holeDiameter, type PlateInSight, placed } from './in-sight.js';

type Stated = Pick<SizeMark, 'name' | 'value' | 'spread'>;

/** A size under its name in the report. */
function stated({ design, choice, spread }: PlateInSight, name: string, way: SizeWay): Stated {
  const value = design.dimensions[choice][name];
  if (typeof value !== 'number') throw new Error(`a plate has no size ${name}`);
  return { name, value, ...spread(value, way) };
}

/** Heights and the diameters about the axis; each height from where its faces end in the section. */
export function sideSizes(sight: PlateInSight): SizeMark[] {
  const { plate, print, top, design, outline, cut } = sight;
  const { outerStep, innerStep, rim } = plate;
  const reach = (face: Outline, side: 'above' | 'below') =>
    side === 'above' ? rayReach(face, cut[0]) : -rayReach(face, cut[1]);
  const stepReach = ({ diameter, center }: Step, side: 'above' | 'below') =>
    reach(disc(print.inside(diameter), placed(center, print)), side);
  const along = (name: string, from: Point, to: Point, side: 'above' | 'below'): SizeMark => {
    return { ...stated(sight, name, 'along'), from: [-from[0], from[1]], to: [-to[0], to[1]], side };
  };
  const across = (name: string, z: number, side: 'left' | 'right', way: SizeWay = 'inside'): SizeMark => {
    const one = stated(sight, name, way);
    return { ...one, sign: '⌀', from: [-z, -one.value / 2], to: [-z, one.value / 2], side };
  };
  const depth = (name: string, step: Step, [mouth, way]: readonly [number, 1 | -1], side: 'above' | 'below') => {
    const y = stepReach(step, side);
    return along(name, [mouth, y], [mouth + way * print.along(step.depth), y], side);
  };
  const seat = print.along(design.seatHeight);
  const onStep = outerStep && Math.abs(top - print.along(outerStep.depth) - seat) < 1e-6 ? outerStep : innerStep;
  const low = rim ? -print.along(rim.height) : 0;
  const rimReach = rim ? reach(disc(print.outside(rim.outer), placed(rim.center, print)), 'below') : 0;
  return [
    along('thickness', [0, reach(outline, 'below')], [top, reach(outline, 'below')], 'below'),
    ...(design.nut && Math.abs(seat - top) > 1e-9 && seat > 0 && onStep
      ? [along('height_change', [0, reach(outline, 'above')], [seat, stepReach(onStep, 'above')], 'above')]
      : []),
    across('bore', innerStep || rim ? top : 0, innerStep || rim ? 'left' : 'right'),
    ...(outerStep ? [depth('recess_depth', outerStep, [top, -1], 'above')] : []),
    ...(outerStep && isCentred(outerStep) ? [across('recess_diameter', top, 'left')] : []),
    ...(innerStep ? [depth('carriage_recess_depth', innerStep, [0, 1], 'below')] : []),
    ...(innerStep && isCentred(innerStep) ? [across('carriage_recess_diameter', 0, 'right')] : []),
    ...(rim ? [along('rim_height', [low, rimReach], [0, rimReach], 'below')] : []),
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
  const over = (name: string, axis: 0 | 1, side: 'below' | 'left'): SizeMark => {
    const [from, to] = extremes(sight.outline, axis, side);
    return { ...stated(sight, name, 'outside'), from, to, side };
  };
  return [over('outline_length', 0, 'below'), over('outline_width', 1, 'left')];
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
  const rectangle = rectangleOf(holes);
  const count = holes.centres.length;
  return [
    {
      ...stated(sight, `${name}_hole_diameter`, 'inside'),
      sign: count > 1 ? `${count} × ⌀` : '⌀',
      from: at,
      to: [at[0] + dx, at[1] + dy],
      alike: seen,
      side: 'leader',
    },
    ...(rectangle ? distanceSizes(sight, name, rectangle, up === 1 ? 'above' : 'below') : []),
    ...(circle && count > 1 && !rectangle
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

/** A rectangle of holes by its two distances. */
function distanceSizes(
  sight: PlateInSight,
  name: 'nut' | 'carriage',
  { along_x, along_y }: { readonly along_x: number; readonly along_y: number },
  side: 'above' | 'below',
): SizeMark[] {
  const [x, y] = [sight.print.across(along_x) / 2, sight.print.across(along_y) / 2];
  const edge = side === 'above' ? y : -y;
  return [
    { ...stated(sight, `${name}_holes_along_x`, 'outside'), from: [-x, edge], to: [x, edge], side },
    { ...stated(sight, `${name}_holes_along_y`, 'outside'), from: [x, -y], to: [x, y], side: 'right' },
  ];
}
