import { cosd, sind } from '../../solid/angles.js';
import {
  type Curve,
  circleOutline,
  type Outline,
  polygonArea,
  sidesFor,
  turnedOutline,
  withCurves,
} from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import type { PrintSizes } from '../common/print-sizes.js';
import { bulge, halfPitch } from './jaws.js';

/** The insert: lobes on a ring, or on a solid centre. Sizes of one kind: finished or printed. */
export interface InsertPlan {
  readonly lobes: number;
  /** half the width of a lobe, in its middle where it is barrelled */
  readonly halfWidth: number;
  /** how much narrower each side of a barrelled lobe is at its ends; 0 where straight */
  readonly barrel: number;
  /** radius of the ring's outside */
  readonly ring: number;
  /** radius that the lobes reach */
  readonly reach: number;
  readonly height: number;
  /** diameter of the hole, 0 for a solid centre */
  readonly hole: number;
  /** the barrel's middle is here, from the axis */
  readonly middle: number;
}

const SIDE_STEPS = 8;

/** Half the width of a lobe at a distance from the axis. */
export function lobeHalfWidth({ halfWidth, barrel, middle, reach }: InsertPlan, along: number): number {
  return halfWidth - bulge(barrel, (along - middle) / (reach - middle));
}

/** A lobe by itself, its middle on +X, from where its sides leave the ring or the neighbouring lobes. */
export function lobeOutline(insert: InsertPlan): Outline {
  const start = lobeRoot(insert);
  const side = sidePlaces(insert, start).map((along): [number, number] => [along, lobeHalfWidth(insert, along)]);
  const corners = [...side.map(([x, y]): [number, number] => [x, -y]), ...side.toReversed()];
  if (insert.barrel === 0) return corners;
  const sides: Curve[] = [{ kind: 'free' }, { kind: 'free' }];
  return withCurves(
    corners,
    corners.map((_, i) => ((i + 1) % side.length === 0 ? undefined : sides[i < side.length ? 0 : 1])),
  );
}

/** Where a lobe's side has corners: its ends, or both halves of a barrel in equal steps, its widest place among them. */
function sidePlaces({ barrel, middle, reach }: InsertPlan, start: number): number[] {
  if (barrel === 0) return [start, reach];
  const stops = start < middle ? [start, middle, reach] : [start, reach];
  const steps = SIDE_STEPS / (stops.length - 1);
  const between = stops.slice(1).flatMap((to, i) => {
    const from = stops[i]!;
    return Array.from({ length: steps }, (_, k) => from + ((to - from) * k) / steps);
  });
  return [...between, reach];
}

/** How far along a lobe its sides meet the ring, or the sides of its neighbours where those meet farther out. */
function lobeRoot(insert: InsertPlan): number {
  const beta = halfPitch(insert.lobes / 2);
  let along = insert.ring;
  for (let i = 0; i < 30; i++) {
    const half = lobeHalfWidth(insert, along);
    const onRing = Math.sqrt(Math.max(0, insert.ring ** 2 - half ** 2));
    along = Math.max(onRing, half / Math.tan((beta * Math.PI) / 180));
  }
  return along;
}

/** The whole insert seen along the axis, its first lobe half a pitch past +X. */
export function insertOutline(insert: InsertPlan, chordError: number): Outline {
  const beta = halfPitch(insert.lobes / 2);
  const lobe = lobeOutline(insert);
  const root = lobe[lobe.length - 1]!;
  const opening = (Math.atan2(root[1], root[0]) * 180) / Math.PI;
  const gap = 2 * beta - 2 * opening;
  const sides = sidesFor(insert.ring, chordError);
  const steps = gap < 0.5 || Math.hypot(...root) > insert.ring + 1e-6 ? 0 : Math.max(1, Math.ceil((gap * sides) / 360));
  const points: (readonly [number, number])[] = [];
  const curves: (Curve | undefined)[] = [];
  const ring: Curve = { kind: 'arc', center: [0, 0], radius: insert.ring, circumscribed: false };
  for (let i = 0; i < insert.lobes; i++) {
    const angle = beta + 2 * beta * i;
    const own = turnedOutline(lobe, angle);
    // where neighbours meet, the corner belongs to both
    points.push(...(steps === 0 ? own.slice(0, -1) : own));
    curves.push(...own.slice(0, -1).map((_, side) => own.curves?.[side]));
    for (let k = 0; k < steps; k++) {
      const at = angle + opening + (gap * k) / steps;
      if (k > 0) points.push([insert.ring * cosd(at), insert.ring * sind(at)]);
      curves.push(ring);
    }
  }
  return withCurves(points, curves);
}

/** The hole in the ring. */
function holeOutline({ hole }: InsertPlan, chordError: number): Outline | undefined {
  if (hole === 0) return undefined;
  return circleOutline({ radius: hole / 2, sides: sidesFor(hole / 2, chordError), circumscribed: true });
}

/** The insert as a shape that lies on z = 0. */
export function insertShape(insert: InsertPlan, chordError: number): Shape {
  const hole = holeOutline(insert, chordError);
  const outline = insertOutline(insert, chordError);
  return { kind: 'prism', outlines: hole ? [outline, hole] : [outline], from: 0, to: insert.height };
}

/** Its volume [mm³]. */
export function insertVolume(insert: InsertPlan, chordError: number): number {
  const hole = holeOutline(insert, chordError);
  return (polygonArea(insertOutline(insert, chordError)) - (hole ? polygonArea(hole) : 0)) * insert.height;
}

/** Sizes of an insert as they must stand in the file: lobes and ring are outsides. */
export function printedInsert(insert: InsertPlan, sizes: PrintSizes): InsertPlan {
  return {
    ...insert,
    halfWidth: sizes.outside(2 * insert.halfWidth) / 2,
    barrel: sizes.across(insert.barrel),
    ring: sizes.outside(2 * insert.ring) / 2,
    reach: sizes.outside(2 * insert.reach) / 2,
    height: sizes.along(insert.height),
    hole: insert.hole > 0 ? sizes.inside(insert.hole) : 0,
    middle: sizes.across(insert.middle),
  };
}
