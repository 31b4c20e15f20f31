import { GREASED_LEAST } from '../../mechanics/friction.js';
import { nutThread } from '../../mechanics/thread/nut-thread.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { Assumptions } from '../../sheet/assumptions.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { SPRING_PINS } from '../../standards/fasteners/spring-pin.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { type Bore, boreReach, fittedThrough, noteUntoldFlat, roomyBoreFor, type Shaft } from '../common/bore.js';
import { borePlay } from '../common/bore-play.js';
import { chooseClamp, clampWords, leastRadiusFor } from '../common/choose-clamp.js';
import { type Clamp, clampHeights, fitClamp, leastClampRadius, SLIT_WIDTH } from '../common/clamp.js';
import { type Fit, resolveFit } from '../common/fit-classes.js';
import type { ClampScrews, Grip, GripLife } from '../common/grip.js';
import { holdFigures } from '../common/hold-figures.js';
import { LEAST_WALL } from '../common/walls.js';
import type { CollarPlan, CollarThread } from './plan.js';
import { type CollarBearing, lipOf } from './seat.js';
import type { CollarSheet } from './sheet.js';

/** Figures that a collar starts from where its sheet does not say. @source common-practice */
const D = {
  /** mm */
  chamfer: 0.4,
  /** past the thread, mm */
  leadIn: 0.3,
  /** of a threaded bore, mm */
  fit: { diametral: 0.1, axial: 0 },
  /** length of a threaded bore in screw diameters */
  threaded: 1.2,
  /** a pin takes at most so much of the screw's root */
  pinShare: 1 / 3,
};

/** A collar laid out at finished sizes. */
export interface LaidCollar {
  readonly plan: CollarPlan;
  /** round where its flats do not reach through the collar */
  readonly shaft: Shaft;
  readonly grip: Grip & { readonly clamp: ClampScrews };
  readonly clearance: number;
  readonly fit?: Fit;
}

/** What a collar is laid out for. */
export interface CollarTask {
  readonly shaft: Shaft;
  readonly screw: Screw | undefined;
  readonly bearing: CollarBearing | undefined;
  /** along the shaft, to be held by friction [N] */
  readonly pull: number;
  readonly life: GripLife & { readonly material: Material };
  readonly printer: Printer;
}

/**
 * A collar around its shaft: a slit on +X that its screws close. Where the shaft centres the bearing, that runs on the
 * lower face, which lies on the bed; else in a lip in the upper one.
 * @throws InputError outside, length or pin do not suit
 */
export function layOutCollar(sheet: CollarSheet, task: CollarTask, assumptions: Assumptions): LaidCollar {
  const held = boreOf(sheet, task, assumptions);
  const grip = gripFor(sheet, held, task, assumptions);
  const halves = assumptions.or<'slit' | 'halves'>(sheet.form, 'form', 'slit', 'closed from one side') === 'halves';
  if (halves && task.shaft.form !== 'round')
    throw fault('form', 'halves', `want a round shaft, without the flats of a ${task.shaft.form} one`);
  const lip = lipOf(task.bearing);
  const outside = outsideFor(sheet, { bore: held.bore, clamp: grip.clamp, bearing: task.bearing, lip }, assumptions);
  const pin = pinOf(sheet, task.screw);
  const { clamp, length } = clampIn(sheet, { ...held, outside, clamp: grip.clamp, lip, pin, task }, assumptions);
  const through = length - (lip?.depth ?? 0);
  const { shaft, bore } = fittedThrough(task.shaft, held.bore, through);
  noteUntoldFlat(task.shaft, sheet.shaft ? 'shaft' : 'turned_end', through, assumptions);
  const plan: CollarPlan = {
    outside,
    length,
    chamfer: D.chamfer,
    slit: SLIT_WIDTH,
    halves,
    bore,
    ...(held.thread ? { thread: held.thread } : {}),
    clamp,
    ...(pin === undefined ? {} : { pin: { hole: pin, height: through / 2 } }),
    ...(lip ? { lip } : {}),
  };
  return { plan, shaft, grip, clearance: held.clearance, ...(held.fit ? { fit: held.fit } : {}) };
}

