import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { resolveMaterial } from '../../presets/resolve-material.js';
import { resolvePrinter } from '../../presets/resolve-printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { Assumptions } from '../../sheet/assumptions.js';
import { resolveScrew } from '../../sheet/resolve-screw.js';
import type { Shaft } from '../common/bore.js';
import { resolveShaft, roundShaft } from '../common/bore.js';
import { boreNames } from '../common/bore-names.js';
import { clampNames } from '../common/clamp-names.js';
import type { Grip } from '../common/grip.js';
import { printSizes } from '../common/print-sizes.js';
import type { DesignBase } from '../part-kind.js';
import { layOutBush, layOutClamp } from './layout.js';
import { printedSleeve, type SleevePlan } from './plan.js';
import type { SleeveSheet } from './sheet.js';

/** One held end of a clamp sleeve. */
export interface SleeveEnd {
  readonly name: 'motor end' | 'screw end';
  readonly shaft: Shaft;
  readonly clearance: number;
  readonly grip: Grip;
  readonly engagement: number;
}

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
  readonly motorTorque?: number;
  /** N·mm that a clamp sleeve is sized for */
  readonly torque?: number;
  readonly offset?: number;
  /** undefined where no motor is named */
  readonly motorTemperature?: number;
  readonly duty: { readonly load?: number; readonly temperature?: number; readonly speed?: number };
  readonly material: Material;
  readonly printer: Printer;
}

/** Figures that a sleeve starts from where its sheet does not say. @source common-practice */
const D = { calipers: 0.03, motorTemperature: 70, torqueFactor: 1.5 };

/**
 * Works a sleeve out from its sheet.
 * @throws InputError values that contradict each other or cannot be a sleeve
 */
export function designSleeve(sheet: SleeveSheet, presets: PresetTexts): SleeveDesign {
  const assumptions = new Assumptions();
  const calipers = assumptions.or<number>(
    sheet.calipers,
    'calipers',
    D.calipers,
    'half-width of a reading by ordinary calipers',
  );
  const material = resolveMaterial(sheet.material, presets, assumptions);
  const printer = resolvePrinter(sheet.printer, presets, assumptions);
  const shaft = sheet.screw
    ? roundShaft(resolveScrew(sheet.screw, calipers, assumptions).major)
    : resolveShaft(sheet.shaft!, 'shaft', calipers, assumptions);
  const motorTorque = sheet.motor?.torque;
  const torque = sheet.form === 'clamp' ? D.torqueFactor * motorTorque! : undefined;
  const laid =
    sheet.form === 'bush'
      ? layOutBush(sheet, shaft, assumptions)
      : layOutClamp(
          sheet,
          {
            motor: resolveShaft(sheet.motor!.shaft!, 'motor.shaft', calipers, assumptions),
            screw: shaft,
            torque: torque!,
            material,
          },
          assumptions,
        );
  const printed = printedSleeve(laid.plan, printSizes(material, printer));
  const { load, temperature, speed } = sheet.duty ?? {};
  return {
    part: 'sleeve',
    name: sheet.name,
    form: sheet.form,
    finished: laid.plan,
    printed,
    ends: laid.ends,
    shaft,
    ...(sheet.bore === undefined ? {} : { fills: sheet.bore }),
    ...(motorTorque === undefined ? {} : { motorTorque }),
    ...(torque === undefined ? {} : { torque }),
    ...(sheet.offset === undefined ? {} : { offset: sheet.offset }),
    ...(sheet.motor
      ? {
          motorTemperature: assumptions.or<number>(
            sheet.motor.temperature,
            'motor.temperature',
            D.motorTemperature,
            'stepper cases run at 50 to 80 °C',
          ),
        }
      : {}),
    duty: {
      ...(load === undefined ? {} : { load }),
      ...(temperature === undefined ? {} : { temperature }),
      ...(speed === undefined ? {} : { speed }),
    },
    material,
    printer,
    dimensions: { finished: named(laid.plan), printed: named(printed) },
    assumptions: assumptions.list,
    limits: sheet.limits ?? {},
    densities: { [material.name]: material.density },
  };
}

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
