import type { FitBlock, FitFigure, FitRange } from '../../fit/stack/fit-block.js';
import { chanceAbove } from '../../fit/stack/probability.js';
import type { StackResult } from '../../fit/stack/stack.js';
import { EFFECTS } from '../../sheet/sections/effects.js';
import { parseDesignation } from '../../standards/threads/designation.js';
import { DEFAULT_CLASSES, screwLimits } from '../../standards/tolerances/thread-limits.js';
import { InputError } from '../../units/faults.js';
import { parseQuantity } from '../../units/quantity.js';
import { PLACE_SCATTER, planeResidual } from '../common/residual.js';
import type { NutDesign } from './dimensions.js';
import { type NutInput, type NutResult, predictFit } from './stack.js';

/** Backlash up to which an axis is usually content, mm. @source common-practice */
export const USUAL_BACKLASH = { vertical: 0.3, other: 0.1 } as const;

/** A chance above this is as good as certain; below the other it is none. */
const SURE = 0.95;
const UNLIKELY = 0.5;

const COUNTED = 5;

/** The predicted fit for the report: readings, residuals and all effects of form together. */
export function nutFit(design: NutDesign): FitBlock {
  const results = predictFit(design);
  const wanted = wantedPlay(design);
  const probabilities = {
    starts: chanceAbove([results.diametral, results.crestGap, results.rootGap, results.entry, results.play]).least,
    turns: chanceAbove([results.diametral, results.playLessDrift, results.playPlusDrift]).least,
    under_wanted_play: chanceAbove([{ mean: wanted - results.play.mean, sigma: results.play.sigma }]).least,
  };
  const holes = holeErrors(design);
  const screwTolerance = toleranceOf(design, results);
  return {
    ...outlookOf(Math.min(probabilities.starts, probabilities.turns)),
    diametral_clearance: figure(results.diametral),
    crest_gap: figure(results.crestGap),
    root_gap: figure(results.rootGap),
    axial_clearance: axialClearance(results),
    backlash: figure(results.play),
    probabilities,
    wanted_play: wanted,
    contributors: contributors(results),
    ...(screwTolerance ? { screw_tolerance: screwTolerance } : {}),
    ...(holes ? { holes } : {}),
    effects_off: EFFECTS.filter((effect) => !design.effects[effect]),
  };
}

function outlookOf(chance: number): Pick<FitBlock, 'outlook' | 'words'> {
  if (chance >= SURE) return { outlook: 'pass', words: 'it will turn' };
  if (chance >= UNLIKELY) return { outlook: 'caution', words: 'it will turn only with luck, or after running in' };
  return { outlook: 'fail', words: 'it will not turn' };
}

function figure({ worst, mean, sigma }: StackResult<NutInput>): FitFigure {
  return { ...worst, usual: [mean - 2 * sigma, mean + 2 * sigma] };
}

/** Play less the drift either way: the worse of both ends, whichever way the pitch drifts. */
function axialClearance({ playLessDrift, playPlusDrift, play }: Results): FitFigure {
  const [less, plus] = [figure(playLessDrift), figure(playPlusDrift)];
  return {
    least: Math.min(less.least, plus.least),
    likely: Math.min(less.likely, plus.likely),
    most: Math.min(less.most, plus.most, play.worst.most),
    usual: [Math.min(less.usual[0], plus.usual[0]), Math.min(less.usual[1], plus.usual[1])],
  };
}

type Results = Readonly<Record<NutResult, StackResult<NutInput>>>;

/** What the spread comes from, at the end where less is left. */
function contributors({ playLessDrift, playPlusDrift }: Results): FitBlock['contributors'] {
  const worse = playLessDrift.worst.least <= playPlusDrift.worst.least ? playLessDrift : playPlusDrift;
  return worse.contributions
    .slice(0, COUNTED)
    .map(({ name, down, up, share }) => ({ name: NAMES[name], down, up, share }));
}

const NAMES: Readonly<Record<NutInput, string>> = {
  hole_offset: 'hole offset of the printer',
  shrink_plane: 'shrink in the plane',
  shrink_axial: 'shrink along the axis',
  screw_pitch_diameter: "screw's pitch diameter",
  screw_major: "screw's crests",
  screw_minor: "screw's core",
  screw_pitch: "screw's pitch",
  layers: 'edges of the layers',
  first_layer: 'first layer',
  moisture: 'moisture',
  temperature: 'temperature',
  facets: 'facets of the bore',
};

/** The play that is wanted: the sheet's own limit of `thread-backlash`, else what is usual for the axis. */
export function wantedPlay({ limits, duty }: Pick<NutDesign, 'limits' | 'duty'>): number {
  const own = limits['thread-backlash']?.max;
  const parsed = own === undefined ? undefined : parseQuantity(own, 'length');
  if (parsed?.ok) return parsed.quantity.value;
  return duty.axis === 'vertical' ? USUAL_BACKLASH.vertical : USUAL_BACKLASH.other;
}

/** What the limits of a standard screw add, where nothing of its flanks was measured. */
function toleranceOf({ screw, assumptions }: NutDesign, results: Results): FitBlock['screw_tolerance'] {
  const isBasic = assumptions.some(({ field }) => field === 'screw.pitch_diameter');
  if (screw.designation === undefined || !isBasic) return undefined;
  const limits = limitsOf(screw.designation);
  if (!limits) return undefined;
  const [least, most] = limits.pitchDiameter;
  const basic = screw.pitchDiameter.likely;
  const added = { least: basic - most, likely: basic - (least + most) / 2, most: basic - least };
  const { diametral, play } = results;
  const slope = Math.tan((screw.flankAngle * Math.PI) / 180);
  return {
    tolerance: limits.tolerance,
    source: limits.source,
    diametral_clearance: plus(diametral.worst, added, 1),
    backlash: plus(play.worst, added, slope),
  };
}

function plus(figure: FitRange, added: FitRange, factor: number): FitRange {
  return {
    least: figure.least + factor * added.least,
    likely: figure.likely + factor * added.likely,
    most: figure.most + factor * added.most,
  };
}

const SOURCES = { trapezoidal: 'ISO 2903', acme: 'ASME B1.5', 'metric-v': 'ISO 965-1', unified: 'ASME B1.1' } as const;

function limitsOf(designation: string) {
  try {
    const thread = parseDesignation(designation);
    const { pitchDiameter } = screwLimits({ designation: thread });
    return { pitchDiameter, tolerance: DEFAULT_CLASSES[thread.series][0], source: SOURCES[thread.series] };
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** How far each hole may be off along the line from the centre: what shrink leaves, and the printer's scatter. */
function holeErrors(design: NutDesign): FitBlock['holes'] {
  return design.holes?.centres.map((centre, i) => {
    const { least, likely, most } = planeResidual(design, Math.hypot(...centre));
    return { hole: i + 1, least: least - PLACE_SCATTER, likely, most: most + PLACE_SCATTER };
  });
}
