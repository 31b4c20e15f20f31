import { type PreloadLimit, plasticPreload } from '../../mechanics/bolt/plastic-preload.js';
import { preloadFromTorque } from '../../mechanics/bolt/preload.js';
import { clampHubTorque } from '../../mechanics/shaft/clamp-grip.js';
import { flatTorque } from '../../mechanics/shaft/flat-torque.js';
import { setScrewTorque } from '../../mechanics/shaft/set-screw.js';
import type { Material } from '../../presets/material.js';
import { socketCapScrew } from '../../standards/fasteners/cap-screw.js';
import { clearanceHole } from '../../standards/fasteners/clearance-hole.js';
import { hexNut } from '../../standards/fasteners/nuts.js';
import { setScrewHolding } from '../../standards/fasteners/set-screw-holding.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { seatingTorque } from '../../standards/fasteners/tightening.js';
import { flatsOf, type Shaft } from './bore.js';

/** Friction between a steel shaft and a printed bore. @source common-practice */
export const SHAFT_FRICTION = 0.15;

/** Share of the compressive yield that plastic bears under heads, nuts, flats and keys. @source common-practice */
const BEARING_SHARE = 2 / 3;

/** Share of a freshly set force that is left after creep. @source common-practice */
const KEPT = 0.5;

/** A set screw that holds a changing load wants this factor of safety on its table. @source textbook-design */
const SET_SCREW_SAFETY = 4;

/** What holds a shaft in a hub. */
export interface Grip {
  readonly clamp?: { readonly screw: FastenerSize; readonly count: number };
  readonly setScrew?: FastenerSize;
  readonly friction: number;
  /** of each clamp screw, N·mm */
  readonly tightening?: number;
}

/** Torque that each thing in a grip holds [N·mm], and the force of each clamp screw [N]. */
export interface GripTorque {
  readonly clamp: number;
  readonly flats: number;
  readonly setScrew: number;
  readonly total: number;
  readonly preload: number;
  readonly heldBy: PreloadLimit;
}

/** Pressure that a material bears under heads and on flats [MPa]. */
export function bearingPressure({ compressive }: Pick<Material, 'compressive'>): number {
  return BEARING_SHARE * compressive;
}

/** Force of one clamp screw in this plastic, and what holds it down. */
export function clampPreload(screw: FastenerSize, material: Pick<Material, 'compressive'>, tightening?: number) {
  return plasticPreload({
    pressure: bearingPressure(material),
    headDiameter: socketCapScrew(screw).headDiameter,
    acrossFlats: hexNut(screw).acrossFlats,
    holeDiameter: clearanceHole(screw, 'medium'),
    tightening: preloadFromTorque({
      torque: tightening ?? seatingTorque(screw, 'clamp'),
      diameter: fastenerThread(screw).diameter,
    }),
  });
}

/** Torque that a grip holds on a shaft over an engaged length. */
export function gripOf(
  grip: Grip,
  shaft: Shaft,
  engagement: number,
  material: Pick<Material, 'compressive'>,
): GripTorque {
  const diameter = shaft.diameter.likely;
  const { friction } = grip;
  const screw = grip.clamp && clampPreload(grip.clamp.screw, material, grip.tightening);
  const clamp =
    screw && grip.clamp
      ? clampHubTorque({ screws: grip.clamp.count, preload: screw.force, diameter, friction, kept: KEPT })
      : 0;
  const flats = flatTorqueOf(shaft, Math.min(engagement, shaft.flatLength ?? Infinity), bearingPressure(material));
  const setScrew = grip.setScrew ? setTorque(grip.setScrew, diameter, friction, material) : 0;
  return {
    clamp,
    flats,
    setScrew,
    total: clamp + flats + setScrew,
    preload: screw?.force ?? 0,
    heldBy: screw?.heldBy ?? 'head',
  };
}

/** Torque of flats and keys at a pressure; pressure grows along half of each flat, and is even on a key. */
function flatTorqueOf(shaft: Shaft, length: number, pressure: number): number {
  if (shaft.key) return (pressure * shaft.diameter.likely * length * shaft.key.depth) / 2;
  const { count, depth } = flatsOf(shaft);
  if (count === 0) return 0;
  return count * flatTorque({ diameter: shaft.diameter.likely, flatDepth: depth, length, pressure });
}

/** A set screw by its table, or by what the plastic behind its nut bears: friction at its point and across from it. */
function setTorque(screw: FastenerSize, diameter: number, friction: number, material: Pick<Material, 'compressive'>) {
  const holding = setScrewHolding({ diameter: fastenerThread(screw).diameter }).force;
  const byTable = setScrewTorque({ holdingPower: holding, diameter, safety: SET_SCREW_SAFETY });
  const { force } = clampPreload(screw, material, seatingTorque(screw, 'set'));
  return Math.min(byTable, KEPT * friction * force * diameter);
}
