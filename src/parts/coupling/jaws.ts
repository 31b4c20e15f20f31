import { cosd, sind } from '../../solid/angles.js';
import type { LoftLevel } from '../../solid/convex-loft.js';
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
import { outlineAt } from '../common/carved.js';
import { OVERSHOOT } from '../common/cut.js';
import { commonArea } from '../common/section-volume.js';

/**
 * The jaws of one hub. Lobes of the insert stand between them, twice as many as a hub has jaws; each flank runs beside
 * the middle line of its lobe, `halfSlot` away from it. Sizes of one kind: finished or printed.
 */
export interface JawPlan {
  readonly count: number;
  readonly height: number;
  /** radius of the outline */
  readonly outer: number;
  /** radius of the room inside the jaws */
  readonly inner: number;
  readonly halfSlot: number;
  /** how much a curved flank stands back in its middle against its ends; 0 where straight */
  readonly hollow: number;
  /** degrees */
  readonly draft: number;
  readonly fillet: number;
  readonly bevel: number;
  /** how much deeper the room inside the jaws is than the floor between them */
  readonly recess: number;
}

/** How far the chord of a curved flank may be off its parabola, mm. */
const FLANK_CHORD = 0.005;

/** Steps of a curved flank: a parabola of depth d in n steps is off by d/n². An even number, so one stands in the middle. */
export function flankSteps(hollow: number): number {
  return Math.max(8, 2 * Math.ceil(Math.sqrt(hollow / FLANK_CHORD) / 2));
}

/** Half the angle between two neighbouring lobes, degrees: a jaw spans it to either side. */
export function halfPitch(jaws: number): number {
  return 90 / jaws;
}

/** A parabola about its middle, carried on straight beyond its half-length: convex everywhere. */
export function bulge(depth: number, from: number): number {
  const far = Math.abs(from);
  return depth * (far <= 1 ? far ** 2 : 2 * far - 1);
}

/** Distance of a flank from its lobe's middle line at a distance along it: a curved one is widest in its middle. */
function flankOffset({ halfSlot, hollow, inner, outer }: JawPlan, along: number): number {
  return halfSlot - bulge(hollow, (along - (inner + outer) / 2) / ((outer - inner) / 2));
}

/** Half the width that a straight lobe may have between two flanks, out to its reach: less where they are curved. */
export function straightHalf(plan: JawPlan, reach: number): number {
  const { hollow, halfSlot, inner } = plan;
  if (hollow === 0) return halfSlot;
  const corner = Math.sqrt(Math.max(0, inner ** 2 - halfSlot ** 2));
  return Math.min(flankOffset(plan, corner), flankOffset(plan, reach));
}

/** Width of a jaw across its middle line at a distance from the axis [mm]; 0 or below where its flanks have met. */
export function jawWidth(plan: JawPlan, radius: number): number {
  const beta = halfPitch(plan.count);
  let half = 0;
  // a curved flank is met where it is as far along its lobe as the jaw is wide there
  for (let i = 0; i < (plan.hollow > 0 ? 20 : 1); i++)
    half = (radius * sind(beta) - flankOffset(plan, radius * cosd(beta) + half * sind(beta))) / cosd(beta);
  return 2 * half;
}

/** How far the chord of a fillet may be off its arc, mm. */
const FILLET_CHORD = 0.01;

/** Steps of a fillet between a flank and the floor: a quarter of radius r in n of them is off by r·(π/4n)²/2. At least four. */
function filletSteps(fillet: number): number {
  return fillet > 0 ? Math.max(4, Math.ceil((Math.PI / 4) * Math.sqrt(fillet / (2 * FILLET_CHORD)))) : 0;
}

/** How the sides of a gap between jaws move along the axis, from the floor at z = 0 upwards: fillet, draft, bevel. */
export function slotLevels({ height, draft, fillet, bevel }: JawPlan): LoftLevel[] {
  const lean = (z: number) => z * Math.tan((draft * Math.PI) / 180);
  const levels: [number, number][] = [];
  const steps = filletSteps(fillet);
  for (let i = 0; i < steps; i++) {
    const angle = (i * Math.PI) / (2 * steps);
    const z = fillet * (1 - Math.cos(angle));
    levels.push([z, lean(z) - fillet * (1 - Math.sin(angle))]);
  }
  levels.push([fillet, lean(fillet)]);
  if (bevel > 0) levels.push([height - bevel, lean(height - bevel)]);
  const top = lean(height) + bevel;
  levels.push([height, top], [height + OVERSHOOT, top + (bevel > 0 ? OVERSHOOT : lean(OVERSHOOT))]);
  return levels;
}

