import { lobeStress } from '../../mechanics/coupling/insert-stress.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import { Assumptions } from '../../sheet/assumptions.js';
import type { FastenerSize } from '../../standards/fasteners/sizes.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { type Bore, boreReach, fitted, noteUntoldFlat, roomyBoreFor, type Shaft } from '../common/bore.js';
import { borePlay } from '../common/bore-play.js';
import { chooseClamp, clampWords, leastRadiusFor } from '../common/choose-clamp.js';
import { clampHeights, fitClamp, leastClampRadius, SLIT_WIDTH } from '../common/clamp.js';
import { freeSlit } from '../common/clamp-ring.js';
import type { Grip, GripLife } from '../common/grip.js';
import { type GripDemand, gripLimits } from '../common/grip-demand.js';
import type { HubTemperature } from '../common/held.js';
import { holdFigures } from '../common/hold-figures.js';
import { fitSetScrew, leastSetScrewRadius, type SetScrewJoint, setScrewTop } from '../common/set-screw-pocket.js';
import { LEAST_WALL } from '../common/walls.js';
import { COUPLING_DEFAULTS as D } from './defaults.js';
import type { HubPlan } from './hub-plan.js';
import type { InsertPlan } from './insert.js';
import { contactIn, jawLoads } from './jaw-load.js';
import { type JawPlan, straightHalf } from './jaws.js';
import { fitting, isSound, jawHeights, jawsFor, narrow } from './lay-jaws.js';
import type { Hub, HubName, Insert, Pad } from './pieces.js';
import type { CouplingSheet } from './sheet.js';

/** What a coupling is laid out for. */
export interface Task {
  readonly shafts: Readonly<Record<HubName, Shaft | undefined>>;
  readonly demand: GripDemand;
  readonly life: Omit<GripLife, 'temperature'> & { readonly material: Material };
  readonly printer: Printer;
  readonly temperatures: Readonly<Record<HubName, HubTemperature>>;
  /** of the insert [MPa] */
  readonly modulus: number;
  /** between the shafts, degrees */
  readonly angle: number;
  /** torque of start, stall and shock [N·mm] */
  readonly peak: number;
}

/** A hub laid out. */
export type LaidHub = Omit<Hub, 'printed' | 'temperature'>;

/** A coupling laid out at finished sizes. */
export interface Layout {
  readonly hubs: readonly LaidHub[];
  /** of both hubs, made or bought */
  readonly jaws: JawPlan;
  readonly insert: Pick<Insert, 'finished' | 'pad' | 'flankClearance'>;
  readonly gap: number;
  readonly shaftGap?: number;
  readonly skipped: readonly HubName[];
}

const HUBS = ['motor-hub', 'screw-hub'] as const satisfies readonly HubName[];
const SHEET_OF = { 'motor-hub': 'motor_hub', 'screw-hub': 'screw_hub' } as const;
const MOST_RADIUS = 60;
/** What the lobes are laid out for, over the motor's holding torque. */
const LOBE_RESERVE = 1.5;

/** A hub before the outline is known. */
interface Wish {
  readonly name: HubName;
  readonly field: 'motor_hub' | 'screw_hub';
  readonly shaft: Shaft;
  readonly clearance: number;
  readonly bore: Bore;
  readonly grip: Grip;
  readonly joint: SetScrewJoint;
  /** length that the grip takes from the hub's end */
  readonly gripLength: number;
  readonly radius: number;
}

/**
 * Lays out both hubs and the insert.
 * @throws InputError what is given leaves no coupling
 */
export function layOut(sheet: CouplingSheet, task: Task, assumptions: Assumptions): Layout {
  const given = sheet.hubs?.outside_diameter;
  const wishesIn = (radius: number | undefined, notes: Assumptions) =>
    HUBS.flatMap((name): Wish[] => {
      const shaft = task.shafts[name];
      return shaft ? [wishFor(sheet, { name, shaft, task, radius }, notes)] : [];
    });
  // a thick wall is stiff to close: clamps are chosen again in the outline that jaws and insert want
  const first = given === undefined ? firstRadius(sheet, { task, wishesIn }) : given / 2;
  const wishes = wishesIn(first, assumptions);
  const pad = padOf(sheet, wishes, assumptions);
  const { radius, jaws, hole } = outlineFor(sheet, { wishes, pad, task, given }, assumptions);
  const { insert, flankClearance } = insertFor(sheet, { jaws, hole, radius }, assumptions);
  const gap = gapFor(jaws, insert.height);
  const hubs = wishes.map((wish) => hubFor(sheet, { wish, radius, jaws, pad, gap }, assumptions));
  requireThinPad(hubs, pad, gap);
  const shaftGap = shaftGapOf(hubs, pad, gap);
  return {
    hubs,
    jaws,
    insert: { finished: insert, pad: padded(pad, insert), flankClearance },
    gap,
    ...(shaftGap === undefined ? {} : { shaftGap }),
    skipped: HUBS.filter((name) => !task.shafts[name]),
  };
}

