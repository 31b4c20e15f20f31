import { ROOM } from '../../mechanics/strength/plastic.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { Assumptions } from '../../sheet/assumptions.js';
import { resolveScrew, type Screw } from '../../sheet/resolve-screw.js';
import { onceFor } from '../../units/once.js';
import { type AxialPath, carriedWords } from '../common/axial-path.js';
import type { Shaft } from '../common/bore.js';
import { resolveShaft, roundShaft } from '../common/bore.js';
import { boreNames } from '../common/bore-names.js';
import { clampNames } from '../common/clamp-names.js';
import { crestShaft } from '../common/crest-shaft.js';
import { defined } from '../common/defined.js';
import { type GripDemand, gripDemand, noteUntoldShock } from '../common/grip-demand.js';
import type { HubTemperature } from '../common/held.js';
import { besideMotor, motorHeat } from '../common/motor-heat.js';
import { printSizes } from '../common/print-sizes.js';
import { stallForce } from '../common/stall-force.js';
import { turnedEnd } from '../common/turned-end.js';
import { workshopOf } from '../common/workshop.js';
import type { DesignBase } from '../part-kind.js';
import { layOutBush, layOutClamp } from './layout.js';
import { printedSleeve, type SleevePlan } from './plan.js';
import type { SleeveSheet } from './sheet.js';
import type { SleeveEnd } from './sleeve-end.js';

export type { SleeveEnd } from './sleeve-end.js';

/** A sleeve, worked out. */
export interface SleeveDesign extends DesignBase {
  readonly part: 'sleeve';
  readonly form: 'bush' | 'clamp';
  readonly finished: SleevePlan;
  readonly printed: SleevePlan;
  /** lower end first; a bush has none */
  readonly ends: readonly SleeveEnd[];
  /** shaft of a bush */
  readonly shaft: Shaft;
  /** bore that a bush fills */
  readonly fills?: number;
  /** what the grips of a clamp sleeve must hold */
  readonly demand?: GripDemand;
  readonly retighten: boolean;
  readonly reversing: boolean;
  /** what acts along the screw, and what carries it */
  readonly axial: AxialPath;
  /** whether a second collar holds it the other way; undefined where nobody tells */
  readonly isPaired?: boolean;
  /** that the motor's bearing may carry along its shaft [N] */
  readonly axialLimit?: number;
  /** force along the screw when the axis jams; undefined where a shaft is no screw [N] */
  readonly jam?: number;
  readonly offset?: number;
  /** turns a minute */
  readonly speed?: number;
  /** undefined where neither motor nor room is told */
  readonly temperature?: HubTemperature;
  /** beside the coolest motor that is usual, where nobody tells how warm its own gets */
  readonly coolest?: HubTemperature;
  readonly material: Material;
  readonly printer: Printer;
}

/**
 * Works a sleeve out from its sheet.
 * @throws InputError values that contradict each other or cannot be a sleeve
 */
