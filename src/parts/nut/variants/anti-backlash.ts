import { FRICTION } from '../../../mechanics/friction.js';
import { raisingTorque } from '../../../mechanics/power-screw/raising-torque.js';
import type { Assumptions } from '../../../sheet/assumptions.js';
import { fault } from '../../../units/faults.js';
import { plain } from '../../../units/format.js';
import { LEAST_WALL } from '../../common/walls.js';
import { boreReach } from './clamp-place.js';
import type { VariantSheet } from './sheet.js';
import type { AntiBacklash, Variant, VariantBase } from './types.js';

const SPRING_ROOM = 0.4;
const KEY_AIR = 0.3;
/** How far the keys reach into the slots of the follower, mm. */
export const KEY_GRIP = 4;

/** What turns and pushes the pair. */
type Driven = Omit<VariantBase, 'printer'>;

/** Two nuts that a spring keeps apart, keyed to each other. */
export function antiBacklashOf(
  sheet: VariantSheet,
  { finished, screw, duty }: VariantBase,
  notes: Assumptions,
): Variant {
  const given = sheet.spring!;
  const reach = given.inside.value / 2 - SPRING_ROOM;
  const inner = boreReach(finished) + 0.4;
  const { width, outer } = strongestKey({
    inner,
    reach,
    narrowest: Math.max(3, Math.round(screw.major.likely * 5) / 10),
  });
  if (outer - inner < LEAST_WALL)
    throw fault(
      'family.spring.inside',
      `${plain(given.inside.value)} mm`,
      `must be at least ${plain(2 * (Math.hypot(inner + LEAST_WALL, width / 2) + SPRING_ROOM), 1)} mm around the keys`,
    );
  const seat = given.outside.value + 2 * finished.relief;
  if (finished.body.across < seat)
    throw fault(
      'body.diameter',
      `${plain(finished.body.across)} mm`,
      `must be at least ${plain(seat, 1)} mm, the seat of the spring`,
    );
  const working = workingLength(given, { finished, screw, duty }, notes);
  const slotDepth = KEY_GRIP + 2;
  const length = notes.or(
    sheet.follower,
    'family.follower',
    Math.max(10, Math.ceil(slotDepth + 2.5 * finished.thread.pitch)),
    'long enough behind its slots',
  );
  if (length < slotDepth + finished.thread.pitch)
    throw fault(
      'family.follower',
      `${plain(length)} mm`,
      `must be at least ${plain(slotDepth + finished.thread.pitch)} mm, a pitch behind its slots`,
    );
  if (length > finished.length)
    throw fault(
      'family.follower',
      `${plain(length)} mm`,
      `must be at most as long as the main nut, ${plain(finished.length)} mm`,
    );
  return {
    kind: 'anti-backlash',
    spring: {
      inside: given.inside.value,
      outside: given.outside.value,
      free: given.free.value,
      solid: given.solid,
      rate: given.rate,
      working,
    },
    follower: length,
    tongue: { inner, outer, width, height: working + KEY_GRIP, slotDepth, air: KEY_AIR },
  };
}

/** In half millimetres. */
const KEY_STEP = 0.5;

/** The key that bends least between thread and spring, as wide as half the screw or wider, as long as a wall is left along the radius. */
function strongestKey({
  inner,
  reach,
  narrowest,
}: {
  readonly inner: number;
  readonly reach: number;
  readonly narrowest: number;
}) {
  const keyOf = (width: number) => ({ width, outer: Math.sqrt(Math.max(0, reach ** 2 - (width / 2) ** 2)) });
  const strength = ({ width, outer }: ReturnType<typeof keyOf>) => (outer - inner) * width ** 2;
  const wider = Array.from({ length: Math.max(0, Math.floor((2 * reach - narrowest) / KEY_STEP)) }, (_, i) =>
    keyOf(narrowest + i * KEY_STEP),
  );
  return wider
    .filter(({ outer }) => outer - inner >= LEAST_WALL)
    .reduce((best, next) => (strength(next) > strength(best) ? next : best), keyOf(narrowest));
}

/** Length at which the spring keeps the nuts apart with one and a half times what pushes them together. */
function workingLength(given: NonNullable<VariantSheet['spring']>, base: Driven, notes: Assumptions): number {
  const [least, most] = [given.solid + 1, given.free.value - 0.5];
  if (least > most)
    throw fault(
      'family.spring.solid',
      `${plain(given.solid)} mm`,
      `must be at most ${plain(most - 1)} mm, well below the free length`,
    );
  const wanted = given.free.value - (1.5 * (neededSpringForce(base) ?? 10)) / given.rate;
  const usual = Math.round(10 * Math.min(most, Math.max(least, wanted))) / 10;
  const working = notes.or(
    given.working,
    'family.spring.working',
    usual,
    'half as much again as the load and the friction',
  );
  if (working < given.solid + 0.5 || working > given.free.value)
    throw fault(
      'family.spring.working',
      `${plain(working)} mm`,
      `must be ${plain(given.solid + 0.5)} to ${plain(given.free.value)} mm`,
    );
  return working;
}

/** Force with which the spring keeps the two nuts apart, N. */
export function springForceOf({ spring: { rate, free, working } }: Pick<AntiBacklash, 'spring'>): number {
  return rate * (free - working);
}

/**
 * Force that pushes the two nuts together: the load when it reverses, and the friction of the keys under the torque
 * that turns the follower. Undefined where the load is not known.
 */
export function neededSpringForce({ duty, screw, finished }: Driven): number | undefined {
  if (duty.load === undefined) return undefined;
  const torque = raisingTorque({
    axialForce: duty.load,
    lead: finished.lead,
    meanDiameter: screw.pitchDiameter.likely,
    flankAngle: screw.flankAngle,
    friction: FRICTION.nominal,
  });
  const atKeys = torque / (finished.thread.major / 2 + finished.leadIn + 1.5);
  return duty.load + FRICTION.nominal * atKeys;
}
