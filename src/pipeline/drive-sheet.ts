import type { PairedScrew } from '../drive/axis-pair.js';
import type { DriveScrew } from '../drive/screw.js';
import { driveView } from '../parts/common/drive-view.js';
import { type GivenFit, resolveFit } from '../parts/common/fit-classes.js';
import { nutSchema } from '../parts/nut/sheet.js';
import { Assumptions } from '../sheet/assumptions.js';
import { map } from '../sheet/fields.js';
import { inInches } from '../sheet/inches.js';
import { readYaml } from '../sheet/read-yaml.js';
import { resolveScrew } from '../sheet/resolve-screw.js';
import { validate } from '../sheet/validate.js';
import { fault } from '../units/faults.js';
import { CALIPERS } from '../units/measured.js';
import { type Locate, locating } from './locate-faults.js';

const { screw, fit, calipers, duty } = nutSchema.shape;

const ownSection = map({ screw, fit, calipers });

/** Fit and duty under their names, so that mistakes are told as those of a sheet. */
export const driveSection = map({ fit, duty });

/** What a drive is worked out from, of all that a sheet holds. */
export interface DriveSheet {
  readonly screw: DriveScrew;
  readonly fit: GivenFit | undefined;
  /** as typed, not yet judged: something else may replace parts of it */
  readonly duty: unknown;
  readonly locate: Locate;
}

/**
 * Reads the screw, the fit and the duty of a sheet of any kind; the rest of it is not looked at.
 * @throws InputError every mistake in what is read, located
 */
export function readDriveSheet(text: string): DriveSheet {
  const { value, locate } = readYaml(text);
  return locating(locate, () => {
    if (typeof value !== 'object' || value === null || !('screw' in value)) {
      throw fault('screw', '', 'is missing; a drive is worked out from it');
    }
    const fields: { screw: unknown; fit?: unknown; calipers?: unknown; duty?: unknown; units?: unknown } = value;
    const typed = { screw: fields.screw, fit: fields.fit, calipers: fields.calipers };
    const isInch = fields.units === 'inch';
    const own = validate(ownSection, isInch ? inInches(ownSection, typed) : typed, locate);
    const resolved = resolveScrew(own.screw, own.calipers ?? CALIPERS, new Assumptions());
    return {
      screw: driveView(resolved),
      fit: own.fit,
      duty: isInch ? inInches(duty, fields.duty) : fields.duty,
      locate,
    };
  });
}

/** A screw with the clearances of its nut; running ones, then listed, unless given. */
export function withFit(one: DriveScrew, given: GivenFit | undefined, assumptions: Assumptions): PairedScrew {
  const { diametral, axial } = resolveFit(given, assumptions);
  return { ...one, diametralClearance: Math.max(0, diametral), axialClearance: Math.max(0, axial) };
}
