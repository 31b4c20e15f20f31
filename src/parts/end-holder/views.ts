import { loftConvex } from '../../solid/convex-loft.js';
import { circleOutline, sidesFor } from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import { angleOf, circleSeen, circleThrough } from '../common/drawn/hole-circle.js';
import { screwBar } from '../common/drawn/screw-bar.js';
import { sectionPlanes } from '../common/drawn/section-planes.js';
import { noted, notedSize, type SizeWay, spreadOf } from '../common/drawn/spread.js';
import { beyond, crossing, line } from '../common/drawn/strokes.js';
import { polar, rectangleOf } from '../common/hole-pattern.js';
import type { AskedView, Companion, HoleRow, Letter, PartViews, Point, SizeChoice, SizeMark } from '../part-views.js';
import type { Bearing } from './bearing.js';
import type { EndHolderDesign } from './dimensions.js';
import {
  grooveRadii,
  type HolderPlan,
  isLipped,
  type Lip,
  mouthRadius,
  ringHeights,
  seatDiameter,
  shoulderHeight,
} from './plan.js';
import { endHolderBodies, holderOutline } from './solid.js';

/** How far the screw stands out of the holder in a picture, in its diameters. */
const BEYOND = 2;
const CHORD = 0.01;

/** A holder at the sizes of one choice, with what several views ask of it. */
interface InSight {
  readonly design: EndHolderDesign;
  readonly choice: SizeChoice;
  /** its bodies as they are drawn; views that show one share it, so that it is built once */
  readonly shapes: readonly Shape[];
  readonly plan: HolderPlan;
  readonly spread: (size: number, way: SizeWay) => { spread?: number };
}

/** What a drawing and the page show of an end holder: a section, its outer face, the plate over its bearing, and the screw. */
export function endHolderViews(design: EndHolderDesign, choice: SizeChoice): PartViews {
  const plan = design[choice];
  const shapes = endHolderBodies(design, choice).map(({ recipe }) => recipe.shape);
  const sight: InSight = { design, choice, shapes, plan, spread: spreadOf(design, choice) };
  const { finished } = design;
  return {
    side: sideView(sight),
    end: endView(sight),
    ...(plan.cover ? { further: [coverView(sight, plan.cover)] } : {}),
    holes: holeRows(sight),
    notes: notesOf(sight),
    material: design.material.name,
    companions: companionsOf(design),
    ...(finished.cover
      ? {
          inUse: { cover: { by: [0, 0, standsAt(design)] } },
          apart: { cover: [0, 0, 2 * finished.thickness] as const },
        }
      : {}),
    cutTowards: 0,
  };
}

/** The plate lies on the bearing, which stands a little proud. */
function standsAt({ printed, bearing }: EndHolderDesign): number {
  return bearing ? ringHeights(printed, bearing).to : 0;
}

/** The section through the axis, +Z to the left, +X on top. */
function sideView({ plan, shapes, spread }: InSight): AskedView {
  const { length, thickness, pocket, bore, chamfer } = plan;
  const floor = shoulderHeight(plan);
  const along = (name: string, value: number, from: Point, to: Point, side: 'above' | 'below'): SizeMark => ({
    name,
    value,
    ...spread(value, 'along'),
    from,
    to,
    side,
  });
  const across = (name: string, value: number, z: number, side: 'left' | 'right'): SizeMark => ({
    name,
    value,
    sign: '⌀',
    ...spread(value, 'inside'),
    from: [-z, -value / 2],
    to: [-z, value / 2],
    side,
  });
  return {
    title: 'Section A–A',
    solid: {
      bodies: [shapes[0]!],
      sight: { kind: 'section', planes: [0, 180] },
    },
    strokes: [line('centre', [beyond(thickness), 0], [-thickness - beyond(thickness), 0])],
    sizes: [
      along('thickness', thickness, [0, -length / 2], [-thickness, -length / 2], 'below'),
      across('bore', bore, pocket ? 0 : chamfer, 'right'),
      ...(pocket && floor !== undefined
        ? [
            across(
              'pocket_diameter',
              pocket.diameter,
              pocket.lip ? floor : thickness - pocket.leadIn,
              pocket.lip ? 'right' : 'left',
            ),
            ...(isLipped(pocket)
              ? [
                  across('lip_diameter', pocket.lip.diameter, thickness - pocket.leadIn, 'left'),
                  across('ring_diameter', 2 * grooveRadii(pocket)[0], thickness, 'left'),
                  across('groove_diameter', 2 * grooveRadii(pocket)[1], thickness, 'left'),
                ]
              : []),
            along(
              'pocket_depth',
              pocket.depth,
              [-thickness, mouthRadius(pocket)],
              [-floor, pocket.diameter / 2],
              'above',
            ),
          ]
        : []),
    ],
    letters: [],
  };
}

