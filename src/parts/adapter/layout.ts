import { hexNut } from '../../standards/fasteners/nuts.js';
import { fastenerThread } from '../../standards/fasteners/sizes.js';
import { nutPocketReach } from '../common/bought-nut.js';
import { type HolePlaces, turned } from '../common/hole-pattern.js';
import { holdsThread, type Joint, type JointHole, type Pocket, pocketOf, threadReach } from '../common/joints.js';
import { type Roof, takesRoof } from '../common/roof.js';
import { screwLengthWithin } from '../common/screw-length.js';
import { type Clocking, clockingAt, solveClocking } from './clocking.js';
import {
  isSolidRim,
  type Key,
  keyOutline,
  type OutlinePlan,
  type PatternHoles,
  type PlateSizes,
  type Point,
  type Rim,
  type Step,
} from './plan.js';
import { type FlangeSizes, insideFlangeOf, type SeatedNut } from './seated-nut.js';
import { type Around, fixedRoomOf, type Named, turnTask, type Walls, wallsOf, wallsWithin, widest } from './walls.js';

/** A pattern before its place in the plate is known. */
export interface PatternInput extends HolePlaces {
  readonly hole: JointHole;
  /** thickness of what the screws also go through: the flange, or the carriage */
  readonly clamped?: number;
}

/** A hull that is still to be drawn, or an outline that is known. */
export type OutlineInput = { readonly shape: 'hull'; readonly rim: number } | Exclude<OutlinePlan, { shape: 'hull' }>;

/** Everything that a plate is laid out from; plain data, so that a variant can be laid out too. */
export interface LayoutInput
  extends Pick<PlateSizes, 'flats' | 'cutouts' | 'thickness' | 'relief' | 'bore' | 'outerStep' | 'innerStep' | 'keys'> {
  readonly nut?: PatternInput & {
    readonly seat: 'outside' | 'carriage';
    readonly flange: FlangeSizes;
    readonly stands: 'through' | 'away';
  };
  readonly carriage: PatternInput & { readonly bore?: number; readonly center: Point };
  readonly outline: OutlineInput;
  /** over pockets that open on the bed; its layer as a finished height */
  readonly roof?: Roof;
  readonly rim?: { readonly outer: number; readonly height: number; readonly center: Point };
  readonly catchPocket?: Omit<NonNullable<PlateSizes['catchPocket']>, 'turn'>;
  /** fixed turn, where the sheet states one */
  readonly clocking?: number;
}

/** A plate laid out. */
export interface Layout {
  readonly plate: PlateSizes;
  readonly clocking: Clocking;
  /** least wall, and between what */
  readonly ligament: Named;
  /** least room for heads and tools above what is needed, and between what */
  readonly room: Named;
}

/** A ring this wide stands on its own, mm. */
const RING_WALL = 2;
/** A hole is left blind only if so much of the plate stays behind it, mm. */
const BLIND_FLOOR = 1.2;

/** Lays out the plate, its clocking solved or taken as stated. */
export function layout(input: LayoutInput): Layout {
  const clocking = clockingOf(input);
  const around = aroundOf(input, clocking.turn);
  return laidAt({ plate: drafted(input, clocking.turn), clocking, around });
}

/** Least wall between openings, and from them to the edge, mm. @source common-practice */
export const LEAST_LIGAMENT = 1.2;

/** Whether holes, heads and tools find their place. */
export function fits({ ligament, room }: Pick<Layout, 'ligament' | 'room'>): boolean {
  return ligament.gap >= LEAST_LIGAMENT - 1e-9 && room.gap >= -1e-9;
}

/** The same where everything fits. Walls to the edge, which take most of the work, are asked last. */
export function layoutThatFits(input: LayoutInput): Layout | undefined {
  const clocking = clockingOf(input);
  const plate = drafted(input, clocking.turn);
  const around = aroundOf(input, clocking.turn);
  const known: Walls = { fixed: wallsWithin(plate), fixedRoom: fixedRoomOf(plate, around) };
  if (!fits({ ligament: leastWall(known, clocking), room: leastRoom(known, clocking) })) return undefined;
  const laid = laidAt({ plate, clocking, around });
  return fits(laid) ? laid : undefined;
}

function clockingOf(input: LayoutInput): Clocking {
  const task = turnTask(drafted(input, 0), aroundOf(input, 0));
  return input.clocking === undefined ? solveClocking(task) : clockingAt(task, input.clocking);
}

