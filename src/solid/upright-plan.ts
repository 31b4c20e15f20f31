import { unitAt } from './angles.js';
import { placementMatrix } from './mesh.js';
import { nestedLoops } from './nested-loops.js';
import { cornerRadius, type Outline, polygonArea } from './outline.js';
import { type Join, loopOf } from './prism-mesh.js';
import type { Prism, Shape, Strokes } from './recipe.js';
import { type StandingBore, standingBore } from './stitch-bore.js';

/** Heights nearer than this are one, mm. */
const TOGETHER = 1e-9;
/** Other heights nearer than this are left to the kernel, mm. */
const APART = 1e-3;

/** A body of upright prisms and threaded bores whose outlines, seen from above, neither cross nor touch. */
export interface UprightPlan {
  /** all outlines, each the rim between the cell within it and the cell around it */
  readonly loops: readonly Loop[];
  /** heights at which anything begins or ends, upwards [mm] */
  readonly levels: readonly number[];
  /**
   * a cell a loop, and the outside last: 1 where there is solid below a level and above the one before, one value a
   * level and one more, the first and the last 0
   */
  readonly cells: readonly Uint8Array[];
}

export interface Loop {
  /** counter-clockwise, but for left-handed bores [mm] */
  readonly points: Outline;
  /** the cell around it */
  readonly around: number;
  /** the bore that it is the rim of */
  readonly bore?: StandingBore;
}

/** A wall on a loop, from one level to another: 1 where the solid is within, −1 where it is around. */
export interface Span {
  readonly low: number;
  readonly high: number;
  readonly side: number;
}

/**
 * Reads such a body from a recipe.
 * @returns undefined where the recipe holds anything else, or outlines meet
 */
export function uprightPlan(shape: Shape, join: Join): UprightPlan | undefined {
  const leaves: Leaf[] = [];
  const isSolid = tellerOf(shape, leaves);
  const levels = isSolid && levelsOf(leaves);
  if (!levels) return undefined;
  const rims = leaves.flatMap((leaf, index) => rimsOf(leaf, join).map((points) => ({ leaf: index, points })));
  const around = nestedLoops(rims.map(({ points }) => points));
  if (!around) return undefined;
  const within = rims.map((_, cell) => leavesAround(cell, rims, around, leaves.length));
  const cells = [...within, new Uint8Array(leaves.length)].map((held) => solidOf(held, { leaves, levels, isSolid }));
  const loops = rims.map(({ leaf, points }, i): Loop => {
    const { bore } = leaves[leaf]!;
    return { points, around: around[i]! < 0 ? rims.length : around[i]!, ...(bore ? { bore } : {}) };
  });
  return { loops, levels, cells };
}

interface Leaf {
  readonly from: number;
  readonly to: number;
  readonly shape?: Prism | Strokes;
  readonly bore?: StandingBore;
}

/** Whether there is solid where a place lies within some of the leaves. */
type IsSolid = (within: Uint8Array) => boolean;

/** Lists the leaves of a recipe; undefined where one is no upright prism and no threaded bore. */
function tellerOf(shape: Shape, leaves: Leaf[]): IsSolid | undefined {
  const bore = standingBore(shape);
  if (bore) return bore.moves.some(({ tilt }) => tilt) ? undefined : leafTeller(boreLeaf(bore), leaves);
  switch (shape.kind) {
    case 'feature':
      return tellerOf(shape.shape, leaves);
    case 'prism':
    case 'strokes':
      return shape.outlines.length === 0 ? undefined : leafTeller({ from: shape.from, to: shape.to, shape }, leaves);
    case 'union':
    case 'difference':
    case 'intersection':
      return tellerOfMany(shape, leaves);
    default:
      return undefined;
  }
}

function leafTeller(leaf: Leaf, leaves: Leaf[]): IsSolid {
  const index = leaves.push(leaf) - 1;
  return (within) => within[index] === 1;
}

