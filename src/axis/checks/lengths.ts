import { type Check, notJudged, soft, told, valued } from '../../judge/check.js';
import { plain } from '../../units/format.js';
import { type Measured, scaled, shifted } from '../../units/measured.js';
import type { AxisDesign } from '../axis-design.js';
import { figureOf, type Known, told as known, left, missingOf, total } from '../known.js';
import { type Along, GUARD, SHAFT_ROOM } from '../lengths.js';

type AxisCheck = Check<AxisDesign>;
const about = {
  group: 'lengths',
  question: 'lengths',
  unit: 'mm',
  source: 'derived: lengths along the screw',
} as const;

/**
 * What is left for travel when all that lies along the screw is taken off.
 *
 *     travel = last place of the nut − first − length that moves − rooms at both ends
 *     room = 5 mm at the motor; at the far end what the holder wants, else 5 mm
 *     first place, and what moves: as told, but not inside the coupling and no shorter than the nut
 */
const travel: AxisCheck = {
  ...about,
  id: 'axis-travel',
  title: 'Travel left after the swap',
  moves: 'lengths.travel, lengths.clear, lengths.screw, lengths.moving, nut',
  run: (design, limits) => {
    const { along } = design;
    const gaps = along.nearGap + along.farGap;
    const room = figureOf(along.room) ?? roomAtMost(along);
    const wanted = along.travel;
    const untold = [...missingOf(along.room), ...(wanted === undefined ? ['lengths.travel'] : [])];
    if (room === undefined || wanted === undefined) return notJudged(...untold);
    const value = shifted(room, -gaps);
    const own = soft({ min: wanted }, { min: wanted - gaps });
    const { pass, fail } = limits.of(own);
    const { min = wanted } = pass;
    const fails = value.most < (fail?.min ?? min);
    if (untold.length > 0 && !fails) return notJudged(...untold);
    const words = `${plain(value.likely, 1)} mm after ${plain(along.nearGap, 0)} mm of room at the motor and ${plain(along.farGap, 0)} mm at the far end; ${plain(min, 0)} mm are wanted`;
    const cure = value.least >= min ? '' : '; a shorter nut or coupling, a longer screw or frame, or less travel';
    return valued(value, `${words}${againstTold(design)}${cure}`, own);
  },
};

/** Lengths that are told shorter than what is there, in words: the longer is judged. */
function againstTold({ along: { jointEnd, nutLength = 0 }, sheet: { lengths = {} } }: AxisDesign): string {
  const { start, moving } = lengths;
  const coupled = start && figureOf(jointEnd)?.likely;
  const inside = start && coupled !== undefined && start.value < coupled - 1e-9;
  const short = moving && moving.value < nutLength - 1e-9;
  return [
    inside && `; lengths.start, ${plain(start.value, 2)} mm, lies inside the coupling: it ends at ${plain(coupled, 2)}`,
    short &&
      `; lengths.moving, ${plain(moving.value, 2)} mm, is less than the nut alone: it is ${plain(nutLength, 2)} long`,
  ]
    .filter(Boolean)
    .join('');
}

/** Where nobody tells what moves, it is at least as long as its nut. */
function roomAtMost({ far, near, nutLength }: Along): Measured | undefined {
  return nutLength === undefined ? undefined : figureOf(left(far, near, known(nutLength, '')));
}

/**
 * A screw must reach through its holder, and the nut must stay on it.
 *
 *     needed = far face of the holder + pitch − beginning of the screw
 *     needed, no holder = first place of the nut + length that moves + travel + 10 mm − beginning of the screw
 */
