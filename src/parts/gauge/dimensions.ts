import { axialPlay, nutThread, type ToothForm } from '../../mechanics/thread/nut-thread.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { Assumptions } from '../../sheet/assumptions.js';
import { resolveScrew, type Screw } from '../../sheet/resolve-screw.js';
import { fault } from '../../units/faults.js';
import { plain, rounded } from '../../units/format.js';
import { requireFacetBudget } from '../common/facet-budget.js';
import type { FitClass } from '../common/fit-classes.js';
import { printSizes } from '../common/print-sizes.js';
import { threadInFile } from '../common/thread-in-file.js';
import { workshopOf } from '../common/workshop.js';
import type { DesignBase } from '../part-kind.js';
import { leastOutside } from './figure.js';
import type { GaugeSheet } from './sheet.js';

/** One ring. Sizes of one kind: finished or printed. */
export interface GaugeRing {
  /** as its body is called and its figure engraved */
  readonly name: string;
  readonly figure: string;
  /** along the axis, over both flanks, in use [mm] */
  readonly play: number;
  readonly turns: number;
  readonly thread: ToothForm;
  readonly length: number;
}

/** All rings. Sizes of one kind. */
export interface GaugePlan {
  readonly outside: number;
  readonly chamfer: number;
  readonly leadIn: number;
  /** engraved so deep */
  readonly depth: number;
  readonly lead: number;
  /** the ladder, the tightest first; then the rings of two and of ten turns */
  readonly rings: readonly GaugeRing[];
}

/** A set of gauge rings, worked out. */
export interface GaugeDesign extends DesignBase {
  readonly part: 'gauge';
  readonly screw: Screw;
  readonly finished: GaugePlan;
  readonly printed: GaugePlan;
  readonly material: Material;
  readonly printer: Printer;
}

/** What a gauge starts from where its sheet does not say. @source common-practice */
const D = {
  /** mm */
  plays: { from: 0.1, to: 0.4, step: 0.05 },
  turnsPlay: 0.1,
  chamfer: 0.4,
  leadIn: 0.3,
  depth: 0.4,
  /** a ring of the ladder holds so many turns */
  ladderTurns: 4,
  /** turns of the rings that tell diameter from pitch */
  turns: [2, 10],
  /** clearance on the diameter, where the play leaves room for it, mm */
  diametral: 0.3,
} as const;

const MOST_RINGS = 12;

/** Clearances that give a play along the axis: as much of it on the diameter as is usual, the rest between the flanks. */
export function fitOfPlay(play: number, flankAngle: number): FitClass {
  const perDiameter = axialPlay({ diametralClearance: 1, axialClearance: 0, flankAngle });
  const diametral = perDiameter > 0 ? Math.min(D.diametral, play / perDiameter) : D.diametral;
  return { diametral, axial: Math.max(0, play - diametral * perDiameter) };
}

/**
 * Works a set of gauge rings out from its sheet.
 * @throws InputError values that contradict each other
 */
export function designGauge(sheet: GaugeSheet, presets: PresetTexts): GaugeDesign {
  const assumptions = new Assumptions();
  const { calipers, material, printer } = workshopOf(sheet, presets, assumptions);
  const screw = resolveScrew(sheet.screw, calipers, assumptions);
  const rings = ringsOf(sheet, screw, assumptions);
  const widest = Math.max(...rings.map(({ thread }) => thread.major));
  const least = leastOutside(
    { bore: widest / 2 + D.leadIn, figures: rings.map(({ figure }) => figure) },
    printer.lineWidth,
  );
  const outside = assumptions.or<number>(
    sheet.outside_diameter,
    'outside_diameter',
    least,
    'room for the figures beside the thread',
  );
  if (outside < least - 1e-9)
    throw fault(
      'outside_diameter',
      `${plain(outside)} mm`,
      `must be at least ${plain(least)} mm for the engraved figures`,
    );
  const finished: GaugePlan = {
    outside,
    chamfer: D.chamfer,
    leadIn: D.leadIn,
    depth: D.depth,
    lead: screw.lead,
    rings,
  };
  const printed = printedGauge(finished, { material, printer });
  requireFacetBudget({
    thread: printed.rings[0]!.thread,
    lead: printed.lead,
    length: printed.rings.reduce((sum, { length }) => sum + length, 0),
    chordError: printer.chordError,
  });
  return {
    part: 'gauge',
    name: sheet.name,
    screw,
    finished,
    printed,
    material,
    printer,
    dimensions: { finished: named(finished), printed: named(printed) },
    assumptions: assumptions.list,
    limits: sheet.limits ?? {},
    densities: { [material.name]: material.density },
  };
}

