import { ROOM } from '../../mechanics/strength/plastic.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { Assumptions } from '../../sheet/assumptions.js';
import { resolveScrew, type Screw } from '../../sheet/resolve-screw.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { pullAsked } from '../common/axial-grip.js';
import type { AxialPath } from '../common/axial-path.js';
import { resolveShaft, roundShaft, type Shaft } from '../common/bore.js';
import { boreNames } from '../common/bore-names.js';
import { clampNames } from '../common/clamp-names.js';
import { crestShaft } from '../common/crest-shaft.js';
import { defined } from '../common/defined.js';
import type { Fit } from '../common/fit-classes.js';
import type { HubTemperature } from '../common/held.js';
import { stallForce } from '../common/stall-force.js';
import { turnedEnd } from '../common/turned-end.js';
import { workshopOf } from '../common/workshop.js';
import type { DesignBase } from '../part-kind.js';
import { type LaidCollar, layOutCollar } from './layout.js';
import { type CollarPlan, printedCollar } from './plan.js';
import { bearingOf, type CollarBearing } from './seat.js';
import type { CollarSheet } from './sheet.js';

/** A collar, worked out. */
export interface CollarDesign extends DesignBase {
  readonly part: 'collar';
  readonly finished: CollarPlan;
  readonly printed: CollarPlan;
  readonly shaft: Shaft;
  readonly screw?: Screw;
  readonly grip: LaidCollar['grip'];
  /** what the clamp closes on the diameter, of a bore or of a thread */
  readonly clearance: number;
  readonly fit?: Fit;
  readonly bearing?: CollarBearing;
  /** a bought metal collar behind it carries what pulls */
  readonly isBacked: boolean;
  /** whether a second one holds the screw the other way; undefined where nobody tells */
  readonly isPaired?: boolean;
  readonly axial: AxialPath;
  /** that the stalled motor pushes with along the screw [N] */
  readonly jam?: number;
  readonly retighten: boolean;
  readonly temperature: HubTemperature;
  readonly material: Material;
  readonly printer: Printer;
}

/**
 * Works a collar out from its sheet.
 * @throws InputError values that contradict each other or cannot be a collar
 */
export function designCollar(sheet: CollarSheet, presets: PresetTexts): CollarDesign {
  const assumptions = new Assumptions();
  const { calipers, material, printer } = workshopOf(sheet, presets, assumptions);
  const screw = sheet.screw && resolveScrew(sheet.screw, calipers, assumptions);
  const kind = assumptions.or<'plain' | 'thread'>(sheet.bore, 'bore', 'plain', 'holds by friction');
  const shaft = heldShaft({ ...sheet, bore: kind }, screw, calipers, assumptions);
  const { duty = {}, motor } = sheet;
  const retighten = assumptions.or(sheet.retighten, 'retighten', 'no', 'clamp screws are tightened once') === 'yes';
  const temperature: HubTemperature = { at: duty.temperature ?? ROOM, known: duty.temperature !== undefined };
  const axial: AxialPath = {
    thrustBearing: false,
    locatingHolder: false,
    screw: screw ? roundShaft(screw.major) : shaft,
    ...defined({ mounting: sheet.mounting, load: duty.load, upward: duty.upward, span: duty.span }),
  };
  const bearing = bearingOf(sheet, shaft);
  requireReach(sheet, bearing);
  const life = { material, retighten, reversing: true, temperature: temperature.at };
  const task = { shaft, screw, bearing, pull: pullAsked(axial).needed, life, printer };
  const laid = layOutCollar({ ...sheet, bore: kind }, task, assumptions);
  const printed = printedCollar(laid.plan, { material, printer });
  const jam = screw && motor?.torque !== undefined ? stallForce({ duty: { motor }, screw }) : undefined;
  return {
    part: 'collar',
    name: sheet.name,
    finished: laid.plan,
    printed,
    shaft: laid.shaft,
    grip: laid.grip,
    clearance: laid.clearance,
    ...defined({ screw, fit: laid.fit, bearing, jam }),
    isBacked: sheet.backed_by === 'metal-collar',
    ...(sheet.pair === undefined ? {} : { isPaired: sheet.pair === 'yes' }),
    axial,
    retighten,
    temperature,
    material,
    printer,
    dimensions: { finished: named(laid.plan), printed: named(printed) },
    assumptions: assumptions.list,
    limits: sheet.limits ?? {},
    densities: { [material.name]: material.density },
  };
}

/** A shaft that ends in the bearing does not reach the collar behind it. */
function requireReach({ shaft, turned_end }: CollarSheet, bearing: CollarBearing | undefined): void {
  const length = (shaft ?? turned_end)?.length;
  if (length === undefined || !bearing || length > bearing.height) return;
  throw fault(
    `${shaft ? 'shaft' : 'turned_end'}.length`,
    `${plain(length)} mm`,
    `must be above the ${plain(bearing.height)} mm of the bearing, behind which the collar holds it`,
  );
}

/** A screw by its crests or its thread, its turned end, or a shaft; the keyway of a keyed one is left to its hub. */
function heldShaft(sheet: CollarSheet, screw: Screw | undefined, calipers: number, notes: Assumptions): Shaft {
  if (screw && sheet.bore === 'thread') return roundShaft(screw.major);
  if (screw && !sheet.turned_end) return crestShaft(screw, sheet.screw?.major !== undefined);
  const shaft = sheet.shaft
    ? resolveShaft(sheet.shaft, 'shaft', calipers, notes)
    : turnedEnd(sheet.turned_end!, screw, calipers, notes);
  if (shaft.form !== 'keyed') return shaft;
  const { key: _, ...round } = shaft;
  return { ...round, form: 'round' };
}

function named({ outside, length, slit, bore, thread, clamp, pin, lip }: CollarPlan) {
  return {
    outside_diameter: outside,
    length,
    slit_width: slit,
    ...(thread
      ? {
          thread_major: thread.tooth.major,
          thread_pitch_diameter: thread.tooth.pitchDiameter,
          thread_minor: thread.tooth.minor,
          pitch: thread.tooth.pitch,
          groove_width: thread.tooth.grooveWidth,
          lead: thread.lead,
        }
      : boreNames(bore)),
    ...clampNames(clamp),
    ...(pin ? { pin_hole_diameter: pin.hole, pin_height: pin.height } : {}),
    ...(lip ? { lip_diameter: lip.diameter, lip_depth: lip.depth } : {}),
  };
}