interface FirstInput {
  readonly task: Task;
  readonly wishesIn: (radius: number | undefined, notes: Assumptions) => Wish[];
}

/** Radius of the outline with the clamps that the least outline would want. */
function firstRadius(sheet: CouplingSheet, { task, wishesIn }: FirstInput): number {
  const scratch = new Assumptions();
  const wishes = wishesIn(undefined, scratch);
  const pad = padOf(sheet, wishes, scratch);
  return outlineFor(sheet, { wishes, pad, task, given: undefined }, scratch).radius;
}

function padded(pad: PadPlan, insert: InsertPlan): Insert['pad'] {
  return pad.kind === 'soft' ? { ...pad, thickness: insert.height } : pad;
}

interface WishInput {
  readonly name: HubName;
  readonly shaft: Shaft;
  readonly task: Task;
  /** of the outline, where it is known */
  readonly radius: number | undefined;
}

function wishFor(sheet: CouplingSheet, { name, shaft, task, radius }: WishInput, assumptions: Assumptions): Wish {
  const field = SHEET_OF[name];
  const own = sheet[field] ?? {};
  const { material } = task.life;
  const kind = assumptions.or(own.grip, `${field}.grip`, 'clamp', 'holds better than a set screw, and marks no shaft');
  const clamped = kind !== 'set-screw';
  const { clearance, ...rubs } = holdFigures(own, { field, shaft, clamped, material }, assumptions);
  const bore = roomyBoreFor(shaft, clearance);
  const setScrew = kind === 'clamp' ? undefined : (own.set_screw?.screw ?? setScrewFor(shaft));
  const joint = own.set_screw?.joint ?? 'nut';
  const base: Grip = {
    ...rubs,
    ...(setScrew ? { setScrew } : {}),
    ...(own.tightening === undefined ? {} : { tightening: own.tightening }),
  };
  const setLength = setScrew ? setScrewTop(fitSetScrew(boreReach(bore).far, setScrew, joint)) + LEAST_WALL : 0;
  const setRadius = setScrew ? leastSetScrewRadius(boreReach(bore).far, setScrew, joint) : 0;
  if (!clamped) {
    return { name, field, shaft, clearance, bore, grip: base, joint, gripLength: setLength, radius: setRadius };
  }
  const engagement = (length: number) => Math.max(D.engagement * shaft.diameter.likely, length);
  const clamp = chooseClamp({
    shaft,
    bore,
    play: borePlay({ clearance, shaft, bore }, { material, printer: task.printer }).most,
    torque: gripLimits(task.demand).pass.min!,
    life: { ...task.life, temperature: task.temperatures[name].at },
    grip: base,
    ...(radius === undefined ? {} : { radius }),
    web: true,
    engagement,
    given: own.clamp ?? {},
  });
  if (!clamp) throw tooSlim(2 * radius!, bore, { screw: own.clamp?.screw, washers: own.clamp?.washers === 'yes' });
  if (own.clamp?.screw === undefined)
    assumptions.note(
      `${field}.clamp`,
      clampWords(clamp),
      'the smallest that holds the torque, or the strongest of the usual ones',
    );
  return {
    name,
    field,
    shaft,
    clearance,
    bore,
    grip: { ...base, clamp },
    joint,
    gripLength: Math.max(setLength, clampHeights(clamp.screw, clamp.count, clamp.washers).length),
    radius: Math.max(setRadius, leastClampRadius(boreReach(bore), clamp.screw, clamp.washers)),
  };
}

function setScrewFor({ diameter }: Shaft): FastenerSize {
  if (diameter.likely < 4) return diameter.likely < 3.5 ? 'M2' : 'M2.5';
  return diameter.likely > 8.5 ? 'M4' : 'M3';
}

interface ScrewWish {
  readonly screw?: FastenerSize | undefined;
  readonly washers: boolean;
}

function tooSlim(outside: number, bore: Bore, { screw, washers }: ScrewWish) {
  const least = 2 * leastRadiusFor(bore, screw, washers);
  return fault(
    'hubs.outside_diameter',
    `${plain(outside)} mm`,
    `must be at least ${plain(least)} mm for ${screw ? `an ${screw}` : 'the smallest'} clamp screw beside a bore of ${plain(bore.diameter)} mm; or give grip: set-screw`,
  );
}

