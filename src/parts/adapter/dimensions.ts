import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { resolveMaterial } from '../../presets/resolve-material.js';
import { resolvePrinter } from '../../presets/resolve-printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { Assumptions } from '../../sheet/assumptions.js';
import { measured } from '../../sheet/measured-field.js';
import { resolveScrew, type Screw } from '../../sheet/resolve-screw.js';
import type { DutySheet } from '../../sheet/sections/duty.js';
import { polygonArea } from '../../solid/outline.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import type { Measured } from '../../units/measured.js';
import { CATCH_GAP, nutPocket } from '../common/bought-nut.js';
import { type HolePattern, measuredPattern } from '../common/hole-pattern.js';
import { boreOf, type Joint, type JointHole } from '../common/joints.js';
import { isSimple } from '../common/polygon-distance.js';
import { type PrintSizes, printSizes, TRUE_SIZES } from '../common/print-sizes.js';
import type { DesignBase, Sizes } from '../part-kind.js';
import { fits } from './cures.js';
import { cutoutsApart, leavesWhole } from './cutouts.js';
import { type Layout, type LayoutInput, layout, type OutlineInput, thicknessFor } from './layout.js';
import { insideEdge, type PlateSizes, type Point, plateOutline } from './plan.js';
import type { FlangeSizes } from './seated-nut.js';
import type { AdapterSheet } from './sheet.js';

/** One side of the joint: what was measured, and how the plate meets it. */
export interface Side {
  readonly pattern: HolePattern;
  readonly joint: Joint;
  /** the holes of the bought part are tapped */
  readonly tapped: boolean;
}

export interface NutSide extends Side {
  readonly body: Measured;
  readonly length?: number;
  readonly flange: FlangeSizes;
  readonly flangeThickness: number;
  readonly seat: 'outside' | 'carriage';
  readonly stands: 'through' | 'away';
}

export interface CarriageSide extends Side {
  readonly bore?: Measured;
  readonly slot?: readonly [number, number];
  readonly thickness?: Measured;
  readonly offset: Point;
  readonly room?: readonly Point[];
}

/** What keeps the parts in the middle of each other. */
export interface Registers {
  readonly nut: 'bore' | 'recess' | 'none';
  readonly carriage: 'rim' | 'recess' | 'none';
  /** on the diameter */
  readonly clearance: number;
}

/** A metal nut that takes over if the working one fails. */
export interface CatchNut {
  readonly height: number;
  readonly gap: number;
}

/** An adapter, worked out. */
export interface AdapterDesign extends DesignBase {
  readonly part: 'adapter';
  readonly kind: 'joined' | 'floating' | 'blank';
  readonly input: LayoutInput;
  readonly layout: Layout;
  readonly nut?: NutSide;
  readonly carriage: CarriageSide;
  readonly registers: Registers;
  /** each way, of a floating nut */
  readonly float?: number;
  readonly hold?: 'screws' | 'keys';
  readonly screw?: Screw;
  readonly catchNut?: CatchNut;
  /** from the carriage's face to the face that the flange lies on */
  readonly seatHeight: number;
  readonly material: Material;
  readonly printer: Printer;
  readonly duty: DutySheet;
  readonly calipers: number;
}

const DEFAULT_CALIPERS = 0.03;
const LOCATION = 0.2;
const KEY = { width: 3, length: 8 };

/**
 * Works an adapter out from its sheet: outline, bore, registers, joints, and the turn between the two patterns.
 * @throws InputError values that contradict each other or cannot be a plate
 */
