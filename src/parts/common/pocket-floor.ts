import type { LimitsInForce, Outcome } from '../../judge/check.js';
import { mostShare } from '../../mechanics/bolt/lever-shares.js';
import { ledgeStress } from '../../mechanics/flange/ledge.js';
import { allowableStress } from '../../mechanics/strength/allowable.js';
import { plain } from '../../units/format.js';
import type { Clamped } from './bolting.js';
import { boreOf, type JointHole, type Pocket, seatDiameter, seatName } from './joints.js';
import { judgeCases, judgedTemperature } from './load-cases.js';

/** Holes of a pattern whose heads or nuts sit in pockets, and pull on what is left under them. */
export interface PocketedPattern {
  readonly hole: JointHole;
  readonly centres: readonly (readonly [number, number])[];
  readonly pocket: Pocket;
  /** plastic under the pocket, mm */
  readonly floor: number;
  /** how far what they hold lies on its seat along a unit vector, mm */
  readonly edge?: (along: readonly [number, number]) => number;
  /** from the axis to where the load acts, mm */
  readonly lever?: number;
}

/**
 * Whether the floor of a pocket bears what a head or nut pulls on it: a ledge between the pocket's wall and the middle of what
 * lies on it. That the screw clamps it against something is not counted: a clamp relaxes.
 *
 * @param patterns those whose screws carry the load, each in the direction that pulls on it
 * @returns undefined where nothing sits in a pocket that has a floor
 */
export function judgeFloors(
  patterns: readonly (PocketedPattern & Pick<Clamped, 'carries'>)[],
  clamped: Omit<Clamped, 'carries'>,
  limits: LimitsInForce,
): Outcome | undefined {
  const { material, duty } = clamped;
  const rows = patterns.filter(({ floor }) => floor > 0);
  if (rows.length === 0) return undefined;
  return judgeCases(clamped, limits, {
    borne: ({ force, pull, duration }) => {
      const pulled = rows.filter(({ carries }) => carries === pull);
      if (pulled.length === 0) return undefined;
      const weakest = pulled.reduce((worst, next) => (floorStress(next) > floorStress(worst) ? next : worst));
      const { hole, floor } = weakest;
      return {
        value: force * floorStress(weakest),
        allowed: allowableStress(material, { kind: 'tension', duration, temperature: judgedTemperature(duty) }),
        words: `${plain(floor, 1)} mm under a ${seatName(hole)} in its pocket, whose corner is sharp`,
      };
    },
    cure: 'leave more plastic under the pocket, or set the heads on the face',
  });
}

/** Stress at the corner of the pocket that bears most, for one newton on the pattern; without bound where nothing is left, MPa. */
export function floorStress({ hole, centres, pocket, floor, edge, lever = 0 }: PocketedPattern): number {
  if (floor <= 0) return Infinity;
  const wall = (pocket.kind === 'round' ? pocket.diameter : pocket.acrossFlats) / 2;
  const seat = (seatDiameter(hole) + boreOf(hole)) / 4;
  return ledgeStress({
    force: mostShare(centres, lever, edge),
    arm: Math.max(0, wall - seat),
    root: 2 * Math.PI * wall,
    thickness: floor,
  });
}