/** A pad before the insert is known. */
interface PadPlan {
  readonly kind: Pad;
  readonly diameter: number;
  readonly thickness: number;
}

/** The screw that stands on a motor wants something rigid between the shaft ends. */
function padOf(sheet: CouplingSheet, wishes: readonly Wish[], assumptions: Assumptions): PadPlan {
  const own = sheet.insert?.pad;
  const usual = sheet.insert?.center === 'solid' ? 'soft' : 'disc';
  const stands = sheet.mounting === 'motor-below' && wishes.length > 0;
  const kind =
    own?.kind ??
    (stands && !(sheet.insert?.center === 'solid' && sheet.thrust_bearing === 'yes')
      ? assumptions.or<Pad>(
          undefined,
          'insert.pad',
          usual,
          'both shaft ends stand on it, so that the insert carries no weight',
        )
      : 'none');
  if (kind === 'soft' && wishes.length === 0)
    throw fault('insert.pad', kind, 'must be disc, ball or none where no shaft is given');
  if (kind === 'none' || kind === 'soft') return { kind, diameter: 0, thickness: 0 };
  const widest = Math.max(0, ...wishes.map(({ shaft }) => shaft.diameter.likely));
  if (widest === 0 && own?.diameter === undefined)
    throw fault('insert.pad.diameter', '', `is missing; no shaft is given that tells how wide the ${kind} must be`);
  const diameter = assumptions.or<number>(
    own?.diameter,
    'insert.pad.diameter',
    Math.ceil(widest),
    'as wide as the thicker shaft',
  );
  if (kind === 'ball') return { kind, diameter, thickness: diameter };
  return {
    kind,
    diameter,
    thickness: assumptions.or<number>(own?.thickness, 'insert.pad.thickness', D.discThickness, 'stiff enough'),
  };
}

interface OutlineInput {
  readonly wishes: readonly Wish[];
  readonly pad: PadPlan;
  readonly task: Task;
  readonly given: number | undefined;
}

/** The outline that both hubs share, and jaws on it. */
function outlineFor(sheet: CouplingSheet, { wishes, pad, task, given }: OutlineInput, assumptions: Assumptions) {
  const least = Math.max(
    0,
    ...wishes.map(({ radius, bore }) =>
      Math.max(radius, boreReach(bore).most + LEAST_WALL + 0.1, 0.525 * bore.diameter * 2),
    ),
  );
  const shaftHole = Math.max(0, ...wishes.map(({ shaft }) => shaft.diameter.likely)) + D.holeRoom;
  const hole =
    sheet.insert?.hole ?? (pad.kind === 'disc' || pad.kind === 'ball' ? Math.max(shaftHole, pad.diameter + 0.4) : 0);
  const through = pad.kind === 'none' ? [] : wishes;
  const core = Math.max(
    0,
    ...[...through.map(({ bore }) => boreReach(bore).most + 0.3), hole > 0 ? hole / 2 + D.ringWall + D.ringGap : 0],
  );
  if (given !== undefined) {
    const radius = given / 2;
    const slim = wishes.find((wish) => wish.radius > radius + 1e-9 || boreReach(wish.bore).most + 1 > radius);
    if (slim) throw tooSlim(given, slim.bore, { washers: false, ...slim.grip.clamp });
    const jaws = fitting(jawsOn(sheet, { radius, core, hole }, task).jaws, sheet);
    noteJaws(jaws, sheet, assumptions);
    return { radius, jaws, hole };
  }
  const start = Math.ceil(2 * least - 1e-9) / 2;
  let first: { radius: number; jaws: JawPlan } | undefined;
  for (let radius = start; radius <= MOST_RADIUS; radius += 0.5) {
    const { jaws, strong } = jawsOn(sheet, { radius, core, hole }, task);
    if (!isSound(jaws, sheet)) continue;
    first ??= { radius, jaws };
    if (strong) {
      first = { radius, jaws };
      break;
    }
  }
  if (!first) throw narrow(jawsOn(sheet, { radius: start, core, hole }, task).jaws, sheet);
  assumptions.note(
    'hubs.outside_diameter',
    2 * first.radius,
    'the least that holds bores, clamp screws, jaws and insert',
  );
  noteJaws(first.jaws, sheet, assumptions);
  return { ...first, hole };
}

