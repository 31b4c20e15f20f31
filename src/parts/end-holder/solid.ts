import { circleOutline, type Outline, polygonArea, rectangleOutline, sidesFor } from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import { latheVolume } from '../../solid/volume.js';
import { type Cut, holeCut, OVERSHOOT } from '../common/cut.js';
import { lessChords } from '../common/wall-in-file.js';
import type { PlannedBody } from '../part-kind.js';
import type { SizeChoice } from '../part-views.js';
import type { EndHolderDesign } from './dimensions.js';
import { grooveRadii, type HolderPlan, isLipped, type LippedPocket, mouthRadius, shoulderHeight } from './plan.js';
import { thinnestWall } from './walls.js';

/** The holder, and the plate over its bearing where there is one, as recipes, and what they must measure. */
export function endHolderBodies(design: EndHolderDesign, sizes: SizeChoice = 'printed'): PlannedBody[] {
  const { name, printer } = design;
  const plan = design[sizes];
  const body = bodyFor(design, plan, {
    name: plan.cover ? 'holder' : name,
    thickness: plan.thickness,
    middle: [middleOf(plan, printer.chordError), ...grooveOf(plan, printer.chordError)],
  });
  if (!plan.cover) return [body];
  const { thickness, bore } = plan.cover;
  const middle = holeCut({ center: [0, 0], from: 0, to: thickness, bore }, (size) => size, printer.chordError);
  return [body, bodyFor(design, plan, { name: 'cover', thickness, middle: [middle] })];
}

/** Outline of holder and plate. */
export function holderOutline({ length, width, corner }: HolderPlan, chordError: number): Outline {
  return rectangleOutline({ size: [length, width], radius: corner, sides: sidesFor(corner, chordError) });
}

interface Slice {
  readonly name: string;
  readonly thickness: number;
  readonly middle: readonly Cut[];
}

/** The outline raised, with its middle and its holes cut through. */
function bodyFor(design: EndHolderDesign, plan: HolderPlan, { name, thickness, middle }: Slice): PlannedBody {
  const { material, printer } = design;
  const { holes } = plan;
  const outline = holderOutline(plan, printer.chordError);
  const cuts = [
    ...middle,
    ...holes.centres.map((center) =>
      holeCut({ center, from: 0, to: thickness, bore: holes.diameter }, (size) => size, printer.chordError),
    ),
  ];
  const slab: Shape = { kind: 'prism', outlines: [outline], from: 0, to: thickness };
  const removed = cuts.reduce((sum, { volume }) => sum + volume, 0);
  return {
    recipe: {
      name,
      material: material.name,
      shape: { kind: 'difference', of: [slab, ...cuts.map(({ shape }) => shape)] },
    },
    expected: () => ({
      volume: polygonArea(outline) * thickness - removed,
      mark: 0,
      bounds: [
        [-plan.length / 2, -plan.width / 2, 0],
        [plan.length / 2, plan.width / 2, thickness],
      ],
    }),
    printer,
    leastWall: lessChords(thinnestWall(plan), printer.chordError),
  };
}

/** Pocket and shoulder, or a bore with both mouths broken, turned in one piece. */
function middleOf(plan: HolderPlan, chordError: number): Cut {
  const { pocket, bore, chamfer, thickness } = plan;
  const radius = bore / 2;
  const floor = shoulderHeight(plan);
  const inside: [number, number][] =
    pocket && floor !== undefined
      ? [
          [radius, 0],
          [radius, floor - chamfer],
          ...(chamfer > 0 ? [[radius + chamfer, floor] as [number, number]] : []),
          [pocket.diameter / 2, floor],
          ...(isLipped(pocket) ? lipProfile(pocket, floor) : []),
          ...(pocket.leadIn > 0 && !pocket.lip
            ? [[pocket.diameter / 2, thickness - pocket.leadIn] as [number, number]]
            : []),
          [mouthRadius(pocket), thickness],
        ]
      : [
          [radius + chamfer, 0],
          [radius, chamfer],
          [radius, thickness - chamfer],
          [radius + chamfer, thickness],
        ];
  const lathe = {
    kind: 'lathe',
    sides: sidesFor((pocket?.diameter ?? bore) / 2, chordError),
    circumscribed: true,
  } as const;
  const [first, last] = [inside[0]!, inside.at(-1)!];
  return {
    shape: {
      ...lathe,
      contour: [[first[0], -OVERSHOOT], ...inside, [last[0], thickness + OVERSHOOT]],
      // of a pocket its lead-in, or the edge that a flange lies on
      broken: pocket ? (pocket.lip ? [6] : pocket.leadIn > 0 ? [4] : chamfer > 0 ? [2] : []) : [1, 3],
    },
    volume: latheVolume({ ...lathe, contour: inside }),
  };
}

/** From the wall of the pocket in to the lip, at 45°, and along it. */
function lipProfile({ diameter, lip }: LippedPocket, floor: number): [number, number][] {
  const [wide, narrow] = [diameter / 2, lip.diameter / 2];
  const at = floor + lip.from;
  const reached = at + wide - narrow;
  return [
    [wide, at],
    [narrow, reached],
    [narrow, reached + lip.land],
  ];
}

/** The groove that sets the ring of a lip free, as deep as the pocket. */
function grooveOf(plan: HolderPlan, chordError: number): Cut[] {
  const { pocket, thickness } = plan;
  const floor = shoulderHeight(plan);
  if (!isLipped(pocket) || floor === undefined) return [];
  const [inner, outer] = grooveRadii(pocket);
  const outside = circleOutline({ radius: outer, sides: sidesFor(outer, chordError), circumscribed: true });
  const inside = circleOutline({ radius: inner, sides: sidesFor(inner, chordError) });
  return [
    {
      shape: { kind: 'prism', outlines: [outside, inside], from: floor, to: thickness + OVERSHOOT },
      volume: (polygonArea(outside) - polygonArea(inside)) * (thickness - floor),
    },
  ];
}
