import { gripPull } from '../../mechanics/shaft/clamp-grip.js';
import { plain } from '../../units/format.js';
import { type AxialPath, isUpright, ownWeight } from './axial-path.js';
import { type Grip, type GripTorque, gripOf } from './grip.js';
import { type Held, type HeldView, lifeOf, loosePlaceOf } from './held.js';
import { isGreased } from './hold-figures.js';

/** What a clamp is to hold along its shaft. */
export interface PullAsked {
  /** N */
  readonly needed: number;
  /** what half of it is, in words */
  readonly words: string;
  /** fields of the sheet that are not told */
  readonly missing: readonly string[];
}

/** Friction shared by torque and pull: what the torque in work leaves of the clamp at the end of its life [N]. */
export function pullOf(
  { clamp }: Pick<GripTorque, 'clamp'>,
  { shaft }: Pick<Held, 'shaft'>,
  { retighten, demand: { working } }: Pick<HeldView, 'retighten' | 'demand'>,
): number {
  const torque = clamp ? (retighten ? clamp.again : clamp.hot) : 0;
  if (working >= torque) return 0;
  return gripPull({ torque: Math.sqrt(torque ** 2 - working ** 2), diameter: shaft.diameter.likely });
}

/** The same of a screw that nobody measured, at its thinnest, which closes the clamp further; undefined of any other shaft [N]. */
export function loosePullOf(one: Held, view: HeldView): number | undefined {
  const place = loosePlaceOf(one, view);
  return place && pullOf(gripOf(one.grip, place, lifeOf(one, view)), one, view);
}

/**
 * Pull that is to be left beside the torque in work so that a clamp holds a jam too, its force along the shaft and the motor's torque together.
 *
 *     F = √(F_jam² + (2/d)²·(T_motor² − T_work²))
 */
export function pullForJam(
  jam: number,
  { shaft }: Pick<Held, 'shaft'>,
  { demand: { working, motor } }: Pick<HeldView, 'demand'>,
): number {
  const around = gripPull({
    torque: Math.sqrt(Math.max(0, motor ** 2 - working ** 2)),
    diameter: shaft.diameter.likely,
  });
  return Math.hypot(jam, around);
}

/** What would hold more along a shaft, of what is not there already. */
export function pullCures(grip: Grip, section: string, { retighten }: Pick<HeldView, 'retighten'>): string[] {
  const { clamp } = grip;
  return [
    ...(isGreased(grip) ? [`a screw washed free of grease (${section}.degreased: yes)`] : []),
    ...(clamp?.washers ? [] : ['washers']),
    clamp?.count === 2 ? 'larger screws' : 'more or larger screws',
    ...(retighten ? [] : ['one retightening (retighten: yes)']),
  ];
}

/** Twice what pulls along the screw, and what is not told of it; a screw whose mounting is not told may hang. */
export function pullAsked(axial: AxialPath): PullAsked {
  const { mounting, load = 0, upward = 0 } = axial;
  const own = mounting === 'horizontal' ? { force: 0, words: '' } : ownWeight(axial);
  const missing = [
    ...(mounting === undefined ? ['mounting'] : []),
    ...(axial.load === undefined ? ['duty.load'] : []),
    ...(isUpright(mounting) && axial.upward === undefined ? ['duty.upward'] : []),
  ];
  const weight = own.force + load;
  const parts = [...(load > 0 ? [`${plain(load, 1)} N`] : []), ...(own.force > 0 ? [own.words] : [])].join(' and ');
  return upward > weight
    ? { needed: 2 * upward, words: `${plain(upward, 1)} N with which the work lifts it`, missing }
    : { needed: 2 * weight, words: parts || 'no load', missing };
}
