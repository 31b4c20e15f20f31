import { type CheckOptions, check } from '../pipeline/check.js';
import { type Design, type DesignOptions, design } from '../pipeline/design.js';
import type { AxisDesign } from './axis-design.js';
import { checkAxis } from './check.js';
import { designAxis, isAxisSheet } from './design.js';

/** Works out what a sheet is for: a part, or an axis. @throws InputError every mistake of the sheet at once */
export function designAny(sheet: string | object, options: DesignOptions = {}): Design | AxisDesign {
  return isAxisSheet(sheet) ? designAxis(sheet, options) : design(sheet, options);
}

/** Whether it is an axis. */
export function isAxis(made: Design | AxisDesign): made is AxisDesign {
  return made.part === 'axis' && 'along' in made;
}

/** Judges a part or an axis. @throws InputError a check that cannot be accepted, or is not known */
export function checkAny(made: Design | AxisDesign, options: CheckOptions = {}) {
  return isAxis(made) ? checkAxis(made, options) : check(made, options);
}
