import { type ComparisonOptions, compareScrews } from '../drive/compare-screws.js';
import type { Duty } from '../drive/duty.js';
import { PURPOSES } from '../drive/rank-screws.js';
import type { DriveScrew } from '../drive/screw.js';
import type { ShownComparison } from '../output/drive/comparison-told.js';
import { driveDuty } from '../parts/common/drive-view.js';
import type { GivenFit } from '../parts/common/fit-classes.js';
import { Assumptions } from '../sheet/assumptions.js';
import { map, word } from '../sheet/fields.js';
import { readYaml } from '../sheet/read-yaml.js';
import { validate } from '../sheet/validate.js';
import { type Fault, fault, InputError } from '../units/faults.js';
import { driveSection, withFit } from './drive-sheet.js';
import { screwNamed } from './screw-named.js';

/** Screws that are told by name, and what is wanted of them. */
export interface NamedScrews {
  /** designations, in the order of the columns */
  readonly screws: readonly string[];
  /** the one that is taken out */
  readonly from?: string;
  /** what they are ranked for */
  readonly purpose?: string;
  /** `duty` and `fit` as a sheet holds them */
  readonly sheet: string;
}

const askedSection = map({ purpose: word(PURPOSES).optional() }).extend(driveSection.shape);

/** A screw, and the fit of its nut where that was told. */
interface FittedScrew {
  readonly screw: DriveScrew;
  readonly fit?: GivenFit | undefined;
}

/** Screws side by side, each with the clearances of its nut; a class that was taken for granted is listed once. */
export function compareFitted(fitted: readonly FittedScrew[], duty: Duty, options: ComparisonOptions): ShownComparison {
  const assumptions = new Assumptions();
  const screws = fitted.map(({ screw, fit }) => withFit(screw, fit, assumptions));
  return { ...compareScrews(screws, duty, options), assumptions: assumptions.list.slice(0, 1) };
}

/**
 * Screws side by side, told by name.
 * @returns the comparison, and the duty that it was made at
 * @throws InputError every mistake: designations as `screws`, the rest by its field
 */
export function compareNamed({ screws, from, purpose, sheet }: NamedScrews): {
  readonly comparison: ShownComparison;
  readonly duty: Duty;
} {
  const faults: Fault[] = [];
  const collected = <Value>(read: () => Value): Value | undefined => {
    try {
      return read();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      faults.push(...error.faults);
      return undefined;
    }
  };
  const named = screws.map((one) => collected(() => screwNamed(one, 'screws')));
  const old = from === undefined ? undefined : collected(() => screwNamed(from, 'from'));
  const asked = collected(() => {
    const { value = {} } = sheet.trim() === '' ? {} : readYaml(sheet);
    return validate(askedSection, { ...(value as object), ...(purpose === undefined ? {} : { purpose }) });
  });
  if (screws.length === 0) faults.push(...fault('screws', '', 'must be one screw or more').faults);
  if (faults.length > 0 || asked === undefined) throw new InputError(faults);
  const fitted = named.flatMap((screw) => (screw === undefined ? [] : [{ screw, fit: asked.fit }]));
  const duty = driveDuty(asked.duty ?? {});
  return { comparison: compareFitted(fitted, duty, { purpose: asked.purpose, from: old }), duty };
}