export function designAdapter(sheet: AdapterSheet, presets: PresetTexts): AdapterDesign {
  const notes = new Assumptions();
  const why = 'half-width of a reading by ordinary calipers';
  const calipers = notes.or(sheet.calipers, 'calipers', DEFAULT_CALIPERS, why);
  const kind = notes.or<AdapterDesign['kind']>(sheet.kind, 'kind', 'joined', 'a plate that joins nut and carriage');
  const material = resolveMaterial(sheet.material, presets, notes);
  const printer = resolvePrinter(sheet.printer, presets, notes);
  const screw = sheet.screw && resolveScrew(sheet.screw, calipers, notes);
  const nut = nutSide(sheet, calipers, notes);
  const carriage = carriageSide(sheet, calipers, notes);
  const registers = registersOf(sheet, nut, notes);
  const float = kind === 'floating' ? notes.or(sheet.float, 'float', 0.3, 'enough for a bent screw') : undefined;
  const hold = kind === 'floating' ? notes.or(sheet.hold, 'hold', 'screws', 'through the holes of the nut') : undefined;
  const known = withJoints(sheet, { nut, carriage, registers, float, hold, screw }, notes);
  const input = inputOf(sheet, known, notes);
  requireSense(sheet, input);
  const laid = layout(input);
  if (!leavesWhole(laid.plate))
    throw fault('plate.cutouts', '', 'must leave the plate in one piece: each may cross its edge once');
  const sizes = printSizes(material, printer);
  const seatHeight = seatOf(input);
  return {
    part: 'adapter',
    name: sheet.name,
    kind,
    input,
    layout: laid,
    ...(known.nut ? { nut: known.nut } : {}),
    carriage: known.carriage,
    registers,
    ...(float === undefined ? {} : { float }),
    ...(hold === undefined ? {} : { hold }),
    ...(screw ? { screw } : {}),
    ...(sheet.catch_nut
      ? { catchNut: { height: sheet.catch_nut.height.value, gap: sheet.catch_nut.gap ?? CATCH_GAP.usual } }
      : {}),
    seatHeight,
    material,
    printer,
    duty: sheet.duty ?? {},
    calipers,
    dimensions: { finished: named(laid, seatHeight, TRUE_SIZES), printed: named(laid, seatHeight, sizes) },
    assumptions: notes.list,
    limits: sheet.limits ?? {},
    densities: { [material.name]: material.density },
  };
}

function nutSide(sheet: AdapterSheet, calipers: number, notes: Assumptions): NutSide | undefined {
  const given = sheet.nut;
  if (!given) return undefined;
  const { flange } = given;
  const shape = notes.or(flange.shape, 'nut.flange.shape', 'round', 'not given');
  const across = flange.diameter?.value ?? 0;
  return {
    pattern: measuredPattern(given.holes, 'nut.holes', notes, calipers),
    joint: notes.or<Joint>(
      given.joint,
      'nut.joint',
      'insert',
      'holds best in plastic, and lets the nut be fitted last',
    ),
    tapped: given.thread === 'tapped',
    body: measured(given.body, calipers),
    ...(given.length ? { length: given.length.value } : {}),
    flange: {
      shape,
      size: flange.size ?? [across, across],
      ...(flange.flats === undefined ? {} : { flats: flange.flats }),
    },
    flangeThickness: flange.thickness.value,
    seat: notes.or<NutSide['seat']>(given.seat, 'nut.seat', 'outside', 'the flange lies on the outer face'),
    stands: notes.or<NutSide['stands']>(given.stands, 'nut.stands', 'through', 'the body enters the plate'),
  };
}

function carriageSide(sheet: AdapterSheet, calipers: number, notes: Assumptions): CarriageSide {
  const { bore, slot, thickness, offset, holes, thread, joint, room } = sheet.carriage;
  const [x, y] = offset ?? [0, 0];
  const pattern = measuredPattern(holes, 'carriage.holes', notes, calipers);
  return {
    pattern: { ...pattern, centres: pattern.centres.map(([u, v]) => [u + x, v + y] as const) },
    joint: joint ?? 'counterbore',
    tapped: thread === 'tapped',
    ...(bore ? { bore: measured(bore, calipers) } : {}),
    ...(slot ? { slot } : {}),
    ...(thickness ? { thickness: measured(thickness, calipers) } : {}),
    offset: [x, y],
    ...(room ? { room: counterClockwise(room) } : {}),
  };
}

function registersOf(sheet: AdapterSheet, nut: NutSide | undefined, notes: Assumptions): Registers {
  const given = sheet.register ?? {};
  const usual: Registers['nut'] = nut === undefined ? 'none' : nut.stands === 'through' ? 'bore' : 'recess';
  const kind = notes.or<Registers['nut']>(given.nut, 'register.nut', usual, 'keeps the nut in the middle');
  if (kind === 'recess' && nut && (nut.flange.shape !== 'round' || nut.flange.flats !== undefined))
    throw fault(
      'register.nut',
      'recess',
      'must be bore or none: only a plain round flange finds its middle in a recess',
    );
  if (kind === 'bore' && nut?.stands === 'away')
    throw fault('register.nut', 'bore', 'must be recess or none: the body stands away from the plate');
  if (nut === undefined && kind !== 'none')
    throw fault('register.nut', kind, 'must be none: a blank plate takes no nut');
  return {
    nut: kind,
    carriage: notes.or<Registers['carriage']>(
      given.carriage,
      'register.carriage',
      'none',
      'the screws alone place the plate',
    ),
    clearance: notes.or(given.clearance, 'register.clearance', LOCATION, 'slides in by hand'),
  };
}

