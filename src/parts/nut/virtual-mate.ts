import type { StackResult } from '../../fit/stack/stack.js';
import { SOLID_GROUP } from '../../judge/accept.js';
import { type CheckFacts, type Finding, hard, valued } from '../../judge/check.js';
import { finding } from '../../judge/run-checks.js';
import { grooveWidthAt, rootDiameterOf, type ToothForm } from '../../mechanics/thread/nut-thread.js';
import { freeTravel } from '../../solid/free-travel.js';
import type { Kernel, Pose } from '../../solid/kernel.js';
import { NO_COMMON_VOLUME, wedge } from '../../solid/mate.js';
import { cylinder, type Shape } from '../../solid/recipe.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import { nutCutter, screwBody, type ThreadRun, threadColumns } from '../common/thread-shape.js';
import type { NutDesign } from './dimensions.js';
import { type AsPrinted, type NutInput, nutChain, playAlong, predictFit } from './stack.js';

/** A nut as printed on a screw, at one corner of what may come out. */
export interface MateCase extends AsPrinted {
  readonly name: 'most material' | 'likely' | 'least material';
  /** of the nut, mm */
  readonly length: number;
  readonly run: Omit<ThreadRun, 'from' | 'to'>;
}

/** How a nut sits on its screw, mm. */
export interface MateFigures {
  /** whether it goes on at all */
  readonly free: boolean;
  /** free axial play, over the whole length */
  readonly axial: number;
  /** how much the flanks of the screw may grow on the diameter before they touch */
  readonly diametral: number;
  /** radial, over crests and roots of the screw */
  readonly crestGap: number;
  readonly rootGap: number;
}

/** More turns than this tell nothing new. */
const MOST_PITCHES = 3;

/** The corners that are tried: tightest nut on the largest screw, as likely, loosest nut on the smallest. */
export function mateCases(design: NutDesign, columns?: number): MateCase[] {
  const { inputs, threads } = nutChain(design);
  const { playLessDrift, playPlusDrift } = predictFit(design);
  const worse = playLessDrift.worst.least <= playPlusDrift.worst.least ? playLessDrift : playPlusDrift;
  const at = (pick: 'least' | 'likely' | 'most') =>
    Object.fromEntries(
      inputs.map(({ name, value }) => [name, pick === 'likely' ? value.likely : atBound(name, value, worse, pick)]),
    ) as Record<NutInput, number>;
  const length = mateLength(design);
  const run = {
    starts: design.screw.starts,
    hand: design.screw.hand,
    columns: columns ?? threadColumns(design.finished.thread, design.finished.lead, design.printer.chordError),
  };
  return [
    { name: 'most material', ...threads(at('least'), 'fresh'), length, run },
    { name: 'likely', ...threads(at('likely')), length, run },
    { name: 'least material', ...threads(at('most')), length, run },
  ];
}

function mateLength({ finished }: NutDesign): number {
  return Math.min(MOST_PITCHES * finished.thread.pitch, finished.length);
}

/** The bound of an input that leaves the least or the most play. What the play does not hang on goes the same way. */
function atBound(
  name: NutInput,
  value: { readonly least: number; readonly most: number },
  { contributions }: StackResult<NutInput>,
  pick: 'least' | 'most',
): number {
  if (name === 'screw_major' || name === 'screw_minor') return pick === 'least' ? value.most : value.least;
  const rises = (contributions.find((one) => one.name === name)?.sensitivity ?? 1) > 0;
  return rises === (pick === 'most') ? value.most : value.least;
}

/** What the arithmetic says of a case. */
export function figuresByArithmetic({ nut, screw, length }: MateCase): MateFigures {
  const { clear, drift } = playAlong({ nut, screw }, length);
  const play = clear - Math.abs(drift);
  const crestGap = (rootDiameterOf(nut) - screw.major) / 2;
  const rootGap = (nut.minor - screw.minor) / 2;
  return {
    free: play > 0 && crestGap > 0 && rootGap > 0,
    axial: Math.max(0, play),
    diametral: Math.max(0, play / screw.flankSlope),
    crestGap,
    rootGap,
  };
}

