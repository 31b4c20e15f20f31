import { pressStrain } from '../../mechanics/shaft/press-fit.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { Assumptions } from '../../sheet/assumptions.js';
import { measured } from '../../sheet/measured-field.js';
import { resolveScrew, type Screw } from '../../sheet/resolve-screw.js';
import type { DutySheet } from '../../sheet/sections/duty.js';
import { outsideShort } from '../../standards/bearings/deep-groove.js';
import { CALIPERS, type Measured, shifted } from '../../units/measured.js';
import type { Shaft } from '../common/bore.js';
import { crestShaft } from '../common/crest-shaft.js';
import { defined } from '../common/defined.js';
import { type HolePattern, ownPattern } from '../common/hole-pattern.js';
import { printSizes } from '../common/print-sizes.js';
import { holeResidual } from '../common/residual.js';
import { requireTurnedDown } from '../common/turned-end.js';
import { workshopOf } from '../common/workshop.js';
import type { DesignBase } from '../part-kind.js';
import { type Bearing, resolveBearing } from './bearing.js';
import { type HeldBy, layOut } from './layout.js';
import { type HolderPlan, printedHolder, seatDiameter } from './plan.js';
import type { EndHolderSheet } from './sheet.js';
import { namedSizes } from './size-names.js';

/** An end holder, worked out. */
export interface EndHolderDesign
  extends DesignBase,
    Pick<EndHolderSheet, 'role' | 'mounting' | 'coupling' | 'nut' | 'runout' | 'nut_gap' | 'end_room'> {
  readonly part: 'end-holder';
  readonly finished: HolderPlan;
  readonly printed: HolderPlan;
  readonly screw: Screw;
  /** what is held: the screw over its crests, or its turned end */
  readonly held: Shaft;
  readonly bearing?: Bearing;
  readonly heldBy?: HeldBy;
  /** bearing over pocket as it is expected, or as it was measured [mm] */
  readonly interference?: Measured;
  readonly pattern: HolePattern;
  readonly frame?: number;
  readonly thrustBearing: boolean;
  /** nobody tells whether there is one: none is counted */
  readonly bearingUntold?: true;
  readonly duty: DutySheet;
  readonly material: Material;
  readonly printer: Printer;
}

/** Interference of a press fit by the bearing's outside, on the diameter, mm. @source common-practice */
const PRESSES: readonly (readonly [outside: number, interference: number])[] = [
  [13, 0.035],
  [26, 0.055],
  [Infinity, 0.085],
];

/** The same of a bearing that is pushed in by hand and held by a plate: the pocket is a little wider. @source common-practice */
const HAND = -0.03;

/**
 * Works an end holder out from its sheet.
 * @throws InputError values that contradict each other or cannot be a holder
 */
export function designEndHolder(sheet: EndHolderSheet, presets: PresetTexts): EndHolderDesign {
  const assumptions = new Assumptions();
  const { calipers, material, printer } = workshopOf(sheet, presets, assumptions);
  const screw = resolveScrew(sheet.screw, calipers, assumptions);
  const held: Shaft = sheet.turned_end
    ? { form: 'round', diameter: measured(sheet.turned_end, calipers) }
    : crestShaft(screw, sheet.screw.major !== undefined);
  if (sheet.turned_end) requireTurnedDown(held.diameter, screw, 'turned_end');
  const bearing = sheet.bearing && resolveBearing(sheet.bearing);
  const heldBy = bearing && assumptions.or(sheet.held_by, 'held_by', 'press', 'the pocket itself');
  const pattern = ownPattern(sheet.holes, 'holes', assumptions);
  const wanted = bearing && wantedInterference(sheet, { bearing, heldBy: heldBy!, material }, assumptions);
  const finished = layOut(
    sheet,
    { held, pattern, material, ...defined({ bearing, heldBy, interference: wanted }) },
    assumptions,
  );
  const printed = printedHolder(finished, printSizes(material, printer));
  return {
    part: 'end-holder',
    name: sheet.name,
    role: sheet.role,
    finished,
    printed,
    screw,
    held,
    ...defined({
      bearing,
      heldBy,
      interference: bearing && interferenceOf(sheet, { bearing, finished, material, printer }),
    }),
    pattern,
    ...defined({
      frame: sheet.frame?.thickness,
      mounting: sheet.mounting,
      coupling: sheet.coupling,
      nut: sheet.nut,
      runout: sheet.runout,
      nut_gap: sheet.nut_gap,
      end_room: sheet.end_room,
    }),
    thrustBearing: sheet.thrust_bearing === 'yes',
    ...(sheet.thrust_bearing === undefined ? { bearingUntold: true as const } : {}),
    duty: dutyOf(sheet),
    material,
    printer,
    dimensions: { finished: namedSizes(finished), printed: namedSizes(printed) },
    assumptions: assumptions.list,
    limits: sheet.limits ?? {},
    densities: { [material.name]: material.density },
  };
}

/** Where the motor is says how the axis runs. */
function dutyOf({ duty = {}, mounting }: EndHolderSheet): DutySheet {
  if (duty.axis !== undefined || mounting === undefined) return duty;
  return { ...duty, axis: mounting === 'horizontal' ? 'horizontal' : 'vertical' };
}

/** A press fit takes what its size usually does, and no more than its plastic bears; under plate or lip it is pushed in by hand. */
function wantedInterference(
  { fit }: EndHolderSheet,
  { bearing, heldBy, material }: { bearing: Bearing; heldBy: HeldBy; material: Material },
  assumptions: Assumptions,
): number {
  const [, usual] = PRESSES.find(([outside]) => bearing.outside <= outside)!;
  const borne = 0.75 * pressStrain(material.creep.strain) * bearing.outside;
  return heldBy !== 'press'
    ? assumptions.or<number>(fit?.interference, 'fit.interference', HAND, `pushed in by hand; the ${heldBy} holds it`)
    : assumptions.or<number>(
        fit?.interference,
        'fit.interference',
        Math.round(100 * Math.min(usual, borne)) / 100,
        'usual for its size, and within what the plastic takes for good',
      );
}

/** Bearing less pocket: measured, or what the printer is likely to make of the pocket. */
function interferenceOf(
  { fit }: EndHolderSheet,
  { bearing, finished, ...part }: { bearing: Bearing; finished: HolderPlan; material: Material; printer: Printer },
): Measured {
  const diameter = seatDiameter(finished, bearing);
  const pocket = fit?.pocket ? measured(fit.pocket, CALIPERS) : shifted(holeResidual(part, diameter), diameter);
  return {
    least: bearing.outside - outsideShort(bearing.outside) - pocket.most,
    likely: bearing.outside - pocket.likely,
    most: bearing.outside - pocket.least,
  };
}