function noteJaws(jaws: JawPlan, sheet: CouplingSheet, assumptions: Assumptions): void {
  if (sheet.jaws?.count === undefined) assumptions.note('jaws.count', jaws.count, 'usual for this size');
  if (sheet.jaws?.inner === undefined) assumptions.note('jaws.inner', 2 * jaws.inner, 'about half the outside');
  if (sheet.jaws?.height === undefined)
    assumptions.note('jaws.height', jaws.height, 'as high as the insert, lower where they would break');
  if (sheet.jaws?.fillet === undefined)
    assumptions.note('jaws.fillet', Math.round(100 * jaws.fillet) / 100, 'a sharp corner breaks first');
}

interface Room {
  readonly radius: number;
  readonly core: number;
  readonly hole: number;
}

/** Jaws on an outline, as high as is usual or lower where those would break; the usual ones where none are strong. */
function jawsOn(sheet: CouplingSheet, { radius, core, hole }: Room, task: Task) {
  const heights = jawHeights(sheet, radius);
  const at = (height: number) => jawsFor(sheet, { radius, core, height });
  for (const height of heights) {
    const jaws = at(height);
    if (isSound(jaws, sheet) && isStrong(sheet, { jaws, hole, radius }, task)) return { jaws, strong: true };
  }
  return { jaws: at(heights[0]), strong: false };
}

/** Whether the lobes bear the motor's torque with some reserve, and the jaws what they go through. */
function isStrong(sheet: CouplingSheet, at: InsertInput, task: Task): boolean {
  const { jaws } = at;
  const { insert, flankClearance } = insertFor(sheet, at, new Assumptions());
  const place = { jaws, insert, gap: gapFor(jaws, insert.height) };
  const { top: _, bottom: __, ...contact } = contactIn(place);
  if (contact.height <= 0 || lobeStress({ torque: LOBE_RESERVE * task.demand.motor, ...contact }) > 1) return false;
  const loads = jawLoads({
    ...place,
    flankClearance,
    modulus: task.modulus,
    angle: task.angle,
    working: task.demand.working,
    peak: task.peak,
    material: task.life.material,
    temperature: Math.max(...Object.values(task.temperatures).map(({ at: hot }) => hot)),
  });
  return loads.every((load) => load.bending <= load.bendingBorne && load.shear <= load.shearBorne);
}

interface InsertInput {
  readonly jaws: JawPlan;
  readonly hole: number;
  readonly radius: number;
}

function insertFor(sheet: CouplingSheet, { jaws, hole, radius }: InsertInput, assumptions: Assumptions) {
  const own = sheet.insert ?? {};
  const flankClearance = assumptions.or<number>(
    own.flank_clearance,
    'insert.flank_clearance',
    D.flankClearance,
    'a light squeeze at each flank takes the play out',
  );
  const lobes = own.lobes ?? (jaws.hollow > 0 ? 'barrelled' : 'straight');
  const ring = jaws.inner - D.ringGap;
  const reach = radius - D.reachGap;
  const side = (lobes === 'straight' ? straightHalf(jaws, reach) : jaws.halfSlot) - flankClearance;
  const solid = own.center === 'solid' || (own.pad?.kind === 'soft' && own.center !== 'ring');
  const opening = solid ? 0 : hole > 0 ? hole : 2 * Math.max(0.5, ring - Math.max(D.ringWall, 0.3 * jaws.inner));
  if (opening / 2 > ring - 0.8)
    throw fault(
      'insert.hole',
      `${plain(opening)} mm`,
      `must be below ${plain(2 * (ring - 0.8))} mm, so that a ring is left inside the jaws`,
    );
  if (side < 0.4)
    throw fault('insert.flank_clearance', `${plain(flankClearance)} mm`, 'leaves no lobe between the jaws');
  const insert: InsertPlan = {
    lobes: 2 * jaws.count,
    halfWidth: side,
    barrel: lobes === 'straight' ? 0 : Math.max(jaws.hollow, D.hollowShare * 2 * jaws.halfSlot),
    ring,
    reach,
    height: own.height ?? jaws.height,
    hole: opening,
    middle: (jaws.inner + jaws.outer) / 2,
  };
  return { insert, flankClearance };
}

/** Between the floors of the two hubs: the insert with a gap to either floor that clears the fillets. */
function gapFor(jaws: JawPlan, height: number): number {
  return Math.max(height + 2 * Math.max(D.axialGap, jaws.fillet + 0.05), jaws.height + D.tipGap);
}

interface HubInput {
  readonly wish: Wish;
  readonly radius: number;
  readonly jaws: JawPlan;
  readonly pad: PadPlan;
  readonly gap: number;
}

