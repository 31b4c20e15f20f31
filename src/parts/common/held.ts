import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { Shaft } from './bore.js';
import { borePlay } from './bore-play.js';
import { ringOf } from './clamp-ring.js';
import { type Grip, type GripLife, type GripPlace, type GripTorque, gripOf } from './grip.js';
import type { WeakGrip } from './grip-cure.js';
import type { GripDemand } from './grip-demand.js';
import { greasedGrip } from './hold-figures.js';
import type { HeldBody } from './hub-walls.js';

/** Temperature of a hub; at least so warm where the sheet does not tell what is around it. */
export interface HubTemperature {
  readonly at: number;
  readonly known: boolean;
}

/** One shaft in the body that holds it, finished sizes. */
export interface Held extends HeldBody {
  /** such as `motor hub` */
  readonly name: string;
  readonly shaft: Shaft;
  readonly grip: Grip;
  readonly engagement: number;
  /** the same, were the bore longer than the shaft; where that has an end */
  readonly reach?: number;
  /** diametral, before the clamp closes */
  readonly clearance: number;
  readonly temperature: HubTemperature;
  /** of the sheet that holds it, where that is not called as the body is */
  readonly section?: string;
}

/** The section of the sheet that says how a shaft is held. */
export function sectionOf({ name, section }: Pick<Held, 'name' | 'section'>): string {
  return section ?? name.replace(' ', '_');
}

/** What the checks of held shafts look at. */
export interface HeldView {
  readonly held: readonly Held[];
  readonly demand: GripDemand;
  readonly retighten: boolean;
  readonly reversing: boolean;
  readonly material: Material;
  readonly printer: Printer;
  /** what lessens the play that is closed, where no bore_clearance does */
  readonly closer?: string;
}

/** How one shaft of a view is held. */
export function placeOf(one: Held, view: Pick<HeldView, 'material' | 'printer'>): GripPlace {
  const { shaft, engagement, reach, clamp, slit, outside, bore } = one;
  const play = borePlay(one, view).most;
  const ring = clamp && slit && ringOf({ ...clamp, outside, bore, reach: engagement, slit });
  return { shaft, engagement, play, ...(reach === undefined ? {} : { reach }), ...(ring ? { ring } : {}) };
}

/** The same of a screw that nobody measured, at its thinnest; undefined of any other shaft. */
export function loosePlaceOf(one: Held, view: Pick<HeldView, 'material' | 'printer'>): GripPlace | undefined {
  const { diameter, thinnest } = one.shaft;
  if (thinnest === undefined) return undefined;
  const place = placeOf(one, view);
  return { ...place, play: place.play + diameter.likely - thinnest };
}

/** What one shaft of a view lives through. */
export function lifeOf(
  { temperature }: Pick<Held, 'temperature'>,
  { material, retighten, reversing }: Omit<HeldView, 'held'>,
): GripLife & { readonly material: Material } {
  return { material, retighten, reversing, temperature: temperature.at };
}

/** Torque that one shaft of a view is held with. */
export function gripOfHeld(one: Held, view: HeldView): GripTorque {
  return gripOf(one.grip, placeOf(one, view), lifeOf(one, view));
}

/** One shaft of a view as a grip that is to be bettered. */
export function weakGrip(one: Held, view: HeldView): WeakGrip {
  const { grip, bore, outside, slit } = one;
  return {
    section: sectionOf(one),
    grip,
    bore,
    outside,
    ...(slit ? { slit } : {}),
    place: placeOf(one, view),
    life: lifeOf(one, view),
  };
}

/** The same shafts with grease on those of one section of which nobody tells; undefined where the sheet does, or has none there. */
export function greasedIn<One extends Pick<Held, 'name' | 'section' | 'grip'>>(
  held: readonly One[],
  section: string,
): readonly One[] | undefined {
  const greasy = held.map((one) => {
    const grip = sectionOf(one) === section ? greasedGrip(one.grip) : undefined;
    return grip ? { ...one, grip } : one;
  });
  return greasy.some((one, i) => one !== held[i]) ? greasy : undefined;
}