/** Least and greatest move of a gap's sides below the tips. */
function reachOf(plan: JawPlan): { readonly in: number; readonly out: number } {
  const offsets = slotLevels(plan)
    .slice(0, -1)
    .map(([, offset]) => offset);
  return { in: Math.max(0, -Math.min(...offsets)), out: Math.max(0, ...offsets) };
}

/**
 * Where a gap between jaws begins along its middle: far enough out not to meet its neighbours, far enough in to open
 * into the room inside the jaws. Undefined where there is no such place, since the jaws are too narrow inside.
 */
export function slotStart(plan: JawPlan): number | undefined {
  const { count, inner, halfSlot: s } = plan;
  const beta = halfPitch(count);
  const { in: f, out: o } = reachOf(plan);
  const least = o + ((s + o) * cosd(2 * beta)) / sind(beta) + 0.02;
  const room = (inner - 0.05) ** 2 - (s - f) ** 2;
  if (room <= 0) return undefined;
  const most = cosd(beta) * Math.sqrt(room) - f - (s - f) * sind(beta);
  return least < most ? (least + most) / 2 : undefined;
}

/** A gap between two jaws of a hub, its middle on +X: convex, from inside the room in the jaws to beyond the outline. */
function slotOutline(plan: JawPlan): Outline {
  const start = slotStart(plan)!;
  const beta = halfPitch(plan.count);
  const end = (plan.outer + 3 + plan.halfSlot * sind(beta)) / cosd(beta);
  const first = (start + flankOffset(plan, plan.inner) * sind(beta)) / cosd(beta);
  const steps = flankSteps(plan.hollow);
  const stations =
    plan.hollow === 0
      ? [first, end]
      : [
          first,
          ...Array.from({ length: steps + 1 }, (_, i) => plan.inner + ((plan.outer - plan.inner) * i) / steps).filter(
            (along) => along > first + 0.05,
          ),
          end,
        ];
  const left = stations.map((along): [number, number] => {
    const out = flankOffset(plan, along);
    return [along * cosd(beta) - out * sind(beta), along * sind(beta) + out * cosd(beta)];
  });
  const corners = [...left.map(([x, y]): [number, number] => [x, -y]), ...left.toReversed()];
  if (plan.hollow === 0) return corners;
  // the flanks as one curve each; between them the two ends
  const flanks: Curve[] = [{ kind: 'free' }, { kind: 'free' }];
  const count = left.length;
  return withCurves(
    corners,
    corners.map((_, i) => ((i + 1) % count === 0 ? undefined : flanks[i < count ? 0 : 1])),
  );
}

/** The gaps between the jaws, jaw 1 on +X. */
export function slotOutlines(plan: JawPlan): Outline[] {
  const slot = slotOutline(plan);
  return Array.from({ length: plan.count }, (_, i) => turnedOutline(slot, ((2 * i + 1) * 180) / plan.count));
}

/** The room inside the jaws. */
export function coreOutline({ inner }: JawPlan, chordError: number): Outline {
  return circleOutline({ radius: inner, sides: sidesFor(inner, chordError), circumscribed: true });
}

/** What is cut away to leave jaws standing on a floor. */
export function jawCutters(plan: JawPlan, floor: number, chordError: number): Shape[] {
  const levels = slotLevels(plan).map(([z, offset]): LoftLevel => [floor + z, offset]);
  return [
    {
      kind: 'prism',
      outlines: [coreOutline(plan, chordError)],
      from: floor - plan.recess,
      to: floor + plan.height + OVERSHOOT,
    },
    ...slotOutlines(plan).map(
      (slot): Shape => ({
        kind: 'loft',
        outline: slot,
        levels,
        rounds: plan.fillet > 0 ? [{ from: 0, to: filletSteps(plan.fillet) }] : [],
        broken: plan.bevel > 0 ? [levels.length - 3, levels.length - 2] : [],
      }),
    ),
  ];
}

/** Area of the jaws' section by the height over the floor; below 0 only the room inside them is cut [mm²]. */
export function jawArea(plan: JawPlan, chordError: number): (disc: Outline, up: number) => number {
  const core = coreOutline(plan, chordError);
  const levels = slotLevels(plan);
  const slots = slotOutlines(plan);
  const room = polygonArea(core);
  return (disc, up) => {
    const solid = polygonArea(disc) - room;
    if (up < 0) return solid;
    return slots.reduce((rest, slot) => {
      const gap = outlineAt(slot, levels, up);
      return rest - commonArea(disc, gap) + commonArea(core, gap);
    }, solid);
  };
}