/** How exactly the solids are read, mm: axially, by the flanks on the diameter, radially. */
const WITHIN = { axial: 0.002, diametral: 0.005, gap: 0.003 } as const;

/** Columns by which the screw is turned in the nut: aligned, and with its corners in the middle of the nut's facets. */
const PHASES = [0, 0.5] as const;

/**
 * What the solids say of the same case: nut and screw are built and one is moved in the other until they have volume
 * in common; along the axis both ways, and radially by growing the flanks of the screw, a rod in the nut's crests and
 * a thin ridge in its roots. Corners of the screw lie on its true surface and touch first in the middle of a facet.
 */
export function figuresBySolids(mate: MateCase, kernel: Kernel): MateFigures {
  const guess = figuresByArithmetic(mate);
  const { nut, screw } = mate;
  const ring = ringOf(mate, kernel);
  // a rod, and a ridge of the nut's own pitch, meet every column of the nut alike
  const column = columnOf(mate, kernel);
  const pitch = { ...mate, length: nut.pitch };
  const centre = ((nut.pitch / screw.pitch - 1) * mate.length) / 2;
  const isFree = (shape: Shape, shifts: readonly number[], columns: readonly number[] = [0.5]) =>
    kernel
      .commonVolumes(
        ring,
        shape,
        poses(
          mate,
          screw.pitch,
          shifts.map((shift) => centre + shift),
          columns,
        ),
      )
      .every((volume) => volume <= NO_COMMON_VOLUME);
  const isClear = (shape: Shape) =>
    kernel.commonVolumes(column, shape, poses(mate, nut.pitch, [0], [0.5]))[0]! * mate.run.columns <= NO_COMMON_VOLUME;
  const bar = barOf(mate, screw);
  const travel = (isFreeAt: (x: number) => boolean, from: number, within: number) =>
    freeTravel(isFreeAt, { guess: from, most: from + nut.pitch / 2, within });
  const free = isFree(bar, [0], PHASES);
  const axially = (way: 1 | -1) => travel((x) => isFree(bar, [way * x]), guess.axial / 2, WITHIN.axial);
  const [up, down] = free ? [axially(1), axially(-1)] : [0, 0];
  const grown = (by: number) => barOf(mate, { ...screw, pitchDiameter: screw.pitchDiameter + by });
  return {
    free: free && isFree(bar, [0.9 * up, -0.9 * down], [0]),
    axial: up + down,
    diametral: free ? travel((by) => isFree(grown(by), [0]), guess.diametral, WITHIN.diametral) : 0,
    rootGap: travel((by) => isClear(rodOf(pitch, by)), guess.rootGap, WITHIN.gap),
    crestGap: travel((by) => isClear(ridgeOf(pitch, by)), guess.crestGap, WITHIN.gap),
  };
}

/** One column of one pitch of the same. */
function columnOf({ nut, screw, run }: MateCase, kernel: Kernel): Shape {
  const beyond = nut.pitch / 2;
  const thread = nutCutter(nut, { ...run, from: -beyond, to: nut.pitch + beyond });
  const blank = wedge(thread, Math.max(nut.major, screw.major) / 2 + beyond, nut.pitch);
  return { kind: 'mesh', mesh: kernel.fuse({ kind: 'difference', of: [blank, { kind: 'thread', thread }] }) };
}

/** A ring with the nut's thread in it. */
function ringOf({ nut, screw, length, run }: MateCase, kernel: Kernel): Shape {
  const beyond = nut.pitch / 2;
  const radius = Math.max(nut.major, screw.major) / 2 + beyond;
  const thread = nutCutter(nut, { ...run, from: -beyond, to: length + beyond });
  const ring = cylinder({ radius, sides: run.columns, circumscribed: true, from: 0, to: length });
  return { kind: 'mesh', mesh: kernel.fuse({ kind: 'difference', of: [ring, { kind: 'thread', thread }] }) };
}