interface HeldBore {
  readonly bore: Bore;
  readonly clearance: number;
  readonly rubs: Pick<Grip, 'friction' | 'greaseUntold'>;
  readonly thread?: CollarThread;
  readonly fit?: Fit;
}

function boreOf(sheet: CollarSheet, { shaft, screw, life: { material } }: CollarTask, notes: Assumptions): HeldBore {
  if (sheet.bore !== 'thread' || !screw) {
    const place = { field: 'hold', shaft, clamped: true, material };
    const { clearance, ...rubs } = holdFigures(sheet.hold ?? {}, place, notes);
    return { bore: roomyBoreFor(shaft, clearance), clearance, rubs };
  }
  const fit = threadFit(sheet, notes);
  const tooth = nutThread({
    form: screw.form,
    flankAngle: screw.flankAngle,
    screwMajor: screw.major.likely,
    screwPitchDiameter: screw.pitchDiameter.likely,
    pitch: screw.pitch.likely,
    diametralClearance: fit.diametral,
    axialClearance: fit.axial,
  });
  return {
    bore: { form: 'round', diameter: tooth.major + 2 * D.leadIn },
    clearance: closesBy(tooth, { fit, screw }),
    // the clamp only keeps the thread from shaking loose: nothing is counted on its friction
    rubs: { friction: GREASED_LEAST },
    thread: { tooth, lead: screw.lead, leadIn: D.leadIn },
    fit,
  };
}

/** A slit thread opens for its screw, and closes on it, so that it may be cut closer than a nut. */
function threadFit({ fit }: CollarSheet, notes: Assumptions): Fit {
  if (fit) return resolveFit(fit, notes);
  notes.note(
    'fit',
    `${plain(D.fit.diametral)} and ${plain(D.fit.axial)}`,
    'the slit opens for the screw, and closes on it',
  );
  return { name: 'own', ...D.fit };
}

/** What the clamp closes on the diameter until the flanks meet, or the nut's crests meet the screw's root [mm]. */
function closesBy(
  { minor, flankSlope }: CollarThread['tooth'],
  { fit, screw }: { readonly fit: Fit; readonly screw: Screw },
): number {
  const flanks = fit.axial === 0 ? fit.diametral : fit.diametral + fit.axial / flankSlope;
  return Math.min(flanks, minor - screw.minor.likely);
}

function gripFor(
  sheet: CollarSheet,
  { bore, clearance, rubs, thread }: HeldBore,
  { shaft, pull, life, printer }: CollarTask,
  notes: Assumptions,
): LaidCollar['grip'] {
  const own = sheet.hold ?? {};
  const base: Grip = { ...rubs, ...(own.tightening === undefined ? {} : { tightening: own.tightening }) };
  const diameter = shaft.diameter.likely;
  const clamp = chooseClamp({
    shaft,
    bore,
    play: borePlay({ clearance, shaft, bore }, { material: life.material, printer }).most,
    torque: thread ? 0 : (pull * diameter) / 2,
    life,
    web: false,
    ...(sheet.form === 'halves' ? { halves: true as const } : {}),
    grip: base,
    ...(sheet.outside_diameter === undefined ? {} : { radius: sheet.outside_diameter / 2 }),
    engagement: (screws) => Math.max(screws, sheet.length ?? 0),
    given: own.clamp ?? {},
  });
  if (!clamp)
    throw fault(
      'outside_diameter',
      `${plain(sheet.outside_diameter!)} mm`,
      `must be at least ${plain(2 * leastRadiusFor(bore, own.clamp?.screw, own.clamp?.washers === 'yes'))} mm for a clamp screw beside a bore of ${plain(bore.diameter)} mm`,
    );
  if (own.clamp?.screw === undefined)
    notes.note(
      'hold.clamp',
      `${clampWords(clamp)}${sheet.form === 'halves' ? ' on either side' : ''}`,
      'the smallest that holds what pulls, or the strongest of the usual ones',
    );
  return { ...base, clamp };
}

