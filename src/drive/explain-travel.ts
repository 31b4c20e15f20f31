import { stepsPerMm } from '../mechanics/travel.js';
import { fault } from '../units/faults.js';
import { plain, rounded } from '../units/format.js';
import type { Measured } from '../units/measured.js';
import { requireNotNegative, requirePositive } from '../units/require.js';
import { type Assumption, type Duty, fullDuty } from './duty.js';
import { type DriveScrew, requireDriveScrew } from './screw.js';
import { knownSlips, type Slip } from './slips.js';

/** A move that was asked for, and what came of it. */
export interface TravelReading {
  /** travel asked for [mm], not 0 */
  readonly commanded: number;
  /** travel that was measured [mm], not 0; of the other sign when the axis moved the wrong way */
  readonly measured: number;
  /** half-width of the reading's error [mm]; 1 % of the reading, at least 0.2 mm, unless given */
  readonly uncertainty?: number | undefined;
  readonly screw: DriveScrew;
  readonly duty: Duty;
  /** steps per mm that the controller holds, when known: it rules out some of the slips [1/mm] */
  readonly stepsPerMm?: number | undefined;
  /** lead of the screw that was in the machine before, when known [mm] */
  readonly oldLead?: number | undefined;
}

/** Why an axis travels wrongly. */
export interface TravelExplanation {
  /** measured over commanded travel */
  readonly ratio: Measured;
  /** as-told: nothing is wrong; slip: named below; unexplained: no slip has this ratio */
  readonly verdict: 'as-told' | 'slip' | 'unexplained';
  /** true when the axis moved the other way than asked */
  readonly reversed: boolean;
  /** slips whose ratio lies within the error of the reading, the likelier first */
  readonly slips: readonly Slip[];
  /** what to multiply the controller's figure by, whatever the cause: exact for a slip, else as measured */
  readonly factor: number;
  /** steps per mm to set: for the likeliest slip; not known where no slip explains and the controller's figure is not told */
  readonly steps_per_mm?: number;
  readonly words: readonly string[];
  readonly assumptions: readonly Assumption[];
}

/** Agreement of the controller's figure with what a slip would have put there [-]. */
const SAME_FIGURE = 0.01;
/** A ratio this close to 1 is no slip but a lead or a reading that is slightly off [-]. */
const NEARLY_RIGHT = 0.03;

/**
 * Names the slips that explain why an axis travels a fixed ratio too far or too little, within the error of the
 * reading; all of them when several share a ratio.
 *
 *     ratio = measured / commanded, known to ± uncertainty / commanded;      right figure = held figure / ratio
 *
 * @param p.commanded    travel asked for                             [mm]    not 0
 * @param p.measured     travel measured                              [mm]    not 0
 * @param p.uncertainty  half-width of the reading's error            [mm]    0 or above, default 1 %, at least 0.2
 * @param p.screw        the screw as described
 * @param p.duty         its drive as described; steps, microsteps and gear count here
 * @param p.stepsPerMm   what the controller holds, when known        [1/mm]  > 0
 * @param p.oldLead      lead of the screw that was in before          [mm]    > 0
 * @returns the slips, the factor and the right steps per mm
 * @throws InputError  a value is outside its range
 * @validity where the controller's figure is not known, a wrong controller is taken before a wrong description
 * @source derived: ratios of the definition of steps per mm
 * @example explainTravel({ commanded: 100, measured: 400, screw: driveScrewOf(parseDesignation('Tr8x8(P2)')), duty: {} }).slips[0].slip // 'starts-left-out'
 */
export function explainTravel(p: TravelReading): TravelExplanation {
  requireDriveScrew(p.screw);
  requireReading(p);
  const duty = fullDuty(p.duty);
  const uncertainty = p.uncertainty ?? Math.max(0.2, 0.01 * Math.abs(p.measured));
  const described = stepsPerMm({ ...duty, lead: p.screw.lead });
  const ratio = ratioOf(p, uncertainty);
  const asTold = within(1, ratio);
  const slips = asTold ? [] : matching(p, knownSlips(p.screw, duty, described, p.oldLead), ratio);
  const verdict = asTold ? 'as-told' : slips.length > 0 ? 'slip' : 'unexplained';
  const { factor, steps } = correction({ ratio, slips, asTold, described, held: p.stepsPerMm });
  const reversed = p.measured < 0 !== p.commanded < 0;
  return {
    ratio,
    verdict,
    reversed,
    slips,
    factor: rounded(factor),
    ...(steps === undefined ? {} : { steps_per_mm: rounded(steps) }),
    words: explanationWords({ verdict, reversed, slips, ratio, factor, steps }),
    assumptions: [
      ...(p.uncertainty === undefined
        ? [{ field: 'uncertainty', value: rounded(uncertainty), why: 'mm; 1 % of the reading, at least 0.2' }]
        : []),
      ...duty.assumptions.filter(({ field }) => COUNTING.has(field)),
    ],
  };
}

