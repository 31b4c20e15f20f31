import type { z } from 'zod';
import type { Remedy, Tunable } from '../judge/advice.js';
import type { CheckFacts, Finding } from '../judge/check.js';
import { limitsInForce } from '../judge/limits-in-force.js';
import type { Question } from '../judge/question.js';
import { type LimitChanges, runChecks } from '../judge/run-checks.js';
import type { DesignBase, Particulars, PartKind, PlannedBody } from '../parts/part-kind.js';
import type { PartViews, SizeChoice } from '../parts/part-views.js';
import { withFields } from '../parts/size-field.js';
import type { PresetTexts } from '../presets/texts.js';
import { validate } from '../sheet/validate.js';
import type { Kernel } from '../solid/kernel.js';
import type { Knob } from './advice/knob.js';
import type { Locate } from './locate-faults.js';

/** A sheet that its kind has accepted, ready to be worked out. */
export interface KnownSheet {
  readonly design: (presets: PresetTexts) => DesignBase;
}

/** A part kind whose sheet and design types stay inside, so that kinds can stand in one list. */
export interface KnownKind {
  readonly kind: string;
  /** the kind whose shape and checks it has, under a name of its own */
  readonly formOf?: string;
  readonly schema: z.ZodType;
  readonly checks: readonly CheckFacts[];
  readonly questions: readonly Question[];
  readonly promise?: string;
  /** @throws InputError every mistake of the sheet at once */
  readonly read: (value: unknown, locate: Locate) => KnownSheet;
  /** findings of all checks that apply, or of one alone */
  readonly runChecks: (design: DesignBase, changes: LimitChanges, only?: string) => Finding[];
  readonly particulars: (design: DesignBase) => Particulars;
  readonly bodies: (design: DesignBase, sizes?: SizeChoice) => readonly PlannedBody[];
  readonly mate: (design: DesignBase, kernel: Kernel) => readonly Finding[];
  /** findings of the part as printed, on solids; none where the kind has no such test */
  readonly virtualMate: (design: DesignBase, kernel: Kernel) => readonly Finding[];
  /** fields that advice may change, with their present values */
  readonly tunables: (design: DesignBase) => readonly Knob[];
  /** ways to cure what does not pass, yet to be tried */
  readonly remedies: (design: DesignBase, changes: LimitChanges) => readonly Remedy[];
  readonly views: (design: DesignBase, sizes: SizeChoice) => PartViews;
}

/** Closes a part kind over its types. */
export function knownKind<Sheet, Design extends DesignBase>(kind: PartKind<Sheet, Design>): KnownKind {
  const own = (design: DesignBase): Design => {
    if (!isOf(kind, design)) throw new TypeError(`a ${design.part} design was handed to the ${kind.kind} kind`);
    return design;
  };
  return {
    kind: kind.kind,
    ...(kind.formOf === undefined ? {} : { formOf: kind.formOf }),
    schema: kind.schema,
    checks: kind.checks,
    questions: kind.questions,
    ...(kind.promise === undefined ? {} : { promise: kind.promise }),
    read: (value, locate) => {
      const sheet = validate(kind.schema, value, locate);
      return { design: (presets) => kind.design(sheet, presets) };
    },
    runChecks: (design, changes, only) => runChecks(chosen(kind.checks, only), own(design), changes),
    particulars: (design) => kind.particulars(own(design)),
    bodies: (design, sizes) => kind.bodies(own(design), sizes),
    mate: (design, kernel) => kind.mate(own(design), kernel),
    virtualMate: (design, kernel) => kind.virtualMate?.(own(design), kernel) ?? [],
    tunables: (design) => (kind.tunables ?? []).flatMap((one) => knobOf(one, own(design))),
    remedies: (design, changes) =>
      Object.entries(kind.remedies ?? {}).flatMap(([id, remediesOf]) => {
        const check = kind.checks.find((one) => one.id === id);
        const [row] = check ? runChecks([check], own(design), changes) : [];
        return !row || row.verdict === 'pass' ? [] : remediesOf(own(design), limitsInForce(check?.limits, changes[id]));
      }),
    views: (design, sizes) => withFields(kind.views(own(design), sizes), (name) => kind.sizeField(name, own(design))),
  };
}

/** A field with its present value; none where the design has no such thing. */
function knobOf<Design>(tunable: Tunable<Design>, design: Design): Knob[] {
  if ('words' in tunable) {
    const now = tunable.now(design);
    return now === undefined ? [] : [{ ...tunable, now }];
  }
  const now = tunable.now(design);
  return now === undefined ? [] : [{ ...tunable, now }];
}

/** The checks, or the one that is asked for. */
export function chosen<One extends { readonly id: string }>(checks: readonly One[], only?: string): readonly One[] {
  return only === undefined ? checks : checks.filter(({ id }) => id === only);
}

/** A design says which kind made it. */
function isOf<Sheet, Design extends DesignBase>(kind: PartKind<Sheet, Design>, design: DesignBase): design is Design {
  return design.part === kind.kind;
}
