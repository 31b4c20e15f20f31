import type { ToothForm } from '../../mechanics/thread/nut-thread.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { LoftLevel } from '../../solid/convex-loft.js';
import { circleOutline, sidesFor } from '../../solid/outline.js';
import { type Bore, printedBore } from '../common/bore.js';
import { boreCut } from '../common/bore-cut.js';
import type { BoreCut, Carved } from '../common/carved.js';
import { type Clamp, printedClamp } from '../common/clamp.js';
import { OVERSHOOT } from '../common/cut.js';
import { printSizes } from '../common/print-sizes.js';
import { threadInFile } from '../common/thread-in-file.js';

/** A collar, standing as it is printed. Sizes of one kind: finished or printed. */
export interface CollarPlan {
  readonly outside: number;
  readonly length: number;
  readonly chamfer: number;
  readonly slit: number;
  /** two halves, the slit between them; the clamp has its twin across the axis */
  readonly halves: boolean;
  /** a plain bore; of a threaded one the round that its thread takes, mouths included */
  readonly bore: Bore;
  readonly thread?: CollarThread;
  readonly clamp: Clamp;
  /** a hole along Y through the axis */
  readonly pin?: { readonly hole: number; readonly height: number };
  /** a recess in the upper face that centres the bearing's washer; none where the bearing runs on the lower face */
  readonly lip?: { readonly diameter: number; readonly depth: number };
}

/** The screw's own thread in a collar. */
export interface CollarThread {
  readonly tooth: ToothForm;
  readonly lead: number;
  /** past the thread, at either mouth */
  readonly leadIn: number;
}

/** Height at which the bore ends: at the lip's floor, or at the upper face. */
export function boreEnd({ length, lip }: Pick<CollarPlan, 'length' | 'lip'>): number {
  return length - (lip?.depth ?? 0);
}

/** Sizes of a collar as they must stand in the file. */
export function printedCollar(
  plan: CollarPlan,
  made: { readonly material: Material; readonly printer: Printer },
): CollarPlan {
  const sizes = printSizes(made.material, made.printer);
  const { inside, outside, along, across } = sizes;
  const { thread, pin, lip, halves } = plan;
  return {
    outside: outside(plan.outside),
    length: along(plan.length),
    chamfer: across(plan.chamfer),
    slit: inside(plan.slit),
    halves,
    bore: printedBore(plan.bore, sizes),
    ...(thread
      ? {
          thread: {
            tooth: threadInFile(thread.tooth, thread.lead, made),
            lead: along(thread.lead),
            leadIn: across(thread.leadIn),
          },
        }
      : {}),
    clamp: printedClamp(plan.clamp, sizes),
    ...(pin ? { pin: { hole: inside(pin.hole), height: along(pin.height) } } : {}),
    ...(lip ? { lip: { diameter: inside(lip.diameter), depth: along(lip.depth) } } : {}),
  };
}

/** The collar with everything that is cut into it but a thread. */
export function carvedCollar(plan: CollarPlan, chordError: number): Carved {
  const { outside, length, chamfer, slit, halves, clamp, pin } = plan;
  return {
    outline: circleOutline({ radius: outside / 2, sides: sidesFor(outside / 2, chordError) }),
    levels: [
      [0, -chamfer],
      [chamfer, 0],
      [length - chamfer, 0],
      [length, -chamfer],
    ],
    broken: [0, 2],
    bores: [...(plan.thread ? [] : [plainBore(plan, chordError)]), ...lipCut(plan, chordError)],
    slit: { width: slit, from: 0, to: length, ...(halves ? { through: true as const } : {}) },
    clamps: [clamp],
    ...(pin ? { pin } : {}),
    marks: [],
  };
}

function plainBore(plan: CollarPlan, chordError: number): BoreCut {
  const [end, { chamfer }] = [boreEnd(plan), plan];
  const levels: LoftLevel[] = [
    [-OVERSHOOT, chamfer + OVERSHOOT],
    [chamfer, 0],
    [end - chamfer, 0],
    [end + OVERSHOOT, chamfer + OVERSHOOT],
  ];
  const run = { levels, keywayEnds: [-OVERSHOOT, end + OVERSHOOT], ends: [0, end] } as const;
  return { ...boreCut(plan.bore, run, chordError), broken: [0, 2] };
}

function lipCut(plan: CollarPlan, chordError: number): BoreCut[] {
  const { lip, length, chamfer } = plan;
  if (!lip) return [];
  const floor = boreEnd(plan);
  const levels: LoftLevel[] = [
    [floor, 0],
    [length - chamfer, 0],
    [length + OVERSHOOT, chamfer + OVERSHOOT],
  ];
  const run = { levels, keywayEnds: [floor, length], ends: [floor, length] } as const;
  return [{ ...boreCut({ form: 'round', diameter: lip.diameter }, run, chordError), broken: [1] }];
}
