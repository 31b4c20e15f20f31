import { onceFor } from '../units/once.js';
import { requireNotNegative, requirePositive, requireWhole } from '../units/require.js';
import { cosd, sind } from './angles.js';
import type { Kernel, Pose } from './kernel.js';
import { cornerRadius } from './outline.js';
import { cylinder, type Shape } from './recipe.js';
import type { ThreadSweep } from './thread-sweep.js';

/** Common volume up to this counts as none, mm³. A gap gives exactly 0; a crest 0.001 mm too high gives above 0.001. */
export const NO_COMMON_VOLUME = 1e-6;

/**
 * The poses of a screw in its nut: centred and pushed either way by 0.9 of half the play, each with its columns
 * aligned and half a column off. The turned screw is moved along its helix, so it is the same pose on the helix.
 *
 *     rise = ± lead / (2·columns), up for a right-hand thread
 *
 * @param mate.play     total axial play, c·tan(flank) + a             [mm]  a negative one is taken as 0
 * @param mate.lead     pitch × starts                                 [mm]  above 0
 * @param mate.columns  columns of both threads                        [-]
 * @param mate.hand     right or left
 * @returns six poses of the screw  [mm, degrees]
 * @throws InputError  lead or columns is out of its range
 * @example matePoses({ play: 0.2, lead: 2, columns: 96, hand: 'right' })[1] // { by: [0, 0, 0.09], turn: 0 }
 */
export function matePoses(mate: {
  readonly play: number;
  readonly lead: number;
  readonly columns: number;
  readonly hand: 'right' | 'left';
}): Pose[] {
  requirePositive('lead', mate.lead);
  requireWhole('columns', mate.columns, 4, 10_000);
  const push = (0.9 * Math.max(0, mate.play)) / 2;
  const rise = ((mate.hand === 'left' ? -1 : 1) * mate.lead) / (2 * mate.columns);
  return [
    { turn: 0, up: 0 },
    { turn: 180 / mate.columns, up: rise },
  ].flatMap(({ turn, up }) => [0, push, -push].map((shift): Pose => ({ by: [0, 0, up + shift], turn })));
}

/** A nut's thread and its screw, drawn apart in the same phase. */
export interface ThreadMate {
  /** what the nut cuts away, at finished sizes less their uncertainty; airSide inside */
  readonly nut: ThreadSweep;
  /** the screw at its largest; airSide outside, drawn circumscribed */
  readonly screw: ThreadSweep;
  /** total axial play, mm */
  readonly play: number;
  /** length of nut that is tried, mm; default 2 pitches. One pitch already holds every relation of the two */
  readonly length?: number;
}

/**
 * Tries a screw in its nut in the six poses of {@link matePoses}.
 *
 * @param kernel  the boolean kernel
 * @param mate    both threads and the play between them  [mm]
 * @returns the greatest volume in common over all poses, 0 where they never meet  [mm³]
 * @throws InputError  a thread is out of its range
 * @example mateThreads(kernel, { nut, screw, play: 0.18 }) // 0
 */
export function mateThreads(kernel: Kernel, mate: ThreadMate): number {
  const known = triedBy(kernel);
  const key = JSON.stringify(mate);
  const common = known.get(key) ?? tryMate(kernel, mate);
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, common);
  return common;
}

/** Threads that a kernel has tried, by their figures: parts of a fleet share few of them. */
const triedBy = onceFor((_kernel: Kernel) => new Map<string, number>());

/** Some kilobytes each. */
const MOST_KNOWN = 1000;

function tryMate(kernel: Kernel, { nut, screw, play, length = 2 * nut.pitch }: ThreadMate): number {
  requireNotNegative('length', length);
  const { pitch, starts, columns, hand } = screw;
  const poses = matePoses({ play, lead: pitch * starts, columns, hand });
  const share = isOneHelix(nut, screw, length) ? 1 / columns : 1;
  const { nutShape, screwShape } = mateShapes(nut, screw, length, share);
  return Math.max(...kernel.commonVolumes(nutShape, screwShape, poses)) / share;
}

/**
 * Whether both threads are carried into themselves by a turn of one column and its climb, and the nut by a pitch. A
 * column then holds what every other one holds, moved up, so that
 *
 *     volume in common over the turn = columns × that over one column, wherever it begins
 */
function isOneHelix(nut: ThreadSweep, screw: ThreadSweep, length: number): boolean {
  const pitches = length / nut.pitch;
  return (
    nut.pitch === screw.pitch &&
    nut.starts === screw.starts &&
    nut.hand === screw.hand &&
    nut.columns === screw.columns &&
    pitches > 0.5 &&
    Math.abs(pitches - Math.round(pitches)) < 1e-9
  );
}

/**
 * A ring with the nut's thread from z = 0 to `length`, or one column's share of it, and a screw that stands out at both
 * ends by more than any play.
 */
function mateShapes(
  nut: ThreadSweep,
  screw: ThreadSweep,
  length: number,
  share: number,
): { nutShape: Shape; screwShape: Shape } {
  const beyond = nut.pitch / 4;
  const widest = Math.max(...[...nut.ridge, ...screw.ridge].map(([, radius]) => radius));
  const blank =
    share < 1
      ? wedge(nut, widest + beyond, length)
      : cylinder({ radius: widest + beyond, sides: nut.columns, circumscribed: true, from: 0, to: length });
  return {
    nutShape: {
      kind: 'difference',
      of: [blank, { kind: 'thread', thread: { ...nut, from: -beyond, to: length + beyond } }],
    },
    screwShape: { kind: 'thread', thread: { ...screw, from: -2 * beyond, to: length + 2 * beyond } },
  };
}

/** Where a wedge begins, in columns: clear of the columns of a nut and of a screw that stands half a column off. */
const WEDGE_START = 0.25;

/**
 * One column's share of a ring, from well inside the thread outwards, to be cut by the thread.
 *
 * @param thread  the nut's thread   [mm]
 * @param radius  of the ring        [mm]
 * @param length  from z = 0         [mm]
 */
export function wedge(
  { ridge, columns }: Pick<ThreadSweep, 'ridge' | 'columns'>,
  radius: number,
  length: number,
): Shape {
  const inner = Math.min(...ridge.map(([, r]) => r)) / 2;
  const outer = cornerRadius(radius, columns, true);
  const at = (r: number, column: number) =>
    [r * cosd((360 * column) / columns), r * sind((360 * column) / columns)] as const;
  const [from, to] = [WEDGE_START, WEDGE_START + 1];
  return {
    kind: 'prism',
    outlines: [[at(inner, from), at(outer, from), at(outer, to), at(inner, to)]],
    from: 0,
    to: length,
  };
}
