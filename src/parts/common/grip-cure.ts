import { dryFriction } from '../../mechanics/friction.js';
import type { FastenerSize } from '../../standards/fasteners/sizes.js';
import { plain } from '../../units/format.js';
import type { Bore } from './bore.js';
import { boreReach } from './bore.js';
import { leastClampRadius } from './clamp.js';
import { freeSlit, ringFor } from './clamp-ring.js';
import { type ClampScrews, type Grip, type GripLife, type GripPlace, gripOf } from './grip.js';
import { isGreased } from './hold-figures.js';

const TRIED: readonly (readonly [FastenerSize, number])[] = [
  ['M3', 1],
  ['M3', 2],
  ['M4', 1],
  ['M4', 2],
  ['M5', 1],
  ['M5', 2],
  ['M6', 2],
];

/** A grip that holds too little. */
export interface WeakGrip {
  /** of the sheet, such as `motor_hub` */
  readonly section: string;
  readonly grip: Grip;
  readonly place: GripPlace;
  readonly bore: Bore;
  readonly outside: number;
  readonly slit?: { readonly length: number; readonly web: boolean };
  readonly life: GripLife & { readonly material: { readonly name: string } };
}

/** A change of a grip, and how much it is to do. */
interface Change {
  readonly degreased: boolean;
  readonly retighten: boolean;
  readonly clamp: ClampScrews;
  readonly effort: number;
}

/** What would hold a torque with the least to do, and what it needs; undefined where nothing does. */
export function gripCure(weak: WeakGrip, torque: number): string | undefined {
  const tried = changesOf(weak)
    .map((change) => ({ change, ...holdsWith(weak, change) }))
    .filter(({ holds }) => holds >= torque);
  if (tried.length === 0) return undefined;
  const { change, holds, outside, slit } = tried.reduce((a, b) => (b.change.effort < a.change.effort ? b : a));
  const wider = outside > weak.outside + 1e-9 ? `, with an outside of ${plain(outside)} mm or more` : '';
  const longer = weak.slit && slit > weak.slit.length + 1e-6 ? `, ${plain(slit - weak.slit.length, 1)} mm longer` : '';
  return `${changeWords(weak, change)} would hold ${plain(holds, 0)} N·mm${wider}${longer}`;
}

/** What to do where no clamp of this plastic holds. */
export function hopelessWords({ section, place: { shaft }, life: { material } }: WeakGrip): string {
  const flat = shaft.form === 'round' ? ', a shaft with a flat or a key' : '';
  const bought = section.endsWith('_hub')
    ? 'metal hubs with the printed insert (leave both shafts out of the sheet, give hubs.outside_diameter and jaws as measured)'
    : 'a metal one';
  return `no clamp of ${material.name} up to two M6 holds it on ${plain(shaft.diameter.likely, 2)} mm: use ${bought}, a thicker shaft${flat}, less heat, or a stronger material`;
}

function changesOf({ grip, life }: WeakGrip): Change[] {
  const { clamp } = grip;
  const sizes = [...(clamp ? [[clamp.screw, clamp.count] as const] : []), ...TRIED];
  const either = (now: boolean) => (now ? [true] : [false, true]);
  const greasy = isGreased(grip);
  return sizes.flatMap(([screw, count], size) =>
    either(life.retighten).flatMap((retighten) =>
      either(clamp?.washers ?? false).flatMap((washers) =>
        (greasy ? [false, true] : [false]).map((degreased) => ({
          clamp: { screw, count, washers },
          retighten,
          degreased,
          effort:
            2 * size +
            (retighten === life.retighten ? 0 : 1) +
            (washers === (clamp?.washers ?? false) ? 0 : 1.5) +
            (degreased ? 0.5 : 0),
        })),
      ),
    ),
  );
}

function holdsWith(weak: WeakGrip, { clamp, retighten, degreased }: Change) {
  const { grip, place, bore, outside: own, life } = weak;
  const { length, web } = weak.slit ?? { length: place.engagement, web: false };
  const outer = Math.max(own / 2, leastClampRadius(boreReach(bore), clamp.screw, clamp.washers));
  const slit = web ? Math.max(length, freeSlit(outer, bore, clamp)) : length;
  const halves = place.ring?.halves ? { halves: true as const } : {};
  const ring = ringFor({ bore, outer, web, ...halves, length: slit, reach: place.reach }, clamp);
  const friction = degreased ? dryFriction(life.material) : grip.friction;
  const held = gripOf({ ...grip, friction, clamp }, { ...place, ring }, { ...life, retighten });
  return { holds: held.holds, outside: 2 * outer, slit };
}

function changeWords({ section, grip, life }: WeakGrip, { clamp, retighten, degreased }: Change): string {
  const now = grip.clamp;
  const same = now?.screw === clamp.screw && now.count === clamp.count;
  const washers = clamp.washers && !now?.washers;
  const parts = [
    ...(same ? [] : [`${clamp.count === 1 ? 'one' : 'two'} ${clamp.screw} clamp screw${clamp.count === 1 ? '' : 's'}`]),
    ...(washers ? ['washers under head and nut'] : []),
    ...(same && !washers
      ? []
      : [
          `(${section}.clamp: {screw: ${clamp.screw}, count: ${clamp.count}, washers: ${clamp.washers ? 'yes' : 'no'}})`,
        ]),
    ...(retighten && !life.retighten ? ['one retightening (retighten: yes)'] : []),
    ...(degreased ? [`a screw free of grease (${section}.degreased: yes)`] : []),
  ];
  return parts.join(' and ').replaceAll(' and (', ' (') || `a longer hub (${section}.length)`;
}