const screwLength: AxisCheck = {
  ...about,
  id: 'axis-screw-length',
  title: 'Length of the screw',
  moves: 'lengths.screw, lengths.clear, lengths.far_face, lengths.moving, lengths.travel',
  run: (design) => {
    const { along } = design;
    const { stand, screw } = along;
    const reach = reachOf(design);
    const needed = figureOf(reach);
    if (needed === undefined) return notJudged(...missingOf(reach));
    const held = hasHolder(design);
    const bare = held ? stand.least : GUARD;
    if (screw === undefined) {
      const order = Math.ceil(needed.most - 1e-9);
      const last = Math.max(order, Math.floor(needed.most + stand.most - stand.least));
      const words = `order or cut ${order}${last > order ? ` to ${last}` : ''} mm${held ? ', which ends a pitch or two beyond the holder' : ''}; measure again before it is cut`;
      return told('pass', words, order);
    }
    const over = screw.likely - needed.likely;
    const [short, enough] = held
      ? ['a pitch beyond the holder', 'the holder']
      : [`${GUARD} mm beyond the nut`, 'the nut at the end of its travel'];
    const words =
      over < 0
        ? `${plain(screw.likely, 1)} mm, ${plain(-over, 1)} mm less than what reaches ${short}`
        : `${plain(screw.likely, 1)} mm reach ${plain(over + bare, 1)} mm beyond ${enough}`;
    // what it must reach carries an uncertainty too, which is counted with that of the reading
    const value = { ...screw, least: screw.least - (needed.most - needed.likely) };
    const cure = value.least < needed.likely ? '; a longer screw, or less travel' : '';
    return valued(value, `${words}${cure}`, soft({ min: needed.likely }, { min: needed.likely - bare }));
  },
};

/** Length from the screw's beginning to a pitch beyond its holder, or to what the nut needs of a free one. */
function reachOf(design: AxisDesign): Known {
  const { along } = design;
  if (hasHolder(design)) return left(plus(along.holderEnd, along.stand.least), along.screwStart);
  const end = total(along.near, along.moving, known(along.travel, 'lengths.travel'));
  return left(plus(end, along.nearGap + GUARD), along.screwStart);
}

function hasHolder({ parts }: AxisDesign): boolean {
  return parts.some(({ facts }) => facts.holder);
}

function plus(length: Known, by: number): Known {
  return 'value' in length ? { value: shifted(length.value, by) } : length;
}

/**
 * A hub that touches the motor's face rubs; one that stands off too far does not hold its shaft.
 *
 *     room = free length of the motor's shaft − its depth in the coupling
 */
const shaftRoom: AxisCheck = {
  ...about,
  id: 'axis-shaft-room',
  title: 'Coupling off the motor plate',
  source: 'common practice',
  limits: SHAFT_ROOM,
  moves: 'motor.shaft.length, coupling, motor plate',
  run: ({ along: { shaftRoom: room }, parts }, { pass: { min = 0 } }) => {
    if (!parts.some(({ facts }) => facts.joint)) return undefined;
    const value = figureOf(room);
    if (!value) return notJudged(...missingOf(room));
    const cure = value.least >= min ? '' : '; a shorter hub, a thinner plate, or a longer shaft';
    return valued(value, `${plain(value.likely, 1)} mm of shaft stay outside the coupling${cure}`);
  },
};

/**
 * A span that somebody tells should be that of the lengths; the longer of both is judged.
 *
 *     ratio = (place of the holder, or of the screw's free end, − end of the coupling) / duty.span
 */
const span: AxisCheck = {
  ...about,
  id: 'axis-span',
  title: 'Free length over the one told',
  unit: '',
  limits: soft({ max: 1.05 }, { max: 1.3 }),
  moves: 'duty.span, lengths',
  trifle: true,
  run: ({ along, sheet }) => {
    const value = figureOf(along.span);
    const given = sheet.duty?.span;
    if (given === undefined || !value) return undefined;
    const cure =
      value.most > 1.05 * given ? '; the longer is judged: leave duty.span out, and it follows from the lengths' : '';
    return valued(
      scaled(value, 1 / given),
      `${plain(value.likely, 0)} mm by the lengths, ${plain(given, 0)} mm told${cure}`,
    );
  },
};

/** Whether all that lies along the screw has room. */
export const LENGTH_CHECKS: readonly AxisCheck[] = [travel, screwLength, shaftRoom, span];
