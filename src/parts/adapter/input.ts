import type { Assumptions } from '../../sheet/assumptions.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { clearanceHole } from '../../standards/fasteners/clearance-hole.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { CATCH_GAP, nutPocket } from '../common/bought-nut.js';
import type { HolePlaces } from '../common/hole-pattern.js';
import type { JointHole } from '../common/joints.js';
import type { Roof } from '../common/roof.js';
import { type LayoutInput, type OutlineInput, thicknessFor } from './layout.js';
import type { AdapterSheet } from './sheet.js';
import { type CarriageSide, counterClockwise, type NutSide, type Registers, type Side } from './sides.js';

const KEY = { width: 3, length: 8 };

/** What was measured, and how it is to be joined. */
export interface Known {
  readonly nut: NutSide | undefined;
  readonly carriage: CarriageSide;
  readonly registers: Registers;
  readonly float: number | undefined;
  readonly hold: 'screws' | 'keys' | undefined;
  readonly screw: Screw | undefined;
  /** over pockets that open on the bed; its layer as a finished height */
  readonly roof?: Roof;
}

/** What a plate is laid out from: every size that the sheet leaves open is worked out and listed. */
export function inputOf(sheet: AdapterSheet, known: Known, notes: Assumptions): LayoutInput {
  const { nut, carriage, registers, float = 0, hold, roof } = known;
  const depth = sheet.register?.depth ?? 1;
  if (registers.nut === 'recess' || registers.carriage !== 'none')
    notes.or(sheet.register?.depth, 'register.depth', 1, 'enough to find the middle');
  const steps = stepsOf(sheet, known, depth);
  const joints = [
    jointHole(carriage, roof),
    ...(nut && hold !== 'keys' ? [jointHole(nut, roof, hold === 'screws')] : []),
  ];
  const catching = catchPocketOf(sheet, known);
  const sunk = Math.max(steps.outerStep?.depth ?? 0, catching?.depth ?? 0) + (steps.innerStep?.depth ?? 0);
  const needed = Math.ceil(2 * (Math.max(...joints.map(thicknessFor)) + sunk) - 1e-9) / 2;
  const thickness = notes.or(sheet.plate?.thickness, 'plate.thickness', needed, 'what the joints need');
  return {
    ...(nut
      ? {
          nut: {
            ...placesOf(nut.pattern),
            ...(hold === 'keys' ? { centres: [] } : {}),
            hole: jointHole(nut, roof, hold === 'screws'),
            clamped: nut.flangeThickness,
            seat: nut.seat,
            flange: nut.flange,
            stands: nut.stands,
          },
        }
      : {}),
    carriage: {
      ...placesOf(carriage.pattern),
      hole: jointHole(carriage, roof),
      center: carriage.offset,
      ...(carriage.bore ? { bore: carriage.bore.likely } : {}),
      ...(carriage.thickness ? { clamped: carriage.thickness.likely } : {}),
    },
    outline: outlineOf(sheet, notes),
    flats: sheet.plate?.flats ?? [],
    cutouts: (sheet.plate?.cutouts ?? []).map(({ at, turn = 0, diameter, size }) => ({
      at,
      turn,
      ...(diameter === undefined ? {} : { diameter }),
      ...(size === undefined ? {} : { size }),
    })),
    thickness,
    ...(roof ? { roof } : {}),
    relief: notes.or(sheet.plate?.relief, 'plate.relief', 0.4, 'the first layers spread'),
    bore: boreFor(sheet, known, float, notes),
    ...steps,
    ...(registers.carriage === 'rim'
      ? { rim: { outer: carriage.bore!.likely - registers.clearance, height: depth, center: carriage.offset } }
      : {}),
    keys: hold === 'keys' ? keysOf(nut!, float) : [],
    ...(catching ? { catchPocket: catching } : {}),
    ...(sheet.clocking === undefined ? {} : { clocking: sheet.clocking }),
  };
}

/**
 * One of a pattern's holes: the clearance hole of the plate is that of the screw, or as large as the bought part's. A
 * floating nut has wider ones, for what stands in them; its screws stand still in the plate.
 */
function jointHole({ pattern: { diameter, screw }, joint }: Side, roof: Roof | undefined, stands = false): JointHole {
  const wide = diameter.likely;
  const size = stands && screw ? Math.min(wide, clearanceHole(screw, 'medium')) : wide;
  return { joint, diameter: size, ...(screw ? { screw } : {}), ...(roof ? { roof: roof.kind } : {}) };
}

