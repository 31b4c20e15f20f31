import { elastomerModulus, type ShoreScale } from '../../mechanics/coupling/elastomer.js';
import type { Shock } from '../../mechanics/coupling/service-factors.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { resolveMaterial } from '../../presets/resolve-material.js';
import { resolvePrinter } from '../../presets/resolve-printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { Assumptions } from '../../sheet/assumptions.js';
import { resolveScrew } from '../../sheet/resolve-screw.js';
import type { Shaft } from '../common/bore.js';
import { boreNames } from '../common/bore-names.js';
import { clampNames } from '../common/clamp-names.js';
import type { Grip } from '../common/grip.js';
import { printSizes } from '../common/print-sizes.js';
import type { DesignBase, Sizes } from '../part-kind.js';
import { COUPLING_DEFAULTS as D } from './defaults.js';
import { type HubPlan, printedHub } from './hub-plan.js';
import { jawWidth } from './jaws.js';
import { layOut } from './layout.js';
import { motorShaft, screwShaft } from './shafts.js';
import type { CouplingSheet } from './sheet.js';
import { printedSpider, type SpiderPlan } from './spider.js';
import { within } from './within.js';

/** Names of the hubs, as in their files. */
export type HubName = 'motor-hub' | 'screw-hub';

/** One hub, worked out. */
export interface Hub {
  readonly name: HubName;
  readonly shaft: Shaft;
  readonly clearance: number;
  readonly grip: Grip;
  /** length of shaft that the bore holds */
  readonly engagement: number;
  /** how far from the hub's end the shaft goes in */
  readonly depth: number;
  readonly finished: HubPlan;
  readonly printed: HubPlan;
}

/** What both shaft ends stand on. */
export type Pad = 'disc' | 'ball' | 'soft' | 'none';

export type Mounting = 'motor-below' | 'motor-above' | 'horizontal';

/** The insert, worked out. */
export interface Insert {
  readonly finished: SpiderPlan;
  readonly printed: SpiderPlan;
  readonly material: Material;
  readonly printer: Printer;
  readonly hardness: string;
  /** MPa */
  readonly modulus: number;
  /** at each flank, below 0 where the lobes are squeezed */
  readonly flankClearance: number;
  readonly pad: { readonly kind: Pad; readonly diameter: number; readonly thickness: number };
}

/** A jaw coupling, worked out. */
export interface CouplingDesign extends DesignBase {
  readonly part: 'coupling';
  readonly hubs: readonly Hub[];
  readonly insert: Insert;
  /** between the floors of the two hubs */
  readonly gap: number;
  /** between the two shaft ends; undefined where nothing sets it */
  readonly shaftGap?: number;
  readonly mounting: Mounting;
  readonly thrustBearing: boolean;
  readonly motor: { readonly torque: number; readonly axialLimit?: number; readonly temperature: number };
  /** N·mm that the coupling is sized for */
  readonly torque: number;
  /** travel per turn of the driven screw */
  readonly lead?: number;
  readonly misalignment: { readonly angular: number; readonly parallel: number; readonly axial: number };
  readonly duty: {
    readonly load?: number;
    readonly temperature: number;
    readonly speed?: number;
    readonly starts?: number;
    readonly shock: Shock;
  };
  readonly skipped: readonly HubName[];
  /** whether the jaws were given, as a bought half needs */
  readonly jawsKnown: boolean;
  readonly material: Material;
  readonly printer: Printer;
  readonly calipers: number;
}

/**
 * Works a coupling out from its sheet: both hubs, the insert, and the room they leave one another.
 * @throws InputError values that contradict each other or cannot be a coupling
 */
