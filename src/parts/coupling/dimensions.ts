import { elastomerModulus, type ShoreScale } from '../../mechanics/coupling/elastomer.js';
import { ROUGH_DRIVE, type Shock, SMOOTH_DRIVE } from '../../mechanics/coupling/service-factors.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { resolveMaterial } from '../../presets/resolve-material.js';
import { resolvePrinter } from '../../presets/resolve-printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { Assumptions } from '../../sheet/assumptions.js';
import { resolveScrew, type Screw } from '../../sheet/resolve-screw.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { onceFor } from '../../units/once.js';
import type { AxialPath, Mounting } from '../common/axial-path.js';
import { roundShaft } from '../common/bore.js';
import { boreNames } from '../common/bore-names.js';
import { clampNames } from '../common/clamp-names.js';
import { defined } from '../common/defined.js';
import { type GripDemand, gripDemand, noteUntoldShock } from '../common/grip-demand.js';
import { type MotorHeat, motorHeat } from '../common/motor-heat.js';
import { printSizes } from '../common/print-sizes.js';
import { stallForce } from '../common/stall-force.js';
import { workshopOf } from '../common/workshop.js';
import type { DesignBase, Sizes } from '../part-kind.js';
import { COUPLING_DEFAULTS as D } from './defaults.js';
import { type HubPlan, printedHub } from './hub-plan.js';
import { printedInsert } from './insert.js';
import { type JawPlan, jawWidth } from './jaws.js';
import { layOut } from './layout.js';
import { peakTorque } from './peak-torque.js';
import type { Hub, HubName, Insert } from './pieces.js';
import { motorShaft, screwShaft } from './shafts.js';
import type { CouplingSheet } from './sheet.js';
import { hubTemperatures } from './temperatures.js';
import { within } from './within.js';

export type { Hub, HubName, Insert, Pad } from './pieces.js';

/** A jaw coupling, worked out. */
export interface CouplingDesign extends DesignBase {
  readonly part: 'coupling';
  /** those that are made */
  readonly hubs: readonly Hub[];
  /** of both hubs, made or bought; finished sizes */
  readonly jaws: JawPlan;
  readonly insert: Insert;
  /** between the floors of the two hubs */
  readonly gap: number;
  /** between the two shaft ends; undefined where nothing sets it */
  readonly shaftGap?: number;
  /** what acts along the screw, and what carries it */
  readonly axial: AxialPath & { readonly mounting: Mounting };
  /** whether a second collar holds the screw the other way; undefined where nobody tells */
  readonly isPaired?: boolean;
  readonly motor: {
    readonly torque: number;
    readonly axialLimit?: number;
    /** force along the screw when the axis jams; undefined where a shaft is no screw [N] */
    readonly jam?: number;
  } & MotorHeat;
  /** what its grips must hold */
  readonly demand: GripDemand;
  readonly retighten: boolean;
  readonly reversing: boolean;
  readonly screw?: Screw;
  /** travel per turn of the driven screw */
  readonly lead?: number;
  readonly misalignment: { readonly angular: number; readonly parallel: number; readonly axial: number };
  readonly duty: {
    readonly load?: number;
    /** undefined where nobody tells */
    readonly temperature?: number;
    readonly speed?: number;
    /** undefined where nobody tells */
    readonly starts?: number;
    readonly shock?: Shock;
  };
  readonly skipped: readonly HubName[];
  /** what of the jaws of a bought half was not measured, as fields of the sheet */
  readonly unmeasured: readonly string[];
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
  // what only hubs hang on is no assumption of an insert alone
  const ofHubs = madeHubs(sheet) ? assumptions : new Assumptions();
  const { calipers, material, printer } = workshopOf(sheet, presets, assumptions, ofHubs);
  const screw = sheet.screw ? resolveScrew(sheet.screw, calipers, assumptions) : undefined;
  const shafts = {
    'motor-hub': motorShaft(sheet, calipers, assumptions),
    'screw-hub': screwShaft(sheet, screw, calipers, assumptions),
  };
  const { duty = {}, motor, misalignment: given = {} } = sheet;
  noteUntold(duty, assumptions);
  const demand = gripDemand({
    motor: motor.torque,
    screw,
    load: duty.load,
    shock: duty.shock,
    lies: sheet.mounting === 'horizontal',
  });
  const heat = motorHeat(motor.temperature, assumptions);
  const temperatures = hubTemperatures(heat.temperature, duty.temperature);
  const retighten = ofHubs.or(sheet.retighten, 'retighten', 'no', 'clamp screws are tightened once') === 'yes';
  const turns = ofHubs.or(duty.reversing, 'duty.reversing', 'yes', 'a screw turns both ways under load');
  const reversing = turns === 'yes';
  const misalignment = misalignmentOf(given, assumptions);
  const elastomer = insertMaterial(sheet, printer, presets, assumptions);
  const laid = layOut(
    sheet,
    {
      shafts,
      demand,
      life: { material, retighten, reversing },
      printer,
      temperatures,
      modulus: elastomer.modulus,
      angle: misalignment.angular,
      peak: peakTorque({ torque: motor.torque, starts: duty.starts, shock: duty.shock }),
    },
    assumptions,
  );
  const sizes = printSizes(material, printer);
  const hubs = laid.hubs.map((hub) => ({
    ...hub,
    temperature: temperatures[hub.name],
    printed: printedHub(hub.finished, sizes),
  }));
  const insert = {
    ...laid.insert,
    ...elastomer,
    printed: printedInsert(laid.insert.finished, printSizes(elastomer.material, elastomer.printer)),
  };
  return {
    part: 'coupling',
    name: sheet.name,
    hubs,
    jaws: laid.jaws,
    insert,
    gap: laid.gap,
    ...(laid.shaftGap === undefined ? {} : { shaftGap: laid.shaftGap }),
    axial: {
      mounting: sheet.mounting,
      thrustBearing: sheet.thrust_bearing === 'yes',
      locatingHolder: sheet.locating_holder === 'yes',
      ...defined({
        screw: screw ? roundShaft(screw.major) : shafts['screw-hub'],
        load: duty.load,
        upward: duty.upward,
        span: duty.span,
      }),
    },
    ...(sheet.pair === undefined ? {} : { isPaired: sheet.pair === 'yes' }),
    motor: {
      torque: motor.torque,
      ...defined({ axialLimit: motor.axial_limit, jam: screw && stallForce({ duty: { motor }, screw }) }),
      ...heat,
    },
    demand,
    retighten,
    reversing,
    ...(screw ? { screw, lead: screw.lead } : {}),
    misalignment,
    duty: defined({
      load: duty.load,
      temperature: duty.temperature,
      speed: duty.speed,
      starts: duty.starts,
      shock: duty.shock,
    }),
    skipped: laid.skipped,
    unmeasured: laid.skipped.length > 0 ? unmeasuredJaws(sheet) : [],
    material,
    printer,
    calipers,
    dimensions: { finished: named(hubs, insert, 'finished'), printed: named(hubs, insert, 'printed') },
    assumptions: assumptions.list,
    limits: sheet.limits ?? {},
    densities: {
      ...(hubs.length > 0 ? { [material.name]: material.density } : {}),
      [elastomer.material.name]: elastomer.material.density,
    },
  };
}