function tellerOfMany({ kind, of }: Extract<Shape, { of: unknown }>, leaves: Leaf[]): IsSolid | undefined {
  const tellers: IsSolid[] = [];
  for (const shape of of) {
    const teller = tellerOf(shape, leaves);
    if (!teller) return undefined;
    tellers.push(teller);
  }
  const [first, ...others] = tellers;
  if (!first) return undefined;
  if (kind === 'union') return (within) => tellers.some((is) => is(within));
  if (kind === 'intersection') return (within) => tellers.every((is) => is(within));
  return (within) => first(within) && !others.some((is) => is(within));
}

function boreLeaf(bore: StandingBore): Leaf {
  const { contour } = bore.plug;
  return { from: contour[0]![1] + liftOf(bore), to: contour.at(-1)![1] + liftOf(bore), bore };
}

/** How far a bore stands over where it is drawn [mm]. */
export function liftOf({ moves }: StandingBore): number {
  return moves.reduce((sum, { by }) => sum + (by?.[2] ?? 0), 0);
}

/** A ring about a bore where it is drawn, right-handed, corner by corner on its columns [mm]. */
export function ringAtHome({ plug: { sides, circumscribed } }: StandingBore, radius: number): Outline {
  const reach = cornerRadius(radius, sides, circumscribed);
  return Array.from({ length: sides }, (_, i): readonly [number, number] => {
    const [c, s] = unitAt(i, sides);
    return [reach * c, reach * s];
  });
}

/** The same ring in the body; that of a left-handed bore, which is a mirrored one, runs clockwise [mm]. */
export function ringInBody({ bore, moves }: StandingBore, ring: Outline): Outline {
  const side = bore.thread.hand === 'left' ? -1 : 1;
  const matrices = moves.map(placementMatrix);
  return ring.map(([u, v]) =>
    matrices.reduce<readonly [number, number]>(
      ([x, y], m) => [m[0]! * x + m[1]! * y + m[3]!, m[4]! * x + m[5]! * y + m[7]!],
      [u, side * v],
    ),
  );
}

function rimsOf({ shape, bore }: Leaf, join: Join): Outline[] {
  if (bore) return [ringInBody(bore, ringAtHome(bore, bore.plug.contour[1]![0]))];
  const outlines = shape!.outlines.map((outline) => loopOf(outline, false));
  return shape!.kind === 'prism' ? outlines : join(outlines).map(counterClockwise);
}

function counterClockwise(loop: Outline): Outline {
  return polygonArea(loop) < 0 ? [...loop].reverse() : loop;
}

/** Where leaves begin and end; undefined where two such heights are all but one. */
function levelsOf(leaves: readonly Leaf[]): number[] | undefined {
  const heights = leaves.flatMap(({ from, to }) => [from, to]).sort((a, b) => a - b);
  const levels = heights.filter((z, i) => i === 0 || z - heights[i - 1]! > TOGETHER);
  const isClear = levels.every((z, i) => i === 0 || z - levels[i - 1]! > APART);
  return isClear && leaves.every(({ from, to }) => to > from) ? levels : undefined;
}

/** The leaves that a cell lies in: those with an odd number of loops around it. */
function leavesAround(
  cell: number,
  rims: readonly { readonly leaf: number }[],
  around: readonly number[],
  count: number,
): Uint8Array {
  const held = new Uint8Array(count);
  for (let at = cell; at >= 0; at = around[at]!) held[rims[at]!.leaf]! ^= 1;
  return held;
}

function solidOf(
  held: Uint8Array,
  {
    leaves,
    levels,
    isSolid,
  }: { readonly leaves: readonly Leaf[]; readonly levels: readonly number[]; isSolid: IsSolid },
): Uint8Array {
  const solid = new Uint8Array(levels.length + 1);
  for (let i = 1; i < levels.length; i++) {
    const middle = (levels[i - 1]! + levels[i]!) / 2;
    const within = held.map((is, leaf) =>
      is === 1 && leaves[leaf]!.from < middle && leaves[leaf]!.to > middle ? 1 : 0,
    );
    solid[i] = isSolid(within) ? 1 : 0;
  }
  return solid;
}