function laidAt({ plate, clocking, around }: Pick<Layout, 'plate' | 'clocking'> & { readonly around: Around }): Layout {
  const last = wallsOf(plate, around);
  return { plate, clocking, ligament: leastWall(last, clocking), room: leastRoom(last, clocking) };
}

function leastWall({ fixed }: Walls, { wall }: Clocking): Named {
  return leastOf([...fixed, { what: 'nut holes and carriage holes, edge or cut-outs', gap: wall }]);
}

function leastRoom({ fixedRoom }: Walls, { room }: Clocking): Named {
  return leastOf([...fixedRoom, { what: 'heads and tools', gap: room }]);
}

function leastOf(named: readonly Named[]): Named {
  return named.reduce((least, one) => (one.gap < least.gap ? one : least));
}

function aroundOf({ nut, carriage }: LayoutInput, turn: number): Around {
  return {
    ...(nut ? { nut: seatedNut(nut, turn) } : {}),
    ...(carriage.bore === undefined ? {} : { carriageBore: { diameter: carriage.bore, center: carriage.center } }),
  };
}

/** The nut as an obstacle. Where it screws into the plate, or into a nut held in it, it can be fitted last. */
function seatedNut({ seat, flange, hole }: NonNullable<LayoutInput['nut']>, turn: number): SeatedNut {
  const inside = insideFlangeOf(flange);
  const holds: readonly Joint[] = ['insert', 'tapped', 'hexagon'];
  const fitsLast = holds.includes(hole.joint);
  return {
    seat,
    ...(flange.shape === 'round' && flange.flats === undefined ? { roundFlange: flange.size[0] } : {}),
    insideFlange: (point) => inside(turned(point, -turn)),
    fitsLast,
    headsOutside: seat === 'outside' || hole.joint === 'through',
    hardwareOnCarriageFace: hole.joint === 'through' && seat === 'outside',
  };
}

function drafted(input: LayoutInput, turn: number): PlateSizes {
  const { nut, carriage, thickness, bore, outerStep, innerStep, catchPocket, roof } = input;
  const centres = nut?.centres.map((centre) => turned(centre, turn));
  const rim = input.rim && rimOf(input.rim, bore, { nut, centres });
  const nutHoles =
    nut && centres && patternHoles({ ...nut, centres }, nutMouth(nut), { ...facesOf(input, rim, centres), roof });
  const carriageHoles = patternHoles(carriage, carriageMouth(carriage.hole.joint), { from: 0, to: thickness, roof });
  const keys = input.keys.map((key) => ({ ...key, center: turned(key.center, turn), turn: key.turn + turn }));
  const both = nutHoles && nutHoles.centres.length > 0 ? [nutHoles, carriageHoles] : [carriageHoles];
  return {
    outline: outlineOf(input, both, { rim, keys }),
    flats: input.flats,
    cutouts: input.cutouts,
    thickness,
    relief: input.relief,
    bore,
    ...(outerStep ? { outerStep } : {}),
    ...(innerStep ? { innerStep } : {}),
    ...(rim ? { rim } : {}),
    keys,
    ...(catchPocket ? { catchPocket: { ...catchPocket, turn } } : {}),
    ...(nutHoles && nutHoles.centres.length > 0 ? { nutHoles } : {}),
    carriageHoles,
  };
}

/** The face on which a pocket or a mouth opens: what holds a thread opens to the nut, what holds a head away from it. */
function nutMouth({ seat, hole }: NonNullable<LayoutInput['nut']>): 'low' | 'high' {
  const toNut = holdsThread(hole.joint) || hole.joint === 'through';
  return toNut === (seat === 'outside') ? 'high' : 'low';
}

function carriageMouth(joint: Joint): 'low' | 'high' {
  return holdsThread(joint) ? 'low' : 'high';
}

/** Faces between which the nut's holes run: steps and a solid rim move them. */
function facesOf(input: LayoutInput, rim: Rim | undefined, centres: readonly Point[]) {
  const { outerStep, innerStep, thickness, bore } = input;
  const within = (step: Step | undefined) =>
    step !== undefined &&
    centres.every(([x, y]) => Math.hypot(x - step.center[0], y - step.center[1]) < step.diameter / 2);
  const throughRim =
    rim !== undefined &&
    isSolidRim(rim, bore) &&
    centres.every(([x, y]) => Math.hypot(x - rim.center[0], y - rim.center[1]) < rim.outer / 2);
  return {
    from: throughRim ? -rim.height : innerStep && within(innerStep) ? innerStep.depth : 0,
    to: outerStep && within(outerStep) ? thickness - outerStep.depth : thickness,
  };
}