/** The same coupling beside the coolest motor that is usual; undefined where its temperature is told. */
export const besideCoolest = onceFor((design: CouplingDesign): CouplingDesign | undefined => {
  const { coolest, ...motor } = design.motor;
  if (coolest === undefined) return undefined;
  const temperatures = hubTemperatures(coolest, design.duty.temperature);
  return {
    ...design,
    motor: { ...motor, temperature: coolest },
    hubs: design.hubs.map((hub) => ({ ...hub, temperature: temperatures[hub.name] })),
  };
});

/** The same coupling where it seldom starts; undefined where its starts are told. */
export const seldomStarted = onceFor((design: CouplingDesign): CouplingDesign | undefined =>
  design.duty.starts === undefined ? { ...design, duty: { ...design.duty, starts: SMOOTH_DRIVE.starts } } : undefined,
);

/** The same coupling where nothing strikes; undefined where its shocks are told. */
export const neverStruck = onceFor((design: CouplingDesign): CouplingDesign | undefined => {
  const { smooth } = design.demand;
  return smooth && { ...design, demand: smooth, duty: { ...design.duty, shock: SMOOTH_DRIVE.shock } };
});

/** What jaws and outline are laid out for where the sheet says nothing. */
function noteUntold({ starts, shock }: NonNullable<CouplingSheet['duty']>, assumptions: Assumptions): void {
  if (starts === undefined) assumptions.note('duty.starts', ROUGH_DRIVE.starts, 'not told: as often as asks most');
  noteUntoldShock(shock, assumptions);
}

/** Whether a hub is made: bores want a shaft. */
function madeHubs({ motor, screw, shaft }: CouplingSheet): boolean {
  return [motor.shaft, screw, shaft].some((one) => one !== undefined);
}

/** What an insert must be told of the jaws that it goes into. */
function unmeasuredJaws({ hubs, jaws = {} }: CouplingSheet): string[] {
  const told = { 'hubs.outside_diameter': hubs?.outside_diameter };
  const wanted = (['count', 'height', 'width', 'inner'] as const).map((key) => [`jaws.${key}`, jaws[key]] as const);
  return [...Object.entries(told), ...wanted].flatMap(([field, value]) => (value === undefined ? [field] : []));
}

function misalignmentOf(given: NonNullable<CouplingSheet['misalignment']>, assumptions: Assumptions) {
  const { angular, parallel, axial } = D.misalignment;
  const usual = (key: keyof typeof given, value: number, why: string) =>
    assumptions.or<number>(given[key], `misalignment.${key}`, value, why);
  return {
    angular: usual('angular', angular, 'shafts set by eye, degrees'),
    parallel: usual('parallel', parallel, 'shafts set with care'),
    axial: usual('axial', axial, 'shafts set with care'),
  };
}

/** Stiffest rubber whose lobes still share what they carry, Shore 85 D [MPa]. */
const STIFFEST_RUBBER = elastomerModulus({ hardness: 85, scale: 'D' });

function insertMaterial(sheet: CouplingSheet, printer: Printer, presets: PresetTexts, assumptions: Assumptions) {
  const given = sheet.insert ?? {};
  const own = new Assumptions();
  const wanted = given.material ?? {
    preset: assumptions.or<string>(undefined, 'insert.material', D.insertMaterial, 'the usual rubber for inserts'),
  };
  const named = wanted.preset === undefined ? { ...wanted, preset: D.insertMaterial } : wanted;
  const material = within('insert', () => resolveMaterial(named, presets, own));
  if (material.modulus > STIFFEST_RUBBER)
    throw fault(
      'insert.material',
      material.name,
      `is no rubber, at ${plain(material.modulus, 0)} MPa: its lobes do not share the load; take tpu95a, or another up to ${plain(STIFFEST_RUBBER, 0)} MPa`,
    );
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
