import type { LoftLevel } from '../../solid/convex-loft.js';
import { circleOutline, type Outline, sidesFor } from '../../solid/outline.js';
import { type Bore, printedBore } from '../common/bore.js';
import { boreCut, flatsBehindRound } from '../common/bore-cut.js';
import type { BoreCut, Carved } from '../common/carved.js';
import { type Clamp, printedClamp } from '../common/clamp.js';
import { OVERSHOOT } from '../common/cut.js';
import type { PrintSizes } from '../common/print-sizes.js';

/** One bore of a sleeve, from one end of it. Sizes of one kind: finished or printed. */
export interface SleeveBore {
  readonly bore: Bore;
  /** from its end of the sleeve to where the shaft stops; the whole length of a bush */
  readonly depth: number;
}

/** A sleeve, standing on its lower end. Sizes of one kind: finished or printed. */
export interface SleevePlan {
  readonly outside: number;
  readonly length: number;
  readonly chamfer: number;
  readonly slit: number;
  /** the lower bore, and of a clamp sleeve the wider upper one */
  readonly bores: readonly [SleeveBore, ...SleeveBore[]];
  /** web between the two bores: how much narrower its hole is than the lower bore, on the radius */
  readonly step: number;
  readonly clamps: readonly Clamp[];
}

/** What lies between its bores [mm]. */
export function webOf({ length, bores }: Pick<SleevePlan, 'length' | 'bores'>): number {
  return length - bores.reduce((sum, { depth }) => sum + depth, 0);
}

/** Sizes of a sleeve as they must stand in the file. */
export function printedSleeve(plan: SleevePlan, sizes: PrintSizes): SleevePlan {
  const [lower, upper] = plan.bores;
  const printed = ({ bore, depth }: SleeveBore): SleeveBore => ({
    bore: printedBore(bore, sizes),
    depth: sizes.along(depth),
  });
  return {
    outside: sizes.outside(plan.outside),
    length: sizes.along(plan.length),
    chamfer: sizes.across(plan.chamfer),
    slit: sizes.inside(plan.slit),
    bores: upper ? [printed(lower), printed(upper)] : [printed(lower)],
    step: sizes.across(plan.step),
    clamps: plan.clamps.map((clamp) => printedClamp(clamp, sizes)),
  };
}

/** The sleeve seen along its axis. */
function sleeveOutline({ outside }: SleevePlan, chordError: number): Outline {
  return circleOutline({ radius: outside / 2, sides: sidesFor(outside / 2, chordError) });
}

/** The sleeve with everything that is cut into it. */
export function carvedSleeve(plan: SleevePlan, chordError: number): Carved {
  const { length, chamfer, slit, clamps } = plan;
  return {
    outline: sleeveOutline(plan, chordError),
    levels: [
      [0, -chamfer],
      [chamfer, 0],
      [length - chamfer, 0],
      [length, -chamfer],
    ],
    broken: [0, 2],
    bores: boreCuts(plan, chordError),
    slit: { width: slit, from: 0, to: length },
    clamps,
    marks: [],
  };
}

function boreCuts({ bores: [lower, upper], length, chamfer, step }: SleevePlan, chordError: number): BoreCut[] {
  const mouth: LoftLevel[] = [
    [-OVERSHOOT, chamfer + OVERSHOOT],
    [chamfer, 0],
  ];
  const way: LoftLevel[] = [
    [length - chamfer, 0],
    [length + OVERSHOOT, chamfer + OVERSHOOT],
  ];
  if (!upper)
    return [
      {
        ...boreCut(
          lower.bore,
          { levels: [...mouth, ...way], keywayEnds: [-OVERSHOOT, length + OVERSHOOT], ends: [0, length] },
          chordError,
        ),
        broken: [0, 2],
      },
    ];
  const floor = length - upper.depth;
  const narrow: LoftLevel[] = [
    [lower.depth, 0],
    [lower.depth + step, -step],
    [floor + OVERSHOOT, -step],
  ];
  const low = boreCut(
    lower.bore,
    { levels: [...mouth, ...narrow], keywayEnds: [-OVERSHOOT, lower.depth], ends: [0, floor] },
    chordError,
  );
  const high = boreCut(
    upper.bore,
    { levels: [[floor, 0], ...way], keywayEnds: [floor, length + OVERSHOOT], ends: [floor, length] },
    chordError,
  );
  return [
    ...flatsBehindRound({ ...low, broken: [0] }, lower.bore, 'below', chordError),
    ...flatsBehindRound({ ...high, broken: [1] }, upper.bore, 'above', chordError),
  ];
}