function outsideFor(
  { outside_diameter }: CollarSheet,
  {
    bore,
    clamp,
    bearing,
    lip,
  }: {
    readonly bore: Bore;
    readonly clamp: ClampScrews;
    readonly bearing: CollarBearing | undefined;
    readonly lip: CollarPlan['lip'];
  },
  notes: Assumptions,
): number {
  const screws = 2 * leastClampRadius(boreReach(bore), clamp.screw, clamp.washers);
  const lipped = lip ? lip.diameter + 2 * LEAST_WALL : 0;
  const least = Math.max(screws, lipped);
  const backed = bearing && !lip ? bearing.outside + 2 * D.chamfer : 0;
  const usual = Math.ceil(2 * Math.max(least, backed)) / 2;
  const outside = notes.or<number>(
    outside_diameter,
    'outside_diameter',
    usual,
    bearing ? 'the least that holds the clamp and backs the bearing' : 'the least that holds the clamp',
  );
  if (outside < least - 1e-9)
    throw fault(
      'outside_diameter',
      `${plain(outside)} mm`,
      `must be at least ${plain(Math.ceil(100 * least) / 100)} mm for ${screws >= lipped ? 'its clamp screws' : 'the lip around its bearing'}`,
    );
  return outside;
}

/** Hole of the pin; a third of the root at most is drilled away. */
function pinOf({ pin }: CollarSheet, screw: Screw | undefined): number | undefined {
  if (pin === undefined || !screw) return undefined;
  if (!SPRING_PINS.some((size) => Math.abs(size - pin) < 1e-9))
    throw fault('pin', `${plain(pin)} mm`, `must be ${SPRING_PINS.join(', ')} mm, as spring pins are made`);
  const most = D.pinShare * screw.minor.likely;
  if (pin > most + 1e-9)
    throw fault('pin', `${plain(pin)} mm`, `must be at most ${plain(most)} mm, a third of the screw's root`);
  return pin;
}

interface ClampWish extends HeldBore {
  readonly outside: number;
  readonly clamp: ClampScrews;
  readonly lip: CollarPlan['lip'];
  readonly pin: number | undefined;
  readonly task: CollarTask;
}

/** The screws in the middle of the bore's length. */
function clampIn(
  sheet: CollarSheet,
  { bore, outside, clamp: { screw, count, washers }, lip, pin, thread, task }: ClampWish,
  notes: Assumptions,
): { readonly clamp: Clamp; readonly length: number } {
  const row = clampHeights(screw, count, washers);
  const least = Math.max(row.length, pin === undefined ? 0 : pin + 2 * (LEAST_WALL + 0.3)) + (lip?.depth ?? 0);
  const threaded = thread ? D.threaded * task.shaft.diameter.likely + (lip?.depth ?? 0) : 0;
  const length = notes.or<number>(
    sheet.length,
    'length',
    Math.ceil(2 * Math.max(least, threaded)) / 2,
    thread ? '1.2 screw diameters of thread, and the clamp' : 'the clamp and its walls',
  );
  if (length < least - 1e-9)
    throw fault(
      'length',
      `${plain(length)} mm`,
      `must be at least ${plain(Math.ceil(100 * least) / 100)} mm for clamp, pin and lip`,
    );
  const shift = (length - (lip?.depth ?? 0) - row.length) / 2;
  const fitted = fitClamp({ radius: outside / 2, bore: boreReach(bore), slit: SLIT_WIDTH }, screw, washers)!;
  return { clamp: { ...fitted, heights: row.heights.map((height) => height + shift) }, length };
}
