import { fault } from '../units/faults.js';
import { halfWidth, plusMinus } from '../units/measured.js';
import type { Believed, Calibration } from './calibration.js';
import { likedFits } from './liked-fits.js';
import { FORM_SIGMA } from './mean-reading.js';
import { type Observed, observe } from './observations.js';
import { requireAgreement, requireOnePrinter, requireSameRun } from './one-printer.js';
import type { Parameter } from './print-model.js';
import type { Results } from './results.js';
import { slicerWords } from './slicer-words.js';
import { type Estimate, type PrintSolution, type Priors, solvePrint } from './solve-print.js';
import type { Process } from './thread-fit.js';
import { unknownWords } from './unknown-words.js';

/** Shrink differs from print to print by this much, whatever one coupon says; a half-width. @source common-practice */
const BETWEEN_PRINTS = 0.0005;

/**
 * Works out what a printer does from all coupons that were read.
 *
 * @param runs one or more results, of one material and one printer
 * @param believed presets, for what the readings do not tell
 * @returns estimates, and what goes into a profile
 * @throws InputError readings that cannot be, or that are of two printers
 */
export function calibrate(runs: readonly Results[], believed: Believed): Calibration {
  const [first] = runs;
  if (!first) throw fault('', '', 'at least one results file is needed');
  requireSameRun(runs);
  const observed = runs.map(observe);
  requireOnePrinter(observed);
  const solution = solvePrint(
    observed.flatMap(({ observations }, i) =>
      observations.map((one) => (runs.length > 1 ? { ...one, session: i, mark: `${one.mark} (${i + 1})` } : one)),
    ),
    priorsOf(believed),
  );
  const outliers = [...observed.flatMap((one) => one.outliers), ...solution.outliers];
  requireAgreement(observed, solution);
  const figures = figuresOf(solution, observed);
  const real = processOf(figures, believed);
  const ladders = likedFits(runs, real);
  const unknown = [...unknownWords(solution), ...ladders.unknown];
  const { standardError = 0, value = 0 } = solution.estimates.skew ?? {};
  return {
    runs,
    state: first.state ?? 'room',
    slicer: first.slicer_compensates,
    solution,
    outliers,
    ...figures,
    ...(figures.holeOffset ? { holeAtMiddle: holeAtMiddle(solution) } : {}),
    ...(ladders.thread ? { thread: ladders.thread } : {}),
    pockets: ladders.pockets,
    unknown,
    warnings: [
      ...(isKnown(solution, 'skew') && Math.abs(value) > 2 * standardError && Math.abs(value) > 0.00025
        ? [skewWords(value)]
        : []),
      ...slicerWords({
        answer: first.slicer_compensates,
        usualPlane: believed.material.shrink.plane.likely,
        ...(figures.plane && solution.estimates.plane ? { plane: solution.estimates.plane } : {}),
        ...(figures.holeOffset ? { hole: holeAtMiddle(solution) } : {}),
      }),
    ],
  };
}

function priorsOf({ material, printer }: Believed): Priors {
  const { plane, axial } = material.shrink;
  const of = (value: number, half: number) => ({ value, sigma: Math.max(half, 1e-6) / 2 });
  return {
    plane: of(plane.likely, halfWidth(plane)),
    skew: of(0, 0.002),
    axial: of(axial.likely, halfWidth(axial)),
    height_error: of(0, 0.1),
    wall: of(0, 0.2),
    first_layer: of(printer.firstLayer ?? 0.2, 0.2),
    hole_at_zero: of(printer.holeOffset.at_zero, 0.2),
    hole_per_mm: of(printer.holeOffset.per_mm, 0.006),
    post_at_zero: of(printer.outsideOffset.at_zero, 0.2),
    post_per_mm: of(printer.outsideOffset.per_mm, 0.006),
  };
}

type Figures = Pick<Calibration, 'plane' | 'axial' | 'holeOffset' | 'outsideOffset' | 'firstLayer'>;

