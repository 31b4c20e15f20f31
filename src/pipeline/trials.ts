import { type Trial, trialSchema } from '../calibrate/trial.js';
import { estimateFromTrials, type Found, type TrialEstimate } from '../calibrate/trial-estimate.js';
import { type TrialFinding, trialFindings } from '../calibrate/trial-words.js';
import { readYaml } from '../sheet/read-yaml.js';
import { validate } from '../sheet/validate.js';
import { fault } from '../units/faults.js';

/** What trials come to. */
export interface TriedNuts {
  readonly trials: readonly Trial[];
  readonly estimate: TrialEstimate;
  /** of the last nut; the first with a change is what to change next */
  readonly findings: readonly TrialFinding[];
}

/** Whether a text is the form of a trial rather than a coupon's results. */
export function isTrial(text: string): boolean {
  return /^\s*results\s*:\s*trial\s*(?:#.*)?$/m.test(text);
}

/**
 * Reads the form of a trial.
 * @throws InputError every mistake at once, each located
 */
export function readTrial(text: string): Trial {
  const { value, locate } = readYaml(text);
  return validate(trialSchema, value, locate);
}

/** A trial as a map whose values a file may hold; read back it is the same. */
export function trialFields(trial: Trial): Record<string, unknown> {
  const field = (value: unknown): unknown =>
    typeof value === 'object' && value !== null && 'value' in value
      ? `${value.value}${'half' in value && value.half !== undefined ? ` ± ${value.half}` : ''} mm`
      : value;
  return Object.fromEntries(
    Object.entries(trial)
      .filter(([, value]) => value !== undefined)
      .map(([key, value]) => [key, field(value)]),
  );
}

/**
 * What went wrong with finished nuts, and what to change.
 *
 * @param trials of one material and one setting, the oldest first
 * @param axial  shrink along the axis as a coupon has it; what the first nut was made with unless given
 * @returns estimates and findings
 * @throws InputError no trial, or trials of different printers
 */
export function tryNuts(trials: readonly Trial[], axial?: Found): TriedNuts {
  const [first] = trials;
  if (!first) throw fault('', '', 'at least one trial is needed');
  for (const other of trials) {
    if (other.material !== first.material)
      throw fault('material', other.material, `differs from the other trials, which are of ${first.material}`);
    for (const key of ['nozzle', 'layer'] as const) {
      if (other.printer[key] !== first.printer[key])
        throw fault(
          `printer.${key}`,
          other.printer[key] ?? '',
          'differs from the other trials: keep the settings alike',
        );
    }
  }
  const prior = axial ?? { value: first.applied.axial, sigma: Math.max(0.001, first.doubt.axial / 2) };
  const estimate = estimateFromTrials(trials, prior);
  return { trials, estimate, findings: trialFindings(trials, estimate) };
}