function ringsOf({ plays = {}, turns_play }: GaugeSheet, screw: Screw, notes: Assumptions): GaugeRing[] {
  const from = notes.or<number>(plays.from, 'plays.from', D.plays.from, 'a nut that is just free');
  const to = notes.or<number>(plays.to, 'plays.to', Math.max(D.plays.to, from + 3 * D.plays.step), 'a loose nut');
  const step = notes.or<number>(plays.step, 'plays.step', D.plays.step, 'what fingers tell apart');
  if (to <= from) throw fault('plays.to', `${plain(to)} mm`, `must be above plays.from, ${plain(from)} mm`);
  const count = Math.floor((to - from) / step + 1e-6) + 1;
  if (count > MOST_RINGS)
    throw fault(
      'plays.step',
      `${plain(step)} mm`,
      `must be at least ${plain((to - from) / (MOST_RINGS - 1), 3)} mm: ${MOST_RINGS} rings at most`,
    );
  const turnsPlay = notes.or<number>(
    turns_play,
    'turns_play',
    D.turnsPlay,
    'tight enough to jam by a pitch error of half a percent',
  );
  const ladder = Array.from({ length: count }, (_, i) => rounded(from + i * step));
  return [
    ...ladder.map((play) =>
      ringOf(screw, { play, turns: D.ladderTurns, name: `play-${hundredths(play)}`, figure: hundredths(play) }),
    ),
    ...D.turns.map((turns) => ringOf(screw, { play: turnsPlay, turns, name: `turns-${turns}`, figure: `${turns}T` })),
  ];
}

function hundredths(play: number): string {
  return plain(100 * play, 1);
}

/** So long that between the chamfers, which run out at the pitch diameter, stand so many pitches. */
function ringOf(
  screw: Screw,
  { play, turns, name, figure }: Pick<GaugeRing, 'play' | 'turns' | 'name' | 'figure'>,
): GaugeRing {
  const fit = fitOfPlay(play, screw.flankAngle);
  const thread = nutThread({
    form: screw.form,
    flankAngle: screw.flankAngle,
    screwMajor: screw.major.likely,
    screwPitchDiameter: screw.pitchDiameter.likely,
    pitch: screw.pitch.likely,
    diametralClearance: fit.diametral,
    axialClearance: fit.axial,
  });
  const mouths = thread.major + 2 * D.leadIn - thread.pitchDiameter;
  return { name, figure, play, turns, thread, length: rounded(turns * screw.pitch.likely + mouths) };
}

function printedGauge(plan: GaugePlan, made: { readonly material: Material; readonly printer: Printer }): GaugePlan {
  const { outside, along, across } = printSizes(made.material, made.printer);
  return {
    outside: outside(plan.outside),
    chamfer: across(plan.chamfer),
    leadIn: across(plan.leadIn),
    depth: along(plan.depth),
    lead: along(plan.lead),
    rings: plan.rings.map((ring) => ({
      ...ring,
      thread: threadInFile(ring.thread, plan.lead, made),
      length: along(ring.length),
    })),
  };
}

/** The ladder's rings differ in their grooves alone, but where the play is less than the usual clearance gives. */
function named({ outside, rings, lead, depth }: GaugePlan) {
  const [first] = rings;
  const [two, ten] = rings.slice(-2);
  const { major, pitchDiameter, minor, pitch, grooveWidth } = first!.thread;
  return {
    outside_diameter: outside,
    length: first!.length,
    two_turns_length: two!.length,
    ten_turns_length: ten!.length,
    engraved: depth,
    thread_major: major,
    thread_pitch_diameter: pitchDiameter,
    thread_minor: minor,
    pitch,
    groove_width: grooveWidth,
    lead,
    grooves: Object.fromEntries(rings.map(({ name, thread }) => [name, thread.grooveWidth])),
  };
}