/** Figures that the readings settle; a line is known when both its ends are. */
function figuresOf(solution: PrintSolution, observed: readonly Observed[]): Figures {
  const known = (...names: Parameter[]) => names.every((name) => isKnown(solution, name));
  const value = (name: Parameter) => solution.estimates[name]?.value ?? 0;
  const half = (name: Parameter) => 2 * (solution.estimates[name]?.standardError ?? 0);
  const holes = observed.flatMap(({ observations }) => observations.filter(({ kind }) => kind === 'hole'));
  const reach = [Math.min(...holes.map(({ mean }) => mean)), Math.max(...holes.map(({ mean }) => mean))];
  const lineHalf = Math.max(...reach.map((at) => 2 * solution.errorOf({ hole_at_zero: 1, hole_per_mm: at })));
  const skew = isKnown(solution, 'skew') ? value('skew') : 0;
  const measuredShrink = (name: 'plane' | 'axial', more: number) =>
    // a skew shifts the sizes of each direction, it does not scatter them
    plusMinus(value(name), Math.abs(more) + Math.hypot(half(name), BETWEEN_PRINTS));
  return {
    ...(known('plane') ? { plane: measuredShrink('plane', skew) } : {}),
    ...(known('axial') ? { axial: measuredShrink('axial', 0) } : {}),
    ...(known('hole_at_zero', 'hole_per_mm')
      ? {
          holeOffset: {
            at_zero: value('hole_at_zero'),
            per_mm: value('hole_per_mm'),
            spread: Math.hypot(lineHalf, 2 * FORM_SIGMA * solution.scatter),
          },
        }
      : {}),
    ...(known('post_at_zero', 'post_per_mm')
      ? { outsideOffset: { at_zero: value('post_at_zero'), per_mm: value('post_per_mm') } }
      : {}),
    ...(known('first_layer') ? { firstLayer: Math.max(0, value('first_layer')) } : {}),
  };
}

function isKnown(solution: PrintSolution, name: Parameter): boolean {
  return solution.estimates[name] !== undefined && !solution.borrowed.includes(name);
}

/** Where the spread of a hole offset is told. */
const MIDDLE_DIAMETER = 6;

function holeAtMiddle(solution: PrintSolution): Estimate {
  const value = (name: Parameter) => solution.estimates[name]?.value ?? 0;
  return {
    value: value('hole_at_zero') + MIDDLE_DIAMETER * value('hole_per_mm'),
    standardError: solution.errorOf({ hole_at_zero: 1, hole_per_mm: MIDDLE_DIAMETER }),
  };
}

function processOf({ plane, axial, holeOffset }: Figures, { material, printer }: Believed): Process {
  return {
    plane: plane?.likely ?? material.shrink.plane.likely,
    axial: axial?.likely ?? material.shrink.axial.likely,
    holeOffset: holeOffset ?? printer.holeOffset,
  };
}

function skewWords(skew: number): string {
  const [more, less] = skew > 0 ? ['X', 'Y'] : ['Y', 'X'];
  return `${more} shrinks ${(200 * Math.abs(skew)).toFixed(2)} % more than ${less}: a round bore of 20 mm comes out oval by ${(20 * 2 * Math.abs(skew)).toFixed(2)} mm, wider along ${less}. Parts get the mean of both; the difference is counted as a shift of either. Look at the belts and the axes of the printer.`;
}

/**
 * Refuses a calibration of which nothing could go into a profile.
 * @throws InputError naming what would have to be read
 */
export function requireFigures({ plane, axial, holeOffset, outsideOffset, ...more }: Calibration): void {
  const { firstLayer, thread, pockets, unknown } = more;
  const known = [plane, axial, holeOffset, outsideOffset, firstLayer, thread, ...Object.values(pockets)];
  if (known.some((one) => one !== undefined)) return;
  throw fault('readings', '', `tell nothing yet: ${unknown.join(' ')}`);
}