function barOf({ length, run }: MateCase, screw: ToothForm): Shape {
  const beyond = screw.pitch;
  const thread = screwBody(screw, { ...run, from: -beyond, to: length + beyond });
  return { kind: 'thread', thread: { ...thread, circumscribed: false } };
}

/** A rod as thick as the screw's core and `by` more all around. */
function rodOf({ screw, length, run }: MateCase, by: number): Shape {
  const beyond = screw.pitch;
  const radius = screw.minor / 2 + by;
  return cylinder({ radius, sides: run.columns, circumscribed: false, from: -beyond, to: length + beyond });
}

/** A thin steep ridge of the nut's own pitch in the place of the screw's teeth: it reaches the roots before the flanks. */
function ridgeOf(mate: MateCase, by: number): Shape {
  const { nut, screw } = mate;
  const flankSlope = Math.min(0.1, screw.flankSlope / 2);
  const top = Math.max(0.004, 0.1 * grooveWidthAt(nut, rootDiameterOf(nut)));
  return barOf(mate, {
    ...screw,
    pitch: nut.pitch,
    major: screw.major + 2 * by,
    flankSlope,
    grooveWidth: top + (screw.major + 2 * by - screw.pitchDiameter) * flankSlope,
  });
}

/** A screw of that pitch shifted and turned by parts of a column, moved along its own helix as it turns. */
function poses({ run }: MateCase, pitch: number, shifts: readonly number[], columns: readonly number[]): Pose[] {
  const lead = pitch * run.starts * (run.hand === 'left' ? -1 : 1);
  return columns.flatMap((column) => {
    const turn = (360 * column) / run.columns;
    return shifts.map((shift): Pose => ({ turn, by: [0, 0, shift + (lead * turn) / 360] }));
  });
}

/** How far arithmetic and solids may be apart, mm: radially, and along the axis. */
export const MATE_AGREEMENT = { axial: 0.01, diametral: 0.03, gap: 0.01 } as const;

const ABOUT = {
  group: SOLID_GROUP,
  unit: 'mm',
  source: 'derived: the solids themselves',
  moves: 'nothing in the sheet: please report it',
} as const;

const PLAY: CheckFacts = {
  ...ABOUT,
  id: 'mate-play',
  question: 'prints',
  title: 'Free axial play of the solids as printed, against the arithmetic',
  limits: hard({ max: MATE_AGREEMENT.axial }),
};

const GAPS: CheckFacts = {
  ...ABOUT,
  id: 'mate-gaps',
  question: 'prints',
  title: 'Radial gaps of the solids as printed, against the arithmetic',
  limits: hard({ max: MATE_AGREEMENT.gap }),
};

/** Holds the screw at its limits in the nut as printed, and compares what the solids say with the arithmetic. */
export function virtualMate(design: NutDesign, kernel: Kernel): Finding[] {
  const rows = mateCases(design).map((mate) => ({
    name: mate.name,
    told: figuresByArithmetic(mate),
    seen: figuresBySolids(mate, kernel),
  }));
  const apart = (key: 'axial' | 'crestGap' | 'rootGap') =>
    Math.max(...rows.map(({ told, seen }) => Math.abs(Math.max(0, told[key]) - seen[key])));
  const states = rows.map(({ name, seen }) => `${name}: ${seen.free ? `free by ${plain(seen.axial)} mm` : 'stuck'}`);
  const gaps = rows.map(
    ({ name, seen }) => `${name}: ${plain(seen.crestGap)} mm over crests, ${plain(seen.rootGap)} mm over roots`,
  );
  const pitches = mateLength(design) / design.finished.thread.pitch;
  return [
    finding(PLAY, valued(exactly(apart('axial')), `${states.join('; ')}, on ${plain(pitches, 1)} pitches`)),
    finding(GAPS, valued(exactly(Math.max(apart('crestGap'), apart('rootGap'))), gaps.join('; '))),
  ];
}