interface Known {
  readonly nut: NutSide | undefined;
  readonly carriage: CarriageSide;
  readonly registers: Registers;
  readonly float: number | undefined;
  readonly hold: 'screws' | 'keys' | undefined;
  readonly screw: Screw | undefined;
}

/** Joints in the order of preference: what holds best in plastic and lets the nut be fitted last comes first. */
const NUT_JOINTS: readonly Joint[] = ['insert', 'tapped', 'hexagon', 'counterbore', 'through'];
const CARRIAGE_JOINTS: readonly Joint[] = ['counterbore', 'through', 'insert', 'hexagon', 'tapped'];
/** What is tapped already wants a head in the plate, not a second thread. */
const TO_TAPPED: readonly Joint[] = ['counterbore', 'through'];

/** Joints that the sheet leaves open are the first that find room; they are listed. */
function withJoints(sheet: AdapterSheet, known: Known, notes: Assumptions): Known {
  const { nut, carriage } = known;
  const [nutGiven, carriageGiven] = [sheet.nut?.joint, sheet.carriage.joint];
  if ((nutGiven !== undefined || nut === undefined) && carriageGiven !== undefined) return known;
  const ofNut = nutGiven === undefined ? (nut?.tapped ? TO_TAPPED : NUT_JOINTS) : [nutGiven];
  const ofCarriage = carriageGiven === undefined ? (carriage.tapped ? TO_TAPPED : CARRIAGE_JOINTS) : [carriageGiven];
  const tries = ofNut.flatMap((nutJoint) =>
    ofCarriage.map((carriageJoint) => ({
      ...known,
      nut: nut && { ...nut, joint: nutJoint },
      carriage: { ...carriage, joint: carriageJoint },
    })),
  );
  const found = tries.find((one) => roomy(inputOf(sheet, one, new Assumptions())));
  const chosen = found ?? tries[0]!;
  const why = found ? 'the first joint that finds room' : 'no joint finds room';
  if (nut && nutGiven === undefined) notes.note('nut.joint', chosen.nut!.joint, why);
  if (carriageGiven === undefined) notes.note('carriage.joint', chosen.carriage.joint, why);
  return chosen;
}

/** Whether a layout fits, with the wall that inserts want. */
function roomy(input: LayoutInput): boolean {
  const laid = layout(input);
  const inserts = [input.nut?.hole.joint, input.carriage.hole.joint].includes('insert');
  return fits(laid) && (!inserts || laid.ligament.gap >= INSERT_WALL);
}

const INSERT_WALL = 1.5;