function boreFor(sheet: AdapterSheet, { nut, registers, screw }: Known, float: number, notes: Assumptions): number {
  if (sheet.plate?.bore !== undefined) return sheet.plate.bore;
  if (nut!.stands === 'away' && screw)
    return notes.or(undefined, 'plate.bore', round(screw.major.likely + 1), 'the screw passes with air around it');
  const air = registers.nut === 'bore' ? registers.clearance : 0.6;
  const why = registers.nut === 'bore' ? "the nut's body slides in" : "the nut's body passes with air around it";
  return notes.or(undefined, 'plate.bore', round(nut!.body.likely + air + 2 * float), why);
}

function stepsOf(
  sheet: AdapterSheet,
  { nut, carriage, registers, float = 0 }: Known,
  depth: number,
): Pick<LayoutInput, 'outerStep' | 'innerStep'> {
  const flange = nut && {
    diameter: round(nut.flange.size[0] + registers.clearance + 2 * float),
    depth,
    center: [0, 0] as const,
  };
  const nutStep = registers.nut === 'recess' ? flange : undefined;
  const stepped = sheet.plate?.step && { ...sheet.plate.step, center: [0, 0] as const };
  if (stepped && nutStep && nut!.seat === 'outside')
    throw fault(
      'plate.step',
      `${plain(stepped.diameter)} mm`,
      'the recess of the flange already is a step; leave one out',
    );
  const spigot = sheet.carriage.spigot;
  const carriageStep =
    registers.carriage === 'recess'
      ? { diameter: round(spigot!.value + registers.clearance), depth, center: carriage.offset }
      : undefined;
  if (carriageStep && nutStep && nut!.seat === 'carriage')
    throw fault('register.carriage', 'recess', 'must be rim or none: the flange already lies in a recess on that face');
  const outer = nut?.seat === 'outside' ? (nutStep ?? stepped) : stepped;
  const inner = nut?.seat === 'carriage' ? (nutStep ?? carriageStep) : carriageStep;
  return { ...(outer ? { outerStep: outer } : {}), ...(inner ? { innerStep: inner } : {}) };
}

function keysOf(nut: NutSide, float: number): LayoutInput['keys'] {
  const { size, flats, shape } = nut.flange;
  const across = flats ?? (shape === 'round' ? undefined : size[1]);
  if (across === undefined)
    throw fault('hold', 'keys', 'must be screws: keys need a flange with flats, or a square or rectangular one');
  if (nut.seat === 'carriage') throw fault('hold', 'keys', 'must be screws: keys stand on the outer face');
  const reach = across / 2 + float + KEY.width / 2;
  const key = { size: [KEY.length, KEY.width] as const, turn: 0, height: Math.max(1, nut.flangeThickness - 0.5) };
  return [
    { ...key, center: [0, reach] },
    { ...key, center: [0, -reach] },
  ];
}

function catchPocketOf(sheet: AdapterSheet, { nut, screw }: Known): LayoutInput['catchPocket'] {
  const given = sheet.catch_nut;
  if (!given) return undefined;
  if (nut?.stands !== 'away' || nut.seat !== 'outside')
    throw fault(
      'catch_nut',
      '',
      'needs nut.stands: away and nut.seat: outside: it lies in the plate, under the flange of the working nut',
    );
  if (!screw) throw fault('screw', '', 'is missing; the pocket of a catch nut needs to know the screw');
  const { shape, acrossFlats, depth } = nutPocket(given, given.gap ?? CATCH_GAP.usual);
  return { shape, acrossFlats, depth };
}

function outlineOf(sheet: AdapterSheet, notes: Assumptions): OutlineInput {
  const given = sheet.plate?.outline ?? {};
  const shape = notes.or(given.shape, 'plate.outline', 'hull', 'the band around both patterns');
  const center = given.center ?? ([0, 0] as const);
  if (shape === 'polygon') return { shape, corners: counterClockwise(given.corners!) };
  if (shape === 'rectangular') return { shape, size: given.size!, corner: given.corner ?? 0, center };
  const rim = () => notes.or(given.rim, 'plate.outline.rim', 3, 'around every opening');
  if (shape === 'hull') return { shape, rim: rim() };
  const known = shape === 'round' ? given.diameter : given.width;
  if (known === undefined)
    throw fault(
      `plate.outline.${shape === 'round' ? 'diameter' : 'width'}`,
      '',
      `is missing; a ${shape} plate needs it, or use shape: hull`,
    );
  if (shape === 'round') return { shape, diameter: known, center };
  return { shape: 'rectangular', size: [known, known], corner: given.corner ?? 0, center };
}

function round(size: number): number {
  return Math.round(size * 1000) / 1000;
}

function placesOf({ centres, isRectangle }: HolePlaces): HolePlaces {
  return { centres, ...(isRectangle ? { isRectangle } : {}) };
}
