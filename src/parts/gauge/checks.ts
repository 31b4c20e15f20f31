import { type Check, soft, told, valued } from '../../judge/check.js';
import { keeps } from '../../judge/judge.js';
import { pitchError } from '../../mechanics/thread/pitch-error.js';
import { plain, worked } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import { shrinkAppliedOnce } from '../common/checks.js';
import { holeResidual } from '../common/residual.js';
import { printLayers, printThreadDepth } from '../common/thread-in-print.js';
import type { GaugeDesign } from './dimensions.js';

type GaugeCheck = Check<GaugeDesign>;
const about = { group: 'gauge', question: 'tells-enough', source: 'common practice' } as const;

/**
 * A ladder of two steps tells only between which two.
 *
 *     n = rings of the ladder, without those of two and of ten turns
 */
const ladderRings: GaugeCheck = {
  ...about,
  id: 'ladder-rings',
  title: 'Rings of the ladder',
  unit: '',
  limits: soft({ min: 4 }),
  moves: 'plays.from, plays.to, plays.step',
  run: ({ finished }, { pass }) => {
    const ladder = finished.rings.slice(0, -2);
    const [first, last] = [ladder[0]!.play, ladder.at(-1)!.play];
    const cure = keeps(ladder.length, pass) ? '' : '; a smaller plays.step or a greater plays.to gives more';
    return valued(exactly(ladder.length), `from ${plain(first)} to ${plain(last)} mm of play along the axis${cure}`);
  },
};

/** What the printer scatters from print to print must lie within the ladder. */
const ladderSpan: GaugeCheck = {
  ...about,
  id: 'ladder-span',
  title: 'Span of the ladder over scatter',
  unit: '',
  source: 'derived: flanks that scatter with the hole',
  limits: soft({ min: 1 }),
  moves: 'plays.from, plays.to, printer',
  run: (design, { pass }) => {
    const { finished, screw } = design;
    const ladder = finished.rings.slice(0, -2);
    const span = ladder.at(-1)!.play - ladder[0]!.play;
    const { likely, most } = holeResidual(design, screw.pitchDiameter.likely);
    // the contour of a tooth is off by half of what a hole is, square to its flank
    const scatter = (most - likely) / Math.cos((screw.flankAngle * Math.PI) / 180);
    const ratio = span / (2 * scatter);
    const cure = keeps(ratio, pass) ? '' : '; a greater plays.to covers it';
    return valued(exactly(ratio), `${plain(span)} mm of play, prints scatter by ± ${worked(scatter, 'mm')} mm${cure}`);
  },
};

/** The long ring jams by what its pitch is off. */
const pitchTold: GaugeCheck = {
  ...about,
  id: 'pitch-told',
  title: 'Pitch error that ten turns show',
  unit: '%',
  limits: soft({ max: 1 }),
  moves: 'turns_play, screw.pitch',
  run: ({ finished, screw }, { pass }) => {
    const { play, turns } = finished.rings.at(-1)!;
    const percent = 100 * pitchError({ play, turns, pitch: screw.pitch.likely });
    const cure = keeps(percent, pass) ? '' : '; a smaller turns_play shows a smaller one';
    return valued(exactly(percent), `a play of ${plain(play)} mm is used up over ${turns} turns${cure}`);
  },
};

/** A ring of the other hand tells nothing. */
const handTold: GaugeCheck = {
  ...about,
  id: 'gauge-hand',
  title: 'Hand of the screw',
  unit: '',
  moves: 'screw.hand',
  run: ({ screw }) =>
    screw.handKnown
      ? told('pass', screw.hand)
      : told(
          'caution',
          `not told; the rings are made ${screw.hand}-hand: look at the screw standing up, and say screw.hand`,
        ),
};

/**
 * A figure that one layer closes cannot be read.
 *
 *     n = depth of the figures / layer
 */
const figures: GaugeCheck = {
  ...about,
  id: 'figure-depth',
  group: 'print',
  question: 'prints',
  title: 'Depth of figures, in layers',
  unit: '',
  limits: soft({ min: 2 }),
  moves: 'printer.layer',
  run: ({ finished, printer }, { pass }) => {
    const layers = finished.depth / printer.layer;
    const cure = keeps(layers, pass) ? '' : '; go over them with a pen';
    return valued(exactly(layers), `${plain(finished.depth)} mm deep${cure}`);
  },
};

/** Checks of a gauge, in the order of the report. */
export const GAUGE_CHECKS: readonly GaugeCheck[] = [
  ladderRings,
  ladderSpan,
  pitchTold,
  handTold,
  printLayers(),
  printThreadDepth(),
  figures,
  shrinkAppliedOnce,
];