function inputOf(sheet: AdapterSheet, known: Known, notes: Assumptions): LayoutInput {
  const { nut, carriage, registers, float = 0, hold } = known;
  const depth = sheet.register?.depth ?? 1;
  if (registers.nut === 'recess' || registers.carriage !== 'none')
    notes.or(sheet.register?.depth, 'register.depth', 1, 'enough to find the middle');
  const steps = stepsOf(sheet, known, depth);
  const joints = [jointHole(carriage), ...(nut && hold !== 'keys' ? [jointHole(nut)] : [])];
  const catching = catchPocketOf(sheet, known);
  const sunk = Math.max(steps.outerStep?.depth ?? 0, catching?.depth ?? 0) + (steps.innerStep?.depth ?? 0);
  const needed = Math.ceil(2 * (Math.max(...joints.map(thicknessFor)) + sunk) - 1e-9) / 2;
  const thickness = notes.or(sheet.plate?.thickness, 'plate.thickness', needed, 'what the joints need');
  return {
    ...(nut
      ? {
          nut: {
            centres: hold === 'keys' ? [] : nut.pattern.centres,
            hole: jointHole(nut),
            clamped: nut.flangeThickness,
            seat: nut.seat,
            flange: nut.flange,
            stands: nut.stands,
          },
        }
      : {}),
    carriage: {
      centres: carriage.pattern.centres,
      hole: jointHole(carriage),
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

/** One of a pattern's holes: the clearance hole of the plate is that of the screw, or as large as the bought part's. */
function jointHole({ pattern, joint }: Side): JointHole {
  return { joint, diameter: pattern.diameter.likely, ...(pattern.screw ? { screw: pattern.screw } : {}) };
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

function counterClockwise(corners: readonly Point[]): readonly Point[] {
  return polygonArea(corners) < 0 ? corners.toReversed() : corners;
}

function round(size: number): number {
  return Math.round(size * 1000) / 1000;
}

/** Refuses what cannot be drawn; what is merely thin or tight is left to the checks. */
function requireSense(sheet: AdapterSheet, input: LayoutInput): void {
  const { outline, outerStep, innerStep, catchPocket, thickness, bore, cutouts, relief } = input;
  const sunk = Math.max(outerStep?.depth ?? 0, catchPocket?.depth ?? 0) + (innerStep?.depth ?? 0);
  if (sunk > thickness - 0.8)
    throw fault(
      'plate.thickness',
      `${plain(thickness)} mm`,
      `must be at least ${plain(sunk + 0.8)} mm: the recesses go ${plain(sunk)} mm deep`,
    );
  for (const step of [outerStep, innerStep]) {
    if (step && step.diameter <= bore + 0.4)
      throw fault('plate.bore', `${plain(bore)} mm`, `must be below the recess around it, ${plain(step.diameter)} mm`);
  }
  if (catchPocket && bore > catchPocket.acrossFlats - 2)
    throw fault(
      'plate.bore',
      `${plain(bore)} mm`,
      `must be at most ${plain(catchPocket.acrossFlats - 2)} mm, so that the catch nut has a floor`,
    );
  if (catchPocket && outerStep) throw fault('register.nut', 'recess', 'must be none beside a catch nut');
  if (relief >= thickness / 2) throw fault('plate.relief', `${plain(relief)} mm`, 'must be below half the thickness');
  if (outline.shape === 'rectangular' && outline.corner > Math.min(...outline.size) / 2)
    throw fault('plate.outline.corner', `${plain(outline.corner)} mm`, 'must be at most half the shorter side');
  if (outline.shape === 'polygon' && !isSimple(outline.corners))
    throw fault('plate.outline.corners', '', 'must run around the plate without crossing or touching itself');
  if (outline.shape === 'polygon' && input.flats.length > 0)
    throw fault('plate.flats', '', 'do not belong to a polygon; draw them into its corners');
  if (sheet.carriage.room && !isSimple(sheet.carriage.room))
    throw fault('carriage.room', '', 'must run around the room without crossing or touching itself');
  if (cutoutsApart({ cutouts }) < 0.8)
    throw fault('plate.cutouts', '', 'must stay 0.8 mm apart; draw one in place of two');
}

function seatOf({ nut, thickness, outerStep, innerStep }: LayoutInput): number {
  if (nut?.seat === 'carriage') return innerStep?.depth ?? 0;
  return thickness - (nut ? (outerStep?.depth ?? 0) : 0);
}

/** Sizes under the names of the report. */
function named({ plate, clocking, ligament }: Layout, seatHeight: number, print: PrintSizes): Sizes {
  const { nutHoles, carriageHoles, outerStep, innerStep, rim } = plate;
  const [length, width] = extent(plate, print);
  return {
    thickness: print.along(plate.thickness),
    bore: print.inside(plate.bore),
    outline_length: length,
    outline_width: width,
    clocking: clocking.turn,
    least_ligament: round(ligament.gap),
    height_change: print.along(seatHeight),
    ...(outerStep
      ? { recess_diameter: print.inside(outerStep.diameter), recess_depth: print.along(outerStep.depth) }
      : {}),
    ...(innerStep
      ? {
          carriage_recess_diameter: print.inside(innerStep.diameter),
          carriage_recess_depth: print.along(innerStep.depth),
        }
      : {}),
    ...(rim ? { rim_diameter: print.outside(rim.outer), rim_height: print.along(rim.height) } : {}),
    ...(nutHoles
      ? {
          nut_hole_diameter: print.inside(boreOf(nutHoles.hole)),
          nut_hole_circle: print.across(2 * Math.hypot(...nutHoles.centres[0]!)),
        }
      : {}),
    carriage_hole_diameter: print.inside(boreOf(carriageHoles.hole)),
    carriage_hole_circle: print.across(2 * Math.hypot(...carriageHoles.centres[0]!)),
  };
}

function extent(plate: PlateSizes, print: PrintSizes): readonly [number, number] {
  const corners = plateOutline(plate, print, 0.01);
  const over = (axis: 0 | 1) => {
    const values = corners.map((corner) => corner[axis]);
    return Math.max(...values) - Math.min(...values);
  };
  return [over(0), over(1)];
}

/** Least distance of the plate's corners to the edge of the room it may take; negative outside, unlimited where none is stated. */
export function roomLeft({ carriage, layout: { plate } }: Pick<AdapterDesign, 'carriage' | 'layout'>): number {
  if (!carriage.room) return Infinity;
  const inside = insideEdge({ outline: { shape: 'polygon', corners: carriage.room }, flats: [] });
  const corners = plateOutline(plate, undefined, 0.02).map(inside);
  const edge = insideEdge(plate);
  return Math.min(...corners, ...carriage.room.map((corner) => -edge(corner)));
}
