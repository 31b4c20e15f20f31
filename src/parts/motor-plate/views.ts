import { reachOf } from '../../solid/convex.js';
import { loftConvex } from '../../solid/convex-loft.js';
import { circleOutline, rectangleOutline, sidesFor } from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import { angleOf, circleSeen, circleThrough } from '../common/drawn/hole-circle.js';
import { sectionPlanes } from '../common/drawn/section-planes.js';
import { noted, notedSize, type SizeWay, spreadOf } from '../common/drawn/spread.js';
import { beyond, crossing, line } from '../common/drawn/strokes.js';
import { polar, rectangleOf } from '../common/hole-pattern.js';
import type {
  AskedView,
  Companion,
  HoleRow,
  Letter,
  PartViews,
  Point,
  SizeChoice,
  SizeMark,
  Stroke,
} from '../part-views.js';
import type { MotorPlateDesign } from './dimensions.js';
import { type MotorPlatePlan, motorGrip, slotEnds } from './plan.js';
import { motorPlateBodies, plateOutline } from './solid.js';

const CHORD = 0.01;
/** Body of a motor in the picture where nobody told its length, and shaft beyond its face, mm. */
const SHOWN = { length: 34, shaft: 21, across: 5 };

/** A plate at the sizes of one choice, with what several views ask of it. */
interface InSight {
  readonly design: MotorPlateDesign;
  readonly choice: SizeChoice;
  /** its bodies as they are drawn; views that show one share it, so that it is built once */
  readonly shapes: readonly Shape[];
  readonly plan: MotorPlatePlan;
  readonly spread: (size: number, way: SizeWay) => { spread?: number };
}

/** What a drawing and the page show of a motor plate: a section, its outer face, and the motor. */
export function motorPlateViews(design: MotorPlateDesign, choice: SizeChoice): PartViews {
  const shapes = motorPlateBodies(design, choice).map(({ recipe }) => recipe.shape);
  const sight: InSight = { design, choice, shapes, plan: design[choice], spread: spreadOf(design, choice) };
  return {
    side: sideView(sight),
    end: endView(sight),
    holes: holeRows(sight),
    notes: notesOf(sight),
    material: design.material.name,
    companions: motorShown(design),
    cutTowards: 0,
  };
}

/** Sunk heads stand on the diagonal: the section goes through them. */
function planesOf({ motor }: MotorPlatePlan): readonly [number, number] {
  return motor.sunk ? [45, 225] : [0, 180];
}

/** The section through the axis, +Z to the left. */
function sideView({ plan, design, shapes, spread }: InSight): AskedView {
  const { thickness, pilot, motor } = plan;
  const planes = planesOf(plan);
  const reach = reachOf(plateOutline(plan, design.printer.chordError), planes[1]);
  const middle = motor.square * Math.SQRT1_2;
  const { sunk } = motor;
  const grip = motorGrip(plan);
  return {
    title: 'Section A–A',
    solid: {
      bodies: shapes,
      sight: { kind: 'section', planes },
    },
    strokes: [
      line('centre', [beyond(thickness), 0], [-thickness - beyond(thickness), 0]),
      ...(sunk ? [line('centre', [beyond(thickness), middle], [-thickness - beyond(thickness), middle])] : []),
    ],
    sizes: [
      {
        name: 'thickness',
        value: thickness,
        ...spread(thickness, 'along'),
        from: [0, -reach],
        to: [-thickness, -reach],
        side: 'below',
      },
      {
        name: 'pilot_hole',
        value: pilot,
        sign: '⌀',
        ...spread(pilot, 'inside'),
        from: [0, -pilot / 2],
        to: [0, pilot / 2],
        side: 'right',
      },
      ...(sunk
        ? [
            {
              name: 'head_pocket_diameter',
              value: sunk.diameter,
              sign: '⌀',
              ...spread(sunk.diameter, 'inside'),
              from: [-thickness, middle - sunk.diameter / 2] as const,
              to: [-thickness, middle + sunk.diameter / 2] as const,
              side: 'left' as const,
            },
            {
              name: 'head_pocket_depth',
              value: sunk.depth,
              ...spread(sunk.depth, 'along'),
              from: [-thickness, middle + sunk.diameter / 2] as const,
              to: [-grip, middle + sunk.diameter / 2] as const,
              side: 'above' as const,
            },
          ]
        : []),
    ],
    letters: [],
  };
}

