import { snapStrain } from '../../mechanics/shaft/snap-lip.js';
import type { Material } from '../../presets/material.js';
import type { Assumptions } from '../../sheet/assumptions.js';
import { usualShoulder } from '../../standards/bearings/deep-groove.js';
import { washer } from '../../standards/fasteners/washer.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import type { Shaft } from '../common/bore.js';
import type { HolePattern } from '../common/hole-pattern.js';
import type { Bearing } from './bearing.js';
import { type HolderPlan, type Lip, leadInHeight, openRadius } from './plan.js';
import type { EndHolderSheet } from './sheet.js';

/** Figures that a holder starts from where its sheet does not say, mm. @source common-practice */
const D = {
  corner: 3,
  chamfer: 0.6,
  leadIn: 0.8,
  /** bore over the largest screw outside, of a guard ring and of a bush */
  guard: 1.5,
  bush: 0.2,
  /** length of a bush in screw diameters, thickness of a guard ring */
  bushLength: 1.25,
  ring: 5,
  /** plastic behind the shoulder of a bearing */
  floor: 4,
  cover: 3,
  /** by so much the pocket is shallower than the bearing under a plate */
  proud: 0.15,
  /** plastic around a bearing: so much of its outside, at least the second */
  wall: 0.3,
  leastWall: 2,
  /** edges of the bore that a flanged bearing goes into, and room around its flange under a plate, on the diameter */
  edge: 0.3,
  flangeRoom: 0.4,
  /** a flanged bearing ends so far inside its bore */
  inside: 0.2,
  /** room of a bearing under its lip along the axis, height of the lip, and how far its mouth opens past the pocket */
  underLip: 0.15,
  land: 0.4,
  mouth: 0.2,
  /** ring that a lip stands on, and groove around it; the ring in shares of the pocket where that is more */
  lipRing: 1.8,
  lipRingShare: 0.08,
  groove: 1.2,
  /** a lip reaches in by so much of what its ring springs back from, and within these, mm per side */
  lipShare: 0.8,
  lip: [0.1, 0.3],
} as const;

/** What keeps a bearing in its pocket. */
export type HeldBy = NonNullable<EndHolderSheet['held_by']>;

/** What a holder is laid out around. */
interface Task {
  readonly held: Shaft;
  readonly pattern: HolePattern;
  readonly bearing?: Bearing;
  readonly heldBy?: HeldBy;
  readonly material: Material;
  readonly interference?: number;
}

/** Plastic that a bearing or a bush wants around itself, mm. */
export function usualWall(diameter: number): number {
  return Math.max(D.leastWall, D.wall * diameter);
}

/**
 * Lays a holder out at finished sizes.
 * @throws InputError holes that leave the body or meet the middle, a body that is too thin for its bearing
 */
export function layOut(sheet: EndHolderSheet, task: Task, assumptions: Assumptions): HolderPlan {
  const { pattern } = task;
  const middle = middleFor(sheet, task, assumptions);
  const { least } = middle;
  const thickness = assumptions.or<number>(sheet.body?.thickness, 'body.thickness', middle.usual, middle.why);
  if (thickness < least) throw fault('body.thickness', `${plain(thickness)} mm`, `must be at least ${plain(least)} mm`);
  const { usual: _, why: __, least: ___, opening, ...cut } = middle;
  const diameter = pattern.diameter.likely;
  const edge = pattern.screw ? Math.max(1.5 * pattern.screwDiameter, washer(pattern.screw).outside / 2 + 1) : diameter;
  const open = openRadius(cut);
  const around = open + usualWall(2 * open);
  const side = (axis: 0 | 1, field: 'length' | 'width') =>
    assumptions.or<number>(
      sheet.body?.[field],
      `body.${field}`,
      Math.ceil(2 * Math.max(around, ...pattern.centres.map((at) => Math.abs(at[axis]) + edge))),
      'around its holes, and the wall that the middle wants',
    );
  const [length, width] = [side(0, 'length'), side(1, 'width')];
  const plan: HolderPlan = {
    length,
    width,
    thickness,
    corner: Math.min(D.corner, length / 4, width / 4),
    ...cut,
    holes: { diameter, centres: pattern.centres, isRectangle: pattern.isRectangle ?? false },
    ...(task.heldBy === 'plate'
      ? {
          cover: {
            thickness: assumptions.or<number>(sheet.body?.cover, 'body.cover', D.cover, 'a plate over the outer ring'),
            bore: opening,
          },
        }
      : {}),
  };
  requireRoom(plan);
  return plan;
}

type Middle = Pick<HolderPlan, 'bore' | 'chamfer' | 'pocket'> & {
  readonly usual: number;
  readonly least: number;
  readonly why: string;
  /** of a plate over it */
  readonly opening: number;
};

function middleFor(sheet: EndHolderSheet, task: Task, assumptions: Assumptions): Middle {
  const { bearing } = task;
  if (!bearing) return aroundScrew(sheet, task, assumptions);
  return bearing.flange
    ? aroundFlanged(task, bearing, bearing.flange)
    : aroundBearing(sheet, task, bearing, assumptions);
}

/** The bore goes through, and the flange lies on the outer face; under a plate it lies in a recess. */
function aroundFlanged(
  { heldBy, interference = 0 }: Task,
  bearing: Bearing,
  flange: NonNullable<Bearing['flange']>,
): Middle {
  const recess = heldBy === 'plate' ? Math.max(0.2, flange.thickness - D.proud) : 0;
  const least = bearing.width - flange.thickness + D.inside + recess;
  return {
    bore: bearing.outside - interference,
    chamfer: Math.min(D.edge, (flange.outside - bearing.outside) / 8),
    ...(recess > 0 ? { pocket: { diameter: flange.outside + D.flangeRoom, depth: recess, leadIn: 0 } } : {}),
    least,
    usual: Math.max(D.ring, Math.ceil(2 * least) / 2),
    why: 'the bearing behind its flange',
    opening: usualShoulder(bearing),
  };
}