export function designSleeve(sheet: SleeveSheet, presets: PresetTexts): SleeveDesign {
  const assumptions = new Assumptions();
  const { calipers, material, printer } = workshopOf(sheet, presets, assumptions);
  const screw = sheet.screw && resolveScrew(sheet.screw, calipers, assumptions);
  const shaft = drivenShaft(sheet, screw, calipers, assumptions);
  const { motor, duty = {} } = sheet;
  const heat = heatOf(sheet, assumptions);
  const axial = axialOf(sheet, screw ? roundShaft(screw.major) : shaft);
  const clamps = sheet.form === 'clamp';
  const retighten =
    clamps && assumptions.or(sheet.retighten, 'retighten', 'no', 'clamp screws are tightened once') === 'yes';
  const reversing =
    clamps && assumptions.or(duty.reversing, 'duty.reversing', 'yes', 'a screw turns both ways under load') === 'yes';
  if (clamps) noteUntoldShock(duty.shock, assumptions);
  const demand = clamps
    ? gripDemand({
        motor: motor!.torque!,
        screw,
        load: duty.load,
        shock: duty.shock,
        lies: sheet.mounting === 'horizontal',
        hangs: carriedWords(axial) === undefined && (sheet.mounting ?? 'motor-above') === 'motor-above',
      })
    : undefined;
  const laid = demand
    ? layOutClamp(
        sheet,
        {
          motor: resolveShaft(motor!.shaft!, 'motor.shaft', calipers, assumptions),
          screw: shaft,
          demand,
          life: { material, retighten, reversing, temperature: heat?.temperature.at ?? ROOM },
          printer,
        },
        assumptions,
      )
    : layOutBush(sheet, shaft, assumptions);
  const printed = printedSleeve(laid.plan, printSizes(material, printer));
  return {
    part: 'sleeve',
    name: sheet.name,
    form: sheet.form,
    finished: laid.plan,
    printed,
    ends: laid.ends,
    shaft,
    ...(sheet.bore === undefined ? {} : { fills: sheet.bore }),
    ...defined({
      demand,
      offset: sheet.offset,
      speed: duty.speed,
      axialLimit: motor?.axial_limit,
      jam: screw && motor?.torque !== undefined ? stallForce({ duty: { motor }, screw }) : undefined,
    }),
    ...heat,
    retighten,
    reversing,
    axial,
    ...(sheet.pair === undefined ? {} : { isPaired: sheet.pair === 'yes' }),
    material,
    printer,
    dimensions: { finished: named(laid.plan), printed: named(printed) },
    assumptions: assumptions.list,
    limits: sheet.limits ?? {},
    densities: { [material.name]: material.density },
  };
}

/** What acts along the screw. */
function axialOf({ mounting, thrust_bearing, locating_holder, duty = {} }: SleeveSheet, screw: Shaft): AxialPath {
  return {
    thrustBearing: thrust_bearing === 'yes',
    locatingHolder: locating_holder === 'yes',
    screw,
    ...defined({ mounting, load: duty.load, upward: duty.upward, span: duty.span }),
  };
}

/** A screw over its crests or by its turned end, or a shaft of any form. */
function drivenShaft(sheet: SleeveSheet, screw: Screw | undefined, calipers: number, assumptions: Assumptions): Shaft {
  if (!screw) return resolveShaft(sheet.shaft!, 'shaft', calipers, assumptions);
  return sheet.turned_end
    ? turnedEnd(sheet.turned_end, screw, calipers, assumptions)
    : crestShaft(screw, sheet.screw?.major !== undefined);
}

/** How warm a sleeve gets, and the least of it where its motor does not tell. */
interface SleeveHeat {
  readonly temperature: HubTemperature;
  readonly coolest?: HubTemperature;
}

/** As hot as the motor's shaft or the room; at least so warm where the room is not told. A bush may sit on a motor that nobody tells of. */
function heatOf({ motor, duty }: SleeveSheet, assumptions: Assumptions): SleeveHeat | undefined {
  const around = duty?.temperature;
  if (motor === undefined && around === undefined) return undefined;
  const heat = motorHeat(motor?.temperature, assumptions);
  const coolest = motor === undefined ? around : heat.coolest;
  const beside = (shaft: number): HubTemperature => ({
    at: besideMotor(shaft, around),
    known: around !== undefined,
  });
  return {
    temperature: beside(heat.temperature),
    ...(coolest === undefined || heat.coolest === undefined ? {} : { coolest: beside(coolest) }),
  };
}

/** The same sleeve beside the coolest motor that is usual; undefined where its temperature is told. */
export const besideCoolest = onceFor(
  ({ coolest, ...design }: SleeveDesign): SleeveDesign | undefined => coolest && { ...design, temperature: coolest },
);

/** The same sleeve where nothing strikes; undefined where its shocks are told. */
export const neverStruck = onceFor((design: SleeveDesign): SleeveDesign | undefined => {
  const smooth = design.demand?.smooth;
  return smooth && { ...design, demand: smooth };
});

function named({ outside, length, slit, bores: [lower, upper], clamps }: SleevePlan) {
  return {
    outside_diameter: outside,
    length,
    slit_width: slit,
    ...boreNames(lower.bore),
    ...(upper ? { bore_depth: lower.depth, ...boreNames(upper.bore, 'upper_'), upper_bore_depth: upper.depth } : {}),
    ...(clamps[0] ? clampNames(clamps[0]) : {}),
    ...(clamps[1] ? clampNames(clamps[1], 'upper_', length - clamps[1].heights[0]!) : {}),
  };
}
