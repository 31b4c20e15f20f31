import { fault } from '../units/faults.js';
import { plain } from '../units/format.js';
import type { Calibration } from './calibration.js';
import type { Observed } from './observations.js';
import type { Results } from './results.js';
import type { Estimate, PrintSolution } from './solve-print.js';

/**
 * Refuses readings of which many features part into groups: then two prints were read as one.
 * @throws InputError a third or more of the features that were read repeatedly disagree with themselves
 */
export function requireOnePrinter(observed: readonly Observed[]): void {
  for (const { repeated, parted, outliers } of observed) {
    if (parted < 2 || parted < repeated / 3) continue;
    const marks = outliers.filter(({ standardised }) => standardised === 0).map(({ mark }) => mark);
    throw fault(
      'readings',
      '',
      `of ${marks.join(', ')} part into groups: are two printers, two materials or two prints mixed in one file?`,
    );
  }
}

/**
 * One profile is of one material, one setting, one state and one slicer.
 * @throws InputError the first difference
 */
export function requireSameRun(runs: readonly Results[]): void {
  const [first, ...others] = runs;
  const keys = ['material', 'state', 'slicer_compensates'] as const;
  for (const other of others) {
    for (const key of keys) {
      if ((other[key] ?? 'room') !== (first![key] ?? 'room'))
        throw fault(
          key,
          other[key] ?? 'room',
          `differs from the other readings, which have ${first![key] ?? 'room'}; they belong to another profile`,
        );
    }
    for (const key of ['nozzle', 'layer', 'line_width'] as const) {
      if (other.printer[key] !== first!.printer[key])
        throw fault(
          `printer.${key}`,
          other.printer[key] ?? '',
          `differs from the other readings, which have ${first!.printer[key]}; they belong to another profile`,
        );
    }
  }
}

/**
 * Refuses readings of which too many features do not follow the rest.
 * @throws InputError a fifth or more of the features are off, or all scatter far more than calipers do
 */
export function requireAgreement(observed: readonly Observed[], { outliers, residuals, scatter }: PrintSolution): void {
  const features = observed.reduce((sum, { observations }) => sum + observations.length, 0);
  const many = outliers.length >= 3 && outliers.length > 0.2 * features;
  if (!many && !(scatter > 4)) return;
  const marks = outliers.map(({ mark }) => mark).join(', ');
  throw fault(
    'readings',
    '',
    `do not follow one printer: ${many ? `${outliers.length} of ${features} features are off (${marks})` : `they scatter ${scatter.toFixed(1)} times as much as calipers do over ${residuals.length} features`}; are two printers, two materials or two prints mixed?`,
  );
}

/** New readings may differ from old ones by this many times their common half-width. */
const APART = 2;

/**
 * Refuses to put together readings of printers that differ, or of one that has changed.
 * @throws InputError a figure that both tell is too far apart
 */
export function requireAlike(old: Calibration, next: Calibration): void {
  const told = (name: 'plane' | 'axial', { solution, ...figures }: Calibration) =>
    figures[name] ? solution.estimates[name] : undefined;
  requireNear('in-plane shrink', told('plane', old), told('plane', next), 100, '%');
  requireNear('axial shrink', told('axial', old), told('axial', next), 100, '%');
  requireNear('hole offset at 6 mm', old.holeAtMiddle, next.holeAtMiddle, 1, 'mm');
}

function requireNear(
  what: string,
  old: Estimate | undefined,
  next: Estimate | undefined,
  factor: number,
  unit: string,
): void {
  if (!old || !next) return;
  const common = 2 * Math.hypot(old.standardError, next.standardError);
  if (Math.abs(old.value - next.value) <= APART * common) return;
  const show = (value: number) => `${plain(factor * value, 2)} ${unit}`;
  throw fault(
    'readings',
    '',
    `tell of another printer than the profile: ${what} ${show(next.value)} against ${show(old.value)}; if the printer or the spool has changed, write the profile anew with --replace`,
  );
}