/** The outer face. */
function endView({ plan, shapes, spread }: InSight): AskedView {
  const { length, width, middle, motor, machine } = plan;
  const [cx, cy] = middle;
  const half = motor.square / 2;
  const radius = circleThrough(machine.centres);
  const rectangle = rectangleOf(machine);
  const onCircle = radius !== undefined && !rectangle && machine.centres.length > 1;
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
  const out = beyond(Math.min(length, width));
  const sizes: SizeMark[] = [
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
    ...(onCircle
      ? [
          {
            ...size('hole_circle', 2 * radius, 'outside'),
            sign: '⌀',
            after: 'circle',
            from: [0, 0] as const,
            to: polar(radius, angleOf(machine.centres[0]!) - 15),
            side: 'leader' as const,
          },
        ]
      : []),
  ];
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
      ...(onCircle ? circleSeen(machine.centres, radius, outline) : []),
      line('centre', [cx - length / 2 - out, 0], [cx + length / 2 + out, 0]),
      line('centre', [0, cy - width / 2 - out], [0, cy + width / 2 + out]),
    ],
    sizes,
    planes: sectionPlanes(planes, (angle) => reachOf(outline, angle)),
    letters: numbers(plan),
  };
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

function holeRows({ plan: { motor, machine }, design: { pattern, motor: face, joints } }: InSight): HoleRow[] {
  const { slot } = machine;
  const joint = joints.machine.joint === 'insert' ? 'for a heat-set insert' : 'through';
  const what = slot ? `slot ±${noted(slot.by)} along ${slot.along.toUpperCase()}` : joint;
  return [
    ...motor.centres.map((at, i) => ({
      label: `M${i + 1}`,
      at,
      diameter: motor.diameter,
      note: `${face.screw}, through${motor.sunk ? ', head sunk' : ''}`,
    })),
    ...machine.centres.map((at, i) => ({
      label: `${i + 1}`,
      at,
      diameter: machine.diameter,
      note: `${pattern.screw ?? 'no listed screw'}, ${what}`,
    })),
  ];
}

function notesOf({ design: { motor, machine, finished }, plan: { corner }, spread }: InSight): string[] {
  return [
    `Corners R ${notedSize(corner, spread(corner, 'outside'))}`,
    `Motor: pilot ⌀${noted(motor.pilot.likely)}, holes on a square of ${noted(motor.square.likely)}, ${motor.screw}`,
    `The machine lies on ${machine.face === 'motor' ? "the motor's face" : 'the outer face'} (z = ${machine.face === 'motor' ? '0' : noted(finished.thickness)})`,
  ];
}

/** The motor under its plate, and its shaft through the pilot hole. */
function motorShown({ motor }: MotorPlateDesign): Companion[] {
  const side = motor.body ?? motor.square.likely + 3 * motor.screwDiameter;
  const radius = SHOWN.across / 2;
  return [
    {
      name: 'motor',
      mesh: loftConvex(rectangleOutline({ size: [side, side], radius: 0.08 * side }), [
        [-(motor.length ?? SHOWN.length), 0],
        [0, 0],
      ]),
    },
    {
      name: "the motor's shaft",
      mesh: loftConvex(circleOutline({ radius, sides: sidesFor(radius, CHORD) }), [
        [0, 0],
        [motor.shaftLength ?? SHOWN.shaft, 0],
      ]),
    },
  ];
}
