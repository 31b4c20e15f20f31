import { SOLID_GROUP } from '../../judge/accept.js';
import { type CheckFacts, type Finding, hard, valued } from '../../judge/check.js';
import { finding } from '../../judge/run-checks.js';
import { axialPlay, type ThreadProfile } from '../../mechanics/thread/nut-thread.js';
import { cosd } from '../../solid/angles.js';
import type { Kernel } from '../../solid/kernel.js';
import { mateThreads, NO_COMMON_VOLUME, type ThreadMate } from '../../solid/mate.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import { nutCutter, screwBody, threadColumns } from '../common/thread-shape.js';
import type { NutDesign } from './dimensions.js';

/** Diametral room that the tried screw has everywhere, facets aside, mm. */
const ROOM = 0.004;

/** Both are drawn at least so finely, mm: coarser facets would take the play that is tried. */
const CHORD = 0.01;

/** By the helix's symmetry, one pitch over the whole turn holds every relation of screw and nut. */
const MOST_PITCHES = 1;

const MATE: CheckFacts = {
  id: 'solid-mate',
  group: SOLID_GROUP,
  question: 'prints',
  title: 'Common volume of the largest screw in the smallest nut',
  unit: 'mm³',
  source: 'derived: the solids themselves',
  limits: hard({ max: NO_COMMON_VOLUME }),
  moves: 'fit.diametral, fit.axial',
};

/** Tries the screw at its largest in the nut at finished sizes less their uncertainty, on the solids themselves. */
export function mateNut(design: NutDesign, kernel: Kernel): Finding[] {
  const mate = nutMate(design);
  const common = mateThreads(kernel, mate);
  const message = `centred and pushed both ways by ${plain((0.9 * Math.max(0, mate.play)) / 2)} mm, on ${plain(mate.length! / mate.nut.pitch, 1)} pitches`;
  return [finding(MATE, valued(exactly(common), message))];
}

/** Nut and screw as solids for the mating test, and the play between them. */
export function nutMate(design: NutDesign): ThreadMate {
  const { finished, screw, fit, material, printer } = design;
  const shrinkHalf = material.shrink.plane.most - material.shrink.plane.likely;
  const smaller = (diameter: number) => diameter - printer.holeSpread - shrinkHalf * diameter;
  const nut: ThreadProfile = {
    ...finished.thread,
    minor: smaller(finished.thread.minor),
    pitchDiameter: smaller(finished.thread.pitchDiameter),
    major: smaller(finished.thread.major),
  };
  const columns = threadColumns(finished.thread, finished.lead, Math.min(CHORD, printer.chordError));
  // corners of the screw's facets, turned half a column, stand out over the middles of the nut's
  const facets = finished.thread.major * (1 / cosd(180 / columns) - 1);
  const room = ROOM + facets;
  // where readings leave open whether the largest screw goes in at all, the fit's checks say so; here it is one that does
  const bar: ThreadProfile = {
    ...finished.thread,
    minor: Math.min(screw.inHand.minor.most, nut.minor - room),
    pitchDiameter: Math.min(screw.inHand.pitchDiameter.most + screw.inHand.crest.most, nut.pitchDiameter - room),
    major: Math.min(screw.inHand.major.most, nut.major - room),
    grooveWidth: finished.thread.pitch / 2,
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
    length: Math.min(MOST_PITCHES * finished.thread.pitch, finished.length),
  };
}
