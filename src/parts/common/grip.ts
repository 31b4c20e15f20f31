import { type PreloadLimit, plasticPreload } from '../../mechanics/bolt/plastic-preload.js';
import { preloadFromTorque } from '../../mechanics/bolt/preload.js';
import { gripTorque, keptForce } from '../../mechanics/shaft/clamp-grip.js';
import { flatTorque } from '../../mechanics/shaft/flat-torque.js';
import { keyTorque } from '../../mechanics/shaft/key-torque.js';
import { closingForce } from '../../mechanics/shaft/ring-closing.js';
import { setScrewTorque } from '../../mechanics/shaft/set-screw.js';
import { allowableStress, pressureWhileTightening } from '../../mechanics/strength/allowable.js';
import { HOURS, type Plastic, ROOM } from '../../mechanics/strength/plastic.js';
import { strainKept, strainKeptRetightened } from '../../mechanics/strength/relaxation.js';
import { stiffnessShare } from '../../mechanics/strength/stiffness.js';
import { socketCapScrew } from '../../standards/fasteners/cap-screw.js';
import { clearanceHole } from '../../standards/fasteners/clearance-hole.js';
import { hexNut } from '../../standards/fasteners/nuts.js';
import { setScrewHolding } from '../../standards/fasteners/set-screw-holding.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { seatingTorque } from '../../standards/fasteners/tightening.js';
import { washer } from '../../standards/fasteners/washer.js';
import { flatsOf, type Shaft } from './bore.js';
import { type ClampRing, pressingForce } from './clamp-ring.js';
import type { ClampScrews } from './clamp-screws.js';

export type { ClampScrews } from './clamp-screws.js';

/** A set screw that holds a changing load wants this factor of safety on its table. @source textbook-design */
const SET_SCREW_SAFETY = 4;

/** Hours after which clamp screws are tightened again: the first hot day. */
const FIRST_DAY = 24;

/** A flat that is hammered both ways bears half of what it bears one way. @source common-practice */
const BOTH_WAYS = 0.5;

/** What holds a shaft in a hub. */
export interface Grip {
  readonly clamp?: ClampScrews;
  readonly setScrew?: FastenerSize;
  readonly friction: number;
  /** nobody tells whether grease is on the shaft: none is counted */
  readonly greaseUntold?: true;
  /** of each clamp screw, N·mm */
  readonly tightening?: number;
}

/** A shaft where it is held. */
export interface GripPlace {
  readonly shaft: Shaft;
  readonly engagement: number;
  /** the same, were the bore longer than the shaft; where that has an end */
  readonly reach?: number;
  /** of the bore on the shaft before the clamp closes, on the diameter, at its worst [mm] */
  readonly play: number;
  readonly ring?: ClampRing;
}

/** What a grip lives through. */
export interface GripLife {
  readonly material: Plastic;
  /** of the hub [°C] */
  readonly temperature: number;
  /** whether the clamp screws are tightened again, cold, after the first hot day */
  readonly retighten: boolean;
  /** whether it turns both ways under load */
  readonly reversing: boolean;
}

/** Torque of a clamp over its life [N·mm]. */
export interface ClampLife {
  /** after the first day, cold */
  readonly firstDay: number;
  /** at the end of five years at its temperature: when it has cooled down, and hot */
  readonly cold: number;
  readonly hot: number;
  /** the same hot, where the screws were tightened again after the first hot day */
  readonly again: number;
}

/** Torque that each thing in a grip holds [N·mm]; they are never added up: the flat carries once friction has slipped. */
export interface GripTorque {
  readonly clamp?: ClampLife;
  readonly form: number;
  readonly setScrew: number;
  /** what counts at the end of life, hot */
  readonly holds: number;
  readonly by: 'clamp' | 'form' | 'set screw';
  /** of that, what holds without flat or key */
  readonly friction: number;
  /** of each clamp screw, freshly tightened [N] */
  readonly preload: number;
  /** of all clamp screws together, that closes the hub on its shaft [N] */
  readonly closing: number;
}

/** Force of one clamp screw in this plastic, and what holds it down. */
export function clampPreload(
  screws: Pick<ClampScrews, 'screw' | 'washers'>,
  material: Pick<Plastic, 'tensile'>,
  tightening = seatingTorque(screws.screw, 'clamp'),
): { readonly force: number; readonly heldBy: PreloadLimit } {
  const { diameter } = fastenerThread(screws.screw);
  return plasticPreload({
    pressure: pressureWhileTightening(material),
    ...seatsOf(screws),
    tightening: preloadFromTorque({ torque: tightening, diameter }),
  });
}

/** What a clamp screw stands on. */
function seatsOf({ screw, washers }: Pick<ClampScrews, 'screw' | 'washers'>) {
  const wide = washer(screw).outside;
  return {
    headDiameter: washers ? wide : socketCapScrew(screw).headDiameter,
    nut: washers ? { diameter: wide } : { acrossFlats: hexNut(screw).acrossFlats },
    holeDiameter: clearanceHole(screw, 'medium'),
  };
}

