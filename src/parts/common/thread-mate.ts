import { type CheckFacts, type Finding, valued } from '../../judge/check.js';
import { finding } from '../../judge/run-checks.js';
import { axialPlay, type ToothForm } from '../../mechanics/thread/nut-thread.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { cosd } from '../../solid/angles.js';
import type { Kernel } from '../../solid/kernel.js';
import { mateThreads, type ThreadMate } from '../../solid/mate.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import type { FitClass } from './fit-classes.js';
import { nutCutter, screwBody, threadColumns } from './thread-shape.js';

/** Diametral room that the tried screw has everywhere, facets aside, mm. */
const ROOM = 0.004;

/** Both are drawn at least so finely, mm: coarser facets would take the play that is tried. */
const CHORD = 0.01;

/** By the helix's symmetry, one pitch over the whole turn holds every relation of screw and nut. */
const MOST_PITCHES = 1;

/** A printed thread and the screw it is cut for, finished sizes. */
export interface MatedThread {
  readonly thread: ToothForm;
  readonly lead: number;
  readonly length: number;
  readonly screw: Screw;
  readonly fit: Pick<FitClass, 'axial'>;
  readonly material: Material;
  readonly printer: Printer;
}

/** What the screw and the thread have in common, by trying them. */
export function mateFinding(about: CheckFacts, mate: ThreadMate, kernel: Kernel): Finding {
  const common = mateThreads(kernel, mate);
  const message = `centred and pushed both ways by ${plain((0.9 * Math.max(0, mate.play)) / 2)} mm, on ${plain(mate.length! / mate.nut.pitch, 1)} pitches`;
  return finding(about, valued(exactly(common), message));
}

/** Nut and screw as solids for the mating test, and the play between them. */
export function threadMate({ thread, lead, length, screw, fit, material, printer }: MatedThread): ThreadMate {
  const shrinkHalf = material.shrink.plane.most - material.shrink.plane.likely;
  const smaller = (diameter: number) => diameter - printer.holeSpread - shrinkHalf * diameter;
  const nut: ToothForm = {
    ...thread,
    minor: smaller(thread.minor),
    pitchDiameter: smaller(thread.pitchDiameter),
    major: smaller(thread.major),
  };
  const columns = threadColumns(thread, lead, Math.min(CHORD, printer.chordError));
  // corners of the screw's facets, turned half a column, stand out over the middles of the nut's
  const facets = thread.major * (1 / cosd(180 / columns) - 1);
  const room = ROOM + facets;
  // where readings leave open whether the largest screw goes in at all, the fit's checks say so; here it is one that does
  const bar: ToothForm = {
    ...thread,
    minor: Math.min(screw.inHand.minor.most, nut.minor - room),
    pitchDiameter: Math.min(screw.inHand.pitchDiameter.most + screw.inHand.crest.most, nut.pitchDiameter - room),
    major: Math.min(screw.inHand.major.most, nut.major - room),
    grooveWidth: thread.pitch / 2,
  };
  const run = {
    starts: screw.starts,
    hand: screw.hand,
    columns,
    from: 0,
    to: 1,
  };
  return {
    nut: nutCutter(nut, run),
    screw: screwBody(bar, run),
    play: axialPlay({
      diametralClearance: nut.pitchDiameter - bar.pitchDiameter - facets,
      axialClearance: fit.axial,
      flankAngle: screw.flankAngle,
    }),
    length: Math.min(MOST_PITCHES * thread.pitch, length),
  };
}
