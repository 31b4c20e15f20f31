import type { AdapterDesign } from '../parts/adapter/dimensions.js';
import type { CollarDesign } from '../parts/collar/dimensions.js';
import type { JointKind } from '../parts/common/locating.js';
import type { CouplingDesign } from '../parts/coupling/dimensions.js';
import { nutGapWanted } from '../parts/end-holder/checks/turn.js';
import type { EndHolderDesign } from '../parts/end-holder/dimensions.js';
import type { MotorPlateDesign } from '../parts/motor-plate/dimensions.js';
import type { NutDesign } from '../parts/nut/nut-design.js';
import type { DesignBase } from '../parts/part-kind.js';
import type { SleeveDesign } from '../parts/sleeve/dimensions.js';
import type { Material } from '../presets/material.js';
import type { Screw } from '../sheet/resolve-screw.js';
import type { ThrustBearing } from '../standards/bearings/thrust-bearing.js';
import type { Measured } from '../units/measured.js';

/** What joins the motor's shaft with the screw, as its neighbours see it. */
export interface Joint {
  readonly kind: JointKind;
  /** shafts that it is bored for */
  readonly motorBore?: Measured;
  readonly screwBore?: Measured;
  /** free length of the motor's shaft */
  readonly shaft?: number;
  /** how far both go in, and what is left between them */
  readonly motorDepth?: number;
  readonly gap?: number;
  readonly screwDepth?: number;
}

/** What a holder at the far end does. */
export interface Holder {
  readonly role: 'free' | 'guiding' | 'locating';
  /** from the frame to its outer face, the plate over its bearing included */
  readonly thickness: number;
  readonly frame?: number;
  /** room that it wants before the nut */
  readonly nutGap: number;
}

/** What the other parts of an axis must know of one part; empty where it says nothing of its neighbours. */
export interface PartFacts {
  /** the screw that it is made for */
  readonly screw?: Screw;
  readonly joint?: Joint;
  readonly holder?: Holder;
  /** carries the screw on a bearing at the motor end */
  readonly collar?: true;
  readonly bearing?: ThrustBearing;
  /** a printed or bought nut: its length over all, and whether it floats */
  readonly nut?: { readonly length?: number; readonly floats: boolean; readonly printed: boolean };
  readonly material?: Material;
  /** thickness of the plate that the motor sits on, through which its shaft stands out [mm] */
  readonly plate?: number;
  /** sits on the motor's shaft or face */
  readonly isAtMotor?: true;
}

/** Kinds of printed nuts. */
export const PRINTED_NUTS: readonly string[] = ['nut', 'twin-nut'];

/** Reads from the design of a part what its neighbours must suit. */
export function partFacts(design: DesignBase): PartFacts {
  return { ...common(design), ...own(design) };
}

const AT_MOTOR = ['coupling', 'sleeve', 'collar', 'motor-plate'];

function common(design: DesignBase): PartFacts {
  return {
    ...('screw' in design && isScrew(design.screw) ? { screw: design.screw } : {}),
    ...('material' in design ? { material: design.material as Material } : {}),
    ...(AT_MOTOR.includes(design.part) ? { isAtMotor: true } : {}),
  };
}

function isScrew(value: unknown): value is Screw {
  return typeof value === 'object' && value !== null && 'lead' in value && 'leastRoot' in value;
}

function own(design: DesignBase): PartFacts {
  if (isOf<CouplingDesign>(design, 'coupling')) return { joint: couplingJoint(design) };
  if (isOf<SleeveDesign>(design, 'sleeve')) return design.form === 'clamp' ? { joint: sleeveJoint(design) } : {};
  if (isOf<CollarDesign>(design, 'collar')) return design.bearing ? { collar: true, bearing: design.bearing } : {};
  if (isNut(design))
    return { nut: { length: design.finished.length, floats: design.float !== undefined, printed: true } };
  if (isOf<AdapterDesign>(design, 'adapter')) return design.nut ? { nut: boughtNut(design, design.nut) } : {};
  if (isOf<MotorPlateDesign>(design, 'motor-plate')) return { plate: design.finished.thickness };
  if (isOf<EndHolderDesign>(design, 'end-holder')) return { holder: holderOf(design) };
  return {};
}

function isOf<Own extends DesignBase & { readonly part: string }>(
  design: DesignBase,
  part: Own['part'],
): design is Own {
  return design.part === part;
}

function isNut(design: DesignBase): design is NutDesign {
  return PRINTED_NUTS.includes(design.part);
}

function couplingJoint({ hubs, insert, shaftGap }: CouplingDesign): Joint {
  const { kind } = insert.pad;
  const hub = (name: string) => hubs.find((one) => one.name === name);
  const [motor, screw] = [hub('motor-hub'), hub('screw-hub')];
  return {
    kind: kind === 'disc' || kind === 'ball' ? 'disc' : 'flexible',
    ...(motor ? { motorBore: motor.shaft.diameter, motorDepth: motor.depth } : {}),
    ...(motor?.shaft.length === undefined ? {} : { shaft: motor.shaft.length }),
    ...(screw ? { screwBore: screw.shaft.diameter, screwDepth: screw.depth } : {}),
    ...(shaftGap === undefined ? {} : { gap: shaftGap }),
  };
}

function sleeveJoint({ finished: { length, bores }, ends }: SleeveDesign): Joint {
  const end = (name: string) => {
    const at = ends.findIndex((one) => one.name === name);
    return { shaft: ends[at]!.shaft, depth: bores[at]!.depth };
  };
  const [motor, screw] = [end('motor end'), end('screw end')];
  return {
    kind: 'rigid',
    motorBore: motor.shaft.diameter,
    motorDepth: motor.depth,
    ...(motor.shaft.length === undefined ? {} : { shaft: motor.shaft.length }),
    screwBore: screw.shaft.diameter,
    screwDepth: screw.depth,
    gap: length - motor.depth - screw.depth,
  };
}

function boughtNut(
  { kind }: AdapterDesign,
  { length }: NonNullable<AdapterDesign['nut']>,
): NonNullable<PartFacts['nut']> {
  return { ...(length === undefined ? {} : { length }), floats: kind === 'floating', printed: false };
}

function holderOf(design: EndHolderDesign): Holder {
  const { role, frame, finished } = design;
  return {
    role,
    thickness: finished.thickness + (finished.cover?.thickness ?? 0),
    ...(frame === undefined ? {} : { frame }),
    nutGap: nutGapWanted(design).least,
  };
}
