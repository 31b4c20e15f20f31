import { stringify } from 'yaml';
import { partOfAxis } from '../../../src/axis/accept.js';
import { adviseAxis } from '../../../src/axis/advise.js';
import { checkAny, designAny, isAxis } from '../../../src/axis/any.js';
import type { AxisDesign } from '../../../src/axis/axis-design.js';
import { designAxis, isAxisSheet } from '../../../src/axis/design.js';
import { makeAxis } from '../../../src/axis/make.js';
import { type Identification, identify } from '../../../src/identify/identify.js';
import type { Readings } from '../../../src/identify/readings.js';
import type { Acceptance } from '../../../src/judge/accept.js';
import type { Advice } from '../../../src/judge/advice.js';
import { fitPicture } from '../../../src/output/page/fit-picture.js';
import type { Report } from '../../../src/output/report.js';
import { drawViews } from '../../../src/parts/draw-views.js';
import type { DrawnView, PartViews } from '../../../src/parts/part-views.js';
import { sketchView } from '../../../src/parts/sketch-view.js';
import { advise } from '../../../src/pipeline/advise.js';
import type { NamedScrews } from '../../../src/pipeline/compare-named.js';
import { type DesignOptions, design } from '../../../src/pipeline/design.js';
import { exactRequest } from '../../../src/pipeline/exact-request.js';
import { kindOfDesign } from '../../../src/pipeline/find-kind.js';
import { KINDS } from '../../../src/pipeline/kinds.js';
import { makePart } from '../../../src/pipeline/make.js';
import { newResults } from '../../../src/pipeline/new-results.js';
import { newTrial } from '../../../src/pipeline/new-trial.js';
import { SolidFault } from '../../../src/pipeline/solid-fault.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import type { ExactRequest } from '../../../src/solid/exact/exact-part.js';
import { createKernel, type Kernel } from '../../../src/solid/kernel.js';
import { type Fault, InputError } from '../../../src/units/faults.js';
import { type SideBySide, sideBySide } from './compare.js';
import { type Learned, learn, type Profiles } from './learn.js';

/** What a sheet is found to be: its mistakes, or the report. */
export type Judged =
  | Mistaken
  | {
      readonly report: Report;
      /** the thread enlarged, of a part that has one */
      readonly fit: string;
      /** of an axis: each of its parts with its whole sheet, by the name of its row among the questions */
      readonly parts?: readonly { readonly role: string; readonly sheet: string }[];
    };

/** What was made of a sheet. */
export type Made =
  | { readonly files: readonly { readonly name: string; readonly bytes: Uint8Array }[]; readonly report: Report }
  | { readonly refused: string };

/** What was read off a screw, or the mistakes of the readings. */
export type Named = Identification | Mistaken;

/** What a part is made by. */
export interface Told {
  readonly sheet: string;
  /** failed checks that are taken all the same */
  readonly accepted?: readonly Acceptance[];
  /** what is known of printers, by name */
  readonly profiles?: Profiles;
}

/** The tool without a screen: what a page asks of it, each answer plain data. */
export interface Engine {
  /** the commented sheet that a kind of part starts from */
  start(kind: string): string;
  judge(told: Told): Judged;
  name(readings: Readings): Named;
  /** screws side by side */
  compare(asked: NamedScrews): SideBySide | Mistaken;
  cures(told: Told): Advice;
  /** the section at finished sizes, at once; undefined where the sheet has mistakes or its part no section */
  sketch(told: Told): DrawnView | undefined;
  /** a sheet's part at finished sizes; undefined where the sheet has mistakes */
  draw(told: Told): Promise<Pictures | Pictureless | undefined>;
  /** the files of a part; those of the slicer alone where that is asked for, as they come soonest */
  make(told: Told, which: 'stl' | 'all'): Promise<Made>;
  /** what the exact bodies of a part at finished sizes are built from */
  exact(told: Told): Promise<{ readonly request: ExactRequest } | { readonly refused: string }>;
  /** what is to be looked at on the printed part; undefined where nothing is learned of it */
  form(told: Told): string | undefined;
  /** what a filled form says, and the profile that holds it from now on */
  learn(form: string, profiles: Profiles): Learned | Mistaken;
}

/** A part as it is drawn. */
export interface Pictures {
  readonly section: DrawnView;
  /** seen from +Z, and what stands apart: a detail of the thread, further plates */
  readonly others: readonly DrawnView[];
}

/** Why nothing can be drawn. */
export interface Pictureless {
  readonly why: string;
}