function aroundBearing(
  { fit }: EndHolderSheet,
  { heldBy, interference = 0, material }: Task,
  bearing: Bearing,
  assumptions: Assumptions,
): Middle {
  const { outside, width } = bearing;
  const bore = fit?.shoulder ?? usualShoulder(bearing);
  const diameter = outside - interference;
  if (bore >= diameter - 0.4)
    throw fault('fit.shoulder', `${plain(bore)} mm`, `must be below ${plain(diameter - 0.4)} mm to leave a shoulder`);
  const lip = heldBy === 'lip' ? lipOver(bearing, { diameter, material, reach: fit?.lip }, assumptions) : undefined;
  const leadIn = lip
    ? leadInHeight((diameter - lip.diameter) / 2 + D.mouth)
    : heldBy === 'plate'
      ? 0
      : Math.min(D.leadIn, width / 4);
  const over = lip && lip.from + (diameter - lip.diameter) / 2 + lip.land + leadIn;
  const depth = over ?? (heldBy === 'plate' ? width - D.proud : width);
  return {
    bore,
    chamfer: 0,
    pocket: { diameter, depth, leadIn, ...(lip ? { lip } : {}) },
    least: depth + 1,
    opening: bore,
    usual: Math.ceil(2 * (depth + D.floor)) / 2,
    why: `the bearing and ${plain(D.floor)} mm behind its shoulder`,
  };
}

/** A lip that its ring springs back from. @throws InputError it reaches over nothing, or over all of the ring */
function lipOver(
  { outside, width }: Bearing,
  {
    diameter,
    material,
    reach,
  }: { readonly diameter: number; readonly material: Material; readonly reach: number | undefined },
  assumptions: Assumptions,
): Lip {
  const { pass } = snapStrain({ strength: material.tensile, modulus: material.modulus });
  const [least, most] = D.lip;
  const usual = Math.floor(20 * Math.min(most, Math.max(least, (D.lipShare * pass * outside) / 2)) + 1e-9) / 20;
  const own = assumptions.or<number>(reach, 'fit.lip', usual, 'within what its ring springs back from');
  const widest = outside / 8;
  if (own > widest)
    throw fault(
      'fit.lip',
      `${plain(own)} mm`,
      `must be at most ${plain(widest)} mm over a ring of ${plain(outside)} mm`,
    );
  const opens = outside - 2 * own;
  if (opens >= diameter)
    throw fault(
      'fit.lip',
      `${plain(own)} mm`,
      `must be above ${plain((outside - diameter) / 2)} mm, or it reaches over nothing`,
    );
  return {
    diameter: opens,
    from: width + D.underLip,
    land: D.land,
    ring: Math.max(D.lipRing, D.lipRingShare * diameter),
    groove: D.groove,
  };
}

function aroundScrew({ role, bore }: EndHolderSheet, { held }: Task, assumptions: Assumptions): Middle {
  const free = role === 'free';
  const play = free ? D.guard : D.bush;
  const largest = held.diameter.most;
  const own = assumptions.or<number>(
    bore,
    'bore',
    Math.ceil(20 * (largest + play)) / 20,
    free ? 'a guard ring keeps clear of the screw' : 'the largest that the screw may be, and its play',
  );
  if (own <= largest) throw fault('bore', `${plain(own)} mm`, `must be above the screw, ${plain(largest)} mm`);
  return {
    bore: own,
    opening: own,
    least: 1,
    chamfer: D.chamfer,
    usual: free ? D.ring : Math.ceil(D.bushLength * held.diameter.likely),
    why: free ? 'a guard ring carries nothing' : 'one and a quarter screw diameters to run on',
  };
}

/** Holes must stand in the body, clear of its edge and of its middle, so that there is a body at all. */
function requireRoom(plan: HolderPlan): void {
  const { length, width, holes } = plan;
  const open = openRadius(plan);
  const radius = holes.diameter / 2;
  const least = 0.4;
  for (const [field, size] of [
    ['length', length],
    ['width', width],
  ] as const)
    if (size / 2 < open + least)
      throw fault(
        `body.${field}`,
        `${plain(size)} mm`,
        `must be at least ${plain(2 * (open + least))} mm around the middle`,
      );
  for (const [x, y] of holes.centres) {
    const place = `a hole at x ${plain(x, 2)}, y ${plain(y, 2)}`;
    if (Math.hypot(x, y) < open + radius + least)
      throw fault('holes', place, `must keep ${plain(open + radius + least)} mm from the axis`);
    if (edgeDistance(plan, [x, y]) < radius + least)
      throw fault('body', `${plain(length)} × ${plain(width)} mm`, `must be larger to hold ${place}`);
  }
  for (const [i, a] of holes.centres.entries())
    for (const b of holes.centres.slice(0, i))
      if (Math.hypot(a[0] - b[0], a[1] - b[1]) < 2 * radius + least)
        throw fault('holes', `${plain(2 * radius)} mm`, `must be smaller, or further apart`);
}

/** How far a point inside a body lies from its edge, rounded corners counted. */
export function edgeDistance(
  { length, width, corner }: Pick<HolderPlan, 'length' | 'width' | 'corner'>,
  [x, y]: readonly [number, number],
): number {
  const [dx, dy] = [length / 2 - Math.abs(x), width / 2 - Math.abs(y)];
  if (dx >= corner || dy >= corner) return Math.min(dx, dy);
  return corner - Math.hypot(corner - dx, corner - dy);
}
