import { type Identification, identify } from '../../../src/identify/identify.js';
import type { Readings } from '../../../src/identify/readings.js';
import type { Acceptance } from '../../../src/judge/accept.js';
import type { Advice } from '../../../src/judge/advice.js';
import { fitPicture } from '../../../src/output/page/fit-picture.js';
import type { Report } from '../../../src/output/report.js';
import { drawViews } from '../../../src/parts/draw-views.js';
import type { DrawnView } from '../../../src/parts/part-views.js';
import { advise } from '../../../src/pipeline/advise.js';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { kindOfDesign } from '../../../src/pipeline/find-kind.js';
import { KINDS } from '../../../src/pipeline/kinds.js';
import { makePart } from '../../../src/pipeline/make.js';
import { SolidFault } from '../../../src/pipeline/solid-fault.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { createKernel, type Kernel } from '../../../src/solid/kernel.js';
import { type Fault, InputError } from '../../../src/units/faults.js';

/** What a sheet is found to be: its mistakes, or the report. */
export type Judged =
  | { readonly mistakes: readonly Fault[] }
  | {
      readonly report: Report;
      /** the thread enlarged, of a part that has one */
      readonly fit: string;
    };

/** What was made of a sheet. */
export type Made =
  | { readonly files: readonly { readonly name: string; readonly bytes: Uint8Array }[]; readonly report: Report }
  | { readonly refused: string };

/** What was read off a screw, or the mistakes of the readings. */
export type Named = Identification | { readonly mistakes: readonly Fault[] };

/** The tool without a screen: what a page asks of it, each answer plain data. */
export interface Engine {
  /** the commented sheet that a kind of part starts from */
  start(kind: string): string;
  judge(sheet: string, accept?: readonly Acceptance[]): Judged;
  name(readings: Readings): Named;
  cures(sheet: string): Advice;
  /** the section of a sheet's part, at finished sizes; undefined where the sheet has mistakes */
  draw(sheet: string): Promise<DrawnView | undefined>;
  make(sheet: string, accept?: readonly Acceptance[]): Promise<Made>;
}

/** The files of a part, as the command writes them. */
const FORMATS = ['stl', '3mf', 'drawing', 'page'] as const;

/**
 * The engine of a page.
 *
 * @param wasm the kernel's bytes; the kernel is loaded when the first solid is asked for
 * @returns answers that are plain data; mistakes of a sheet are answers, not errors
 */
export function createEngine(wasm: () => Promise<ArrayBuffer>): Engine {
  let loading: Promise<Kernel> | undefined;
  const kernel = () => {
    loading ??= wasm().then((bytes) => createKernel({ wasm: bytes }));
    return loading;
  };
  return {
    start: startSheet,
    judge: (sheet, accept = []) =>
      orMistakes(() => {
        const report = check(design(sheet), { accept });
        return { report, fit: fitPicture(report) };
      }),
    name: (readings) => orMistakes(() => identify(readings)),
    cures: (sheet) => advise(sheet),
    draw: async (sheet) => {
      const fuser = await kernel();
      const views = orMistakes(() => {
        const made = design(sheet);
        return kindOfDesign(KINDS, made).views(made, 'finished');
      });
      return 'mistakes' in views ? undefined : drawViews(fuser, views).side;
    },
    make: async (sheet, accept = []) => {
      try {
        return await makePart(sheet, { kernel: kernel(), formats: FORMATS, accept });
      } catch (error) {
        if (error instanceof InputError || error instanceof SolidFault) return { refused: error.message };
        throw error;
      }
    },
  };
}

function orMistakes<Value>(work: () => Value): Value | { readonly mistakes: readonly Fault[] } {
  try {
    return work();
  } catch (error) {
    if (error instanceof InputError) return { mistakes: error.faults };
    throw error;
  }
}
