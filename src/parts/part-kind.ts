import type { z } from 'zod';
import type { DriveNumbers } from '../drive/numbers.js';
import type { FitBlock } from '../fit/stack/fit-block.js';
import type { Remedy, TriedRemedy, Tunable } from '../judge/advice.js';
import type { Check, Finding, LimitsInForce } from '../judge/check.js';
import type { Question } from '../judge/question.js';
import type { Printer } from '../presets/printer.js';
import type { ProfileUse } from '../presets/profile.js';
import type { PresetTexts } from '../presets/texts.js';
import type { Assumption } from '../sheet/assumptions.js';
import type { LimitsSheet } from '../sheet/sections/limits.js';
import type { Kernel } from '../solid/kernel.js';
import type { BodyRecipe } from '../solid/recipe.js';
import type { Wall } from './common/walls.js';
import type { PartViews, SizeChoice } from './part-views.js';

/** Sizes by name; a group such as `motor_hub` holds further names. */
export interface Sizes {
  readonly [name: string]: number | Sizes;
}

/** What every design holds, whatever the part. Plain data, so that it can go to a worker. */
export interface DesignBase {
  readonly part: string;
  readonly name: string;
  /** as the sheet counts it, for the drawing */
  readonly revision?: string;
  readonly dimensions: { readonly finished: Sizes; readonly printed: Sizes };
  readonly assumptions: readonly Assumption[];
  readonly limits: LimitsSheet;
  /** g/cm³ by material name, for the mass of the bodies */
  readonly densities: Readonly<Record<string, number>>;
  /** the profile that supplied material and printer */
  readonly profile?: ProfileUse;
  /** what is told states inches beside mm */
  readonly units?: 'inch';
  /** ways to cure what misses its limit, tried on the sheet; absent as long as nobody tried */
  readonly remedies?: readonly TriedRemedy[];
}

/** A bought part. */
export interface HardwareRow {
  readonly item: string;
  readonly size: string;
  readonly count: number;
  /** field of the sheet without which its length cannot be told */
  readonly untold?: string;
}

/** How a part goes on, in the order of work: one line a step. */
export interface Mounting {
  /** until it is in its place */
  readonly put: readonly string[];
  /** how it finds its place and is tightened there, with all of the axis in */
  readonly settle: readonly string[];
}

/** How to lay the part on the bed. */
export interface PrintAdvice {
  readonly face_up: string;
  readonly why: string;
  readonly support: 'none' | 'needed';
}

/** What a body must measure when it is read back from its file. */
export interface Expected {
  /** mm³, by section integrals of the drawn polygons, raised mark aside */
  readonly volume: number;
  /** mm³ that a raised mark may add */
  readonly mark: number;
  readonly bounds: readonly [readonly [number, number, number], readonly [number, number, number]];
}

/** A body to be fused, and what it must measure. */
export interface PlannedBody {
  readonly recipe: BodyRecipe;
  /** worked out when it is asked for: a drawing does not */
  readonly expected: () => Expected;
  /** true where it lies on the bed the other way up than it is modelled */
  readonly turnOver?: boolean;
  /** what it is printed with */
  readonly printer: Pick<Printer, 'layer' | 'lineWidth' | 'compensation'>;
  /** the thinnest wall that was worked out, as it stands in the file */
  readonly leastWall: Wall;
}

/** What a part kind says of a design besides its checks. */
export interface Particulars {
  readonly hardware: readonly HardwareRow[];
  /** absent where it is mounted nowhere */
  readonly mounting?: Mounting;
  readonly cautions: readonly string[];
  /** what was done to the sizes in the file, in words */
  readonly applied: string;
  readonly print?: PrintAdvice;
  /** the fit as it is likely to come out */
  readonly fit?: FitBlock;
  readonly drive?: DriveNumbers;
}

/** One kind of part, from its sheet to its solid. */
export interface PartKind<Sheet, Design extends DesignBase> {
  readonly kind: string;
  /** the kind whose shape and checks it has, under a name of its own */
  readonly formOf?: string;
  readonly schema: z.ZodType<Sheet>;
  readonly design: (sheet: Sheet, presets: PresetTexts) => Design;
  readonly checks: readonly Check<Design>[];
  /** what it asks, in order, at most five besides that of the axis */
  readonly questions: readonly Question[];
  /** what one that passes does; `It fits` unless said otherwise */
  readonly promise?: string;
  readonly particulars: (design: Design) => Particulars;
  /** at the sizes in the file, or at those in use */
  readonly bodies: (design: Design, sizes?: SizeChoice) => readonly PlannedBody[];
  /** findings of the mating test, on solids built for it */
  readonly mate: (design: Design, kernel: Kernel) => readonly Finding[];
  /** what drawing, picture and page show besides the mesh; `PartViews` says how a kind joins */
  readonly views: (design: Design, sizes: SizeChoice) => PartViews;
  /** field of the sheet that a size of the views shows, or `derived`; undefined for a size that it does not know */
  readonly sizeField: (name: string, design: Design) => string | undefined;
  /** the screw at its limits held in the part as printed, on demand */
  readonly virtualMate?: (design: Design, kernel: Kernel) => readonly Finding[];
  /** fields of the sheet that advice may change */
  readonly tunables?: readonly Tunable<Design>[];
  /** ways to cure a check, by its id, asked for where it does not pass; each is tried before it is told */
  readonly remedies?: Readonly<Record<string, (design: Design, limits: LimitsInForce) => readonly Remedy[]>>;
}