/** The outer face. */
function endView({ plan, shapes, spread }: InSight): AskedView {
  const { length, width, holes } = plan;
  const [first, last] = [holes.centres[0]!, farthest(holes.centres)];
  const rectangle = rectangleOf(holes);
  const radius = circleThrough(holes.centres);
  const [dx, dy] = polar(holes.diameter / 2, 45);
  const size = (name: string, value: number, way: SizeWay): Pick<SizeMark, 'name' | 'value' | 'spread'> => ({
    name,
    value,
    ...spread(value, way),
  });
  const out = beyond(Math.min(length, width));
  const sizes: SizeMark[] = [
    {
      ...size('length', length, 'outside'),
      from: [-length / 2, -width / 4],
      to: [length / 2, -width / 4],
      side: 'below',
    },
    { ...size('width', width, 'outside'), from: [-length / 4, -width / 2], to: [-length / 4, width / 2], side: 'left' },
    {
      ...size('hole_diameter', holes.diameter, 'inside'),
      sign: holes.centres.length > 1 ? `${holes.centres.length} × ⌀` : '⌀',
      from: last,
      to: [last[0] + dx, last[1] + dy],
      alike: holes.centres,
      side: 'leader',
    },
    ...(rectangle ? distances(rectangle, size) : []),
    ...(radius && !rectangle && holes.centres.length > 1
      ? [
          {
            ...size('hole_circle', 2 * radius, 'outside'),
            sign: '⌀',
            after: 'circle',
            from: [0, 0] as const,
            to: polar(radius, angleOf(first) - 15),
            side: 'leader' as const,
          },
        ]
      : []),
  ];
  return {
    title: 'Outer face',
    solid: { bodies: [shapes[0]!], sight: { kind: 'end', from: 1 } },
    strokes: [
      ...holes.centres.flatMap((at) => crossing(at, holes.diameter / 2 + beyond(holes.diameter))),
      ...(radius && !rectangle ? circleSeen(holes.centres, radius, holderOutline(plan, CHORD)) : []),
      line('centre', [-length / 2 - out, 0], [length / 2 + out, 0]),
      line('centre', [0, -width / 2 - out], [0, width / 2 + out]),
    ],
    sizes,
    planes: sectionPlanes([0, 180], () => length / 2),
    letters: numbers(plan),
  };
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

/** The plate over the bearing, cut along its length. */
function coverView({ plan, shapes, spread }: InSight, cover: NonNullable<HolderPlan['cover']>): AskedView {
  const { thickness, bore } = cover;
  return {
    title: 'Plate over the bearing',
    solid: {
      bodies: [shapes[1]!],
      sight: { kind: 'section', planes: [0, 180] },
    },
    strokes: [line('centre', [beyond(plan.length), 0], [-thickness - beyond(plan.length), 0])],
    sizes: [
      {
        name: 'cover_thickness',
        value: thickness,
        ...spread(thickness, 'along'),
        from: [0, -plan.length / 2],
        to: [-thickness, -plan.length / 2],
        side: 'below',
      },
      {
        name: 'cover_bore',
        value: bore,
        sign: '⌀',
        ...spread(bore, 'inside'),
        from: [0, -bore / 2],
        to: [0, bore / 2],
        side: 'right',
      },
    ],
    letters: [],
  };
}

/** The hole farthest up and to the right. */
function farthest(centres: readonly Point[]): Point {
  return centres.reduce((best, one) => (one[0] + one[1] > best[0] + best[1] + 1e-6 ? one : best));
}

/** Numbers beside the holes, as in the hole table. */
function numbers({ holes }: HolderPlan): Letter[] {
  return holes.centres.map((at, i) => ({
    at,
    text: `${i + 1}`,
    away: polar(1, angleOf(at) + 140),
    around: holes.diameter / 2,
    small: true,
  }));
}

function holeRows({ plan: { holes }, design: { pattern } }: InSight): HoleRow[] {
  return holes.centres.map((at, i) => ({
    label: `${i + 1}`,
    at,
    diameter: holes.diameter,
    note: `${pattern.screw ?? 'no listed screw'}, through`,
  }));
}

function notesOf({ design: { bearing, heldBy, held, role }, plan, spread }: InSight): string[] {
  const { chamfer, corner, pocket } = plan;
  const screw = `⌀${noted(held.diameter.likely)}`;
  const corners = `Corners R ${notedSize(corner, spread(corner, 'outside'))}`;
  if (!bearing)
    return [
      role === 'free' ? `Guard ring around a screw of ${screw}: it touches nothing` : `Bush for a screw of ${screw}`,
      corners,
      `Both mouths broken ${noted(chamfer)} × 45°`,
    ];
  return [
    `Bearing ${bearing.name}, ${heldWords(plan, bearing, heldBy)}; screw of ${screw}`,
    ...(pocket?.lip ? [lipWords(pocket.lip, pocket.leadIn)] : []),
    ...(plan.cover ? ['Plate over the bearing: outline and holes as the body'] : []),
    corners,
  ];
}

function heldWords({ pocket, chamfer }: HolderPlan, { flange }: Bearing, heldBy: EndHolderDesign['heldBy']): string {
  if (heldBy === 'plate') return `held by the plate over its ${flange ? 'flange' : 'outer ring'}`;
  if (heldBy === 'lip') return 'pushed in past the lip';
  return flange
    ? `pressed in up to its flange; both mouths broken ${noted(chamfer)} × 45°`
    : `pressed in; mouth opened ${noted(pocket!.leadIn)} × 30°`;
}

function lipWords({ from, land }: Lip, leadIn: number): string {
  return `Lip: from ${noted(from)} over the shoulder in at 45°, ${noted(land)} long, opened over ${noted(leadIn)} at 30°`;
}

/** The screw through the holder, and the bearing in it. */
function companionsOf(design: EndHolderDesign): Companion[] {
  const { screw, held, printed, bearing, printer } = design;
  const far = BEYOND * held.diameter.likely;
  const bar = screwBar(screw, { from: -far, to: printed.thickness + far / 2, chordError: printer.chordError });
  if (!bearing) return [bar];
  const { from, to, flangeFrom } = ringHeights(printed, bearing);
  const disc = (name: string, radius: number, low: number, high: number): Companion => ({
    name,
    mesh: loftConvex(circleOutline({ radius, sides: sidesFor(radius, CHORD) }), [
      [low, 0],
      [high, 0],
    ]),
  });
  return [
    bar,
    disc(`bearing ${bearing.name}`, seatDiameter(printed, bearing) / 2, from, flangeFrom ?? to),
    ...(bearing.flange && flangeFrom !== undefined
      ? [disc('flange of the bearing', bearing.flange.outside / 2, flangeFrom, to)]
      : []),
  ];
}