/** Pressure under the smaller seat of a clamp screw that is tightened with a torque [MPa]. */
export function seatPressure(screws: Pick<ClampScrews, 'screw' | 'washers'>, tightening: number): number {
  const { diameter } = fastenerThread(screws.screw);
  const area = plasticPreload({ pressure: 1, ...seatsOf(screws), tightening: Number.MAX_VALUE }).force;
  return preloadFromTorque({ torque: tightening, diameter }) / area;
}

/** Torque that a grip holds on a shaft. */
export function gripOf(grip: Grip, place: GripPlace, life: GripLife): GripTorque {
  const { clamp: screws, friction, tightening } = grip;
  const preload = screws && clampPreload(screws, life.material, tightening);
  const closing = place.ring ? closingForceOf(place.ring, place.play, life.material) : 0;
  const clamp =
    preload && place.ring
      ? clampLife({ ...place, ring: place.ring }, { friction, preload: preload.force, closing }, life)
      : undefined;
  const setScrew = grip.setScrew ? setTorque(grip.setScrew, place.shaft, friction, life) : 0;
  const form = formTorque(place, formPressure(life));
  return {
    ...(clamp ? { clamp } : {}),
    form,
    setScrew,
    ...strongest({ clamp: clamp && (life.retighten ? clamp.again : clamp.hot), form, setScrew }, life.reversing),
    preload: preload?.force ?? 0,
    closing,
  };
}

/** Under reversal a clamp carries alone, since a flat has play; without one the set screw or half of the flat does. */
function strongest(
  { clamp, form, setScrew }: { clamp: number | undefined; form: number; setScrew: number },
  reversing: boolean,
): Pick<GripTorque, 'holds' | 'by' | 'friction'> {
  const formCounts = reversing && clamp !== undefined ? 0 : form;
  const friction = Math.max(clamp ?? 0, setScrew);
  const most = Math.max(friction, formCounts);
  return { holds: most, friction, by: most === clamp ? 'clamp' : most === setScrew ? 'set screw' : 'form' };
}

function closingForceOf(ring: ClampRing, play: number, { modulus }: Pick<Plastic, 'modulus'>): number {
  return ring.halves ? 0 : closingForce({ ...ring, play: Math.max(0, play), modulus });
}

interface ClampForces {
  readonly friction: number;
  readonly preload: number;
  readonly closing: number;
}

function clampLife(
  { shaft, ring }: GripPlace & { readonly ring: ClampRing },
  { friction, preload, closing }: ClampForces,
  { material, temperature }: GripLife,
): ClampLife {
  const held = (kept: number) => {
    const force = keptForce({ preload: ring.counted * preload, closing, kept });
    return gripTorque({
      normalForce: pressingForce(ring, force),
      diameter: shaft.diameter.likely,
      friction,
    });
  };
  const heat = stiffnessShare(material, temperature);
  const old = { hours: HOURS.years, temperature };
  return {
    firstDay: held(strainKept(material, { hours: FIRST_DAY, temperature: ROOM })),
    cold: held(strainKept(material, old)),
    hot: held(heat * strainKept(material, old)),
    again: held(heat * Math.min(1, strainKeptRetightened(material, { ...old, after: FIRST_DAY }))),
  };
}

/** Pressure that flats and keys bear for years of turning: one way, or hammered both ways [MPa]. */
export function formPressure({ material, temperature, reversing }: Omit<GripLife, 'retighten'>): number {
  const bears = (duration: 'years' | 'repeated') =>
    allowableStress(material, { kind: 'pressure', duration, temperature });
  return reversing ? BOTH_WAYS * bears('repeated') : Math.min(bears('years'), bears('repeated'));
}

/** Torque of flats and keys at a pressure; pressure grows along half of each flat, and is even on a key. */
export function formTorque({ shaft, engagement }: Pick<GripPlace, 'shaft' | 'engagement'>, pressure: number): number {
  const length = Math.min(engagement, shaft.flatLength ?? Infinity);
  if (shaft.key) return keyTorque({ pressure, diameter: shaft.diameter.likely, length, depth: shaft.key.depth });
  const { count, depth } = flatsOf(shaft);
  if (count === 0 || pressure === 0) return 0;
  return count * flatTorque({ diameter: shaft.diameter.likely, flatDepth: depth, length, pressure });
}

/** A set screw by its table, or by what the plastic behind its nut keeps: friction at its point and across from it. */
function setTorque(screw: FastenerSize, shaft: Shaft, friction: number, { material, temperature }: GripLife): number {
  const diameter = shaft.diameter.likely;
  const holding = setScrewHolding({ diameter: fastenerThread(screw).diameter }).force;
  const byTable = setScrewTorque({ holdingPower: holding, diameter, safety: SET_SCREW_SAFETY });
  const { force } = clampPreload({ screw, washers: false }, material, seatingTorque(screw, 'set'));
  const kept = stiffnessShare(material, temperature) * strainKept(material, { hours: HOURS.years, temperature });
  return Math.min(byTable, friction * keptForce({ preload: force, closing: 0, kept }) * diameter);
}
