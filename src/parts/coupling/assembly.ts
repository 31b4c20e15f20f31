import type { LoftLevel } from '../../solid/convex-loft.js';
import { circleOutline, type Outline, sidesFor, turnedOutline } from '../../solid/outline.js';
import type { Shape } from '../../solid/recipe.js';
import { outlineAt, roundLoft } from '../common/carved.js';
import { commonArea, sectionVolume } from '../common/section-volume.js';
import { type InsertPlan, insertShape, lobeOutline } from './insert.js';
import { coreOutline, halfPitch, type JawPlan, jawCutters, slotLevels, slotOutlines, straightHalf } from './jaws.js';

/** Hubs and insert put together: the motor hub's floor lies on z = 0, its first jaw on +X. Finished sizes. */
export interface Assembly {
  readonly jaws: JawPlan;
  readonly insert: InsertPlan;
  /** between the two floors */
  readonly gap: number;
  readonly chordError: number;
}

/** How the second hub stands off its true place. */
export interface Offset {
  /** degrees, about the middle of the insert */
  readonly angular: number;
  readonly parallel: number;
  /** towards the first hub */
  readonly axial: number;
  /** direction of the offset, degrees from +X */
  readonly towards: number;
}

const BELOW = 3;

/** The jaws of the first hub with a slice of its body. */
export function lowerJaws({ jaws, chordError }: Assembly): Shape {
  const { height, bevel } = jaws;
  const disc = discOf(jaws, chordError);
  const levels: LoftLevel[] = [[-BELOW, 0], ...(bevel > 0 ? [[height - bevel, 0] as const] : []), [height, -bevel]];
  return { kind: 'difference', of: [roundLoft(disc, levels), ...jawCutters(jaws, 0, chordError)] };
}

function discOf({ outer }: JawPlan, chordError: number): Outline {
  return circleOutline({ radius: outer, sides: sidesFor(outer, chordError) });
}

/** The second hub's jaws in their place: turned over, between the first one's. */
export function upperJaws(lower: Shape, { jaws, gap }: Assembly): Shape {
  return { kind: 'moved', shape: lower, tilt: 180, turn: 180 / jaws.count - 180, by: [0, 0, gap] };
}

/** The insert in the middle between the floors. */
export function placedInsert({ insert, gap, chordError }: Assembly): Shape {
  return { kind: 'moved', shape: insertShape(insert, chordError), by: [0, 0, (gap - insert.height) / 2] };
}

/** A shape of the assembly moved by a misalignment about the middle of the insert. */
export function misplaced(shape: Shape, gap: number, { angular, parallel, axial, towards }: Offset): Shape {
  const radians = (towards * Math.PI) / 180;
  const centred: Shape = { kind: 'moved', shape, by: [0, 0, -gap / 2] };
  return {
    kind: 'moved',
    shape: { kind: 'moved', shape: centred, turn: -towards },
    tilt: angular,
    turn: towards,
    by: [parallel * Math.cos(radians), parallel * Math.sin(radians), gap / 2 - axial],
  };
}

/** The same insert with both sides of its lobes taken back to leave a gap at every flank. */
export function pared(insert: InsertPlan, { jaws }: Assembly, gap: number): InsertPlan {
  const room = insert.barrel === 0 ? straightHalf(jaws, insert.reach) : jaws.halfSlot;
  return { ...insert, halfWidth: Math.min(insert.halfWidth, room - gap) };
}

/**
 * Volume in which the squeezed lobes and the jaws of one hub stand in each other, by the drawn polygons alone.
 *
 *     V = ∫ Σ A(lobe outside gap and room) dz
 */
export function squeezedVolume({ jaws, insert, gap, chordError }: Assembly): number {
  const beta = halfPitch(jaws.count);
  const slots = slotOutlines(jaws);
  // lobes 2k and 2k + 1 stand in gap k; facets of the room fall differently on each of them
  const pairs = Array.from({ length: 2 * jaws.count }, (_, i) => ({
    lobe: turnedOutline(lobeOutline(insert), beta + 2 * beta * i),
    slot: slots[Math.floor(i / 2)]!,
  }));
  const core = coreOutline(jaws, chordError);
  const disc = discOf(jaws, chordError);
  const levels = slotLevels(jaws);
  const from = (gap - insert.height) / 2;
  const to = Math.min(jaws.height, from + insert.height);
  const bevelled: LoftLevel[] = [
    [jaws.height - jaws.bevel, 0],
    [jaws.height, -jaws.bevel],
  ];
  const areaAt = (z: number) => {
    const rim = z > jaws.height - jaws.bevel ? outlineAt(disc, bevelled, z) : disc;
    return pairs.reduce((sum, { lobe, slot }) => {
      const gapped = outlineAt(slot, levels, z);
      const outside = commonArea(rim, lobe) - commonArea(rim, lobe, gapped);
      return sum + outside - commonArea(core, lobe) + commonArea(core, lobe, gapped);
    }, 0);
  };
  // draft lets go of the lobes from here on
  const free = (insert.halfWidth - jaws.halfSlot) / Math.tan((Math.max(0.01, jaws.draft) * Math.PI) / 180);
  const breaks = [from, to, free, ...levels.map(([z]) => z)].filter((z) => z >= from && z <= to);
  return sectionVolume(areaAt, breaks, jaws.draft > 0 ? 6 : 3);
}

/**
 * Turn of the insert in one hub until a lobe meets a flank, by the drawn polygons alone [degrees]. 0 where it is squeezed.
 */
export function playAngle({ jaws, insert, gap }: Assembly): number {
  const from = Math.max(jaws.fillet, (gap - insert.height) / 2);
  const slot = outlineAt(slotOutlines(jaws)[0]!, slotLevels(jaws), from);
  const lobe = besideJaws(lobeOutline(insert), jaws.inner);
  const isFree = (degrees: number) =>
    turnedOutline(lobe, halfPitch(jaws.count) - degrees).every((point) => isInside(slot, point));
  if (!isFree(0)) return 0;
  let [free, met] = [0, halfPitch(jaws.count)];
  for (let i = 0; i < 40; i++) {
    const middle = (free + met) / 2;
    if (isFree(middle)) free = middle;
    else met = middle;
  }
  return free;
}

/** Corners of a lobe outside the room in the jaws, and where its sides leave that room. */
function besideJaws(lobe: Outline, inner: number): Outline {
  return lobe.flatMap((point, i) => {
    const next = lobe[(i + 1) % lobe.length]!;
    const [from, to] = [Math.hypot(...point), Math.hypot(...next)];
    const kept = from >= inner ? [point] : [];
    if ((from - inner) * (to - inner) >= 0) return kept;
    let [low, high] = [0, 1];
    const at = (share: number) =>
      [point[0] + share * (next[0] - point[0]), point[1] + share * (next[1] - point[1])] as const;
    for (let step = 0; step < 40; step++) {
      const middle = (low + high) / 2;
      if ((Math.hypot(...at(middle)) - inner) * (from - inner) > 0) low = middle;
      else high = middle;
    }
    return [...kept, at(high)];
  });
}

function isInside(outline: Outline, [x, y]: readonly [number, number]): boolean {
  return outline.every(([x0, y0], i) => {
    const [x1, y1] = outline[(i + 1) % outline.length]!;
    return (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0) >= -1e-9;
  });
}
