import type { Designation } from '../../standards/threads/designation.js';
import type { ThreadLimits } from '../../standards/tolerances/limits.js';
import { ROLLED_PITCH_ERROR } from '../../standards/tolerances/rolled-pitch.js';
import {
  DEFAULT_CLASSES,
  type LimitsSource,
  limitsSource,
  screwLimits,
} from '../../standards/tolerances/thread-limits.js';
import { InputError } from '../../units/faults.js';
import { exactly, type Measured, plusMinus, scaled, shifted } from '../../units/measured.js';
import type { ScrewForm } from './screw-form.js';

/** Sizes that a class may stand for. */
export type ClassedSize = 'major' | 'pitchDiameter' | 'minor' | 'pitch';

/**
 * What the screw in hand may measure: its readings, and the class of its standard for what was not read. A part is cut
 * for the basic sizes; whether it fits is judged by these.
 */
export interface ScrewInHand extends Readonly<Record<ClassedSize, Measured>> {
  /** how far crest and flank, which are made apart, may be from each other where only the crest was read, on the diameter */
  readonly crest: Measured;
  /** sizes of which only bounds are known: any value between them is as likely as any other */
  readonly level: readonly ClassedSize[];
  /** the class that stands for what was not read */
  readonly tolerance?: { readonly class: string; readonly source: LimitsSource };
  /** pitch diameter that a screw of its name has, whatever was read */
  readonly namedFlanks?: Measured;
}

/** What was read of a screw, and what its basic sizes are. */
export interface ReadScrew {
  readonly form: ScrewForm;
  readonly starts: number;
  readonly named?: Designation;
  readonly basic: Readonly<Record<ClassedSize, Measured>>;
  /** sizes that were read, or are known with an uncertainty of their own */
  readonly read: readonly ClassedSize[];
}

/** Joins the readings with the class: of the designation, or of the standard that the form follows. */
export function screwInHand(screw: ReadScrew): ScrewInHand {
  const { basic, read, named } = screw;
  const found = limitsFor(screw);
  const own = named ? byClass(named, found?.limits) : byCrest(screw, found?.limits);
  const sizes = { ...own, pitch: rolled(basic.pitch) };
  const classed = (['major', 'pitchDiameter', 'minor', 'pitch'] as const).filter((size) => !read.includes(size));
  const pick = (size: ClassedSize) => (read.includes(size) ? basic[size] : sizes[size]);
  return {
    major: pick('major'),
    pitchDiameter: pick('pitchDiameter'),
    minor: pick('minor'),
    pitch: pick('pitch'),
    crest: named || read.includes('pitchDiameter') ? exactly(0) : own.crest,
    level: classed,
    ...(named ? { namedFlanks: own.pitchDiameter } : {}),
    ...(found && !read.includes('pitchDiameter') ? { tolerance: found.tolerance } : {}),
  };
}

/** A pitch that is known by its name alone: what ordinary screws keep. */
export function rolled(pitch: Measured): Measured {
  return plusMinus(pitch.likely, ROLLED_PITCH_ERROR * pitch.likely);
}

type Sizes = Readonly<Record<'major' | 'pitchDiameter' | 'minor' | 'crest', Measured>>;

function byClass(named: Designation, limits: ThreadLimits | undefined): Sizes {
  if (!limits) {
    const depth = 2 * toothSpread(named.pitch);
    const below = (size: number) => between([size - depth, size]);
    const { major, pitchDiameter, minor } = named;
    return { major: below(major), pitchDiameter: below(pitchDiameter), minor: below(minor), crest: exactly(0) };
  }
  return {
    major: between(limits.major),
    pitchDiameter: between(limits.pitchDiameter),
    minor: between(limits.minor),
    crest: exactly(0),
  };
}

/** Flank and root as the class places them against the crest that was read. */
function byCrest({ basic }: ReadScrew, limits: ThreadLimits | undefined): Sizes {
  const { major, pitchDiameter, minor, pitch } = basic;
  if (!limits) {
    const doubt = toothSpread(pitch.likely);
    return { major, pitchDiameter: exactly(pitchDiameter.likely), minor, crest: plusMinus(0, doubt) };
  }
  const [least, most] = limits.major;
  const offCrest = (of: readonly [number, number]) => shifted(between(of), major.likely - (least + most) / 2);
  return {
    major,
    pitchDiameter: offCrest(limits.pitchDiameter),
    minor: offCrest(limits.minor),
    crest: plusMinus(0, (most - least) / 2),
  };
}

function between([least, most]: readonly [number, number]): Measured {
  return { least, likely: (least + most) / 2, most };
}

/**
 * How far the pitch diameter may be from the one that the crest suggests where no standard tells: about the grade 7
 * pitch-diameter tolerance of ISO 2903, which is 0.19 mm at pitch 2 and 0.27 mm at pitch 4 for the diameters met here.
 */
export function toothSpread(pitch: number): number {
  return 0.1 + 0.042 * pitch;
}

function limitsFor({ form, starts, named, basic }: ReadScrew) {
  if (!named && form === 'free') return undefined;
  const thread = named ? { ...named, starts } : measuredThread(form as Exclude<ScrewForm, 'free'>, starts, basic);
  try {
    const { pitchDiameter, major, minor } = screwLimits({ designation: thread });
    return {
      limits: { pitchDiameter, major, minor },
      tolerance: { class: thread.tolerance ?? DEFAULT_CLASSES[thread.series][0], source: limitsSource(thread) },
    };
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** A measured screw as if it were named: what its standard allows hangs on size and pitch alone. */
function measuredThread(
  form: Exclude<ScrewForm, 'free'>,
  starts: number,
  { major, pitch }: ReadScrew['basic'],
): Designation {
  return {
    text: '',
    series: form,
    form,
    flankAngle: 0,
    major: major.likely,
    pitch: pitch.likely,
    starts,
    lead: scaled(pitch, starts).likely,
    hand: 'right',
    pitchDiameter: 0,
    minor: 0,
  };
}