/** A ring that the bore or the nut's holes would cut is made solid down to the bore instead, so that they go through it. */
function rimOf(
  { outer, height, center }: NonNullable<LayoutInput['rim']>,
  bore: number,
  { nut, centres }: { nut: LayoutInput['nut']; centres: readonly Point[] | undefined },
): Rim {
  const flange = nut?.seat === 'carriage' ? Math.max(...nut.flange.size) + 0.6 : 0;
  const hollow = Math.max(bore, flange, outer - 2 * RING_WALL);
  const centred = center[0] === 0 && center[1] === 0;
  // a bore that would stand under the ring goes through it instead
  const inner = hollow / 2 >= Math.hypot(...center) + bore / 2 ? hollow : bore;
  if (!nut || !centres || !centred || flange > 0) return { outer, inner, height, center };
  const radius = widest(patternHoles({ ...nut, centres }, nutMouth(nut), { from: 0, to: 1000 }));
  const cut = centres.some(
    (centre) => Math.hypot(...centre) + radius > inner / 2 && Math.hypot(...centre) - radius < outer / 2,
  );
  return { outer, inner: cut ? bore : inner, height, center };
}

function patternHoles(
  { centres, isRectangle, hole, clamped }: PatternInput,
  opens: 'low' | 'high',
  { from, to, roof }: { from: number; to: number; roof?: Roof | undefined },
): PatternHoles {
  const plain = pocketOf(hole);
  const pocket = plain && (hole.joint === 'hexagon' ? nutPocket(plain, hole, to - from, clamped) : plain);
  const reach = hole.screw !== undefined && holdsThread(hole.joint) ? threadReach(hole.screw) + 1 : Infinity;
  return {
    centres,
    ...(isRectangle ? { isRectangle } : {}),
    hole,
    opens,
    from,
    to,
    ...(pocket ? { pocket } : {}),
    ...(pocket && roof && takesRoof(to - from - pocket.depth, roof) ? { roof: roof.kind } : {}),
    ...(to - from - reach >= BLIND_FLOOR ? { blind: reach } : {}),
  };
}

/** A nut's pocket is sunk until a usual screw ends a pitch past the nut and not past the face. */
function nutPocket(pocket: Pocket, { screw }: JointHole, depth: number, clamped: number | undefined): Pocket {
  if (screw === undefined || clamped === undefined) return pocket;
  const needs = hexNut(screw).height + fastenerThread(screw).pitch;
  const length = screwLengthWithin(screw, clamped + needs, clamped + depth);
  return length === undefined ? pocket : { ...pocket, depth: clamped + depth - length + needs };
}

/** Least thickness in which a joint finds its room. */
export function thicknessFor({ joint, screw, roof }: JointHole): number {
  if (screw === undefined) return 4;
  const floor = 1.6;
  const hexagon = hexNut(screw).height + fastenerThread(screw).pitch + 2 + floor;
  const pocket = pocketOf({ joint, screw, diameter: 1, ...(roof ? { roof } : {}) });
  const needs: Record<Joint, number> = {
    through: 4,
    counterbore: (pocket?.depth ?? 0) + 2,
    hexagon,
    insert: threadReach(screw),
    tapped: threadReach(screw),
  };
  return Math.max(4, needs[joint]);
}

function outlineOf(
  { outline, bore, outerStep, innerStep, catchPocket }: LayoutInput,
  both: readonly PatternHoles[],
  { rim, keys }: { readonly rim: Rim | undefined; readonly keys: readonly Key[] },
): OutlinePlan {
  if (outline.shape !== 'hull') return outline;
  const rounds = [
    { at: [0, 0] as const, radius: bore / 2 },
    ...[outerStep, innerStep].flatMap((step) => (step ? [{ at: step.center, radius: step.diameter / 2 }] : [])),
    ...(rim ? [{ at: rim.center, radius: rim.outer / 2 }] : []),
    ...(catchPocket ? [{ at: [0, 0] as const, radius: nutPocketReach(catchPocket) }] : []),
    ...keys.flatMap((key) => keyOutline(key).map((at) => ({ at, radius: 0 }))),
    ...both.flatMap((holes) => holes.centres.map((at) => ({ at, radius: Math.max(widest(holes), headRim(holes)) }))),
  ];
  return { shape: 'hull', discs: rounds.map(({ at, radius }) => ({ at, radius: radius + outline.rim })) };
}

/** Half a hole and a diameter of the screw around it: with the rim, one and a half diameters to the edge. */
function headRim({ hole }: PatternHoles): number {
  return hole.screw === undefined ? 0 : fastenerThread(hole.screw).diameter * 0.75;
}
