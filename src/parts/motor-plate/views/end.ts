import { reachOf } from '../../../solid/convex.js';
import { angleOf, circleSeen, circleThrough } from '../../common/drawn/hole-circle.js';
import { sectionPlanes } from '../../common/drawn/section-planes.js';
import type { SizeWay } from '../../common/drawn/spread.js';
import { beyond, crossing, line } from '../../common/drawn/strokes.js';
import { polar, rectangleOf } from '../../common/hole-pattern.js';
import type { AskedView, Letter, Point, SizeMark, Stroke } from '../../part-views.js';
import { type MotorPlatePlan, slotEnds } from '../plan.js';
import { plateOutline } from '../solid.js';
import { CHORD, type PlateInSight, planesOf } from './in-sight.js';

/** The outer face. */
export function endView(sight: PlateInSight): AskedView {
  const { plan, shapes } = sight;
  const { length, width, middle, motor, machine } = plan;
  const [cx, cy] = middle;
  const circle = circleOf(machine);
  const out = beyond(Math.min(length, width));
  const outline = plateOutline(plan, CHORD);
  const planes = planesOf(plan);
  return {
    title: 'Outer face',
    solid: {
      bodies: shapes,
      sight: { kind: 'end', from: 1 },
    },
    strokes: [
      ...machine.centres.flatMap((at) => machineCross(machine, at)),
      ...motor.centres.flatMap((at) => crossing(at, motor.diameter / 2 + beyond(motor.diameter))),
      ...(circle === undefined ? [] : circleSeen(machine.centres, circle, outline)),
      line('centre', [cx - length / 2 - out, 0], [cx + length / 2 + out, 0]),
      line('centre', [0, cy - width / 2 - out], [0, cy + width / 2 + out]),
    ],
    sizes: endSizes(sight, circle),
    planes: sectionPlanes(planes, (angle) => reachOf(outline, angle)),
    letters: numbers(plan),
  };
}

/** Radius of the circle about the axis that the holes to the machine stand on, where that is what is stated. */
function circleOf(machine: MotorPlatePlan['machine']): number | undefined {
  return machine.centres.length > 1 && !rectangleOf(machine) ? circleThrough(machine.centres) : undefined;
}

function endSizes({ plan, spread }: PlateInSight, circle: number | undefined): SizeMark[] {
  const { length, width, middle, motor, machine } = plan;
  const [cx, cy] = middle;
  const half = motor.square / 2;
  const rectangle = rectangleOf(machine);
  const size = (name: string, value: number, way: SizeWay): Pick<SizeMark, 'name' | 'value' | 'spread'> => ({
    name,
    value,
    ...spread(value, way),
  });
  const hole = farthest(machine.centres);
  const [start, end] = slotEnds(machine, hole);
  const [dx, dy] = polar(machine.diameter / 2, 45);
  const [mx, my] = polar(motor.diameter / 2, -45);
  const count = machine.centres.length;
  return [
    {
      ...size('length', length, 'outside'),
      from: [cx - length / 2, cy - width / 4],
      to: [cx + length / 2, cy - width / 4],
      side: 'below',
    },
    {
      ...size('width', width, 'outside'),
      from: [cx - length / 4, cy - width / 2],
      to: [cx - length / 4, cy + width / 2],
      side: 'left',
    },
    {
      ...size('motor_square', motor.square, 'outside'),
      sign: '□',
      from: [-half, half],
      to: [half, half],
      side: 'above',
    },
    {
      ...size('motor_hole_diameter', motor.diameter, 'inside'),
      sign: `${motor.centres.length} × ⌀`,
      from: [half, -half],
      to: [half + mx, -half + my],
      alike: motor.centres,
      side: 'leader',
    },
    {
      ...size('hole_diameter', machine.diameter, 'inside'),
      sign: `${count > 1 ? `${count} × ` : ''}${machine.slot ? '' : '⌀'}`,
      ...(machine.slot ? { after: 'wide' } : {}),
      from: end,
      to: [end[0] + dx, end[1] + dy],
      alike: machine.slot ? machine.centres.flatMap((at) => slotEnds(machine, at)) : machine.centres,
      side: 'leader',
    },
    ...(machine.slot
      ? [slotLength(start, end, size('slot_length', machine.diameter + 2 * machine.slot.by, 'inside'), machine)]
      : []),
    ...(rectangle ? distances(rectangle, size) : []),
    ...(circle !== undefined
      ? [
          {
            ...size('hole_circle', 2 * circle, 'outside'),
            sign: '⌀',
            after: 'circle',
            from: [0, 0] as const,
            to: polar(circle, angleOf(machine.centres[0]!) - 15),
            side: 'leader' as const,
          },
        ]
      : []),
  ];
}

/** Centre lines of a hole to the machine; of a slot through both ends and its middle. */
function machineCross(machine: MotorPlatePlan['machine'], at: Point): Stroke[] {
  const reach = machine.diameter / 2 + beyond(machine.diameter);
  const { slot } = machine;
  if (!slot) return crossing(at, reach);
  const [x, y] = at;
  const middle: Stroke =
    slot.along === 'x'
      ? line('centre', [x, y - reach], [x, y + reach])
      : line('centre', [x - reach, y], [x + reach, y]);
  return [...slotEnds(machine, at).flatMap((end) => crossing(end, reach)), middle];
}

function slotLength(
  start: Point,
  end: Point,
  size: Pick<SizeMark, 'name' | 'value' | 'spread'>,
  { diameter, slot }: MotorPlatePlan['machine'],
): SizeMark {
  const radius = diameter / 2;
  return slot?.along === 'x'
    ? { ...size, from: [start[0] - radius, start[1]], to: [end[0] + radius, end[1]], side: 'above' }
    : { ...size, from: [start[0], start[1] - radius], to: [end[0], end[1] + radius], side: 'right' };
}

function distances(
  { along_x, along_y }: { readonly along_x: number; readonly along_y: number },
  size: (name: string, value: number, way: SizeWay) => Pick<SizeMark, 'name' | 'value' | 'spread'>,
): SizeMark[] {
  const [x, y] = [along_x / 2, along_y / 2];
  return [
    { ...size('holes_along_x', along_x, 'outside'), from: [-x, y], to: [x, y], side: 'above' },
    { ...size('holes_along_y', along_y, 'outside'), from: [x, -y], to: [x, y], side: 'right' },
  ];
}

/** The hole farthest up and to the right. */
function farthest(centres: readonly Point[]): Point {
  return centres.reduce((best, one) => (one[0] + one[1] > best[0] + best[1] + 1e-6 ? one : best));
}

/** Numbers beside the holes, as in the hole table: those of the motor have an M. */
function numbers({ motor, machine }: MotorPlatePlan): Letter[] {
  const letter = (at: Point, text: string, around: number): Letter => ({
    at,
    text,
    away: polar(1, angleOf(at) + 140),
    around,
    small: true,
  });
  return [
    ...motor.centres.map((at, i) => letter(at, `M${i + 1}`, Math.max(motor.diameter, motor.sunk?.diameter ?? 0) / 2)),
    ...machine.centres.map((at, i) => letter(at, `${i + 1}`, machine.diameter / 2 + (machine.slot?.by ?? 0))),
  ];
}