/** Assumptions that a travel rests on. */
const COUNTING: ReadonlySet<string> = new Set(['duty.motor.steps', 'duty.motor.microsteps', 'duty.motor.gear']);

function requireReading(p: TravelReading): void {
  for (const path of ['commanded', 'measured'] as const) {
    if (!Number.isFinite(p[path]) || p[path] === 0) throw fault(path, p[path], 'must be a length other than 0');
  }
  if (p.uncertainty !== undefined) requireNotNegative('uncertainty', p.uncertainty);
  if (p.stepsPerMm !== undefined) requirePositive('stepsPerMm', p.stepsPerMm);
  if (p.oldLead !== undefined) requirePositive('oldLead', p.oldLead);
}

function ratioOf(p: TravelReading, uncertainty: number): Measured {
  const [measured, commanded] = [Math.abs(p.measured), Math.abs(p.commanded)];
  return {
    least: rounded(Math.max(0, measured - uncertainty) / commanded, 9),
    likely: rounded(measured / commanded, 9),
    most: rounded((measured + uncertainty) / commanded, 9),
  };
}

function within(value: number, bounds: Measured): boolean {
  return value >= bounds.least - 1e-9 && value <= bounds.most + 1e-9;
}

/** Slips of this ratio, nearest first; where the controller's figure is known, those that would have put it there. */
function matching(p: TravelReading, slips: readonly Slip[], ratio: Measured): readonly Slip[] {
  const near = slips
    .filter((slip) => within(slip.ratio, ratio))
    .map((slip) => ({ slip, apart: rounded(Math.abs(slip.ratio - ratio.likely), 9) }))
    .toSorted((a, b) => a.apart - b.apart)
    .map(({ slip }) => slip);
  const held = p.stepsPerMm;
  if (held === undefined) return near;
  const agreeing = near.filter((slip) => Math.abs(slip.controller_has / held - 1) <= SAME_FIGURE);
  return agreeing.length > 0 ? agreeing : near;
}

/** The factor on the controller's figure, and the figure that is right. */
function correction(found: {
  readonly ratio: Measured;
  readonly slips: readonly Slip[];
  readonly asTold: boolean;
  readonly described: number;
  readonly held: number | undefined;
}): { readonly factor: number; readonly steps: number | undefined } {
  const { ratio, slips, asTold, described, held } = found;
  const [first] = slips;
  if (asTold) return { factor: 1, steps: held ?? described };
  if (first === undefined) {
    return { factor: 1 / ratio.likely, steps: held === undefined ? undefined : held / ratio.likely };
  }
  if (first.wrong === 'reading') return { factor: 1, steps: held ?? described };
  return { factor: 1 / first.ratio, steps: held === undefined ? first.steps_per_mm : held / first.ratio };
}

function explanationWords(found: {
  readonly verdict: TravelExplanation['verdict'];
  readonly reversed: boolean;
  readonly slips: readonly Slip[];
  readonly ratio: Measured;
  readonly factor: number;
  readonly steps: number | undefined;
}): readonly string[] {
  const { verdict, reversed, slips, ratio, factor, steps } = found;
  const turned = reversed
    ? ['The axis moved the wrong way: swap the direction in the controller; a left-hand screw does that too.']
    : [];
  if (verdict === 'as-told') return [...turned, 'The travel is as told, within the error of the reading.'];
  const share = `It travels ${plain(ratio.likely, 4)} times what was asked`;
  const right = steps === undefined ? '' : `: ${plain(steps, 3)} steps per mm`;
  const set = `Multiply the controller's figure by ${plain(factor, 4)}${right}.`;
  if (verdict === 'slip') {
    const several = slips.length > 1 ? `, which ${slips.length} slips explain` : '';
    return [...turned, `${share}${several}.`, ...slips.map((slip) => `${slip.words} ${figures(slip)}`), set];
  }
  const cause =
    Math.abs(ratio.likely - 1) <= NEARLY_RIGHT + 1e-9
      ? `${share}: too little off for a slip. Move twice as far: an error that stays the same is play, one that doubles is the lead.`
      : `${share}; no slip that is known has this ratio, unless two came together or the motor lost steps.`;
  return [...turned, cause, set];
}

function figures(slip: Slip): string {
  if (slip.wrong === 'reading') return `Then ${plain(slip.steps_per_mm)} steps per mm stay right.`;
  return `Then the controller holds ${plain(slip.controller_has)} steps per mm, and ${plain(slip.steps_per_mm)} is right.`;
}
