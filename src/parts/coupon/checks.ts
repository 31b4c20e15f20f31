import { type Bounds, type Check, type Outcome, soft, told, valued } from '../../judge/check.js';
import { keeps } from '../../judge/judge.js';
import { plain, worked } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import { printLayers, printThreadDepth, type ThreadInPrint } from '../common/thread-in-print.js';
import type { CouponDesign } from './dimensions.js';
import { printTime } from './print-time.js';
import { couponBodies } from './solid.js';
import { markStyle } from './strip.js';

type CouponCheck = Check<CouponDesign>;
const about = { group: 'coupon', question: 'tells-enough', source: 'common practice' } as const;

/**
 * A coupon that takes a spool's end and an evening is not printed.
 *
 *     m = V/1000 · density, V = volume of all bodies with their marks [mm³]
 */
const mass: CouponCheck = {
  ...about,
  id: 'coupon-mass',
  question: 'worth-printing',
  title: 'Mass of the coupon',
  unit: 'g',
  limits: soft({ max: 15 }),
  moves: 'purposes, scale.height, thread.steps, pockets.steps',
  run: (design, { pass }) => {
    const volume = couponVolume(design);
    const grams = (volume / 1000) * design.material.density;
    const cure = keeps(grams, pass) ? '' : '; fewer purposes or steps make it lighter';
    return valued(exactly(grams), `${plain(volume / 1000, 1)} cm³ of ${design.material.name}${cure}`);
  },
};

/** A coupon that takes all day is not printed. */
const time: CouponCheck = {
  ...about,
  id: 'coupon-time',
  question: 'worth-printing',
  title: 'Time to print the coupon',
  unit: 'min',
  limits: soft({ max: 90 }),
  moves: 'purposes, printer.layer',
  run: (design, { pass }) => {
    const { minutes, speed } = printTime(couponVolume(design), design.printer);
    const { layer, lineWidth } = design.printer;
    return valued(
      exactly(minutes),
      `solid, layers of ${plain(layer)} mm, lines of ${worked(lineWidth, 'mm')} mm at ${plain(speed)} mm/s on the mean, travel included${keeps(minutes, pass) ? '' : '; fewer purposes or a thicker layer take less'}`,
    );
  },
};

/**
 * A line over the diameter wants several diameters, so that a misread one shows.
 *
 *     n = diameters in bores, equal ones counted once
 */
const diameters: CouponCheck = {
  ...about,
  id: 'coupon-diameters',
  title: 'Different bores and posts',
  unit: '',
  limits: soft({ min: 4 }),
  moves: 'bores',
  run: ({ plan }, { pass }) => {
    if (!plan.diameters) return undefined;
    const { min = 0 } = pass;
    const different = new Set(plan.diameters).size;
    const cure = keeps(different, pass) ? '' : `; ${plain(min - different)} more in bores`;
    return valued(
      exactly(different),
      `${different} in all; a line over the diameter wants ${plain(min)}, so that a misread one shows${cure}`,
    );
  },
};

/**
 * Shrink is a share: it shows the better the longer what is read.
 *
 *     L = scale.span; a reading tells the shrink to 100 · error of the calipers/L %
 */
const span: CouponCheck = {
  ...about,
  id: 'coupon-span',
  title: 'Length for in-plane shrink',
  unit: 'mm',
  limits: soft({ min: 40 }),
  moves: 'scale.span',
  run: ({ plan, calipers }, { pass }) => {
    if (!plan.scale) return undefined;
    return readOver(plan.scale.span, calipers, pass, 'a longer scale.span');
  },
};

const height: CouponCheck = {
  ...about,
  /**
   * Shrink along the print axis is read between steps, as far apart as the coupon is high.
   *
   *     H = height of the highest step; a reading tells the shrink to 100 · error of the calipers/H %
   */
  id: 'coupon-height',
  title: 'Height for axial shrink',
  unit: 'mm',
  limits: soft({ min: 40 }),
  moves: 'scale.height',
  run: ({ plan, calipers }, { pass }) => {
    if (!plan.scale) return undefined;
    const highest = plan.scale.heights.at(-1);
    if (highest === undefined)
      return told(
        'caution',
        'the steps are left out: axial shrink, and with it the pitch, stays a guess: give scale.height',
      );
    return readOver(highest, calipers, pass, 'a greater scale.height');
  },
};

/** A length over which shrink is read, and how well one reading tells it. */
function readOver(length: number, calipers: number, pass: Bounds, longer: string): Outcome {
  const cure = keeps(length, pass) ? '' : `; ${longer} tells it better`;
  return valued(exactly(length), `one reading tells the shrink to ${plain((100 * calipers) / length, 2)} %${cure}`);
}

/**
 * A mark that cannot be read makes readings of another feature: one raised by less than two layers hardly shows. Its
 * strokes, and the gaps in its letters, are as many lines wide on every printer.
 *
 *     n = rise of the marks / layer
 */
const marks: CouponCheck = {
  ...about,
  id: 'coupon-marks',
  question: 'prints',
  title: 'Height of marks, in layers',
  unit: '',
  limits: soft({ min: 2 }),
  moves: 'printer.layer',
  run: ({ printer }, { pass }) => {
    const { stroke, rise, height } = markStyle(printer.lineWidth);
    const layers = rise / printer.layer;
    const cure = keeps(layers, pass) ? '' : '; go over them with a pen, or print thinner layers';
    return valued(
      exactly(layers),
      `raised ${plain(rise)} mm, strokes ${worked(stroke, 'mm')} mm wide, letters ${plain(height)} mm high${cure}`,
    );
  },
};

/** Asked of a coupon with short nuts. */
const threaded = (check: Check<ThreadInPrint>): CouponCheck => ({
  ...check,
  run: ({ plan, screw, printer }, limits) => (plan.thread && screw ? check.run({ screw, printer }, limits) : undefined),
});

/** What a coupon says is worth nothing if somebody corrects the print behind its back. */
const uncorrected: CouponCheck = {
  ...about,
  group: 'print',
  id: 'shrink-applied-once',
  question: 'prints',
  title: 'Corrections by the slicer',
  unit: '',
  moves: 'printer.compensation',
  run: ({ printer }) => {
    const { shrink, holes } = printer.compensation;
    if (printer.compensationKnown && shrink === 'file' && holes === 'file')
      return told('pass', 'the slicer is said to scale nothing; say the same in the results file');
    return told(
      'caution',
      'scale, bores and posts stand in the file uncorrected: print them with the slicer set as for later parts, and say in the results file what it corrects by itself',
    );
  },
};

/** Checks of a coupon, in the order of the report. */
export const COUPON_CHECKS: readonly CouponCheck[] = [
  mass,
  time,
  diameters,
  span,
  height,
  marks,
  threaded(printLayers()),
  threaded(printThreadDepth()),
  uncorrected,
];

function couponVolume(design: CouponDesign): number {
  return couponBodies(design).reduce((sum, { expected }) => sum + expected().volume + expected().mark, 0);
}
