import { isAxis } from '../axis/any.js';
import type { AxisDesign } from '../axis/axis-design.js';
import { type PartFacts, partFacts } from '../axis/facts.js';
import type { PairedScrew } from '../drive/axis-pair.js';
import type { AxialPath, Mounting } from '../parts/common/axial-path.js';
import { driveView } from '../parts/common/drive-view.js';
import type { MotorPlateDesign } from '../parts/motor-plate/dimensions.js';
import type { NutDesign } from '../parts/nut/dimensions.js';
import type { DesignBase } from '../parts/part-kind.js';
import type { CarriedDuty } from '../sheet/sections/duty.js';
import type { Measured } from '../units/measured.js';

/** What a part says of the axis that it is on; only what its sheet tells. */
export interface Says {
  readonly mounting?: Mounting;
  readonly axis?: 'horizontal' | 'vertical';
  /** a bearing and collar at the motor end, or a holder at the far one, carry the screw */
  readonly thrustBearing?: true;
  readonly locatingHolder?: true;
  /** N, along the screw; and with which the work lifts it */
  readonly load?: number;
  readonly upward?: number;
}

/** What other parts of a machine must suit; empty where a part says nothing of its neighbours. */
export interface PairFacts extends Pick<PartFacts, 'joint' | 'holder' | 'collar' | 'plate'> {
  /** the screw of a printed nut, with the nut's clearances */
  readonly nut?: PairedScrew;
  /** holds a bought nut */
  readonly holdsNut?: true;
  /** the screw that any other part is made for */
  readonly screw?: PairedScrew;
  /** the shaft of the motor that a motor plate is made for, and how far it stands out of the plate  [mm] */
  readonly motorShaft?: Measured;
  readonly standsOut?: number;
  readonly says?: Says;
}

/** Reads what its neighbours must suit from the design of a part, or of an axis as a whole: of its nut, of what joins and carries its screw. */
export function pairFacts(worked: DesignBase | AxisDesign): PairFacts {
  if (!isAxis(worked)) return { ...runsOn(worked), ...atPlaces(worked), ...motorOf(worked), ...saysOf(worked) };
  const facts = worked.parts.map(({ design }) => pairFacts(design));
  const says: Says = Object.assign({}, ...facts.map((one) => one.says));
  return { ...Object.assign({}, ...facts), ...(Object.keys(says).length > 0 ? { says } : {}) };
}

/** The screw that it runs on. */
function runsOn(design: DesignBase): PairFacts {
  if (isNut(design)) {
    const { diametral, axial } = design.fit;
    const clearances = { diametralClearance: Math.max(0, diametral), axialClearance: Math.max(0, axial) };
    return { nut: { ...driveView(design.screw), ...clearances } };
  }
  const { screw, nut } = partFacts(design);
  return { ...(screw ? { screw: driveView(screw) } : {}), ...(nut && !nut.printed ? { holdsNut: true } : {}) };
}

/** What it joins, holds or carries. */
function atPlaces(design: DesignBase): PairFacts {
  const { joint, holder, collar, plate } = partFacts(design);
  return {
    ...(joint ? { joint } : {}),
    ...(holder ? { holder } : {}),
    ...(collar ? { collar } : {}),
    ...(plate === undefined ? {} : { plate }),
  };
}

/** The motor of a plate. */
function motorOf(design: DesignBase): PairFacts {
  if (!isMotorPlate(design)) return {};
  const { shaftDiameter, shaftLength } = design.motor;
  return {
    ...(shaftDiameter ? { motorShaft: shaftDiameter } : {}),
    ...(shaftLength === undefined ? {} : { standsOut: shaftLength - design.finished.thickness }),
  };
}

/** What it says of the axis, wherever its design keeps it. */
function saysOf(design: DesignBase): PairFacts {
  const { axial, duty, ...own } = design as Partial<{ axial: AxialPath; duty: CarriedDuty } & AxialPath>;
  const mounting = axial?.mounting ?? own.mounting;
  const path = { ...duty, ...axial };
  const says: Says = {
    ...(isOfMotor(mounting) ? { mounting } : {}),
    ...(duty?.axis ? { axis: duty.axis } : {}),
    ...(axial?.thrustBearing || own.thrustBearing === true ? { thrustBearing: true } : {}),
    ...(axial?.locatingHolder ? { locatingHolder: true } : {}),
    ...(path.load === undefined ? {} : { load: path.load }),
    ...(path.upward === undefined ? {} : { upward: path.upward }),
  };
  return Object.keys(says).length > 0 ? { says } : {};
}

/** A nut's `mounting` says how its flange lies. */
function isOfMotor(mounting: string | undefined): mounting is Mounting {
  return mounting === 'motor-below' || mounting === 'motor-above' || mounting === 'horizontal';
}

function isMotorPlate(design: DesignBase): design is MotorPlateDesign {
  return design.part === 'motor-plate' && 'motor' in design;
}

function isNut(design: DesignBase): design is NutDesign {
  return (design.part === 'nut' || design.part === 'twin-nut') && 'screw' in design && 'fit' in design;
}