function hubFor(sheet: CouplingSheet, { wish, radius, jaws, pad, gap }: HubInput, assumptions: Assumptions): LaidHub {
  const { field, shaft, bore, grip, gripLength } = wish;
  const own = sheet[field] ?? {};
  const stops = pad.kind === 'none' && (own.stop ?? 'cone') === 'cone';
  const reach = boreReach(bore);
  if (!stops && reach.most + 0.1 > jaws.inner)
    throw fault(
      'jaws.inner',
      `${plain(2 * jaws.inner)} mm`,
      `must be above ${plain(2 * reach.most + 0.2)} mm, since the shaft passes into it`,
    );
  const drop = Math.max(Math.min(1, 0.2 * bore.diameter), reach.most - jaws.inner + 0.6);
  const end = stops ? D.recess + D.stopFloor + drop : D.recess;
  const least = Math.ceil(2 * (gripLength + (grip.clamp ? D.slitFloor : end) - 1e-9)) / 2;
  const free = grip.clamp ? freeSlit(radius, bore, grip.clamp) + D.slitFloor : 0;
  const usual = Math.max(least, Math.ceil(2 * Math.max(D.engagement * shaft.diameter.likely + end, free) - 1e-9) / 2);
  const length = assumptions.or<number>(
    own.length,
    `${field}.length`,
    usual,
    'room for the grip, screws far enough from the web that they close the slit, 1.6 shaft diameters engaged',
  );
  if (length < least - 1e-9)
    throw fault(
      `${field}.length`,
      `${plain(length)} mm`,
      `must be at least ${plain(least)} mm for its screws and the floor under the jaws`,
    );
  const over = pad.kind === 'none' ? 0 : (gap - (pad.kind === 'soft' ? gap - 2 * D.axialGap : pad.thickness)) / 2;
  const stop = stops ? { from: length - end, drop } : undefined;
  const bored = stop ? stop.from : length - D.recess;
  const depth = stop ? stop.from : length + over;
  const { shaft: held, bore: fit } = fitted(shaft, bore, { depth, bored });
  const shaftField = field === 'motor_hub' ? 'motor.shaft' : sheet.shaft ? 'shaft' : 'turned_end';
  noteUntoldFlat(shaft, shaftField, depth, assumptions);
  const within = (shaft.length ?? Infinity) - Math.max(0, over) - (pad.kind === 'none' ? 0 : D.recess);
  const engagement = Math.max(0.1, Math.min(bored, within));
  const clamp = grip.clamp && fitClamp({ radius, bore: reach, slit: SLIT_WIDTH }, grip.clamp.screw, grip.clamp.washers);
  const finished: HubPlan = {
    outside: 2 * radius,
    length,
    chamfer: D.chamfer,
    bore: fit,
    ...(stop ? { stop, mark: stop.from } : {}),
    ...(clamp && grip.clamp
      ? {
          slit: { width: SLIT_WIDTH, to: length - D.slitFloor },
          clamp: { ...clamp, heights: clampHeights(grip.clamp.screw, grip.clamp.count, grip.clamp.washers).heights },
        }
      : {}),
    ...(grip.setScrew ? { setScrew: fitSetScrew(boreReach(fit).far, grip.setScrew, wish.joint) } : {}),
    jaws,
  };
  return { name: wish.name, shaft: held, clearance: wish.clearance, grip, engagement, reach: within, depth, finished };
}

/** A rigid pad that does not enter a bore stands on the floors of both hubs, and must leave them their distance. */
function requireThinPad(hubs: readonly LaidHub[], pad: PadPlan, gap: number): void {
  const isRigid = pad.kind === 'disc' || pad.kind === 'ball';
  const stands = hubs.some(({ finished }) => pad.diameter > finished.bore.diameter);
  if (isRigid && stands && pad.thickness > gap)
    throw fault(
      pad.kind === 'ball' ? 'insert.pad.diameter' : 'insert.pad.thickness',
      `${plain(pad.thickness, 2)} mm`,
      `must be at most the ${plain(gap, 2)} mm between the floors of the hubs; a ${pad.kind} of ${plain(pad.diameter, 2)} mm enters no bore`,
    );
}

/** Between the shaft ends: the pad, or what both stops leave; undefined where nothing sets it. */
function shaftGapOf(hubs: readonly LaidHub[], pad: PadPlan, gap: number): number | undefined {
  if (pad.kind === 'soft') return gap - 2 * D.axialGap;
  if (pad.kind !== 'none') return pad.thickness;
  if (hubs.length < 2 || hubs.some(({ finished }) => !finished.stop)) return undefined;
  return hubs.reduce((sum, { finished }) => sum + finished.length - finished.stop!.from, gap);
}
