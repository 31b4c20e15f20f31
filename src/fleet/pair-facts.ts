import { partFacts } from '../axis/facts.js';
import type { PairedScrew } from '../drive/axis-pair.js';
import { driveView } from '../parts/common/drive-view.js';
import type { CouplingDesign } from '../parts/coupling/dimensions.js';
import type { MotorPlateDesign } from '../parts/motor-plate/dimensions.js';
import type { NutDesign } from '../parts/nut/dimensions.js';
import type { DesignBase } from '../parts/part-kind.js';
import type { Measured } from '../units/measured.js';

/** What other parts of a machine must suit; empty where a part says nothing of its neighbours. */
export interface PairFacts {
  /** the screw of a nut, with the nut's clearances */
  readonly nut?: PairedScrew;
  /** shafts that a coupling is bored for, their diameters  [mm] */
  readonly motorShaft?: Measured;
  readonly screwShaft?: Measured;
  /** the screw that any other part is made for */
  readonly screw?: PairedScrew;
  /** how far the motor's shaft goes into what joins it  [mm] */
  readonly motorDepth?: number;
  /** how far the motor's shaft stands out of its plate  [mm] */
  readonly standsOut?: number;
  /** how it carries the screw along its axis */
  readonly carries?: 'holder' | 'collar' | 'sleeve';
}

/** Reads from a design what its neighbours must suit. */
export function pairFacts(design: DesignBase): PairFacts {
  if (isNut(design)) {
    const { diametral, axial } = design.fit;
    const clearances = { diametralClearance: Math.max(0, diametral), axialClearance: Math.max(0, axial) };
    return { nut: { ...driveView(design.screw), ...clearances } };
  }
  return { ...besideNut(design), ...boresOf(design), ...alongShaft(design) };
}

/** What neighbours on one screw must agree on: the screw, and who carries it. */
function besideNut(design: DesignBase): PairFacts {
  const { screw, collar, holder, joint } = partFacts(design);
  const carries = collar
    ? 'collar'
    : holder?.role === 'locating'
      ? 'holder'
      : joint?.kind === 'rigid'
        ? 'sleeve'
        : undefined;
  return { ...(screw ? { screw: driveView(screw) } : {}), ...(carries ? { carries } : {}) };
}

/** Lengths along the motor's shaft: what its plate leaves of it, and what a coupling wants. */
function alongShaft(design: DesignBase): PairFacts {
  const { joint } = partFacts(design);
  if (joint?.motorDepth !== undefined) return { motorDepth: joint.motorDepth };
  if (!isMotorPlate(design) || design.motor.shaftLength === undefined) return {};
  return { standsOut: design.motor.shaftLength - design.finished.thickness };
}

function isMotorPlate(design: DesignBase): design is MotorPlateDesign {
  return design.part === 'motor-plate' && 'motor' in design;
}

function boresOf(design: DesignBase): PairFacts {
  if (!isCoupling(design)) return {};
  const bore = (name: string) => design.hubs.find((hub) => hub.name === name)?.shaft.diameter;
  const [motorShaft, screwShaft] = [bore('motor-hub'), bore('screw-hub')];
  return { ...(motorShaft ? { motorShaft } : {}), ...(screwShaft ? { screwShaft } : {}) };
}

/** What an axis as a whole says: of its nut, and of its coupling. */
export function axisFacts({ parts }: { readonly parts: readonly { readonly design: DesignBase }[] }): PairFacts {
  return Object.assign({}, ...parts.map(({ design }) => pairFacts(design)));
}

function isNut(design: DesignBase): design is NutDesign {
  return (design.part === 'nut' || design.part === 'twin-nut') && 'screw' in design && 'fit' in design;
}

function isCoupling(design: DesignBase): design is CouplingDesign {
  return design.part === 'coupling' && 'hubs' in design;
}