export function designCoupling(sheet: CouplingSheet, presets: PresetTexts): CouplingDesign {
  const assumptions = new Assumptions();
  const calipers = assumptions.or<number>(
    sheet.calipers,
    'calipers',
    D.calipers,
    'half-width of a reading by ordinary calipers',
  );
  const material = resolveMaterial(sheet.material, presets, assumptions);
  const printer = resolvePrinter(sheet.printer, presets, assumptions);
  const screw = sheet.screw ? resolveScrew(sheet.screw, calipers, assumptions) : undefined;
  const shafts = {
    'motor-hub': motorShaft(sheet, calipers, assumptions),
    'screw-hub': screwShaft(sheet, screw, calipers, assumptions),
  };
  const factor = D.torqueFactor;
  assumptions.note('torque factor', factor, 'holding torque × 1.5: stall and reversal');
  const torque = factor * sheet.motor.torque;
  const elastomer = insertMaterial(sheet, printer, presets, assumptions);
  const laid = layOut(sheet, { shafts, material, torque }, assumptions);
  const sizes = printSizes(material, printer);
  const hubs = laid.hubs.map((hub) => ({ ...hub, printed: printedHub(hub.finished, sizes) }));
  const insert = {
    ...laid.insert,
    ...elastomer,
    printed: printedSpider(laid.insert.finished, printSizes(elastomer.material, elastomer.printer)),
  };
  const { duty = {}, motor, misalignment = {} } = sheet;
  return {
    part: 'coupling',
    name: sheet.name,
    hubs,
    insert,
    gap: laid.gap,
    ...(laid.shaftGap === undefined ? {} : { shaftGap: laid.shaftGap }),
    mounting: sheet.mounting,
    thrustBearing: sheet.thrust_bearing === 'yes',
    motor: {
      torque: motor.torque,
      ...(motor.axial_limit === undefined ? {} : { axialLimit: motor.axial_limit }),
      temperature: assumptions.or<number>(
        motor.temperature,
        'motor.temperature',
        D.motorTemperature,
        'stepper cases run at 50 to 80 °C',
      ),
    },
    torque,
    ...(screw ? { lead: screw.lead } : {}),
    misalignment: {
      angular: assumptions.or<number>(
        misalignment.angular,
        'misalignment.angular',
        D.misalignment.angular,
        'shafts set by eye, degrees',
      ),
      parallel: assumptions.or<number>(
        misalignment.parallel,
        'misalignment.parallel',
        D.misalignment.parallel,
        'shafts set with care',
      ),
      axial: assumptions.or<number>(
        misalignment.axial,
        'misalignment.axial',
        D.misalignment.axial,
        'shafts set with care',
      ),
    },
    duty: {
      ...(duty.load === undefined ? {} : { load: duty.load }),
      temperature: assumptions.or<number>(duty.temperature, 'duty.temperature', D.ambient, 'an ordinary room'),
      ...(duty.speed === undefined ? {} : { speed: duty.speed }),
      ...(duty.starts === undefined ? {} : { starts: duty.starts }),
      shock: assumptions.or<Shock>(duty.shock, 'duty.shock', 'none', 'not given'),
    },
    skipped: laid.skipped,
    jawsKnown: sheet.jaws?.count !== undefined && sheet.jaws.height !== undefined && sheet.jaws.width !== undefined,
    material,
    printer,
    calipers,
    dimensions: { finished: named(hubs, insert, 'finished'), printed: named(hubs, insert, 'printed') },
    assumptions: assumptions.list,
    limits: sheet.limits ?? {},
    densities: { [material.name]: material.density, [elastomer.material.name]: elastomer.material.density },
  };
}

function insertMaterial(sheet: CouplingSheet, printer: Printer, presets: PresetTexts, assumptions: Assumptions) {
  const given = sheet.insert ?? {};
  const own = new Assumptions();
  const wanted = given.material ?? {
    preset: assumptions.or<string>(undefined, 'insert.material', D.insertMaterial, 'the usual rubber for inserts'),
  };
  const named = wanted.preset === undefined ? { ...wanted, preset: D.insertMaterial } : wanted;
  const material = within('insert', () => resolveMaterial(named, presets, own));
  const inserted = given.printer ? within('insert', () => resolvePrinter(given.printer, presets, own)) : printer;
  for (const { field, value, why } of own.list) assumptions.note(`insert.${field}`, value, why);
  const hardness = assumptions.or<string>(
    given.hardness,
    'insert.hardness',
    '95 Shore A',
    'printable, and stiff enough',
  );
  const [reading, , scale] = hardness.split(' ');
  const modulus =
    given.hardness === undefined
      ? material.modulus
      : elastomerModulus({ hardness: Number(reading), scale: (scale === 'D' ? 'D' : 'A') satisfies ShoreScale });
  return { material, printer: inserted, hardness, modulus };
}

function named(hubs: readonly Hub[], insert: Insert, kind: 'finished' | 'printed'): Sizes {
  const groups = hubs.map((hub): [string, Sizes] => [hub.name.replace('-', '_'), hubNames(hub[kind])]);
  const { halfWidth, reach, ring, height, hole } = insert[kind];
  return {
    ...Object.fromEntries(groups),
    insert: {
      lobe_width: 2 * halfWidth,
      outside_diameter: 2 * reach,
      ring_diameter: 2 * ring,
      height,
      ...(hole > 0 ? { hole_diameter: hole } : {}),
    },
  };
}

function hubNames({ outside, length, bore, stop, slit, clamp, setScrew, mark, jaws }: HubPlan): Sizes {
  return {
    outside_diameter: outside,
    length,
    ...boreNames(bore),
    ...(mark === undefined ? {} : { shaft_depth: mark }),
    ...(stop ? { bore_stop: stop.from } : {}),
    ...(slit ? { slit_width: slit.width, slit_length: slit.to } : {}),
    ...(clamp ? clampNames(clamp) : {}),
    ...(setScrew ? { set_screw_height: setScrew.height } : {}),
    jaw_height: jaws.height,
    jaw_width: jawWidth(jaws, (jaws.inner + jaws.outer) / 2),
    jaw_inner_diameter: 2 * jaws.inner,
  };
}
