import { plain as words } from '../../../../units/format.js';
import { noted, notedSize } from '../../../common/drawn/spread.js';
import { type Coil, springCoil, springSection } from '../../../common/drawn/spring-coil.js';
import { beyond, crossing } from '../../../common/drawn/strokes.js';
import { threadRoot } from '../../../common/drawn/thread-roots.js';
import type { AskedView, SizeMark } from '../../../part-views.js';
import { type NutInSight, nearestHole } from '../../views/in-sight.js';
import type { Member } from '../../views/member.js';
import type { Variant } from '../types.js';

type AntiBacklash = Variant & { kind: 'anti-backlash' };

/** Room between the pieces when they are pulled apart [mm]. */
const APART = 8;

/** Keys, slots and follower as they stand. */
interface Pieces {
  readonly keyWidth: number;
  readonly keyHeight: number;
  /** from the axis to the inner and outer faces of a key, and to the ends of the slots */
  readonly keyStart: number;
  readonly keyReach: number;
  readonly slotWidth: number;
  readonly slotDepth: number;
  readonly slotReach: number;
  /** heights of the follower */
  readonly from: number;
  readonly to: number;
}

function piecesOf({ print, top }: NutInSight, { tongue, spring, follower }: AntiBacklash): Pieces {
  const [keyWidth, slotWidth] = [print.outside(tongue.width), print.inside(tongue.width + tongue.air)];
  const from = top + print.along(spring.working);
  return {
    keyWidth,
    keyHeight: print.along(tongue.height),
    keyStart: print.across(tongue.inner),
    keyReach: print.across(tongue.outer),
    slotWidth,
    slotDepth: print.along(tongue.slotDepth),
    slotReach: print.across(tongue.outer + tongue.air),
    from,
    to: from + print.along(follower),
  };
}

/** Two nuts that a spring keeps apart, cut through a key and a hole; each is seen where key and slots are. */
export function antiBacklashMember(nut: NutInSight, family: AntiBacklash, plain: Member): Member {
  const { bottom, top, print, design } = nut;
  const pieces = piecesOf(nut, family);
  const { from, to, keyStart, keyReach, slotReach } = pieces;
  const reached = (radius: number) => notedSize(radius, nut.spread(radius, 'outside'));
  const { inside, outside, solid, free, rate, working } = family.spring;
  const coil: Coil = { inside, outside, solid, from: top, to: from };
  return {
    ...plain,
    planes: [0, nearestHole(nut, 180)],
    threads: [
      { bottom, top },
      { bottom: from, top: to },
    ],
    side: { strokes: springSection(coil), sizes: sideSizes(nut, pieces) },
    end: {
      title: 'Main nut, its keys',
      strokes: [],
      sizes: [keySize(nut, pieces)],
    },
    notInEnd: ['follower'],
    further: [followerView(nut, pieces)],
    notes: [
      `Spring ${noted(inside)} × ${noted(outside)} × ${noted(free)}, ${words(rate)} N/mm, works at ${noted(working)}; the keys of the main nut slide in the follower's slots`,
      `From the axis: keys ${reached(keyStart)} to ${reached(keyReach)}, slots up to ${notedSize(slotReach, nut.spread(slotReach, 'inside'))}`,
    ],
    companions: [springCoil({ ...coil, from: top, to: top + print.along(working) })],
    top: to,
    apart: { follower: [0, 0, design.printed.length + APART] },
  };
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

/** The follower by itself, seen from −Z where its slots open. */
function followerView({ sizes, bodies, spread }: NutInSight, { slotReach, slotWidth }: Pieces): AskedView {
  const r = sizes.body.across / 2;
  return {
    title: 'Follower, its slots',
    solid: {
      bodies: bodies().flatMap(({ name, shape }) => (name === 'follower' ? [shape] : [])),
      sight: { kind: 'end', from: -1 },
    },
    strokes: [threadRoot(sizes), ...crossing([0, 0], r + beyond(r))],
    sizes: [
      {
        name: 'slot_width',
        value: slotWidth,
        ...spread(slotWidth, 'inside'),
        from: [-slotReach, -slotWidth / 2],
        to: [-slotReach, slotWidth / 2],
        side: 'left',
      },
    ],
    letters: [],
  };
}