/** Mistakes in what was given. */
export interface Mistaken {
  readonly mistakes: readonly Fault[];
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
    loading ??= wasm()
      .then((bytes) => createKernel({ wasm: bytes }))
      .catch(() => {
        throw new NoKernel(NO_SOLIDS);
      });
    return loading;
  };
  return {
    start: startSheet,
    judge: (told) =>
      orMistakes(() => {
        const made = designAny(told.sheet, given(told));
        const report = checkAny(made, { accept: told.accepted ?? [] });
        return isAxis(made) ? ofAxis(report, made) : { report, fit: fitPicture(report) };
      }),
    name: (readings) => orMistakes(() => identify(readings)),
    compare: (asked) => orMistakes(() => sideBySide(asked)),
    cures: (told) => (isAxisSheet(told.sheet) ? adviseAxis : advise)(told.sheet, given(told)),
    sketch: (told) => {
      const views = orMistakes(() => viewsFor(told));
      return 'mistakes' in views ? undefined : sketchView(views.side);
    },
    draw: async (told) => {
      const fuser = await kernel().catch((error: Error) => error.message);
      if (typeof fuser === 'string') return { why: fuser };
      const views = orMistakes(() => viewsFor(told));
      if ('mistakes' in views) return undefined;
      const { side, end, further = [] } = drawViews(fuser, views);
      return { section: side, others: [end, ...further] };
    },
    make: async (told, which) => {
      try {
        const accept = told.accepted ?? [];
        const formats = which === 'all' ? FORMATS : (['stl'] as const);
        const options = { ...given(told), kernel: kernel(), formats, accept };
        const { files, report } = await (isAxisSheet(told.sheet)
          ? makeAxis(designAxis(told.sheet, given(told)), { ...options, flat: true })
          : makePart(told.sheet, options));
        // a report tells all files, so it comes with them
        return { report, files: which === 'all' ? files : files.filter(({ name }) => name.endsWith('.stl')) };
      } catch (error) {
        if (error instanceof InputError || error instanceof SolidFault || error instanceof NoKernel)
          return { refused: error.message };
        throw error;
      }
    },
    exact: async (told) => {
      try {
        const made = design(told.sheet, given(told));
        const by = { kind: kindOfDesign(KINDS, made), kernel: await kernel() };
        return { request: exactRequest(made, by, { sizes: 'finished', threads: 'exact' }) };
      } catch (error) {
        if (error instanceof InputError || error instanceof NoKernel) return { refused: error.message };
        throw error;
      }
    },
    form: (told) => {
      const form = orMistakes(() => FORMS[design(told.sheet, given(told)).part]?.(told.sheet, given(told)));
      return typeof form === 'object' ? undefined : form;
    },
    learn: (form, profiles) => orMistakes(() => learn(form, profiles)),
  };
}

const NO_SOLIDS =
  'this browser builds no solids (it has no WebAssembly, or not memory enough): questions and figures hold all the same; ' +
  'take the sheet along, leadwright make builds it';

class NoKernel extends Error {}

/** What each kind is asked once it is printed. */
const FORMS: Readonly<Record<string, (sheet: string, options: DesignOptions) => string>> = {
  coupon: newResults,
  nut: newTrial,
  'twin-nut': newTrial,
};

/** An axis with its parts: what was found of a part stands in the row that has its name. */
function ofAxis(report: Report, { parts }: AxisDesign): Judged {
  const checks = report.checks.map((one) => ({ ...one, question: partOfAxis(one.id)?.role ?? one.question }));
  return {
    report: { ...report, checks },
    fit: '',
    parts: parts.map(({ role, sheet }) => ({ role, sheet: stringify(sheet) })),
  };
}

/** A part as its kind asks for its drawing. */
function viewsFor(told: Told): PartViews {
  const made = design(told.sheet, given(told));
  return kindOfDesign(KINDS, made).views(made, 'finished');
}

/** Shipped presets, and the profiles beside them. */
function given({ profiles = {} }: Told): DesignOptions {
  const own = Object.entries(profiles).map(([name, text]) => [`profiles/${name}.yaml`, text]);
  return own.length === 0 ? {} : { presets: { ...SHIPPED, ...Object.fromEntries(own) } };
}

function orMistakes<Value>(work: () => Value): Value | Mistaken {
  try {
    return work();
  } catch (error) {
    if (error instanceof InputError) return { mistakes: error.faults };
    throw error;
  }
}
