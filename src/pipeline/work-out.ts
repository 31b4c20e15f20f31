import type { DesignBase } from '../parts/part-kind.js';
import { SHIPPED } from '../presets/shipped.js';
import type { PresetTexts } from '../presets/texts.js';
import { KINDS } from './kinds.js';
import type { KnownKind } from './known-kind.js';
import { locating } from './locate-faults.js';
import { readSheet } from './read-sheet.js';
import { judgedBy, resolveLimits } from './resolve-limits.js';

/** A part with all its sizes worked out; plain data. */
export type Design = DesignBase;

/** What a sheet is read with. */
export interface DesignOptions {
  /** preset files by path, in place of those that ship */
  readonly presets?: PresetTexts;
  /** part kinds, in place of those that ship */
  readonly kinds?: readonly KnownKind[];
}

/** All sizes of a part from its sheet; no way to cure what misses its limit is tried. @throws InputError every mistake at once */
export function workOut(sheet: string | object, { presets = SHIPPED, kinds = KINDS }: DesignOptions = {}): Design {
  const read = readSheet(sheet, kinds);
  return locating(read.locate, () => {
    const made = read.sheet.design(presets);
    resolveLimits(made.limits, judgedBy(read.kind, made));
    return made;
  });
}
