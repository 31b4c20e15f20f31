import type { Outline } from '../../../../solid/outline.js';
import { plain as words } from '../../../../units/format.js';
import { box as plan } from '../../../common/carved.js';
import { standingFaces } from '../../../common/drawn/cut-face.js';
import { flatArea } from '../../../common/drawn/flat-area.js';
import { type Coil, springCoil, springSection } from '../../../common/drawn/spring-coil.js';
import { beyond, crossing, loop } from '../../../common/drawn/strokes.js';
import type { DrawnView, SizeMark } from '../../../part-views.js';
import { boreLoop, threadSeen } from '../../views/end.js';
import { type NutInSight, nearestHole } from '../../views/in-sight.js';
import { profileOf } from '../../views/material.js';
import type { Member } from '../../views/member.js';
import type { Family } from '../types.js';

type AntiBacklash = Family & { kind: 'anti-backlash' };

/** Room between the pieces when they are pulled apart [mm]. */
const APART = 8;

/** Keys, slots and follower as they stand. */
interface Pieces {
  readonly keys: readonly Outline[];
  readonly keyWidth: number;
  readonly keyHeight: number;
  readonly keyReach: number;
  readonly slots: readonly Outline[];
  readonly slotWidth: number;
  readonly slotDepth: number;
  /** heights of the follower */
  readonly from: number;
  readonly to: number;
}

function piecesOf({ print, top }: NutInSight, { tongue, spring, follower }: AntiBacklash): Pieces {
  const [keyWidth, slotWidth] = [print.outside(tongue.width), print.inside(tongue.width + tongue.air)];
  const [inner, keyReach] = [print.across(tongue.inner), print.across(tongue.outer)];
  const slotReach = print.across(tongue.outer + tongue.air);
  const from = top + print.along(spring.working);
  const both = (near: number, far: number, width: number) => [
    plan([near, far], [-width / 2, width / 2]),
    plan([-far, -near], [-width / 2, width / 2]),
  ];
  return {
    keys: both(inner, keyReach, keyWidth),
    keyWidth,
    keyHeight: print.along(tongue.height),
    keyReach,
    slots: both(0, slotReach, slotWidth),
    slotWidth,
    slotDepth: print.along(tongue.slotDepth),
    from,
    to: from + print.along(follower),
  };
}

/** Two nuts that a spring keeps apart, cut through a key and a hole; each is seen where key and slots are. */
export function antiBacklashMember(nut: NutInSight, family: AntiBacklash, plain: Member): Member {
  const { bottom, top, print, design } = nut;
  const pieces = piecesOf(nut, family);
  const { keys, keyHeight, slots, slotDepth, from, to } = pieces;
  const { inside, outside, solid, free, rate, working } = family.spring;
  const coil: Coil = { inside, outside, solid, from: top, to: from };
  const follower: NutInSight = { ...nut, plate: undefined, bottom: from, top: to, sizes: unflanged(nut) };
  return {
    ...plain,
    planes: [0, nearestHole(nut, 180)],
    threads: [
      { bottom, top },
      { bottom: from, top: to },
    ],
    faces: (angle) => ({
      // from inside the body, so that both are one
      added: keys.flatMap((key) => standingFaces(key, angle, [top - 0.5, top + keyHeight])),
      cut: [],
    }),
    others: (angle) => [
      {
        added: [profileOf(follower, angle)],
        cut: slots.flatMap((slot) => standingFaces(slot, angle, [from - 1, from + slotDepth])),
      },
    ],
    side: { strokes: springSection(coil), sizes: sideSizes(nut, pieces) },
    end: {
      title: 'Main nut, its keys',
      strokes: keys.map((key) => loop('outline', key)),
      sizes: [keySize(nut, pieces)],
    },
    further: [followerView(follower, pieces)],
    notes: [
      `Spring ${words(inside, 2)} × ${words(outside, 2)} × ${words(free, 2)}, ${words(rate)} N/mm, works at ${words(working, 2)}; the keys of the main nut slide in the follower's slots`,
    ],
    companions: [springCoil({ ...coil, from: top, to: top + print.along(working) })],
    top: to,
    apart: { follower: [0, 0, design.printed.length + APART] },
  };
}

function unflanged({ sizes: { thread, lead, body, length, leadIn, relief } }: NutInSight): NutInSight['sizes'] {
  return { thread, lead, body, length, leadIn, relief, fillet: 0 };
}

function sideSizes(
  { top, spread, sizes }: NutInSight,
  { keyHeight, slotDepth, keyReach, from, to }: Pieces,
): SizeMark[] {
  const r = sizes.body.across / 2;
  const along = (name: string, [start, end]: readonly [number, number], y: number): SizeMark => ({
    name,
    value: end - start,
    ...spread(end - start, 'along'),
    from: [-end, y],
    to: [-start, y],
    side: y < 0 ? 'below' : 'above',
  });
  return [
    along('spring_length', [top, from], -r),
    along('follower_length', [from, to], -r),
    along('key_height', [top, top + keyHeight], keyReach),
    along('slot_depth', [from, from + slotDepth], r),
  ];
}

function keySize({ spread }: NutInSight, { keyWidth, keyReach }: Pieces): SizeMark {
  return {
    name: 'key_width',
    value: keyWidth,
    ...spread(keyWidth, 'outside'),
    from: [-keyReach, -keyWidth / 2],
    to: [-keyReach, keyWidth / 2],
    side: 'left',
  };
}

/** The follower by itself, seen from below where its slots open. */
function followerView({ sizes, body, spread }: NutInSight, { slots, slotWidth }: Pieces): DrawnView {
  const open = flatArea(slots, [boreLoop(sizes.thread.minor / 2)]);
  const r = sizes.body.across / 2;
  const reach = Math.max(...open.flat().map(([x]) => x));
  return {
    title: 'Follower, its slots',
    strokes: [
      loop('outline', body),
      ...threadSeen(sizes),
      ...open.map((points) => loop('outline', points)),
      ...crossing([0, 0], r + beyond(r)),
    ],
    hatched: [],
    sizes: [
      {
        name: 'slot_width',
        value: slotWidth,
        ...spread(slotWidth, 'inside'),
        from: [-reach, -slotWidth / 2],
        to: [-reach, slotWidth / 2],
        side: 'left',
      },
    ],
    letters: [],
  };
}
